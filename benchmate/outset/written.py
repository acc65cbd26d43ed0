"""Lengths and sections as a framer writes them in a project file, in the units of his tape."""

from fractions import Fraction
from math import isqrt

from benchmate.measure.length import (
    NM_PER_FOOT,
    NM_PER_HUNDREDTH_MM,
    NM_PER_INCH,
    NM_PER_MM,
    NM_PER_SIXTYFOURTH,
    Length,
)
from benchmate.measure.section import Section

MM = "mm"
"""The word for millimetres in `units`."""

FEET = "feet and inches"
"""The word for feet and inches in `units`."""


def written(length: Length, units: str) -> str:
    """The text of a length, which reads back equal: `10' 6-1/2`, `4-3/4`, `190.5`.

    One that the units cannot say is written in the others, with its unit.
    """
    sixtyfourths, over = divmod(length.nm, NM_PER_SIXTYFOURTH)
    if units == MM and length.nm % NM_PER_HUNDREDTH_MM == 0:
        return _decimal(length.nm)
    if over:
        return length.exact_text()
    if units == MM:
        return f"{_inches(sixtyfourths)} in"
    if units == FEET and length.nm >= NM_PER_FOOT:
        feet, rest = divmod(sixtyfourths, NM_PER_FOOT // NM_PER_SIXTYFOURTH)
        return f"{feet}' {_inches(rest)}" if rest else f"{feet}'"
    return _inches(sixtyfourths)


def section_written(section: Section, units: str) -> str:
    """The text of a section, first by second: `8 x 6`."""
    inches = "inches" if units == FEET else units
    return f"{written(section.first, inches)} x {written(section.second, inches)}"


def _inches(sixtyfourths: int) -> str:
    whole, rest = divmod(sixtyfourths, NM_PER_INCH // NM_PER_SIXTYFOURTH)
    part = Fraction(rest, NM_PER_INCH // NM_PER_SIXTYFOURTH)
    if not part:
        return str(whole)
    return f"{whole}-{part}" if whole else str(part)


def _decimal(nm: int) -> str:
    whole, rest = divmod(nm // NM_PER_HUNDREDTH_MM, NM_PER_MM // NM_PER_HUNDREDTH_MM)
    return f"{whole}.{rest:02}".rstrip("0").rstrip(".")


def down_to(length: Length, step: Length) -> Length:
    """The most steps that a length holds."""
    return Length(length.nm // step.nm * step.nm)


def up_to(length: Length, step: Length) -> Length:
    """The fewest steps that hold a length."""
    return Length(-(-length.nm // step.nm) * step.nm)


def nearest(nm: Fraction, step: Length) -> Length:
    """The number of steps nearest to so many nanometres, a half counting as one more."""
    return Length(int(nm / step.nm + Fraction(1, 2)) * step.nm)


def aslant(run: Length, slope: Fraction) -> Length:
    """How long a run is on a slope of so much rise to one of run, rounded up to a nanometre."""
    rise, over = slope.numerator, slope.denominator
    square = run.nm * run.nm * (rise * rise + over * over)
    root = isqrt(square // (over * over))
    return Length(root if root * root * over * over == square else root + 1)
