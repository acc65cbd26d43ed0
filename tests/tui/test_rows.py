"""Rows of a line list: how they are set and where the cursor may go."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from benchmate.tui.glyphs import ASCII, UNICODE
from benchmate.tui.rows import Row, nearest, onward, set_row, with_headings
from tests.tui.nasty import NASTY

texts = st.one_of(st.text(max_size=40), st.sampled_from(NASTY))
headings = st.lists(st.booleans(), min_size=1, max_size=12).map(
    lambda flags: tuple(Row(text="", heading=flag) for flag in flags)
)
H, X = Row(text="Foot tenon", heading=True), Row(text="Shoulder")


@given(texts, texts, texts, st.integers(0, 120), st.booleans())
def test_a_row_takes_exactly_its_width(
    text: str, lead: str, tail: str, width: int, marked: bool
) -> None:
    """Whatever a row holds, the next column starts where it should."""
    row = Row(text=text, lead=lead, tail=tail)
    assert cell_len(set_row(row, width, marked=marked, glyphs=UNICODE)) == width


@pytest.mark.parametrize(
    ("row", "width", "drawn"),
    [
        (Row(text="Shoulder", lead="x", tail='5"'), 20, '>x Shoulder      5" '),
        (Row(text="Shoulder line", lead="x", tail='5"'), 17, '>x Shoulder~  5" '),
        (Row(text="Shoulder line", lead="x", tail='4-3/4"'), 18, ">x Shoulder line  "),
        (Row(text="Peg", tail='1"'), 10, '>Peg   1" '),
        (Row(text="Shoulder"), 5, ">Sho~"),
    ],
)
def test_how_a_row_is_set(row: Row, width: int, drawn: str) -> None:
    """Lead, text, tail at the right; the text is cut first, the tail is whole or left out."""
    assert set_row(row, width, marked=True, glyphs=ASCII) == drawn


def test_an_unmarked_row_keeps_the_place_of_the_mark() -> None:
    """Rows do not shift when the cursor leaves them."""
    assert set_row(X, 12, marked=False, glyphs=ASCII) == " Shoulder   "
    assert set_row(X, 12, marked=True, glyphs=ASCII) == ">Shoulder   "


@pytest.mark.parametrize(
    ("rows", "index", "found"),
    [
        ((), 0, None),
        ((H, H), 1, None),
        ((X, X, X), 1, 1),
        ((H, X), 0, 1),
        ((X, H), 1, 0),
        ((X, H, X), 1, 2),
        ((X, X), 99, 1),
        ((X, X), -5, 0),
    ],
)
def test_nearest_row(rows: tuple[Row, ...], index: int, found: int | None) -> None:
    """The cursor goes to the row asked for, or the nearest that is no heading."""
    assert nearest(rows, index) == found


@pytest.mark.parametrize(
    ("rows", "index", "step", "found"),
    [
        ((X, X, X), 0, 1, 1),
        ((X, X, X), 2, 1, 2),
        ((X, H, X), 0, 1, 2),
        ((X, H, X), 2, -1, 0),
        ((H, X, X), 1, -1, 1),
        ((X, X, H), 1, 1, 1),
        ((X, X, X, H), 0, 3, 2),
        ((H, X, X, X), 3, -3, 1),
        ((X, X, X, X), 0, 99, 3),
    ],
)
def test_onward(rows: tuple[Row, ...], index: int, step: int, found: int) -> None:
    """A step passes over headings; where it would leave the list it goes as far as it can."""
    assert onward(rows, index, step) == found


@given(headings, st.integers(-20, 20), st.integers(-20, 20).filter(bool))
def test_the_cursor_never_stands_on_a_heading(rows: tuple[Row, ...], index: int, step: int) -> None:
    """From any row it may stand on, a step ends on one, and never moves the wrong way."""
    start = nearest(rows, index)
    if start is None:
        assert all(row.heading for row in rows)
        return
    end = onward(rows, start, step)
    assert not rows[end].heading
    assert (end - start) * step >= 0


@pytest.mark.parametrize(
    ("rows", "index", "height", "top"),
    [
        ((X, X), 1, 5, 1),
        ((H, X), 1, 5, 0),
        ((X, H, H, X), 3, 5, 1),
        ((X, H, H, X), 3, 2, 2),
        ((H, X), 1, 1, 1),
    ],
)
def test_headings_above_a_row(rows: tuple[Row, ...], index: int, height: int, top: int) -> None:
    """A row is shown under its headings, as far as the pane is high enough for both."""
    assert with_headings(rows, index, height) == top
