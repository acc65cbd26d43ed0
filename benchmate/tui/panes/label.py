"""Text that is never read as markup: a fixed line, and a message in the footer's place."""

from __future__ import annotations

from textual.widgets import Static

from benchmate.tui.text import rich_text


class PlainLabel(Static):
    """A fixed line of text."""

    def __init__(self, text: str, *, id: str | None = None, classes: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(rich_text(text), id=id, classes=classes, markup=False)


class Notice(Static):
    """A message of a line or a few; a warning stands out without colour."""

    def __init__(self, *, id: str | None = None) -> None:  # noqa: A002 - Textual's own name
        super().__init__(id=id, markup=False)

    def say(self, words: str, *, warning: bool) -> None:
        """Show the words whole, on as many lines as they need."""
        self.update(rich_text(f" {words} ", style="bold reverse" if warning else "bold"))
