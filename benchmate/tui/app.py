"""The full-screen program: paints first, then reads the project and lays it on the screen."""

from __future__ import annotations

import asyncio
import os
import signal
from pathlib import Path
from typing import TYPE_CHECKING

from textual import on
from textual.app import App
from textual.filter import NoColor

from benchmate.tui.figure_fonts import BLOCK
from benchmate.tui.looks import DARK, NONE, OWN_THEMES, THEMES
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.screens.bench import BenchScreen

if TYPE_CHECKING:
    from collections.abc import Sequence

    from textual.filter import LineFilter
    from textual.screen import Screen

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.shop import Shop
    from benchmate.workbench.bench import Bench
    from benchmate.workbench.preferences import Found

SIGNALS = (signal.SIGTERM, signal.SIGHUP)
"""The signals that must leave a clean terminal."""


class BenchmateApp(App[None]):
    """The companion. `farewell` is what to print once the terminal is back, or empty.

    With `new` it opens on the form for a new frame, and on no project before that is made.
    `colours` are those of the framer's settings, `fixed` what goes before them, by name.
    """

    CSS_PATH = "benchmate.tcss"
    TITLE = "benchmate"
    ENABLE_COMMAND_PALETTE = False

    def __init__(
        self,
        project: str,
        glyphs: Glyphs,
        *,
        new: bool = False,
        colours: str = "",
        fixed: str = "",
    ) -> None:
        super().__init__()
        self.digits = BLOCK
        self._colours, self._fixed = DARK, fixed
        self._found: Found | None = None
        for theme in OWN_THEMES:
            self.register_theme(theme)
        self._colour(colours)
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

    def get_line_filters(self) -> Sequence[LineFilter]:
        """The filters of what is painted; without colours, one more that takes them off."""
        filters = super().get_line_filters()
        return (*filters, NoColor()) if self._colours == NONE else filters

    def _colour(self, colours: str) -> None:
        """Paint in colours by their word, unless the environment says which."""
        if not self._fixed and colours in THEMES and colours != self._colours:
            self._colours = colours
            self.theme = THEMES[colours]

    def _look(self, colours: str, digits: str) -> None:
        """Show colours and a style of the big digits, on every screen there is."""
        self._colour(colours)
        if digits != self.digits:
            self.digits = digits
            for screen in self.screen_stack:
                for pane in screen.query(FigurePane):
                    pane.restyle()

    def _prefer(self) -> None:
        """Read the framer's settings, and look as they say."""
        from benchmate.workbench.preferences import find_preferences  # noqa: PLC0415 - after paint

        self._found = found = find_preferences(os.environ)
        word = found.preferences.word
        self._look(word("colours") or DARK, word("digits") or BLOCK)

    def on_choose_screen_settings(self) -> None:
        """Show the settings from the list of projects too, whose screen is not imported here."""
        self._settings()

    @on(BenchScreen.Settings)
    def _settings(self) -> None:
        """Show the framer's own settings, as their file has them now."""
        from benchmate.tui.preferences_form import NO_PROJECT, PreferencesForm  # noqa: PLC0415
        from benchmate.tui.screens.preferences import PreferencesScreen  # noqa: PLC0415
        from benchmate.workbench.preferences import find_preferences  # noqa: PLC0415

        project = self._bench.project if self._bench is not None else NO_PROJECT
        form = PreferencesForm(find_preferences(os.environ), project, self._fixed)

        def kept(folder: Path | None) -> None:
            if folder is not None:
                self._preferred(form.found)

        self.push_screen(PreferencesScreen(form, self._glyphs, self._look), kept)

    def _preferred(self, found: Found) -> None:
        """Go by settings that have just been kept."""
        self._found = found
        if self._bench is not None:
            self._bench.prefer(found.preferences)
            told = found.trouble or f"Your settings are kept in {found.path}."
            self._bench_screen.take_up(told, warning=bool(found.trouble))

    def _signalled(self, number: int) -> None:
        self.exit(return_code=128 + number)

    def _open(self) -> None:
        """Find the project meant; ask if there are several."""
        from benchmate.workbench.shelf import NoProjectError, choices  # noqa: PLC0415 - after paint

        self._prefer()
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

        screen = OutsetScreen(OutsetForm(self._shop().home, self._shop().own), self._glyphs)
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
        found = self._found
        if found is not None:
            bench.prefer(found.preferences)
        desk = Desk(bench, self._glyphs)
        self._bench_screen.lay(desk)
        if found is not None and found.trouble:
            told = " ".join(filter(None, (desk.greeting(), found.trouble)))
            self._bench_screen.tell(told, warning=True)

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
