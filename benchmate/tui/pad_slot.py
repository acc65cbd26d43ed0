"""The length in a field that the calculator takes up, and the field with another in its place."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from benchmate.measure.reading import LengthError, Unit, lent_unit

if TYPE_CHECKING:
    from benchmate.measure.length import Length

_TIMES = "xX\N{MULTIPLICATION SIGN}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Slot:
    """The text of a field in three: what goes before, the length to reckon with, what follows."""

    before: str = ""
    text: str
    after: str = ""

    def filled(self, length: Length) -> str:
        """The field's text with an exact length in this place."""
        return f"{self.before}{length.exact_text()}{self.after}"


def slot_of(text: str, cursor: int, *, section: bool, bare: Unit) -> Slot:
    """The place to fill in a field: all of it or, in a section, the side the cursor stands in.

    The other side of a section gets its unit written out, as a unit on one side holds for both.
    """
    at = next((column for column, char in enumerate(text) if char in _TIMES), None)
    if not section or at is None:
        return Slot(text=text.strip())
    sides = text[:at].strip(), text[at + 1 :].strip()
    first, second = (
        _with_unit(side, other, bare) for side, other in zip(sides, sides[::-1], strict=True)
    )
    if cursor <= at:
        return Slot(text=sides[0], after=f" x {second}")
    return replace(Slot(text=sides[1]), before=f"{first} x ")


def _with_unit(side: str, other: str, bare: Unit) -> str:
    """A side of a section with the unit it has, or is lent."""
    try:
        own, lent = lent_unit(side), lent_unit(other)
    except LengthError:
        return side
    if own or not side:
        return side
    unit = lent or bare.value
    return f"{side}{unit}" if unit == '"' else f"{side} {unit}"
