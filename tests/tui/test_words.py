"""A step in words."""

import shutil
from collections.abc import Iterator
from itertools import product
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.word_lines import NARROW, Room, room_for, rows_whole, set_lines
from benchmate.tui.words import Saying, sayings
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.jobs import comes_first, waits_in_brief

PROJECTS = Path(__file__).parents[1] / "projects"

NEEDED = {"", "again", "waits", "from", "set", "and", "on", "waste"}
"""What a framer must see without pressing a key: figure, hook, faces, waste side, what to wait for.
"""

ORDER = (
    *("", "again", "stop", "waits", "from", "set", "and", "or", "to", "on", "waste", "care"),
    *("also", "stick", "look", "type", "why", "what", "note", "ticked"),
)
"""The labels, what is needed first before what comes after."""

SHORT = tuple({"on": "waste", "waste": "on"}.get(label, label) for label in ORDER)
"""The same where there is little room."""


def folded(words: tuple[Saying, ...], rows: int, labels: set[str]) -> set[str]:
    """Which of some sayings the words pane does not show whole, by their labels."""
    whole = rows_whole(set_lines(words, NARROW), NARROW, rows)
    ends = {
        each.label: len(set_lines(words[:end], NARROW)) for end, each in enumerate(words, start=1)
    }
    return {label for label, end in ends.items() if label in labels and end > whole}


@pytest.mark.parametrize("timber", ["post-sw", "post-se", "sill-south", "plate-south"])
def test_nothing_needed_for_a_cut_is_folded_away_in_a_small_window(desk: Desk, timber: str) -> None:
    """At 80 x 24 every step shows these whole; the list of a back-check goes on with enter."""
    desk.take_timber(timber)
    for place, step in enumerate(desk.walk.steps):
        if step.id == "stick/back-check":
            continue
        desk.take_step(place)
        words = desk.words()
        assert not folded(words, desk.room(words), NEEDED), step.id


@pytest.mark.parametrize("timber", ["post-sw", "post-se", "sill-south", "plate-south"])
@pytest.mark.parametrize("whole", [False, True])
def test_what_keeps_one_off_the_wrong_side_comes_before_further_figures(
    desk: Desk, timber: str, *, whole: bool
) -> None:
    """Hook, faces, waste and what can hurt, then other figures, then the reasons.

    Where a step waits the room is short, and its faces come after its waste.
    """
    desk.take_timber(timber)
    for place, step in enumerate(desk.walk.steps):
        desk.take_step(place)
        short = bool(desk.waiting) and not whole
        order = SHORT if short else ORDER
        places = [order.index(saying.label) for saying in desk.words(whole=whole)]
        assert sorted(places) == places, step.id
        assert places[0] == 0, step.id


def test_a_caution_comes_before_the_figure_beside(desk: Desk) -> None:
    """At the far cheek: never from the far face, and only then what comes off it."""
    labels = [saying.label for saying in desk.words()]
    assert labels.index("waste") < labels.index("care") < labels.index("also")
    assert labels.index("also") < labels.index("stick") < labels.index("why")


def test_a_stop_leaves_the_room_to_its_words(desk: Desk) -> None:
    """No drawing is made of what cannot be cut, so its rows go to the remedy."""
    assert desk.room(desk.words()) is not Room.NO_DRAWING
    kept = desk.bench.sizes(desk.timber, desk.step)
    thin = Sizes(place=kept.place, measured=Measured(first=Length.inches(3)), as_cut=kept.as_cut)
    desk.set_sizes(thin)
    assert desk.room(desk.words()) is Room.NO_DRAWING
    labels = [saying.label for saying in desk.words()]
    assert labels.index("stop") < labels.index("why")


def shipped() -> list[Path]:
    """Every project there is: the demos, and those of the tests."""
    found = (*(PROJECTS.parents[1] / "projects").iterdir(), *PROJECTS.iterdir())
    return sorted(each for each in found if (each / "project.toml").exists())


@pytest.fixture(params=shipped(), ids=lambda folder: folder.name)
def any_desk(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Desk]:
    """A desk on a copy of each project in turn."""
    bench = Bench(Keeper.open(shutil.copytree(request.param, tmp_path / "copy")))
    yield Desk(bench, UNICODE)
    bench.close()


NEVER_FOLDED = {"", "from", "to", "waste", "square"}
"""What a step that can be done now shows whole: the figure's two ends, the waste, the setting."""


def test_no_mark_of_any_project_folds_its_ends_its_waste_or_its_setting(any_desk: Desk) -> None:
    """At 80 x 24, whichever figure comes first, once what a step waits for is done.

    A step that waits still keeps all of them but the setting.
    """
    desk = any_desk
    for timber in desk.bench.timbers:
        desk.take_timber(timber.id)
        walk, waits = desk.walk, desk.waits
        for place, step in enumerate(walk.steps):
            stop = walk.withheld(step)
            first = waits_in_brief(waits.get(step.id, ()) or comes_first(walk, step))
            ways = product((False, True), {"", first})
            for swapped, waits_for in ways:
                words = sayings(walk, place, swapped=swapped, withheld=stop, waits_for=waits_for)
                rows = room_for(step, words, stopped=bool(stop))
                labels = NEVER_FOLDED - {"square"} if waits_for else NEVER_FOLDED
                assert not folded(words, rows, labels), f"{timber.id} {step.id}"


def test_a_step_that_waits_says_first_for_what_and_then_for_how_much_more(tmp_path: Path) -> None:
    """Enter tells all of it."""
    bench = Bench(Keeper.open(shutil.copytree(PROJECTS / "corner-brace", tmp_path / "corner")))
    desk = Desk(bench, UNICODE)
    desk.take_timber("brace")
    places = [place for place, step in enumerate(desk.walk.steps) if step.id == "head-tenon/nose"]
    desk.take_step(places[0])
    brief, whole = (
        next(saying.text for saying in desk.words(whole=whole) if saying.label == "waits")
        for whole in (False, True)
    )
    first = "for Post: mortise for Brace, check square and wind, measure the section"
    assert brief == f"{first}; and 1 more"
    assert whole.startswith(f"{first}; Beam: ")
    bench.close()


def test_a_slant_tells_its_faces_after_its_setting(tmp_path: Path) -> None:
    """Its ends and its waste first, then the square; the drawing shows the face."""
    bench = Bench(Keeper.open(shutil.copytree(PROJECTS / "corner-brace", tmp_path / "corner")))
    desk = Desk(bench, UNICODE)
    desk.take_timber("brace")
    slants = [place for place, step in enumerate(desk.walk.steps) if step.leads_on]
    assert slants
    for place in slants:
        desk.take_step(place)
        labels = [each.label for each in desk.words()]
        told = [each for each in ("from", "to", "waste", "square", "on") if each in labels]
        places = [labels.index(each) for each in told]
        assert places == sorted(places), desk.step.id
    bench.close()
