"""The cards of the first start."""

import os
from pathlib import Path

import pytest

from benchmate.store.seen import state_folder
from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.tour import TourScreen
from benchmate.tui.tour_cards import CARDS
from tests.tui.pictures import screen_text, settled


@pytest.fixture
def newcomer() -> None:
    """One who has never started the program."""
    for mark in state_folder(os.environ).iterdir():
        mark.unlink()


def shown(app: BenchmateApp) -> str:
    """The screen as one line of words."""
    return " ".join(screen_text(app).split())


@pytest.mark.usefixtures("newcomer")
@pytest.mark.parametrize("size", [(60, 16), (80, 24), (120, 40)])
async def test_five_cards_at_the_first_start_and_never_again(
    demo: Path, size: tuple[int, int]
) -> None:
    """Each is whole in the smallest window; on, back, and done with the last."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        await settled(pilot)
        assert isinstance(app.screen, TourScreen)
        for place, card in enumerate(CARDS):
            text = shown(app)
            assert f"{place + 1} of 5" in text
            assert "enter next" in text or (place == 4 and "enter begin" in text)
            assert "q close" in text
            for words in (card.title, card.lead, card.more):
                assert words in text
            await pilot.press("space")
            await settled(pilot)
        assert isinstance(app.screen, BenchScreen)
        assert app.screen.desk is not None
        assert app.screen.desk.step.id == "foot-tenon/far-cheek"
    again = BenchmateApp(str(demo), UNICODE)
    async with again.run_test(size=size) as pilot:
        await settled(pilot)
        assert isinstance(again.screen, BenchScreen)


@pytest.mark.usefixtures("newcomer")
async def test_one_may_go_back_and_leave(demo: Path) -> None:
    """Back from the first stays there; escape is enough of it."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await settled(pilot)
        await pilot.press("b", "enter", "enter", "b")
        await settled(pilot)
        assert CARDS[1].title in shown(app)
        await pilot.press("escape")
        await settled(pilot)
        assert isinstance(app.screen, BenchScreen)


async def test_who_has_seen_them_starts_at_the_bench(demo: Path) -> None:
    """As every other test does."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await settled(pilot)
        assert isinstance(app.screen, BenchScreen)
