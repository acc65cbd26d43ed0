"""The pane that shows the key: in any room, painted only when it changes, mute without a place."""

from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from textual.app import App, ComposeResult
from textual.strip import Strip

import benchmate
from benchmate.tui.drawing.key import View, draw_key, draw_keys
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.panes import key_pane
from benchmate.tui.panes.key_pane import ROOM_FOR_TWO, KeyPane
from tests.tui.drawing.key_frames import corner_posts, shed

if TYPE_CHECKING:
    from rich.style import Style


class CountedPane(KeyPane):
    """A key that counts how often it is painted."""

    painted = 0

    def render_line(self, y: int) -> Strip:
        """One row; the first of them counts."""
        self.painted += not y
        return super().render_line(y)


class Bench(App[None]):
    """A key under the program's own stylesheet, as large as the window."""

    CSS_PATH = Path(benchmate.__file__).parent / "tui" / "benchmate.tcss"

    def __init__(self, glyphs: Glyphs = UNICODE) -> None:
        super().__init__()
        self.pane = CountedPane(glyphs=glyphs)

    def compose(self) -> ComposeResult:
        """Nothing else."""
        yield self.pane

    @property
    def lines(self) -> list[str]:
        """What the pane shows."""
        return [self.pane.render_line(y).text for y in range(self.pane.content_size.height)]


@pytest.mark.parametrize("size", [(20, 6), (ROOM_FOR_TWO - 1, 10)])
async def test_a_narrow_pane_turns_through_all_views(size: tuple[int, int]) -> None:
    """The plan first, then the elevations, then the plan again."""
    app = Bench()
    async with app.run_test(size=size):
        for turn, view in ((0, View.PLAN), (1, View.FROM_EAST), (5, View.PLAN)):
            app.pane.show_timber(shed(), "se-post", turn)
            drawing = draw_key(
                shed(), "se-post", view, width=size[0], height=size[1], glyphs=UNICODE
            )
            assert "\n".join(app.lines) == drawing.text


@pytest.mark.parametrize("size", [(ROOM_FOR_TWO, 6), (44, 10), (200, 50)])
async def test_a_wide_pane_keeps_the_plan_beside_an_elevation(size: tuple[int, int]) -> None:
    """Only the elevation turns."""
    app = Bench(ASCII)
    async with app.run_test(size=size):
        for turn, view in ((0, View.FROM_EAST), (1, View.FROM_SOUTH), (4, View.FROM_EAST)):
            app.pane.show_timber(shed(), "se-post", turn)
            drawing = draw_keys(
                shed(),
                "se-post",
                (View.PLAN, view),
                width=size[0],
                height=size[1],
                glyphs=ASCII,
            )
            assert "\n".join(app.lines) == drawing.text


async def test_it_is_painted_only_when_it_changes() -> None:
    """The same timber again costs nothing; another one, or another side, one painting."""
    app = Bench()
    async with app.run_test(size=(44, 10)) as pilot:
        app.pane.show_timber(shed(), "se-post")
        await pilot.pause()
        before = app.pane.painted
        app.pane.show_timber(shed(), "se-post")
        await pilot.pause()
        assert app.pane.painted == before
        app.pane.show_timber(shed(), "sw-post")
        await pilot.pause()
        assert app.pane.painted == before + 1
        app.pane.show_timber(shed(), "sw-post", 1)
        await pilot.pause()
        assert app.pane.painted == before + 2


async def test_the_same_timber_is_not_drawn_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """Going from step to step of one timber leaves its key alone."""
    app = Bench()
    async with app.run_test(size=(44, 10)):
        app.pane.show_timber(shed(), "se-post")
        monkeypatch.delattr(key_pane, "draw_keys")
        app.pane.show_timber(shed(), "se-post")
        with pytest.raises(NameError):
            app.pane.show_timber(shed(), "sw-post")


async def test_a_timber_without_a_place_leaves_it_blank() -> None:
    """Nothing is said, and nothing of the timber before is left."""
    app = Bench()
    async with app.run_test(size=(44, 10)):
        app.pane.show_timber(corner_posts(), "se-post")
        assert "SE post" in "\n".join(app.lines)
        app.pane.show_timber(corner_posts(), "loose")
        assert not "".join(app.lines).strip()


async def test_it_is_drawn_anew_in_a_new_room() -> None:
    """A window made narrower leaves one view of the two."""
    app = Bench()
    async with app.run_test(size=(60, 12)) as pilot:
        app.pane.show_timber(shed(), "se-post")
        assert "from the East" in "\n".join(app.lines)
        await pilot.resize_terminal(30, 8)
        await pilot.pause()
        assert "from the East" not in "\n".join(app.lines)
        assert "plan" in app.lines[0]


@pytest.mark.parametrize("theme", ["textual-dark", "textual-light"])
async def test_the_timber_in_hand_stands_out_from_the_others(theme: str) -> None:
    """Bold and of another colour on dark and light; the block does it where there is no colour."""
    app = Bench()
    async with app.run_test(size=(44, 10)):
        app.theme = theme
        app.pane.show_timber(shed(), "se-post")
        styles: dict[str, Style] = {
            segment.text.strip()[:1]: segment.style
            for y in range(10)
            for segment in app.pane.render_line(y)
            if segment.style is not None
        }
        mark, other = styles[UNICODE.block], styles[UNICODE.end_on]
        assert mark.bold
        assert not other.bold
        assert mark.color != other.color
