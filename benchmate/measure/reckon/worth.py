"""What a part of a line is worth, and how two parts are joined.

A number without a unit is bare: it is a length in the project's unit where a length is wanted, and
a plain number where a length is multiplied or divided by it.
"""

import re
from dataclasses import dataclass
from fractions import Fraction

from benchmate.measure.length import NM_PER_INCH, NM_PER_MM
from benchmate.measure.reading import Unit, read_length
from benchmate.measure.tokens import FRACTION_CHARS, LengthError

NM_PER_BARE = {Unit.INCH: NM_PER_INCH, Unit.MM: NM_PER_MM}

_VULGAR = "".join(FRACTION_CHARS)
_BARE = re.compile(
    r"(?P<decimal>[0-9]+(?:\.[0-9]+)?|\.[0-9]+)|"
    rf"(?:(?P<whole>[0-9]+)(?:-|\s+|(?=[{_VULGAR}])))?"
    rf"(?:(?P<num>[0-9]+)[/\N{{FRACTION SLASH}}](?P<den>[0-9]+)|(?P<char>[{_VULGAR}]))"
)
_AFTER_FEET = re.compile(
    r"(?:['\N{RIGHT SINGLE QUOTATION MARK}\N{PRIME}]|ft|feet|foot)[\s-]*"
    r"(?P<num>[0-9]+)/(?P<den>[0-9]+)",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Worth:
    """An amount of nanometres or, where `bare`, of no unit yet; `text` where it stands written."""

    amount: Fraction
    bare: bool = False
    text: str = ""
    column: int = 0


def read_worth(text: str, unit: Unit) -> Worth:
    """What one written number or length is worth; LengthError if it is neither."""
    number = _number(text)
    if number is not None:
        return Worth(number, bare=True, text=text)
    slip = _AFTER_FEET.search(text)
    if slip and int(slip["num"]) >= int(slip["den"]) > 0:
        problem = "behind feet this could be inches or a division"
        raise LengthError(text, slip.start("num"), problem, "put spaces round the / to divide")
    return Worth(Fraction(read_length(text, bare=unit, exact=True).nm))


def _number(text: str) -> Fraction | None:
    """A number without a unit; None for all else, and for what only a length can refuse well."""
    found = _BARE.fullmatch(text)
    if found is None:
        return None
    if found["decimal"]:
        return Fraction(found["decimal"])
    num, den = FRACTION_CHARS[found["char"]] if found["char"] else (found["num"], found["den"])
    num, den = int(num), int(den)
    if den == 0 or (found["whole"] and num >= den):
        return None
    return int(found["whole"] or 0) + Fraction(num, den)


def as_length(worth: Worth, unit: Unit) -> Fraction:
    """The nanometres that a part is worth as a length.

    Raises LengthError, with its column in the part, for a lone number that is no length.
    """
    if not worth.bare:
        return worth.amount
    if worth.text:
        return Fraction(read_length(worth.text, bare=unit, exact=True).nm)
    return worth.amount * NM_PER_BARE[unit]
