"""The frame as large as the window: going through it, turning it, taking a timber up."""

import shutil
from pathlib import Path

import pytest
from textual.app import App

import benchmate
from benchmate.measure.length import Length
from benchmate.model.progress import Measured
from benchmate.tui.app import BenchmateApp
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.where import WhereScreen
from benchmate.workbench.actions import Sizes
from tests.tui.drawing.key_frames import shed
from tests.tui.pictures import screen_text

SIZES = [(80, 24), (120, 40)]
LOOSE = "loose-brace"
ORCHARD = Path(__file__).parents[3] / "projects" / "orchard-tool-shed"


def about(timber: str) -> tuple[str, ...]:
    """What a caller would tell of a timber."""
    if timber == LOOSE:
        return ("Loose [brace], brace", "It has no place yet.")
    name = next(bar.name for bar in shed() if bar.id == timber)
    return (f"{name}, red oak 7 x 8", f"Where {name} stands.", "Its first face looks South.")


class Shop(App[None]):
    """The screen opened over nothing, and what it gave."""

    CSS_PATH = Path(benchmate.__file__).parent / "tui" / "benchmate.tcss"

    def __init__(self, current: str, glyphs: Glyphs = UNICODE) -> None:
        super().__init__()
        bars = shed()
        self.timbers = (*(bar.id for bar in bars), LOOSE)
        self.given: list[str | None] = []
        self.where = WhereScreen(bars, self.timbers, current, about, glyphs)

    def on_mount(self) -> None:
        """Open it."""
        self.push_screen(self.where, self.given.append)


@pytest.mark.parametrize("size", SIZES)
async def test_a_framer_goes_through_the_frame(size: tuple[int, int]) -> None:
    """The timber, its place in words, plan and elevation; on, back, round and up."""
    app = Shop("se-post")
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        text = screen_text(app)
        place = app.timbers.index("se-post")
        for words in (
            "SE post, red oak 7 x 8",
            f"{place + 1} of 39",
            "Where SE post stands.",
            "Its first face looks South.",
            "▴ N",
            "S ◂ from the East ▸ N",
            "SE post",
            UNICODE.block,
        ):
            assert words in text

        await pilot.press("v")
        assert "W ◂ from the South ▸ E" in screen_text(app)
        await pilot.press("down", "j", "right_square_bracket", "k", "left_square_bracket")
        text = screen_text(app)
        assert "NW post, red oak 7 x 8" in text
        assert "Where SE post stands." not in text
        assert "N ◂ from the West ▸ S" in text
        await pilot.press("up", "enter")
        assert app.given == ["se-post"]


@pytest.mark.parametrize("key", ["escape", "q", "ctrl+g"])
async def test_it_closes_without_taking_a_timber_up(key: str) -> None:
    """Escape, and two keys that need not wait for it."""
    app = Shop("se-post")
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.press("down", key)
        assert app.given == [None]


async def test_it_stops_at_either_end() -> None:
    """Home and end, and no way round past them."""
    app = Shop("se-post")
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.press("home", "up")
        assert " 1 of 39 " in screen_text(app)
        await pilot.press("end", "down")
        assert " 39 of 39 " in screen_text(app)


async def test_a_timber_without_a_place_is_told_of_and_not_drawn() -> None:
    """The words say so; neither plan nor elevation shows another timber in its stead."""
    app = Shop(LOOSE)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        text = screen_text(app)
        assert "Loose [brace], brace" in text
        assert "It has no place yet." in text
        assert UNICODE.block not in text
        assert "plan" not in text
        await pilot.press("enter")
        assert app.given == [LOOSE]


async def test_plain_characters_do() -> None:
    """A terminal of plain characters shows all of it."""
    app = Shop("se-post", ASCII)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        text = screen_text(app)
        assert text.isascii()
        assert "##" in text
        assert "S < from the East > N" in text


async def test_the_keys_in_the_footer_can_be_clicked() -> None:
    """A click on one is as good as the key."""
    app = Shop("se-post")
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        footer = screen_text(app).splitlines()[23]
        await pilot.click(offset=(footer.index("arrows"), 23))
        assert "NW post" in screen_text(app).splitlines()[0]
        await pilot.click(offset=(footer.index("next side"), 23))
        assert "from the North" in screen_text(app)
        await pilot.click(offset=(footer.index("take"), 23))
        assert app.given == ["nw-post"]


async def test_what_stops_a_timber_is_told_whole_before_all_else(tmp_path: Path) -> None:
    """At 80 x 24 with its remedy, and no length of the timber is told beside it."""
    folder = Path(shutil.copytree(ORCHARD, tmp_path / "orchard"))
    app = BenchmateApp(str(folder), UNICODE)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        desk = screen.desk
        assert desk is not None
        desk.go_to("post-se", "foot-tenon/section")
        kept = desk.bench.sizes("post-se", desk.step)
        thin = Measured(first=Length.inches(3))
        desk.set_sizes(Sizes(place=kept.place, measured=thin, as_cut=kept.as_cut))
        await pilot.press("w")
        stops = [line for line in desk.about("post-se") if line.startswith("STOP")]
        shown = " ".join(screen_text(app).split())
        assert stops
        assert all(" ".join(stop.split()) in shown for stop in stops)
        assert "houlder to shoulder" not in shown
