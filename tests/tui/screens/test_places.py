"""Where the timber stands: the key beside the lists, and the page of its own."""

from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.where import WhereScreen
from tests.tui.pictures import screen_text
from tests.tui.screens.test_walk import opened

PLACED = """
[[timber]]
id = "girt"
name = "Loft girt"
kind = "girt"
section = "post"
first_face = "up"
second_face = "south"
reference_end = "west"
at = { up = "6'", north = "0" }
reference_end_at = "0"
far_end_at = "shed length"
"""


@pytest.fixture
def placed(demo: Path) -> Path:
    """The demo with one more timber, which has a place."""
    path = demo / "project.toml"
    path.write_text(path.read_text() + PLACED)
    return demo


def key_shown(pilot: Pilot[None]) -> bool:
    """Whether the key of the frame stands beside the steps."""
    key = pilot.app.screen.query_one("#key")
    return key.display and key.size.height > 0


async def test_a_project_without_places_says_so(demo: Path) -> None:
    """There is nothing to draw, so no key is shown and w says what is missing."""
    async with opened(demo, (120, 40)) as (pilot, _):
        assert not key_shown(pilot)
        await pilot.press("w")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert "No timber of this project has a place" in screen_text(pilot.app)


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_a_timber_is_taken_up_from_where_it_stands(
    placed: Path, size: tuple[int, int]
) -> None:
    """w, the last timber, enter; b goes back to the one in hand before."""
    async with opened(placed, size) as (pilot, desk):
        await pilot.press("w")
        assert isinstance(pilot.app.screen, WhereScreen)
        assert "give it at or incline" in " ".join(screen_text(pilot.app).split())
        await pilot.press("end")
        text = screen_text(pilot.app)
        assert "Loft girt: girt" in text
        assert 'from 0" east to 12\' 4" east.' in " ".join(text.split())
        await pilot.press("enter")
        assert (desk.timber, desk.step.id) == ("girt", "stick/crown")
        await pilot.press("b")
        assert desk.timber == "post-se"
        await pilot.press("w", "q")
        assert desk.timber == "post-se"


@pytest.mark.parametrize(
    ("size", "shown"), [((80, 40), False), ((120, 30), False), ((120, 36), True), ((200, 60), True)]
)
async def test_the_key_is_shown_where_there_is_room(
    placed: Path, size: tuple[int, int], *, shown: bool
) -> None:
    """In a window of 100 columns and 36 rows or more; it follows the timber in hand."""
    async with opened(placed, size) as (pilot, desk):
        desk.go_to("girt", "")
        await pilot.press("f")
        assert key_shown(pilot) is shown
        assert ("plan" in screen_text(pilot.app)) is shown


async def test_the_key_goes_and_comes_with_the_size_of_the_window(placed: Path) -> None:
    """Making the window lower gives the room back to the steps."""
    async with opened(placed, (120, 40)) as (pilot, _):
        assert key_shown(pilot)
        await pilot.resize_terminal(120, 32)
        await pilot.pause()
        assert not key_shown(pilot)
        await pilot.resize_terminal(120, 40)
        await pilot.pause()
        assert key_shown(pilot)
