"""Changing a name from the screen, with the keyboard alone."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.layout.standing import State
from benchmate.store.keeper import Keeper
from benchmate.tui.app import BenchmateApp
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.names_form import NamesForm
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.names import NamesScreen
from tests.tui.pictures import screen_text

DOWN_TO_DECK = ["down"] * 6


@asynccontextmanager
async def opened(demo: Path, size: tuple[int, int]) -> AsyncIterator[tuple[Pilot[None], Desk]]:
    """The program open on a project, with the names over the bench."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        await pilot.press("l")
        assert isinstance(app.screen, NamesScreen)
        yield pilot, screen.desk


def words_on(pilot: Pilot[None]) -> str:
    """What the screen says, on one line."""
    return " ".join(screen_text(pilot.app).split())


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_a_framer_changes_the_deck(demo: Path, size: tuple[int, int]) -> None:
    """Pick the deck, type, see what moves, accept, look again, and take it all back with u."""
    before = (demo / "project.toml").read_bytes()
    async with opened(demo, size) as (pilot, desk):
        assert "floor top = joist bearing + joist depth + deck" in words_on(pilot)
        await pilot.press(*DOWN_TO_DECK, "enter")
        assert "deck, now 1-1/4" in words_on(pilot)

        await pilot.press(*"1-1/2")
        await pilot.pause()
        text = words_on(pilot)
        assert 'deck 1-1/4" becomes 1-1/2".' in text
        assert 'With it floor top 4-3/4" becomes 5".' in text
        assert "Moves 20 figures in 12 steps on 4 timbers: 3 steps ticked." in text
        assert "chamfer stop, foot (ticked)" in text
        assert (demo / "project.toml").read_bytes() == before

        await pilot.press("enter")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert 'deck = "1-1/2"' in (demo / "project.toml").read_text()
        assert "To look at again: SW post 3" in words_on(pilot)
        desk.go_to("post-sw", "inside-chamfer/foot-stop")
        assert desk.standing.state is State.LOOK_AGAIN
        assert desk.standing.changed.startswith('marked at 11-3/4", now 1\' 0" from the foot')

        await pilot.press("u")
        assert "Undone: deck written as 1-1/2." in words_on(pilot)
        assert (demo / "project.toml").read_bytes() == before
        assert desk.bench.walk("post-sw").look_again == 0


async def test_a_bad_text_is_told_and_not_accepted(demo: Path) -> None:
    """One error; enter stays, escape goes back to the names, q to the bench."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("down", "down", "enter", *"sill top + deckk")
        await pilot.pause()
        assert 'called "deckk" (floor top → deckk); did you mean "deck"?' in words_on(pilot)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, NamesScreen)
        await pilot.press("escape")
        assert "Enter changes the name under the cursor" in words_on(pilot)
        await pilot.press("enter", "enter")
        assert "Enter changes the name under the cursor" in words_on(pilot)
        await pilot.press("q")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.bench.undo() is None


async def test_what_could_not_be_kept_stays_in_its_field(demo: Path) -> None:
    """The reason is told where the effect was; once it is put right, enter keeps the text."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press(*DOWN_TO_DECK, "enter", *"1-1/2")
        await pilot.pause()
        path = demo / "project.toml"
        whole = path.read_text()
        path.write_text(whole + "broken")
        await pilot.press("enter")
        screen = pilot.app.screen
        assert isinstance(screen, NamesScreen)
        assert screen._input.value == "1-1/2"
        assert "project.toml" in words_on(pilot)
        path.write_text(whole)
        await pilot.press("enter")
        await pilot.pause()
        assert 'deck 1-1/4" becomes 1-1/2".' in words_on(pilot)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.bench.names()
        assert 'deck = "1-1/2"' in path.read_text()


async def test_nothing_is_accepted_before_its_effect_has_been_shown(demo: Path) -> None:
    """A text that was put in and accepted at one stroke is shown first, and waits for another."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press(*DOWN_TO_DECK, "enter")
        screen = pilot.app.screen
        assert isinstance(screen, NamesScreen)
        await pilot.press(*"1-1/")
        await pilot.pause()
        screen._input.value = "2"
        screen._weighed = None
        screen.action_accept()
        assert pilot.app.screen is screen
        await pilot.pause()
        assert 'deck 1-1/4" becomes 2".' in words_on(pilot)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert 'deck = "2"' in (demo / "project.toml").read_text()


async def test_a_reader_is_told_before_he_types(demo: Path) -> None:
    """The names may be looked at; enter opens no field."""
    writer = Keeper.open(demo)
    async with opened(demo, (80, 24)) as (pilot, _):
        text = words_on(pilot)
        assert "READ ONLY: another benchmate has this project open" in text
        await pilot.press(*DOWN_TO_DECK, "enter", *"2")
        assert "deck, now" not in words_on(pilot)
        await pilot.press("ctrl+g")
        assert isinstance(pilot.app.screen, BenchScreen)
    writer.close()


async def test_a_long_effect_is_read_without_leaving_the_field(demo: Path) -> None:
    """Page down shows more, and typing goes on; the mouse may pick another name."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press(*DOWN_TO_DECK, "enter", *"1-1/2")
        await pilot.pause()
        assert "NE post" not in words_on(pilot)
        await pilot.press(*["pagedown"] * 4)
        assert "NE post" in words_on(pilot)
        await pilot.press("backspace", "4")
        await pilot.pause()
        assert "Type what it is to be" in words_on(pilot)
        row = next(
            y for y, line in enumerate(screen_text(pilot.app).splitlines()) if "overhang =" in line
        )
        await pilot.click(offset=(6, row))
        assert "Enter changes the name under the cursor" in words_on(pilot)
        await pilot.press("enter")
        assert "overhang, now 1' 2" in words_on(pilot)


async def test_a_project_without_names_says_so(demo: Path) -> None:
    """There is nothing to pick, and no key fails."""
    (demo / "project.toml").write_text('format = 1\nname = "Bare"\n')
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        app.push_screen(
            NamesScreen(
                NamesForm(screen.desk.bench), screen.desk.set_name, screen.desk.pad, UNICODE
            )
        )
        await pilot.pause()
        assert "no names yet" in screen_text(app)
        await pilot.press("down", "enter", "q")
        assert isinstance(app.screen, BenchScreen)
