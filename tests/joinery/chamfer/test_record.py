"""What the record of a chamfer accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.chamfer.record import ARRISES, Chamfer, Stop
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Face
from tests.builders import chamfer, sill, timber

LEVEL = {"level": "floor top + 8"}
FOOT = {"shoulder": "foot", "distance": "12"}


def test_the_four_arrises_are_the_four_pairs_of_adjacent_faces() -> None:
    """Each arris lies between a first-side and a second-side face, and no two are the same."""
    pairs = set(ARRISES.values())
    firsts, seconds = (Face.FIRST, Face.FAR_FIRST), (Face.SECOND, Face.FAR_SECOND)
    assert pairs == {(first, second) for first in firsts for second in seconds}


def test_a_stop_is_a_distance_from_a_shoulder_or_a_level() -> None:
    """Either way of saying it is enough, and the other stays empty."""
    assert Stop.model_validate(FOOT).level is None
    assert Stop.model_validate(LEVEL).shoulder is None


@pytest.mark.parametrize(
    "words",
    [
        {},
        {"shoulder": "foot"},
        {"distance": "12"},
        FOOT | LEVEL,
        LEVEL | {"shoulder": "foot"},
        LEVEL | {"distance": "12"},
    ],
)
def test_a_stop_said_by_halves_or_twice_is_refused(words: dict[str, str]) -> None:
    """It would leave two answers to where the chamfer ends, or none."""
    with pytest.raises(ValidationError, match="shoulder"):
        Stop.model_validate(words)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"on": []}, "at least 1"),
        ({"arrises": []}, "at least 1"),
        ({"on": ["post", "post"]}, 'twice in "on"'),
        ({"arrises": ["far-far", "far-far"]}, 'twice in "arrises"'),
        ({"arrises": ["south-west"]}, "first-second"),
        ({"leg": "0"}, "more than nothing"),
        ({"depth": "1"}, "Extra inputs"),
        ({"near_stop": {"shoulder": "foot", "distance": "12", "from": "end"}}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A chamfer that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        chamfer(**words)


def test_the_timbers_and_sums_are_told_by_key() -> None:
    """A dangling name can be reported at the key that holds it."""
    found = chamfer(on=["post-sw", "post-se"], near_stop=LEVEL)
    assert found.timbers() == {"on[0]": "post-sw", "on[1]": "post-se"}
    assert found.sums() == {
        "near_stop.level": read_sum("floor top + 8"),
        "far_stop.distance": read_sum("6"),
    }


def test_posts_that_share_a_chamfer_do_not_meet() -> None:
    """The size of one says nothing about the marks of the other."""
    assert not chamfer(on=["post-sw", "post-se"]).joins()


def test_its_faults_beside_the_timbers_it_names() -> None:
    """An end a timber lacks, a level across a level timber, a post at no known level."""
    timbers = {
        "post": timber("post"),
        "level-post": timber("level-post", shoulder_level="sill top"),
        "placed-post": timber("placed-post", at={"east": "0", "north": "0"}),
        "sill": sill(),
    }
    assert chamfer().faults(timbers) == ()
    for known in ("level-post", "placed-post"):
        assert chamfer(on=[known], near_stop=LEVEL).faults(timbers) == ()
    faults = chamfer(on=["post", "sill"]).faults(timbers)
    assert [fault.key for fault in faults] == ["near_stop.shoulder", "far_stop.shoulder"]
    west = {"shoulder": "west", "distance": "12"}
    east = {"shoulder": "east", "distance": "12"}
    assert chamfer(on=["sill"], near_stop=west, far_stop=east).faults(timbers) == ()
    (fault,) = chamfer(on=["sill"], near_stop=west, far_stop=LEVEL).faults(timbers)
    assert fault.key == "far_stop.level"
    assert "does not stand upright" in fault.problem
    (fault,) = chamfer(on=["post"], near_stop=LEVEL).faults(timbers)
    assert fault.key == "near_stop.level"
    assert "shoulder_level" in fault.remedy


def test_a_raking_timber_takes_stops_from_its_shoulders() -> None:
    """A level does not cross it square; its foot and its head are ends as any."""
    incline = {
        "foot": {"east": "0", "north": "0", "up": "0"},
        "towards": "east",
        "run": "3'",
        "rise": "3'",
    }
    faces = {"first_face": "up", "second_face": "south"}
    brace = {"brace": timber("brace", length=None, incline=incline, **faces)}
    assert chamfer(on=["brace"]).faults(brace) == ()
    (fault,) = chamfer(on=["brace"], near_stop=LEVEL).faults(brace)
    assert (fault.key, "Brace does not stand upright" in fault.problem) == ("near_stop.level", True)


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    found = chamfer(near_stop=LEVEL, arrises=["first-far", "far-far"])
    assert Chamfer.model_validate(found.model_dump(exclude_none=True)) == found
