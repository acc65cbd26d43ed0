"""Rolling the timber: round both ways, near and far, and back at the bench at the step in hand."""

from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.roll import RollScreen
from benchmate.workbench.actions import Sizes
from tests.tui.pictures import screen_text, settled
from tests.tui.screens.test_walk import ALL_SIZES, opened


@pytest.mark.parametrize("size", ALL_SIZES)
async def test_all_the_way_round_a_post_both_ways(demo: Path, size: tuple[int, int]) -> None:
    """Four times on and four times back: the same picture, and the same step in hand."""
    async with opened(demo, size) as (pilot, desk):
        step = desk.step.id
        await pilot.press("r")
        assert isinstance(pilot.app.screen, RollScreen)
        first = await settled(pilot)
        pose = desk.walk.layout.stick.pose
        for key in ("f", "d"):
            seen = set()
            for _ in range(4):
                await pilot.press(key)
                text = await settled(pilot)
                words = pose.words(pilot.app.screen.rolling.face)
                assert f"{words} from outside" in text
                assert "REFERENCE ARRIS" in text or size == (80, 24)
                seen.add(words)
            assert len(seen) == 4
            assert text == first
        await pilot.press("F", "f", "escape")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.id == step


@pytest.mark.parametrize("size", ALL_SIZES)
async def test_the_view_follows_and_ticks(demo: Path, size: tuple[int, int]) -> None:
    """Space ticks and goes on; arrows and n turn to a face of the next step; r goes home to it."""
    async with opened(demo, size) as (pilot, desk):
        before = desk.step.id
        await pilot.press("r", "space")
        assert desk.walk.progress.tick(before) is not None
        screen = pilot.app.screen
        assert isinstance(screen, RollScreen)
        for key in ("down", "n", "j", "k", "right"):
            await pilot.press(key)
            if desk.step.faces and not screen.rolling.ends:
                assert screen.rolling.face in desk.step.faces
            assert desk.step.title in " ".join((await settled(pilot)).split())
        await pilot.press("r")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.step.title in " ".join(screen_text(pilot.app).split())


@pytest.mark.parametrize("size", ALL_SIZES)
async def test_it_zooms_to_the_joint_and_back(demo: Path, size: tuple[int, int]) -> None:
    """z changes about; plus is near, minus is the whole length."""
    async with opened(demo, size) as (pilot, _):
        await pilot.press("r")
        whole = await settled(pilot)
        await pilot.press("z")
        near = await settled(pilot)
        assert near != whole
        await pilot.press("plus")
        assert await settled(pilot) == near
        await pilot.press("minus")
        assert await settled(pilot) == whole


async def test_the_ends_are_one_key_away(demo: Path) -> None:
    """In a small window; in a wide one they stand beside the faces."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press("r", "e")
        text = await settled(pilot)
        assert "S 1" in text
        assert "from outside" not in text
        await pilot.press("e")
        assert "from outside" in await settled(pilot)
    async with opened(demo, (200, 60)) as (pilot, _):
        await pilot.press("r")
        text = await settled(pilot)
        assert text.count("S 1") == 2
        assert text.count(" arris ") == 4
        assert "REFERENCE ARRIS" in text


async def test_a_stop_shows_neither_line_nor_figure(demo: Path) -> None:
    """The word, and how to mend it."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        desk.go_to("post-se", "foot-tenon/section")
        kept = desk.bench.sizes("post-se", desk.step)
        thin = Measured(first=Length.inches(3))
        desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
        desk.go_to("post-se", "foot-tenon/far-cheek")
        await pilot.press("r")
        text = await settled(pilot)
        assert "To mend it" in " ".join(text.split())
        assert "from outside" not in text


async def test_it_keeps_an_eye_on_the_files(demo: Path) -> None:
    """A broken file is told of, and the figures are called old."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press("r")
        (demo / "project.toml").write_text("name = ", "utf-8")
        screen = pilot.app.screen
        assert isinstance(screen, RollScreen)
        screen.look()
        await pilot.pause()
        text = screen_text(pilot.app)
        assert "OLD FIGURES" in text
        assert "Shown as last read." in " ".join(text.split())
