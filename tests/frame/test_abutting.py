"""Toe and heel, abutment and sole of an end, in a triangle of 3, 4 and 5.

A timber 10" deep comes down 3 in 4 on a level face. Worked by hand: its edges meet the face
10 / 0.6 = 16-2/3" apart; half of the angle has a tangent of 0.6 / (1 + 0.8) = 1/3.
"""

from fractions import Fraction

import pytest

from benchmate.frame.abutting import (
    Foothold,
    abutment_plane,
    abutting_reach,
    carried_over,
    foothold,
    notch_bottom,
    parallel,
    sole_plane,
)
from benchmate.frame.flats import behind, carried, shifted
from benchmate.frame.place import Place, raking_ways, square_ways
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Pose
from benchmate.model.feature import Spot
from benchmate.model.solids import Axis, Plane
from benchmate.model.work import Front

INCH = Length.inches(1).nm
DEEP = Length.inches(10)

RAKE = Pose(Direction.UP, Direction.SOUTH, Direction.WEST, head=Direction.EAST)
HUNG = Pose(Direction.DOWN, Direction.SOUTH, Direction.WEST, head=Direction.EAST)
TIE = Pose(Direction.UP, Direction.SOUTH, Direction.WEST)
HERE = Place(origin=(0, 0, 0), ways=raking_ways(RAKE, 4 * INCH, 3 * INCH, 5 * INCH))
HUNG_HERE = Place(origin=(0, 0, 0), ways=raking_ways(HUNG, 4 * INCH, 3 * INCH, 5 * INCH))
THERE = Place(origin=(-20 * INCH, 0, 0), ways=square_ways(TIE))


def on_the_tie(place: Place = HERE) -> Foothold:
    """The foot of the timber on a face at no height."""
    face = carried(behind(Direction.UP, 0), place)
    return foothold(face, Axis.FIRST, DEEP, ZERO, outward=-1)


def near(value: Length, inches: Fraction | float) -> bool:
    """Whether a length is so many inches, to a few nanometres."""
    return abs(value.nm - inches * INCH) < 4


def test_the_edge_that_reaches_farther_has_the_toe() -> None:
    """Its top, at the shoulder; the underside meets the face 13-1/3" farther back along it."""
    stands = on_the_tie()
    assert stands.toe == Spot(ZERO, ZERO)
    assert near(stands.heel.along, Fraction(40, 3))
    assert stands.heel.deep == DEEP
    assert stands.shoulder == ZERO


def test_measured_from_its_underside_the_far_edge_has_the_toe() -> None:
    """The same timber with its arris along the heel."""
    stands = on_the_tie(HUNG_HERE)
    assert near(-stands.toe.along, Fraction(40, 3))
    assert (stands.toe.deep, stands.heel) == (DEEP, Spot(ZERO, ZERO))
    assert stands.heel_edge == Plane((0, 1, 0), 0)


def test_where_both_reach_equally_far_the_reference_edge_has_the_toe() -> None:
    """A face square to the timber."""
    stands = foothold(Plane((1, 0, 0), 5), Axis.FIRST, DEEP, ZERO, outward=-1)
    assert (stands.toe, stands.heel) == (Spot(ZERO, ZERO), Spot(ZERO, DEEP))


LEANS = [
    ("square to the face", Fraction(0)),
    ("bisecting", Fraction(1, 3)),
    ("square to the rake", Fraction(3, 4)),
]


@pytest.mark.parametrize(("looks", "lean"), LEANS)
@pytest.mark.parametrize("place", [HERE, HUNG_HERE])
def test_an_abutment_leans_back_from_square(looks: Front, lean: Fraction, place: Place) -> None:
    """By nothing, by half the angle, by the whole of it: 2" in, it lies 2" x tangent inwards."""
    stands = on_the_tie(place)
    bottom = notch_bottom(stands, abutment_plane(stands, looks, place, THERE), Length.inches(2))
    assert bottom is not None
    across = bottom.deep if place is HERE else DEEP - bottom.deep
    assert near(across, 2 * Fraction(4, 5) + 2 * lean * Fraction(3, 5))
    back = bottom.along - stands.toe.along
    assert near(back, 2 * lean * Fraction(4, 5) - 2 * Fraction(3, 5))


def test_square_to_either_timber_is_square_in_its_readings() -> None:
    """Without a rounding: the line on it is a square line."""
    stands = on_the_tie()
    rake = abutment_plane(stands, "square to the rake", HERE, THERE, "abutment")
    face = carried_over(abutment_plane(stands, "square to the face", HERE, THERE), HERE, THERE)
    assert rake == Plane((1, 0, 0), 0, "abutment")
    assert face == Plane((1, 0, 0), 20 * INCH)


@pytest.mark.parametrize(
    ("looks", "most"),
    [("square to the face", 12.5), ("bisecting", 10.0), ("square to the rake", 8.0)],
)
def test_a_notch_is_as_deep_as_the_timber_has_wood_for(looks: Front, most: float) -> None:
    """Until the abutment runs out of the heel's edge: 10" / 0.8, 10", and 10" x 0.8 deep."""
    stands = on_the_tie()
    plane = abutment_plane(stands, looks, HERE, THERE)
    assert notch_bottom(stands, plane, Length(round((most - 0.001) * INCH))) is not None
    assert notch_bottom(stands, plane, Length(round((most + 0.001) * INCH))) is None


def test_an_abutment_along_the_face_has_no_bottom() -> None:
    """Square to the rake of a timber that stands square on its face."""
    stands = foothold(Plane((1, 0, 0), 0), Axis.FIRST, DEEP, ZERO, outward=-1)
    square = Place(origin=(0, 0, 0), ways=square_ways(RAKE))
    upright = Place(origin=(0, 0, 0), ways=square_ways(Pose(*_UPRIGHT)))
    plane = abutment_plane(stands, "square to the rake", square, upright)
    assert parallel(plane, stands.face, Axis.FIRST)
    assert notch_bottom(stands, plane, Length.inches(1)) is None


_UPRIGHT = (Direction.EAST, Direction.SOUTH, Direction.DOWN)


def test_the_sole_goes_from_the_bottom_to_the_heel() -> None:
    """Both lie on it, and what lies behind it is beyond the end."""
    stands = on_the_tie()
    bottom = Spot(Length.inches(-1), Length.inches(2))
    sole = sole_plane(stands, bottom, "sole")
    for spot in (bottom, stands.heel):
        reached = sole.normal[0] * spot.along.nm + sole.normal[1] * spot.deep.nm
        assert reached == sole.offset
    assert sole.holds(-5 * INCH, 5 * INCH, 0)
    assert not sole.holds(50 * INCH, 5 * INCH, 0)
    assert sole.line == "sole"


@pytest.mark.parametrize(
    ("looks", "reach"),
    [("square to the face", 3.0), ("bisecting", 5 / 3), ("square to the rake", 0.0)],
)
def test_an_end_reaches_as_far_as_its_farthest_corner(looks: Front, reach: float) -> None:
    """A tenon 5" deep in: its front there lies 5" x (0.6 - lean x 0.8) beyond the toe."""
    stands = on_the_tie()
    tip = shifted(stands.face, Length.inches(-5))
    plane = abutment_plane(stands, looks, HERE, THERE)
    assert near(abutting_reach(stands, plane, tip), reach)


def test_an_end_measured_from_its_heel_reaches_past_its_toe() -> None:
    """13-1/3" to the toe, and the tenon's front beyond it."""
    stands = on_the_tie(HUNG_HERE)
    tip = shifted(stands.face, Length.inches(-5))
    plane = abutment_plane(stands, "bisecting", HUNG_HERE, THERE)
    assert near(abutting_reach(stands, plane, tip), Fraction(40, 3) + Fraction(5, 3))
