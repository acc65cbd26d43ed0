"""Strokes and words in black ink."""

from hypothesis import given
from hypothesis import strategies as st

from benchmate.sheets.ink import (
    SMALL,
    blank,
    drawing,
    hatched,
    line,
    lines,
    number,
    polyline,
    room_for,
    words,
)

SQUARE = ((0.0, 0.0), (10.0, 0.0), (10.0, 6.0), (0.0, 6.0))


def test_coordinates_are_short_and_have_no_minus_nought() -> None:
    """A hundredth of a millimetre is finer than a printer's dot."""
    assert [number(each) for each in (1.0, 2.345, -0.001, 12.5)] == ["1", "2.35", "0", "12.5"]


def test_names_cannot_become_markup() -> None:
    """What a framer calls a timber is text, whatever is in it."""
    assert "&lt;b&gt;&amp;" in words("<b>&", (1, 2))


def test_strokes_are_paths() -> None:
    """One path for one line, for many of a width, and for a line through spots."""
    assert line((0, 0), (1, 2), 0.3) == '<path d="M0 0L1 2" stroke-width="0.3"/>'
    assert lines([((0, 0), (1, 0)), ((0, 1), (1, 1))], 0.1).count("M") == 2
    assert lines([], 0.1) == ""
    assert polyline([(0, 0), (1, 1), (2, 0)], 0.1).count("L") == 2
    assert 'fill="#fff"' in blank((0, 0), (1, 1))
    assert drawing(["<path/>"], 20, 10, kind="net").endswith("<path/></svg>")


def test_writing_is_never_smaller_than_9_points() -> None:
    """9 pt are 3.175 mm."""
    assert abs(SMALL - 3.175) < 1e-9
    assert room_for("7' 11-1/2\"") > room_for("7'") > 0


def test_hatching_stays_inside_and_slants_one_way() -> None:
    """Each line of it runs from edge to edge of the waste."""
    found = hatched(SQUARE, 1.5)
    assert len(found) > 5
    for start, end in found:
        assert all(-1e-9 <= x <= 10 + 1e-9 and -1e-9 <= y <= 6 + 1e-9 for x, y in (start, end))
        assert abs((start[0] + start[1]) - (end[0] + end[1])) < 1e-9


@given(st.lists(st.tuples(st.floats(0, 50), st.floats(0, 50)), min_size=3, max_size=3))
def test_any_triangle_can_be_hatched(corners: list[tuple[float, float]]) -> None:
    """However thin it is, lines come in whole pairs."""
    for start, end in hatched(corners, 1.5):
        assert end[0] > start[0]
