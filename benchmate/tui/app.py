"""The full-screen program: paints first, then reads the project and lays it on the screen."""

from __future__ import annotations

import asyncio
import os
import signal
from pathlib import Path
from typing import TYPE_CHECKING

from textual.app import App

from benchmate.tui.screens.bench import BenchScreen

if TYPE_CHECKING:
    from textual.screen import Screen

    from benchmate.tui.glyphs import Glyphs
    from benchmate.workbench.bench import Bench

SIGNALS = (signal.SIGTERM, signal.SIGHUP)
"""The signals that must leave a clean terminal."""


class BenchmateApp(App[None]):
    """The companion. `farewell` is what to print once the terminal is back, or empty."""

    CSS_PATH = "benchmate.tcss"
    TITLE = "benchmate"
    ENABLE_COMMAND_PALETTE = False

    def __init__(self, project: str, glyphs: Glyphs) -> None:
        super().__init__()
        self.animation_level = "none"
        self.farewell = ""
        self._project = project
        self._glyphs = glyphs
        self._bench_screen = BenchScreen(glyphs)
        self._bench: Bench | None = None

    def get_default_screen(self) -> Screen[None]:
        """The bench screen stands under everything."""
        return self._bench_screen

    def on_mount(self) -> None:
        """Catch the signals, and open the project once the first frame is out."""
        loop = asyncio.get_running_loop()
        for number in SIGNALS:
            loop.add_signal_handler(number, self._signalled, number)
        self.call_after_refresh(self._open)

    def _signalled(self, number: int) -> None:
        self.exit(return_code=128 + number)

    def _open(self) -> None:
        """Find the project meant; ask if there are several."""
        from benchmate.workbench.shelf import NoProjectError, choices  # noqa: PLC0415 - after paint

        try:
            folders = choices(self._project, Path.cwd(), os.environ)
        except NoProjectError as error:
            self._give_up(str(error))
            return
        if len(folders) == 1:
            self._lay(folders[0])
            return
        from benchmate.tui.screens.choose import ChooseScreen  # noqa: PLC0415 - when needed

        self.push_screen(ChooseScreen(folders, self._glyphs), self._lay)

    def _lay(self, folder: Path | None) -> None:
        """Open a project and put it on the screen."""
        if folder is None:
            self.exit()
            return
        from benchmate.tui.desk import Desk  # noqa: PLC0415 - after the first paint
        from benchmate.workbench.opening import CannotOpenError, open_bench  # noqa: PLC0415

        try:
            self._bench = open_bench(folder)
        except CannotOpenError as error:
            self._give_up(str(error))
            return
        self._bench_screen.lay(Desk(self._bench, self._glyphs))
        self._welcome()

    def _welcome(self) -> None:
        """Show the cards over the bench at the first start of all."""
        from benchmate.workbench.first_run import tour_due  # noqa: PLC0415 - after the first paint

        if tour_due(os.environ):
            from benchmate.tui.screens.tour import TourScreen  # noqa: PLC0415 - once

            self.push_screen(TourScreen(self._glyphs))

    def _give_up(self, message: str) -> None:
        self.farewell = message
        self.exit(return_code=2)

    def on_unmount(self) -> None:
        """Let the project go, so that it can be opened again at once."""
        if self._bench is not None:
            self._bench.close()
