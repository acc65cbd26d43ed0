"""Looking something up over the bench."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import Input

from benchmate.tui.app import BenchmateApp
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.find import BEFORE, NOTHING, FindScreen
from tests.tui.pictures import screen_text, settled


@asynccontextmanager
async def opened(demo: Path, size: tuple[int, int]) -> AsyncIterator[tuple[Pilot[None], Desk]]:
    """The program with the look-up open."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        await settled(pilot)
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        await pilot.press("slash")
        assert isinstance(app.screen, FindScreen)
        yield pilot, screen.desk


def one_line(pilot: Pilot[None]) -> str:
    """The screen as one line of words."""
    return " ".join(screen_text(pilot.app).split())


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_the_answer_is_big_while_typing_and_slips_are_looked_past(
    demo: Path, size: tuple[int, int]
) -> None:
    """Asked mid-cut with cold fingers."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press(*"se pots releif")
        await settled(pilot)
        assert "SE post: foot tenon: relief line" in one_line(pilot)
        await pilot.press("enter")
        assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/reference-edge")


async def test_every_timber_is_found_once_the_index_has_grown(demo: Path) -> None:
    """The last of them too, though the screen was open at once."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        last = desk.bench.timbers[-1]
        await pilot.press(*last.id.replace("-", " "))
        await settled(pilot)
        await pilot.press("enter")
        assert desk.timber == last.id


async def test_what_was_looked_up_is_offered_again(demo: Path) -> None:
    """The latest first, each once, as it stands now."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        for words in ("se post relief", "floor top", "se post relief", "sw post head shoulder"):
            await pilot.press(*words, "enter", "slash")
        assert [hit.title.partition(":")[0] for hit in desk.looked_up] == [
            "SW post",
            "SE post",
            "floor top",
        ]
        assert BEFORE in one_line(pilot)
        await pilot.press("down", "enter")
        assert desk.timber == "post-se"


async def test_nothing_found_says_what_to_do(demo: Path) -> None:
    """No blank screen."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press(*"zebra")
        await settled(pilot)
        assert NOTHING in one_line(pilot)


async def test_keys_typed_ahead_are_not_lost(demo: Path) -> None:
    """Those that come before the line is ready to type in go into it."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await settled(pilot)
        bench = app.screen
        assert isinstance(bench, BenchScreen)
        assert bench.desk is not None
        done = bench.desk.walk.done
        bench.action_find()
        await pilot.press(*"se", "space", *"post")
        assert app.screen.query_one(Input).value == "se post"
        assert bench.desk.walk.done == done
