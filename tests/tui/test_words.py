"""A step in words."""

import shutil
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.panes.words_pane import set_lines
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench

PROJECTS = Path(__file__).parents[1] / "projects"

WIDTH, WITH_DRAWING, WAITING, WITHOUT = 49, 7, 9, 15
"""The words pane's cells, and its rows at 80 x 24: with the drawing below it, with the lower one
of a step that waits, and without.
"""

NEEDED = {"", "again", "waits", "from", "set", "and", "on", "waste"}
"""What a framer must see without pressing a key: figure, hook, faces, waste side, what to wait for.
"""

ORDER = (
    *("", "again", "stop", "waits", "from", "set", "and", "or", "to", "on", "waste", "care"),
    *("also", "stick", "look", "type", "why", "what", "note", "ticked"),
)
"""The labels, what is needed first before what comes after."""


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


@pytest.mark.parametrize("timber", ["post-sw", "post-se", "sill-south", "plate-south"])
@pytest.mark.parametrize("whole", [False, True])
def test_what_keeps_one_off_the_wrong_side_comes_before_further_figures(
    desk: Desk, timber: str, *, whole: bool
) -> None:
    """Hook, faces, waste and what can hurt, then other figures, then the reasons."""
    desk.take_timber(timber)
    for place, step in enumerate(desk.walk.steps):
        desk.take_step(place)
        places = [ORDER.index(saying.label) for saying in desk.words(whole=whole)]
        assert sorted(places) == places, step.id
        assert places[0] == 0, step.id


def test_a_caution_comes_before_the_figure_beside(desk: Desk) -> None:
    """At the far cheek: never from the far face, and only then what comes off it."""
    labels = [saying.label for saying in desk.words()]
    assert labels.index("waste") < labels.index("care") < labels.index("also")
    assert labels.index("also") < labels.index("stick") < labels.index("why")


def test_a_stop_leaves_the_room_to_its_words(desk: Desk) -> None:
    """No drawing is made of what cannot be cut, so its rows go to the remedy."""
    assert not desk.wordy
    kept = desk.bench.sizes(desk.timber, desk.step)
    thin = Sizes(place=kept.place, measured=Measured(first=Length.inches(3)), as_cut=kept.as_cut)
    desk.set_sizes(thin)
    assert desk.wordy
    labels = [saying.label for saying in desk.words()]
    assert labels.index("stop") < labels.index("why")


def test_a_slant_says_how_the_square_is_set_and_where_its_waste_lies(tmp_path: Path) -> None:
    """At 80 x 24 both ends and the waste are whole, and the arm to strike along in sight."""
    folder = shutil.copytree(PROJECTS / "corner-brace", tmp_path / "corner")
    bench = Bench(Keeper.open(folder))
    desk = Desk(bench, UNICODE)
    desk.take_timber("brace")
    slants = [place for place, step in enumerate(desk.walk.steps) if step.setting]
    assert slants
    for place in slants:
        desk.take_step(place)
        words = desk.words()
        labels = [saying.label for saying in words]
        assert "waste" not in labels or labels.index("waste") < labels.index("on")
        needed = ("waits", "from") if desk.waiting else ("from", "to", "waste")
        last = max(at for at, saying in enumerate(words) if saying.label in needed)
        lines = len(set_lines(words[: last + 1], WIDTH))
        arm_and_blade = 0 if desk.waiting else 2
        assert lines + arm_and_blade <= WAITING - 1, desk.step.id
    bench.close()
