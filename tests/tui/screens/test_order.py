"""The order of work on the screen: waiting, out of order, the next best job, by keyboard alone."""

from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.layout.standing import State
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from tests.tui.pictures import screen_text
from tests.tui.screens.test_walk import opened


def words(pilot: Pilot[None]) -> str:
    """The screen as one line of words."""
    return " ".join(screen_text(pilot.app).split())


async def find(pilot: Pilot[None], what: str) -> None:
    """Look something up and go there."""
    await pilot.press("slash", *what, "enter")


def ticked(desk: Desk, timber: str, step: str) -> bool:
    """Whether a step is ticked and true."""
    return desk.bench.walk(timber).standing(step).state is State.TICKED


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_a_framer_waits_for_a_tenon_or_does_not(demo: Path, size: tuple[int, int]) -> None:
    """Space refuses and tells, o ticks, g goes to the tenon; its tick frees the mortise."""
    async with opened(demo, size) as (pilot, desk):
        await find(pilot, "south sill se finish")
        assert desk.step.id == "se-foot-mortise/finish"
        assert f"{UNICODE.waiting} Finish line" in words(pilot)
        assert "waits for SE post: foot tenon" in screen_words(pilot)

        await pilot.press("space")
        assert not ticked(desk, "sill-south", "se-foot-mortise/finish")
        assert "Press o to tick it all the same" in words(pilot)

        await pilot.press("o")
        assert ticked(desk, "sill-south", "se-foot-mortise/finish")
        assert desk.step.id == "se-foot-mortise/near-side"
        assert "Ticked out of order" in words(pilot)

        await pilot.press("g")
        assert desk.step.id == "sw-foot-mortise/finish", "a mark to look at again comes first"
        await pilot.press("space", "b", "g")
        assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
        assert "South sill waits for it." in words(pilot)

        await find(pilot, "se post foot as cut")
        assert desk.step.id == "foot-tenon/as-cut"
        await pilot.press("space")
        assert desk.standing.tick is None, "the tenon is not cut yet"
        await pilot.press("o")
        await find(pilot, "south sill se near side")
        assert "measure the tenon as cut" not in words(pilot)
        assert f"{UNICODE.waiting} " not in words(pilot)
        await pilot.press("space")
        assert ticked(desk, "sill-south", "se-foot-mortise/near-side")


def screen_words(pilot: Pilot[None]) -> str:
    """The words pane alone as one line of words."""
    lines = screen_text(pilot.app).splitlines()
    edge = max(line.find("\u2502") for line in lines)
    return " ".join(" ".join(line[edge + 1 :] for line in lines).split())


async def test_the_next_best_job_leaves_the_list_of_timbers(demo: Path) -> None:
    """At 80 x 24 the steps come back, with the one gone to among them."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("tab", "end", "g")
        assert desk.step.id == "sw-foot-mortise/finish"
        assert "! Finish line" in words(pilot)
        await pilot.press("down")
        assert desk.step.id == "sw-foot-mortise/near-side"
