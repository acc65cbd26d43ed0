"""What is written round a drawn face: its edges, its ends, and how far it is to the line."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.tui.drawing.canvas import Role
from benchmate.tui.drawing.datum import datum_across, datum_along, edge_faces
from benchmate.tui.drawing.scene import Mark

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.layout.outlines import Point
    from benchmate.tui.drawing.canvas import Canvas
    from benchmate.tui.drawing.grid import Sheet
    from benchmate.tui.drawing.scene import Scene

_BARE = (Role.OUTLINE, Role.REFERENCE)
_KEPT = (*_BARE, Role.CURRENT, Role.BREAK)
_POINTER = 2
"""Columns the pointer takes in the margin, the space before the timber among them."""
_SPARE = 22
"""Columns of the timber that a figure in the margin must leave."""


def margin(drawn: Scene, figure: str, width: int) -> tuple[int, int]:
    """Columns to keep free left and right for pointing at a line that runs along the timber.

    The pointer stands at the end of the timber nearer to the line.
    """
    lines = _measured_across(drawn)
    if not lines:
        return (0, 0)
    wide = _POINTER + (len(figure) + 1 if width - len(figure) - _POINTER > _SPARE else 0)
    return (0, wide) if _at_far_end(drawn, lines[0]) else (wide, 0)


def _at_far_end(drawn: Scene, mark: Mark) -> bool:
    return mark.start[0] + mark.end[0] > drawn.low[0] + drawn.high[0]


def set_in(drawn: Scene) -> Point | None:
    """Where a leaning line is set off in from a reference face, if it is set off so on this side.

    Nowhere on a side that the line does not come out on.
    """
    leans = drawn.line is not None and drawn.line.axis in (Axis.FIRST, Axis.SECOND)
    return _start(drawn) if leans else None


def set_along(drawn: Scene) -> Point | None:
    """Where a slanting line is set off along the timber, as `set_in` where it is set off in."""
    slants = drawn.line is not None and drawn.line.axis is Axis.ALONG
    return _start(drawn) if slants else None


def _start(drawn: Scene) -> Point | None:
    if drawn.slant is None or not drawn.current:
        return None
    return drawn.slant.start.along.nm, drawn.slant.start.deep.nm


def _measured_across(drawn: Scene) -> tuple[Mark, ...]:
    """What is measured in from an edge: lines along the timber, or the start of one that leans.

    A line that only comes out aslant here is measured on another side.
    """
    spot = set_in(drawn)
    if spot is not None:
        return (Mark("", spot, spot, (0, 0)),)
    if drawn.slant is not None:
        return ()
    return tuple(mark for mark in drawn.current if not (mark.square or mark.slants))


def on_reference_edge(drawn: Scene, point: Point) -> bool:
    """Whether a point lies nearer to the edge along the reference face than to the other."""
    return 2 * point[1] <= drawn.low[1] + drawn.high[1]


def add_notes(sheet: Sheet, drawn: Scene, figure: str, *, along: bool = True) -> None:
    """Names of edges and ends, then the distance to each current line.

    Without `along` the distances along the timber are left to whoever shows them all.
    """
    _name_edges(sheet, drawn)
    _name_ends(sheet, drawn)
    if along:
        _measure_all_along(sheet, drawn, figure)
    for mark in _measured_across(drawn):
        _measure_across(sheet, drawn, mark, figure)
    if drawn.line and drawn.face in drawn.line.faces and not drawn.current:
        _write_in_waste(sheet, drawn, figure)


def _measure_all_along(sheet: Sheet, drawn: Scene, figure: str) -> None:
    point = set_along(drawn)
    if point is not None:
        _measure_along(sheet, drawn, point, figure)
    for mark in () if drawn.slant else drawn.current:
        if mark.square:
            _measure_along(sheet, drawn, mark.start, figure if _holds(drawn, mark) else "")


def _holds(drawn: Scene, mark: Mark) -> bool:
    """Whether the figure is that of this mark: a slanting line comes elsewhere on the far face.

    One that is not set off along the timber has no figure along it at all.
    """
    if drawn.line is None or drawn.line.slant is None:
        return True
    along = drawn.line.axis is Axis.ALONG
    return along and mark.start[0] == drawn.line.slant.start.along.nm


def _name_edges(sheet: Sheet, drawn: Scene) -> None:
    """Each edge is named, as fully as fits, in the widest gap that lines across it leave."""
    gauged = {datum_across(drawn, mark) for mark in _measured_across(drawn)}
    depths = drawn.low[1], drawn.high[1]
    for face, depth in zip(edge_faces(drawn), depths, strict=True):
        hooked = depth in gauged
        role = Role.REFERENCE_LABEL if hooked or face.is_reference else Role.LABEL
        row = sheet.grid.rows.cell(depth)
        for text, column in _fits(sheet, row, _edge_names(drawn, face, hooked=hooked)):
            sheet.canvas.write((row, column), f" {text} ", role)
            break


def _fits(sheet: Sheet, row: int, texts: tuple[str, ...]) -> Iterator[tuple[str, int]]:
    """The texts an edge has room for and where: on bare edge if need be on hatched arris."""
    for text in texts:
        for roles in (_BARE, (*_BARE, Role.WASTE)):
            room = sheet.canvas.widest(row, *roles)
            if len(text) + 4 <= len(room):
                yield text, room.start + (len(room) - len(text) - 2) // 2


def _edge_names(drawn: Scene, face: Face, *, hooked: bool) -> tuple[str, ...]:
    words = drawn.stick.pose.words(face)
    short = words.removesuffix(" face")
    if hooked and drawn.line and drawn.line.axis is None:
        return (
            f"{words} = gauge from this arris",
            f"{words} = gauge here",
            f"{short} = gauge here",
            f"{short} = gauge",
        )
    if hooked:
        return (f"{words} = hook here", f"{short} = hook here", f"{short} = hook")
    if face.is_reference:
        return (f"{words} (reference)", f"{short} (reference)", f"{short} (ref)")
    return (words, short)


def _name_ends(sheet: Sheet, drawn: Scene) -> None:
    """The row below: which way each end lies, and between them which face this is."""
    face = drawn.stick.pose.words(drawn.face)
    ends = [drawn.stick.pose.words(end) for end in (Face.REFERENCE_END, Face.FAR_END)]
    short = [word.removesuffix(" end") for word in ends]
    texts = ((ends, f"{face} from outside"), (ends, face), (short, face), (short, ""))
    for (left, right), title in texts:
        parts = f"{sheet.glyphs.left} {left}", title, f"{right} {sheet.glyphs.right}"
        for room in (sheet.grid.span, range(sheet.canvas.width)):
            if sum(map(len, parts)) + 4 <= len(room):
                _write_below(sheet, room, parts)
                return


def _write_below(sheet: Sheet, room: range, parts: tuple[str, str, str]) -> None:
    row, (left, title, right) = sheet.canvas.height - 1, parts
    between = len(room) - len(left) - len(right) - len(title)
    sheet.canvas.write((row, room.start), left, Role.LABEL)
    sheet.canvas.write((row, room.start + len(left) + between // 2), title, Role.TITLE)
    sheet.canvas.write((row, room.stop - len(right)), right, Role.LABEL)


def _measure_along(sheet: Sheet, drawn: Scene, point: Point, figure: str) -> None:
    """The row above or below: a pointer to the line, and a dimension from the datum to it.

    It is the row beside the edge that a slanting line is set off on.
    """
    column, rows = sheet.grid.column(point[0]), sheet.grid.rows
    if column is None:
        return
    below = drawn.slant is not None and rows.cell(point[1]) == rows.last
    row = rows.last + 1 if below else rows.first - 1
    datum = datum_along(drawn) if figure else None
    start = None if datum is None else sheet.grid.column(datum)
    low, high = sorted((column, column if start is None else start))
    for part in sheet.grid.columns:
        seen = (at for at in part.cells if low <= at <= high)
        sheet.canvas.put(((row, at) for at in seen), sheet.glyphs.across, Role.DIMENSION)
    if start is not None:
        sheet.canvas.put([(row, start)], sheet.glyphs.upright, Role.DIMENSION)
    pointer = sheet.glyphs.up if below else sheet.glyphs.down
    sheet.canvas.put([(row, column)], pointer, Role.POINTER)
    _write_along(sheet.canvas, row, (low, high), figure)


def _write_along(canvas: Canvas, row: int, span: tuple[int, int], figure: str) -> None:
    """The figure in the middle of a dimension, or beside it where the dimension is short."""
    if not figure:
        return
    low, high = span
    inner = low + (high - low - len(figure) - 1) // 2
    places = (inner, high + 1, low - len(figure) - 2)
    for at in places:
        inside = low < at and at + len(figure) + 1 < high
        beside = at > high or at + len(figure) + 1 < low
        if (inside or beside) and at >= -1 and at + len(figure) + 1 <= canvas.width:
            canvas.write((row, at), f" {figure} ", Role.FIGURE)
            return


def _measure_across(sheet: Sheet, drawn: Scene, mark: Mark, figure: str) -> None:
    """The margin: a pointer to the line's row, and a dimension from the datum's edge to it.

    Dots lead from the pointer to the start of a line that leans: at the timber's end it has another
    depth.
    """
    far = _at_far_end(drawn, mark)
    column = sheet.grid.right + _POINTER if far else sheet.grid.left - _POINTER
    row = sheet.grid.rows.line(mark.start[1])
    datum = datum_across(drawn, mark)
    if datum is not None:
        edge = sheet.grid.rows.cell(datum)
        low, high = sorted((row, edge))
        sheet.canvas.put(
            ((at, column) for at in range(low, high)), sheet.glyphs.upright, Role.DIMENSION
        )
        sheet.canvas.put(((edge, column),), sheet.glyphs.across, Role.DIMENSION)
    sheet.canvas.put(
        [(row, column)], sheet.glyphs.left if far else sheet.glyphs.right, Role.POINTER
    )
    if drawn.slant is not None:
        _lead(sheet, row, mark.start[0], far=far)
    at = column + 2 if far else column - 1 - len(figure)
    if at >= 0 and at + len(figure) <= sheet.canvas.width:
        sheet.canvas.write((row, at), figure, Role.FIGURE)


def _lead(sheet: Sheet, row: int, along: int, *, far: bool) -> None:
    """A dotted line along a row from an end of the drawing to a spot along the timber."""
    spot = sheet.grid.column(along)
    if spot is None:
        return
    passed = range(spot, sheet.grid.right) if far else range(sheet.grid.left + 1, spot + 1)
    free = (cell for at in passed if sheet.canvas.role(cell := (row, at)) not in _KEPT)
    sheet.canvas.put(free, sheet.glyphs.hidden_across, Role.DIMENSION)


def _write_in_waste(sheet: Sheet, drawn: Scene, figure: str) -> None:
    """The figure of a depth goes into the waste, as the framer writes it."""
    if not figure or not drawn.waste:
        return
    points = drawn.waste[0].points
    row = sheet.grid.rows.cell(sum(point[1] for point in points) // len(points))
    room = sheet.canvas.widest(row, Role.WASTE)
    if len(figure) + 2 <= len(room):
        at = room.start + (len(room) - len(figure) - 2) // 2
        sheet.canvas.write((row, at), f" {figure} ", Role.FIGURE)
