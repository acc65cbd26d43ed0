"""A length: a whole number of nanometres, exact in inches and in millimetres alike."""

from dataclasses import dataclass
from math import gcd
from typing import Self

NM_PER_MM = 1_000_000
"""Nanometres in a millimetre."""

NM_PER_INCH = 25_400_000
"""Nanometres in an inch: 25.4 mm, exact by international definition."""

NM_PER_FOOT = 12 * NM_PER_INCH
"""Nanometres in a foot."""

NM_PER_SIXTYFOURTH = NM_PER_INCH // 64
"""Nanometres in 1/64 inch: 396,875, with nothing left over."""

NM_PER_HUNDREDTH_MM = NM_PER_MM // 100
"""Nanometres in 0.01 mm."""


@dataclass(frozen=True, slots=True, order=True)
class Length:
    """A length in whole nanometres, below zero allowed; TypeError for anything but an int."""

    nm: int

    def __post_init__(self) -> None:
        if type(self.nm) is not int:
            raise TypeError(f"a length is a whole number of nanometres, not {self.nm!r}")

    @classmethod
    def inches(cls, whole: int, num: int = 0, den: int = 1) -> Self:
        """A length in inches and a fraction: `inches(4, 3, 4)` is 4-3/4".

        Raises ValueError for a fraction that is no whole number of nanometres, and for a whole
        number below zero with a fraction: negate the finished length.
        """
        if num < 0 or den < 1 or (whole < 0 and num):
            raise ValueError(f"write {whole} and {num}/{den} above zero, then negate the length")
        nm, over = divmod((whole * den + num) * NM_PER_INCH, den)
        if over:
            raise ValueError(f"{num}/{den} inch is not a whole number of nanometres")
        return cls(nm)

    @classmethod
    def feet(cls, feet: int, inches: int = 0, num: int = 0, den: int = 1) -> Self:
        """A length in feet, inches and a fraction of an inch; ValueError as for `inches`."""
        if inches < 0 or (feet < 0 and (inches or num)):
            raise ValueError(f"write {feet} ft {inches} in above zero, then negate the length")
        return cls.inches(12 * feet + inches, num, den)

    @classmethod
    def mm(cls, whole: int) -> Self:
        """A length in whole millimetres."""
        return cls(whole * NM_PER_MM)

    @classmethod
    def hundredths_mm(cls, count: int) -> Self:
        """A length in hundredths of a millimetre."""
        return cls(count * NM_PER_HUNDREDTH_MM)

    def __add__(self, other: "Length") -> "Length":
        if not isinstance(other, Length):
            return NotImplemented
        return Length(self.nm + other.nm)

    def __sub__(self, other: "Length") -> "Length":
        if not isinstance(other, Length):
            return NotImplemented
        return Length(self.nm - other.nm)

    def __mul__(self, times: int) -> "Length":
        if type(times) is not int:
            return NotImplemented
        return Length(self.nm * times)

    __rmul__ = __mul__

    def __neg__(self) -> "Length":
        return Length(-self.nm)

    def __abs__(self) -> "Length":
        return Length(abs(self.nm))

    def __bool__(self) -> bool:
        return self.nm != 0

    def exact_text(self) -> str:
        """A text that says this very length: `4-3/4"` on the tape, `190.25 mm` off it."""
        sign = "-" if self.nm < 0 else ""
        sixtyfourths, over = divmod(abs(self.nm), NM_PER_SIXTYFOURTH)
        return sign + (_mm_text(abs(self.nm)) if over else _inch_text(sixtyfourths))


def _inch_text(sixtyfourths: int) -> str:
    whole, rest = divmod(sixtyfourths, 64)
    if not rest:
        return f'{whole}"'
    common = gcd(rest, 64)
    fraction = f'{rest // common}/{64 // common}"'
    return f"{whole}-{fraction}" if whole else fraction


def _mm_text(nm: int) -> str:
    whole, rest = divmod(nm, NM_PER_MM)
    return f"{whole}.{rest:06}".rstrip("0").rstrip(".") + " mm"


ZERO = Length(0)
"""No length at all."""
