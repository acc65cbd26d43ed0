"""Which part of a timber is drawn, and which cell a reading falls in.

How it works
1. A cell stands for one reading, that of its middle, so both edges of a face lie in the middle of
   their rows and a line is drawn in the cell nearest to it.
2. A timber too long for the sheet is drawn in one stretch or in two, broken where nothing matters.
3. What should be seen comes as wishes, each a set of readings, the most generous first. The first
   that fits in one stretch or in two is granted, or else the middle of the last.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

Span = tuple[int, int]
"""From a reading to a larger one, in nanometres."""

_PAD = 3
"""Cells seen on either side of what must be seen, the break among them."""
_GAP = 1
_LEAST_FOR_TWO = 24


@dataclass(frozen=True, slots=True)
class Scale:
    """So many cells to so many nanometres."""

    cells: int
    nm: int

    def cells_in(self, nm: int) -> int:
        """The nearest number of cells, a half counting as one more."""
        return (2 * nm * self.cells + self.nm) // (2 * self.nm)

    def nm_in(self, cells: int) -> int:
        """The length of some cells, to a nanometre below."""
        return cells * self.nm // self.cells


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """A run of cells, its first standing for the reading `low`; if turned, its last."""

    low: int
    first: int
    count: int
    scale: Scale
    turned: bool = False

    @property
    def last(self) -> int:
        """Its last cell."""
        return self.first + self.count - 1

    @property
    def high(self) -> int:
        """The largest reading it has a cell for."""
        return self.low + self.scale.nm_in(self.count - 1)

    @property
    def cells(self) -> range:
        """Its cells in order."""
        return range(self.first, self.first + self.count)

    def holds(self, at: int) -> bool:
        """Whether a reading falls in it."""
        return 0 <= self.scale.cells_in(at - self.low) < self.count

    def cell(self, at: int) -> int:
        """The cell of a reading, outside the stretch if the reading is."""
        return self._turn(self.scale.cells_in(at - self.low))

    def line(self, at: int) -> int:
        """The cell to draw a line in: never that of an edge, a break or an end it is not on."""
        if not self.holds(at) or not self.low < at < self.high:
            return self.cell(at)
        return min(max(self.cell(at), self.first + 1), self.last - 1)

    def at(self, cell: int) -> int:
        """The reading a cell stands for."""
        offset = self.last - cell if self.turned else cell - self.first
        return self.low + self.scale.nm_in(offset)

    def within(self, low: int, high: int) -> range:
        """The cells whose readings lie between two."""
        start = max(-((self.low - low) * self.scale.cells // self.scale.nm), 0)
        end = min((high - self.low) * self.scale.cells // self.scale.nm, self.count - 1)
        if start > end:
            return range(0)
        one, other = sorted((self._turn(start), self._turn(end)))
        return range(one, other + 1)

    def moved(self, cells: int) -> Stretch:
        """The same stretch so many cells further on."""
        return replace(self, first=self.first + cells)

    def _turn(self, offset: int) -> int:
        return self.last - offset if self.turned else self.first + offset


def stretches(
    extent: Span, wishes: tuple[tuple[int, ...], ...], scale: Scale, columns: int
) -> tuple[Stretch, ...]:
    """One stretch or two, from left to right and from column nought, that grant a wish."""
    length = extent[1] - extent[0]
    whole = max(scale.cells_in(length), 2)
    if whole < columns:
        return (Stretch(low=extent[0], first=0, count=whole + 1, scale=Scale(whole, length)),)
    for wish in wishes:
        found = _one(extent, wish, scale, columns) or _two(extent, wish, scale, columns)
        if found:
            return found
    return (_round(extent, (min(wishes[-1]), max(wishes[-1])), scale, columns),)


def _one(extent: Span, wish: tuple[int, ...], scale: Scale, columns: int) -> tuple[Stretch, ...]:
    span = min(wish), max(wish)
    if _need(extent, span, scale) > columns:
        return ()
    return (_round(extent, span, scale, columns),)


def _two(extent: Span, wish: tuple[int, ...], scale: Scale, columns: int) -> tuple[Stretch, ...]:
    order = sorted(set(wish))
    if len(order) == 1 or columns < _LEAST_FOR_TWO:
        return ()
    _, split = max((high - low, place) for place, (low, high) in enumerate(pairwise(order), 1))
    spans = (order[0], order[split - 1]), (order[split], order[-1])
    needs = [_need(extent, span, scale) for span in spans]
    spare = columns - _GAP - sum(needs)
    if spare < 0:
        return ()
    left = _round(extent, spans[0], scale, needs[0] + spare // 2)
    right = _round(extent, spans[1], scale, needs[1] + spare - spare // 2)
    return left, right.moved(left.count + _GAP)


def _need(extent: Span, span: Span, scale: Scale) -> int:
    """The cells a span and its padding take; a part of one counts whole, so nothing is cut off."""
    low, high = _padded(extent, span, scale)
    return -(-(high - low) * scale.cells // scale.nm) + 1


def _padded(extent: Span, span: Span, scale: Scale) -> Span:
    pad = scale.nm_in(_PAD)
    return max(extent[0], span[0] - pad), min(extent[1], span[1] + pad)


def _round(extent: Span, span: Span, scale: Scale, columns: int) -> Stretch:
    """A stretch of so many columns round a span, held inside the timber."""
    length = scale.nm_in(columns - 1)
    low, high = _padded(extent, span, scale)
    low -= (length - (high - low)) // 2
    low = max(min(low, extent[1] - length), extent[0])
    return Stretch(low=low, first=0, count=columns, scale=scale)
