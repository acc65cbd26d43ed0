"""What a brace's record takes, refuses and answers."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing, Extension
from tests.builders import length, timber
from tests.joinery.brace.bays import bay, brace_joint


def test_it_joins_a_brace_and_one_other() -> None:
    """Both are told by key."""
    assert brace_joint().timbers() == {"timber": "brace", "into": "post"}
    assert brace_joint().mortise == "brace-foot-mortise"


def test_a_brace_does_not_enter_itself() -> None:
    """It is told where it is read."""
    with pytest.raises(ValidationError, match="own timber"):
        brace_joint(into="brace")


def test_its_end_is_housed_and_tenoned_square_to_the_face() -> None:
    """1/2" of housing and 4" of tenon, nosed, and the long edge bears at the face itself."""
    joint = brace_joint()
    assert joint.extensions() == (
        Extension("brace", Direction.DOWN, length("4-1/2"), shape="nosed"),
    )
    assert joint.bearings() == (
        Bearing("brace", Direction.DOWN, "post", ZERO, "brace-foot-mortise"),
    )


def _faults(*, low: bool = False, **own: dict[str, object]) -> tuple[str, ...]:
    frame = bay(low=low, own=own)
    timbers = {name: frame.timber(name) for name in ("post", "beam", "brace")}
    works = [work for work in frame.project.works if "brace" in work.id]
    return tuple(fault.problem for work in works for fault in work.faults(timbers))


@pytest.mark.parametrize("low", [False, True])
def test_a_sound_brace_has_no_fault(low: bool) -> None:
    """From post to beam, and from sill to post."""
    assert _faults(low=low) == ()


def test_a_brace_measured_from_its_short_edge_is_told_at_both_ends() -> None:
    """Variation goes to the inside, so the long edge has to be the reference."""
    found = _faults(brace={"first_face": "up"})
    assert found == ("Brace is measured from its short edge, inside the corner",) * 2


def test_what_it_cannot_stand_between() -> None:
    """A timber that stands, one out of its plane, one that rakes, and an end it does not have."""
    frame = bay()
    timbers = {name: frame.timber(name) for name in ("post", "beam", "brace")}
    timbers["across"] = timber(
        "across", reference_end="south", second_face="up", first_face="west", length="9'"
    )
    timbers["tie"] = timber(
        "tie",
        reference_end="south",
        second_face="up",
        first_face="west",
        length="9'",
        at={"east": "0", "up": "0"},
        reference_end_at="0",
    )
    told = {
        "is for a timber that rakes": brace_joint(timber="post", into="beam"),
        "Brace has a place in the frame, but Across has none": brace_joint(into="across"),
        "Tie does not run in the upright plane": brace_joint(into="tie"),
        "its ends are its foot and its head": brace_joint(end="west"),
    }
    for words, joint in told.items():
        (fault,) = joint.faults(timbers)
        assert words in fault.problem


def test_two_braces_do_not_stand_on_one_another() -> None:
    """A raking timber has no upright or level face to close a right angle with."""
    frame = bay()
    timbers = {name: frame.timber(name) for name in ("post", "beam", "brace")}
    timbers["other"] = timbers["brace"].model_copy(update={"id": "other", "name": "Other"})
    (fault,) = brace_joint(into="other").faults(timbers)
    assert fault.problem == "Other rakes too, and a brace stands between an upright and a level"


def test_sizes_may_not_be_below_nothing() -> None:
    """A tenon is longer than nothing, a housing at least nothing."""
    for words in ({"length": "0"}, {"thickness": "0"}, {"housing": "-1/2"}, {"nose": "-1"}):
        with pytest.raises(ValidationError):
            brace_joint(**words)
    assert brace_joint(ease="0").ease == Length(0)
