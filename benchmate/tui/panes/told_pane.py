"""Words wrapped to a list that can be paged through, and a line with a caret below them."""

from __future__ import annotations

from abc import abstractmethod
from typing import TYPE_CHECKING, Generic, TypeVar

from benchmate.tui.line_list import LineList
from benchmate.tui.rows import Row
from benchmate.tui.word_lines import set_lines

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.words import Saying

NARROWEST = 20
"""Cells the words are wrapped to before the pane has been given its size."""

_Told = TypeVar("_Told")


class WrappedPane(LineList, Generic[_Told], can_focus=False):
    """Words wrapped to the pane, and an excerpt that is not. Read by page up and down."""

    def __init__(self, *, glyphs: Glyphs, id: str) -> None:  # noqa: A002 - Textual's own name
        super().__init__(glyphs=glyphs, empty="", id=id)
        self._told: tuple[_Told, ...] = ()
        self._excerpt = ""

    def tell(self, told: tuple[_Told, ...], excerpt: str = "") -> None:
        """Show words from the top; below them an excerpt, whose caret must keep its place."""
        if (told, excerpt) != (self._told, self._excerpt):
            self._told, self._excerpt = told, excerpt
            self._wrap()

    def on_resize(self) -> None:
        """Wrap anew."""
        self._wrap()

    @abstractmethod
    def wrapped(self, told: tuple[_Told, ...], width: int) -> Iterable[Row]:
        """What is told as rows for a pane of so many cells."""

    def _wrap(self) -> None:
        width = max(self.scrollable_content_region.width, NARROWEST)
        rows = [*self.wrapped(self._told, width)]
        rows += [Row(text=line) for line in self._excerpt.splitlines()]
        self.show(tuple(rows), 0)


MARGIN = 2
"""Cells left free of sayings: the cursor's, and one at the right."""


class ToldPane(WrappedPane["Saying"]):
    """Sayings, their labels in a column."""

    def wrapped(self, told: tuple[Saying, ...], width: int) -> Iterable[Row]:
        """One row a line."""
        return (
            Row(text=f"{line.label}{line.text}", bold=line.strong or line.warning)
            for line in set_lines(told, width - MARGIN)
        )
