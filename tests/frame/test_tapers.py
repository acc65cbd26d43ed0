"""Planes through two spots, and the bevel for them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.frame.flats import deep_at
from benchmate.frame.tapers import leaning, slope_setting, towards_end
from benchmate.measure.length import Length
from benchmate.model.feature import Spot
from benchmate.model.solids import Axis, Plane
from tests.builders import length, set_in_words

lengths = st.integers(-(10**9), 10**9).map(Length)
spots = st.builds(Spot, lengths, lengths)


def _at(plane: Plane, axis: Axis, spot: Spot) -> int:
    """How far a spot lies past the plane, times the length of its normal."""
    number = axis.value.index(1)
    return plane.normal[0] * spot.along.nm + plane.normal[number] * spot.deep.nm - plane.offset


@given(axis=st.sampled_from((Axis.FIRST, Axis.SECOND)), one=spots, other=spots)
def test_it_goes_through_both_spots(axis: Axis, one: Spot, other: Spot) -> None:
    """Exactly, whatever the spots; which is named first does not matter."""
    if one.along == other.along:
        other = Spot(other.along + Length(1), other.deep)
    plane = leaning(axis, one, other, "tail")
    assert plane == leaning(axis, other, one, "tail")
    assert plane.line == "tail"
    if one.deep != other.deep:  # a plane along the timber is kept with a normal of one
        assert _at(plane, axis, one) == _at(plane, axis, other) == 0
    assert plane.normal[3 - axis.value.index(1)] == 0


@given(axis=st.sampled_from((Axis.FIRST, Axis.SECOND)), one=spots, other=spots, deeper=lengths)
def test_its_waste_lies_less_deep(axis: Axis, one: Spot, other: Spot, deeper: Length) -> None:
    """A spot further in is past it, one less far in is waste."""
    if one.along == other.along:
        other = Spot(other.along + Length(1), other.deep)
    plane = leaning(axis, one, other)
    moved = Spot(one.along, one.deep + deeper)
    assert (_at(plane, axis, moved) <= 0) is (deeper <= Length(0))


def test_a_plane_square_across_the_timber_is_none_along_it() -> None:
    """Two spots as far along as each other are a misuse."""
    spot = Spot(length("4"), length("1"))
    with pytest.raises(ValueError, match="no plane here"):
        leaning(Axis.FIRST, spot, Spot(length("4"), length("2")))


def test_a_depth_between_the_spots_is_in_proportion() -> None:
    """A tail from 7" at 120" to 8" at 128" is 7-1/4" deep at 122"."""
    plane = leaning(Axis.FIRST, Spot(length("120"), length("7")), Spot(length("128"), length("8")))
    assert deep_at(plane, Axis.FIRST, length("122")) == length("7-1/4")


@pytest.mark.parametrize("reference", [True, False])
def test_the_waste_can_lie_towards_either_end(*, reference: bool) -> None:
    """A sloping shoulder takes what is beyond it: less far along at the reference end."""
    slope = leaning(Axis.SECOND, Spot(length("0"), length("0")), Spot(length("-1"), length("8")))
    plane = towards_end(slope, reference=reference)
    beyond, back = Spot(length("-3"), length("4")), Spot(length("2"), length("4"))
    assert (_at(plane, Axis.SECOND, beyond) < 0) is reference
    assert (_at(plane, Axis.SECOND, back) > 0) is reference
    assert towards_end(plane, reference=reference) == plane


def test_the_bevel_for_a_slope_in_a_mortise() -> None:
    """1 in 8 again, off square to the face it is cut in from; nothing is square."""
    assert set_in_words(slope_setting(8, 1)) == "bevel 7.1° off square to the face"
    assert set_in_words(slope_setting(8, 0)) == "bevel 0° off square to the face"
