"""A field that takes every key in the order it was pressed, those that leave it among them.

Keys bound on the screen are done as soon as they arrive, while letters wait in the field's own
queue: typed ahead, a figure would land in the next line. So whoever owns this field has each key
offered to it before the text, in the one queue, and the keys that edit are done here too.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.widgets import Input

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual import events

EDITS = {
    "backspace": "delete_left",
    "delete": "delete_right",
    "left": "cursor_left",
    "right": "cursor_right",
    "home": "home",
    "end": "end",
}
"""The keys that edit, and what they do to the text."""


class LineInput(Input):
    """`offer` is given each key first and says if it took it; `typing`, if text may be typed."""

    def __init__(self, offer: Callable[[str], bool], *, id: str) -> None:  # noqa: A002 - Textual's own name
        super().__init__(compact=True, id=id)
        self._offer = offer
        self.typing = True

    def take(self, text: str, *, typing: bool) -> None:
        """Hold another text, all of it selected, so that the first letter replaces it."""
        self.typing = typing
        with self.prevent(Input.Changed):
            self.value = text
        self.select_all()

    async def _on_key(self, event: events.Key) -> None:
        taken = self._offer(event.key)
        edit = EDITS.get(event.key)
        if not taken and edit and self.typing:
            getattr(self, f"action_{edit}")()
        if taken or edit or (event.is_printable and not self.typing):
            event.stop()
            event.prevent_default()

    def _on_paste(self, event: events.Paste) -> None:
        if not self.typing:
            event.stop()
            event.prevent_default()
