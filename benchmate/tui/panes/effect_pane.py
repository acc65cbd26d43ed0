"""What a change would do, line by line, below the field it is typed in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.line_list import LineList
from benchmate.tui.ripple_words import STRONG
from benchmate.tui.rows import Row
from benchmate.tui.text import wrap

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs

NARROWEST = 20
"""Cells the lines are wrapped to before the pane has been given its size."""

MARGIN = 4
"""Cells left free: the cursor's, the indent of a line that goes on, and one at the right."""


class EffectPane(LineList, can_focus=False):
    """Lines wrapped to the pane; those not to be overlooked are bold. Read by page up and down."""

    def __init__(self, *, glyphs: Glyphs, id: str) -> None:  # noqa: A002 - Textual's own name
        super().__init__(glyphs=glyphs, empty="", id=id)
        self._lines: tuple[str, ...] = ()
        self._excerpt = ""

    def tell(self, lines: tuple[str, ...], excerpt: str = "") -> None:
        """Show lines from the top; below them an excerpt, whose caret must keep its place."""
        self._lines, self._excerpt = lines, excerpt
        self._wrap()

    def on_resize(self) -> None:
        """Wrap anew."""
        self._wrap()

    def _wrap(self) -> None:
        width = max(self.scrollable_content_region.width - MARGIN, NARROWEST)
        rows = [
            Row(text=f"  {text}" if place else text, bold=line.startswith(STRONG))
            for line in self._lines
            for place, text in enumerate(wrap(line, width))
        ]
        rows += [Row(text=line) for line in self._excerpt.splitlines()]
        self.show(tuple(rows), 0)
