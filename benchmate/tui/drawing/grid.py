"""Where the points of a side fall on a canvas."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from benchmate.layout.outlines import Point
    from benchmate.tui.drawing.canvas import Canvas, Cell
    from benchmate.tui.drawing.stretch import Stretch
    from benchmate.tui.glyphs import Glyphs


@dataclass(frozen=True, slots=True)
class Grid:
    """Where a side's points fall: columns for the first reading of each, rows for the second."""

    columns: tuple[Stretch, ...]
    rows: Stretch

    @property
    def left(self) -> int:
        """The first column drawn in."""
        return self.columns[0].first

    @property
    def right(self) -> int:
        """The last column drawn in."""
        return self.columns[-1].last

    @property
    def span(self) -> range:
        """The columns drawn in, breaks and all."""
        return range(self.left, self.right + 1)

    def column(self, at: int) -> int | None:
        """The column of a line at a reading; None where the timber is broken there."""
        return next((part.line(at) for part in self.columns if part.holds(at)), None)

    def ends(self, column: int) -> bool:
        """Whether a column is the last of a stretch on either side."""
        return any(column in (part.first, part.last) for part in self.columns)

    def towards(self, step: Point) -> Cell:
        """A step on the side as a step in rows and columns."""
        across = -step[0] if self.columns[0].turned else step[0]
        return (-step[1] if self.rows.turned else step[1]), across


@dataclass(frozen=True, slots=True)
class Sheet:
    """What one drawing is made on and with."""

    canvas: Canvas
    grid: Grid
    glyphs: Glyphs
