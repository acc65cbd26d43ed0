"""Choosing from a list."""

import pytest

from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.menu import MenuScreen
from benchmate.workbench.edit_choices import Choice, Choices
from tests.tui.pictures import screen_text

LISTED = Choices("What?", (Choice("One", "first", None), Choice("Two", "", None)))


@pytest.mark.parametrize(
    ("keys", "answer"), [(["enter"], 0), (["down", "enter"], 1), (["e"], None), (["q"], None)]
)
async def test_one_is_chosen_or_none(keys: list[str], answer: int | None) -> None:
    """By its place; the key that opened the list closes it."""
    app = BenchmateApp("nothing-here", UNICODE)
    answers: list[int | None] = []
    app._open = lambda: None  # type: ignore[method-assign] # no project is needed
    async with app.run_test(size=(80, 24)) as pilot:
        app.push_screen(MenuScreen(LISTED, UNICODE), answers.append)
        await pilot.pause()
        assert "first" in screen_text(app)
        await pilot.press(*keys)
        await pilot.pause()
    assert answers == [answer]
