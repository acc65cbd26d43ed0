"""A step in words."""

import pytest

from benchmate.tui.desk import Desk
from benchmate.tui.panes.words_pane import set_lines

WIDTH, WITH_DRAWING, WAITING, WITHOUT = 49, 7, 9, 15
"""The words pane's cells, and its rows at 80 x 24: with the drawing below it, with the lower one
of a step that waits, and without.
"""

NEEDED = {"", "again", "waits", "from", "set", "and", "on", "waste"}
"""What a framer must see without pressing a key: figure, hook, faces, waste side, what to wait for.
"""


@pytest.mark.parametrize("timber", ["post-sw", "post-se", "sill-south", "plate-south"])
def test_nothing_needed_for_a_cut_is_folded_away_in_a_small_window(desk: Desk, timber: str) -> None:
    """At 80 x 24 every step shows these whole; the list of a back-check goes on with enter."""
    desk.take_timber(timber)
    for place, step in enumerate(desk.walk.steps):
        if step.id == "stick/back-check":
            continue
        desk.take_step(place)
        words = desk.words()
        last = max(at for at, saying in enumerate(words) if saying.label in NEEDED)
        room = WITHOUT if desk.wordy else WAITING if desk.waiting else WITH_DRAWING
        more = len(set_lines(words, WIDTH)) > room
        assert len(set_lines(words[: last + 1], WIDTH)) <= room - more, step.id
