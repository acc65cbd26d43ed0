"""A framer's own settings: the list, a line of help for each, and how a figure then looks.

Colours and digits change while one looks. Enter keeps all of it, escape puts all of it back.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.containers import Vertical

from benchmate.tui.lines import Hint
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.screens.fields import FieldsScreen
from benchmate.workbench.new_project import NotMadeError

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.fields_form import Field
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.preferences_form import PreferencesForm


class PreferencesScreen(FieldsScreen):
    """The settings. Gives the folder they are kept in once they are, or None.

    `look` shows colours and a style of digits on the whole screen.
    """

    def __init__(
        self, form: PreferencesForm, glyphs: Glyphs, look: Callable[[str, str], None]
    ) -> None:
        super().__init__(form, glyphs)
        self._settings = form
        self._look = look
        self._before = (form.colours, form.digits)
        self._figure = FigurePane(glyphs=glyphs, id="preferences-figure")

    def compose(self) -> ComposeResult:
        """Title, the settings, the one in hand, its words, a figure, keys."""
        with Vertical(id="fields"):
            yield self._header
            yield self._list
            yield self._label
            yield self._input
            yield self._words
            yield self._figure
            yield self._footer

    def _show(self) -> None:
        super()._show()
        self._look(self._settings.colours, self._settings.digits)
        self._figure.show(self._settings.figure(), "")
        self._figure.restyle()

    def action_enter(self) -> None:
        """Keep what is set, unless something of it cannot be."""
        self._flush()
        wrong = self._form.wrong
        if wrong is not None:
            self._go(self._form.row_of(wrong.id))
            return
        try:
            folder = self._form.finish()
        except NotMadeError as error:
            self._say(f"Not kept: {error}")
            return
        self.dismiss(folder)

    def action_to_make(self) -> None:
        """Keep what is set, as enter does."""
        self.action_enter()

    def action_leave(self) -> None:
        """Put everything back as it was."""
        self._look(*self._before)
        self.dismiss(None)

    def _hints(self, field: Field) -> tuple[Hint, ...]:
        """The keys of the setting in hand."""
        choose = Hint(key="left right", label="choose", action="choose(1)")
        return (
            Hint(key="enter", label="keep all", action="enter"),
            *((choose,) if field.choices else ()),
            Hint(key="up down", label="move", action="step(1)"),
        )
