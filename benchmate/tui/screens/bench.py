"""The bench screen: what each key does there."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.message import Message

from benchmate.tui.bindings import bindings
from benchmate.tui.screens.bench_doors import BenchDoors

if TYPE_CHECKING:
    from textual.binding import BindingType

    from benchmate.tui.desk import Desk

LOOK_EVERY = 1.0
"""Seconds between looks at the files for changes made outside."""


class BenchScreen(BenchDoors):
    """One project open at one timber and one step."""

    BINDINGS: ClassVar[list[BindingType]] = [*bindings()]

    class NewFrame(Message):
        """A new frame is to be set out."""

    class Projects(Message):
        """Another project is to be chosen."""

    class Settings(Message):
        """The framer's own settings are to be seen."""

    def lay(self, desk: Desk) -> None:
        """Put a project on the screen, in place of one that lay there, and watch its files."""
        if self.desk is None:
            self.set_interval(LOOK_EVERY, self.look)
        self.desk = desk
        self._hush()
        self._show_all()
        greeting = desk.greeting()
        if greeting:
            self._say(greeting, warning=True)

    def tell(self, words: str, *, warning: bool = False) -> None:
        """Say something about what was just laid here, unless there is a greeting to read first."""
        if warning or (self.desk is not None and not self.desk.greeting()):
            self._say(words, warning=warning)

    def action_best_job(self) -> None:
        """Go to the next best job in the whole frame."""
        self._show_steps()
        super().action_best_job()

    def action_face(self) -> None:
        """Turn the drawing to the step's next face."""
        self._do(lambda desk: desk.turn())

    def action_take_over(self) -> None:
        """Become the one that keeps this project."""
        self._do(lambda desk: desk.take_over())

    def action_new_frame(self) -> None:
        """Set a new frame out."""
        self._hush()
        self.post_message(self.NewFrame())

    def action_projects(self) -> None:
        """Open another project, or make one."""
        self._hush()
        self.post_message(self.Projects())

    def action_settings(self) -> None:
        """Look at one's own settings."""
        self._hush()
        self.post_message(self.Settings())

    def take_up(self, words: str, *, warning: bool = False) -> None:
        """Show everything anew after the settings were changed, and say so."""
        self._show_all()
        self._say(words, warning=warning)

    def action_quit(self) -> None:
        """Leave; everything is already kept."""
        self.app.exit()

    def look(self) -> None:
        """Notice changes made outside; nothing is painted when there are none."""
        desk = self.desk
        if desk is None or self.app.screen is not self:
            # What is being typed over the bench stays about the timber it was opened on.
            return
        outcome = desk.look()
        if outcome is not None:
            self._show_all()
            self._say(outcome.words, warning=outcome.failed)
