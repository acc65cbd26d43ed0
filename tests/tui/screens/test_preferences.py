"""The settings on the screen: seen at once, kept by enter, put back by escape."""

import os
from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.store.preference_place import preference_path
from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import ASCII, UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.choose import ChooseScreen
from benchmate.tui.screens.preferences import PreferencesScreen
from tests.tui.pictures import settled

SIZES = [(80, 24), (120, 40)]


def put(text: str) -> Path:
    """Write the settings of the test's user."""
    path = preference_path(os.environ)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, "utf-8")
    return path


def names_in(folder: Path) -> list[str]:
    """What lies in a folder."""
    return sorted(each.name for each in folder.iterdir())


async def open_settings(pilot: Pilot[None]) -> str:
    """Press the key, and give what is shown."""
    await settled(pilot)
    await pilot.press("comma")
    text = await settled(pilot)
    assert isinstance(pilot.app.screen, PreferencesScreen)
    return text


@pytest.mark.parametrize("size", SIZES)
async def test_settings_are_seen_at_once_and_kept(demo: Path, size: tuple[int, int]) -> None:
    """Units, digits and colours change while one looks; enter keeps them and the bench follows."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        text = await open_settings(pilot)
        assert "How lengths are shown on your screen." in text
        assert "as the project says" in text
        assert "keep all" in text
        before = text
        await pilot.press("right", "right", "right", "down", "down", "right")
        text = await settled(pilot)
        assert app.digits == "thin"
        assert text.splitlines()[-8:] != before.splitlines()[-8:]
        await pilot.press("down", "right")
        assert app.theme == "benchmate-light"
        await pilot.press("enter")
        text = await settled(pilot)
        assert isinstance(app.screen, BenchScreen)
        assert " ".join(text.split()).count("Your settings are kept in") == 1
        assert "89 mm" in text
        await pilot.press("m")
        text = await settled(pilot)
        assert "without a unit: inches" in text
        assert "178 mm" in text
    assert preference_path(os.environ).read_text("utf-8") == (
        'units = "mm"\ndigits = "thin"\ncolours = "light"\n'
    )
    assert names_in(demo) == ["progress", "project.toml"]


@pytest.mark.parametrize("size", SIZES)
async def test_escape_puts_everything_back(demo: Path, size: tuple[int, int]) -> None:
    """Nothing is written, and the screen is as it was."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        before = await settled(pilot)
        await open_settings(pilot)
        await pilot.press("down", "down", "right", "down", "right", "right", "right")
        assert (app.digits, app.theme) == ("thin", "ansi-dark")
        await pilot.press("escape")
        assert await settled(pilot) == before
        assert (app.digits, app.theme) == ("block", "textual-dark")
    assert not preference_path(os.environ).exists()


async def test_a_length_is_typed_and_what_cannot_be_is_not_kept(demo: Path) -> None:
    """Enter goes to the line that is wrong, and says what to do."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await open_settings(pilot)
        await pilot.press("pagedown", *"30", "up", "enter")
        text = " ".join((await settled(pilot)).split())
        assert isinstance(app.screen, PreferencesScreen)
        assert "This is a number without a unit; write 1-1/2 in, or 38 mm." in text
        await pilot.press("end", *" mm", "enter")
        await settled(pilot)
        assert isinstance(app.screen, BenchScreen)
    assert preference_path(os.environ).read_text("utf-8") == 'trim = "30 mm"\n'


async def test_the_program_opens_as_it_was_left(demo: Path) -> None:
    """Colours from the first frame on, digits and units with the project."""
    put('colours = "high-contrast"\ndigits = "thin"\nunits = "mm"\n')
    app = BenchmateApp(str(demo), UNICODE, colours="high-contrast")
    assert app.theme == "benchmate-high-contrast"
    async with app.run_test(size=(120, 40)) as pilot:
        text = await settled(pilot)
        assert app.digits == "thin"
        assert "89 mm" in text


async def test_a_bad_file_is_told_and_the_program_opens(demo: Path) -> None:
    """One clear message; the file is as it was."""
    path = put('colours = "pink"\n')
    app = BenchmateApp(str(demo), UNICODE, colours="pink")
    async with app.run_test(size=(120, 40)) as pilot:
        text = " ".join((await settled(pilot)).split())
        assert app.theme == "textual-dark"
        assert 'settings.toml:1: colours: is "pink", which cannot be set here;' in text
        assert "The default counts meanwhile." in text
    assert path.read_text("utf-8") == 'colours = "pink"\n'


async def test_what_cannot_be_kept_is_said_and_nothing_lost(demo: Path) -> None:
    """The page stays open with what was chosen."""
    path = put("colours = pink\n")
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(120, 40)) as pilot:
        await open_settings(pilot)
        await pilot.press("right", "ctrl+s")
        text = await settled(pilot)
        assert isinstance(app.screen, PreferencesScreen)
        assert "Not kept: " in text
    assert path.read_text("utf-8") == "colours = pink\n"


async def test_without_colours_none_reaches_the_terminal(demo: Path) -> None:
    """As NO_COLOR=1 does."""
    app = BenchmateApp(str(demo), ASCII, colours="none")
    put('colours = "none"\n')
    async with app.run_test(size=(80, 24)) as pilot:
        await settled(pilot)
        names = {type(each).__name__ for each in app.get_line_filters()}
        assert names == {"NoColor"}


async def test_the_environment_goes_before_the_colours(demo: Path) -> None:
    """What it says stays, and the page says why."""
    put('colours = "light"\n')
    app = BenchmateApp(str(demo), UNICODE, fixed="TEXTUAL_THEME")
    async with app.run_test(size=(80, 24)) as pilot:
        await open_settings(pilot)
        await pilot.press("down", "down", "down", "right")
        text = await settled(pilot)
        assert app.theme == "textual-dark"
        assert "TEXTUAL_THEME is set in the environment" in text


async def test_the_settings_open_from_the_list_of_projects(demo: Path) -> None:
    """And a new frame then starts with them."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(120, 40)) as pilot:
        await settled(pilot)
        await pilot.press("P")
        assert "settings" in await settled(pilot)
        await open_settings(pilot)
        await pilot.press("right", "right", "right", "enter")
        await settled(pilot)
        assert isinstance(app.screen, ChooseScreen)
        await pilot.press("n")
        text = await settled(pilot)
        assert "6000" in text
