"""The words of a key: which way one looks, which side is which, and the name of the timber."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from rich.cells import cell_len

from benchmate.tui.drawing.canvas import Role
from benchmate.tui.text import safe

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from benchmate.tui.drawing.canvas import Canvas, Cell
    from benchmate.tui.drawing.key import View
    from benchmate.tui.glyphs import Glyphs


@dataclass(frozen=True, slots=True)
class _Note:
    """An arrow in a cell, and the cell its words begin in."""

    arrow: Cell
    char: str
    start: Cell


def write_heading(canvas: Canvas, view: View, glyphs: Glyphs) -> None:
    """The top row: where north is on a plan; from where one looks, and what lies left and right."""
    if view.is_plan:
        north = f"{glyphs.up} N"
        at = (canvas.width - len(north)) // 2
        canvas.write((0, at), north, Role.REFERENCE_LABEL)
        if len(view.title) < at:
            canvas.write((0, 0), view.title, Role.TITLE)
        return
    left, right = view.sides
    for text in (
        f"{left} {glyphs.left} {view.title} {glyphs.right} {right}",
        f"{left} {view.title} {right}",
    ):
        if len(text) <= canvas.width:
            canvas.write((0, (canvas.width - len(text)) // 2), text, Role.TITLE)
            return


def write_name(canvas: Canvas, cells: Iterable[Cell], name: str, glyphs: Glyphs) -> None:
    """The timber's name beside it with an arrow to it, or the arrow alone, where nothing is drawn.

    Left out where there is no room for either.
    """
    taken = tuple(cells)
    for words in (_by_cells(safe(name)), []):
        for note in _notes(taken, len(words), glyphs):
            if _is_free(canvas, note, len(words)):
                row, column = note.start
                for place, char in enumerate(words):
                    canvas.put([(row, column + place)], char, Role.NAME)
                canvas.put([note.arrow], note.char, Role.POINTER)
                return


def _by_cells(text: str) -> list[str]:
    """The text cell by cell: a wide character is followed by an empty cell, an accent by none."""
    found: list[str] = []
    for char in text:
        width = cell_len(char)
        if width:
            found += [char, *[""] * (width - 1)]
        elif found:
            found[-1] += char
    return found


def _notes(cells: tuple[Cell, ...], length: int, glyphs: Glyphs) -> Iterator[_Note]:
    """Where a name of so many cells might go, the best place first."""
    rows, columns = ({cell[axis] for cell in cells} for axis in (0, 1))
    ways = [_beside(cells, rows, length, glyphs), _over_or_under(cells, columns, length, glyphs)]
    for way in ways if 2 * len(rows) >= len(columns) else ways[::-1]:
        yield from way


def _beside(
    cells: tuple[Cell, ...], rows: set[int], length: int, glyphs: Glyphs
) -> Iterator[_Note]:
    """To the right of the timber or to the left, at its middle if it can be."""
    for right in (True, False):
        for row in _from_the_middle(rows):
            columns = [column for at, column in cells if at == row]
            if right:
                end = max(columns)
                yield _Note((row, end + 1), glyphs.left, (row, end + 3))
            else:
                end = min(columns)
                yield _Note((row, end - 1), glyphs.right, (row, end - 2 - length))


def _over_or_under(
    cells: tuple[Cell, ...], columns: set[int], length: int, glyphs: Glyphs
) -> Iterator[_Note]:
    """Under the timber or over it, at its middle if it can be, words behind the arrow or before."""
    for under in (True, False):
        for column in _from_the_middle(columns):
            rows = [row for row, at in cells if at == column]
            row, char = (max(rows) + 1, glyphs.up) if under else (min(rows) - 1, glyphs.down)
            for start in (column + 2, column - 1 - length):
                yield _Note((row, column), char, (row, start))


def _from_the_middle(places: set[int]) -> list[int]:
    low, high = min(places), max(places)
    return sorted(places, key=lambda place: abs(2 * place - low - high))


def _is_free(canvas: Canvas, note: _Note, length: int) -> bool:
    """Whether nothing is drawn where a note would stand, and nothing just beyond its words."""
    row, arrow = note.arrow
    if not row or canvas.role(note.arrow) is not Role.BLANK:
        return False
    if not length:
        return True
    start = note.start[1]
    low, high = min(start, arrow), max(start + length - 1, arrow)
    beyond = low - 1 if start < arrow else high + 1
    return canvas.all_of((row, low), high - low + 1, Role.BLANK) and canvas.role((row, beyond)) in (
        Role.BLANK,
        None,
    )
