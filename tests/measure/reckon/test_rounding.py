"""What is reckoned is rounded once, to the nearest nanometre."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.reckon.rounding import Reckoned, root, settled

SIZES = st.fractions(min_value=-(10**12), max_value=10**12, max_denominator=10**6)


@given(SIZES)
def test_settled_is_the_nearest_nanometre(nm: Fraction) -> None:
    """Nothing lies nearer, and only a whole number of nanometres counts as whole."""
    reckoned = settled(nm)
    assert abs(reckoned.length.nm - nm) <= Fraction(1, 2)
    assert reckoned.whole is (reckoned.length.nm == nm)


@given(SIZES)
def test_a_length_and_its_negative_round_alike(nm: Fraction) -> None:
    """A half goes away from zero, as on a tape."""
    assert settled(-nm).length == -settled(nm).length


@pytest.mark.parametrize(("half", "nm"), [(1, 1), (-1, -1), (3, 2), (-3, -2), (5, 3), (0, 0)])
def test_a_half_goes_away_from_zero(half: int, nm: int) -> None:
    """Never to the even neighbour, which a framer would not expect."""
    assert settled(Fraction(half, 2)).length == Length(nm)


@given(st.fractions(min_value=0, max_value=10**24, max_denominator=10**4))
def test_a_root_is_the_nearest_nanometre(square: Fraction) -> None:
    """The square lies between those of the halves on either side."""
    nm = root(square).length.nm
    assert max(2 * nm - 1, 0) ** 2 <= 4 * square <= (2 * nm + 1) ** 2


@given(st.integers(min_value=0, max_value=10**12))
def test_the_root_of_a_square_is_whole(nm: int) -> None:
    """And that of the next number is not."""
    assert root(Fraction(nm * nm)) == Reckoned(Length(nm), whole=True)
    assert root(Fraction(nm * nm + 1)).whole is (nm == 0)


def test_nothing_below_zero_has_a_root() -> None:
    """As in arithmetic."""
    with pytest.raises(ValueError, match="nonnegative"):
        root(Fraction(-1))
