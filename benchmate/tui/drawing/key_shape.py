"""A timber as it is seen in one view: its outline, its middle line, and the cells it reaches into.

Spots are nanometres to the right and down, all whole numbers.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.tui.drawing.canvas import Cell
    from benchmate.tui.drawing.key import Bar, View
    from benchmate.tui.drawing.key_plot import Plot

Spot = tuple[int, int]

UPPER, LOWER = 1, 2
"""The halves of a cell, to be added up."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """What is seen of a timber: a convex outline, and the line between the middles of its ends."""

    outline: tuple[Spot, ...]
    start: Spot
    end: Spot

    @property
    def low(self) -> Spot:
        """The corner at the upper left of the rectangle round it."""
        return min(spot[0] for spot in self.outline), min(spot[1] for spot in self.outline)

    @property
    def high(self) -> Spot:
        """The corner at the lower right of the rectangle round it."""
        return max(spot[0] for spot in self.outline), max(spot[1] for spot in self.outline)

    @property
    def wide(self) -> int:
        """From its leftmost spot to its rightmost."""
        return self.high[0] - self.low[0]

    @property
    def tall(self) -> int:
        """From its highest spot to its lowest."""
        return self.high[1] - self.low[1]

    @property
    def area(self) -> int:
        """Twice the area of the outline."""
        return abs(sum(a * d - c * b for (a, b), (c, d) in edges_of(self.outline)))


def edges_of(outline: tuple[Spot, ...]) -> Iterator[tuple[Spot, Spot]]:
    """Every edge of an outline, from spot to spot and back to the first."""
    return zip(outline, outline[1:] + outline[:1], strict=True)


def shape_of(bar: Bar, view: View) -> Shape:
    """A timber as one view shows it."""
    spots = [view.spot(corner) for corner in bar.corners]
    return Shape(outline=_hull(spots), start=_middle(spots[:4]), end=_middle(spots[4:]))


def _middle(spots: list[Spot]) -> Spot:
    return sum(spot[0] for spot in spots) // len(spots), sum(spot[1] for spot in spots) // len(
        spots
    )


def _hull(spots: list[Spot]) -> tuple[Spot, ...]:
    """The convex outline round some spots: its lower chain, then its upper one back."""
    order = sorted(set(spots))
    if len(order) < 3:  # noqa: PLR2004 - a line has no inside
        return tuple(order)
    return (*_chain(order), *_chain(order[::-1]))


def _chain(order: list[Spot]) -> list[Spot]:
    """The turns of one side of the outline, without the last, which begins the other side."""
    found: list[Spot] = []
    for spot in order:
        while len(found) > 1 and _turn(found[-2], found[-1], spot) <= 0:
            found.pop()
        found.append(spot)
    return found[:-1]


def _turn(one: Spot, two: Spot, three: Spot) -> int:
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])


def reached(shape: Shape, plot: Plot) -> dict[Cell, int]:
    """The cells a timber reaches into, each with the halves of it that it does."""
    cells: dict[Cell, int] = {}
    first = plot.half(shape.low[1])
    for half in range(first, max(plot.half(shape.high[1] - 1), first) + 1):
        low, high = _span(shape, *plot.edges(half))
        start = plot.column(low)
        for column in range(start, max(plot.column(high - 1), start) + 1):
            cell = half // 2, column
            cells[cell] = cells.get(cell, 0) | (LOWER if half % 2 else UPPER)
    return cells


def _span(shape: Shape, top: int, bottom: int) -> tuple[int, int]:
    """From where to where a band across the sheet is covered, outward to whole nanometres."""
    found: list[tuple[int, int]] = []
    for (a, b), (c, d) in edges_of(shape.outline):
        if top <= b <= bottom:
            found.append((a, a))
        for edge in (top, bottom):
            if min(b, d) < edge < max(b, d):
                across = (c - a) * (edge - b)
                found.append((a + across // (d - b), a - (-across // (d - b))))
    return min(low for low, _ in found), max(high for _, high in found)
