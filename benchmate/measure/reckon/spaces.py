"""A length divided into equal spaces, told as running figures from one end, never chained."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from benchmate.measure.length import Length
from benchmate.measure.reckon.rounding import Reckoned, settled


@dataclass(frozen=True, slots=True, kw_only=True)
class Spaces:
    """So many equal spaces in a length, with timbers of one width between them, or with none.

    Lengths in nanometres. Raises ValueError where nothing is left for the spaces.
    """

    total: Fraction
    count: int
    between: Fraction = Fraction(0)
    names: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if self.count < 1 or self.between < 0 or self.width <= 0:
            raise ValueError("a length is divided into one or more spaces, each above zero")

    @property
    def width(self) -> Fraction:
        """The width of one space."""
        return (self.total - (self.count - 1) * self.between) / self.count

    @property
    def each(self) -> Reckoned:
        """The width of one space, rounded once."""
        return settled(self.width)

    def stops(self) -> Iterator[tuple[Length, Length]]:
        """Where each space ends and the next begins, from one end; the last ends at the total.

        Each is worked out by itself and rounded once, so that errors never add up.
        """
        for space in range(1, self.count + 1):
            end = space * self.width + (space - 1) * self.between
            begins = end + (self.between if space < self.count else 0)
            yield settled(end).length, settled(begins).length


def no_wider(total: Fraction, most: Fraction, between: Fraction = Fraction(0)) -> int:
    """The fewest equal spaces, none of them wider than `most`; ValueError for a most not above 0.

    The timbers between are told off, so that it is the clear space that is no wider.
    """
    if most <= 0 or between < 0:
        raise ValueError("spaces are above zero, and so is what stands between them")
    return max(ceil((total + between) / (most + between)), 1)
