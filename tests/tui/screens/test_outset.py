"""From nothing to the first ticked mark, by keys alone."""

import os
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.measure.reading import Unit
from benchmate.store.reading import read_progress, read_project
from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.choose import ChooseScreen
from benchmate.tui.screens.fields import FieldsScreen
from benchmate.tui.screens.outset import OutsetScreen
from benchmate.workbench import new_project
from tests.store.samples import put
from tests.tui.pictures import screen_text, settled

SIZES = [(80, 24), (120, 40)]


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder to start in, with a shelf of projects that is empty."""
    (tmp_path / "projects").mkdir()
    monkeypatch.chdir(tmp_path)
    return tmp_path / "projects"


@asynccontextmanager
async def started(
    size: tuple[int, int], *, project: str = "", new: bool = True
) -> AsyncIterator[Pilot[None]]:
    """The program, opened on the form."""
    app = BenchmateApp(project, UNICODE, new=new)
    async with app.run_test(size=size) as pilot:
        await drawn(pilot)
        yield pilot


async def drawn(pilot: Pilot[None]) -> str:
    """The screen once the frame beside the form is drawn and checked."""
    await settled(pilot)
    screen = pilot.app.screen
    if isinstance(screen, OutsetScreen):
        while screen._outset.wrong is None and (
            screen._outset.drawn is None or screen._outset.drawn.found is None
        ):
            await pilot.pause(0.05)
            await pilot.app.workers.wait_for_complete()
    return await settled(pilot)


def made(here: Path) -> list[str]:
    """The projects that lie on the shelf."""
    return sorted(each.name for each in here.iterdir())


async def go_to(pilot: Pilot[None], question: str) -> None:
    """Down to a question of the form, one line at a time."""
    screen = pilot.app.screen
    assert isinstance(screen, FieldsScreen)
    while screen._field.id != question:
        await pilot.press("down")


@pytest.mark.parametrize("size", SIZES)
async def test_from_nothing_to_the_first_ticked_mark(size: tuple[int, int], here: Path) -> None:
    """A new frame with most of it as suggested: plan size and pitch changed, made, g, tick."""
    async with started(size) as pilot:
        text = screen_text(pilot.app)
        assert "New frame" in text
        assert "4 sills, 6 posts, 2 plates" in text
        assert "plan" in text
        await pilot.press(*"Ash barn")
        await pilot.press("pagedown", *"16'", "down", *"12'")
        await go_to(pilot, "pitch")
        await pilot.press(*"12")
        await drawn(pilot)
        await pilot.press("ctrl+s")
        assert "The checks find nothing." in " ".join((await drawn(pilot)).split())
        await pilot.press("enter")
        text = await settled(pilot)
        app = pilot.app
        assert isinstance(app.screen, BenchScreen)
        assert "Press g for the first job." in " ".join(text.split())
        await pilot.press("g", "space")
        await settled(pilot)
        desk = app.screen.desk
        assert desk is not None
        ticked = [walk.timber.id for walk in map(desk.bench.walk, ids(desk.bench)) if walk.done]
        assert len(ticked) == 1
    project = read_project(here / "ash-barn")
    assert (project.name, len(project.timbers)) == ("Ash barn", 43)
    assert read_progress(here / "ash-barn", ticked[0], Unit.INCH).ticks


def ids(bench: object) -> list[str]:
    """The timbers on a bench."""
    return [timber.id for timber in bench.timbers]  # type: ignore[attr-defined]


@pytest.mark.parametrize("size", [(200, 60), (60, 16)])
async def test_what_cannot_be_is_told_while_it_is_typed(size: tuple[int, int], here: Path) -> None:
    """Where, what, and what to do; enter at the end goes to it, and nothing is made."""
    async with started(size) as pilot:
        await go_to(pilot, "bays")
        await pilot.press(*"40")
        text = " ".join(screen_text(pilot.app).split())
        assert "40 bays cannot be; write 1 to 12." in text
        assert "not drawn: see !" in text
        await pilot.press("ctrl+s", "enter")
        await settled(pilot)
        screen = pilot.app.screen
        assert isinstance(screen, OutsetScreen)
        assert screen._field.id == "bays"
        await pilot.press("backspace", "backspace", "3")
        assert "3 bays" not in await drawn(pilot)
        assert screen._outset.wrong is None
    assert made(here) == []


async def test_keys_typed_ahead_land_where_they_were_meant(here: Path) -> None:
    """Pressed all at once, faster than anything is shown, each figure is in its own line."""
    async with started((80, 24)) as pilot:
        keys = ["B", "a", "r", "n", "pagedown", "2", "4", "'", "down", "1", "6", "'", "down", "3"]
        keys += ["tab", "9", "backspace", "1", "0", "'", "enter", "0", *["down"] * 3, "right", "2"]
        for key in keys:
            pilot.app.simulate_key(key)
        await drawn(pilot)
        screen = pilot.app.screen
        assert isinstance(screen, OutsetScreen)
        typed = {"name": "Barn", "length": "24'", "width": "16'", "bays": "3"}
        typed |= {"post height": "10'", "overhang": "0", "ties": "lapped over the plates"}
        assert screen._outset.typed == typed
        assert made(here) == []


async def test_a_click_takes_a_line_up(here: Path) -> None:
    """What stands in the one before is kept; a double click goes on, as enter does."""
    async with started((80, 24)) as pilot:
        await pilot.press(*"Barn")
        await pilot.click("#fields-list", offset=(5, 8))
        screen = pilot.app.screen
        assert isinstance(screen, OutsetScreen)
        assert screen._field.id == "width"
        await pilot.press(*"12'")
        await pilot.click("#fields-list", offset=(5, 7))
        assert screen._outset.typed == {"name": "Barn", "width": "12'"}
        assert made(here) == []


async def test_choices_are_turned_and_the_picture_too(here: Path) -> None:
    """Left, right and space on a choice; in a text they are typed."""
    async with started((80, 24)) as pilot:
        await pilot.press(*"a b", "left", "c")
        screen = pilot.app.screen
        assert isinstance(screen, OutsetScreen)
        assert screen._outset.name() == "a cb"
        await go_to(pilot, "ties")
        await pilot.press("right")
        assert screen._field.text == "lapped over the plates"
        await pilot.press("left", "space")
        assert "lapped over the plates   (2 of 2" in screen_text(pilot.app)
        await drawn(pilot)
        assert "plan" in screen_text(pilot.app)
        await pilot.press("ctrl+t")
        assert "from the West" in screen_text(pilot.app)
        await pilot.press("pageup", "pageup", "shift+tab")
        assert screen._field.id == "name"
        assert made(here) == []


async def test_what_the_checks_find_is_seen_before_it_is_made(here: Path) -> None:
    """The first enter shows it, the second makes the project all the same."""
    async with started((80, 24)) as pilot:
        await go_to(pilot, "rafter height")
        await pilot.press(*"4-1/2", "ctrl+s", "enter")
        text = " ".join((await drawn(pilot)).split())
        assert "Not made yet. Enter once more makes it all the same." in text
        assert "look: The notch takes" in text
        assert made(here) == []
        await pilot.press("enter")
        await settled(pilot)
        assert isinstance(pilot.app.screen, BenchScreen)
    assert made(here) == ["new-frame"]


async def test_leaving_is_asked_for_twice(here: Path) -> None:
    """Where something is typed; with nothing made the program ends."""
    async with started((80, 24)) as pilot:
        await pilot.press("x", "escape")
        assert "Nothing is made yet" in screen_text(pilot.app)
        assert isinstance(pilot.app.screen, OutsetScreen)
        await pilot.press("escape")
        await settled(pilot)
    assert pilot.app.return_code == 0
    assert made(here) == []


async def test_a_project_that_cannot_be_made_keeps_its_form(
    here: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A folder taken meanwhile: told at its line, and what was typed is still there."""
    async with started((80, 24)) as pilot:
        await pilot.press(*"Barn", "ctrl+s")
        await drawn(pilot)
        screen = pilot.app.screen
        assert isinstance(screen, OutsetScreen)

        def taken(*_: object) -> Path:
            raise new_project.NotMadeError("barn is there already; take another name")

        monkeypatch.setattr("benchmate.tui.outset_form.make", taken)
        await pilot.press("enter")
        text = " ".join((await settled(pilot)).split())
        assert "Not made: barn is there already; take another name" in text
        assert screen._field.id == "folder"
        assert screen._outset.name() == "Barn"
        assert made(here) == []


async def test_projects_are_chosen_copied_and_begun_from_the_bench(here: Path) -> None:
    """P lists them with where they lie; c copies, e begins an empty one, N sets one out."""
    async with started((80, 24), project="orchard-tool-shed", new=False) as pilot:
        app = pilot.app
        await pilot.press("P")
        text = await settled(pilot)
        assert isinstance(app.screen, ChooseScreen)
        assert "your own" in text
        assert "demo" in text
        await pilot.press("q")
        await settled(pilot)
        assert isinstance(app.screen, BenchScreen)

        await pilot.press("P", "c")
        await settled(pilot)
        await pilot.press(*"Second", "ctrl+s", "enter")
        assert "Second, 22 timbers" in " ".join((await settled(pilot)).split())

        await pilot.press("P", "e")
        await settled(pilot)
        await pilot.press(*"Third", "ctrl+s", "enter")
        text = " ".join((await settled(pilot)).split())
        assert "No timbers yet" in text
        assert "Press e to add the first timber" in text

        await pilot.press("N")
        assert "New frame" in await settled(pilot)
        await pilot.press("escape")
        await settled(pilot)
        assert isinstance(app.screen, BenchScreen)
    assert made(here) == ["second", "third"]


async def test_a_project_that_cannot_be_opened_leaves_the_old_one(here: Path) -> None:
    """It says why; the one on the bench is worked on."""
    put(here / "broken", "format = 1\n")
    async with started((80, 24), project="orchard-tool-shed", new=False) as pilot:
        app = pilot.app
        await pilot.press("P")
        await settled(pilot)
        screen = app.screen
        assert isinstance(screen, ChooseScreen)
        place = [folder.name for folder in screen._folders].index("broken")
        await pilot.press(*["down"] * place, "enter")
        assert "Not opened: project.toml" in await settled(pilot)
        await pilot.press("space")
        bench = app.screen
        assert isinstance(bench, BenchScreen)
        assert bench.desk is not None
        assert bench.desk.bench.project.name == "Orchard tool shed"
        assert os.environ["XDG_DATA_HOME"] in str(bench.desk.bench.folder)
