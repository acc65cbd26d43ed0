"""Standing back from the screen: the figure from two paces, ticks and moves, and home again."""

from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.reader import ReaderScreen
from benchmate.tui.screens.stand_back import StandBackScreen
from benchmate.workbench.actions import Sizes
from tests.tui.pictures import screen_text, settled
from tests.tui.screens.test_walk import ALL_SIZES, opened


@pytest.mark.parametrize("size", ALL_SIZES)
async def test_stand_back_tick_three_and_come_home(demo: Path, size: tuple[int, int]) -> None:
    """Three ticks from two paces are on the disk, and the bench is at the fourth step."""
    async with opened(demo, size) as (pilot, desk):
        steps = [desk.step.id]
        await pilot.press("v")
        assert isinstance(pilot.app.screen, StandBackScreen)
        for _ in range(3):
            text = await settled(pilot)
            title = desk.step.title
            assert title in text or desk.figure() is None
            inked = [row for row in text.splitlines() if UNICODE.block * 2 in row]
            assert len(inked) >= 5
            await pilot.press("space")
            assert desk.walk.progress.tick(steps[-1]) is not None
            steps.append(desk.step.id)
        await pilot.press("v")
        assert isinstance(pilot.app.screen, BenchScreen)
        text = await settled(pilot)
        assert desk.step.id == steps[-1]
        assert desk.step.title in " ".join(text.split())
        assert len(set(steps)) == 4


@pytest.mark.parametrize("key", ["escape", "q", "v"])
async def test_it_moves_and_undoes_without_leaving(demo: Path, key: str) -> None:
    """Arrows, j and k, n, u and g, then home by any of three keys."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        at = desk.place
        await pilot.press("v", "down", "j", "right", "up")
        assert desk.place == at + 2
        await pilot.press("k", "left", "space", "u")
        assert desk.place == at
        assert desk.standing.tick is None
        await pilot.press("home", "pagedown")
        assert desk.place == 10
        await pilot.press("end", "n", "s", "g")
        assert isinstance(pilot.app.screen, StandBackScreen)
        await pilot.press(key)
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.title in " ".join(screen_text(pilot.app).split())


@pytest.mark.parametrize("size", ALL_SIZES)
async def test_the_digits_are_larger_than_on_the_bench(demo: Path, size: tuple[int, int]) -> None:
    """Twice the cells at the least."""
    async with opened(demo, size) as (pilot, _):
        bench = screen_text(pilot.app).count(UNICODE.block)
        await pilot.press("v")
        assert (await settled(pilot)).count(UNICODE.block) > 2 * bench


async def test_a_stop_shows_no_number_and_cannot_be_ticked(demo: Path) -> None:
    """STOP, the remedy, and a word to whoever presses space all the same."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        desk.go_to("post-se", "foot-tenon/section")
        kept = desk.bench.sizes("post-se", desk.step)
        thin = Measured(first=Length.inches(3))
        desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
        desk.go_to("post-se", "foot-tenon/reference-edge")
        await pilot.press("v")
        text = " ".join((await settled(pilot)).split())
        assert "To mend it" in text
        assert "Head tenon" not in text  # what comes next has a figure
        assert "from the South face, in towards" not in text
        await pilot.press("space")
        assert desk.standing.tick is None
        assert "Stop: this step cannot be ticked" in screen_text(pilot.app)


async def test_a_waiting_step_is_not_ticked_by_space(demo: Path) -> None:
    """It says what it waits for; o ticks it all the same."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        desk.go_to("sill-north", "ne-foot-mortise/start")
        await pilot.press("v", "space")
        assert desk.standing.tick is None
        assert "Not ticked: this waits for" in screen_text(pilot.app)
        await pilot.press("o")
        assert desk.walk.progress.tick("ne-foot-mortise/start") is not None


async def test_a_figure_that_changes_outside_changes_here(demo: Path) -> None:
    """A framer two paces away is not left with yesterday's number."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("v")
        before = desk.figure()
        project = demo / "project.toml"
        text = project.read_text("utf-8")
        assert 'set_back = "1-3/4"' in text
        project.write_text(text.replace('set_back = "1-3/4"', 'set_back = "2"'), "utf-8")
        screen = pilot.app.screen
        assert isinstance(screen, StandBackScreen)
        screen.look()
        await pilot.pause()
        assert desk.figure() != before
        assert "Changed outside, and read again" in screen_text(pilot.app)


async def test_the_step_is_read_in_full(demo: Path) -> None:
    """Enter opens the reader over the page, and closing it comes back to the page."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press("v", "enter")
        assert isinstance(pilot.app.screen, ReaderScreen)
        await pilot.press("q")
        assert isinstance(pilot.app.screen, StandBackScreen)


async def test_its_footer_can_be_clicked(demo: Path) -> None:
    """The mouse ticks and goes home too."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("v")
        step = desk.step.id
        footer = (await settled(pilot)).splitlines()[23]
        await pilot.click(offset=(footer.index("tick"), 23))
        assert desk.walk.progress.tick(step) is not None
        footer = (await settled(pilot)).splitlines()[23]
        await pilot.click(offset=(footer.index("bench"), 23))
        assert isinstance(pilot.app.screen, BenchScreen)
