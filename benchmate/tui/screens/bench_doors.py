"""What opens over the bench, and what comes of it once it is closed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on

from benchmate.tui.line_list import LineList
from benchmate.tui.screens.bench_view import BenchView
from benchmate.tui.screens.desk_actions import DeskActions

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.tui.desk import Desk
    from benchmate.tui.outcome import Outcome
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.find_entries import Hit
    from benchmate.workbench.history import Event

NO_PLACES = (
    "No timber of this project has a place in the frame. "
    "To see where each stands, give it one with e."
)

COPIED = (
    "The step is on the clipboard. Where the terminal does not let it through, drag over the text "
    "with shift held."
)


class BenchDoors(DeskActions, BenchView):
    """The bench's keys that open something over it."""

    @on(LineList.Opened, "#steps")
    def _step_opened(self) -> None:
        desk = self.desk
        if desk is not None and not desk.empty:
            from benchmate.tui.help_text import explained  # noqa: PLC0415 - paid when opened
            from benchmate.tui.screens.reader import ReaderScreen  # noqa: PLC0415

            title, words = desk.walk.timber.name, explained(desk.words(whole=True))
            self.app.push_screen(ReaderScreen(title, words, self._glyphs))

    def _do(self, action: Callable[[Desk], Outcome], *, empty: bool = False) -> None:
        """Do something at the desk, show how things stand, and say what there is to say.

        With `empty` it may be done on a project without timbers too.
        """
        desk = self.desk
        if desk is None or (desk.empty and not empty):
            return
        self._hush()
        outcome = desk.with_trouble(action(desk))
        self._show_all()
        if outcome.words:
            self._say(outcome.words, warning=outcome.failed)

    def action_measure(self) -> None:
        """Type what the stick or the tenon really measures."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.sizes import SizesScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(
            SizesScreen(desk.sizes_form(), desk.pad, self._glyphs), self._sizes_typed
        )

    def _sizes_typed(self, sizes: Sizes | None) -> None:
        if sizes is not None:
            self._do(lambda desk: desk.set_sizes(sizes))

    def action_names(self) -> None:
        """Change a line, a level, a length or a section."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.names import NamesScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        screen = NamesScreen(desk.names_form(), desk.set_name, desk.pad, self._glyphs)
        self.app.push_screen(screen, self._done_over)

    def _done_over(self, outcome: Outcome | None) -> None:
        if outcome is not None:
            self._do(lambda _desk: outcome)

    def action_history(self) -> None:
        """Show what was done on the timber."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.history import HistoryScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(HistoryScreen(desk.history(), self._glyphs), self._event_chosen)

    def _event_chosen(self, event: Event | None) -> None:
        if event is not None:
            self._show_steps()
            self._do(lambda desk: desk.revisit(event))

    def action_edit(self) -> None:
        """Change the project: a timber, a joint, or itself."""
        desk = self.desk
        if desk is None:
            return
        from benchmate.tui.screens.editing import Editing  # noqa: PLC0415 - paid when opened

        self._hush()
        Editing(self.app, desk, self._glyphs, self._edited).start()

    def _edited(self, told: Outcome | str) -> None:
        """Show the project as it is now, and say what came of the edit."""
        self._show_all()
        if isinstance(told, str):
            self._say(told)
        elif told.words:
            self._say(told.words, warning=told.failed)

    def action_sheets(self) -> None:
        """Write sheets to print and take along."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.sheets import SheetsScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(SheetsScreen(desk.sheets_form(), self._glyphs), self._done_over)

    def action_find(self) -> None:
        """Look something up."""
        desk = self.desk
        if desk is None:
            return
        from benchmate.tui.screens.find import FindScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        tape = desk.bench.tape
        screen = FindScreen(desk.index(), tape, self._glyphs, recent=desk.looked_up)
        self.app.push_screen(screen, self._found)

    def action_pad(self) -> None:
        """Reckon with lengths."""
        desk = self.desk
        if desk is None:
            return
        from benchmate.tui.screens.pad import PadScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(PadScreen(desk.pad(), self._glyphs))

    def action_where(self) -> None:
        """Show where the timber stands in the frame."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        self._hush()
        if not desk.bars:
            self._say(NO_PLACES)
            return
        from benchmate.tui.screens.where import WhereScreen  # noqa: PLC0415 - paid when opened

        timbers = tuple(timber.id for timber in desk.bench.timbers)
        self.app.push_screen(
            WhereScreen(desk.bars, timbers, desk.timber, desk.about, self._glyphs), self._picked
        )

    def action_members(self) -> None:
        """Show the list of timbers, how far each is, and sign what no tick can tell."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.members import MembersScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(MembersScreen(desk, self._glyphs), self._taken_up)

    def _taken_up(self, timber: str | None) -> None:
        """Take up a timber at its next ready step, or show what was done over the bench."""
        if timber is not None:
            self._show_steps()
            self._do(lambda desk: desk.take_up(timber))
        else:
            self._show_all()

    def action_stand_back(self) -> None:
        """Show the step as large as the window, to be read from two paces."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.stand_back import StandBackScreen  # noqa: PLC0415 - when opened

        self._hush()
        self.app.push_screen(StandBackScreen(desk, self._glyphs), self._come_back)

    def action_notes(self) -> None:
        """Show the notes and blemishes of the timber, and add to them."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.notes import NotesScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(NotesScreen(desk, self._glyphs), self._come_back)

    def action_roll(self) -> None:
        """Show the timber's faces and ends as it is rolled on the horses."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.roll import RollScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(RollScreen(desk, self._glyphs), self._come_back)

    def _come_back(self, _nothing: None) -> None:
        """Take up the timber and the step that a screen over the bench leaves in hand."""
        self._show_steps()
        self._show_all()

    def _picked(self, timber: str | None) -> None:
        if timber is not None:
            self._go_to(timber, "")

    def _found(self, hit: Hit | None) -> None:
        if self.desk is None or hit is None:
            return
        self.desk.look_up(hit)
        if hit.timber:
            self._go_to(hit.timber, hit.step)

    def _go_to(self, timber: str, step: str) -> None:
        """Take up what was chosen over the bench."""
        if self.desk is not None:
            self.desk.go_to(timber, step)
            self._show_steps()
            self._show_all()

    def action_copy(self) -> None:
        """Put the step in words on the clipboard, where the terminal lets a program do that."""
        desk = self.desk
        if desk is not None and not desk.empty:
            self.app.copy_to_clipboard(desk.plain_words())
            self._say(COPIED)

    def action_help(self) -> None:
        """Show the keys and the words."""
        from benchmate.tui import help_text  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.reader import ReaderScreen  # noqa: PLC0415

        desk = self.desk
        words = help_text.help_sayings(
            self._glyphs,
            pane=help_text.TIMBERS if self._timbers.has_focus else help_text.STEPS,
            step=() if desk is None or desk.empty else desk.words(whole=True),
        )
        self.app.push_screen(ReaderScreen("Help", words, self._glyphs))
