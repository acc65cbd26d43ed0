"""Equal spaces fill a length exactly, and no running figure depends on another's rounding."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.measure.reckon.rounding import settled
from benchmate.measure.reckon.spaces import Spaces, no_wider

TOTALS = st.integers(1, 6 * 10**10).map(Fraction)
COUNTS = st.integers(1, 200)


def inches(whole: int, num: int = 0, den: int = 1) -> Fraction:
    """A length as the engine reckons with it."""
    return Fraction(Length.inches(whole, num, den).nm)


def test_five_spaces_in_fourteen_three() -> None:
    """34.2 inches each; every figure is the nearest sixteenth of its own, marked where it hides.

    Worked by hand: 34.2, 68.4, 102.6, 136.8, 171.
    """
    spaces = Spaces(total=inches(171), count=5)
    assert spaces.width == inches(171) / 5
    assert [Tape().text(end) for end, _ in spaces.stops()] == [
        "2' 10-3/16\"+",
        "5' 8-3/8\"+",
        "8' 6-5/8\"-",
        "11' 4-13/16\"-",
        "14' 3\"",
    ]


def test_chaining_the_shown_space_would_miss() -> None:
    """Five times 2' 10-3/16" is 1/16" short, which is why the figures run from one end."""
    assert 5 * Length.feet(2, 10, 3, 16) == Length.feet(14, 2, 15, 16)


def test_timbers_between_take_their_room() -> None:
    """Three 5-1/2 timbers in 10': four spaces of 25-7/8, and each timber ends 5-1/2 on."""
    spaces = Spaces(total=inches(120), count=4, between=inches(5, 1, 2))
    assert spaces.each.length == Length.inches(25, 7, 8)
    stops = list(spaces.stops())
    assert stops[0] == (Length.inches(25, 7, 8), Length.inches(31, 3, 8))
    assert stops[1] == (Length.inches(57, 1, 4), Length.inches(62, 3, 4))
    assert stops[3] == (Length.inches(120), Length.inches(120))


@settings(max_examples=500)
@given(TOTALS, COUNTS, st.integers(0, 10**9).map(Fraction))
def test_every_figure_is_rounded_by_itself(total: Fraction, count: int, between: Fraction) -> None:
    """Each lies within half a nanometre of where it should be, the last at the very total."""
    if total <= (count - 1) * between:
        with pytest.raises(ValueError, match="above zero"):
            Spaces(total=total, count=count, between=between)
        return
    spaces = Spaces(total=total, count=count, between=between)
    stops = list(spaces.stops())
    assert len(stops) == count
    assert stops[-1] == (settled(total).length, settled(total).length)
    for place, (end, begins) in enumerate(stops[:-1], start=1):
        exact = place * (total + between) / count - between
        assert abs(end.nm - exact) <= Fraction(1, 2)
        assert abs(begins.nm - exact - between) <= Fraction(1, 2)


@pytest.mark.parametrize(
    ("total", "most", "between", "count"),
    [
        (inches(171), inches(16), 0, 11),
        (inches(160), inches(16), 0, 10),
        (inches(160) + 1, inches(16), 0, 11),
        (inches(10), inches(16), 0, 1),
        (inches(120), inches(25, 7, 8), inches(5, 1, 2), 4),
        (inches(120), inches(25, 3, 4), inches(5, 1, 2), 5),
    ],
)
def test_no_wider_than(total: Fraction, most: Fraction, between: Fraction, count: int) -> None:
    """The fewest that do, and one nanometre over asks for another."""
    assert no_wider(total, most, Fraction(between)) == count


@given(TOTALS, st.integers(10**7, 10**10).map(Fraction), st.integers(0, 10**9).map(Fraction))
def test_one_space_fewer_would_be_too_wide(
    total: Fraction, most: Fraction, between: Fraction
) -> None:
    """The number is the least that keeps every space within bounds."""
    count = no_wider(total, most, between)
    assert (total - (count - 1) * between) / count <= most
    if count > 1:
        assert (total - (count - 2) * between) / (count - 1) > most


@pytest.mark.parametrize(("most", "between"), [(0, 0), (-1, 0), (1, -1)])
def test_spaces_are_above_zero(most: int, between: int) -> None:
    """Nor can less than nothing stand between them."""
    with pytest.raises(ValueError, match="above zero"):
        no_wider(Fraction(10), Fraction(most), Fraction(between))


@pytest.mark.parametrize(("count", "between"), [(0, 0), (-1, 0), (2, 10), (2, -1)])
def test_no_spaces_without_room(count: int, between: int) -> None:
    """Nothing is clamped."""
    with pytest.raises(ValueError, match="above zero"):
        Spaces(total=Fraction(10), count=count, between=Fraction(between))
