"""What is reckoned is a fraction of nanometres until the end, and is rounded there once."""

from dataclasses import dataclass
from fractions import Fraction
from math import isqrt

from benchmate.measure.length import Length


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A length that was worked out, and whether it came out in whole nanometres by itself."""

    length: Length
    whole: bool = True


def settled(nm: Fraction) -> Reckoned:
    """So many nanometres as a length, rounded once; a half goes away from zero, as on a tape."""
    size = (2 * abs(nm.numerator) + nm.denominator) // (2 * nm.denominator)
    return Reckoned(Length(size if nm >= 0 else -size), nm.denominator == 1)


def root(square: Fraction) -> Reckoned:
    """The length whose square is so many square nanometres; ValueError for one below zero."""
    nearest = (isqrt(4 * square.numerator // square.denominator) + 1) // 2
    return Reckoned(Length(nearest), nearest * nearest == square)
