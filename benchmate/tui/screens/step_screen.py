"""What the screens that show one step, as large as the window, have in common.

They tick and move as the bench does, with its keys, and keep the same eye on the files: a figure
that changes outside changes here too.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from rich.cells import cell_len
from textual.binding import Binding

from benchmate.tui.bindings import bindings_of
from benchmate.tui.lines import FooterLine, HeaderLine
from benchmate.tui.panes.label import Notice
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.screens.desk_actions import DeskActions

if TYPE_CHECKING:
    from collections.abc import Callable

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outcome import Outcome

SHARED = ("tick", "out-of-order", "undo", "redo", "best-job", "next", "back", "swap", "untick")
"""The keys of the bench that do here what they do there."""

LOOK_EVERY = 1.0
"""Seconds between looks at the files for changes made outside."""

PAGE = 10
"""Steps that page up and page down go."""


def step_bindings(screen: str) -> list[Binding]:
    """The keys of every screen that shows one step; `screen` begins their ids."""
    return [
        *bindings_of(SHARED, screen),
        Binding("escape,q,ctrl+g", "leave", "Close", show=False),
        Binding("up,k,left", "step(-1)", "Step before", show=False),
        Binding("down,j,right", "step(1)", "Next step", show=False),
        Binding("pageup", f"step(-{PAGE})", "Page up", show=False),
        Binding("pagedown", f"step({PAGE})", "Page down", show=False),
        Binding("home", "go(0)", "First step", show=False),
        Binding("end", "go(-1)", "Last step", show=False),
        Binding("enter", "read", "Read the step in full", show=False),
    ]


class StepScreen(DeskActions, AskingScreen[None]):
    """One step of the desk over the bench, which takes up where this leaves off."""

    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (100, "-normal"), (140, "-wide")]  # noqa: RUF012 - declared so by Textual
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall"), (50, "-high")]  # noqa: RUF012 - as above

    def __init__(self, desk: Desk, glyphs: Glyphs) -> None:
        super().__init__()
        self.desk = desk
        self._glyphs = glyphs
        self._header = HeaderLine(glyphs=glyphs, id="step-header")
        self._notice = Notice(id="step-notice")
        self._footer = FooterLine(id="step-footer")

    def on_mount(self) -> None:
        """Show the step in hand, and keep an eye on the files as the bench does."""
        self.set_interval(LOOK_EVERY, self.look)
        self._show()

    def _show(self) -> None:
        """Bring everything up to date; what is shown below the header is the screen's own."""
        self._header.show(*self.desk.header())

    def look(self) -> None:
        """Notice changes made outside; leave if the timbers are gone."""
        if self.app.screen is not self:
            return
        outcome = self.desk.look()
        if outcome is None:
            return
        if self.desk.empty:
            self.action_leave()
            return
        self._show()
        self._say(outcome.words, warning=outcome.failed)

    def _do(self, action: Callable[[Desk], Outcome], *, empty: bool = False) -> None:
        """Do something at the desk, show how things stand, and say what there is to say."""
        if self.desk.empty and not empty:
            self.action_leave()
            return
        self._hush()
        outcome = self.desk.with_trouble(action(self.desk))
        if self.desk.empty:
            self.action_leave()
            return
        self._show()
        if outcome.words:
            self._say(outcome.words, warning=outcome.failed)

    def _say(self, words: str, *, warning: bool) -> None:
        self._notice.say(words, warning=warning)
        self.add_class("-notice")
        self.set_class(cell_len(words) + 2 > self.size.width, "-notice-long")

    def _hush(self) -> None:
        self.remove_class("-notice", "-notice-long")

    def action_step(self, steps: int) -> None:
        """Go on by so many steps, not past an end."""
        self._do(lambda desk: desk.go_on(steps))

    def action_go(self, place: int) -> None:
        """Go to the first step or, with -1, to the last."""
        self._do(
            lambda desk: desk.go_on(-len(desk.walk.steps) if place == 0 else len(desk.walk.steps))
        )

    def action_read(self) -> None:
        """Read the step in full."""
        from benchmate.tui.help_text import explained  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.reader import ReaderScreen  # noqa: PLC0415

        title, words = self.desk.walk.timber.name, explained(self.desk.words(whole=True))
        self.app.push_screen(ReaderScreen(title, words, self._glyphs))

    def action_leave(self) -> None:
        """Go back to the bench, at the step now in hand."""
        self.dismiss()
