"""The header and footer lines."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from textual.app import App, ComposeResult

import benchmate
from benchmate.tui.glyphs import UNICODE
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part, that_fit
from tests.tui.nasty import NASTY

TICK = Hint(key="space", label="tick", action="app.note('tick')")
FIND = Hint(key="/", label="find", action="app.note('find')")
HELP = Hint(key="?", label="help", action="app.note('help')")
QUIT = Hint(key="q", label="quit", action="app.note('quit')")
ALL = (TICK, FIND)
KEEP = (HELP, QUIT)


class Bars(App[None]):
    """A header, a footer, and the actions clicked."""

    CSS_PATH = Path(benchmate.__file__).parent / "tui" / "benchmate.tcss"

    def __init__(self) -> None:
        super().__init__()
        self.header = HeaderLine(glyphs=UNICODE)
        self.footer = FooterLine()
        self.clicked: list[str] = []

    def compose(self) -> ComposeResult:
        """The two lines."""
        yield self.header
        yield self.footer

    def action_note(self, action: str) -> None:
        """Note the action."""
        self.clicked.append(action)


@pytest.mark.parametrize(
    ("width", "shown"),
    [
        (40, (TICK, FIND, HELP, QUIT)),
        (36, (TICK, FIND, HELP, QUIT)),
        (35, (TICK, HELP, QUIT)),
        (28, (TICK, HELP, QUIT)),
        (27, (HELP, QUIT)),
        (16, (HELP, QUIT)),
        (15, (QUIT,)),
        (7, ()),
    ],
)
def test_hints_drop_from_the_right(width: int, shown: tuple[Hint, ...]) -> None:
    """The last key gives way first; help and quit stay as long as anything does."""
    assert that_fit(ALL, KEEP, width) == shown


@given(st.lists(st.text(max_size=8), max_size=8), st.integers(0, 60))
def test_hints_never_overflow(labels: list[str], width: int) -> None:
    """Whatever the keys are called, what is drawn fits."""
    hints = tuple(Hint(key=label, label=label, action="") for label in labels)
    assert sum(hint.cells for hint in that_fit(hints, KEEP, width)) <= width


async def test_footer_draws_its_keys_and_takes_clicks() -> None:
    """Keys and labels read in order; a click posts the action, a click past the last nothing."""
    app = Bars()
    async with app.run_test(size=(40, 4)) as pilot:
        app.footer.show(ALL, KEEP)
        assert app.footer.render_line(0).text == " space tick  / find  ? help  q quit ".ljust(40)
        await pilot.click(FooterLine, offset=(13, 0))
        await pilot.click(FooterLine, offset=(35, 0))
        await pilot.click(FooterLine, offset=(38, 0))
        assert app.clicked == ["find", "quit"]


async def test_lines_repaint_only_what_differs(monkeypatch: pytest.MonkeyPatch) -> None:
    """Showing the same again asks for no repaint."""
    app = Bars()
    async with app.run_test(size=(40, 4)):
        repaints: list[object] = []
        for line in (app.header, app.footer):
            monkeypatch.setattr(line, "refresh", lambda line=line: repaints.append(line))
        for _ in range(3):
            app.header.show((Part(text="Post A1"),))
            app.footer.show(ALL, KEEP)
        assert repaints == [app.header, app.footer]


async def test_header_sets_parts_left_and_right() -> None:
    """The left is cut, with a mark, for the sake of flags and progress at the right."""
    app = Bars()
    left = (Part(text="Post A1", strong=True), Part(text=" read-only", warning=True))
    async with app.run_test(size=(24, 4)) as pilot:
        app.header.show(left, (Part(text="3/40"),))
        assert app.header.render_line(0).text == "Post A1 read-only   3/40"
        await pilot.resize_terminal(20, 4)
        assert app.header.render_line(0).text == "Post A1 read-on…3/40"
        await pilot.resize_terminal(12, 4)
        assert app.header.render_line(0).text == "Post A1…3/40"
        await pilot.resize_terminal(3, 4)
        assert app.header.render_line(0).text == "3/…"


async def test_header_marks_read_without_colour() -> None:
    """A strong part is bold and a warning is reversed."""
    app = Bars()
    async with app.run_test(size=(24, 4)):
        app.header.show((Part(text="a", strong=True), Part(text="b", warning=True)))
        strong, warning, *_ = app.header.render_line(0)
        assert strong.style is not None
        assert strong.style.bold
        assert warning.style is not None
        assert warning.style.reverse


async def test_nasty_text_stays_in_one_line() -> None:
    """No text breaks the header or reaches the terminal as a control code."""
    app = Bars()
    async with app.run_test(size=(40, 4)) as pilot:
        for text in NASTY:
            app.header.show((Part(text=text),), (Part(text=text),))
            app.footer.show((Hint(key=text, label=text, action=""),), KEEP)
            await pilot.pause()
            for line in (app.header, app.footer):
                strip = line.render_line(0)
                assert strip.cell_length == 40
                assert strip.text.isprintable()
