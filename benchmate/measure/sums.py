"""Sums of lengths and named sizes: `floor top + joist depth - 1-1/2"`.

A sign with white space on both sides joins two terms; one without belongs to a length (`4-3/4`)
or to a name (`tie-beam depth`). A term that starts with a letter is a name, else a length.
"""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import LengthError, Unit, read_length
from benchmate.measure.tolerance import LONGEST_SUM_TEXT

_MINUS = "-\N{MINUS SIGN}"
_OPERATOR = re.compile(rf"\s([{_MINUS}+])(?=\s|$)")
_NAME = re.compile(r"[a-z][a-z0-9]*(?:[ -][a-z0-9]+)*")


def is_name(text: str) -> bool:
    """Whether a text may name a size: lower-case words of letters and digits, hyphens inside."""
    return _NAME.fullmatch(text) is not None


@dataclass(frozen=True, slots=True)
class Term:
    """One term of a sum: a sign of 1 or -1, and either a name or a length not below zero.

    Raises ValueError for any other sign, name or length, and for both or neither.
    """

    sign: int
    name: str | None
    length: Length | None

    def __post_init__(self) -> None:
        if self.sign not in (1, -1):
            raise ValueError(f"the sign of a term is 1 or -1, not {self.sign!r}")
        if (self.name is None) is (self.length is None):
            raise ValueError("a term is a name or a length: one of them, not both")
        if self.name is not None and not is_name(self.name):
            raise ValueError(f"{self.name!r} cannot name a size")
        if self.length is not None and self.length < ZERO:
            raise ValueError("a term carries its sign apart from its length")

    def text(self) -> str:
        """The term without its sign."""
        return self.length.exact_text() if self.length is not None else str(self.name)

    def value(self, lookup: Callable[[str], Length]) -> Length:
        """The term with its sign; `lookup` gives the size of a name."""
        size = self.length if self.length is not None else lookup(str(self.name))
        return size * self.sign


@dataclass(frozen=True, slots=True)
class Sum:
    """One or more terms to be added up; ValueError when there are none."""

    terms: tuple[Term, ...]

    def __post_init__(self) -> None:
        if not self.terms:
            raise ValueError("a sum has at least one term")

    def names(self) -> tuple[str, ...]:
        """The names in it, in order, as often as they stand there."""
        return tuple(term.name for term in self.terms if term.name is not None)

    def text(self) -> str:
        """The sum in one spelling, which reads back equal (with `exact`)."""
        first, *rest = self.terms
        lead = "-" if first.sign < 0 else ""
        tail = (f" {'+' if term.sign > 0 else '-'} {term.text()}" for term in rest)
        return lead + first.text() + "".join(tail)

    def value(self, lookup: Callable[[str], Length]) -> Length:
        """What it comes to; `lookup` gives the size of a name, and its errors pass through."""
        return sum((term.value(lookup) for term in self.terms), start=ZERO)


def read_sum(text: str, *, bare: Unit = Unit.INCH, exact: bool = False) -> Sum:
    """The sum a framer typed; LengthError, with its column in the whole text, for anything else.

    `bare` and `exact` are as in `read_length`.
    """
    if len(text) > LONGEST_SUM_TEXT:
        problem = f"longer than {LONGEST_SUM_TEXT} characters"
        raise LengthError(text, LONGEST_SUM_TEXT, problem, "name part of it as a level")
    start = len(text) - len(text.lstrip())
    sign = 1
    if text[start : start + 1] in tuple(_MINUS):
        start, sign = start + 1, -1
    terms = []
    for operator in _OPERATOR.finditer(text, start):
        terms.append(_term(text, start, operator.start(), sign, bare=bare, exact=exact))
        start, sign = operator.end(), 1 if operator[1] == "+" else -1
    terms.append(_term(text, start, len(text), sign, bare=bare, exact=exact))
    return Sum(tuple(terms))


def with_names(text: str, names: Mapping[str, str]) -> str:
    """The sum as it is written, with other names for some; LengthError if it cannot be read."""
    read_sum(text)
    parts: list[str] = []
    start = 0
    for operator in _OPERATOR.finditer(text):
        parts += (_renamed(text[start : operator.start()], names), operator[0])
        start = operator.end()
    return "".join((*parts, _renamed(text[start:], names)))


def _renamed(part: str, names: Mapping[str, str]) -> str:
    """One term as written, blanks and a leading sign included, with another name."""
    name = part.strip().lstrip(_MINUS).strip()
    return part.replace(name, names[name]) if name in names else part


def _term(text: str, start: int, end: int, sign: int, *, bare: Unit, exact: bool) -> Term:
    """The term between two columns."""
    part = text[start:end]
    start += len(part) - len(part.lstrip())
    part = part.strip()
    if not part:
        raise LengthError(text, start, "a term is missing", "write a length or a name here")
    if part[0].isalpha():
        return Term(sign, _name(text, start, part), None)
    try:
        return Term(sign, None, read_length(part, bare=bare, exact=exact))
    except LengthError as error:
        raise error.within(text, start) from None


def _name(text: str, start: int, part: str) -> str:
    if is_name(part):
        return part
    good = _NAME.match(part)
    at = good.end() if good else 0
    column = start + at + (part[at] == " ")
    problem = "a name has only lower-case words, digits and hyphens inside a word"
    raise LengthError(text, column, problem, "put a space on both sides of + and -")
