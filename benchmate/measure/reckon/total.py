"""The arithmetic of a line: terms added up, lengths times and over plain numbers, brackets.

Everything is a fraction of nanometres, so nothing is rounded here.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.printing import Style, Tape
from benchmate.measure.reading import Unit
from benchmate.measure.reckon.pieces import MISSING, Cut, Piece, pieces, share_of
from benchmate.measure.reckon.worth import Worth, as_length, read_worth
from benchmate.measure.tokens import LengthError
from benchmate.measure.tolerance import DEEPEST_BRACKETS, LARGEST_RECKONED

_MOST = Tape(style=Style.FEET_INCHES).text(LARGEST_RECKONED)


@dataclass(frozen=True, slots=True)
class Total:
    """What a line comes to, in nanometres, and the names that it goes by."""

    nm: Fraction
    names: tuple[str, ...] = ()


def read_total(text: str, *, bare: Unit, sizes: Mapping[str, Length]) -> Total:
    """What a line of arithmetic comes to; LengthError with the column for anything else.

    `bare` is the unit of a number without one, `sizes` what the names that may stand in it measure.
    """
    reader = _Reader(text, bare, sizes)
    worth = reader.total()
    reader.end()
    nm = reader.length(worth)
    if abs(nm) > LARGEST_RECKONED.nm:
        raise LengthError(text, 0, f"comes to more than {_MOST}", "check the figures and units")
    return Total(nm, tuple(reader.names))


class _Reader:
    """Takes the pieces of one line in order."""

    def __init__(self, text: str, bare: Unit, sizes: Mapping[str, Length]) -> None:
        self.text = text
        self.bare = bare
        self.sizes = sizes
        self.names: list[str] = []
        self._cuts = pieces(text, sizes)
        self._deep = 0
        self.now = next(self._cuts)

    def take(self) -> Cut:
        cut = self.now
        self.now = next(self._cuts, cut)
        return cut

    def length(self, worth: Worth) -> Fraction:
        try:
            return as_length(worth, self.bare)
        except LengthError as error:
            raise error.within(self.text, worth.column) from None

    def total(self) -> Worth:
        """Products with + and - between them; a minus may stand at the head."""
        negative = self.now.piece is Piece.MINUS
        if negative:
            self.take()
        worth = self.product()
        if negative:
            self.length(worth)
            worth = Worth(-worth.amount, bare=worth.bare)
        while self.now.piece in (Piece.PLUS, Piece.MINUS):
            sign = 1 if self.take().piece is Piece.PLUS else -1
            worth = self._added(worth, self.product(), sign)
        return worth

    def _added(self, one: Worth, other: Worth, sign: int) -> Worth:
        if one.bare and other.bare:
            return Worth(one.amount + sign * other.amount, bare=True)
        return Worth(self.length(one) + sign * self.length(other))

    def product(self) -> Worth:
        """Factors with x and / between them, taken from left to right."""
        worth = self.factor()
        while self.now.piece in (Piece.TIMES, Piece.OVER):
            sign = self.take()
            other = self.factor()
            join = self._times if sign.piece is Piece.TIMES else self._over
            worth = join(worth, other, sign.column)
        return worth

    def _times(self, one: Worth, other: Worth, column: int) -> Worth:
        if not one.bare and not other.bare:
            problem, remedy = "a length times a length is an area", "multiply by a plain number"
            raise LengthError(self.text, column, problem, remedy)
        return Worth(one.amount * other.amount, bare=one.bare and other.bare)

    def _over(self, one: Worth, other: Worth, column: int) -> Worth:
        if not other.bare:
            remedy = "divide by a plain number, or write 24' at most 16 for spaces"
            raise LengthError(self.text, column, "nothing is divided by a length here", remedy)
        if not other.amount:
            raise LengthError(self.text, column, "nothing divides by 0", "divide by 2 or more")
        return Worth(one.amount / other.amount, bare=one.bare)

    def factor(self) -> Worth:
        """A number or length, a name, a share of a factor, or a total in brackets."""
        cut = self.take()
        if cut.piece is Piece.NUMBER:
            return self._number(cut)
        if cut.piece is Piece.NAME:
            self.names.append(cut.text)
            return Worth(Fraction(self.sizes[cut.text].nm))
        if cut.piece is Piece.SHARE:
            return self._times(Worth(share_of(cut.text), bare=True), self.factor(), cut.column)
        if cut.piece is Piece.OPEN:
            return self._bracketed(cut)
        raise LengthError(self.text, cut.column, *MISSING)

    def _number(self, cut: Cut) -> Worth:
        try:
            worth = read_worth(cut.text, self.bare)
        except LengthError as error:
            raise error.within(self.text, cut.column) from None
        return Worth(worth.amount, bare=worth.bare, text=worth.text, column=cut.column)

    def _bracketed(self, opening: Cut) -> Worth:
        self._deep += 1
        if self._deep > DEEPEST_BRACKETS:
            problem = f"more than {DEEPEST_BRACKETS} brackets inside each other"
            raise LengthError(self.text, opening.column, problem, "work part of it out first")
        worth = self.total()
        if self.now.piece is not Piece.CLOSE:
            raise LengthError(self.text, self.now.column, "a bracket is not closed", "write ) here")
        self.take()
        self._deep -= 1
        return worth

    def end(self) -> None:
        """LengthError unless the line ends here."""
        if self.now.piece is not Piece.END:
            problem = "this bracket was never opened"
            raise LengthError(
                self.text, self.now.column, problem, "write ( before, or leave it out"
            )
