"""The figure as large as its room, for two paces and more."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from benchmate.measure.printing import Shown
from benchmate.tui.bignum import big_figure
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.huge_figure import UNIT, huge_figure
from tests.tui.test_bignum import METRIC, UNDER, glyph_sets, shown_figures

LONG = Shown(
    negative=False,
    feet=12,
    whole=10,
    numerator=15,
    denominator=16,
    decimal="",
    unit="in",
    remainder="+",
)
SIX = replace(LONG, feet=None, whole=6, numerator=0, denominator=1, remainder="")


@given(shown_figures, st.integers(1, 210), st.integers(1, 60), glyph_sets)
def test_stays_in_its_room(shown: Shown, width: int, height: int, glyphs: Glyphs) -> None:
    """The rows are of one width and never wider or taller than allowed."""
    rows = huge_figure(shown, width=width, height=height, glyphs=glyphs)
    assert 1 <= len(rows) <= height
    assert len({cell_len(row) for row in rows}) == 1
    assert 1 <= cell_len(rows[0]) <= width
    assert glyphs is UNICODE or all(row.isascii() for row in rows)


@given(st.lists(shown_figures, min_size=2, max_size=2, unique=True), glyph_sets)
def test_different_figures_look_different(figures: list[Shown], glyphs: Glyphs) -> None:
    """No two figures share a picture, however large."""
    for height in (8, 13, 40):
        one, other = (
            huge_figure(each, width=400, height=height, glyphs=glyphs) for each in figures
        )
        assert one != other


@pytest.mark.parametrize("room", [(78, 13), (198, 40)])
def test_the_longest_figure_fills_the_width(room: tuple[int, int]) -> None:
    """Twelve feet and a strong fifteen sixteenths come out far larger than on the bench."""
    width, height = room
    rows = huge_figure(LONG, width=width, height=height, glyphs=UNICODE)
    bench = big_figure(LONG, width=width, height=height, glyphs=UNICODE)
    assert len(rows[0]) > 7 * width // 8
    assert len(rows) > len(bench)
    assert len(rows[0]) > len(bench[0])


def test_a_short_figure_fills_the_height() -> None:
    """At 200 x 60 one digit stands forty rows high."""
    assert len(huge_figure(SIX, width=198, height=40, glyphs=UNICODE)) == 40


@pytest.mark.parametrize("shown", [LONG, UNDER, METRIC])
def test_the_mark_for_what_is_hidden_is_as_wide_as_a_digit(shown: Shown) -> None:
    """A plus or a minus is read from as far away as the figure."""
    with_mark = huge_figure(shown, width=400, height=21, glyphs=UNICODE)
    without = huge_figure(replace(shown, remainder=""), width=400, height=21, glyphs=UNICODE)
    digit = 21 * 7 // 5
    assert len(with_mark) == len(without) == 21
    assert len(with_mark[0]) - len(without[0]) >= digit
    inked = [row[len(without[0]) :].strip() for row in with_mark]
    assert max(map(len, inked)) == digit
    # The plus is ten fourteenths of a digit high, the minus as thick as its bar.
    assert sum(map(bool, inked)) in ((15,) if shown.remainder == "+" else (6, 7))


def test_a_plus_is_not_taken_for_a_minus() -> None:
    """The upright of the plus stands out over and under its bar."""
    plus, minus = (
        huge_figure(replace(SIX, remainder=mark), width=90, height=14, glyphs=UNICODE)
        for mark in ("+", "-")
    )
    assert sum(a != b for a, b in zip(plus, minus, strict=True)) >= 5


def test_a_one_stays_narrow_and_a_stroke_keeps_its_weight() -> None:
    """Strokes at the left and the right of a digit are equally thick at every size."""
    zero = replace(SIX, whole=8)
    for height in range(8, 40):
        rows = huge_figure(zero, width=400, height=height, glyphs=UNICODE)
        middle = rows[height // 4]
        digit = height * 7 // 5
        left = middle[:digit].rstrip()
        parts = left.split()
        assert len(parts) == 2
        assert len(parts[0]) == len(parts[1])
    assert UNIT == 7


def test_where_there_is_no_room_the_bench_has_its_sizes() -> None:
    """Below eight rows, or too narrow, the figure is set as on the bench."""
    for width, height in ((78, 7), (40, 20), (5, 5)):
        huge = huge_figure(LONG, width=width, height=height, glyphs=UNICODE)
        assert huge == big_figure(LONG, width=width, height=height, glyphs=UNICODE)
    low = huge_figure(LONG, width=200, height=12, glyphs=ASCII)
    assert low == big_figure(LONG, width=200, height=12, glyphs=ASCII)
