"""Typed lengths read exactly, or refused with the column that is wrong.

1. A length is a number with a unit, or feet and then inches; a number without one takes `bare`.
2. A fraction is a tape fraction of an inch. Whole and fraction join with a hyphen or a space.
3. Spaces round a hyphen subtract, and only a sum subtracts.
4. A decimal must come out at a sixty-fourth of an inch or a hundredth of a millimetre.

How it works: `tokens` cuts the text into numbers, units and marks, each with its column; `_Reader`
takes them one by one; `_settle` turns one written number and its unit into nanometres.
"""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from benchmate.measure.length import (
    NM_PER_FOOT,
    NM_PER_HUNDREDTH_MM,
    NM_PER_INCH,
    NM_PER_SIXTYFOURTH,
    Length,
)
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.tokens import FRACTION_CHARS, Kind, LengthError, Mark, Token, mark_of, tokens
from benchmate.measure.tolerance import LONGEST_LENGTH_TEXT, LONGEST_TIMBER, TAPE_DENOMINATORS

__all__ = ["LengthError", "Unit", "lent_unit", "read_length"]


class Unit(Enum):
    """What a number without a unit is taken to be."""

    INCH = "in"
    MM = "mm"


_BARE = {Unit.INCH: Mark.INCH, Unit.MM: Mark.MM}
_SPACED_HYPHEN = "in a length the hyphen joins without spaces"
_SUBTRACTS = "close it up; spaces round a hyphen subtract, which only a sum does"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Fraction:
    num: int
    den: int
    column: int
    den_column: int


@dataclass(frozen=True, slots=True, kw_only=True)
class _Written:
    """A number as written: a whole or decimal number, a tape fraction, or both."""

    column: int
    whole: Fraction
    fraction: _Fraction | None

    @property
    def value(self) -> Fraction:
        part = self.fraction
        return self.whole + (Fraction(part.num, part.den) if part else 0)


class _Reader:
    """Takes the tokens of one length in order; every refusal names a column."""

    def __init__(self, text: str, *, negative: bool, exact: bool) -> None:
        self.text = text
        self.negative = negative
        self.exact = exact
        self.tokens = list(tokens(text))
        self.at = 0
        self.sign = 1

    @property
    def now(self) -> Token:
        return self.tokens[self.at]

    @property
    def after(self) -> Token:
        return self.tokens[min(self.at + 1, len(self.tokens) - 1)]

    def take(self) -> Token:
        token = self.now
        self.at = min(self.at + 1, len(self.tokens) - 1)
        return token

    def refuse(self, column: int, problem: str, remedy: str) -> LengthError:
        return LengthError(self.text, column, problem, remedy)

    def length(self, bare: Unit) -> Length:
        """The whole text as a length."""
        self.minus()
        first = self.written()
        mark = self.unit() or _BARE[bare]
        nm = self.feet(first) if mark is Mark.FOOT else _settle(self, first, mark)
        self.end(mark)
        return Length(self.sign * nm)

    def minus(self) -> None:
        if self.now.kind is not Kind.HYPHEN:
            return
        column = self.take().column
        if not self.negative:
            raise self.refuse(column, "a length here is not below zero", "leave the minus out")
        if self.now.spaced:
            raise self.refuse(column, "the minus stands apart from its number", "close it up")
        self.sign = -1

    def unit(self) -> Mark | None:
        return mark_of(self.take()) if self.now.kind is Kind.UNIT else None

    def feet(self, feet: _Written) -> int:
        """The nanometres of a number of feet and of the inches behind it, if any."""
        if feet.fraction:
            raise self.refuse(
                feet.fraction.column, "feet take no fraction", "write feet and inches, as 7' 6\""
            )
        nm = _settle(self, feet, Mark.FOOT)
        joined = self.join(after="the feet")
        if not joined and self.now.kind not in (Kind.NUMBER, Kind.FRACTION):
            return nm
        if feet.whole.denominator > 1:
            raise self.refuse(
                self.now.column, "inches after a decimal of feet", "write whole feet, then inches"
            )
        inches = self.written()
        self.inch_mark()
        return self.carried(nm, inches)

    def carried(self, feet_nm: int, inches: _Written) -> int:
        """Feet and inches together; twelve inches or more could be a slip in either figure."""
        nm = feet_nm + _settle(self, inches, Mark.INCH)
        if inches.value >= NM_PER_FOOT // NM_PER_INCH:
            right = _named(Length(self.sign * nm), Style.FEET_INCHES)
            raise self.refuse(
                inches.column, "a foot or more of inches after feet", f"write {right}"
            )
        return nm

    def inch_mark(self) -> None:
        token = self.now
        mark = self.unit()
        if mark is Mark.FOOT:
            raise self.refuse(token.column, "feet are given twice", 'mark inches with " or in')
        if mark is not None and mark.metric:
            raise self.refuse(token.column, "feet and a metric unit in one length", "keep to one")

    def join(self, *, after: str) -> bool:
        """Take a hyphen that joins two parts of a length; whether there was one."""
        if self.now.kind is not Kind.HYPHEN:
            return False
        hyphen = self.take()
        if hyphen.spaced or self.now.spaced:
            raise self.refuse(hyphen.column, _SPACED_HYPHEN, _SUBTRACTS)
        if self.now.kind not in (Kind.NUMBER, Kind.FRACTION):
            raise self.refuse(hyphen.column, f"the hyphen joins nothing to {after}", "leave it out")
        return True

    def written(self) -> _Written:
        """A number: `95`, `95.5`, `3/4`, `4-3/4`, `4 3/4`, `4¾`."""
        start = self.now
        if start.kind is Kind.FRACTION or self.after.kind is Kind.SLASH:
            return _Written(column=start.column, whole=Fraction(0), fraction=self.fraction())
        if start.kind is not Kind.NUMBER:
            raise self.refuse(start.column, *_no_number(start, self.text))
        whole = Fraction(self.take().text)
        fraction = self.attached() if start.text.isdigit() else None
        if fraction and fraction.num >= fraction.den:
            raise self.refuse(
                fraction.column, "the fraction is an inch or more", "carry it into the whole number"
            )
        return _Written(column=start.column, whole=whole, fraction=fraction)

    def attached(self) -> _Fraction | None:
        """The fraction behind a whole number, joined by a hyphen or a space."""
        if self.join(after="the whole number"):
            return self.fraction()
        if self.now.kind is Kind.FRACTION or self.after.kind is Kind.SLASH:
            return self.fraction()
        return None

    def fraction(self) -> _Fraction:
        first = self.take()
        if first.kind is Kind.FRACTION:
            num, den = FRACTION_CHARS[first.text]
            return _Fraction(num=num, den=den, column=first.column, den_column=first.column)
        slash = self.take()
        second = self.take()
        if slash.kind is not Kind.SLASH:
            raise self.refuse(first.column, "a fraction belongs here", "write one, as 3/4")
        parts_whole = first.text.isdigit() and second.text.isdigit()
        if not parts_whole or slash.spaced or second.spaced:
            raise self.refuse(
                slash.column, "this is not a fraction", "write two whole numbers, as 3/4"
            )
        if int(second.text) == 0:
            raise self.refuse(
                second.column, "nothing divides by 0", "write a tape fraction, as 3/4"
            )
        return _Fraction(
            num=int(first.text),
            den=int(second.text),
            column=first.column,
            den_column=second.column,
        )

    def end(self, mark: Mark) -> None:
        token = self.now
        if token.kind is Kind.END:
            return
        if token.kind is Kind.HYPHEN and (token.spaced or self.after.spaced):
            raise self.refuse(token.column, _SPACED_HYPHEN, _SUBTRACTS)
        rest = self.tokens[self.at :]
        marks = [mark_of(one) for one in rest if one.kind is Kind.UNIT]
        if any(one.metric is not mark.metric for one in marks):
            raise self.refuse(token.column, "inches and a metric unit in one length", "keep to one")
        raise self.refuse(token.column, "the length ends before this", "leave the rest out")


def _no_number(token: Token, text: str) -> tuple[str, str]:
    if not text.strip():
        return "there is no length", 'write one, as 4-3/4" or 7\' 11"'
    if token.kind is Kind.UNIT:
        return "the unit has no number", 'put the number first, as 6"'
    return "a number belongs here", 'write one, as 4-3/4"'


def _settle(reader: _Reader, written: _Written, mark: Mark) -> int:
    """The nanometres of a number in a unit, when they are exact and fine enough."""
    part = written.fraction
    if part and mark.metric:
        raise reader.refuse(
            part.column,
            "a metric length takes no fraction",
            'write a decimal, or mark inches with "',
        )
    nm = written.value * mark.value
    if part and part.den not in TAPE_DENOMINATORS:
        problem = f"{part.num}/{part.den} is not a tape fraction"
        raise reader.refuse(part.den_column, problem, _nearest(nm * reader.sign, mark))
    if nm.denominator > 1 or not (reader.exact or _on_tape(nm.numerator)):
        problem = "finer than a nanometre" if reader.exact else 'finer than 1/64" or 0.01 mm'
        raise reader.refuse(written.column, problem, _nearest(nm * reader.sign, mark))
    return nm.numerator


def _on_tape(nm: int) -> bool:
    return nm % NM_PER_SIXTYFOURTH == 0 or nm % NM_PER_HUNDREDTH_MM == 0


def _nearest(nm: Fraction, mark: Mark) -> str:
    """What to write instead: the lengths on either side, or the same one in tape terms."""
    step = NM_PER_HUNDREDTH_MM if mark.metric else NM_PER_SIXTYFOURTH
    style = Style.FEET_INCHES if mark is Mark.FOOT else Style.INCHES
    counts = sorted({nm // step, -(-nm // step)}, key=abs)
    if mark.metric:
        return "write " + " or ".join(map(_mm, counts))
    return "write " + " or ".join(_named(Length(count * step), style) for count in counts)


def _mm(hundredths: int) -> str:
    whole, rest = divmod(abs(hundredths), 100)
    return f"{'-' if hundredths < 0 else ''}{whole}.{rest:02} mm"


def _named(length: Length, style: Style) -> str:
    """A length to suggest: on the finest tape where it lies on one, else exact."""
    if length.nm % NM_PER_SIXTYFOURTH:
        return length.exact_text()
    return Tape(style=style, graduation=Graduation.SIXTY_FOURTH).text(length)


def read_length(
    text: str,
    *,
    bare: Unit = Unit.INCH,
    negative: bool = False,
    most: Length | None = LONGEST_TIMBER,
    exact: bool = False,
) -> Length:
    """The length a framer typed; LengthError for anything that is not exactly one length.

    `bare` is the unit of a number without one, `most` the largest size allowed either side of
    zero, None for any. `exact` lets decimals go down to a nanometre, for stored values: with it,
    `exact_text` reads back.
    """
    if len(text) > LONGEST_LENGTH_TEXT:
        problem = f"longer than {LONGEST_LENGTH_TEXT} characters"
        raise LengthError(text, LONGEST_LENGTH_TEXT, problem, "write one length")
    reader = _Reader(text, negative=negative, exact=exact)
    length = reader.length(bare)
    if most is not None and abs(length) > most:
        column = len(text) - len(text.lstrip())
        problem = f"more than {_named(most, Style.FEET_INCHES)}"
        raise LengthError(text, column, problem, "check the figure and its unit")
    return length


def lent_unit(text: str) -> str:
    """The unit that a length lends to a bare number beside it; empty when it has none.

    Feet lend inches, as `1' x 8` is a foot by eight inches.
    """
    units = [token for token in tokens(text) if token.kind is Kind.UNIT]
    if not units:
        return ""
    return '"' if mark_of(units[-1]) is Mark.FOOT else units[-1].text
