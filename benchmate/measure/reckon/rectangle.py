"""A frame on the floor, squared by its diagonals.

Both diagonals of a rectangle are alike. Where opposite sides are alike and the diagonals are not,
the frame leans: one side has slid along itself. With sides a and b and diagonals d and e, sliding
side b by s makes d^2 - e^2 = 4bs, and d^2 + e^2 = 2(a^2 + b^2) whatever the slide (the law of the
parallelogram, Euclid II.12 and II.13). So the slide is known from the diagonals, and sides that are
not what they are said to be show up as well. How it is pushed square: common practice, no source.
"""

from dataclasses import dataclass
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.reckon.rounding import Reckoned, root, settled


@dataclass(frozen=True, slots=True, kw_only=True)
class Rectangle:
    """Two sides that meet at a corner, in nanometres; ValueError unless above zero."""

    one: Fraction
    other: Fraction
    names: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.one <= 0 or self.other <= 0:
            raise ValueError("the sides of a rectangle are above zero")

    @property
    def diagonal(self) -> Reckoned:
        """Both diagonals, when it is square."""
        return root(self.one**2 + self.other**2)

    @property
    def longer(self) -> Fraction:
        """The longer side, along which it is pushed."""
        return max(self.one, self.other)


@dataclass(frozen=True, slots=True, kw_only=True)
class Racked:
    """A rectangle with both diagonals as measured, in nanometres.

    Raises ValueError for a diagonal that does not reach, or reaches further than both sides.
    """

    sides: Rectangle
    first: Fraction
    second: Fraction

    def __post_init__(self) -> None:
        sides = self.sides
        if not all(_closes(sides, each) for each in (self.first, self.second)):
            raise ValueError("no triangle closes with these sides and that diagonal")

    @property
    def push(self) -> Reckoned:
        """How far a long side has slid along itself; nothing when the diagonals are alike."""
        return settled(abs(self.first**2 - self.second**2) / (4 * self.sides.longer))

    @property
    def longer_first(self) -> bool:
        """Whether the first diagonal is the longer one."""
        return self.first > self.second

    @property
    def if_pushed(self) -> Length:
        """What both diagonals will read once they are alike, the sides being what they are."""
        return root((self.first**2 + self.second**2) / 2).length


def _closes(sides: Rectangle, diagonal: Fraction) -> bool:
    return abs(sides.one - sides.other) < diagonal < sides.one + sides.other
