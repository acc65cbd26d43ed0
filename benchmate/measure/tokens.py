"""A typed length cut into numbers, units and marks, each with its column.

Everything a framer's text may hold is in the tables here; `LengthError` says what is not.
"""

import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from itertools import takewhile
from string import ascii_letters, digits

from benchmate.measure.length import NM_PER_FOOT, NM_PER_INCH, NM_PER_MM


class LengthError(ValueError):
    """A text that is no length: the text, the 0-based column, what is wrong and what to do."""

    def __init__(self, text: str, column: int, problem: str, remedy: str) -> None:
        super().__init__(text, column, problem, remedy)
        self.text = text
        self.column = column
        self.problem = _visible(problem)
        self.remedy = _visible(remedy)

    def __str__(self) -> str:
        return f"{self.problem}; {self.remedy}"

    def excerpt(self) -> str:
        """Two lines: the text, and a caret under the wrong character."""
        end = self.column + _EXCERPT_AFTER
        cut = "..." if len(self.text) > end else ""
        return f"{_visible(self.text[:end])}{cut}\n{' ' * len(_visible(self.text[: self.column]))}^"

    def within(self, text: str, start: int) -> "LengthError":
        """The same error, found at a column of a longer text."""
        return LengthError(text, min(start + self.column, len(text)), self.problem, self.remedy)


_EXCERPT_AFTER = 20
"""Characters shown from the caret on; enough to know the place in a long paste."""


def _visible(text: str) -> str:
    """The text with everything that could move a caret or a cursor written as an escape."""
    return "".join(char if _one_cell(char) else ascii(char)[1:-1] for char in text)


def _one_cell(char: str) -> bool:
    return (
        char.isprintable()
        and not unicodedata.combining(char)
        and unicodedata.east_asian_width(char) not in ("W", "F")
        and unicodedata.bidirectional(char) not in ("R", "AL")
    )


class Mark(Enum):
    """A unit as written, worth so many nanometres."""

    FOOT = NM_PER_FOOT
    INCH = NM_PER_INCH
    MM = NM_PER_MM
    CM = 10 * NM_PER_MM
    M = 1000 * NM_PER_MM

    @property
    def metric(self) -> bool:
        """Whether it is a unit of the metric system."""
        return self not in (Mark.FOOT, Mark.INCH)


_UNIT_CHARS = {
    **dict.fromkeys("'\N{RIGHT SINGLE QUOTATION MARK}\N{PRIME}", Mark.FOOT),
    **dict.fromkeys(
        '"\N{LEFT DOUBLE QUOTATION MARK}\N{RIGHT DOUBLE QUOTATION MARK}\N{DOUBLE PRIME}',
        Mark.INCH,
    ),
}
_UNIT_WORDS = {
    **dict.fromkeys(("ft", "feet", "foot"), Mark.FOOT),
    **dict.fromkeys(("in", "inch", "inches"), Mark.INCH),
    "mm": Mark.MM,
    "cm": Mark.CM,
    "m": Mark.M,
}
FRACTION_CHARS = {
    char: (num, den)
    for chars, den in (("½", 2), ("⅓⅔", 3), ("¼ ¾", 4), ("⅕⅖⅗⅘", 5), ("⅙   ⅚", 6), ("⅛ ⅜ ⅝ ⅞", 8))
    for num, char in enumerate(chars, start=1)
    if char != " "
}
MINUS_CHARS = "-\N{MINUS SIGN}"


class Kind(Enum):
    """What a token is."""

    NUMBER = auto()
    FRACTION = auto()
    SLASH = auto()
    HYPHEN = auto()
    UNIT = auto()
    END = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class Token:
    """A piece of a typed length, as written, and its 0-based column."""

    kind: Kind
    text: str
    column: int
    spaced: bool
    """Whether white space stands before it."""


def tokens(text: str) -> Iterator[Token]:
    """The tokens of a text, an END token last; LengthError at a character no length has."""
    at = 0
    while at < len(text):
        start = at + len(text[at:]) - len(text[at:].lstrip())
        if start == len(text):
            break
        kind, word = _cut(text, start)
        yield Token(kind=kind, text=word, column=start, spaced=start > at)
        at = start + len(word)
    yield Token(kind=Kind.END, text="", column=at, spaced=False)


def _cut(text: str, start: int) -> tuple[Kind, str]:
    """The kind and the text of the token that starts at a column."""
    char = text[start]
    if char in digits or char == ".":
        return Kind.NUMBER, _number(text, start)
    if char in ascii_letters:
        return Kind.UNIT, _unit_word(text, start)
    if char in _UNIT_CHARS:
        return Kind.UNIT, char
    if char in FRACTION_CHARS:
        return Kind.FRACTION, char
    if char in MINUS_CHARS:
        return Kind.HYPHEN, char
    if char in "/\N{FRACTION SLASH}":
        return Kind.SLASH, char
    raise LengthError(text, start, f"`{char}` has no place in a length", _remedy(char))


def _remedy(char: str) -> str:
    remedies = {
        ",": "write the decimal with a point",
        "+": "leave off the mark of a rounded figure; a sum takes + with spaces round it",
    }
    return remedies.get(char, "write it with 0-9 . / - and a unit: ' \" ft in mm cm m")


def _run(text: str, start: int, wanted: str) -> str:
    return "".join(takewhile(wanted.__contains__, text[start:]))


def _number(text: str, start: int) -> str:
    whole = _run(text, start, digits)
    point = start + len(whole)
    if text[point : point + 1] != ".":
        return whole
    decimals = _run(text, point + 1, digits)
    if not decimals:
        raise LengthError(text, point, "no digit follows the point", "write 95 or 95.5")
    return f"{whole}.{decimals}"


def _unit_word(text: str, start: int) -> str:
    word = _run(text, start, ascii_letters)
    if word.lower() not in _UNIT_WORDS:
        raise LengthError(text, start, f"`{word}` is not a unit", "use ' ft \" in mm cm or m")
    return word


def mark_of(token: Token) -> Mark:
    """The unit that a UNIT token names."""
    found = _UNIT_CHARS.get(token.text)
    return found if found is not None else _UNIT_WORDS[token.text.lower()]
