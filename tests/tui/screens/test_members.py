"""The list of timbers with the keyboard alone."""

from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.members import MembersScreen
from benchmate.workbench.bench import Bench
from tests.tui.pictures import settled
from tests.tui.screens.test_walk import SIZES, opened


@pytest.mark.parametrize("size", SIZES)
async def test_timbers_are_grouped_filtered_and_taken_up(demo: Path, size: tuple[int, int]) -> None:
    """M, g, s, / and words, escape, enter; the timber in hand stays in hand."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("M")
        text = await settled(pilot)
        assert "4 posts: 2 right, 2 left; 1 cut, 1 begun" in text
        assert "L2CFA" in text
        assert "state  begun" in text
        assert "a assembled" in text
        for name in ("bent", "wall", "progress", "nothing"):
            await pilot.press("g")
            text = await settled(pilot)
            assert f"timbers by {name}, in file order" in text
            assert "SE post: post" in text
        await pilot.press("s")
        assert "by next best job" in await settled(pilot)
        await pilot.press("slash", *"plate nroth")
        text = await settled(pilot)
        assert "North plate" in text
        assert "SE post" not in text
        await pilot.press("enter", "enter")
        await settled(pilot)
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.walk.timber.name == "North plate"


@pytest.mark.parametrize("size", SIZES)
async def test_signs_are_kept_undone_and_survive_a_restart(
    demo: Path, size: tuple[int, int]
) -> None:
    """c, f and a sign, a second press takes off, u and y turn it, the bench's history tells it."""
    async with opened(demo, size) as (pilot, _):
        await pilot.press("M", "f")
        assert "SE post: fitted. It is not cut yet." in await settled(pilot)
        await pilot.press("a", "a", "u")
        text = await settled(pilot)
        assert "Undone: SE post, no longer assembled." in text
        assert "l--FA" in text
        await pilot.press("y", "c")
        text = await settled(pilot)
        assert "checked by a second person" in text
        assert "l2-F-" in text or "l!-F-" in text
        await pilot.press("escape", "h")
        assert "checked by a second person" in await settled(pilot)
    bench = Bench(Keeper.open(demo))
    assert [each.what for each in bench.walk("post-se").progress.signed] == ["fitted", "checked"]
    bench.close()


async def test_escape_clears_the_words_first(demo: Path) -> None:
    """Then it leaves, and nothing was changed."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        step = desk.step.id
        await pilot.press("M", "slash", *"zebra")
        assert "no timber holds all of these words" in await settled(pilot)
        await pilot.press("c", "escape")
        text = await settled(pilot)
        assert isinstance(pilot.app.screen, MembersScreen)
        assert "SE post" in text
        await pilot.press("escape")
        await settled(pilot)
        assert isinstance(pilot.app.screen, BenchScreen)
        assert (desk.timber, desk.step.id) == ("post-se", step)


async def test_enter_goes_to_the_next_ready_step_of_the_timber_in_hand(demo: Path) -> None:
    """Also where another of its steps was in hand."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        ready = desk.step.id
        await pilot.press("down", "down", "M", "enter")
        await settled(pilot)
        assert desk.step.id == ready


async def test_a_project_open_elsewhere_is_not_signed(demo: Path) -> None:
    """Read only: told, and nothing kept."""
    other = Bench(Keeper.open(demo))
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("M", "f")
        assert "Not kept" in await settled(pilot)
        assert not desk.walk.progress.signed
    other.close()
