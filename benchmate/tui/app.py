"""The full-screen program: paints first, then reads the project and lays it on the screen."""

from __future__ import annotations

import asyncio
import os
import signal
from pathlib import Path
from typing import TYPE_CHECKING

from textual import on
from textual.app import App

from benchmate.tui.screens.bench import BenchScreen

if TYPE_CHECKING:
    from textual.screen import Screen

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.shop import Shop
    from benchmate.workbench.bench import Bench

SIGNALS = (signal.SIGTERM, signal.SIGHUP)
"""The signals that must leave a clean terminal."""


class BenchmateApp(App[None]):
    """The companion. `farewell` is what to print once the terminal is back, or empty.

    With `new` it opens on the form for a new frame, and on no project before that is made.
    """

    CSS_PATH = "benchmate.tcss"
    TITLE = "benchmate"
    ENABLE_COMMAND_PALETTE = False

    def __init__(self, project: str, glyphs: Glyphs, *, new: bool = False) -> None:
        super().__init__()
        self._new = new
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

        if self._new:
            self._set_out()
            return
        try:
            folders = choices(self._project, Path.cwd(), os.environ)
        except NoProjectError as error:
            self._give_up(str(error))
            return
        if len(folders) == 1:
            self._lay(folders[0])
            return
        from benchmate.tui.screens.choose import ChooseScreen  # noqa: PLC0415 - when needed

        self.push_screen(ChooseScreen(folders, self._shop(), self._glyphs), self._lay)

    def _shop(self) -> Shop:
        from benchmate.tui.shop import Shop  # noqa: PLC0415 - when needed

        return Shop(Path.cwd(), os.environ)

    @on(BenchScreen.NewFrame)
    def _set_out(self) -> None:
        """Set a new frame out, and lay it on the bench."""
        from benchmate.tui.outset_form import OutsetForm  # noqa: PLC0415 - when needed
        from benchmate.tui.screens.outset import OutsetScreen  # noqa: PLC0415

        screen = OutsetScreen(OutsetForm(self._shop().home), self._glyphs)
        self.push_screen(screen, self._made if self._bench is None else self._change)

    @on(BenchScreen.Projects)
    def _choose(self) -> None:
        """Choose another project, or make one."""
        from benchmate.tui.screens.choose import ChooseScreen  # noqa: PLC0415 - when needed

        shop = self._shop()
        screen = ChooseScreen(shop.projects(), shop, self._glyphs, leave="back")
        self.push_screen(screen, self._change)

    def _made(self, folder: Path | None) -> None:
        """Lay the first project of this run on the bench, new as it is."""
        self._lay(folder)
        if folder is not None and self._bench is not None:
            self._bench_screen.tell(self._told(self._bench))

    def _told(self, bench: Bench) -> str:
        from benchmate.tui.telling import opened  # noqa: PLC0415 - after the first paint

        return opened(bench)

    def _change(self, folder: Path | None) -> None:
        """Put another project on the bench; one that cannot be opened leaves the old one there."""
        if folder is None or (self._bench and folder.resolve() == self._bench.folder.resolve()):
            return
        from benchmate.workbench.opening import CannotOpenError, open_bench  # noqa: PLC0415
        from benchmate.workbench.shelf import NoProjectError, to_open  # noqa: PLC0415

        try:
            bench = open_bench(to_open(folder, os.environ))
        except (CannotOpenError, NoProjectError) as error:
            self._bench_screen.tell(f"Not opened: {error}", warning=True)
            return
        if self._bench is not None:
            self._bench.close()
        self._put(bench)
        self._bench_screen.tell(self._told(bench))

    def _lay(self, folder: Path | None) -> None:
        """Open a project and put it on the screen."""
        if folder is None:
            self.exit()
            return
        from benchmate.workbench.opening import CannotOpenError, open_bench  # noqa: PLC0415

        try:
            bench = open_bench(folder)
        except CannotOpenError as error:
            self._give_up(str(error))
            return
        self._put(bench)
        self._welcome()

    def _put(self, bench: Bench) -> None:
        from benchmate.tui.desk import Desk  # noqa: PLC0415 - after the first paint

        self._bench = bench
        self._bench_screen.lay(Desk(bench, self._glyphs))

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
