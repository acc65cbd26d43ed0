"""What a line list shows: its rows, which of them the cursor may stand on, and how one is set."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from rich.cells import cell_len

from benchmate.tui.text import clip_inside, fit, safe

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs

TEXT_ROOM = 8
"""Cells a row's text keeps before its tail is left out."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line: a lead of fixed width, the text, and a tail set to the right.

    The cursor does not stand on a heading.
    """

    text: str
    lead: str = ""
    tail: str = ""
    heading: bool = False
    dim: bool = False
    bold: bool = False


def set_row(row: Row, width: int, *, marked: bool, glyphs: Glyphs) -> str:
    """The row in exactly `width` cells, behind a cursor mark or the space for one.

    The tail is shown whole or not at all: half a figure is a wrong figure.
    """
    mark = glyphs.cursor if marked else " "
    lead = f"{safe(row.lead)} " if row.lead else ""
    tail = f"  {safe(row.tail)} " if row.tail else ""
    room = width - 1 - cell_len(lead)
    text_room = room - cell_len(tail)
    if text_room < min(TEXT_ROOM, cell_len(safe(row.text))):
        text_room, tail = room, ""
    text = fit(clip_inside(row.text, text_room, glyphs.cut_off), text_room, glyphs.cut_off)
    return fit(f"{mark}{lead}{text}{tail}", width, "")


def nearest(rows: tuple[Row, ...], index: int) -> int | None:
    """The row the cursor may stand on that is nearest to `index`, the later of two; None if none.

    An index beyond either end counts as that end.
    """
    index = min(max(index, 0), len(rows) - 1)
    for distance in range(len(rows)):
        for at in (index + distance, index - distance):
            if 0 <= at < len(rows) and not rows[at].heading:
                return at
    return None


def onward(rows: tuple[Row, ...], index: int, step: int) -> int:
    """The row `step` lines on that the cursor may stand on; past headings in the same direction.

    Where there is none, the last one before; `index` itself where there is no other.
    """
    goal = min(max(index + step, 0), len(rows) - 1)
    way = 1 if step > 0 else -1
    ahead = range(goal, len(rows) if way > 0 else -1, way)
    behind = range(goal, index, -way)
    return next((at for at in (*ahead, *behind) if not rows[at].heading), index)


def with_headings(rows: tuple[Row, ...], index: int, height: int) -> int:
    """The topmost of the headings just above a row that fit above it in so many lines."""
    top = index
    while top and rows[top - 1].heading and index - top + 1 < height:
        top -= 1
    return top
