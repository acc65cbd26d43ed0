"""The words pane on the screen has the room that the check of folded words counts on."""

from pathlib import Path

from textual.pilot import Pilot

from benchmate.tui.desk import Desk
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.word_lines import NARROW, Room
from tests.tui.screens.test_order import find
from tests.tui.screens.test_walk import opened

DRAWN = {Room.ABOVE_DRAWING: 8, Room.ABOVE_LOW_DRAWING: 6, Room.NO_DRAWING: 0}
"""The rows of the drawing below the words: six are enough to draw a face whole."""


async def test_words_and_drawing_share_a_small_window(demo: Path) -> None:
    """At 80 x 24, for marks, for those of a sill that wait for a post, and for measuring."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        seen = {await _room(pilot, desk) for _ in range(5)}
        for what in ("south sill se finish", "se post foot as cut"):
            await find(pilot, what)
            seen |= {await _room(pilot, desk) for _ in range(2)}
    assert seen == set(Room)


async def _room(pilot: Pilot[None], desk: Desk) -> Room:
    """The room of the step in hand, as it is and as it is counted on; then on to the next."""
    room = desk.room(desk.words())
    await pilot.pause()
    screen = pilot.app.screen
    drawings = screen.query_one("#drawings")
    rows = drawings.size.height if drawings.display else 0
    assert screen.query_one("#words", WordsPane).content_size == (NARROW, room), desk.step.id
    assert rows == DRAWN[room], desk.step.id
    await pilot.press("down")
    return room
