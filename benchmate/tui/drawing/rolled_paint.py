"""One face of a rolled timber put on the sheet, with its running figures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.stick import axis_from
from benchmate.tui.drawing.face import paint_face, top_face
from benchmate.tui.drawing.grid import Grid, Sheet
from benchmate.tui.drawing.notes import add_notes
from benchmate.tui.drawing.roll import beside
from benchmate.tui.drawing.rolled_names import name_face
from benchmate.tui.drawing.stretch import Scale, Stretch
from benchmate.tui.drawing.tags import Tag, paint_tags, staggered

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Canvas
    from benchmate.tui.drawing.roll import Roll
    from benchmate.tui.drawing.rolled_bands import Band
    from benchmate.tui.drawing.scene import Scene
    from benchmate.tui.glyphs import Glyphs


def paint_band(
    canvas: Canvas,
    roll: Roll,
    drawn: Scene,
    band: Band,
    *,
    parts: tuple[Stretch, ...],
    glyphs: Glyphs,
) -> None:
    """A face in its rows and in the columns that all of them share."""
    pose = roll.layout.stick.pose
    rows = Stretch(
        low=drawn.low[1],
        first=band.first,
        count=band.body,
        scale=Scale(max(band.body - 1, 1), drawn.high[1] - drawn.low[1]),
        turned=not top_face(pose, band.face).is_reference,
    )
    sheet = Sheet(canvas, Grid(columns=parts, rows=rows), glyphs)
    paint_face(sheet, drawn)
    if band.face is roll.face:
        add_notes(sheet, drawn, roll.figure, along=False)
    above, below = beside(roll, band.face)
    left_out = _figures(
        sheet, (*_seen(sheet, above), *_pointer(sheet, roll, drawn)), band.above, -1
    )
    left_out += _figures(sheet, _seen(sheet, below), band.below, 1)
    name_face(canvas, roll, band, left_out)


_Seen = tuple[tuple[int, Tag], ...]


def _seen(sheet: Sheet, tags: tuple[Tag, ...]) -> _Seen:
    """The figures whose marks are drawn, each with its column."""
    columns = ((sheet.grid.column(tag.at), tag) for tag in tags)
    return tuple((column, tag) for column, tag in columns if column is not None)


def _figures(sheet: Sheet, seen: _Seen, room: int, away: int) -> int:
    """Set figures in so many rows above or below a face; how many found no room."""
    rows = sheet.grid.rows
    placed, left_out = staggered(seen, room, sheet.canvas.width)
    paint_tags(sheet, placed, rows.first if away < 0 else rows.last, away)
    return left_out if room else 0


def _pointer(sheet: Sheet, roll: Roll, drawn: Scene) -> _Seen:
    """Where on the face in hand a step works that has neither a line nor a figure along there.

    A depth is told as one, so that no one takes it for a distance along.
    """
    tagged = any(tag.current for tag in roll.tags.get(drawn.face, ()))
    own = roll.layout.feature(roll.step.feature)
    if drawn.face is not roll.face or drawn.face not in roll.step.faces or own is None:
        return ()
    if tagged or drawn.current:
        return ()
    corners = sorted(along for shape in drawn.waste for along, _ in shape.points) or [own.at.nm]
    places = ((corners[0] + corners[-1]) // 2, *corners)
    columns = (sheet.grid.column(place) for place in places)
    column = next((column for column in columns if column is not None), None)
    if column is None:
        return ()
    depth = drawn.line is not None and drawn.line.axis is axis_from(drawn.face)
    words = f"{roll.figure} deep" if depth and roll.figure else "here"
    return ((column, Tag(at=places[0], figure=words, current=True)),)
