"""Every limit on a length, by name, with its unit and its reason.

The exact ratios between units stand beside `Length`, which needs them, and are offered here too.
"""

from fractions import Fraction

from benchmate.measure.length import (
    NM_PER_FOOT,
    NM_PER_HUNDREDTH_MM,
    NM_PER_INCH,
    NM_PER_MM,
    NM_PER_SIXTYFOURTH,
    Length,
)

__all__ = [
    "DEEPEST_BRACKETS",
    "LARGEST_RECKONED",
    "LARGEST_SECTION",
    "LONGEST_LENGTH_TEXT",
    "LONGEST_SECTION_TEXT",
    "LONGEST_SUM_TEXT",
    "LONGEST_TIMBER",
    "MOST_SPACES",
    "NM_PER_FOOT",
    "NM_PER_HUNDREDTH_MM",
    "NM_PER_INCH",
    "NM_PER_MM",
    "NM_PER_SIXTYFOURTH",
    "REMAINDER_SHARE",
    "ROUNDING",
    "TAPE_DENOMINATORS",
]

LONGEST_TIMBER = Length.feet(200)
"""The most a typed length may be: no tree gives a longer stick, so a longer one is a slip."""

LARGEST_SECTION = Length.feet(4)
"""The most one side of a section may be: a wider stick is a slip of the unit, mm for inches."""

TAPE_DENOMINATORS = (2, 4, 8, 16, 32, 64)
"""The fractions of an inch a tape or a rule carries; no shop rule goes below 1/64 inch."""

REMAINDER_SHARE = Fraction(1, 8)
"""The share of a graduation that may stay hidden before a shown figure takes its + or -.

Nearest rounding hides at most a half. A quarter would pass 42.6 ft as 42' 7-3/16" with no
mark, though a fifth of a sixteenth is missing; less than an eighth is finer than a pencil line.
"""

ROUNDING = Length(2)
"""How far two readings of one place may lie apart, each rounded once or twice to a nanometre."""

LONGEST_LENGTH_TEXT = 60
"""Characters in a typed length: twice what any real one needs, so a paste is caught early."""

LONGEST_SECTION_TEXT = 2 * LONGEST_LENGTH_TEXT + 3
"""Characters in a typed section: two lengths and the ` x ` between them."""

LONGEST_SUM_TEXT = 240
"""Characters in a typed sum: more than three lines of a small screen cannot be checked by eye."""

LARGEST_RECKONED = Length.feet(10_000)
"""The most a line of the calculator may come to: fifty of the longest timbers, laid end to end."""

DEEPEST_BRACKETS = 12
"""Brackets inside brackets in a line of the calculator: more cannot be checked by eye."""

MOST_SPACES = 200
"""Equal spaces that a length may be divided into: the longest timber in spaces of a foot."""

SAME_SLOPE = 1000
"""Two slopes are one where they part by less than one in so many: a 64th over more than a foot.

A slope typed as 8 in 12 and one that follows from two points seldom agree to the nanometre.
"""
