"""Labelled sentences in a list that can be paged through, and a line with a caret below them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.line_list import LineList
from benchmate.tui.rows import Row
from benchmate.tui.word_lines import set_lines

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying

NARROWEST = 20
"""Cells the lines are wrapped to before the pane has been given its size."""

MARGIN = 2
"""Cells left free: the cursor's, and one at the right."""


class ToldPane(LineList, can_focus=False):
    """Sayings wrapped to the pane, their labels in a column. Read by page up and down."""

    def __init__(self, *, glyphs: Glyphs, id: str) -> None:  # noqa: A002 - Textual's own name
        super().__init__(glyphs=glyphs, empty="", id=id)
        self._told: tuple[Saying, ...] = ()
        self._excerpt = ""

    def tell(self, told: tuple[Saying, ...], excerpt: str = "") -> None:
        """Show sayings from the top; below them an excerpt, whose caret must keep its place."""
        if (told, excerpt) != (self._told, self._excerpt):
            self._told, self._excerpt = told, excerpt
            self._wrap()

    def on_resize(self) -> None:
        """Wrap anew."""
        self._wrap()

    def _wrap(self) -> None:
        width = max(self.scrollable_content_region.width - MARGIN, NARROWEST)
        rows = [
            Row(text=f"{line.label}{line.text}", bold=line.strong or line.warning)
            for line in set_lines(self._told, width)
        ]
        rows += [Row(text=line) for line in self._excerpt.splitlines()]
        self.show(tuple(rows), 0)
