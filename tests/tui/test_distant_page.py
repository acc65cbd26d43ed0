"""The page for two paces: its room, and what is never left out of it."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from benchmate.tui.distant import LOOK_AGAIN, STOP, WAITS, Distant
from benchmate.tui.distant_page import distant_page
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.words import Saying
from tests.tui.nasty import NASTY
from tests.tui.test_huge_figure import LONG

WORDS = (
    Saying(label="from", text="the South face, in towards the North face", strong=True),
    Saying(label="on", text="East face and West face"),
    Saying(label="waste", text="Towards the North face.", strong=True),
    Saying(label="care", text="Never measure this from the North face.", warning=True),
)
CHEEK = Distant(
    alarms=(),
    title="Foot tenon: far cheek line",
    figure=LONG,
    headline="",
    other_end="",
    words=WORDS,
    after='1-1/2" Foot tenon: relief line',
)
SIZES = [(80, 22), (120, 38), (200, 58)]
ROOMS = pytest.mark.parametrize("size", SIZES)


def big_rows(page: Drawing, role: Role) -> int:
    """Rows in which something of a role is drawn."""
    return sum(any(each is role and text.strip() for text, each in row) for row in page.rows)


@given(
    width=st.integers(1, 210),
    height=st.integers(1, 60),
    glyphs=st.sampled_from([UNICODE, ASCII]),
    stop=st.booleans(),
)
def test_it_fills_its_room_exactly(width: int, height: int, glyphs: Glyphs, *, stop: bool) -> None:
    """Every row is as wide as the room, whatever there is to say."""
    shown = replace(CHEEK, figure=None, headline=STOP) if stop else CHEEK
    page = distant_page(replace(shown, alarms=(WAITS,)), width, height, glyphs)
    assert len(page.rows) == height
    assert {sum(cell_len(text) for text, _ in row) for row in page.rows} == {width}


@ROOMS
def test_the_figure_is_most_of_the_page_and_the_words_are_there(size: tuple[int, int]) -> None:
    """Face, hook and waste side under the figure, what comes next at the foot."""
    page = distant_page(CHEEK, *size, UNICODE)
    assert big_rows(page, Role.FIGURE) >= min(10, size[1] // 3)
    assert "Never measure this from the North face." in page.text
    assert page.text.splitlines()[-1].startswith(' next  1-1/2"')
    if size == (80, 22):
        assert "the South face, in towards the North face" in page.text


def test_at_200_by_60_the_words_are_big_too() -> None:
    """They are no sentences there but letters of three rows and more."""
    page = distant_page(CHEEK, 200, 58, UNICODE)
    assert "towards the North face" not in page.text
    assert big_rows(page, Role.FIGURE) >= 25
    assert big_rows(page, Role.STRONG) >= 7


@ROOMS
def test_alarms_are_reversed_and_in_letters(size: tuple[int, int]) -> None:
    """From two paces a figure that must not be cut to is seen not to be fit for it."""
    page = distant_page(replace(CHEEK, alarms=(LOOK_AGAIN, WAITS)), *size, UNICODE)
    assert big_rows(page, Role.LOUD) >= 3
    assert page.rows[0][0][1] is Role.LOUD


@ROOMS
def test_a_stop_is_one_word_and_no_digit(size: tuple[int, int]) -> None:
    """The remedy is whole, and nothing is set as a figure."""
    stop = Saying(label="stop", text="The cheek hangs in the air. To mend it: move it in.")
    shown = replace(CHEEK, figure=None, headline=STOP, words=(stop,), after="")
    page = distant_page(shown, *size, UNICODE)
    assert big_rows(page, Role.FIGURE) == 0
    assert big_rows(page, Role.LOUD) >= 6
    assert "To mend it: move it in." in page.text


@ROOMS
def test_a_slant_shows_its_other_end(size: tuple[int, int]) -> None:
    """In the words at the least, and in letters where the figure keeps two thirds of its room."""
    other = Saying(label="to", text='6" further towards the head on the top face', strong=True)
    shown = replace(CHEEK, words=(WORDS[0], other), other_end=f"to {other.text}")
    plain = distant_page(replace(shown, other_end=""), *size, UNICODE)
    page = distant_page(shown, *size, UNICODE)
    if size == (80, 22):
        assert other.text in page.text
    else:
        assert big_rows(page, Role.STRONG) + big_rows(page, Role.FIGURE) > 12
        assert page != plain


@pytest.mark.parametrize("text", NASTY)
def test_what_a_framer_typed_reaches_no_terminal_as_a_code(text: str) -> None:
    """Titles and notes hold anything."""
    for shown in (replace(CHEEK, title=text), replace(CHEEK, figure=None, headline=text)):
        page = distant_page(replace(shown, after=text), 80, 22, UNICODE)
        assert all(char.isprintable() for char in page.text.replace("\n", ""))
        assert {sum(cell_len(part) for part, _ in row) for row in page.rows} == {80}
