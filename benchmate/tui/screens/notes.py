"""The notes of the timber in hand: what was noted, newest first; add to it, take one out."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.screens.jot import JotScreen
from benchmate.tui.screens.menu import MenuScreen

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.notes_list import Addition
    from benchmate.tui.outcome import Outcome

EMPTY = "nothing noted yet"


class NotesScreen(AskingScreen[None]):
    """The notes and blemishes of a timber. What is done here is kept at once, and u undoes it."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q,i,ctrl+g", "leave", "Close", show=False),
        Binding("a,enter", "add", "Add", show=False, priority=True),
        Binding("x,delete", "take_out", "Take out", show=False),
        Binding("u,backspace", "undo", "Undo", show=False),
    ]

    def __init__(self, desk: Desk, glyphs: Glyphs) -> None:
        super().__init__()
        self._desk = desk
        self._glyphs = glyphs
        self._notes = desk.notes()
        self._header = HeaderLine(glyphs=glyphs, id="notes-title")
        self._list = LineList(on_move=self._moved, glyphs=glyphs, empty=EMPTY, id="notes-list")
        self._whole = EffectPane(glyphs=glyphs, id="notes-whole")
        self._footer = FooterLine(id="notes-footer")

    def compose(self) -> ComposeResult:
        """Title, notes, the one in hand in full, keys."""
        with Vertical(id="notes"):
            yield self._header
            yield self._list
            yield self._whole
            yield self._footer

    def on_mount(self) -> None:
        """Start at the newest."""
        self._footer.show(
            (
                Hint(key="a", label="add", action="add"),
                Hint(key="x", label="take out", action="take_out"),
                Hint(key="u", label="undo", action="undo"),
                Hint(key="arrows", label="move", action="app.focused.step(1)"),
            ),
            (Hint(key="q", label="close", action="leave"),),
        )
        self._list.focus()
        self._show()

    def _show(self, told: tuple[str, ...] = (), row: int = 0) -> None:
        """The list as it is now, and before the row in full what there is to say."""
        desk = self._desk
        if desk.empty:
            self.action_leave()
            return
        self._notes = desk.notes()
        flag = (Part(text=" READ ONLY ", warning=True),) if desk.bench.read_only else ()
        self._header.show((Part(text=f" {self._notes.title} ", strong=True),), flag)
        self._list.show(self._notes.rows, min(row, max(len(self._notes.rows) - 1, 0)))
        self._whole.tell((*told, *self._notes.whole(self._list.cursor)))

    def _moved(self, row: int) -> None:
        self._whole.tell(self._notes.whole(row))

    def _do(self, action: Callable[[Desk], Outcome], row: int = 0) -> None:
        outcome = action(self._desk)
        lead = "CHECK: " if outcome.failed else ""
        self._show((f"{lead}{outcome.words}",) if outcome.words else (), row)

    def action_add(self) -> None:
        """Choose what to add, then fill in its form."""
        from benchmate.workbench.edit_choices import Choice, Choices  # noqa: PLC0415 - when opened

        found = self._desk.additions()
        listed = tuple(Choice(each.text, each.beside, None) for each in found)
        screen = MenuScreen(Choices("What is to be noted?", listed), self._glyphs)
        self.app.push_screen(screen, lambda place: self._chosen(found, place))

    def _chosen(self, found: tuple[Addition, ...], place: int | None) -> None:
        if place is not None:
            desk = self._desk
            screen = JotScreen(found[place].form(), desk.jot, desk.pad, self._glyphs)
            self.app.push_screen(screen, self._kept)

    def _kept(self, outcome: Outcome | None) -> None:
        if outcome is not None:
            self._do(lambda _desk: outcome)

    def action_take_out(self) -> None:
        """Take the one in hand out."""
        row = self._list.cursor
        noted = self._notes.noted(row)
        if noted is not None:
            self._do(lambda desk: desk.take_out(noted), row or 0)

    def action_undo(self) -> None:
        """Take the last action back, whatever it was."""
        self._do(lambda desk: desk.undo())

    def action_leave(self) -> None:
        """Go back to the bench."""
        self.dismiss()
