"""The calculator over the bench and over the forms, with the keyboard alone."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import Input

from benchmate.measure.length import Length
from benchmate.tui.app import BenchmateApp
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.names import NamesScreen
from benchmate.tui.screens.pad import PadScreen
from benchmate.tui.screens.sizes import SizesScreen
from tests.tui.pictures import screen_text, settled

SIZES = [(60, 16), (80, 24), (120, 40)]


@asynccontextmanager
async def opened(
    demo: Path, size: tuple[int, int] = (80, 24), glyphs: Glyphs = UNICODE
) -> AsyncIterator[tuple[Pilot[None], Desk]]:
    """The program open on a project, with its desk."""
    app = BenchmateApp(str(demo), glyphs)
    async with app.run_test(size=size) as pilot:
        await settled(pilot)
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        yield pilot, screen.desk


def line(pilot: Pilot[None]) -> Input:
    """The line of the calculator."""
    assert isinstance(pilot.app.screen, PadScreen)
    return pilot.app.screen.query_one("#pad-line", Input)


@pytest.mark.parametrize("size", SIZES)
async def test_a_framer_reckons_at_the_bench(demo: Path, size: tuple[int, int]) -> None:
    """c, a line, the figure in big and every unit beneath it; enter keeps it, escape leaves."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("c")
        text = await settled(pilot)
        assert "Calculator" in text
        assert "without a unit: inches" in text
        assert "12' 6 - 2 x 7-1/2, or" in text
        await pilot.press(*"12' 6 - 2 x 7-1/2")
        text = await settled(pilot)
        assert UNICODE.block in text
        for told in ("feet   11' 3\"", 'inches 135"', "mm     3429 mm"):
            assert told in text
        await pilot.press("enter")
        assert [row.tail for row in desk.pad().rows()] == ["11' 3\""]
        await pilot.press("ctrl+g")
        assert isinstance(pilot.app.screen, BenchScreen)


async def test_each_key_is_answered_as_it_is_typed(demo: Path) -> None:
    """A half-typed sum has no figure: it says what is missing, with a caret, and then has one."""
    async with opened(demo) as (pilot, _):
        await pilot.press("c", *"12' 6 -")
        text = await settled(pilot)
        assert UNICODE.block not in text
        rows = [row.rstrip() for row in text.splitlines()]
        place = rows.index(" 12' 6 -")
        assert rows[place + 1] == " " * 8 + "^"
        assert "a length is missing; write one here, as 7-1/2." in rows[place - 1]
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, PadScreen)
        await pilot.press(*" 6")
        assert "feet   12' 0\"" in await settled(pilot)


async def test_the_tape_is_taken_up_again(demo: Path) -> None:
    """Enter keeps a result and begins anew; arrows choose one, tab puts it at the cursor."""
    async with opened(demo) as (pilot, _):
        await pilot.press("c", *"10 / 3", "enter", *"7 + 1", "enter", *"2 x ")
        assert line(pilot).value == "2 x "
        await pilot.press("tab")
        assert line(pilot).value == '2 x 8"'
        await pilot.press(*" + ", "down", "tab")
        assert line(pilot).value == '2 x 8" + (10 / 3)'
        text = await settled(pilot)
        assert "feet   1' 7-5/16\"+" in text
        await pilot.press("enter", "up", "up", "tab")
        assert line(pilot).value == '(2 x 8" + (10 / 3))'


async def test_what_is_left_unkept_is_on_the_tape_when_it_opens_again(demo: Path) -> None:
    """Closing loses no result."""
    async with opened(demo) as (pilot, _):
        await pilot.press("c", "tab", *"3 + 4", "escape")
        await settled(pilot)
        await pilot.press("c")
        assert "3 + 4" in await settled(pilot)
        assert line(pilot).value == ""


async def test_long_answers_are_paged_through(demo: Path) -> None:
    """At 80 x 24 the last of many running figures is a few keys away."""
    async with opened(demo) as (pilot, _):
        await pilot.press("c", *"14' 3 in 30 spaces")
        assert "14' 3\"" not in "\n".join((await settled(pilot)).splitlines()[2:])
        await pilot.press("pagedown", "pagedown", "pagedown", "pagedown")
        assert "30     14' 3\"" in await settled(pilot)
        await pilot.press("pageup", "pageup", "pageup", "pageup", "pageup")
        assert "each space" in await settled(pilot)


async def test_plain_characters_do(demo: Path) -> None:
    """Big figure, caret and tape in ASCII; nothing is told by colour."""
    async with opened(demo, glyphs=ASCII) as (pilot, _):
        await pilot.press("c", *"diagonal 14' 3 by 22', 26' 2-1/2 and 26' 3", "enter")
        text = await settled(pilot)
        assert text.isascii()
        assert "the second diagonal, 26' 3\", is the longer." in " ".join(text.split())


async def test_the_mouse_takes_a_result_up(demo: Path) -> None:
    """A double click on the tape; the keys stay with the line."""
    async with opened(demo) as (pilot, _):
        await pilot.press("c", *"7 + 1", "enter", "ctrl+u")
        rows = (await settled(pilot)).splitlines()
        row = next(at for at, text in enumerate(rows) if text.startswith(f"{UNICODE.cursor}7 + 1"))
        await pilot.click(offset=(3, row), times=2)
        await settled(pilot)
        assert line(pilot).value == '8"'
        assert line(pilot).has_focus


async def test_a_size_is_reckoned_and_given_to_its_field(demo: Path) -> None:
    """ctrl+k opens it on what the field says; enter gives the result, which is kept."""
    async with opened(demo) as (pilot, desk):
        desk.go_to("post-se", "foot-tenon/section")
        await pilot.press("m")
        assert "ctrl+k reckon" in await settled(pilot)
        await pilot.press("ctrl+k")
        assert line(pilot).value == '7-3/16"'
        await pilot.press(*" + 10 / 3 / 64")
        text = await settled(pilot)
        assert 'gives  7-15/64", to South face to North face' in text
        assert "rounded to the nearest 64th" in text
        await pilot.press("enter")
        await settled(pilot)
        assert isinstance(pilot.app.screen, SizesScreen)
        field = pilot.app.screen.query_one("#size-first", Input)
        assert field.value == '7-15/64"'
        assert field.has_focus
        assert '7-15/64" (on your tape' in screen_text(pilot.app)
        await pilot.press("enter")
        await settled(pilot)
        measured = desk.bench.walk("post-se").progress.measured["foot-tenon"]
        assert measured.first == Length.inches(7, 15, 64)


async def test_a_field_is_left_alone(demo: Path) -> None:
    """By escape, and by enter where the line says what the field says already."""
    async with opened(demo) as (pilot, desk):
        desk.go_to("post-se", "foot-tenon/section")
        await pilot.press("m", "ctrl+k", *" - 1", "escape")
        await settled(pilot)
        field = pilot.app.screen.query_one("#size-first", Input)
        assert field.value == '7-3/16"'
        await pilot.press("ctrl+k")
        assert "nothing new: South face to North face is written so already" in await settled(pilot)
        await pilot.press("enter")
        await settled(pilot)
        assert field.value == '7-3/16"'
        assert isinstance(pilot.app.screen, SizesScreen)


async def test_a_name_is_reckoned_from_other_names(demo: Path) -> None:
    """A sum of names opens as it stands; the result is a plain figure, and says so first."""
    async with opened(demo) as (pilot, _):
        await pilot.press("l", "ctrl+k")
        assert isinstance(pilot.app.screen, NamesScreen)
        await pilot.press(*["down"] * 2, "enter")
        assert "ctrl+k reckon" in await settled(pilot)
        await pilot.press("ctrl+k")
        assert line(pilot).value == "joist bearing + joist depth + deck"
        await pilot.press(*" + 1/2")
        text = " ".join((await settled(pilot)).split())
        assert '5-1/4", to floor top' in text
        assert "it will not follow joist bearing, joist depth, deck any more" in text
        await pilot.press("enter")
        text = await settled(pilot)
        assert pilot.app.screen.query_one("#names-text", Input).value == '5-1/4"'
        assert 'floor top 4-3/4" becomes 5-1/4"' in text
        await pilot.press("enter")
        await settled(pilot)
    assert "5-1/4" in (demo / "project.toml").read_text()


async def test_one_side_of_a_section_is_reckoned(demo: Path) -> None:
    """The side the cursor stands in; the other stays what it is."""
    async with opened(demo) as (pilot, _):
        await pilot.press("l", "end", "enter", "end")
        await settled(pilot)
        field = pilot.app.screen.query_one("#names-text", Input)
        first = field.value.split(" x ")[0]
        await pilot.press("ctrl+k", "ctrl+u", *"7 / 2", "enter")
        await settled(pilot)
        assert field.value == f'{first} in x 3-1/2"'
