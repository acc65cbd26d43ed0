"""The other timbers of a key: thin strokes that join where they meet.

A timber too thin to show two edges is one stroke along its middle; one seen end on, too small for
a box, is a mark of its own, laid over the strokes.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.drawing.key_shape import edges_of

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Cell
    from benchmate.tui.drawing.key_plot import Plot
    from benchmate.tui.drawing.key_shape import Shape, Spot
    from benchmate.tui.glyphs import Glyphs

_UP, _RIGHT, _DOWN, _LEFT = 1, 2, 4, 8
"""The arms of a stroke in a cell, to be added up."""
_UPRIGHT, _LEVEL = 16, 32
"""Which way a stroke runs that has no more than one arm."""
_ARMS = 15
_STEPS = {_UP: (-1, 0), _RIGHT: (0, 1), _DOWN: (1, 0), _LEFT: (0, -1)}
_AGAINST = {_UP: _DOWN, _DOWN: _UP, _LEFT: _RIGHT, _RIGHT: _LEFT}

_BOX = (3, 4)
"""The columns and half rows from which a timber shows two edges."""
_SHALLOW = (9, 4)
"""A slope of more columns to so many rows is set in thirds of a row. One of 45 degrees, two columns
to a row, is not, even when it is a hair off."""
_STEEP = 2
"""A slope of more rows to a column looks upright."""


def strokes(shapes: tuple[Shape, ...], plot: Plot, glyphs: Glyphs) -> tuple[tuple[Cell, str], ...]:
    """Every cell of the timbers' strokes, each with its character."""
    pen = _Pen(plot, glyphs)
    for shape in shapes:
        pen.draw(shape)
    return pen.cells()


class _Pen:
    """Draws shapes and remembers what runs through each cell."""

    def __init__(self, plot: Plot, glyphs: Glyphs) -> None:
        self._plot, self._glyphs = plot, glyphs
        self._arms: dict[Cell, int] = {}
        self._ends: list[tuple[Cell, int]] = []
        self._slopes: dict[Cell, str] = {}
        self._marks: dict[Cell, str] = {}

    def draw(self, shape: Shape) -> None:
        """A box, a stroke or a mark, as the shape's size allows."""
        plot = self._plot
        if _shows_edges(shape, plot):
            for start, end in edges_of(_shrunk(shape)):
                self._line(start, end, meets=False)
        elif _is_end_on(shape):
            (a, b), (c, d) = shape.low, shape.high
            cell = plot.row((b + d) // 2), plot.column((a + c) // 2)
            self._marks[cell] = self._glyphs.end_on
        else:
            start, end = shape.start, shape.end
            self._line(_towards(start, end), _towards(end, start), meets=True)

    def _line(self, start: Spot, end: Spot, *, meets: bool) -> None:
        """A stroke from spot to spot; one that `meets` is joined to what it ends at."""
        plot = self._plot
        start, end = sorted((start, end))
        across = abs(end[0] - start[0]) * 2 * plot.down
        down = abs(end[1] - start[1]) * plot.across
        rows = sorted((plot.row(start[1]), plot.row(end[1])))
        columns = plot.column(start[0]), plot.column(end[0])
        shallow = across * _SHALLOW[1] > down * _SHALLOW[0]
        steep = down > across * _STEEP
        if not down or (shallow and rows[0] == rows[1]):
            cells = [(rows[0], at) for at in range(columns[0], columns[1] + 1)]
            self._run(cells, _LEVEL, (_LEFT, _RIGHT), meets=meets)
        elif not across or (steep and columns[0] == columns[1]):
            cells = [(at, columns[0]) for at in range(rows[0], rows[1] + 1)]
            self._run(cells, _UPRIGHT, (_UP, _DOWN), meets=meets)
        elif shallow:
            self._by_columns(start, end)
        else:
            slope = self._glyphs.rise if end[1] < start[1] else self._glyphs.fall
            self._by_rows(start, end, self._glyphs.upright if steep else slope)

    def _run(self, cells: list[Cell], kind: int, arms: tuple[int, int], *, meets: bool) -> None:
        back, on = arms
        for place, cell in enumerate(cells):
            found = kind | (back if place else 0) | (on if place < len(cells) - 1 else 0)
            self._arms[cell] = self._arms.get(cell, 0) | found
        if meets:
            self._ends += [(cells[0], back), (cells[-1], on)]

    def _by_columns(self, start: Spot, end: Spot) -> None:
        """A character in every column, low, in the middle or high in its row."""
        plot, glyphs = self._plot, self._glyphs
        for column in range(plot.column(start[0]), plot.column(end[0]) + 1):
            right = min(max(plot.middle(column), start[0]), end[0])
            down = start[1] + (end[1] - start[1]) * (right - start[0]) // (end[0] - start[0])
            row = plot.row(down)
            top, _ = plot.edges(2 * row)
            third = (down - top) * 3 // (2 * plot.down)
            self._slopes[row, column] = (glyphs.high, glyphs.across, glyphs.low)[third]

    def _by_rows(self, start: Spot, end: Spot, char: str) -> None:
        """A character in every row."""
        plot = self._plot
        (low, high), step = sorted((start[1], end[1])), end[1] - start[1]
        for row in range(plot.row(low), plot.row(high) + 1):
            down = min(max(plot.edges(2 * row)[1], low), high)
            right = start[0] + (end[0] - start[0]) * (down - start[1]) // step
            self._slopes[row, plot.column(right)] = char

    def cells(self) -> tuple[tuple[Cell, str], ...]:
        """All that was drawn, joined up: slopes lowest, marks on top."""
        self._join()
        straight = {cell: _char(arms, self._glyphs) for cell, arms in self._arms.items()}
        return tuple((self._slopes | straight | self._marks).items())

    def _join(self) -> None:
        """Carry the end of a stroke on to the one across its way in the next cell."""
        for (row, column), arm in self._ends:
            step = _STEPS[arm]
            beyond = row + step[0], column + step[1]
            wanted = _LEVEL if step[0] else _UPRIGHT
            if self._arms.get(beyond, 0) & wanted:
                self._arms[row, column] |= arm
                self._arms[beyond] |= _AGAINST[arm]


def _shows_edges(shape: Shape, plot: Plot) -> bool:
    """Whether it is thick enough on the sheet for an edge on either side and room between."""
    if shape.wide * plot.down >= shape.tall * plot.across:
        return shape.area >= 2 * _BOX[1] * plot.down * shape.wide > 0
    return shape.area >= 2 * _BOX[0] * plot.across * shape.tall


def _is_end_on(shape: Shape) -> bool:
    """Whether its ends lie behind each other, so that its length is not seen."""
    (a, b), (c, d) = shape.start, shape.end
    return 2 * max(abs(c - a), abs(d - b)) < max(shape.wide, shape.tall)


def _shrunk(shape: Shape) -> tuple[Spot, ...]:
    """The outline a nanometre in, so that an edge on the line between two cells has its own."""
    (a, b), (c, d) = shape.low, shape.high
    middle = (a + c) // 2, (b + d) // 2
    return tuple(_towards(spot, middle) for spot in shape.outline)


def _towards(spot: Spot, other: Spot) -> Spot:
    """A nanometre from one spot towards another, on either axis."""
    (a, b), (c, d) = spot, other
    return a + (c > a) - (c < a), b + (d > b) - (d < b)


def _char(arms: int, glyphs: Glyphs) -> str:
    crossings = {
        _UP | _RIGHT | _DOWN | _LEFT: glyphs.crossing,
        _UP | _RIGHT | _DOWN: glyphs.tee_right,
        _UP | _DOWN | _LEFT: glyphs.tee_left,
        _RIGHT | _DOWN | _LEFT: glyphs.tee_down,
        _UP | _RIGHT | _LEFT: glyphs.tee_up,
        _RIGHT | _DOWN: glyphs.corner_top_left,
        _DOWN | _LEFT: glyphs.corner_top_right,
        _UP | _RIGHT: glyphs.corner_bottom_left,
        _UP | _LEFT: glyphs.corner_bottom_right,
    }
    plain = glyphs.across if arms & _LEVEL else glyphs.upright
    return crossings.get(arms & _ARMS, plain)
