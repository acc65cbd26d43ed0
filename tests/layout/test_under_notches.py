"""The walk of a timber on which one joint's notch lies over another joint."""

import pytest

from benchmate.layout.walk import _late, lay_out
from benchmate.model.directions import Face
from benchmate.model.floors import Floor
from tests.builders import length, real
from tests.joinery.tenon.head_ties import MORTISE, head_tie


def test_of_joints_one_over_the_other_the_uppermost_is_made_first() -> None:
    """A mortise in a notch, itself in a wider one: each after what lies over it."""
    floors = tuple(
        Floor(timber="sill", under=under, over=over, face=Face.FIRST, at=length("1"), name=over)
        for under, over in (("mortise", "notch"), ("notch", "lap"), ("mortise", "lap"))
    )
    assert _late(floors) == {"mortise": 2, "notch": 1}


def test_floors_that_lie_over_one_another_in_a_circle_still_have_an_order() -> None:
    """No timber can be cut so; but what cannot be is told, and never hangs the program."""
    floors = tuple(
        Floor(timber="sill", under=under, over=over, face=Face.FIRST, at=length("1"), name=over)
        for under, over in (("one", "other"), ("other", "one"))
    )
    assert set(_late(floors)) == {"one", "other"}


def test_what_lies_under_a_notch_is_made_after_that_was_measured_as_cut() -> None:
    """Its floor lies where it came out."""
    steps = [step.id for step in lay_out(head_tie(lap={}), "tie").steps]
    order = [
        "tie-lap-lap/try-floor",
        "tie-lap-lap/as-cut",
        f"{MORTISE}/strike-anew",
        f"{MORTISE}/bore",
        f"{MORTISE}/try-depth",
    ]
    assert [step for step in steps if step in order] == order


@pytest.mark.parametrize(("cut", "deep"), [(None, "3-5/8"), ("8-3/8", "3-1/2"), ("8-5/8", "3-3/4")])
def test_the_depth_under_a_notch_follows_the_notch_as_it_came_out(
    cut: str | None, deep: str
) -> None:
    """Laid out to leave 8-1/2" of the tie; what is left over the mortise stays 4-7/8"."""
    made = {} if cut is None else {"tie-lap-lap": {"thickness": cut}}
    built = head_tie(lap={}, real={"tie": real(as_cut=made)})
    step = lay_out(built, "tie").step(f"{MORTISE}/bore")
    assert step.readings[0].value == length(deep)
    assert [each.value for each in step.beside] == [length("4-7/8")]
