"""A timber rolled on the horses: the face in hand with its neighbours, each over a shared arris.

How it works
1. Every face is drawn as on the bench: from outside, the reference end at the left. So the face
   drawn below another is the one that comes up as the timber is rolled away, and their marks stand
   in the same columns on either side of the arris they share.
2. The rows settle what there is room for: all four faces, the face in hand between two narrow ones,
   or the face in hand between the names of its neighbours.
3. The length is drawn whole, which has a scale of its own, or round the joint in hand, as much of
   it as there are columns, at one scale both ways. The line in hand is always among what is drawn.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from benchmate.model.directions import Face
from benchmate.tui.drawing.blemished import blemished
from benchmate.tui.drawing.canvas import Canvas, Drawing
from benchmate.tui.drawing.end import draw_end
from benchmate.tui.drawing.face import along_of, wishes
from benchmate.tui.drawing.notes import margin
from benchmate.tui.drawing.roll import in_order
from benchmate.tui.drawing.rolled_bands import FEWEST, WITH_STRIPS, bands_of
from benchmate.tui.drawing.rolled_names import name_seams
from benchmate.tui.drawing.rolled_paint import paint_band
from benchmate.tui.drawing.scene import Scene, scene
from benchmate.tui.drawing.stretch import Scale, Stretch, stretches

if TYPE_CHECKING:
    from benchmate.tui.drawing.roll import Roll
    from benchmate.tui.drawing.rolled_bands import Band
    from benchmate.tui.glyphs import Glyphs

ENDS_BESIDE = 130
"""Columns from which the two ends stand beside the faces."""

_END_WIDTH = 34


def draw_rolled(roll: Roll, *, width: int, height: int, glyphs: Glyphs) -> Drawing:
    """The faces in exactly `width` by `height` cells, the ends beside them where they fit."""
    canvas = Canvas(width, height)
    across = width
    if width >= ENDS_BESIDE and height >= WITH_STRIPS:
        across = width - _END_WIDTH - 2
        half = height // 2
        for end, row in ((Face.REFERENCE_END, 0), (Face.FAR_END, half)):
            drawn = draw_end(
                roll.layout, roll.step, end, width=_END_WIDTH, height=half - 1, glyphs=glyphs
            )
            canvas.paste((row, across + 2), drawn)
    canvas.paste((0, 0), _faces(roll, across, height, glyphs))
    return canvas.drawing()


def draw_ends(roll: Roll, *, width: int, height: int, glyphs: Glyphs) -> Drawing:
    """The two ends side by side, each seen from outside."""
    canvas, half = Canvas(width, height), (width - 2) // 2
    for end, column in ((Face.REFERENCE_END, 0), (Face.FAR_END, half + 2)):
        drawn = draw_end(roll.layout, roll.step, end, width=half, height=height, glyphs=glyphs)
        canvas.paste((0, column), drawn)
    return canvas.drawing()


def _faces(roll: Roll, width: int, height: int, glyphs: Glyphs) -> Drawing:
    canvas = Canvas(width, height)
    scenes = _scenes(roll)
    bands = bands_of(roll, scenes, height)
    hand = next(band for band in bands if band.face is roll.face)
    left, right = margin(scenes[roll.face], roll.figure, width)
    right = max(right, _widest(roll, width))
    columns = width - left - right
    if hand.body < FEWEST or columns < 4 * FEWEST:
        return canvas.drawing()
    parts = _columns(roll, scenes[roll.face], hand, columns)
    parts = tuple(part.moved(left) for part in parts)
    for band in bands:
        paint_band(canvas, roll, scenes[band.face], band, parts=parts, glyphs=glyphs)
    name_seams(canvas, roll, bands, glyphs)
    return canvas.drawing()


def _widest(roll: Roll, width: int) -> int:
    """Columns kept right of the faces for a figure at the far end."""
    longest = max((len(tag.figure) for tags in roll.tags.values() for tag in tags), default=0)
    return min(longest + 2, width // 4)


def _scenes(roll: Roll) -> dict[Face, Scene]:
    """The four faces, all of one length, so that their marks stand in the same columns."""
    order = in_order(roll.layout.stick.pose, roll.face)
    found = {
        face: blemished(scene(roll.layout, roll.step, face, roll.reading), roll.blemishes)
        for face in order
    }
    low = min(drawn.low[0] for drawn in found.values())
    high = max(drawn.high[0] for drawn in found.values())
    return {
        face: replace(drawn, low=(low, drawn.low[1]), high=(high, drawn.high[1]))
        for face, drawn in found.items()
    }


def _columns(roll: Roll, hand: Scene, band: Band, columns: int) -> tuple[Stretch, ...]:
    """The columns that the length is drawn in."""
    extent = hand.low[0], hand.high[0]
    if roll.whole:
        scale = Scale(columns - 1, extent[1] - extent[0])
        return (Stretch(low=extent[0], first=0, count=columns, scale=scale),)
    best = scene(roll.layout, roll.step, roll.best, roll.reading)
    along = Scale(2 * band.scale.cells, band.scale.nm)
    return stretches(extent, wishes(roll.layout, roll.step, hand, along_of(best)), along, columns)
