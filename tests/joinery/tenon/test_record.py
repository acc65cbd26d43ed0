"""What the record of a tenon accepts, and what it answers."""

import pytest
from pydantic import ValidationError

from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing, Extension
from tests.builders import length, sill, tenon, timber
from tests.joinery.tenon.girts import PEGS


def test_a_post_alone_needs_only_the_tenon() -> None:
    """Reliefs, inset and allowance start at nothing, and the shop gives the clearance."""
    joint = tenon()
    assert (joint.into, joint.at, joint.bottom_clearance) == (None, None, None)
    assert {joint.relief_reference, joint.relief_far, joint.all_round} == {ZERO}


THROUGH: dict[str, object] = {"into": "sill", "at": "4'", "through": True, "length": None}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"at": "4'"}, 'has "at" but no "into"'),
        ({"inset": "1"}, 'has "inset", "housing" or "bottom_clearance" but no "into"'),
        ({"housing": "1/2"}, 'but no "into"'),
        ({"bottom_clearance": "0"}, 'but no "into"'),
        ({"into": "sill", "housing": "-1/2"}, "not below zero"),
        ({"into": "sill", "scribed": "yes"}, "boolean"),
        ({"into": "sill", "at": "4'", "cheeks_from": "first"}, "cheeks_from"),
        ({"into": "post", "at": "4'"}, "its own timber"),
        ({"length": "0"}, "more than nothing"),
        ({"thickness": "0"}, "more than nothing"),
        ({"set_back": "-1"}, "not below zero"),
        ({"relief_far": "5'"}, "more than 4' 0\""),
        ({"end": "up"}, "end of a timber"),
        ({"end": 1}, "end of a timber"),
        ({"cheeks_from": "far"}, "first"),
        ({"family": "brace tenon"}, "tenon"),
        ({"haunch": "1"}, "Extra inputs"),
        ({"length": 5}, "not text"),
        ({"length": None}, "is missing; write length = ... here, or through = true"),
        ({"into": "sill", "at": "4'", "through": True, "length": "0"}, "more than nothing"),
        ({"through": True}, 'has "through" but no "into"'),
        (THROUGH | {"bottom_clearance": "1/8"}, 'has no bottom; remove "bottom_clearance"'),
        (THROUGH | {"bottom_clearance": "0"}, "has no bottom"),
        ({"held_short": "1/4"}, 'has "held_short" but does not go through'),
        (THROUGH | {"held_short": "-1/4"}, "not below zero"),
        (THROUGH | {"through": "yes"}, "boolean"),
        ({"pegs": {**PEGS, "blind_depth": "5"}}, 'pegs with "blind_depth" but no "into"'),
        ({"pegs": {**PEGS, "count": 9}}, "no number of pegs"),
        ({"pegs": "2"}, "dictionary"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A record that could not be cut is refused, and the message says why."""
    with pytest.raises(ValidationError, match=says):
        tenon(**words)


def test_the_timbers_it_joins_are_told_by_key() -> None:
    """A dangling name can be reported at the key that holds it."""
    assert tenon().timbers() == {"timber": "post"}
    assert tenon(into="sill", at="4'").timbers() == {"timber": "post", "into": "sill"}


def test_the_sums_it_holds_are_told_by_key() -> None:
    """Names of levels in `at` and `inset` can be looked up."""
    assert tuple(tenon().sums()) == ("inset",)
    sums = tenon(into="sill", at="line 1 + 6", inset="reveal").sums()
    assert {key: total.names() for key, total in sums.items()} == {
        "inset": ("reveal",),
        "at": ("line 1",),
    }


def test_the_tenon_and_its_allowance_lengthen_the_post() -> None:
    """The stick is longer by what lies beyond the shoulder."""
    joint = tenon(end="head", length="4", end_allowance="1/2")
    assert joint.extensions() == (Extension("post", Direction.UP, length("4-1/2")),)


def test_a_tenon_that_goes_through_is_as_long_as_what_it_passes() -> None:
    """The frame measures that; the record knows what is left on it and what it is held short."""
    joint = tenon(**THROUGH, end_allowance="1/2", held_short="3/4", housing="1/2")
    (bearing,) = joint.bearings()
    assert joint.extensions() == (
        Extension("post", Direction.DOWN, length("-1/4"), through=bearing),
    )
    assert joint.passes() == bearing
    typed = tenon(**(THROUGH | {"length": "9"}))
    assert typed.extensions() == (Extension("post", Direction.DOWN, length("9")),)
    assert typed.passes() is None
    assert tenon().passes() is None


@pytest.mark.parametrize(
    ("words", "reference", "far"),
    [
        ({}, "0", "0"),
        ({"all_round": "1/2"}, "1/2", "1/2"),
        ({"all_round": "1/2", "relief_reference": "1"}, "1", "1/2"),
        ({"all_round": "1/2", "relief_far": "1/4"}, "1/2", "1/4"),
    ],
)
def test_what_comes_off_each_narrow_edge(words: dict[str, str], reference: str, far: str) -> None:
    """A relief counts on its own edge, all round on the others."""
    joint = tenon(**words)
    assert joint.reference_cut_back() == length(reference)
    assert joint.far_cut_back() == length(far)


def test_its_faults_beside_the_timbers_it_names() -> None:
    """An end the post lacks, or a receiver that runs the post's way, is a fault with its key."""
    post, level, other = timber("post"), sill(), timber("other")
    assert tenon().faults({"post": post}) == ()
    assert tenon(into="sill", at="4'").faults({"post": post, "sill": level}) == ()
    (fault,) = tenon(end="west").faults({"post": post})
    assert fault.key == "end"
    (fault,) = tenon(into="other", at="4'").faults({"post": post, "other": other})
    assert fault.key == "into"


AT = {"east": "4'", "north": "0"}


def test_where_it_crosses_is_typed_or_settled_by_places() -> None:
    """`at` is missed where nothing else says it, and `inset` goes with it; places say both."""
    typed = {"post": timber("post"), "sill": sill()}
    placed = {"post": timber("post", at=AT), "sill": sill(at={"north": "0", "up": "0"})}
    (fault,) = tenon(into="sill").faults(typed)
    assert fault.key == "at"
    assert "Post crosses Sill" in fault.problem
    assert tenon(into="sill", at="4'", inset="1").faults(typed) == ()
    assert tenon(into="sill", housing="1/2").faults(placed) == ()
    said_twice = tenon(into="sill", at="4'", inset="1").faults(placed)
    assert [fault.key for fault in said_twice] == ["at", "inset"]


def test_a_raking_timber_has_no_square_joint() -> None:
    """Neither into it nor from it."""
    level = {"corner": AT | {"up": "7'"}, "legs": {"down": "3'", "east": "3'"}}
    words = {"first_face": "up", "second_face": "south", "length": None, "incline": level}
    timbers = {"brace": timber("brace", **words), "sill": sill(at={"north": "0", "up": "0"})}
    (fault,) = tenon(timber="brace", into="sill").faults(timbers)
    assert fault.key == "into"
    assert "Brace, which rakes" in fault.problem
    (fault,) = tenon(timber="sill", end="west", into="brace").faults(timbers)
    assert (fault.key, "Brace, which rakes" in fault.problem) == ("into", True)


def test_where_its_end_bears() -> None:
    """In the housing of the receiving timber, measured at the mortise; alone it bears nowhere."""
    found = tenon(into="sill", housing="1/2", scribed=True).bearings()
    assert found == (
        Bearing("post", Direction.DOWN, "sill", length("1/2"), "post-foot-mortise", scribed=True),
    )
    assert not tenon(into="sill").bearings()[0].scribed
    assert tenon(into="sill").bearings()[0].depth == ZERO
    assert tenon().bearings() == ()


def test_a_record_says_itself_again() -> None:
    """What is written to the file reads back equal."""
    words = {"into": "sill", "at": "line 1 - 1/2"}
    for joint in (
        tenon(**words, relief_reference="1-1/4", bottom_clearance="0"),
        tenon(**THROUGH, held_short="1/4", pegs={**PEGS, "blind_depth": "5"}),
        tenon(**(THROUGH | {"length": "9"})),
    ):
        assert TenonJoint.model_validate(joint.model_dump(exclude_defaults=True)) == joint
