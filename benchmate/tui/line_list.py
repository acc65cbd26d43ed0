"""A list of any length that draws only the lines in sight: members, steps, things found.

1. A move of the cursor repaints two lines and calls `on_move` before anything is painted, so
   that the panes that follow the cursor change in the same frame.
2. Text is never markup: rows are set as plain strings and reach the screen as segments.
3. Only the user's own moves call `on_move`; whoever sets the cursor or shows rows knows already.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from rich.segment import Segment
from textual.binding import Binding, BindingType
from textual.geometry import Size
from textual.message import Message
from textual.scroll_view import ScrollView
from textual.strip import Strip

from benchmate.tui.rows import Row, nearest, onward, set_row, with_headings
from benchmate.tui.text import fit

if TYPE_CHECKING:
    from collections.abc import Callable

    from rich.style import Style
    from textual import events

    from benchmate.tui.glyphs import Glyphs

DOUBLE = 2
"""Clicks in a chain that open a row."""


class LineList(ScrollView, can_focus=True):
    """Rows with a cursor. `on_move` is called with the new index whenever the user moves it.

    With no rows the list shows the line `empty`.
    """

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {
        "line-list--row",
        "line-list--bold",
        "line-list--dim",
        "line-list--heading",
        "line-list--cursor",
        "line-list--cursor-focused",
        "line-list--empty",
    }
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up,k", "step(-1)", "Up", show=False, id="list.up"),
        Binding("down,j", "step(1)", "Down", show=False, id="list.down"),
        Binding("pageup", "page(-1)", "Page up", show=False, id="list.page-up"),
        Binding("pagedown", "page(1)", "Page down", show=False, id="list.page-down"),
        Binding("home", "first", "First", show=False, id="list.first"),
        Binding("end", "last", "Last", show=False, id="list.last"),
        Binding("enter", "open", "Open", show=False, id="list.open"),
    ]

    class Opened(Message):
        """The user opened the row at `index`, by enter or a double click."""

        def __init__(self, line_list: LineList, index: int) -> None:
            super().__init__()
            self.line_list = line_list
            self.index = index

        @property
        def control(self) -> LineList:
            """The list, so that handlers can be chosen by selector."""
            return self.line_list

    def __init__(
        self,
        *,
        on_move: Callable[[int], None] | None = None,
        glyphs: Glyphs,
        empty: str,
        rows: tuple[Row, ...] = (),
        cursor: int = 0,
        id: str | None = None,  # noqa: A002 - Textual's own name for it
        classes: str | None = None,
    ) -> None:
        super().__init__(id=id, classes=classes)
        self._report = on_move
        self._glyphs = glyphs
        self._empty = empty
        self._rows = rows
        self._cursor = nearest(rows, cursor)
        # Known before the first paint, so that the first paint is the only one.
        self.virtual_size = Size(0, max(len(rows), 1))

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows shown."""
        return self._rows

    @property
    def cursor(self) -> int | None:
        """Index of the row the cursor stands on; None when there is no row for it.

        Set to a heading or past an end, it goes to the nearest row that will do.
        """
        return self._cursor

    @cursor.setter
    def cursor(self, index: int) -> None:
        self._put(nearest(self._rows, index))

    def show(self, rows: tuple[Row, ...], cursor: int) -> None:
        """Replace the rows; repaint what changed, and keep the place if the cursor is in sight."""
        before, self._rows = self._rows, rows
        if len(rows) == len(before):
            for index in self.in_sight:
                if before[index] != rows[index]:
                    self.refresh_line(index)
            self.cursor = cursor
            return
        self._cursor = nearest(rows, cursor)
        self.virtual_size = Size(0, max(len(rows), 1))
        self._reveal()
        self.refresh()

    def action_step(self, lines: int) -> None:
        """Move by lines, over headings."""
        if self._cursor is not None:
            self._move(onward(self._rows, self._cursor, lines))

    def action_page(self, pages: int) -> None:
        """Move by the lines in sight, keeping one of them."""
        self.action_step(pages * max(self._lines_in_sight - 1, 1))

    def action_first(self) -> None:
        """Move to the first row."""
        self._move(nearest(self._rows, 0))

    def action_last(self) -> None:
        """Move to the last row."""
        self._move(nearest(self._rows, len(self._rows)))

    def action_open(self) -> None:
        """Say that the row under the cursor is opened."""
        if self._cursor is not None:
            self.post_message(self.Opened(self, self._cursor))

    def on_click(self, event: events.Click) -> None:
        """A click moves the cursor to a row, a double click opens it."""
        offset = event.get_content_offset(self)
        if offset is None:
            return
        index = offset.y + self.scroll_offset.y
        if index >= len(self._rows) or self._rows[index].heading:
            return
        self._move(index)
        if event.chain == DOUBLE:
            self.action_open()

    def on_resize(self) -> None:
        """A list that has just been given its size has the cursor in sight."""
        self._reveal()

    def on_focus(self) -> None:
        """The cursor is plainer to see in the list that has the keys."""
        self._repaint(self._cursor)

    def on_blur(self) -> None:
        """As on_focus."""
        self._repaint(self._cursor)

    def render_line(self, y: int) -> Strip:
        """One line in sight."""
        width = self.scrollable_content_region.width
        index = y + self.scroll_offset.y
        if index < len(self._rows):
            marked = index == self._cursor
            text = set_row(self._rows[index], width, marked=marked, glyphs=self._glyphs)
            return Strip([Segment(text, self._style_of(index))], width)
        text = "" if self._rows or y else f" {self._empty}"
        style = self.get_component_rich_style("line-list--empty")
        return Strip([Segment(fit(text, width, self._glyphs.cut_off), style)], width)

    def _style_of(self, index: int) -> Style:
        row = self._rows[index]
        # A muted colour is mixed with the background, which only a whole style knows.
        style = self.get_component_rich_style(f"line-list--{'dim' if row.dim else 'row'}")
        for name, wanted in (("heading", row.heading), ("bold", row.bold)):
            if wanted:
                style += self.get_component_rich_style(f"line-list--{name}", partial=True)
        if index == self._cursor:
            name = "line-list--cursor-focused" if self.has_focus else "line-list--cursor"
            style += self.get_component_rich_style(name, partial=True)
        return style

    @property
    def _lines_in_sight(self) -> int:
        return self.scrollable_content_region.height

    @property
    def in_sight(self) -> range:
        """The rows in sight, by index."""
        top = self.scroll_offset.y
        return range(top, min(top + self._lines_in_sight, len(self._rows)))

    def _move(self, index: int | None) -> None:
        if index is not None and index != self._cursor:
            self._put(index)
            if self._report is not None:
                self._report(index)

    def _put(self, index: int | None) -> None:
        if index != self._cursor:
            self._repaint(self._cursor)
            self._cursor = index
            self._repaint(self._cursor)
        self._reveal()

    def _repaint(self, index: int | None) -> None:
        """Have one line painted again, if it is in sight."""
        if index is not None and index in self.in_sight:
            self.refresh_line(index)

    def _reveal(self) -> None:
        """Scroll no further than brings the cursor, and headings just above it, into sight."""
        height, place = self._lines_in_sight, self.scroll_offset.y
        if not height:
            return
        goal = min(place, max(len(self._rows) - height, 0))
        if self._cursor is not None:
            goal = max(
                min(goal, with_headings(self._rows, self._cursor, height)),
                self._cursor - height + 1,
            )
        if goal != place:
            self.scroll_to(y=goal, animate=False, immediate=True, force=True)
