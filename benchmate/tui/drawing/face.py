"""A long face as it looks from outside the timber, never mirrored, the reference end at the left.

How it works
1. Right is from the reference end to the far end; up is the outward normal x right. Which edge is
   on top follows from that alone, and so does the difference between the two hands.
2. The rows given settle the scale: the whole width of the face fills them, two columns of length
   to one row. The columns given settle how much of the length is seen.
3. Waste is hatched first, then lines, outline and breaks, the current line on top of them all.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.drawing.blemished import blemished
from benchmate.tui.drawing.canvas import Canvas, Cell, Drawing, Role
from benchmate.tui.drawing.datum import datum_along
from benchmate.tui.drawing.grid import Grid, Sheet
from benchmate.tui.drawing.notes import add_notes, margin, on_reference_edge, set_along
from benchmate.tui.drawing.paint import (
    paint_arrows,
    paint_blemishes,
    paint_current,
    paint_lines,
    paint_thin_waste,
    paint_waste,
)
from benchmate.tui.drawing.scene import Scene, scene
from benchmate.tui.drawing.stretch import Scale, Stretch, stretches

if TYPE_CHECKING:
    from benchmate.layout.step import Layout, Step
    from benchmate.model.directions import Face, Pose
    from benchmate.model.feature import Reading
    from benchmate.model.progress import Blemish
    from benchmate.tui.glyphs import Glyphs

_FEWEST_ROWS = 3
"""Two edges and what lies between them."""
_FEWEST_COLUMNS = 12


def draw_face(
    layout: Layout,
    step: Step,
    face: Face,
    *,
    width: int,
    height: int,
    glyphs: Glyphs,
    reading: Reading | None = None,
    figure: str = "",
    blemishes: tuple[Blemish, ...] = (),
) -> Drawing:
    """A long face in exactly `width` by `height` cells; blank where that is too small.

    `reading` is the one in use, the step's first if not given; `figure` is that reading as text,
    of characters one cell wide, and is left out where it does not fit. `blemishes` are the stick's.
    """
    drawn = blemished(scene(layout, step, face, reading), blemishes)
    canvas = Canvas(width, height)
    top, bottom = _rows_beside(drawn)
    edges = margin(drawn, figure, width)
    rows, columns = height - top - bottom - 1, width - sum(edges)
    if rows < _FEWEST_ROWS or columns < _FEWEST_COLUMNS:
        return canvas.drawing()
    grid = _grid(layout, step, drawn, range(top, top + rows), range(edges[0], edges[0] + columns))
    sheet = Sheet(canvas, grid, glyphs)
    paint_face(sheet, drawn)
    add_notes(sheet, drawn, figure)
    return canvas.drawing()


def _rows_beside(drawn: Scene) -> tuple[int, int]:
    """Rows to keep above and below for a dimension along the timber."""
    point = set_along(drawn)
    if point is None:
        return int(any(mark.square for mark in drawn.current)), 0
    reference_up = top_face(drawn.stick.pose, drawn.face).is_reference
    above = on_reference_edge(drawn, point) is reference_up
    return int(above), int(not above)


def top_face(pose: Pose, face: Face) -> Face:
    """The face along the upper edge of a long face seen from outside, reference end left."""
    return pose.above(face)


def _grid(layout: Layout, step: Step, drawn: Scene, rows: range, columns: range) -> Grid:
    low, high = drawn.low[1], drawn.high[1]
    across = Scale(len(rows) - 1, high - low)
    along = Scale(2 * across.cells, across.nm)
    extent = drawn.low[0], drawn.high[0]
    parts = stretches(extent, wishes(layout, step, drawn), along, len(columns))
    start = columns.start + (len(columns) - parts[-1].last - 1) // 2
    return Grid(
        columns=tuple(part.moved(start) for part in parts),
        rows=Stretch(
            low=low,
            first=rows.start,
            count=len(rows),
            scale=across,
            turned=not top_face(drawn.stick.pose, drawn.face).is_reference,
        ),
    )


def wishes(
    layout: Layout, step: Step, drawn: Scene, elsewhere: tuple[int, ...] = ()
) -> tuple[tuple[int, ...], ...]:
    """What to show of the length, the most generous wish first and the line alone last.

    `elsewhere` is where along the timber the line in hand lies, for a face it does not come out on.
    """
    line = along_of(drawn) or elsewhere
    waste = tuple(a for shape in drawn.waste for a, _ in shape.points)
    datum = datum_along(drawn)
    known = () if datum is None else (datum,)
    own = layout.feature(step.feature)
    place = line or waste or ((own.at.nm,) if own else (drawn.low[0], drawn.high[0]))
    limits = drawn.low[0], drawn.high[0]
    end = limits[:1] if known else ()
    found = (
        (*place, *waste, *known, *end),
        (*place, *waste, *known),
        (*place, *known),
        place,
        place[-1:],
    )
    return tuple(tuple(min(max(at, limits[0]), limits[1]) for at in wish) for wish in found)


def along_of(drawn: Scene) -> tuple[int, ...]:
    """Where along the timber the line in hand begins and ends on a side."""
    return tuple(along for mark in drawn.current for along, _ in (mark.start, mark.end))


def paint_face(sheet: Sheet, drawn: Scene) -> None:
    """A long face on its grid, with all but what is written round it."""
    paint_waste(sheet, drawn)
    paint_blemishes(sheet, drawn)
    _paint_datum(sheet, drawn)
    paint_lines(sheet, drawn)
    _paint_edges(sheet, drawn)
    _paint_ends(sheet, drawn)
    paint_current(sheet, drawn)
    paint_thin_waste(sheet, drawn)
    paint_arrows(sheet, drawn)


def _paint_datum(sheet: Sheet, drawn: Scene) -> None:
    """The struck line a distance along the timber is measured from."""
    datum = datum_along(drawn)
    column = None if datum is None or not drawn.current else sheet.grid.column(datum)
    if column is not None:
        sheet.canvas.put(
            ((row, column) for row in sheet.grid.rows.cells),
            sheet.glyphs.hidden_upright,
            Role.DATUM,
        )


def _paint_edges(sheet: Sheet, drawn: Scene) -> None:
    """The two long edges, that of the reference face heavier."""
    for depth, char, role in (
        (drawn.low[1], sheet.glyphs.heavy_across, Role.REFERENCE),
        (drawn.high[1], sheet.glyphs.across, Role.OUTLINE),
    ):
        row = sheet.grid.rows.cell(depth)
        for part in sheet.grid.columns:
            sheet.canvas.put(((row, column) for column in part.cells), char, role)


def _paint_ends(sheet: Sheet, drawn: Scene) -> None:
    """True ends where the timber ends, breaks where it goes on."""
    corners = (
        (sheet.glyphs.corner_top_left, sheet.glyphs.corner_bottom_left),
        (sheet.glyphs.corner_top_right, sheet.glyphs.corner_bottom_right),
    )
    for part in sheet.grid.columns:
        ends = ((part.first, drawn.low[0]), (part.last, drawn.high[0]))
        for (column, end), corner in zip(ends, corners, strict=True):
            cells = [(row, column) for row in sheet.grid.rows.cells]
            if not part.holds(end):
                sheet.canvas.put(cells, sheet.glyphs.break_upright, Role.BREAK)
            else:
                _paint_end(sheet, cells, corner, rough=drawn.rough)


def _paint_end(sheet: Sheet, cells: list[Cell], corner: tuple[str, str], *, rough: bool) -> None:
    upright = sheet.glyphs.hidden_upright if rough else sheet.glyphs.upright
    sheet.canvas.put(cells[1:-1], upright, Role.OUTLINE)
    sheet.canvas.put(cells[:1], corner[0], Role.OUTLINE)
    sheet.canvas.put(cells[-1:], corner[1], Role.OUTLINE)
