"""The section of a timber: its two depths, in from the two reference faces."""

from dataclasses import dataclass

from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.reading import LengthError, Unit, lent_unit, read_length
from benchmate.measure.tolerance import LARGEST_SECTION, LONGEST_SECTION_TEXT

_TIMES = "xX\N{MULTIPLICATION SIGN}"


@dataclass(frozen=True, slots=True)
class Section:
    """Depth in from the first reference face and from the second; ValueError unless above zero."""

    first: Length
    second: Length

    def __post_init__(self) -> None:
        if min(self.first, self.second) <= ZERO:
            raise ValueError("both sides of a section are above zero")

    def exact_text(self) -> str:
        """A text that says this very section: `6" x 7-1/2"`."""
        return f"{self.first.exact_text()} x {self.second.exact_text()}"


def section_text(section: Section, tape: Tape) -> str:
    """The section as the tape shows it: `6" x 8"`."""
    return f"{tape.text(section.first)} x {tape.text(section.second)}"


def read_section(text: str, *, bare: Unit = Unit.INCH, exact: bool = False) -> Section:
    """The section a framer typed: `6 x 8`, `190 x 140 mm`; LengthError for anything else.

    A unit on one side only holds for both; feet on one side leave the other in inches.
    `exact` is as in `read_length`.
    """
    if len(text) > LONGEST_SECTION_TEXT:
        problem = f"longer than {LONGEST_SECTION_TEXT} characters"
        raise LengthError(text, LONGEST_SECTION_TEXT, problem, "write one section, as 6 x 8")
    at = _times(text)
    starts = (0, at + 1)
    sides = (text[:at], text[at + 1 :])
    lent = [_lent(text, side, start) for side, start in zip(sides, starts, strict=True)]
    first, second = (
        _side(text, start, side if own else side.rstrip() + other, bare=bare, exact=exact)
        for side, start, own, other in zip(sides, starts, lent, reversed(lent), strict=True)
    )
    return Section(first, second)


def _times(text: str) -> int:
    """The column of the one `x` of a section."""
    columns = [column for column, char in enumerate(text) if char in _TIMES]
    if not columns:
        raise LengthError(text, len(text), "a section has two sides", "write both, as 6 x 8")
    if len(columns) > 1:
        raise LengthError(text, columns[1], "a section has only two sides", "leave the third out")
    return columns[0]


def _lent(text: str, side: str, start: int) -> str:
    """The unit a side lends to the other."""
    try:
        return lent_unit(side)
    except LengthError as error:
        raise error.within(text, start) from None


def _side(text: str, start: int, side: str, *, bare: Unit, exact: bool) -> Length:
    try:
        length = read_length(side, bare=bare, most=LARGEST_SECTION, exact=exact)
    except LengthError as error:
        raise error.within(text, start) from None
    if not length:
        column = start + len(side) - len(side.lstrip())
        raise LengthError(text, column, "a side of a section is above zero", "measure the stick")
    return length
