"""What was done on the timber in hand: day by day, newest first, and back to where it was done."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.label import Notice
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.history_list import HistoryList
    from benchmate.workbench.history import Event

EMPTY = "nothing yet: every tick, size and edit will stand here"


class HistoryScreen(AskingScreen["Event | None"]):
    """The history of a timber. Gives the event to go to, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q,h,ctrl+g", "leave", "Close", show=False)
    ]

    def __init__(self, history: HistoryList, glyphs: Glyphs) -> None:
        super().__init__()
        self._history = history
        self._header = HeaderLine(glyphs=glyphs, id="history-title")
        self._notice = Notice(id="history-notice")
        self._list = LineList(glyphs=glyphs, empty=EMPTY, rows=history.rows, id="history-events")
        self._footer = FooterLine(id="history-footer")

    def compose(self) -> ComposeResult:
        """Title, what is wrong with the journal, events, keys."""
        with Vertical(id="history"):
            yield self._header
            yield self._notice
            yield self._list
            yield self._footer

    def on_mount(self) -> None:
        """Start at the newest."""
        self._header.show((Part(text=f" {self._history.title} ", strong=True),))
        self._notice.display = bool(self._history.trouble)
        self._notice.say(self._history.trouble, warning=True)
        self._footer.show(
            (
                Hint(key="enter", label="go to the step", action="take"),
                Hint(key="arrows", label="move", action="app.focused.step(1)"),
            ),
            (Hint(key="q", label="close", action="leave"),),
        )
        self._list.focus()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take()

    def action_take(self) -> None:
        """Go to where the event under the cursor was done."""
        event: Event | None = self._history.event(self._list.cursor)
        if event is not None:
            self.dismiss(event)

    def action_leave(self) -> None:
        """Stay where one was."""
        self.dismiss(None)
