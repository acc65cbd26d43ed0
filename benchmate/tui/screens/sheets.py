"""Writing sheets to print: choose this timber or the whole frame, and where to."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.widgets import Input

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.panes.label import PlainLabel
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.sheets_form import TITLE

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outcome import Outcome
    from benchmate.tui.sheets_form import SheetsForm

HOW = (
    "Enter writes them: pages to print on A4 or Letter, plain text, and tables for a spreadsheet. "
    "Nothing but benchmate's own sheets is written over."
)


class SheetsScreen(AskingScreen["Outcome | None"]):
    """Which sheets to write, and the folder. Gives what was written, or None for nothing.

    Where they cannot be written the screen stays, and says why.
    """

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("q,p", "leave", "Leave", show=False),
        Binding("tab", "other", "To the folder and back", show=False),
    ]

    def __init__(self, form: SheetsForm, glyphs: Glyphs) -> None:
        super().__init__()
        self._form = form
        self._header = HeaderLine(glyphs=glyphs, id="sheets-title")
        self._list = LineList(glyphs=glyphs, empty="", rows=form.rows, id="sheets-list")
        self._input = Input(form.folder, compact=True, id="sheets-folder")
        self._told = EffectPane(glyphs=glyphs, id="sheets-told")
        self._footer = FooterLine(id="sheets-footer")

    def compose(self) -> ComposeResult:
        """Title, the two choices, the folder, what there is to say, keys."""
        with Vertical(id="sheets"):
            yield self._header
            yield self._list
            yield PlainLabel("into the folder", classes="field-label")
            yield self._input
            yield self._told
            yield self._footer

    def on_mount(self) -> None:
        """Ready to choose."""
        self._header.show((Part(text=f" {TITLE} ", strong=True),))
        self._told.tell((HOW,))
        self._footer.show(
            (
                Hint(key="enter", label="write", action="write"),
                Hint(key="tab", label="folder", action="other"),
            ),
            (Hint(key="esc ctrl+g", label="leave", action="leave"),),
        )
        self._list.focus()

    @on(LineList.Opened)
    @on(Input.Submitted)
    def _chosen(self) -> None:
        self.action_write()

    def action_write(self) -> None:
        """Say that it is being done, paint that, then do it."""
        self._told.tell(("Writing...",))
        self.call_after_refresh(self._write)

    def _write(self) -> None:
        outcome: Outcome = self._form.write(self._list.cursor or 0, self._input.value)
        if outcome.failed:
            self._told.tell((outcome.words,))
        else:
            self.dismiss(outcome)

    def action_other(self) -> None:
        """Go between the choices and the folder."""
        if self._input.has_focus:
            self._list.focus()
        else:
            self._input.focus()

    def action_leave(self) -> None:
        """Write nothing."""
        self.dismiss(None)
