"""Which faces of a rolled timber there are rows for, and which rows.

Every face is a band: a row for its name, rows for its figures, and the face. Between two bands
stands a row for the arris they share, and the last row of all is for the names of the ends.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.tui.drawing.roll import Roll, beside, in_order
from benchmate.tui.drawing.stretch import Scale

if TYPE_CHECKING:
    from benchmate.model.directions import Face
    from benchmate.tui.drawing.scene import Scene

ALL_FOUR = 40
"""Rows from which all four faces are drawn."""
WITH_STRIPS = 26
"""Rows from which the neighbours are drawn narrow, and not only named."""

_STRIP = 4
FEWEST = 3
"""Rows of a face: two edges and what lies between them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """A face and the rows it has: for its name, its figures, and itself."""

    face: Face
    first: int
    body: int
    above: int
    below: int
    scale: Scale


def bands_of(roll: Roll, scenes: dict[Face, Scene], height: int) -> tuple[Band, ...]:
    """Which faces are drawn, and in which rows; the last row is for the names of the ends."""
    order = in_order(roll.layout.stick.pose, roll.face)
    rows = height - 1
    if rows >= ALL_FOUR:
        return _all_four(roll, order, scenes, rows)
    deep = scenes[roll.face].high[1]
    strip = _STRIP if rows >= WITH_STRIPS else 0
    # A neighbour has a row for its name, and one for the arris that it shares.
    named = 1 + (strip + 1 if strip else 0)
    above, below = _figure_rows(roll, roll.face, 4 if strip else 3)
    # In a very short window the figures give way before the face does.
    room = max(rows - 2 * named - 1 - FEWEST, 0)
    below = min(below, room // 2)
    above = min(above, room - below)
    body = rows - 2 * named - 1 - above - below
    hand = Band(
        face=roll.face,
        first=named + 1 + above,
        body=body,
        above=above,
        below=below,
        scale=Scale(max(body - 1, 1), deep),
    )
    if not strip:
        return (hand,)
    firsts = 1, hand.first + body + below + 1
    strips = (
        Band(
            face=face,
            first=first,
            body=strip,
            above=0,
            below=0,
            scale=Scale(strip - 1, scenes[face].high[1]),
        )
        for face, first in zip((order[0], order[2]), firsts, strict=True)
    )
    one, other = strips
    return one, hand, other


def _figure_rows(roll: Roll, face: Face, most: int) -> tuple[int, int]:
    """Rows for figures above and below a face: none where it has no figures there."""
    above, below = beside(roll, face)
    in_hand = face is roll.face
    return (most if above or in_hand else 0), (min(most, 2) if below else 0)


def _all_four(
    roll: Roll, order: tuple[Face, ...], scenes: dict[Face, Scene], rows: int
) -> tuple[Band, ...]:
    """Four faces at one scale; a row for each arris, the first and the last being the same one."""
    room = [_figure_rows(roll, face, 3) for face in order]
    named = 2 * len(order) + 1
    body = (rows - named - sum(above + below for above, below in room)) // len(order)
    scale = Scale(max(body - 1, 1), max(drawn.high[1] for drawn in scenes.values()))
    found: list[Band] = []
    row = 1
    for face, (above, below) in zip(order, room, strict=True):
        count = max(scale.cells_in(scenes[face].high[1]), FEWEST - 1) + 1
        first = row + 1 + above
        found.append(
            Band(face=face, first=first, body=count, above=above, below=below, scale=scale)
        )
        row = first + count + below + 1
    return tuple(found)
