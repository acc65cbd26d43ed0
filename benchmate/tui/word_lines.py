"""Sayings set in lines of a width, and how many of those the words pane shows whole."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import TYPE_CHECKING

from rich.cells import cell_len

from benchmate.tui.text import safe, wrap

if TYPE_CHECKING:
    from benchmate.layout.step import Step
    from benchmate.tui.words import Saying

LABEL = 7
"""Cells of the label column: the longest label and a space."""

NARROWEST = 12
"""Cells a sentence needs beside its label."""

NARROW = 49
"""Cells of the words pane at 80 x 24."""


class Room(IntEnum):
    """How the words share the room with the drawing: the rows they have of it at 80 x 24."""

    ABOVE_DRAWING = 7
    ABOVE_LOW_DRAWING = 9
    NO_DRAWING = 15


BESIDE = 8
"""Cells that `… enter` takes at the end of a row, with the space before it."""


@dataclass(frozen=True, slots=True)
class WordLine:
    """One set line of a saying: its label on the first line only."""

    label: str
    text: str
    strong: bool
    warning: bool

    @property
    def cells(self) -> int:
        """How much of a row it takes."""
        return len(self.label) + cell_len(safe(self.text))


def set_lines(sayings: tuple[Saying, ...], width: int) -> tuple[WordLine, ...]:
    """The sayings wrapped to a width, labels in a column of their own."""
    lines: list[WordLine] = []
    for saying in sayings:
        room = max(width - (LABEL if saying.label else 0), NARROWEST)
        for place, text in enumerate(wrap(saying.text, room)):
            label = saying.label.ljust(LABEL) if saying.label and not place else ""
            indent = " " * LABEL if saying.label and place else ""
            lines.append(WordLine(label or indent, text, saying.strong, saying.warning))
    return tuple(lines)


def rows_whole(lines: tuple[WordLine, ...], width: int, height: int) -> int:
    """How many lines a pane shows whole.

    Where some are folded away its last row says so: beside its words if they leave room for that,
    in their place if not.
    """
    if len(lines) <= height:
        return len(lines)
    beside = height > 0 and lines[height - 1].cells + BESIDE <= width
    return height if beside else max(height - 1, 0)


def told_whole(sayings: tuple[Saying, ...], width: int, height: int) -> bool:
    """Whether a pane folds away none of the strong sayings, which are needed at the timber."""
    last = max((place for place, saying in enumerate(sayings) if saying.strong), default=-1)
    needed = len(set_lines(sayings[: last + 1], width))
    return needed <= rows_whole(set_lines(sayings, width), width, height)


def room_for(step: Step, sayings: tuple[Saying, ...], *, stopped: bool) -> Room:
    """The room that the words of a step need, of which the drawing has what is left.

    They have all of it where the step has several figures, is done on no face, or is stopped. What
    it waits for, how a square is set, and words that are long take two rows off the drawing.
    """
    if stopped or step.asks or not step.faces:
        return Room.NO_DRAWING
    slants = step.setting is not None or step.leads_on
    waits = any(saying.label == "waits" for saying in sayings)
    if not (slants or waits) and told_whole(sayings, NARROW, Room.ABOVE_DRAWING):
        return Room.ABOVE_DRAWING
    several = step.line is None and len(step.readings) > 1
    if several and not told_whole(sayings, NARROW, Room.ABOVE_LOW_DRAWING):
        return Room.NO_DRAWING
    return Room.ABOVE_LOW_DRAWING
