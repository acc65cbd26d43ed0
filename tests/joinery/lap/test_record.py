"""What the record of a lap accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.lap.record import LapJoint
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension
from tests.builders import length, timber
from tests.joinery.lap.crossings import Scene, lap

PLACED = {"at": {"north": "0", "up": "0"}, "reference_end_at": "0"}


def _faults(joint: LapJoint, *timbers: Timber) -> list[tuple[str, str]]:
    """The keys of the joint's faults beside these timbers, and what to do."""
    found = joint.faults({each.id: each for each in timbers})
    return [(fault.key, fault.remedy) for fault in found]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"into": "tie"}, "its own timber"),
        ({"past": "1"}, 'has "past" but no "end"'),
        ({"flare_far": "1"}, 'has "flare_far" but no "end"'),
        ({"into_end": "south"}, 'has "into_end" but no "end"'),
        ({"end": "east", "into_end": "south", "past": "1"}, '"past" at a corner'),
        ({"end": "east", "into_end": "south", "cog": "1"}, '"cog" at a corner'),
        ({"end": "east", "into_end": "south", "flare": "1"}, '"flare" at a corner'),
        ({"end": "east", "cog": "2", "flare_reference": "1"}, '"cog" and a flare'),
        ({"cog_set_back": "1"}, 'but no "cog"'),
        ({"cog": "0"}, "more than nothing"),
        ({"side": "head"}, "where a face looks"),
        ({"flare": "-1"}, "not below zero"),
        ({"length": "4"}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        lap(**words)


def test_a_flare_of_nothing_is_none() -> None:
    """It is no dovetail, and may stand at a crossing."""
    assert not lap(flare="0", past="0").dovetailed
    assert lap(end="east", flare_far="1/2").dovetailed


def test_one_side_s_flare_counts_instead_of_both() -> None:
    """As with the reliefs of a tenon."""
    joint = lap(end="east", flare="1", flare_far="2")
    assert (joint.reference_flare(), joint.far_flare()) == (length("1"), length("2"))
    half = lap(end="east", flare_reference="1")
    assert (half.reference_flare(), half.far_flare()) == (length("1"), ZERO)
    straight = lap(end="east", flare="1", flare_reference="0")
    assert (straight.reference_flare(), straight.far_flare()) == (ZERO, length("1"))


def test_what_it_names_is_told_by_key() -> None:
    """Timbers, and a share that follows the levels."""
    joint = lap(share="tie let-in")
    assert joint.timbers() == {"timber": "tie", "into": "plate"}
    assert {key: total.names() for key, total in joint.sums().items()} == {"share": ("tie let-in",)}
    assert lap().sums() == {}


def test_a_crossing_settles_no_end() -> None:
    """Both timbers run on, so neither's shoulder follows from the other."""
    joint = lap()
    assert (joint.bearings(), joint.extensions()) == ((), ())
    assert (joint.feature, joint.into_feature) == ("lap-lap", "lap-notch")


def test_an_end_stops_at_the_near_face_and_goes_through() -> None:
    """Its shoulder is at the face itself, and the lap as long as the other really is wide."""
    joint = lap(end="east", past="3")
    bearing = Bearing("tie", Direction.EAST, "plate", ZERO, "lap-notch")
    assert joint.bearings() == (bearing,)
    assert joint.extensions() == (
        Extension("tie", Direction.EAST, length("3"), through=bearing, lap=True),
    )
    assert joint.feature == "east-end-lap"


def test_at_a_corner_each_end_goes_through_the_other() -> None:
    """Measured at one another's laps."""
    joint = lap(end="east", into_end="foot")
    first = Bearing("tie", Direction.EAST, "plate", ZERO, "foot-lap")
    second = Bearing("plate", Direction.DOWN, "tie", ZERO, "east-end-lap")
    assert joint.bearings() == (first, second)
    assert [each.through for each in joint.extensions()] == [first, second]
    assert [each.length for each in joint.extensions()] == [ZERO, ZERO]


@pytest.mark.parametrize("words", [{}, {"ends": False}, {"corner": "north"}])
def test_placed_timbers_that_cross_square_are_sound(words: dict[str, object]) -> None:
    """Level on level, or level and upright."""
    for way in ({}, {"heading": "up", "side": "west", "run": "north"}):
        scene = Scene(**(words | way))  # type: ignore[arg-type]
        if way and "corner" in words:
            continue
        assert _faults(scene.record(), *scene.timbers()) == []


def test_a_side_that_one_of_them_runs_along() -> None:
    """The remedy names the two sides there are, and it is told once."""
    for side in ("east", "west", "north", "south"):
        scene = Scene(joint={"side": side})
        ((key, remedy),) = _faults(scene.record(), *scene.timbers())
        assert key == "side"
        assert remedy.startswith('write "up" or "down"')
    upright = Scene(heading="up", run="north", side="west", joint={"side": "up"})
    ((_, remedy),) = _faults(upright.record(), *upright.timbers())
    assert remedy.startswith('write "east" or "west"')


def test_what_keeps_two_timbers_from_crossing() -> None:
    """One without a place, one that rakes or is rolled, or both the same way; one at a time."""
    tie, plate = Scene().timbers()
    loose = timber("tie", first_face="up", reference_end="east", second_face="north")
    assert _faults(lap(), loose, plate) == [("timber", 'give it a place with "at"')]
    same = timber("plate", first_face="up", second_face="north", reference_end="west", **PLACED)
    assert [key for key, _ in _faults(lap(), tie, same)] == ["into"]
    incline = {
        "foot": {"east": "0", "north": "0", "up": "0"},
        "towards": "north",
        "run": "4'",
        "rise": "3'",
    }
    rafter = timber("plate", first_face="up", length=None, incline=incline)
    assert [key for key, _ in _faults(lap(), tie, rafter)] == ["into"]
    roll = {"towards": "east", "run": "4'", "rise": "3'"}
    purlin = timber("plate", first_face="up", reference_end="south", roll=roll, **PLACED)
    (fault,) = lap().faults({"tie": tie, "plate": purlin})
    assert fault.problem == "laps Plate, which is rolled to lie in a slope"


def test_ends_that_a_timber_has_not() -> None:
    """Each is told at its own key."""
    tie, plate = Scene(corner="north").timbers()
    joint = lap(end="north", into_end="east")
    assert [key for key, _ in _faults(joint, tie, plate)] == ["end", "into_end"]


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    joint = lap(end="east", share="tie let-in - 1/2", flare_far="1", past="2")
    assert LapJoint.model_validate(joint.model_dump()) == joint
