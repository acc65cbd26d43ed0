"""Whole edits from the bench, with the keyboard alone."""

import shutil
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.pilot import Pilot
from textual.widgets import Input

from benchmate.store.keeper import Keeper
from benchmate.tui.app import BenchmateApp
from benchmate.tui.desk import Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.screens.bench import BenchScreen
from benchmate.tui.screens.edit import PAUSE, EditScreen
from benchmate.tui.screens.menu import MenuScreen
from benchmate.workbench.bench import Bench
from tests.tui.pictures import screen_text

PROJECTS = Path(__file__).parents[3] / "projects"

SIZES = pytest.mark.parametrize("size", [(80, 24), (120, 40)])


@pytest.fixture
def shed(tmp_path: Path) -> Path:
    """A copy of the tool shed, free to change."""
    return Path(shutil.copytree(PROJECTS / "orchard-tool-shed", tmp_path / "shed"))


@asynccontextmanager
async def opened(
    project: Path, size: tuple[int, int] = (120, 40)
) -> AsyncIterator[tuple[Pilot[None], Desk]]:
    """The program open on a project."""
    app = BenchmateApp(str(project), UNICODE)
    async with app.run_test(size=size) as pilot:
        await pilot.pause()
        screen = app.screen
        assert isinstance(screen, BenchScreen)
        assert screen.desk is not None
        yield pilot, screen.desk


def words_on(pilot: Pilot[None]) -> str:
    """What the screen says, on one line."""
    return " ".join(screen_text(pilot.app).split())


async def choose(pilot: Pilot[None], *words: str) -> None:
    """Open the menu, and choose one thing after another by how it begins."""
    if not isinstance(pilot.app.screen, MenuScreen):
        await pilot.press("e")
    for word in words:
        screen = pilot.app.screen
        assert isinstance(screen, MenuScreen)
        texts = [row.text for row in screen._list.rows]
        place = next(at for at, text in enumerate(texts) if text.startswith(word))
        await pilot.press("home", *["down"] * place, "enter")
        await pilot.pause()


async def fill(pilot: Pilot[None], texts: Mapping[str, str], *, typed: bool = False) -> None:
    """Fill fields by their keys: pasted in, or key by key."""
    screen = pilot.app.screen
    assert isinstance(screen, EditScreen)
    form = screen._form
    for key, text in texts.items():
        row = form.row_of((key,))
        assert row is not None
        if typed:
            fields = [at for at, line in enumerate(form.rows()) if not line.heading]
            steps = fields.index(row) - fields.index(form.row)
            await pilot.press(*["down" if steps > 0 else "up"] * abs(steps), "ctrl+u", *text)
        else:
            screen._fields.cursor = row
            screen._moved(row)
            screen._input.value = text
        await pilot.pause()
        assert form.blank is not None
        assert (form.blank.key, form.text) == (key, text)
    await pilot.pause(2 * PAUSE)


GIRT = {
    "name": "South girt",
    "id": "girt-south",
    "kind": "girt",
    "section": "6 x 4",
    "first_face": "south",
    "second_face": "up",
    "reference_end": "west",
    "at.north": "line a",
    "at.up": "sill top + 2' 6",
}

TENON = {"length": "3", "thickness": "1-1/2", "set_back": "2"}


@pytest.mark.parametrize("size", [(80, 24), (200, 60)])
async def test_a_framer_adds_a_girt_between_two_posts(shed: Path, size: tuple[int, int]) -> None:
    """The timber, its two tenons with their mates by place, its marks; and u takes it all back."""
    before = (shed / "project.toml").read_bytes()
    async with opened(shed, size) as (pilot, desk):
        await choose(pilot, "A new timber")
        await fill(pilot, GIRT)
        text = words_on(pilot)
        assert "Nothing says yet where" in text
        assert (shed / "project.toml").read_bytes() == before

        await pilot.press("enter")
        await pilot.pause()
        await choose(pilot, "tenon")
        await fill(pilot, {"into": ""} | TENON)
        screen = pilot.app.screen
        assert isinstance(screen, EditScreen)
        assert "mortise" not in words_on(pilot)
        await fill(pilot, {"into": ""})
        assert screen._form.picks()[:3] == ("post-sw", "post-sm", "post-se")
        await pilot.press("tab")
        await pilot.pause(2 * PAUSE)
        assert screen._input.value == "post-sw"
        assert "the east end of girt-south" in words_on(pilot)

        await pilot.press("enter")
        await pilot.pause()
        await choose(pilot, "tenon")
        await fill(pilot, {"into": "post-sm"} | TENON)
        text = words_on(pilot)
        assert "New: South girt, " in text
        assert "Moves " in text
        assert (shed / "project.toml").read_bytes() == before

        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
        assert desk.timber == "girt-south"
        assert [work.id for work in desk.bench.frame.works_on("girt-south")] == [
            "girt-south-west",
            "girt-south-east",
        ]
        marks = {step.id for step in desk.bench.walk("girt-south").steps}
        assert {"west-end-tenon/shoulder", "east-end-tenon/shoulder"} <= marks
        mortise = {step.id for step in desk.bench.walk("post-sm").steps}
        assert "girt-south-east-mortise/start" in mortise
        # 6' 8" from west face to west face, less the 7" of the SW post: 6' 1" between the faces.
        assert desk.bench.frame.stick("girt-south").body.exact_text() == '73"'

        await pilot.press("u")
        await pilot.pause()
        assert (shed / "project.toml").read_bytes() == before
        assert "girt-south" not in {timber.id for timber in desk.bench.timbers}


@SIZES
async def test_a_thicker_tenon_shows_what_it_moves_before_it_is_kept(
    shed: Path, size: tuple[int, int]
) -> None:
    """Both sides of the joint, what of them is ticked, and who says what is usual."""
    before = (shed / "project.toml").read_bytes()
    async with opened(shed, size) as (pilot, desk):
        desk.go_to("post-sw", "foot-tenon/far-cheek")
        await choose(pilot, "Change sw-foot")
        await fill(pilot, {"thickness": "2"}, typed=True)
        text = words_on(pilot)
        assert "Usual, 1-3/4: a quarter of the timber" in text
        assert "TFG-offset" in text
        assert "ALREADY CUT: SW post, foot tenon" in text
        assert (shed / "project.toml").read_bytes() == before

        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
        after = (shed / "project.toml").read_bytes()
        lines = zip(before.splitlines(), after.splitlines(), strict=True)
        assert [pair for pair in lines if pair[0] != pair[1]] == [
            (b'thickness = "1-3/4"', b'thickness = "2"')
        ]
        assert desk.bench.walk("post-sw").look_again > 0
        await pilot.press("u")
        await pilot.pause()
        assert (shed / "project.toml").read_bytes() == before


async def test_a_sill_changed_after_half_the_posts_are_cut(shed: Path) -> None:
    """A stop stands first; a deeper sill moves its far sides, and no post that is cut."""
    cut = ("post-sw", "post-se", "post-sm")
    bench = Bench(Keeper.open(shed))
    for post in cut:
        layout = bench.walk(post).layout
        for step in layout.steps:
            if step.feature == "foot-tenon":
                bench.tick(post, step)
    bench.close()
    async with opened(shed) as (pilot, desk):
        desk.go_to("sill-south", "")
        await choose(pilot, "Change South sill")
        await fill(pilot, {"section": "8 x 3"})
        screen = pilot.app.screen
        assert isinstance(screen, EditScreen)
        assert screen._weighed is not None
        lines = screen._weighed.lines
        assert lines[0].startswith("STOP on ")
        assert "South sill" in lines[0]
        await fill(pilot, {"section": "9 x 9"})
        assert screen._weighed is not None
        lines = screen._weighed.lines
        assert lines[0].startswith("Moves ")
        assert not any(line.startswith(("SW post", "SE post", "ALREADY CUT")) for line in lines)
        assert "South sill, mortise for SE post: depth: 4-3/8" in " ".join(lines)
        assert 'section = "9 x 9"' not in (shed / "project.toml").read_text()
        await pilot.press("enter")
        await pilot.pause()
        assert 'section = "9 x 9"' in (shed / "project.toml").read_text()
        assert not any(desk.bench.walk(post).look_again for post in ("post-se", "post-sm"))


async def test_an_error_is_told_while_typing_and_enter_goes_to_it(shed: Path) -> None:
    """A caret where it is known, a mark at the field, and nothing is kept."""
    async with opened(shed) as (pilot, _):
        await choose(pilot, "Change se-foot")
        await fill(pilot, {"length": "3-1/2x", "thickness": "2"})
        text = words_on(pilot)
        assert "Length: `x` is not a unit" in text
        assert "^" in text
        assert "! Length: 3-1/2x" in text
        await pilot.press("enter")
        screen = pilot.app.screen
        assert isinstance(screen, EditScreen)
        assert screen._form.blank is not None
        assert screen._form.blank.key == "length"
        await pilot.press("escape")
        assert "Escape again leaves" in words_on(pilot)
        await pilot.press("escape")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)


async def test_what_is_usual_is_faint_and_put_in_only_by_tab(shed: Path) -> None:
    """An empty field stays empty until the framer takes what is offered."""
    async with opened(shed) as (pilot, _):
        await choose(pilot, "A new joint", "tenon")
        await fill(pilot, {"end": "foot", "into": "sill-south", "thickness": ""})
        screen = pilot.app.screen
        assert isinstance(screen, EditScreen)
        field = screen.query_one(Input)
        assert field.placeholder == "1-3/4?"
        assert field.value == ""
        await pilot.press("tab")
        assert field.value == "1-3/4"


async def test_removing_a_post_says_what_goes_with_it_and_asks_once(shed: Path) -> None:
    """Its joints by name, its ticks that are kept, and the tie's end that is open then."""
    async with opened(shed) as (pilot, desk):
        await choose(pilot, "Remove SE post")
        text = words_on(pilot)
        assert "With it go se-foot (South sill), se-head (South plate)" in text
        assert "ticks and its sizes and notes stay in progress/post-se.toml" in text
        assert "East tie, south end at: 6-1/2 in" in text
        await pilot.pause(2 * PAUSE)
        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
        assert (shed / "progress/post-se.toml").exists()
        assert [found.code for found in desk.bench.strays()] == ["progress-without-timber"]
        await pilot.press("u")
        await pilot.pause()
        assert desk.bench.strays() == ()


async def test_joints_that_were_begun_and_left_keep_nothing(shed: Path) -> None:
    """A new timber without its joints is not half there, and that is said."""
    before = (shed / "project.toml").read_bytes()
    async with opened(shed) as (pilot, _):
        await choose(pilot, "A new timber")
        await fill(pilot, GIRT)
        await pilot.press("enter")
        await pilot.pause()
        await pilot.press("e")
        await pilot.pause()
        assert "Nothing was added: the joints of girt-south were not all given." in words_on(pilot)
        assert (shed / "project.toml").read_bytes() == before


async def test_a_second_program_only_reads_and_says_so(shed: Path) -> None:
    """The form may be looked at; no key types in it."""
    writer = Keeper.open(shed)
    async with opened(shed) as (pilot, _):
        await choose(pilot, "Change se-foot")
        assert "READ ONLY: another benchmate has this project open" in words_on(pilot)
        await pilot.press("9", "enter", "ctrl+g")
        await pilot.pause()
        assert isinstance(pilot.app.screen, BenchScreen)
    writer.close()


async def test_what_another_wrote_meanwhile_is_not_written_over(shed: Path) -> None:
    """The form stays with what was typed, and says why."""
    async with opened(shed) as (pilot, _):
        await choose(pilot, "Change se-foot")
        await fill(pilot, {"length": "3"})
        path = shed / "project.toml"
        path.write_text(path.read_text() + "# by hand\n")
        await pilot.press("enter")
        await pilot.pause()
        assert isinstance(pilot.app.screen, EditScreen)
        assert "has just been changed outside" in words_on(pilot)
        assert path.read_text().endswith("# by hand\n")


async def test_an_empty_project_gets_its_first_timber(tmp_path: Path) -> None:
    """Nobody is sent to the file: e is all it takes."""
    project = tmp_path / "bare"
    project.mkdir()
    (project / "project.toml").write_text('format = 1\nname = "Bare"\n')
    async with opened(project, (80, 24)) as (pilot, desk):
        assert "No timbers yet: e adds one." in words_on(pilot)
        await choose(pilot, "A new timber")
        post = {"name": "Post", "id": "post", "kind": "post", "section": "7 x 7", "length": "8'"}
        stands = {"first_face": "south", "second_face": "west", "reference_end": "foot"}
        await fill(pilot, post | stands)
        await pilot.press("enter")
        await pilot.pause()
        assert desk.timber == "post"
        await pilot.press("u")
        await pilot.pause()
        assert (project / "project.toml").read_text() == 'format = 1\nname = "Bare"\n'
        assert "No timbers yet" in words_on(pilot)
