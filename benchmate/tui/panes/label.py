"""One line of text that is never read as markup."""

from __future__ import annotations

from textual.widgets import Static

from benchmate.tui.text import rich_text


class PlainLabel(Static):
    """A fixed line of text."""

    def __init__(self, text: str, *, id: str | None = None, classes: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(rich_text(text), id=id, classes=classes, markup=False)
