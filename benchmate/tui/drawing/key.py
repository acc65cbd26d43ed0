"""The key plan and elevations: where in the frame the timber in hand stands.

How it works
1. A timber is a bar, eight corners in the building; a view turns them into spots on a sheet. The
   whole frame settles the scale, so going from timber to timber moves nothing but the mark.
2. The others are thin strokes, kept from one drawing to the next. An elevation shows only those
   that lie in one wall or bent with the timber in hand, and those that meet it there.
3. The timber in hand is filled on top of them, every half-cell that it reaches into, so it is
   never hidden and never too thin to see; its name is written where nothing else is.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from typing import TYPE_CHECKING

from benchmate.tui.drawing.canvas import Canvas, Drawing, Role
from benchmate.tui.drawing.key_names import write_heading, write_name
from benchmate.tui.drawing.key_plot import plot_of
from benchmate.tui.drawing.key_shape import LOWER, UPPER, reached, shape_of
from benchmate.tui.drawing.key_strokes import strokes

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Cell
    from benchmate.tui.drawing.key_plot import Plot
    from benchmate.tui.drawing.key_shape import Spot
    from benchmate.tui.glyphs import Glyphs

Corner = tuple[int, int, int]
"""How far east, north and up in the building, in nanometres."""

_GAP = 2
"""Cells between two views side by side."""
_SMALL = 3
"""A mark of no more cells than this is made of whole ones, so that it is not overlooked."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A timber in its place: corners 0 to 3 round one end, 4 to 7 round the other in that order."""

    id: str
    name: str
    corners: tuple[Corner, ...]


class View(Enum):
    """A way to look at the frame, always from outside it.

    Each axis is the place of a building reading in a corner and the sign that makes it grow to the
    right, down the sheet, or towards whoever looks.
    """

    PLAN = ("plan", (0, 1), (1, -1), (2, 1))
    FROM_SOUTH = ("from the South", (0, 1), (2, -1), (1, -1))
    FROM_EAST = ("from the East", (1, 1), (2, -1), (0, 1))
    FROM_NORTH = ("from the North", (0, -1), (2, -1), (1, 1))
    FROM_WEST = ("from the West", (1, -1), (2, -1), (0, -1))

    def __init__(
        self, title: str, right: tuple[int, int], down: tuple[int, int], near: tuple[int, int]
    ) -> None:
        self.title = title
        self._right, self._down, self._near = right, down, near

    def spot(self, corner: Corner) -> Spot:
        """Where a corner falls on the sheet: nanometres to the right and down."""
        right, down = self._right, self._down
        return right[1] * corner[right[0]], down[1] * corner[down[0]]

    def near(self, corner: Corner) -> int:
        """How near a corner is to whoever looks; more is nearer."""
        return self._near[1] * corner[self._near[0]]

    @property
    def is_plan(self) -> bool:
        """Whether one looks down on the frame."""
        return self is View.PLAN

    @property
    def sides(self) -> tuple[str, str]:
        """The letters of what lies at the left and at the right."""
        low, high = ("WE", "SN")[self._right[0]]
        return (low, high) if self._right[1] > 0 else (high, low)

    def is_square_to(self, bar: Bar) -> bool:
        """Whether a timber is seen more along its length than end on; one upright is from all."""
        across, away = (
            abs(
                sum(corner[axis] for corner in bar.corners[4:])
                - sum(corner[axis] for corner in bar.corners[:4])
            )
            for axis in (self._right[0], self._near[0])
        )
        return away <= across


_ELEVATIONS = (View.FROM_SOUTH, View.FROM_EAST, View.FROM_NORTH, View.FROM_WEST)


def bar_of(bars: tuple[Bar, ...], timber: str) -> Bar | None:
    """The bar of a timber; None if it has no place."""
    return next((bar for bar in bars if bar.id == timber), None)


def views_for(bars: tuple[Bar, ...], current_id: str) -> tuple[View, ...]:
    """The plan, then the elevations, the best first; none for a timber that has no place.

    Best is the one that shows it square to its length, from the outer wall it is nearest to.
    """
    current = bar_of(bars, current_id)
    if current is None:
        return ()

    def rank(view: View) -> tuple[bool, int]:
        behind = _depths(bars, view)[1] - _depths((current,), view)[1]
        return not view.is_square_to(current), behind

    return (View.PLAN, *sorted(_ELEVATIONS, key=rank))


def _depths(bars: tuple[Bar, ...], view: View) -> tuple[int, int]:
    nears = [view.near(corner) for bar in bars for corner in bar.corners]
    return min(nears), max(nears)


def draw_key(
    bars: tuple[Bar, ...],
    current_id: str,
    view: View,
    *,
    width: int,
    height: int,
    glyphs: Glyphs,
) -> Drawing:
    """One view of the frame in exactly `width` by `height` cells, the timber in hand filled.

    Blank where the timber has no place or the room is too small.
    """
    canvas = Canvas(width, height)
    current = bar_of(bars, current_id)
    laid = _laid(bars, view, width, height)
    if current is None or laid is None:
        return canvas.drawing()
    for cell, char in _strokes(_beside(bars, current, view), view, laid, glyphs):
        canvas.put([cell], char, Role.OTHER_TIMBER)
    cells = reached(shape_of(current, view), laid)
    for cell, half in cells.items():
        whole = len(cells) <= _SMALL or half == UPPER | LOWER
        part = glyphs.block_top if half == UPPER else glyphs.block_bottom
        canvas.put([cell], glyphs.block if whole else part, Role.CURRENT)
    write_heading(canvas, view, glyphs)
    write_name(canvas, cells, current.name, glyphs)
    return canvas.drawing()


def draw_keys(
    bars: tuple[Bar, ...],
    current_id: str,
    views: tuple[View, View],
    *,
    width: int,
    height: int,
    glyphs: Glyphs,
) -> Drawing:
    """Two views side by side, in `width` by `height` cells together."""
    left = (width - _GAP) // 2
    one, other = (
        draw_key(bars, current_id, view, width=room, height=height, glyphs=glyphs)
        for view, room in zip(views, (left, width - _GAP - left), strict=True)
    )
    gap = ((" " * _GAP, Role.BLANK),)
    rows = zip(one.rows, other.rows, strict=True)
    return Drawing(tuple((*first, *gap, *second) for first, second in rows))


def _beside(bars: tuple[Bar, ...], current: Bar, view: View) -> tuple[Bar, ...]:
    """The timbers to draw with the one in hand: all on a plan, those of its wall in an elevation.

    A timber that runs away from whoever looks goes through many walls; it is shown in those that
    the nearest quarter of it meets, so that a rafter's tail still finds the wall it hangs over.
    """
    if view.is_plan:
        return bars
    depths = [(bar, _depths((bar,), view)) for bar in bars]
    low, high = _depths((current,), view)
    if not view.is_square_to(current):
        low = high - (high - low) // 4
        high = max(
            front
            for bar, (back, front) in depths
            if bar is current or (front >= low and back <= high and view.is_square_to(bar))
        )
    return tuple(bar for bar, (back, front) in depths if front >= low and back <= high)


@lru_cache(maxsize=32)
def _laid(bars: tuple[Bar, ...], view: View, width: int, height: int) -> Plot | None:
    return plot_of(tuple(shape_of(bar, view) for bar in bars), width, height)


@lru_cache(maxsize=32)
def _strokes(
    bars: tuple[Bar, ...], view: View, plot: Plot, glyphs: Glyphs
) -> tuple[tuple[Cell, str], ...]:
    return strokes(tuple(shape_of(bar, view) for bar in bars), plot, glyphs)
