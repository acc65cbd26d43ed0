"""A stick found under size when its joint is measured, keyboard alone."""

from pathlib import Path

import pytest

from tests.tui.pictures import screen_text, settled
from tests.tui.screens.test_walk import opened


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_a_stick_found_three_eighths_under(demo: Path, size: tuple[int, int]) -> None:
    """Look the place up, type what it measures, see what moves; the line from the face stays.

    Drawn 7" and 6-5/8" in truth: the far cheek is still 3-1/2" from the South face, and what comes
    off beyond it is 3-1/8" and no more.
    """
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("slash", *"se post foot section")
        await settled(pilot)
        await pilot.press("enter")
        assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/section")
        await pilot.press("m", "end", *["backspace"] * 10, *"6-5/8")
        await settled(pilot)
        assert "6-5/8" in screen_text(pilot.app)
        await pilot.press("enter")
        await settled(pilot)
        kept = desk.bench.walk("post-se").progress.measured["foot-tenon"].first
        assert kept is not None
        assert kept.exact_text() == '6-5/8"'
        await pilot.press("n")
        assert desk.step.id == "foot-tenon/far-cheek"
        text = " ".join(screen_text(pilot.app).split())
        assert "from the South face, in towards the North face" in text
        figure = desk.figure()
        assert figure is not None
        assert (figure.whole, figure.numerator, figure.denominator) == (3, 1, 2)
        off = [each.value.exact_text() for each in desk.step.beside if "North" in each.words]
        assert off == ['3-1/8"']
        await pilot.press("u")
        await settled(pilot)
        back = desk.bench.walk("post-se").progress.measured["foot-tenon"].first
        assert back is not None
        assert back.exact_text() == '7-3/16"'
