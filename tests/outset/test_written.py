"""Lengths as they stand in a project file."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import NM_PER_SIXTYFOURTH, Length
from benchmate.measure.reading import Unit, read_length
from benchmate.measure.section import Section
from benchmate.outset.written import aslant, down_to, nearest, section_written, up_to, written

FEET = "feet and inches"


@pytest.mark.parametrize(
    ("length", "units", "text"),
    [
        (Length.feet(10), FEET, "10'"),
        (Length.feet(10, 6, 1, 2), FEET, "10' 6-1/2"),
        (Length.inches(4, 3, 4), FEET, "4-3/4"),
        (Length.inches(0, 3, 8), "inches", "3/8"),
        (Length.feet(10, 6), "inches", "126"),
        (Length.mm(190), "mm", "190"),
        (Length.hundredths_mm(19050), "mm", "190.5"),
        (Length.inches(0, 1, 64), "mm", "1/64 in"),
        (Length.hundredths_mm(19025), FEET, "190.25 mm"),
    ],
)
def test_a_framer_would_write_it_so(length: Length, units: str, text: str) -> None:
    """In the units of the tape wherever they can say it."""
    assert written(length, units) == text


@given(
    count=st.integers(1, 10**6),
    units=st.sampled_from((FEET, "inches", "mm")),
    step=st.sampled_from((NM_PER_SIXTYFOURTH, Length.hundredths_mm(1).nm)),
)
def test_it_reads_back_equal(count: int, units: str, step: int) -> None:
    """Whatever the units, no length of a tape is moved by being written."""
    length = Length(count * step)
    bare = Unit.MM if units == "mm" else Unit.INCH
    assert read_length(written(length, units), bare=bare, most=None, exact=True) == length


def test_a_section_is_never_written_in_feet() -> None:
    """First by second."""
    assert section_written(Section(Length.inches(14), Length.inches(7, 1, 2)), FEET) == "14 x 7-1/2"


def test_sizes_are_made_round() -> None:
    """Down, up, and to the nearest, a half counting as one more."""
    half, size = Length.inches(0, 1, 2), Length.inches(2, 3, 8)
    assert down_to(size, half) == Length.inches(2)
    assert up_to(size, half) == Length.inches(2, 1, 2)
    assert nearest(Fraction(size.nm), half) == Length.inches(2, 1, 2)
    assert nearest(Fraction(Length.inches(2, 1, 4).nm), half) == Length.inches(2, 1, 2)


def test_a_run_on_a_slope_is_as_long_as_the_table_says() -> None:
    """A foot of run at 9 in 12 is 15", at 8 in 12 14.42" (trade notes 7.2, Instr-unit)."""
    foot = Length.feet(1)
    assert aslant(foot, Fraction(9, 12)) == Length.inches(15)
    assert abs(aslant(foot, Fraction(8, 12)).nm / Length.inches(1).nm - 14.42) < 0.005
