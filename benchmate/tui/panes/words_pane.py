"""The step in words: from where, on which faces, which side is waste, and why."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from rich.segment import Segment
from textual.strip import Strip
from textual.widget import Widget

from benchmate.tui.text import clip, fit
from benchmate.tui.word_lines import WordLine, rows_whole, set_lines

if TYPE_CHECKING:
    from rich.style import Style
    from textual import events

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying

MORE = "enter: the rest"
"""What is said in a row of its own where words are folded away."""

BRIEFLY = "enter"
"""The same beside the last words that are shown."""


class WordsPane(Widget):
    """Sayings, the first ones first; where they do not all fit the last row says so.

    `opens` tells whether enter shows the rest.
    """

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
        opens: bool = True,
        id: str | None = None,  # noqa: A002 - Textual's own name
    ) -> None:
        super().__init__(id=id)
        self._glyphs = glyphs
        self._opens = opens
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
        if y >= len(self._lines):
            return Strip.blank(width, self.rich_style)
        if y < height - 1 or len(self._lines) <= height:
            return self._words(self._lines[y], width)
        if rows_whole(self._lines, width, height) < height:
            return self._rest(MORE, width)
        rest = self._rest(BRIEFLY)
        words = self._words(self._lines[y], width - rest.cell_length)
        return Strip.join([words, rest])

    def _rest(self, words: str, width: int | None = None) -> Strip:
        """That some words are folded away, and what shows them."""
        cut_off = self._glyphs.cut_off
        text = f"{cut_off} {words}" if self._opens else cut_off
        style = self.get_component_rich_style("words-pane--more")
        filled = text if width is None else fit(text, width, cut_off)
        return Strip([Segment(filled, style)])

    def _words(self, line: WordLine, width: int) -> Strip:
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
