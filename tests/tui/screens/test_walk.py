"""The main walk at three sizes, keyboard alone: model first, picture second."""

import errno
import os
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot

from benchmate.model.progress import Progress
from benchmate.store.keeper import Keeper
from benchmate.tui.app import BenchmateApp
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.workbench.actions import Change
from tests.tui.pictures import screen_text, settled

SIZES = [(80, 24), (120, 40)]
ALL_SIZES = [*SIZES, (200, 60)]


@asynccontextmanager
async def opened(demo: Path, size: tuple[int, int]) -> AsyncIterator[tuple[Pilot[None], Desk]]:
    """The program open on a project, with its desk."""
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=size) as pilot:
        await settled(pilot)
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        yield pilot, screen.desk


def panes_words(pilot: Pilot[None]) -> str:
    """Everything right of the lists as one line of words."""
    lines = screen_text(pilot.app).splitlines()
    edge = max(line.find("\u2502") for line in lines)
    return " ".join(" ".join(line[edge + 1 :] for line in lines).split())


@pytest.mark.parametrize("size", SIZES)
async def test_a_framer_walks_a_post(demo: Path, size: tuple[int, int]) -> None:
    """Tick, move, undo, measure, find and help, at every size, with the keyboard alone."""
    async with opened(demo, size) as (pilot, desk):
        assert desk.step.id == "foot-tenon/far-cheek"
        text = screen_text(pilot.app)
        assert "SE post" in text
        assert "Far cheek line" in text
        assert "in towards the North face" in text
        assert "Towards the North face." in text
        assert "South face = hook here" in text

        await pilot.press("space")
        assert desk.walk.progress.tick("foot-tenon/far-cheek") is not None
        assert desk.step.id == "foot-tenon/reference-edge"
        assert "9 of 49 done" in screen_text(pilot.app)

        await pilot.press("backspace")
        assert desk.step.id == "foot-tenon/far-cheek"
        assert desk.walk.progress.tick("foot-tenon/far-cheek") is None
        assert "Undone: SE post, tick on Foot tenon: far cheek line." in screen_text(pilot.app)

        await pilot.press("down", "j", "up", "k", "j")
        assert desk.step.id == "foot-tenon/reference-edge"


@pytest.mark.parametrize("size", SIZES)
async def test_a_tenon_measured_as_cut_moves_its_mortise(demo: Path, size: tuple[int, int]) -> None:
    """m, a width, the effect shown, enter; the sill follows."""
    async with opened(demo, size) as (pilot, desk):
        desk.go_to("post-sw", "foot-tenon/as-cut")
        await pilot.press("m", "tab")
        await pilot.press("end", *["backspace"] * 10, *"5-3/8")
        text = " ".join(screen_text(pilot.app).split())
        assert "finish line (ticked)" in text
        assert "becomes 6-7/8" in text
        await pilot.press("enter")
        width = desk.bench.walk("post-sw").progress.as_cut["foot-tenon"].width
        assert width is not None
        assert width.exact_text() == '5-3/8"'


async def test_a_bad_size_is_not_accepted(demo: Path) -> None:
    """The message names the field and points at the character; leaving changes nothing."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("m", "end", *["backspace"] * 10, *"7x", "enter")
        text = screen_text(pilot.app)
        assert "South face to North face: " in text
        assert "^" in text
        await pilot.press("ctrl+g")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.walk.progress.measured["foot-tenon"].first is not None


@pytest.mark.parametrize("size", SIZES)
async def test_find_goes_to_the_mark(demo: Path, size: tuple[int, int]) -> None:
    """Words, the best answer, enter."""
    async with opened(demo, size) as (pilot, desk):
        await pilot.press("slash", *"sill ne depth")
        assert "Mortise for NE post: depth" in screen_text(pilot.app).replace("mortise", "Mortise")
        await pilot.press("enter")
        assert (desk.timber, desk.step.id) == ("sill-north", "ne-foot-mortise/depth")
        await pilot.press("slash", *"post", "down", "down", "up", "ctrl+g")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.timber == "sill-north"


async def test_the_timbers_are_a_tab_away(demo: Path) -> None:
    """At 80 x 24 the list of timbers takes the place of the steps, and enter comes back."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("tab")
        assert "1 again" in screen_text(pilot.app)
        await pilot.press("home")
        assert desk.timber == "post-sw"
        await pilot.press("enter")
        assert "Measure as cut" in screen_text(pilot.app)
        await pilot.press("tab")
        assert "Measure as cut" not in screen_text(pilot.app)
        await pilot.press("tab")
        assert "Measure as cut" in screen_text(pilot.app)


async def test_help_and_a_step_in_full_open_and_close_at_once(demo: Path) -> None:
    """Both are read and left with one key."""
    async with opened(demo, (80, 24)) as (pilot, _):
        await pilot.press("question_mark")
        assert "Take the last tick, size or edit back" in screen_text(pilot.app)
        await pilot.press("q")
        await pilot.press("enter")
        assert "Set-back and thickness together" in screen_text(pilot.app)
        await pilot.press("space")
        assert isinstance(pilot.app.screen, BenchScreen)


async def test_face_swap_next_and_untick(demo: Path) -> None:
    """The lesser keys do what the help says."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        await pilot.press("f")
        assert "East face from outside" in screen_text(pilot.app)
        await pilot.press("s")
        assert "squared end first" in screen_text(pilot.app)
        await pilot.press("n")
        assert desk.step.id == "foot-tenon/reference-edge"
        await pilot.press("home", "x")
        assert desk.walk.progress.tick("stick/crown") is None
        await pilot.press("t")
        assert "already open" in screen_text(pilot.app)


async def test_the_mouse_works(demo: Path) -> None:
    """A click takes up a step; a click on a key does what the key does."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        row = next(
            y
            for y, line in enumerate(screen_text(pilot.app).splitlines())
            if "Sight the crown" in line
        )
        await pilot.click(offset=(10, row))
        assert (desk.timber, desk.step.id) == ("post-se", "stick/crown")
        await pilot.click(offset=(3, 39))
        assert desk.step.id == "foot-tenon/far-cheek"
        footer = screen_text(pilot.app).splitlines()[39]
        await pilot.click(offset=(footer.index("next"), 39))
        assert desk.step.id == "foot-tenon/reference-edge"
        await pilot.click(offset=(footer.index("enter"), 39))
        assert not isinstance(pilot.app.screen, BenchScreen)


async def test_a_stop_is_plain_on_the_screen(demo: Path) -> None:
    """A size that cannot be shows STOP in the figure's place, and space ticks nothing."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("m", "end", *["backspace"] * 10, *"3", "enter")
        text = screen_text(pilot.app)
        assert "STOP" in text
        (stop,) = (saying.text for saying in desk.words() if saying.label == "stop")
        assert stop in panes_words(pilot), "the remedy is whole, as no drawing needs the room"
        done = desk.walk.done
        await pilot.press("space")
        assert desk.walk.done == done
        assert "cannot be ticked" in screen_text(pilot.app)


@pytest.mark.parametrize("size", [(80, 24), (100, 30)])
@pytest.mark.parametrize("lines", [2, 4])
async def test_a_long_message_leaves_the_drawing_whole(
    demo: Path, size: tuple[int, int], lines: int
) -> None:
    """The words give up the rows: which end is where stays in sight under the drawing."""
    async with opened(demo, size) as (pilot, _):
        before = drawing_of(pilot)
        assert "foot" in before[-1]
        screen = pilot.app.screen
        assert isinstance(screen, BenchScreen)
        screen._say("word " * (lines * size[0] // 5 - 4))
        await pilot.pause()
        assert screen.query_one("#notice").size.height == lines
        after = drawing_of(pilot)
        assert after[-1] == before[-1]
        assert after[-1] in screen_text(pilot.app)


@pytest.mark.parametrize("size", SIZES)
async def test_words_without_a_drawing_have_all_its_rows(demo: Path, size: tuple[int, int]) -> None:
    """Nothing is folded away while blank rows follow, with a long message and without."""
    async with opened(demo, size) as (pilot, desk):
        desk.go_to("post-nw", "stick/back-check")
        screen = pilot.app.screen
        assert isinstance(screen, BenchScreen)
        screen._show_all()
        for message in ("", "word " * (size[0] // 2)):
            if message:
                screen._say(message)
            await pilot.pause()
            words, body = screen.query_one("#words"), screen.query_one("#body")
            assert words.region.bottom == body.region.bottom


def drawing_of(pilot: Pilot[None]) -> list[str]:
    """The rows of the face's drawing that are in sight and not blank."""
    pane = pilot.app.screen.query_one("#face")
    across, down = pane.region, pilot.app.screen.query_one("#body").region.bottom
    rows = screen_text(pilot.app).splitlines()[across.y : min(across.bottom, down)]
    return [row[across.x : across.right].rstrip() for row in rows if row[across.x :].strip()]


async def test_a_change_outside_shows_by_itself(demo: Path) -> None:
    """An editor's change to the file is on the screen after the next look."""
    async with opened(demo, (80, 24)) as (pilot, _):
        path = demo / "project.toml"
        path.write_text(path.read_text().replace("Orchard tool shed", "Orchard store"))
        screen = pilot.app.screen
        assert isinstance(screen, BenchScreen)
        screen.look()
        await pilot.pause()
        assert "Orchard store" in screen_text(pilot.app)
        assert "Changed outside" in screen_text(pilot.app)


async def test_names_are_never_markup(demo: Path) -> None:
    """Brackets in a name are shown as they are."""
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('"SE post"', '"SE [/] [red]post"'))
    async with opened(demo, (120, 40)) as (pilot, _):
        assert "SE [/] [red]post" in screen_text(pilot.app)


async def test_a_project_that_cannot_be_read_is_left_with_its_message(demo: Path) -> None:
    """No traceback: the message is kept for when the terminal is back, and the status is 2."""
    (demo / "project.toml").write_text("format = 1\nname = \n")
    app = BenchmateApp(str(demo), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
    assert app.return_code == 2
    assert "project.toml:2" in app.farewell


async def test_several_projects_are_chosen_from(demo: Path) -> None:
    """A folder of projects asks which; the one chosen opens."""
    other = demo.parent / "bare"
    other.mkdir()
    (other / "project.toml").write_text('format = 1\nname = "Bare"\n')
    app = BenchmateApp(str(demo.parent), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        assert "Which project?" in screen_text(app)
        await pilot.press("enter")
        await pilot.pause()
        assert "No timbers yet" in screen_text(app)


async def test_what_cannot_be_kept_is_told_and_not_ticked(
    demo: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A full disk: the box stays open, and the message stays until the next move."""

    def full(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "full")

    async with opened(demo, (80, 24)) as (pilot, desk):
        monkeypatch.setattr(os, "fsync", full)
        await pilot.press("space")
        assert desk.step.id == "foot-tenon/far-cheek"
        assert desk.standing.tick is None
        text = screen_text(pilot.app)
        assert "Not kept: the disk is full; make room on it, then try again" in text
        assert "8 of 49 done" in text
        monkeypatch.undo()
        await pilot.press("space")
        assert "9 of 49 done" in screen_text(pilot.app)


async def test_a_tick_is_on_disk_before_the_screen_shows_it(
    demo: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """When the file has just been written the screen still shows the step open."""
    seen: list[str] = []
    async with opened(demo, (80, 24)) as (pilot, _):
        keep = Keeper.keep

        def watched(keeper: Keeper, timber: str, change: Change) -> Progress:
            kept = keep(keeper, timber, change)
            on_disk = Keeper.read(keeper.folder).progress(timber)
            assert on_disk.tick("foot-tenon/far-cheek") is not None
            seen.append(screen_text(pilot.app))
            return kept

        monkeypatch.setattr(Keeper, "keep", watched)
        await pilot.press("space")
        assert "8 of 49 done" in seen[0]
        assert "9 of 49 done" in screen_text(pilot.app)


async def test_a_size_goes_to_the_timber_it_was_typed_for(demo: Path) -> None:
    """What is changed outside while the form is open waits until the form is closed."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        bench_screen = pilot.app.screen
        assert isinstance(bench_screen, BenchScreen)
        await pilot.press("m", "end", *["backspace"] * 10, *"7-1/8")
        path = demo / "project.toml"
        path.write_text(path.read_text().replace('"post-se"', '"post-xx"'))
        bench_screen.look()
        await pilot.press("enter")
        assert "7-1/8 in" in (demo / "progress" / "post-se.toml").read_text()
        bench_screen.look()
        await pilot.pause()
        assert "post-se" not in {timber.id for timber in desk.bench.timbers}
        assert "progress/post-se.toml is kept" in " ".join(screen_text(pilot.app).split())


async def test_the_end_view_can_be_reached_in_a_small_window(demo: Path) -> None:
    """f turns to the end grain, which shows both reference faces and their arris."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        for _ in range(len(desk.faces()) - 1):
            await pilot.press("f")
        text = screen_text(pilot.app)
        assert "South face 1" in text
        assert "2 East face" in text or "East face 2" in text
        assert UNICODE.arris in text


async def test_the_mouse_takes_up_a_timber_and_opens_a_step(demo: Path) -> None:
    """A click on a timber, a double click on a step."""
    async with opened(demo, (120, 40)) as (pilot, desk):
        row = next(
            y for y, line in enumerate(screen_text(pilot.app).splitlines()) if "NE post" in line
        )
        await pilot.click(offset=(3, row))
        assert desk.timber == "post-ne"
        await pilot.double_click(offset=(10, 20))
        await pilot.pause()
        assert not isinstance(pilot.app.screen, BenchScreen)


async def test_nothing_of_a_timber_taken_away_stays_on_the_screen(demo: Path) -> None:
    """When an editor empties the project, no figure, word or drawing of the old one is left."""
    async with opened(demo, (120, 40)) as (pilot, _):
        screen = pilot.app.screen
        assert isinstance(screen, BenchScreen)
        (demo / "project.toml").write_text('format = 1\nname = "Bare"\n')
        screen.look()
        await pilot.pause()
        text = screen_text(pilot.app)
        assert "No timbers yet" in text
        for left_over in ("Far cheek", "South face", "towards", "foot"):
            assert left_over not in text.replace("progress/post-", "").split("Changed outside")[0]


@pytest.mark.parametrize("size", [(80, 24), (120, 40)])
async def test_a_name_is_changed_with_what_moves_shown_first(
    demo: Path, size: tuple[int, int]
) -> None:
    """l, the name, another figure, what it moves, enter; u takes it back."""
    async with opened(demo, size) as (pilot, desk):
        before = desk.bench.project.lengths["bench top"].text()
        await pilot.press("l", *["down"] * 8, "enter")
        assert "bench top, now 3' 2-1/2" in screen_text(pilot.app)
        await pilot.press("end", *["backspace"] * 10, *"3' 3")
        await pilot.pause()
        assert "SW post" in screen_text(pilot.app)
        await pilot.press("enter")
        assert isinstance(pilot.app.screen, BenchScreen)
        assert "To look at again: SW post" in " ".join(screen_text(pilot.app).split())
        await pilot.press("u")
        assert desk.bench.project.lengths["bench top"].text() == before


async def test_a_step_can_be_copied_in_words(demo: Path) -> None:
    """All of it, with its figure, as plain text."""
    async with opened(demo, (80, 24)) as (pilot, desk):
        await pilot.press("ctrl+c")
        copied = pilot.app.clipboard
        assert copied == desk.plain_words()
        assert copied.splitlines()[0] == "Orchard tool shed, SE post"
        assert '3-1/2" from the South face' in copied
        assert "waste: Towards the North face." in copied
        assert "on the clipboard" in screen_text(pilot.app)
