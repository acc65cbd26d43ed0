"""Where the spots of a view fall on the sheet.

A cell is about twice as high as it is wide, so a column and half a row stand for the same length.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from benchmate.tui.drawing.key_shape import Shape

_FEWEST = 3
"""Rows and columns below which there is no picture."""
_ROOMY = (32, 12)
"""From this many columns and rows the picture keeps clear of the edges."""
_ENOUGH = 10
"""A picture flatter or narrower than this many columns or half rows is drawn out..."""
_MOST = 2
"""...to so many times its true width or height, and no more."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Plot:
    """A grid of columns and half rows.

    `left` and `top` are the upper left corner, `across` and `down` the size of a column and of half
    a row, all in nanometres; `first` is the first cell, and there are `columns` and `halves`.
    """

    left: int
    top: int
    across: int
    down: int
    first: tuple[int, int]
    columns: int
    halves: int

    def column(self, right: int) -> int:
        """The column of a spot; one on the far edge counts to the last."""
        return self.first[1] + min((right - self.left) // self.across, self.columns - 1)

    def half(self, down: int) -> int:
        """The half row of a spot, counted from the top of the sheet."""
        return 2 * self.first[0] + min((down - self.top) // self.down, self.halves - 1)

    def row(self, down: int) -> int:
        """The row of a spot."""
        return self.half(down) // 2

    def edges(self, half: int) -> tuple[int, int]:
        """The upper and the lower edge of a half row."""
        top = self.top + (half - 2 * self.first[0]) * self.down
        return top, top + self.down

    def middle(self, column: int) -> int:
        """The middle of a column."""
        return self.left + (column - self.first[1]) * self.across + self.across // 2


def plot_of(shapes: tuple[Shape, ...], width: int, height: int) -> Plot | None:
    """A plot that holds all the shapes, as large as fits under a heading; None without room."""
    clear, below = (2, 1) if width >= _ROOMY[0] and height >= _ROOMY[1] else (1, 0)
    room = width - 2 * clear, 2 * (height - 1 - 2 * below)
    if not shapes or min(room[0], room[1] // 2) < _FEWEST:
        return None
    low = min(shape.low[0] for shape in shapes), min(shape.low[1] for shape in shapes)
    high = max(shape.high[0] for shape in shapes), max(shape.high[1] for shape in shapes)
    size = max(high[0] - low[0], 1), max(high[1] - low[1], 1)
    across, down = _steps(size, room)
    columns, halves = -(-size[0] // across), -(-size[1] // down)
    spare = height - 1 - (halves + 1) // 2
    return Plot(
        left=low[0],
        top=low[1],
        across=across,
        down=down,
        first=(1 + spare // 2, (width - columns) // 2),
        columns=columns,
        halves=halves,
    )


def _steps(size: tuple[int, int], room: tuple[int, int]) -> tuple[int, int]:
    """The size of a column and of half a row: the same, unless the picture would be too flat."""
    least = -(-size[0] // room[0]), -(-size[1] // room[1])
    true = max(least)
    across, down = (
        min(true, max(fit, -(-true // _MOST), -(-length // _ENOUGH)))
        for fit, length in zip(least, size, strict=True)
    )
    return across, down
