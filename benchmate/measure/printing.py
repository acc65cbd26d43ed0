"""Lengths as a tape shows them: nearest graduation, lowest terms, and a mark for what is hidden.

1. Nearest graduation; a half goes away from zero, so a length and its negative look alike.
2. `+` after the figure: the true length lies further from zero than the figure; `-`: nearer.
3. A figure of zero has no sign. Its mark is then the sign of the hidden length.
"""

from dataclasses import dataclass, replace
from enum import Enum
from fractions import Fraction
from typing import Literal

from benchmate.measure.length import NM_PER_FOOT, NM_PER_INCH, NM_PER_MM, Length
from benchmate.measure.tolerance import REMAINDER_SHARE


class Style(Enum):
    """How a figure is written."""

    FEET_INCHES = "feet and inches"
    INCHES = "inches"
    MM = "millimetres"


class Graduation(Enum):
    """The finest division of a tape; the value is its width in nanometres."""

    EIGHTH = NM_PER_INCH // 8
    SIXTEENTH = NM_PER_INCH // 16
    THIRTY_SECOND = NM_PER_INCH // 32
    SIXTY_FOURTH = NM_PER_INCH // 64
    MM = NM_PER_MM
    HALF_MM = NM_PER_MM // 2

    @property
    def nm(self) -> int:
        """The width of one graduation in nanometres."""
        return self.value

    @property
    def metric(self) -> bool:
        """Whether this is a division of a millimetre tape."""
        return self in (Graduation.MM, Graduation.HALF_MM)


Remainder = Literal["", "+", "-"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """A figure in the parts a screen sets in different sizes.

    `feet` is None below a foot and in plain inches; `whole` is None when a fraction stands alone;
    the fraction is 0/1 when there is none; `decimal` is the digits after a millimetre's point.
    """

    negative: bool
    feet: int | None
    whole: int | None
    numerator: int
    denominator: int
    decimal: str
    unit: Literal["in", "mm"]
    remainder: Remainder

    def text(self) -> str:
        """The figure on one line: `7' 11-1/2"`, `190.5 mm`, `42' 7-3/16"+`."""
        sign = "-" if self.negative else ""
        return sign + (self._mm() if self.unit == "mm" else self._inches()) + self.remainder

    def _mm(self) -> str:
        return f"{self.whole}.{self.decimal} mm" if self.decimal else f"{self.whole} mm"

    def _inches(self) -> str:
        feet = "" if self.feet is None else f"{self.feet}' "
        whole = "" if self.whole is None else str(self.whole)
        fraction = f"{self.numerator}/{self.denominator}" if self.numerator else ""
        join = "-" if whole and fraction else ""
        return f'{feet}{whole}{join}{fraction}"'


@dataclass(frozen=True, slots=True, kw_only=True)
class Tape:
    """How the framer wants figures: a style, and the finest graduation to read.

    Raises ValueError for a style and a graduation of different systems.
    """

    style: Style = Style.FEET_INCHES
    graduation: Graduation = Graduation.SIXTEENTH

    def __post_init__(self) -> None:
        if (self.style is Style.MM) is not self.graduation.metric:
            raise ValueError(
                f"a tape in {self.style.value} has no graduation {self.graduation.name}"
            )

    @property
    def without_feet(self) -> "Tape":
        """The same for figures on a framing square, which has no feet."""
        return self if self.style is Style.MM else replace(self, style=Style.INCHES)

    def show(self, length: Length) -> Shown:
        """The figure for a length, rounded by the three rules above."""
        count = _nearest(abs(length.nm), self.graduation.nm)
        shown = count * self.graduation.nm
        negative = length.nm < 0 and count > 0
        remainder = _remainder(length.nm if not count else abs(length.nm) - shown, self.graduation)
        if self.style is Style.MM:
            return _metric(shown, negative, remainder)
        return _imperial(shown, negative, remainder, with_feet=self.style is Style.FEET_INCHES)

    def text(self, length: Length) -> str:
        """The figure for a length, on one line."""
        return self.show(length).text()


def _nearest(nm: int, step: int) -> int:
    """How many steps are nearest to a size that is not negative; a half counts as one more."""
    return (2 * nm + step) // (2 * step)


def _remainder(hidden: int, graduation: Graduation) -> Remainder:
    if abs(hidden) <= REMAINDER_SHARE * graduation.nm:
        return ""
    return "+" if hidden > 0 else "-"


def _metric(nm: int, negative: bool, remainder: Remainder) -> Shown:
    whole, rest = divmod(nm, NM_PER_MM)
    return Shown(
        negative=negative,
        feet=None,
        whole=whole,
        numerator=0,
        denominator=1,
        decimal="5" if rest else "",
        unit="mm",
        remainder=remainder,
    )


def _imperial(nm: int, negative: bool, remainder: Remainder, *, with_feet: bool) -> Shown:
    feet, nm = divmod(nm, NM_PER_FOOT) if with_feet else (0, nm)
    whole, rest = divmod(nm, NM_PER_INCH)
    fraction = Fraction(rest, NM_PER_INCH)
    alone = rest and not whole and not feet
    return Shown(
        negative=negative,
        feet=feet or None,
        whole=None if alone else whole,
        numerator=fraction.numerator,
        denominator=fraction.denominator,
        decimal="",
        unit="in",
        remainder=remainder,
    )
