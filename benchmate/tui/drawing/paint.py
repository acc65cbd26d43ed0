"""Waste, lines and arrows put on a canvas."""

from __future__ import annotations

from itertools import combinations
from typing import TYPE_CHECKING

from benchmate.tui.drawing.canvas import Cell, Role

if TYPE_CHECKING:
    from benchmate.layout.outlines import Outline
    from benchmate.tui.drawing.grid import Grid, Sheet
    from benchmate.tui.drawing.scene import Mark, Scene
    from benchmate.tui.drawing.stretch import Span
    from benchmate.tui.glyphs import Glyphs

_WASTE_WORD = " waste "
_EDGES = (Role.OUTLINE, Role.REFERENCE)


def paint_waste(sheet: Sheet, drawn: Scene) -> None:
    """All waste on a side, what the step takes away uppermost."""
    for shapes, char, role in (
        (drawn.other_waste, sheet.glyphs.dot, Role.OTHER_WASTE),
        (drawn.joint_waste, sheet.glyphs.light_hatch, Role.JOINT_WASTE),
        (drawn.waste, sheet.glyphs.hatch, Role.WASTE),
    ):
        for shape in shapes:
            cells = _cells_in(shape, sheet.grid) or _middle(shape, sheet.grid)
            sheet.canvas.put(cells, char, role)


def paint_blemishes(sheet: Sheet, drawn: Scene) -> None:
    """Knots, checks and wane; one that falls between the cells has one cell at its middle."""
    for shape in drawn.blemishes:
        cells = _cells_in(shape, sheet.grid) or _middle(shape, sheet.grid)
        sheet.canvas.put(cells, sheet.glyphs.blemish, Role.BLEMISH)


def paint_thin_waste(sheet: Sheet, drawn: Scene) -> None:
    """Waste too thin for a row of its own between its line and the arris: the arris is hatched."""
    for shape in drawn.waste:
        cells = _cells_in(shape, sheet.grid)
        if all(sheet.canvas.role(cell) is not Role.WASTE for cell in cells):
            arris = (cell for cell in cells if _on_arris(sheet, cell))
            sheet.canvas.put(arris, sheet.glyphs.hatch, Role.WASTE)


def _on_arris(sheet: Sheet, cell: Cell) -> bool:
    rows = sheet.grid.rows
    edge = cell[0] in (rows.first, rows.last) and not sheet.grid.ends(cell[1])
    return edge and sheet.canvas.role(cell) in _EDGES


def _cells_in(shape: Outline, grid: Grid) -> list[Cell]:
    spans = ((row, _crossing(shape, grid.rows.at(row))) for row in grid.rows.cells)
    return [
        (row, column)
        for row, span in spans
        if span
        for part in grid.columns
        for column in part.within(*span)
    ]


def _middle(shape: Outline, grid: Grid) -> list[Cell]:
    """The cell at the middle of a hole that falls between the cells; none for lined waste."""
    if any(shape.lines):
        return []
    count = len(shape.points)
    along, deep = (sum(point[axis] for point in shape.points) // count for axis in (0, 1))
    column = grid.column(along)
    return [] if column is None else [(grid.rows.cell(deep), column)]


def _crossing(shape: Outline, at: int) -> Span | None:
    """From where to where a convex shape is crossed at the second reading."""
    found: list[int] = []
    for (a, b), (c, d), _ in shape.edges():
        if b == d == at:
            found += (a, c)
        elif b != d and min(b, d) <= at <= max(b, d):
            found.append(a + (c - a) * (at - b) // (d - b))
    return (min(found), max(found)) if found else None


def paint_lines(sheet: Sheet, drawn: Scene) -> None:
    """The joint's other lines; where two meet they cross, as struck lines run past their corner."""
    runs = [(mark, set(cells_of(mark, sheet.grid))) for mark in drawn.lines]
    for mark, cells in runs:
        sheet.canvas.put(cells, _stroke(mark, sheet.glyphs), Role.LINE)
    for (mark, cells), (other, others) in combinations(runs, 2):
        if mark.square != other.square and not (mark.slants or other.slants):
            sheet.canvas.put(cells & others, sheet.glyphs.crossing, Role.LINE)


def _stroke(mark: Mark, glyphs: Glyphs) -> str:
    if mark.slants:
        return glyphs.slant
    return glyphs.upright if mark.square else glyphs.across


def paint_current(sheet: Sheet, drawn: Scene) -> None:
    """The current line in solid blocks."""
    for mark in drawn.current:
        sheet.canvas.put(cells_of(mark, sheet.grid), _block(mark, sheet), Role.CURRENT)


def paint_arrows(sheet: Sheet, drawn: Scene) -> None:
    """An arrow from each current line into its waste."""
    for mark in drawn.current:
        cells = cells_of(mark, sheet.grid)
        if cells and mark.waste != (0, 0):
            _point_to_waste(sheet, cells, sheet.grid.towards(mark.waste))


def _block(mark: Mark, sheet: Sheet) -> str:
    """A whole cell, or for a level line the half of it that is nearer to its true place."""
    if mark.start[1] != mark.end[1]:
        return sheet.glyphs.block
    row = sheet.grid.rows.line(mark.start[1])
    upper = (mark.start[1] < sheet.grid.rows.at(row)) != sheet.grid.rows.turned
    return sheet.glyphs.block_top if upper else sheet.glyphs.block_bottom


def cells_of(mark: Mark, grid: Grid) -> list[Cell]:
    """The cells a line runs through, in order, without those in a break."""
    (a, b), (c, d) = mark.start, mark.end
    rows = grid.rows.line(b), grid.rows.line(d)
    return [
        cell
        for part in grid.columns
        for cell in _run((rows[0], part.line(a)), (rows[1], part.line(c)))
        if cell[1] in part.cells
    ]


def _run(start: Cell, end: Cell) -> list[Cell]:
    """The cells from one to another, one in every row or column passed."""
    down, along = end[0] - start[0], end[1] - start[1]
    steps = max(abs(down), abs(along), 1)
    return [
        (
            start[0] + (2 * down * place + steps) // (2 * steps),
            start[1] + (2 * along * place + steps) // (2 * steps),
        )
        for place in range(steps + 1)
    ]


def _point_to_waste(sheet: Sheet, cells: list[Cell], step: Cell) -> None:
    """An arrow next to the line, with the word where there is room for it."""
    canvas, room = sheet.canvas, len(_WASTE_WORD)
    beside = [(row + step[0], column + step[1]) for row, column in cells]
    wasted = [cell for cell in beside if canvas.role(cell) is Role.WASTE]
    found = _longest(wasted or beside, sheet.grid)
    level = step[0] and len(found) >= room + 4
    row, column = found[(len(found) - (room if level else 0)) // 2]
    canvas.put([(row, column)], _arrow(sheet.glyphs, step), Role.WASTE_ARROW)
    word = column - room if step[1] < 0 else column + 1
    if canvas.all_of((row, word - 1), room + 2, Role.WASTE, Role.WASTE_ARROW):
        canvas.write((row, word), _WASTE_WORD, Role.WASTE_ARROW)


def _arrow(glyphs: Glyphs, step: Cell) -> str:
    if step[0]:
        return glyphs.up if step[0] < 0 else glyphs.down
    return glyphs.left if step[1] < 0 else glyphs.right


def _longest(cells: list[Cell], grid: Grid) -> list[Cell]:
    """Those of the cells that lie in the stretch with the most of them."""
    parts = ([cell for cell in cells if cell[1] in part.cells] for part in grid.columns)
    return max(parts, key=len) or cells
