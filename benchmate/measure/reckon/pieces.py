"""A line for the calculator cut into terms and signs, each with its column.

1. A sign with white space on both sides joins two terms, as in a sum. `x` and brackets need none.
2. `/` divides between spaces, behind a unit and beside a bracket; between two digits it is the bar
   of a fraction. With a space on one side only it could be either, and is refused.
3. A word is a name that is known, the longest that fits, or a share: half, third, quarter.
"""

import re
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from difflib import get_close_matches
from enum import Enum, auto
from fractions import Fraction

from benchmate.measure.tokens import MINUS_CHARS, LengthError


class Piece(Enum):
    """What a piece of a line is."""

    NUMBER = auto()
    NAME = auto()
    SHARE = auto()
    OPEN = auto()
    CLOSE = auto()
    PLUS = auto()
    MINUS = auto()
    TIMES = auto()
    OVER = auto()
    END = auto()


@dataclass(frozen=True, slots=True)
class Cut:
    """One piece as written, and its 0-based column."""

    piece: Piece
    text: str
    column: int


SHARES = {"half": Fraction(1, 2), "third": Fraction(1, 3), "quarter": Fraction(1, 4)}
"""The words for a share of what follows."""

LEADS = ("diagonal", "run", "rise", "pitch")
"""The words that a line about a triangle begins with."""

_SHARE = re.compile(rf"(?:an?\s+)?({'|'.join(SHARES)})(?:\s+of)?(?=[\s(]|$)")
_WORD = re.compile(r"[^\W\d_]\w*(?:[ -][^\W\d_]\w*)*")
_WORD_OR_NUMBERED = re.compile(r"[^\W\d_]\w*(?:[ -]\w+)*")
_TIMES = "xX*\N{MULTIPLICATION SIGN}"
_BARS = "/\N{FRACTION SLASH}"
_SIGNS = {
    "(": Piece.OPEN,
    ")": Piece.CLOSE,
    "+": Piece.PLUS,
    **dict.fromkeys(MINUS_CHARS, Piece.MINUS),
    **dict.fromkeys(_TIMES, Piece.TIMES),
    **dict.fromkeys((*_BARS, "\N{DIVISION SIGN}"), Piece.OVER),
}
MISSING = ("a length is missing", "write one here, as 7-1/2")


def known_name(text: str, start: int, names: Collection[str]) -> str:
    """The longest known name that stands at a column; empty when there is none."""
    fits = (name for name in names if _stands(text, start, name))
    return max(fits, key=len, default="")


def _stands(text: str, start: int, name: str) -> bool:
    after = text[start + len(name) : start + len(name) + 2]
    joined = after[:1].isalnum() or (after[:1] == "-" and after[1:].isalnum())
    return text.startswith(name, start) and not joined


def pieces(text: str, names: Collection[str] = ()) -> Iterator[Cut]:
    """The pieces of a line, an END last; LengthError where a piece cannot begin."""
    at, wants_term, at_head = 0, True, True
    while (at := at + len(text[at:]) - len(text[at:].lstrip())) < len(text):
        cut = _term(text, at, names, head=at_head) if wants_term else _joint(text, at)
        yield cut
        at += len(cut.text)
        wants_term = cut.piece not in (Piece.NUMBER, Piece.NAME, Piece.CLOSE)
        at_head = cut.piece is Piece.OPEN
    yield Cut(Piece.END, "", len(text))


def _term(text: str, at: int, names: Collection[str], *, head: bool) -> Cut:
    """What stands where a term is wanted: a bracket, a minus at the head, a word or a number."""
    char = text[at]
    if char == "(":
        return Cut(Piece.OPEN, char, at)
    if char in MINUS_CHARS and head:
        return Cut(Piece.MINUS, char, at)
    if char.isalpha() and not (char in "xX" and _lone(text, at, names)):
        return _word(text, at, names)
    if char in _SIGNS:
        raise LengthError(text, at, *MISSING)
    end = next((column for column in range(at + 1, len(text)) if _joins(text, column)), len(text))
    return Cut(Piece.NUMBER, text[at:end].rstrip(), at)


def _lone(text: str, at: int, names: Collection[str]) -> bool:
    """Whether a letter is no part of a word or name, as the x that multiplies is not."""
    return not text[at + 1 : at + 2].isalpha() and not known_name(text, at, names)


def _word(text: str, at: int, names: Collection[str]) -> Cut:
    name = known_name(text, at, names)
    if name:
        return Cut(Piece.NAME, name, at)
    share = _SHARE.match(text, at)
    if share:
        return Cut(Piece.SHARE, share[0], at)
    word, numbered = (_matched(pattern, text, at) for pattern in (_WORD, _WORD_OR_NUMBERED))
    known = (*names, *SHARES, *LEADS)
    near = [match for each in (numbered, word) for match in get_close_matches(each, known, n=1)]
    remedy = f"did you mean {near[0]}?" if near else "write a length, as 12' 6"
    shown = numbered if word in names else word
    raise LengthError(text, at, f"`{shown}` is no name or word known here", remedy)


def _matched(pattern: re.Pattern[str], text: str, at: int) -> str:
    found = pattern.match(text, at)
    return found[0] if found else text[at]


def share_of(word: str) -> Fraction:
    """What a SHARE piece says; StopIteration for any other text."""
    return next(share for name, share in SHARES.items() if name in word)


def _joint(text: str, at: int) -> Cut:
    """What stands behind a term: a sign or a closing bracket."""
    piece = _SIGNS.get(text[at], Piece.OPEN)
    if piece is Piece.OPEN:
        raise LengthError(text, at, "a sign is missing", "write + - x or / before this")
    return Cut(piece, text[at], at)


def _joins(text: str, at: int) -> bool:
    """Whether the length that runs up to a column ends there."""
    char, before, after = text[at], text[at - 1], text[at + 1 : at + 2]
    if char in "xX":
        return not before.isalpha() and not after.isalpha()
    if char in _BARS:
        return _divides(text, at)
    if char == "+" or char in MINUS_CHARS:
        return _adds(text, at)
    return char in _SIGNS


def _divides(text: str, at: int) -> bool:
    """Whether a `/` divides; LengthError where it could as well be the bar of a fraction."""
    before, after = text[at - 1], text[at + 1 : at + 2]
    if after == "(" or not (before.isspace() or before.isdigit()):
        return True
    spaced = before.isspace(), after.isspace() or not after
    if before.isspace() and all(spaced):
        return True
    if any(spaced) and after:
        remedy = "put spaces on both sides to divide, none to write a fraction"
        raise LengthError(text, at, "a space stands on one side of the / only", remedy)
    return False


def _adds(text: str, at: int) -> bool:
    """Whether a + or - adds; LengthError where it could as well belong to a length."""
    char, before, after = text[at], text[at - 1], text[at + 1 : at + 2]
    if after == "(" or (before.isspace() and (not after or after.isspace())):
        return True
    if before.isspace():
        remedy = "put spaces on both sides to add or take away, none to join a fraction"
        raise LengthError(text, at, f"a space stands on one side of the {char} only", remedy)
    if after.isspace():
        remedy = "leave off the mark of a rounded figure; put spaces on both sides to add"
        raise LengthError(text, at, f"the {char} is joined to the length before it", remedy)
    return False
