"""What a scarf's record holds, settles and refuses."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.scarf.record import MAY, NEEDS, Kind, ScarfJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction
from benchmate.model.project import Timber
from benchmate.model.work import Abutment, Extension, Settled
from tests.builders import length, lengths, timber
from tests.joinery.scarf.plates import KINDS, plate, scarf, stick

EVERY: dict[str, object] = {
    "butt": "2",
    "squint": "1/2",
    "key": "1-1/2",
    "tongue": "1-1/2",
    "tongue_length": "3",
    "set_back": "3",
    "bottom_clearance": "1/4",
}
"""Every key that only some kinds have."""


def test_two_14_foot_sticks_are_scarfed_to_25_feet() -> None:
    """Trade notes 7.5 row 38, Scarf101: a 3' lap is lost, once (5.3, the lap omitted)."""
    made = plate(joint={"at": "12' 6"}, one={"reference_end_at": "0"}, other={"far_end_at": "25'"})
    one, other = made.stick("one"), made.stick("other")
    assert (one.overall, other.overall) == lengths("14'", "14'")
    assert (one.body, one.far, other.near, other.body) == lengths("11'", "3'", "3'", "11'")


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("lap", ["3 ft", "2 ft 6", "3 ft 1/64"])
def test_the_lap_counts_once_in_the_lengths_of_both_sticks(kind: str, lap: str) -> None:
    """Both overall lengths are the line and the lap, whatever its ends look like."""
    made = plate(kind, joint={"length": lap})
    both = made.stick("one").overall + made.stick("other").overall
    assert both == length("28'") + length(lap.replace(" ft", "'"))


def test_the_middle_of_the_scarf_lies_at_its_coordinate() -> None:
    """Each shoulder stands half the lap before it, the way its end looks; an odd nanometre more."""
    joint = scarf(length="3 ft")
    half = length("18")
    assert joint.abutments() == (
        Abutment("one", Direction.EAST, "other", joint.at, half),
        Abutment("other", Direction.WEST, "one", joint.at, half),
    )
    odd = scarf(length=Length(7))
    assert [each.short for each in odd.abutments()] == [Length(3), Length(4)]


def test_a_tongue_reaches_past_the_shoulder_beside_it() -> None:
    """The lap is from tip to tip: 36" with 3" tongues is 30" from shoulder to shoulder."""
    joint = scarf("bridled")
    assert (joint.between, joint.tongued) == lengths("30", "3")
    assert joint.extensions() == (
        Extension("one", Direction.EAST, length("33"), lap=True),
        Extension("other", Direction.WEST, length("33"), lap=True),
    )
    plain = scarf("under-squinted")
    assert (plain.between, plain.tongued) == (length("36"), ZERO)
    assert [each.length for each in plain.extensions()] == [length("36")] * 2


def test_it_settles_an_end_of_either_stick() -> None:
    """So neither end is said again, and both are told at the key that names them."""
    joint = scarf()
    assert joint.settled() == (
        Settled("one", Direction.EAST, "end"),
        Settled("other", Direction.WEST, "into"),
    )
    assert ScarfJoint.settling == ("timber", "into")
    assert (joint.timbers(), set(joint.sums())) == ({"timber": "one", "into": "other"}, {"at"})
    assert joint.joins()


@pytest.mark.parametrize("kind", NEEDS)
def test_each_kind_has_its_own_keys(kind: Kind) -> None:
    """What it needs is missed, what it may have is taken, and what is another's is refused."""
    scarf(kind)
    scarf(kind, **{key: EVERY[key] for key in (*NEEDS[kind], *MAY[kind])})
    for key in NEEDS[kind]:
        with pytest.raises(ValidationError, match=f'is "{kind}" but has no "{key}"'):
            scarf(kind, **{key: None})
    for key in set(EVERY) - {*NEEDS[kind], *MAY[kind]}:
        with pytest.raises(ValidationError, match=f'is "{kind}", which has no "{key}"'):
            scarf(kind, **{key: EVERY[key]})


def test_a_timber_is_not_scarfed_to_itself() -> None:
    """It takes two."""
    with pytest.raises(ValidationError, match="cannot join a timber to itself"):
        scarf(into="one")


def told(one: Timber, other: Timber, **words: object) -> list[str]:
    """The keys of what cannot be, of two timbers and a scarf between them."""
    return [fault.key for fault in scarf("half lap", **words).faults({"one": one, "other": other})]


ONE, OTHER = stick("one", reference_end_at="0"), stick("other", far_end_at="28'")
RAKING = timber(
    "other",
    first_face="up",
    second_face="south",
    length=None,
    incline={
        "corner": {"east": "0", "north": "0", "up": "3'"},
        "legs": {"down": "3'", "east": "3'"},
    },
)
ROLLED = {"roll": {"towards": "north", "run": "3", "rise": "2"}}


@pytest.mark.parametrize(
    ("one", "other", "words", "keys"),
    [
        (ONE, OTHER, {}, []),
        (ONE, OTHER, {"keeps": "south"}, []),
        (ONE, stick("other", first_face="south", second_face="up"), {}, []),
        (ONE, stick("other", reference_end="east"), {}, []),
        (ONE, OTHER, {"end": "west"}, []),
        (ONE, OTHER, {"end": "north"}, ["end"]),
        (ONE, OTHER, {"keeps": "east"}, ["keeps"]),
        (ONE, OTHER, {"keeps": "west"}, ["keeps"]),
        (ONE, RAKING, {}, ["into"]),
        (RAKING, OTHER, {}, ["timber"]),
        (ONE, stick("other", **ROLLED), {}, ["into"]),
        (stick("one", **ROLLED), stick("other", **ROLLED), {}, ["timber"]),
        (ONE, stick("other", second_face="west", reference_end="south"), {}, ["into"]),
        (ONE, stick("other", at=None, length="14'"), {}, ["into"]),
        (stick("one", at=None, length="14'"), OTHER, {}, ["timber"]),
        (ONE, stick("other", first_face="down"), {}, ["into"]),
        (ONE, stick("other", second_face="north"), {}, ["into"]),
    ],
)
def test_what_keeps_two_timbers_from_being_one_line(
    one: Timber, other: Timber, words: dict[str, object], keys: list[str]
) -> None:
    """The first reason alone, at the key to mend."""
    assert told(one, other, **words) == keys


def test_a_fault_names_the_timbers_and_what_to_do() -> None:
    """By the names a framer gave them."""
    (fault,) = scarf().faults({"one": ONE, "other": stick("other", first_face="down")})
    assert "Other is not measured from the top face and South face, as One is" in fault.problem
    assert fault.remedy
    (fault,) = scarf(keeps="east").faults({"one": ONE, "other": OTHER})
    assert "where an end of One looks" in fault.problem
    assert "north, south, up, down" in fault.remedy
