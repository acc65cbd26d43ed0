"""Writing sheets from the screen, with the keyboard alone."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.sheets import SheetsScreen
from tests.tui.pictures import screen_text


@asynccontextmanager
async def opened(demo: Path, size: tuple[int, int]) -> AsyncIterator[Pilot[None]]:
    """The program open on a project, with the sheets over the bench."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        await pilot.press("p")
        assert isinstance(app.screen, SheetsScreen)
        yield pilot


def words_on(pilot: Pilot[None]) -> str:
    """What the screen says, on one line."""
    return " ".join(screen_text(pilot.app).split())


@pytest.mark.parametrize("size", [(80, 24), (120, 40), (200, 60)])
async def test_enter_writes_this_timber_s(demo: Path, size: tuple[int, int]) -> None:
    """Two keys from the bench, and it is said where they are."""
    async with opened(demo, size) as pilot:
        assert "Sheets to take along" in words_on(pilot)
        assert "The whole frame: 8 timbers" in words_on(pilot)
        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
        assert "3 files written into" in words_on(pilot)
        assert len(list((demo / "sheets").iterdir())) == 3


async def test_the_whole_frame_into_a_folder_typed(demo: Path) -> None:
    """Down for the frame, tab for the folder; enter there writes too."""
    async with opened(demo, (120, 40)) as pilot:
        await pilot.press("down", "tab", "end", *"-b", "enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
        assert (demo / "sheets-b" / "all_timbers.html").is_file()


async def test_what_is_in_the_way_keeps_the_screen(demo: Path) -> None:
    """It says why; escape leaves, and nothing was written."""
    (demo / "sheets").mkdir()
    (demo / "sheets" / "frame_schedule.txt").write_text("mine", "utf-8")
    async with opened(demo, (80, 24)) as pilot:
        await pilot.press("down", "enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, SheetsScreen)
        assert "Not written: " in words_on(pilot)
        await pilot.press("q")
        assert isinstance(pilot.app.screen, BenchScreen)
    assert len(list((demo / "sheets").iterdir())) == 1
