"""Screens to read and close: a step in full, and the help."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.rows import Row
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.word_lines import set_lines

if TYPE_CHECKING:
    from textual import events
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying


class ReaderScreen(AskingScreen[None]):
    """Sayings that may run over many lines. Any of several keys closes it at once."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("q,escape,enter,space,question_mark,f1", "leave", "Close", show=False)
    ]

    def __init__(self, title: str, sayings: tuple[Saying, ...], glyphs: Glyphs) -> None:
        super().__init__()
        self._title = title
        self._sayings = sayings
        self._header = HeaderLine(glyphs=glyphs, id="reader-title")
        self._list = LineList(glyphs=glyphs, empty="", id="reader-lines")
        self._footer = FooterLine(id="reader-footer")

    def compose(self) -> ComposeResult:
        """Title, lines, keys."""
        with Vertical(id="reader"):
            yield self._header
            yield self._list
            yield self._footer

    def on_mount(self) -> None:
        """Show what there is to read."""
        self._header.show((Part(text=f" {self._title} ", strong=True),))
        self._footer.show(
            (Hint(key="arrows", label="read on", action="on"),),
            (Hint(key="q", label="close", action="leave"),),
        )
        self._list.focus()

    def on_resize(self, _event: events.Resize) -> None:
        """Wrap to the width there is."""
        width = max(self._list.scrollable_content_region.width - 2, 20)
        rows = tuple(
            Row(text=f"{line.label}{line.text}", bold=line.strong or line.warning)
            for line in set_lines(self._sayings, width)
        )
        self._list.show(rows, self._list.cursor or 0)

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_leave()

    def action_on(self) -> None:
        """Read on."""
        self._list.action_page(1)

    def action_leave(self) -> None:
        """Close."""
        self.dismiss()
