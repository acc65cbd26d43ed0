"""The step in words: from where, on which faces, which side is waste, and why."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, ClassVar

from rich.segment import Segment
from textual.strip import Strip
from textual.widget import Widget

from benchmate.tui.text import clip, fit, wrap

if TYPE_CHECKING:
    from rich.style import Style
    from textual import events

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying

LABEL = 7
"""Cells of the label column: the longest label and a space."""

NARROWEST = 12
"""Cells a sentence needs beside its label."""


@dataclass(frozen=True, slots=True)
class WordLine:
    """One set line of a saying: its label on the first line only."""

    label: str
    text: str
    strong: bool
    warning: bool


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


class WordsPane(Widget):
    """Sayings, the first ones first; where they do not all fit the last line says so."""

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {
        "words-pane--label",
        "words-pane--text",
        "words-pane--strong",
        "words-pane--warning",
        "words-pane--more",
    }

    def __init__(
        self,
        *,
        glyphs: Glyphs,
        more: str = "enter: the rest",
        id: str | None = None,  # noqa: A002 - Textual's own name
    ) -> None:
        super().__init__(id=id)
        self._glyphs = glyphs
        self._more = more
        self._sayings: tuple[Saying, ...] = ()
        self._lines: tuple[WordLine, ...] = ()

    def show(self, sayings: tuple[Saying, ...]) -> None:
        """Show these sayings, if they are not shown already."""
        if sayings != self._sayings:
            self._sayings = sayings
            self._set()

    def on_resize(self, _event: events.Resize) -> None:
        """Wrap anew."""
        self._set()

    def _set(self) -> None:
        if self.content_size.width:
            self._lines = set_lines(self._sayings, self.content_size.width)
            self.refresh()

    def render_line(self, y: int) -> Strip:
        """One row of words."""
        width, height = self.content_size
        if len(self._lines) > height and y == height - 1:
            style = self.get_component_rich_style("words-pane--more")
            text = f"{self._glyphs.cut_off} {self._more}"
            return Strip([Segment(fit(text, width, self._glyphs.cut_off), style)], width)
        if y >= len(self._lines):
            return Strip.blank(width, self.rich_style)
        line = self._lines[y]
        label = Segment(line.label, self.get_component_rich_style("words-pane--label"))
        room = max(width - len(line.label), 0)
        cut_off = self._glyphs.cut_off
        text_style = self._style_of(line)
        text = clip(line.text, room, cut_off)
        strip = Strip([label, Segment(text, text_style)])
        return strip.adjust_cell_length(width, self.rich_style)

    def _style_of(self, line: WordLine) -> Style:
        kind = "warning" if line.warning else "strong" if line.strong else "text"
        return self.get_component_rich_style(f"words-pane--{kind}")
