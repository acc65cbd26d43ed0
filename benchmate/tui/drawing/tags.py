"""Running figures along an edge of a face, staggered so that none covers another.

How it works
1. A figure stands right of an upright that leads down to its mark, in one of a few rows.
2. A figure must not cover the upright of another, so it stands farther from the edge than every
   figure whose mark lies under it. Seen from the right, each has only to clear those before it.
3. The one in hand is placed first, then the nearest to it. What finds no room is counted, never
   left out in silence.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from benchmate.tui.drawing.canvas import Role

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.tui.drawing.grid import Sheet


class SetOff(Enum):
    """The edge of a face that a line is set off on."""

    EITHER = "either"
    """It lies square across, so its figure holds on both edges."""
    REFERENCE = "reference"
    FAR = "far"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tag:
    """A figure to stand at `at` along the timber, in nanometres, beside the edge it is set off on.

    `source` says where it runs from, if not from where the others do. Only the one in hand, whose
    words are told elsewhere, may go without.
    """

    at: int
    figure: str
    source: str = ""
    current: bool = False
    edge: SetOff = SetOff.EITHER

    @property
    def texts(self) -> tuple[str, ...]:
        """The ways to write it, the fullest first."""
        whole = f"{self.figure} {self.source}".rstrip()
        return (whole, self.figure) if self.current and self.source else (whole,)


@dataclass(frozen=True, slots=True)
class Placed:
    """A figure in a column, so many rows from its edge."""

    column: int
    row: int
    text: str
    current: bool

    @property
    def end(self) -> int:
        """The last column that it needs: its upright, its text and a space."""
        return self.column + len(self.text) + 1


def staggered(
    tags: Iterable[tuple[int, Tag]], rows: int, width: int
) -> tuple[tuple[Placed, ...], int]:
    """Figures and their columns set in so many rows, and how many of them found no room."""
    wanted = list(dict.fromkeys(tags))
    middle = next((column for column, tag in wanted if tag.current), 0)
    wanted.sort(key=lambda each: (not each[1].current, abs(each[0] - middle), each[0]))
    placed: tuple[Placed, ...] = ()
    left_out = 0
    for column, tag in wanted:
        if any(each.column == column and each.text == tag.texts[0] for each in placed):
            continue
        found = _added(placed, column, tag, rows, width)
        left_out += not found
        placed = found or placed
    return placed, left_out


def _added(
    placed: tuple[Placed, ...], column: int, tag: Tag, rows: int, width: int
) -> tuple[Placed, ...]:
    """The figures with one more among them; nothing where there is no room for it."""
    for text in tag.texts:
        one = Placed(column, 0, text, tag.current)
        found = _settled((*placed, one))
        if one.end <= width and all(each.row < rows for each in found):
            return found
    return ()


def _settled(placed: tuple[Placed, ...]) -> tuple[Placed, ...]:
    """Each figure in the row nearest to the edge that it can have."""
    found: list[Placed] = []
    # Of two in one column the one in hand stands nearest to the edge.
    for each in sorted(placed, key=lambda one: (-one.column, not one.current)):
        under = (one.row for one in found if one.column <= each.end)
        found.append(Placed(each.column, max(under, default=-1) + 1, each.text, each.current))
    return tuple(found)


def paint_tags(sheet: Sheet, placed: tuple[Placed, ...], edge: int, away: int) -> None:
    """Figures with their uprights beside the row `edge`; `away` is -1 above it and 1 below it."""
    canvas, glyphs = sheet.canvas, sheet.glyphs
    for each in placed:
        rows = range(edge + away, edge + away * (each.row + 2), away)
        canvas.put(((row, each.column) for row in rows), glyphs.upright, Role.DIMENSION)
        role = Role.LOUD if each.current else Role.DIMENSION
        canvas.write((rows[-1], each.column + 1), each.text, role)
    for each in placed:
        if each.current:
            pointer = glyphs.down if away < 0 else glyphs.up
            canvas.put([(edge + away, each.column)], pointer, Role.POINTER)
