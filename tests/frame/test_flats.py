"""Planes in the building and in a timber."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.flats import (
    Flat,
    along_at,
    behind,
    built,
    carried,
    deep_at,
    leaning,
    nearest,
    reversed_plane,
    shifted,
    through_spot,
)
from benchmate.frame.place import Place, raking_ways, square_ways
from benchmate.frame.rake import root
from benchmate.measure.length import Length
from benchmate.model.directions import Direction, Pose
from benchmate.model.solids import Axis, Plane

POST = Pose(Direction.SOUTH, Direction.WEST, Direction.DOWN)
RAFTER = Pose(Direction.UP, Direction.SOUTH, Direction.WEST, head=Direction.EAST)

NM = st.integers(-(10**10), 10**10)
LEGS = st.tuples(st.integers(10**7, 10**10), st.integers(10**7, 10**10))


def post(origin: tuple[int, int, int] = (0, 0, 0)) -> Place:
    """A place where a post with its south and west faces first stands on its foot."""
    return Place(origin=origin, ways=square_ways(POST))


def rafter(run: int, rise: int) -> Place:
    """A place where a rafter rises to the east from the building's zero."""
    return Place(origin=(0, 0, 0), ways=raking_ways(RAFTER, run, rise, root(run**2 + rise**2)))


def test_a_face_of_the_building_is_a_depth_in_a_post() -> None:
    """All that lies more than 5 north of zero is 5 in from a south face."""
    north_of_five = behind(Direction.SOUTH, 5)
    assert carried(north_of_five, post(), "x") == Plane((0, -1, 0), -5, "x")


def test_behind_keeps_what_looks_back() -> None:
    """Behind UP at 5 is all below it, behind DOWN at 5 all above."""
    assert behind(Direction.UP, 5) == Flat((0, 0, 1), 5)
    assert behind(Direction.DOWN, 5) == Flat((0, 0, -1), -5)


@given(origin=st.tuples(NM, NM, NM), at=NM, direction=st.sampled_from(Direction))
def test_a_plane_comes_back_from_a_post_as_it_went(
    origin: tuple[int, int, int], at: int, direction: Direction
) -> None:
    """Carried into a timber that stands and built again, a plane is the same."""
    flat = behind(direction, at)
    assert built(carried(flat, post(origin)), post(origin)) == flat


@given(legs=LEGS, at=NM)
def test_a_plumb_plane_slants_across_a_rafter_by_run_and_rise(
    legs: tuple[int, int], at: int
) -> None:
    """On the top edge it lies its level distance times length over run along."""
    run, rise = legs
    plane = carried(behind(Direction.EAST, at), rafter(run, rise))
    exact = Fraction(at) * root(run**2 + rise**2) / run
    assert abs(along_at(plane, Axis.FIRST, Length(0)).nm - exact) <= Fraction(1, 2)
    assert plane.normal[0] * rise == plane.normal[1] * run
    assert plane.normal[2] == 0


def test_a_level_plane_is_square_to_a_plumb_one() -> None:
    """In the rafter as in the building."""
    place = rafter(4, 3)
    plumb, level = (carried(behind(way, 0), place) for way in (Direction.EAST, Direction.UP))
    assert sum(a * b for a, b in zip(plumb.normal, level.normal, strict=True)) == 0


def test_a_plane_moves_ahead_of_its_waste() -> None:
    """A slope of 3 in 4 moved by 5 along its normal lies 25/4 further where it is crossed level."""
    flat = Flat((4, 3, 0), 0).moved(Length(500))
    assert Fraction(flat.offset, flat.normal[0]) == Fraction(2500, 4)
    assert shifted(Plane((1, 0, 0), 7, "x"), Length(3)) == Plane((1, 0, 0), 10, "x")


def test_a_small_normal_loses_nothing_when_it_is_moved() -> None:
    """At 45 degrees a move of 1,000,000 shows as 1,414,214 along an axis, not as 1,000,000."""
    moved = shifted(Plane((1, 1, 0), 0), Length(1_000_000))
    assert along_at(moved, Axis.FIRST, Length(0)) == Length(1_414_214)


def test_along_and_deep_are_two_ways_to_read_one_plane() -> None:
    """A plane that comes in 1 for every 4 along."""
    plane = Plane((1, 0, -4), 100)
    assert along_at(plane, Axis.SECOND, Length(25)) == Length(200)
    assert deep_at(plane, Axis.SECOND, Length(200)) == Length(25)


def test_turning_and_reversing_swap_the_waste() -> None:
    """What lay behind lies ahead, and the plane stays where it is."""
    flat, plane = Flat((1, -2, 3), 4), Plane((1, -2, 3), 4, "x")
    assert flat.turned == Flat((-1, 2, -3), -4)
    assert reversed_plane(plane) == Plane((-1, 2, -3), -4, "x")


def test_through_a_point() -> None:
    """The plane parallel to another through a point holds the point."""
    assert Flat((1, 2, 3), 0).through((4, 5, 6)).offset == 4 + 10 + 18


@pytest.mark.parametrize(("top", "bottom", "whole"), [(7, 2, 4), (-7, 2, -3), (7, -2, -3)])
def test_a_quotient_is_rounded_to_the_nearest(top: int, bottom: int, whole: int) -> None:
    """Halves go up, whatever the signs."""
    assert nearest(top, bottom) == whole


@given(nm=st.tuples(NM, NM, NM), x=NM, across=NM, axis=st.sampled_from((Axis.FIRST, Axis.SECOND)))
def test_a_plane_is_moved_to_a_spot_without_turning(
    nm: tuple[int, int, int], x: int, across: int, axis: Axis
) -> None:
    """It passes through the spot to the nanometre, and keeps its normal and its line."""
    plane = Plane(nm, 0, "sole")
    found = through_spot(plane, axis, Length(x), Length(across))
    u, v = (across, 0) if axis is Axis.FIRST else (0, across)
    assert (found.normal, found.line) == (nm, "sole")
    assert nm[0] * x + nm[1] * u + nm[2] * v == found.offset


SIZES = st.integers(1, 10**10).map(Length)


@given(
    points=st.tuples(SIZES, SIZES, SIZES, SIZES), axis=st.sampled_from([Axis.FIRST, Axis.SECOND])
)
def test_a_plane_leans_through_the_two_points_it_is_given(
    points: tuple[Length, Length, Length, Length], axis: Axis
) -> None:
    """Exactly, whatever they are, and a point beside them is on its waste side."""
    a, b, c, d = points
    start, finish, waste = (a, b), (a + c, b + d), (a + c, b)
    plane = leaning((Axis.ALONG, axis), start, finish, waste, "slope")
    spots = [_spot(axis, along.nm, deep.nm) for along, deep in (start, finish, waste)]
    reached = [sum(n * at for n, at in zip(plane.normal, spot, strict=True)) for spot in spots]
    assert reached[:2] == [plane.offset] * 2
    assert reached[2] < plane.offset
    assert plane.line == "slope"


def _spot(axis: Axis, along: int, deep: int) -> tuple[int, int, int]:
    return (along, deep, 0) if axis is Axis.FIRST else (along, 0, deep)


def test_a_plane_that_leans_across_a_timber() -> None:
    """From 2 in at the first face's depth of 0 to 5 in at 3: it is square to the length."""
    axes = (Axis.FIRST, Axis.SECOND)
    plane = leaning(axes, (Length(0), Length(2)), (Length(3), Length(5)), (Length(0), Length(9)))
    assert plane == Plane((0, 1, -1), -2)


def test_a_plane_between_points_on_one_reading_is_square() -> None:
    """Then its normal is 1, like any square plane's."""
    axes = (Axis.ALONG, Axis.FIRST)
    plane = leaning(axes, (Length(0), Length(7)), (Length(9), Length(7)), (Length(0), Length(0)))
    assert plane == Plane((0, 1, 0), 7)


def test_a_plane_needs_points_that_are_not_on_one_line() -> None:
    """Else nothing says which way it leans, or which side is waste."""
    axes = (Axis.ALONG, Axis.FIRST)
    spot = (Length(1), Length(1))
    with pytest.raises(ValueError, match="slope"):
        leaning(axes, spot, spot, (Length(5), Length(0)), "slope")


def test_a_slope_is_as_high_as_the_square_scales_it() -> None:
    """10-9 of run and 7-0 of rise: at 7-0 of run it is 4.5581 ft up, 4 7/12 ft to the nearest inch.

    The Seabee (US Navy) training manual reads 4 7/12 on the twelfths scale (wood-data 109, 110).
    """
    run, rise, there = (Length.feet(10, 9), Length.feet(7), Length.feet(7))
    place = rafter(run.nm, rise.nm)
    along = along_at(carried(behind(Direction.EAST, there.nm), place), Axis.FIRST, Length(0))
    east, _, up = place.point(along, Length(0), Length(0))
    assert abs(east - there.nm) <= 1
    assert abs(up / Length.feet(1).nm - 4.5581) <= 0.0001
    assert Fraction(round(up / Length.inches(1).nm), 12) == 4 + Fraction(7, 12)


def test_a_foot_of_run_at_8_in_12() -> None:
    """14.422 inches along the rafter (wood-data 108, exact)."""
    plumb = carried(behind(Direction.EAST, Length.feet(1).nm), rafter(12 * 10**9, 8 * 10**9))
    along = along_at(plumb, Axis.FIRST, Length(0))
    assert abs(along.nm / Length.inches(1).nm - 14.422) <= 0.0005
