"""Undo, redo and the history with the keyboard alone, across a restart of the program."""

from pathlib import Path

import pytest

from benchmate.layout.standing import State
from benchmate.store.keeper import Keeper
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.history import HistoryScreen
from benchmate.workbench.bench import Bench
from tests.tui.pictures import screen_text, settled
from tests.tui.screens.test_walk import SIZES, opened


def files(folder: Path) -> dict[Path, bytes]:
    """The project file and every progress file, byte for byte."""
    return {path: path.read_bytes() for path in folder.rglob("*.toml")}


@pytest.mark.parametrize("size", SIZES)
async def test_a_restart_takes_nothing_away(demo: Path, size: tuple[int, int]) -> None:
    """Tick and size, quit, start: u, u, then y and ctrl+y, each told where it was done."""
    before = files(demo)
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("space")
        desk.go_to("post-sw", "foot-tenon/as-cut")
        await pilot.press("m", "tab", "end", *["backspace"] * 10, *"5-3/8")
        await settled(pilot)
        await pilot.press("enter")
    after = files(demo)
    assert after != before

    async with opened(demo, size) as (pilot, desk):
        await pilot.press("u")
        assert "Undone: SW post, sizes at foot tenon." in screen_text(pilot.app)
        assert (desk.timber, desk.step.id) == ("post-sw", "foot-tenon/as-cut")
        await pilot.press("backspace")
        assert "Undone: SE post, tick on Foot tenon: far cheek line." in screen_text(pilot.app)
        assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
        assert files(demo) == before
        await pilot.press("u")
        assert "Nothing to undo." in screen_text(pilot.app)

    async with opened(demo, size) as (pilot, desk):
        await pilot.press("y")
        assert "Done again: SE post, tick on Foot tenon: far cheek line." in screen_text(pilot.app)
        assert desk.standing.state is State.TICKED
        await pilot.press("ctrl+y")
        assert "Done again: SW post, sizes at foot tenon." in screen_text(pilot.app)
        assert files(demo) == after
        await pilot.press("y")
        assert "Nothing to do again." in screen_text(pilot.app)


@pytest.mark.parametrize("size", SIZES)
async def test_the_history_leads_back_to_a_step(demo: Path, size: tuple[int, int]) -> None:
    """h, the days, down past a heading, enter; q and h close it."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("space", "u", "h")
        assert isinstance(pilot.app.screen, HistoryScreen)
        text = await settled(pilot)
        lines = [line for line in text.splitlines() if "far cheek" in line]
        assert "SE post: what was done" in text
        assert "undone" in lines[0]
        assert "2026-11-24 Tuesday" in text
        await pilot.press("down", "down", "enter")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.id == "foot-tenon/shoulder"
        for leave in ("q", "h", "ctrl+g"):
            await pilot.press("h", leave)
            assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.id == "foot-tenon/shoulder"


async def test_a_timber_without_a_history_says_so(demo: Path) -> None:
    """And enter on nothing stays."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        desk.take_timber("post-nw")
        await pilot.press("h")
        assert "nothing yet" in await settled(pilot)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, HistoryScreen)


async def test_a_torn_journal_is_told_on_the_screen(demo: Path) -> None:
    """The project opens, the ticks are there, and the history tells it above the rest."""
    (demo / "journal.jsonl").write_text("torn")
    async with opened(demo, (80, 24)) as (pilot, desk):
        assert desk.step.id == "foot-tenon/far-cheek"
        await pilot.press("h")
        text = " ".join((await settled(pilot)).split())
        assert "Line 1 of journal.jsonl cannot be read" in text
        assert "tick on Foot tenon: shoulder line" in text
        await pilot.press("q", "u")
        assert "Nothing to undo." in screen_text(pilot.app)


async def test_undo_on_an_empty_bench(demo: Path) -> None:
    """A project whose last timber was taken out gets it back."""
    bench = Bench(Keeper.open(demo))
    text = bench.project_text()
    bench.edit_project("all taken out", text[: text.index("[[timber]]")])
    bench.close()
    async with opened(demo, (80, 24)) as (pilot, desk):
        assert desk.empty
        await pilot.press("u")
        assert "Undone: all taken out." in await settled(pilot)
        assert desk.bench.project_text() == text
        assert not desk.empty
