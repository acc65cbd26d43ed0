"""The line list, driven as a user drives it."""

from pathlib import Path

import pytest
from textual.app import App, ComposeResult
from textual.color import Color

import benchmate
from benchmate.tui.glyphs import ASCII
from benchmate.tui.line_list import LineList
from benchmate.tui.rows import Row
from tests.tui.nasty import NASTY

MANY = tuple(Row(text=f"Timber {number}", lead=".") for number in range(10_000))
GROUPED = (
    Row(text="Foot tenon", heading=True),
    Row(text="Shoulder"),
    Row(text="Cheeks"),
    Row(text="Head tenon", heading=True),
    Row(text="Shoulder", bold=True),
    Row(text="Relief", dim=True),
)


class Listed(App[None]):
    """One list, and what it reported."""

    CSS_PATH = Path(benchmate.__file__).parent / "tui" / "benchmate.tcss"

    def __init__(self, rows: tuple[Row, ...], cursor: int = 0) -> None:
        super().__init__()
        self.moves: list[int] = []
        self.opened: list[int] = []
        self.list = LineList(
            rows=rows, cursor=cursor, on_move=self.moves.append, glyphs=ASCII, empty="No timbers"
        )

    def compose(self) -> ComposeResult:
        """The list alone."""
        yield self.list

    def on_line_list_opened(self, message: LineList.Opened) -> None:
        """Note what was opened."""
        assert message.control is self.list
        self.opened.append(message.index)

    def drawn(self) -> list[str]:
        """The lines in sight, without the blanks at line ends."""
        return [self.list.render_line(y).text.rstrip() for y in range(self.list.size.height)]


async def test_keys_move_through_ten_thousand_rows() -> None:
    """Every key moves as far as it says, reports it once, and keeps the cursor in sight.

    g is the bench's own key, so it moves no list.
    """
    app = Listed(MANY)
    async with app.run_test(size=(40, 10)) as pilot:
        for key, cursor, top in (
            ("down", 1, 0),
            ("j", 2, 0),
            ("k", 1, 0),
            ("pagedown", 10, 1),
            ("end", 9_999, 9_990),
            ("up", 9_998, 9_990),
            ("pageup", 9_989, 9_989),
            ("g", 9_989, 9_989),
            ("G", 9_989, 9_989),
            ("home", 0, 0),
        ):
            await pilot.press(key)
            assert (app.list.cursor, app.list.scroll_offset.y) == (cursor, top), key
            assert app.drawn()[cursor - top].startswith(f">. Timber {cursor}")
        assert app.moves == [1, 2, 1, 10, 9_999, 9_998, 9_989, 0]


async def test_a_move_to_nowhere_is_not_reported() -> None:
    """At the ends of the list keys do nothing."""
    app = Listed(MANY[:2])
    async with app.run_test(size=(40, 10)) as pilot:
        await pilot.press("up", "home", "pageup", "end", "down", "pagedown")
        assert app.moves == [1]


async def test_a_move_repaints_two_lines(monkeypatch: pytest.MonkeyPatch) -> None:
    """A cursor move within sight repaints the line left and the line reached, nothing else."""
    app = Listed(MANY)
    async with app.run_test(size=(40, 10)) as pilot:
        lines: list[int] = []
        monkeypatch.setattr(app.list, "refresh_line", lines.append)
        await pilot.press("down")
        assert lines == [0, 1]


async def test_headings_are_passed_over_and_kept_in_sight() -> None:
    """The cursor never stands on a heading; the heading over the first row stays in view."""
    app = Listed(GROUPED)
    async with app.run_test(size=(40, 3)) as pilot:
        assert app.list.cursor == 1
        await pilot.press("down", "down", "down")
        assert app.moves == [2, 4, 5]
        await pilot.press("home")
        assert app.drawn()[:2] == [" Foot tenon", ">Shoulder"]


async def test_mouse_selects_and_double_click_opens() -> None:
    """One click moves, two open; a heading and the blank below the rows do nothing."""
    app = Listed(GROUPED)
    async with app.run_test(size=(40, 10)) as pilot:
        await pilot.click(LineList, offset=(3, 2))
        assert (app.moves, app.opened) == ([2], [])
        await pilot.click(LineList, offset=(3, 3))
        await pilot.click(LineList, offset=(3, 9))
        assert (app.moves, app.opened) == ([2], [])
        await pilot.double_click(LineList, offset=(3, 4))
        assert (app.moves, app.opened) == ([2, 4], [4])
        await pilot.press("enter")
        assert app.opened == [4, 4]


async def test_empty_list_says_so() -> None:
    """A list without rows shows its message, has no cursor and ignores keys."""
    app = Listed(())
    async with app.run_test(size=(40, 10)) as pilot:
        await pilot.press("down", "end", "enter")
        await pilot.click(LineList, offset=(3, 0))
        assert app.list.cursor is None
        assert (app.moves, app.opened) == ([], [])
        assert app.drawn() == [" No timbers", *[""] * 9]


async def test_the_first_paint_shows_the_cursor() -> None:
    """A list that opens on a far row has it in sight without a key pressed."""
    app = Listed(MANY, cursor=5_000)
    async with app.run_test(size=(40, 10)):
        assert f">. Timber {app.list.cursor}" in app.drawn()
        assert app.list.cursor == 5_000


async def test_showing_rows_keeps_the_place() -> None:
    """New rows of the same number leave the scroll alone; fewer bring it back into the list."""
    app = Listed(MANY, cursor=500)
    async with app.run_test(size=(40, 10)) as pilot:
        top = app.list.scroll_offset.y
        app.list.show(tuple(Row(text=f"Stick {n}") for n in range(10_000)), 498)
        await pilot.pause()
        assert app.list.scroll_offset.y == top
        assert ">Stick 498" in app.drawn()
        app.list.show(MANY[:12], 11)
        await pilot.pause()
        assert app.drawn()[-1] == ">. Timber 11"
        app.list.show((), 0)
        await pilot.pause()
        assert app.drawn()[0] == " No timbers"
        app.list.show(MANY, 5_000)
        await pilot.pause()
        assert app.drawn()[-1] == ">. Timber 5000"
        assert app.moves == []


async def test_rows_shown_before_the_screen_opens() -> None:
    """A list may be filled before it has a size."""
    app = Listed(())
    app.list.show(MANY, 70)
    async with app.run_test(size=(40, 10)):
        assert app.drawn()[-1] == ">. Timber 70"


async def test_the_list_may_stand_inside_a_border() -> None:
    """A click counts lines from the first row, not from the border above it."""
    app = Listed(MANY)
    async with app.run_test(size=(40, 10)) as pilot:
        app.list.styles.border = ("ascii", "white")
        await pilot.pause()
        await pilot.click(LineList, offset=(5, 3))
        await pilot.click(LineList, offset=(5, 0))
        assert app.moves == [2]
        await pilot.press("end")
        assert app.list.render_line(7).text.startswith(">. Timber 9999")


async def test_only_changed_rows_are_repainted(monkeypatch: pytest.MonkeyPatch) -> None:
    """Showing rows with one changed repaints that line alone, and those out of sight not at all."""
    app = Listed(MANY)
    async with app.run_test(size=(40, 10)):
        lines: list[int] = []
        monkeypatch.setattr(app.list, "refresh_line", lines.append)
        ticked = Row(text="Timber 4", lead="x")
        for _ in range(2):
            app.list.show((*MANY[:4], ticked, *MANY[5:9_000], ticked, *MANY[9_001:]), 0)
        assert lines == [4]
        assert app.list.rows[9_000] == ticked
        app.list.show((*MANY[:2], ticked, *app.list.rows[3:]), 0)
        assert lines == [4, 2]


async def test_setting_the_cursor_is_not_a_move() -> None:
    """Code that sets the cursor is not told of it; off the rows it takes the nearest."""
    app = Listed(GROUPED)
    async with app.run_test(size=(40, 3)):
        for asked, got in ((3, 4), (-7, 1), (99, 5)):
            app.list.cursor = asked
            assert app.list.cursor == got
        assert app.moves == []
        assert ">Relief" in app.drawn()


async def test_cursor_reads_without_colour() -> None:
    """The cursor row is bold, and reversed as well where the list has the keys."""
    app = Listed(GROUPED)
    async with app.run_test(size=(40, 10)) as pilot:
        (focused,) = app.list.render_line(1)
        assert focused.style is not None
        assert focused.style.reverse
        app.set_focus(None)
        await pilot.pause()
        (blurred,) = app.list.render_line(1)
        assert blurred.style is not None
        assert blurred.style.bold
        assert not blurred.style.reverse


@pytest.mark.parametrize("theme", ["textual-light", "textual-dark"])
async def test_every_row_stands_out_from_its_background(theme: str) -> None:
    """On light and dark themes ordinary, bold, dim and heading rows are all plain to read."""
    app = Listed(GROUPED)
    async with app.run_test(size=(40, 10)) as pilot:
        app.theme = theme
        await pilot.pause()
        for y in range(len(GROUPED)):
            (segment,) = app.list.render_line(y)
            assert segment.style is not None
            assert segment.style.color is not None
            assert segment.style.bgcolor is not None
            ink, ground = (
                Color.from_rich_color(color)
                for color in (segment.style.color, segment.style.bgcolor)
            )
            assert abs(ink.brightness - ground.brightness) > 0.4


async def test_nasty_text_is_drawn_as_text() -> None:
    """No text crashes the list, widens a row, is read as markup or keeps a control code."""
    rows = tuple(Row(text=text, lead=text[:3], tail=text[:9]) for text in NASTY)
    app = Listed((*rows, Row(text="[red]x [/]")))
    async with app.run_test(size=(40, len(NASTY) + 1)) as pilot:
        await pilot.pause()
        for y in range(len(NASTY) + 1):
            strip = app.list.render_line(y)
            assert strip.cell_length == app.list.scrollable_content_region.width
            assert strip.text.isprintable()
        assert app.drawn()[-1] == " [red]x [/]"
