"""The end grain as it looks from outside the timber, never mirrored.

How it works
1. Up is north for a timber that stands and up for one that lies; right is up x outward normal.
2. The faces round it are named by where they look, so that one look at the building settles them.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from
from benchmate.tui.drawing.canvas import Canvas, Drawing, Role
from benchmate.tui.drawing.grid import Grid, Sheet
from benchmate.tui.drawing.paint import (
    paint_arrows,
    paint_current,
    paint_lines,
    paint_waste,
)
from benchmate.tui.drawing.scene import Scene, scene, turned
from benchmate.tui.drawing.stretch import Scale, Stretch

if TYPE_CHECKING:
    from benchmate.layout.step import Layout, Step
    from benchmate.model.directions import Pose
    from benchmate.tui.glyphs import Glyphs

_FEWEST = 3
_ROOM_FOR_NAMES = 44
"""The width from which the faces are named in full."""

Sides = tuple[Face, Face, Face, Face]
"""The faces above, below, left and right of an end."""


def draw_end(
    layout: Layout, step: Step, end: Face, *, width: int, height: int, glyphs: Glyphs
) -> Drawing:
    """An end in exactly `width` by `height` cells; blank where that is too small."""
    canvas = Canvas(width, height)
    around = sides(layout.stick.pose, end)
    drawn = scene(layout, step, end)
    if axis_from(around[3]) is Axis.SECOND:
        drawn = turned(drawn)
    names = [_name(layout.stick.pose, face, full=width >= _ROOM_FOR_NAMES) for face in around]
    margin = max(len(names[2]), len(names[3])) + 1
    rows, columns = height - 2, width - 2 * margin
    if min(rows, columns) < _FEWEST:
        return canvas.drawing()
    sheet = Sheet(canvas, _grid(drawn, around, (1, rows), (margin, columns)), glyphs)
    paint_waste(sheet, drawn)
    paint_lines(sheet, drawn)
    _paint_outline(sheet, around)
    paint_current(sheet, drawn)
    paint_arrows(sheet, drawn)
    _write_names(sheet, names)
    _write_title(canvas, layout.stick.pose.words(end))
    return canvas.drawing()


def sides(pose: Pose, end: Face) -> Sides:
    """Which long face lies on which side of an end seen from outside."""
    return pose.around(end)


def _grid(drawn: Scene, around: Sides, rows: tuple[int, int], columns: tuple[int, int]) -> Grid:
    """As large as fits, from a first row and column and a count of each; in the middle of them."""
    wide, tall = drawn.high[0], drawn.high[1]
    scale = Scale(2 * (rows[1] - 1), tall)
    if scale.cells_in(wide) >= columns[1]:
        scale = Scale(columns[1] - 1, wide)
    across = max(scale.cells_in(wide), _FEWEST - 1)
    down = max(Scale(scale.cells, 2 * scale.nm).cells_in(tall), _FEWEST - 1)
    return Grid(
        columns=(
            Stretch(
                low=0,
                first=columns[0] + (columns[1] - across - 1) // 2,
                count=across + 1,
                scale=Scale(across, wide),
                turned=around[3].is_reference,
            ),
        ),
        rows=Stretch(
            low=0,
            first=rows[0] + (rows[1] - down - 1) // 2,
            count=down + 1,
            scale=Scale(down, tall),
            turned=not around[0].is_reference,
        ),
    )


def _paint_outline(sheet: Sheet, around: Sides) -> None:
    """The four edges, those of the reference faces heavier, and the mark where these meet."""
    glyphs, rows, columns = sheet.glyphs, sheet.grid.rows, sheet.grid.columns[0]
    top, bottom, left, right = around
    for face, row in ((top, rows.first), (bottom, rows.last)):
        char = glyphs.heavy_across if face.is_reference else glyphs.across
        sheet.canvas.put(((row, column) for column in columns.cells), char, _edge_role(face))
    for face, column in ((left, columns.first), (right, columns.last)):
        char = glyphs.heavy_upright if face.is_reference else glyphs.upright
        sheet.canvas.put(((row, column) for row in rows.cells), char, _edge_role(face))
    for one, row, other, column, char in (
        (top, rows.first, left, columns.first, glyphs.corner_top_left),
        (top, rows.first, right, columns.last, glyphs.corner_top_right),
        (bottom, rows.last, left, columns.first, glyphs.corner_bottom_left),
        (bottom, rows.last, right, columns.last, glyphs.corner_bottom_right),
    ):
        arris = one.is_reference and other.is_reference
        role = Role.REFERENCE if arris else Role.OUTLINE
        sheet.canvas.put([(row, column)], glyphs.arris if arris else char, role)


def _edge_role(face: Face) -> Role:
    return Role.REFERENCE if face.is_reference else Role.OUTLINE


def _name(pose: Pose, face: Face, *, full: bool) -> str:
    """`S 1`, `top 2`, `E`, or with the name in full: the number tells first from second."""
    number = {Face.FIRST: " 1", Face.SECOND: " 2"}.get(face, "")
    short = {Direction.UP: "top", Direction.DOWN: "under"}
    direction = pose.direction(face)
    name = pose.words(face) if full else short.get(direction, direction.name[0])
    return f"{name}{number}"


def _write_names(sheet: Sheet, names: list[str]) -> None:
    grid = sheet.grid
    middle = (grid.left + grid.right + 1) // 2
    row = (grid.rows.first + grid.rows.last) // 2
    top, bottom, left, right = names
    for name, cell in (
        (top, (grid.rows.first - 1, middle - len(top) // 2)),
        (bottom, (grid.rows.last + 1, middle - len(bottom) // 2)),
        (left, (row, grid.left - 1 - len(left))),
        (right, (row, grid.right + 2)),
    ):
        role = Role.REFERENCE_LABEL if name[-1].isdigit() else Role.LABEL
        sheet.canvas.write(cell, name, role)


def _write_title(canvas: Canvas, words: str) -> None:
    """The name of the end in the top left corner, where it fits clear of the face's name."""
    first, _, rest = words.partition(" ")
    for title in (words, f"{first[0].upper()} {rest}"):
        if canvas.all_of((0, 0), len(title) + 1, Role.BLANK):
            canvas.write((0, 0), title, Role.TITLE)
            return
