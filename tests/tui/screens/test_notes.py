"""Noting at the bench with the keyboard alone: a note, a knot, taken out, undone."""

import errno
import os
from pathlib import Path

import pytest

from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.jot import JotScreen
from benchmate.tui.screens.notes import NotesScreen
from tests.tui.pictures import screen_text, settled
from tests.tui.screens.test_walk import opened, panes_words


async def test_what_cannot_be_kept_stays_in_its_field(
    demo: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A full disk loses no word."""

    def full(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "full")

    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("i", "a", "enter", *"Fuzzy")
        monkeypatch.setattr(os, "fsync", full)
        await pilot.press("enter")
        text = await settled(pilot)
        assert isinstance(pilot.app.screen, JotScreen)
        assert "CHECK: Not kept" in text
        assert "Fuzzy" in text
        monkeypatch.undo()
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, NotesScreen)
        assert desk.walk.progress.notes[0].text == "Fuzzy"


SIZES = [(80, 24), (120, 40)]


@pytest.mark.parametrize("size", SIZES)
async def test_a_note_is_written_on_the_step_and_shows_there(
    demo: Path, size: tuple[int, int]
) -> None:
    """i, a, enter, words, enter, q: on disk, on the bench, and gone again with u."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("i")
        assert isinstance(pilot.app.screen, NotesScreen)
        assert "nothing noted yet" in await settled(pilot)
        await pilot.press("a", "enter")
        assert isinstance(pilot.app.screen, JotScreen)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, JotScreen)
        await pilot.press(*"Fuzzy", "enter")
        text = await settled(pilot)
        assert "Foot tenon: far cheek line: Fuzzy" in text
        assert "Kept; u takes it back." in text
        assert desk.walk.progress.notes[0].text == "Fuzzy"
        await pilot.press("q")
        assert isinstance(pilot.app.screen, BenchScreen)
        await settled(pilot)
        assert "note" in panes_words(pilot)
        assert "Fuzzy" in panes_words(pilot)
        await pilot.press("u")
        assert desk.walk.progress.notes == ()


@pytest.mark.parametrize("size", SIZES)
async def test_a_knot_is_weighed_while_it_is_typed(demo: Path, size: tuple[int, int]) -> None:
    """What is wrong has a caret, what it meets is told, x takes it out and u puts it back."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("i", "a", "down", "down", "down", "enter")
        assert isinstance(pilot.app.screen, JotScreen)
        assert "still empty" in await settled(pilot)
        await pilot.press(*"1/9")
        lines = (await settled(pilot)).splitlines()
        at = next(place for place, line in enumerate(lines) if line.strip() == "^")
        assert "1/9 is not a tape fraction" in " ".join(lines[:at])
        assert lines[at - 1].rstrip().endswith("1/9")
        await pilot.press("escape")
        assert "Escape again leaves" in await settled(pilot)
        await pilot.press("escape")
        assert isinstance(pilot.app.screen, NotesScreen)
        assert desk.walk.progress.blemishes == ()
        await pilot.press("a", "down", "down", "down", "enter")
        for figure in ("1", "1", "2", "3"):
            await pilot.press(*figure, "tab")
        text = await settled(pilot)
        assert "LOOK" in text
        assert "lies in the foot tenon" in " ".join(text.split())
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, NotesScreen)
        assert len(desk.walk.progress.blemishes) == 1
        assert "Knot on the" in await settled(pilot)
        await pilot.press("x")
        assert desk.walk.progress.blemishes == ()
        await pilot.press("u")
        assert len(desk.walk.progress.blemishes) == 1
        await pilot.press("i")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert "\u25c9" in screen_text(pilot.app)
        assert any("lies in the foot tenon" in each.text for each in desk.words())
