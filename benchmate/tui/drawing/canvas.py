"""A sheet of character cells to draw on, and the finished drawing taken off it.

Rows and columns count from nought at the top left. What falls outside the sheet is left out.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from itertools import groupby
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

Cell = tuple[int, int]
"""A row and a column."""


class Role(Enum):
    """What a cell shows, for a screen to give a style to."""

    BLANK = "blank"
    OUTLINE = "outline"
    REFERENCE = "reference"
    """The edge of a reference face, and the mark on the reference arris."""
    BREAK = "break"
    LINE = "line"
    """A line of the same joint that is not the one to strike now."""
    DATUM = "datum"
    CURRENT = "current"
    WASTE = "waste"
    """What the current line takes away, or the whole joint's waste where no line is current."""
    JOINT_WASTE = "joint waste"
    """What other lines of the same joint take away."""
    OTHER_WASTE = "other waste"
    BLEMISH = "blemish"
    """A knot, a check or wane that was noted."""
    WASTE_ARROW = "waste arrow"
    POINTER = "pointer"
    DIMENSION = "dimension"
    FIGURE = "figure"
    LABEL = "label"
    REFERENCE_LABEL = "reference label"
    TITLE = "title"
    OTHER_TIMBER = "other timber"
    """On a key of the frame, a timber that is not the one in hand."""
    NAME = "name"
    """The name of the timber in hand."""
    WORDS = "words"
    """Plain words beside a drawing."""
    STRONG = "strong"
    """Words that make the mark."""
    LOUD = "loud"
    """What must be seen before all else: reversed, so that it needs no colour."""


Run = tuple[str, Role]


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing row by row, each row in runs of one role; all rows are equally wide."""

    rows: tuple[tuple[Run, ...], ...]

    @property
    def text(self) -> str:
        """The drawing without its roles, a line to a row."""
        return "\n".join("".join(text for text, _ in row) for row in self.rows)


class Canvas:
    """A blank sheet; what is put on it later covers what was there."""

    def __init__(self, width: int, height: int) -> None:
        self.width, self.height = max(width, 0), max(height, 0)
        self._cells: list[list[Run]] = [
            [(" ", Role.BLANK)] * self.width for _ in range(self.height)
        ]

    def holds(self, cell: Cell) -> bool:
        """Whether a cell is on the sheet."""
        return 0 <= cell[0] < self.height and 0 <= cell[1] < self.width

    def put(self, cells: Iterable[Cell], char: str, role: Role) -> None:
        """One character into each of the cells."""
        for cell in cells:
            if self.holds(cell):
                self._cells[cell[0]][cell[1]] = (char, role)

    def write(self, at: Cell, text: str, role: Role) -> None:
        """Text to the right from a cell, each of its characters one cell wide."""
        for place, char in enumerate(text):
            self.put([(at[0], at[1] + place)], char, role)

    def paste(self, at: Cell, drawing: Drawing) -> None:
        """A finished drawing, its top left corner in a cell."""
        for down, row in enumerate(drawing.rows):
            column = at[1]
            for text, role in row:
                self.write((at[0] + down, column), text, role)
                column += len(text)

    def role(self, cell: Cell) -> Role | None:
        """What a cell shows; None outside the sheet."""
        return self._cells[cell[0]][cell[1]][1] if self.holds(cell) else None

    def all_of(self, at: Cell, count: int, *roles: Role) -> bool:
        """Whether a cell and those right of it, `count` in all, show nothing but these roles."""
        return all(self.role((at[0], at[1] + place)) in roles for place in range(count))

    def widest(self, row: int, *roles: Role) -> range:
        """The columns of the widest run of these roles in a row; empty where there is none."""
        best, start = range(0), 0
        for fits, cells in groupby(range(self.width), lambda at: self.role((row, at)) in roles):
            end = start + len(tuple(cells))
            if fits and end - start > len(best):
                best = range(start, end)
            start = end
        return best

    def drawing(self) -> Drawing:
        """The sheet as it now is."""
        return Drawing(tuple(tuple(_runs(row)) for row in self._cells))


def _runs(row: list[Run]) -> Iterable[Run]:
    for role, cells in groupby(row, lambda cell: cell[1]):
        yield "".join(char for char, _ in cells), role
