"""Editing from the bench: the menu, the forms behind it, and the joints that a new timber needs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.edit_form import EditForm
from benchmate.tui.screens.edit import Answer, EditScreen
from benchmate.tui.screens.menu import MenuScreen
from benchmate.workbench.edit_choices import Choices, choices, families
from benchmate.workbench.keeping import NotKeptError

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import App

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outcome import Outcome
    from benchmate.workbench.forms.form import Form

DROPPED = "Nothing was added: the joints of {} were not all given."


class Editing:
    """One edit from its menu to what is told of it; `tell` is called once it is kept or dropped."""

    def __init__(
        self, app: App[None], desk: Desk, glyphs: Glyphs, tell: Callable[[Outcome | str], None]
    ) -> None:
        self._app = app
        self._desk = desk
        self._glyphs = glyphs
        self._tell = tell

    def start(self) -> None:
        """Ask what is to be changed."""
        desk = self._desk
        feature = "" if desk.empty else desk.step.feature
        self._choose(choices(desk.bench, desk.timber, feature), "")

    def _choose(self, listed: Choices, pending: str) -> None:
        """Let something be chosen; `pending` names the timber whose joints are still to come."""

        def chosen(place: int | None) -> None:
            if place is None:
                self._dropped(pending)
                return
            choice = listed.choices[place]
            if choice.more is not None:
                self._choose(choice.more(), pending)
            elif choice.form is not None:
                self._open(choice.form, pending)

        self._app.push_screen(MenuScreen(listed, self._glyphs), chosen)

    def _open(self, make: Callable[[], Form], pending: str) -> None:
        """Open a form; a file that it cannot work on is told."""
        try:
            form = EditForm(self._desk.bench, make())
        except NotKeptError as error:
            self._tell(str(error))
            return

        def answered(answer: Answer | None) -> None:
            if answer is None:
                self._dropped(pending)
            elif answer.edit is not None:
                name = answer.then[0].timber
                self._choose(families(self._desk.bench, answer.then[0], answer.edit.text), name)
            elif answer.outcome is not None:
                self._tell(answer.outcome)

        self._app.push_screen(EditScreen(form, self._desk.edit, self._glyphs), answered)

    def _dropped(self, pending: str) -> None:
        if pending:
            self._tell(DROPPED.format(pending))
