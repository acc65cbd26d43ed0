"""The current figure in big digits."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Shown, Style, Tape
from benchmate.tui.bignum import big_figure
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs

LONG = Shown(
    negative=False,
    feet=7,
    whole=10,
    numerator=15,
    denominator=16,
    decimal="",
    unit="in",
    remainder="",
)
UNDER = replace(LONG, negative=True, feet=None, whole=4, numerator=3, denominator=8, remainder="-")
METRIC = replace(
    LONG, feet=None, whole=190, numerator=0, denominator=1, decimal="5", unit="mm", remainder="+"
)
TAPES = [
    Tape(style=style, graduation=graduation)
    for style in Style
    for graduation in Graduation
    if graduation.metric is (style is Style.MM)
]
shown_figures = st.builds(
    lambda tape, nm: tape.show(Length(nm)),
    st.sampled_from(TAPES),
    st.integers(min_value=-(10**11), max_value=10**11),
)
glyph_sets = st.sampled_from([UNICODE, ASCII])


@given(shown_figures, st.integers(1, 90), st.integers(1, 12), glyph_sets)
def test_stays_in_its_room(shown: Shown, width: int, height: int, glyphs: Glyphs) -> None:
    """The rows are of one width and never wider or taller than allowed."""
    rows = big_figure(shown, width=width, height=height, glyphs=glyphs)
    assert 1 <= len(rows) <= height
    assert len({cell_len(row) for row in rows}) == 1
    assert 1 <= cell_len(rows[0]) <= width


@given(shown_figures, st.integers(1, 90), st.integers(1, 12), glyph_sets)
def test_same_figure_same_picture(shown: Shown, width: int, height: int, glyphs: Glyphs) -> None:
    """Nothing but the figure and its room decides the picture."""
    first = big_figure(shown, width=width, height=height, glyphs=glyphs)
    assert big_figure(shown, width=width, height=height, glyphs=glyphs) == first


@given(st.lists(shown_figures, min_size=2, max_size=2, unique=True), glyph_sets)
def test_different_figures_look_different(figures: list[Shown], glyphs: Glyphs) -> None:
    """No two figures share a picture, whatever the height."""
    for height in (1, 3, 5, 7):
        one, other = (
            big_figure(figure, width=400, height=height, glyphs=glyphs) for figure in figures
        )
        assert one != other


@given(shown_figures, st.integers(1, 90), st.integers(1, 12))
def test_ascii_pictures_are_ascii(shown: Shown, width: int, height: int) -> None:
    """In ASCII no figure needs a character the terminal lacks."""
    rows = big_figure(shown, width=width, height=height, glyphs=ASCII)
    assert all(row.isascii() for row in rows)


@given(shown_figures, glyph_sets)
def test_a_figure_too_long_for_its_room_is_not_cut(shown: Shown, glyphs: Glyphs) -> None:
    """One cell short of its text there is a lone cut-off mark, never part of a figure."""
    text = shown.text()
    assert big_figure(shown, width=len(text), height=1, glyphs=glyphs) == (text,)
    assert big_figure(shown, width=len(text) - 1, height=1, glyphs=glyphs) == (glyphs.cut_off,)


@pytest.mark.parametrize(("width", "height"), [(0, 7), (40, 0), (-1, -1)])
def test_no_room_no_rows(width: int, height: int) -> None:
    """A pane without cells gets nothing."""
    assert big_figure(LONG, width=width, height=height, glyphs=UNICODE) == ()


def picture(shown: Shown, width: int, height: int, glyphs: Glyphs = UNICODE) -> str:
    """The rows as one string that opens with a newline, without the blanks at line ends."""
    rows = big_figure(shown, width=width, height=height, glyphs=glyphs)
    return "".join(f"\n{row.rstrip()}" for row in rows)


def test_the_longest_common_figure_fits_48_columns() -> None:
    """7' 10-15/16" stands seven rows tall in 48 columns, with a bar between the two numbers."""
    expected = """
███████ ██   ▄██  ▄█████▄  ▄██ ██▀▀▀▀ ██ ██
     ██ ██  ▀▀██  ██   ██   ██ ▀▀▀▀██ ██ ██
    ██        ██  ██   ██   ██ ▄▄▄▄██
   ██         ██  ██   ██  ━━━━━━━━━━
  ██          ██  ██   ██  ▄██ ██▀▀▀▀
  ██          ██  ██   ██   ██ ██▀▀██
  ██          ██  ▀█████▀   ██ ██▄▄██"""
    assert picture(LONG, 48, 7) == expected
    assert len(big_figure(replace(LONG, remainder="+"), width=48, height=7, glyphs=UNICODE)) == 7


def test_two_figures_of_feet_fit_52_columns() -> None:
    """12' 10-15/16" stands in the tall face in 52 columns, in the middle face in 48."""
    figure = replace(LONG, feet=12)
    room = big_figure(figure, width=200, height=7, glyphs=UNICODE)
    assert big_figure(figure, width=52, height=7, glyphs=UNICODE) == room
    assert big_figure(figure, width=48, height=7, glyphs=UNICODE) != room
    assert len(big_figure(figure, width=48, height=7, glyphs=UNICODE)) == 7


def test_five_rows_slant_the_fraction() -> None:
    """In five rows a slash parts the raised numerator from the lowered denominator."""
    expected = """
██████ █   ▄██ ▄████▄  ▄█ █▀▀▀   █       █ █
    ██ █  ▀▀██ ██  ██   █ ▀▀▀█  █        █ █
   ██       ██ ██  ██   █ ▄▄▄█ █ ▄█ █▀▀▀
  ██        ██ ██  ██         █   █ █▀▀█
  ██        ██ ▀████▀        █    █ █▄▄█"""
    assert picture(LONG, 48, 5) == expected


def test_three_rows_keep_inches_off_the_fraction() -> None:
    """In three rows there is room enough between 10 and 15/16 not to read 1015."""
    expected = """
▀▀▀█ █  ▄█ █▀▀█    ▄█ █▀▀▀   █ ▄█ █▀▀▀ █ █
  █      █ █  █     █ ▀▀▀█  █   █ █▀▀█
 █       █ █▄▄█     █ ▄▄▄█ █    █ █▄▄█"""
    assert picture(LONG, 48, 3) == expected


def test_a_narrow_pane_stacks_plain_figures() -> None:
    """Where the digits of the fraction do not fit they are set in plain text, still stacked."""
    expected = """
▀▀▀█ █  ▄█ █▀▀█ 15 █ █
  █      █ █  █ ──
 █       █ █▄▄█ 16"""
    assert picture(LONG, 24, 3) == expected


def test_sign_and_remainder() -> None:
    """A minus stands low on the left; the mark for a little under stands raised on the right."""
    expected = """
      ██   ██  ▀▀▀▀██ ██ ██
      ██   ██    ▀▀██ ██ ██ ▄▄▄▄
      ██   ██  ▄▄▄▄██
█████ ███████  ━━━━━━
           ██  ██▀▀██
           ██  ██▀▀██
           ██  ██▄▄██"""
    assert picture(UNDER, 48, 7) == expected


def test_millimetres_stand_small_on_the_line() -> None:
    """A half millimetre has its point; the unit is small, at the foot of the figure."""
    expected = """
 ▄██  ▄█████▄  ▄█████▄     ███████                ██
▀▀██  ██   ██  ██   ██     ██                    ▄██▄
  ██  ██   ██  ██   ██     ██                     ██
  ██  ▀██████  ██   ██     ██████▄
  ██       ██  ██   ██          ██  █▀█▀█  █▀█▀█
  ██       ██  ██   ██          ██  █ █ █  █ █ █
  ██  ▀█████▀  ▀█████▀ ███ ██████▀  █ █ █  █ █ █"""
    assert picture(METRIC, 60, 7) == expected


def test_ascii_draws_the_same_figure_plainly() -> None:
    """Without block characters the figure is set in # and strokes, in the same places."""
    expected = r"""
####### ##   ###  #######     _  ## ##
     ## ##  ####  ##   ##  | |_  ## ##
    ##        ##  ##   ##  |  _|
   ##         ##  ##   ##  =====
  ##          ##  ##   ##     _
  ##          ##  ##   ##  | |_
  ##          ##  #######  | |_|"""
    assert picture(LONG, 48, 7, ASCII) == expected


def test_half_an_eighty_column_screen_holds_the_middle_face() -> None:
    """7' 10-15/16"+ keeps five-row digits and a big stacked fraction in 40 columns."""
    expected = """
                      ▄██ ██▀▀▀▀
██████ █   ▄██ ▄████▄  ██ ▀▀▀▀██ █ █  █
    ██ █  ▀▀██ ██  ██  ██ ▄▄▄▄██ █ █ ▄█▄
   ██       ██ ██  ██ ━━━━━━━━━━      █
  ██        ██ ██  ██ ▄██ ██▀▀▀▀
  ██        ██ ▀████▀  ██ ██▀▀██
                       ██ ██▄▄██"""
    assert picture(replace(LONG, remainder="+"), 40, 7) == expected
