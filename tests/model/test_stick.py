"""A stick finds its real sizes, and names its places."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import ZERO, Length
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
from tests.builders import length, lengths
from tests.corner import sixtyfourths


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


def test_other_joints_lie_in_the_body_or_in_a_lap() -> None:
    """A tenon is no room for a mortise, but the lap of a scarf is."""
    stick = _stick()
    assert stick.room == (ZERO, length("7' 11"))
    near, far = (replace(stick, lapped=(end,)) for end in (Face.REFERENCE_END, Face.FAR_END))
    assert near.room == (-length("5"), length("7' 11"))
    assert far.room == (ZERO, length("8' 3"))


def test_a_joint_runs_past_the_room_there_is() -> None:
    """At whichever end it is more; below nothing while it lies inside."""
    stick = _stick()
    assert stick.past_room(length("-1/2"), length("12")) == length("1/2")
    assert stick.past_room(length("-1/2"), length("8'")) == length("1")
    assert stick.past_room(length("2"), length("7'")) == -length("2")
    lapped = replace(stick, lapped=(Face.REFERENCE_END,))
    assert lapped.past_room(length("-1/2"), length("7'")) == -length("4-1/2")


@pytest.mark.parametrize(
    ("face", "deep"),
    [
        (Face.FIRST, "2"),
        (Face.FAR_FIRST, "4-1/8"),
        (Face.SECOND, "2"),
        (Face.FAR_SECOND, "6"),
    ],
)
def test_a_reading_counts_from_either_face(face: Face, deep: str) -> None:
    """A 6 x 8 post that measures 6-1/8 there: 2" from its south face is 4-1/8" from its north.

    So far in from a far face, the reading is the same again.
    """
    stick = _stick(here=Measured(first=length("6-1/8")))
    assert stick.in_from(face, length("2"), "here") == length(deep)
    assert stick.in_from(face, length(deep), "here") == length("2")


def wood(inner: str | None = None, **measured: Measured) -> Stick:
    """The post by square rule with an inner section, or by mill rule."""
    given = None if inner is None else read_section(inner)
    return replace(_stick(**measured), inner=given)


BOTH = (Axis.FIRST, Axis.SECOND)


def both(*texts: str) -> tuple[Length, Length]:
    """A size on either axis."""
    first, second = lengths(*texts)
    return first, second


def test_what_is_held_is_drawn_or_inner() -> None:
    """Far lines are struck there whatever the stick measures."""
    big = Measured(first=length("9"), second=length("9"))
    for mill in (wood(), wood(all=big)):
        assert tuple(map(mill.held, BOTH)) == both("6", "8")
    for square in (wood("5-1/2 x 7-3/4"), wood("5-1/2 x 7-3/4", all=big)):
        assert tuple(map(square.held, BOTH)) == both("5-1/2", "7-3/4")
        assert tuple(map(square.drawn, BOTH)) == both("6", "8")


@given(
    sixtyfourths(5, 9), sixtyfourths(5, 9), st.sampled_from((None, "5-1/2 x 7-3/4", "7 x 6-1/8"))
)
def test_what_the_frame_counts_on_and_what_comes_off(
    first: Length, second: Length, inner: str | None
) -> None:
    """Law: real is framed and over. By mill rule nothing is over, by square rule framed is held."""
    stick = wood(inner, joint=Measured(first=first, second=second))
    for axis, real in zip(BOTH, (first, second), strict=True):
        framed, over = stick.framed(axis, "joint"), stick.over(axis, "joint")
        assert framed + over == real == stick.depth(axis, "joint")
        assert (over == ZERO) if inner is None else (framed == stick.held(axis))


def test_a_stick_smaller_than_its_inner_timber_is_under_it_by_so_much() -> None:
    """Law 7: below nothing, and never nothing."""
    stick = wood("5-1/2 x 7-3/4", joint=Measured(first=length("5-3/8")))
    assert stick.over(Axis.FIRST, "joint") == -length("1/8")
    assert stick.over(Axis.SECOND, "joint") == length("1/4")


def test_what_is_over_comes_off_far_faces_alone() -> None:
    """On a reference face there is nothing to take."""
    stick = wood("5-1/2 x 7-3/4")
    faces = (Face.FIRST, Face.FAR_FIRST, Face.SECOND, Face.FAR_SECOND)
    assert [stick.over_on(face, "joint") for face in faces] == list(lengths("0", "1/2", "0", "1/4"))


def test_a_depth_counts_as_measured_only_where_somebody_measured_it() -> None:
    """At the joint, else at the next place, else for the whole stick, each side apart."""
    stick = wood(joint=Measured(first=length("6-1/8")), all=Measured(second=length("8-1/4")))
    assert stick.measured_depth(Axis.FIRST, "joint") == length("6-1/8")
    assert stick.measured_depth(Axis.FIRST, "foot", "joint") == length("6-1/8")
    assert stick.measured_depth(Axis.FIRST, "foot") is None
    assert stick.measured_depth(Axis.SECOND, "joint") == length("8-1/4")
    assert wood().measured_depth(Axis.FIRST, "joint") is None
    assert wood().depth(Axis.FIRST, "joint") == length("6")


@pytest.mark.parametrize("end", [Face.REFERENCE_END, Face.FAR_END])
def test_a_place_so_far_back_from_a_shoulder(end: Face) -> None:
    """Both shoulders are read from the reference shoulder."""
    stick = wood()
    shoulder = stick.shoulder(end)
    assert shoulder == (ZERO if end is Face.REFERENCE_END else length("7' 11"))
    assert abs(stick.back_from(end, length("3")) - shoulder) == length("3")
    assert ZERO < stick.back_from(end, length("3")) < stick.body


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


@pytest.mark.parametrize("reference_end", ["foot", "head"])
def test_a_raking_stick_names_its_ends_foot_and_head(reference_end: str) -> None:
    """As it is called on the horses, and as its sizes are kept."""
    low = Direction.WEST if reference_end == "foot" else Direction.EAST
    pose = Pose(Direction.UP, Direction.SOUTH, low, head=Direction.EAST)
    stick = replace(_stick(), pose=pose)
    assert stick.place_at(Face.REFERENCE_END) == reference_end
    assert {stick.place_at(Face.REFERENCE_END), stick.place_at(Face.FAR_END)} == {"foot", "head"}
