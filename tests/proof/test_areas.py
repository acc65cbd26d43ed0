"""Counting by hand comes to the same."""

import pytest

from tests.proof.areas import common, content, seen
from tests.space import Span

SQUARE = ((0, 10), (0, 10))


@pytest.mark.parametrize(
    ("missing", "left"),
    [
        ([], 100),
        ([((2, 4), (2, 4))], 96),
        ([((2, 4), (2, 4)), ((3, 5), (3, 5))], 93),
        ([((-5, 5), (-5, 50))], 50),
        ([((10, 20), (0, 10))], 100),
        ([SQUARE], 0),
    ],
)
def test_what_is_left_of_a_square_is_counted(missing: list[tuple[Span, Span]], left: int) -> None:
    """Holes that overlap count once, and what lies outside counts for nothing."""
    assert content(SQUARE, missing) == left


def test_a_volume_is_counted_alike() -> None:
    """A corner out of a cube, at the scale of a frame, where a double would round."""
    side = 10**9 + 1
    cube = ((0, side), (0, side), (0, side))
    assert content(cube, [((-1, 1), (-1, 1), (-1, 1))]) == side**3 - 1


def test_a_rectangle_without_an_inside_has_no_area() -> None:
    """Two rectangles that are apart have nothing in common."""
    assert content(common(SQUARE, ((20, 30), (0, 10)))) == 0


def test_a_box_is_seen_along_each_axis() -> None:
    """The two spans across the line of sight are left, in their own order."""
    box = ((0, 1), (2, 3), (4, 5))
    assert [seen(box, axis) for axis in range(3)] == [
        ((2, 3), (4, 5)),
        ((0, 1), (4, 5)),
        ((0, 1), (2, 3)),
    ]
