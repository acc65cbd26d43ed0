"""A stick finds its real sizes, and names its places."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.section import read_section
from benchmate.model.directions import LONG_FACES, Direction, Face, Pose
from benchmate.model.progress import Measured
from benchmate.model.solids import Axis
from benchmate.model.stick import (
    ALL_ALONG,
    Stick,
    across,
    axis_from,
    end_place,
    reference_for,
)
from tests.builders import length


def _stick(**measured: Measured) -> Stick:
    return Stick(
        id="post",
        name="Post",
        pose=Pose(Direction.SOUTH, Direction.WEST, Direction.DOWN),
        nominal=read_section("6 x 8"),
        body=length("7' 11"),
        near=length("5"),
        far=length("4"),
        trim=length("1"),
        measured=measured,
        as_cut={},
    )


def test_a_stick_runs_from_its_reference_end_through_zero() -> None:
    """Law 2: x is zero at the reference shoulder, so the squared end is at minus the tenon."""
    stick = _stick()
    assert (stick.start, stick.finish) == (-length("5"), length("8' 3"))
    assert stick.finish - stick.start == stick.overall == length("8' 8")


def test_the_first_place_measured_counts_for_each_side_apart() -> None:
    """One side may be measured at the joint, the other only for the whole stick."""
    stick = _stick(
        joint=Measured(first=length("6-1/16")),
        foot=Measured(first=length("6-1/8"), second=length("7-7/8")),
        all=Measured(first=length("7"), second=length("7")),
    )
    assert ALL_ALONG == "all"
    assert stick.section("joint", "foot") == read_section("6-1/16 x 7-7/8")
    assert stick.section("joint") == read_section("6-1/16 x 7")
    assert stick.section("elsewhere") == stick.section() == read_section("7 x 7")
    assert _stick().section("joint") == read_section("6 x 8")


@given(st.sampled_from(LONG_FACES))
def test_axes_and_faces_agree(face: Face) -> None:
    """An axis across starts at a reference face, and the other axis at the other."""
    axis = axis_from(face)
    assert axis_from(face.opposite) is axis
    assert reference_for(axis) in (face, face.opposite)
    assert reference_for(axis).is_reference
    assert across(axis) is not axis
    assert across(across(axis)) is axis
    assert Axis.ALONG not in (axis, across(axis))


@pytest.mark.parametrize(
    ("direction", "place"),
    [(Direction.DOWN, "foot"), (Direction.UP, "head"), (Direction.WEST, "west-end")],
)
def test_ends_are_places_with_plain_names(direction: Direction, place: str) -> None:
    """The names are part of ids, so they are words."""
    assert end_place(direction) == place


def test_a_stick_names_its_own_ends() -> None:
    """A post standing on its reference end has its foot there."""
    assert _stick().place_at(Face.REFERENCE_END) == "foot"
    assert _stick().place_at(Face.FAR_END) == "head"
