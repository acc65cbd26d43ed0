"""A slope's length and pitch, from the square's own table and printed rafters."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.angle import tenths
from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.measure.printing import Tape
from benchmate.measure.reckon.slope import Slope


def slope(run: Fraction | int, rise: Fraction | int) -> Slope:
    """A slope of so many inches of run and of rise."""
    return Slope(run=Fraction(run) * NM_PER_INCH, rise=Fraction(rise) * NM_PER_INCH)


@pytest.mark.parametrize(
    ("rise", "hundredths", "angle"),
    [
        *((2, 1217, 946), (3, 1237, 1404), (4, 1265, 1843), (5, 1300, 2262), (6, 1342, 2657)),
        *((7, 1389, 3026), (8, 1442, 3369), (9, 1500, 3687), (10, 1562, 3981), (11, 1628, 4251)),
        *((12, 1697, 4500), (13, 1769, 4729), (14, 1844, 4940), (15, 1921, 5134), (16, 2000, 5313)),
        *((17, 2081, 5478), (18, 2163, 5631)),
    ],
)
def test_the_unit_length_table(rise: int, hundredths: int, angle: int) -> None:
    """Inches of rafter per foot of run as on the square (trade.md 7.2: list Instr-unit, CALC)."""
    found = slope(12, rise)
    assert round(Fraction(100 * found.length.length.nm, NM_PER_INCH)) == hundredths
    run, up = found.ratio
    assert abs(tenths(up, run) * 10 - angle) <= 5


@pytest.mark.parametrize(
    ("run", "rise", "shown"),
    [
        (96, 56, "9' 3-1/8\"+"),  # row 15: 7/12, 16 ft span, printed 9'-3-1/8" (NAV-64)
        (150, 75, "13' 11-11/16\"+"),  # row 16: 6/12, 25 ft span, printed 167.75 (Griffith-21)
        (150, 150, "17' 8-1/8\""),  # row 17: 12/12, 25 ft span (Griffith-IV)
        (124, Fraction(403, 3), "15' 2-13/16\""),  # row 18: 13/12, 20'-8" span (EN0069)
        (180, 90, "16' 9-1/4\""),  # row 23: 6/12, run 15 (method: Hodgson-29)
        (144, 60, "13' 0\""),  # row 24: 5/12, run 12 (Verydays)
        (144, 96, "14' 5-1/16\""),  # more check values, CALC
        (120, 80, "12' 0-1/4\"-"),  # CALC
        (144, 108, "15' 0\""),  # CALC
    ],
)
def test_printed_rafters(run: int, rise: Fraction | int, shown: str) -> None:
    """Rafter lengths of the handbooks (trade.md 7.5), the exact value where a print is coarse."""
    assert Tape().text(slope(run, rise).length.length) == shown


def test_a_slope_restated_per_foot() -> None:
    """2 in 5 is 4-4/5 in 12 (EN0069), 9 in 12 over 14 ft 10' 6" (Radford; trade.md 7.5, 25, 26)."""
    assert slope(5, 2).rise_in(Length.inches(12)).length == Length.inches(0, 24, 5)
    assert slope(12, 9).rise_in(Length.feet(14)).length == Length.feet(10, 6)


@given(
    st.fractions(min_value=Fraction(1, 999), max_value=10**9, max_denominator=999),
    st.fractions(min_value=Fraction(1, 999), max_value=10**9, max_denominator=999),
)
def test_the_ratio_is_the_slope_s_own(run: Fraction, rise: Fraction) -> None:
    """In whole numbers, and nothing lost."""
    along, up = Slope(run=run, rise=rise).ratio
    assert Fraction(along, up) == run / rise


@pytest.mark.parametrize(("run", "rise"), [(0, 1), (1, 0), (-1, 1)])
def test_run_and_rise_are_above_zero(run: int, rise: int) -> None:
    """A level or a plumb line is no slope."""
    with pytest.raises(ValueError, match="above zero"):
        slope(run, rise)
