"""Shapes: the outline a view shows of a timber, and its middle line."""

from __future__ import annotations

import pytest

from benchmate.tui.drawing.key import View
from benchmate.tui.drawing.key_plot import Plot
from benchmate.tui.drawing.key_shape import LOWER, UPPER, Shape, edges_of, reached, shape_of
from tests.tui.drawing.key_frames import INCH, box, slanting


def test_a_post_is_a_rectangle_from_a_side_and_its_end_from_above() -> None:
    """Four corners, no more; from above its middle line is a point."""
    post = box("Post", (10, 20, 0), (18, 26, 96), along=2)
    side, above = shape_of(post, View.FROM_SOUTH), shape_of(post, View.PLAN)
    assert set(side.outline) == {
        (a * INCH, -b * INCH) for a, b in ((10, 0), (18, 0), (18, 96), (10, 96))
    }
    assert (side.start, side.end) == ((14 * INCH, 0), (14 * INCH, -96 * INCH))
    assert (above.wide, above.tall) == (8 * INCH, 6 * INCH)
    assert above.start == above.end


def test_a_brace_has_the_outline_of_its_slope() -> None:
    """Seen square to it a brace is a slanting band, its two nearer corners hidden in it."""
    brace = slanting("Brace", (0, 0, 6), (36, 0, 42), 6, (0, 4, 0))
    shape = shape_of(brace, View.FROM_SOUTH)
    assert len(shape.outline) == 4
    assert shape.low == (0, -42 * INCH)
    assert shape.high == (36 * INCH, 0)
    assert shape.area == 2 * 36 * 6 * INCH**2


def test_an_outline_is_closed() -> None:
    """The last edge leads back to the first spot."""
    assert list(edges_of(((0, 0), (1, 0), (0, 1)))) == [
        ((0, 0), (1, 0)),
        ((1, 0), (0, 1)),
        ((0, 1), (0, 0)),
    ]


PLOT = Plot(left=0, top=0, across=10, down=10, first=(0, 0), columns=8, halves=8)


@pytest.mark.parametrize(
    ("outline", "cells"),
    [
        (((10, 10), (20, 10), (20, 20), (10, 20)), {(0, 1): LOWER}),
        (((9, 0), (11, 0), (11, 20), (9, 20)), {(0, 0): UPPER | LOWER, (0, 1): UPPER | LOWER}),
        (((30, 35),), {(1, 3): LOWER}),
        (((80, 80),), {(3, 7): LOWER}),
        (((5, 5), (25, 5)), {(0, 0): UPPER, (0, 1): UPPER, (0, 2): UPPER}),
        (
            ((0, 0), (30, 30), (0, 30)),
            {
                (0, 0): UPPER | LOWER,
                (0, 1): LOWER,
                (1, 0): UPPER,
                (1, 1): UPPER,
                (1, 2): UPPER,
            },
        ),
    ],
    ids=["one half", "two columns", "a point", "the far corner", "a line", "a triangle"],
)
def test_a_shape_reaches_into_just_the_halves_it_shares_more_than_an_edge_with(
    outline: tuple[tuple[int, int], ...], cells: dict[tuple[int, int], int]
) -> None:
    """A shape that ends on the line between two cells does not reach into the second."""
    assert reached(Shape(outline=outline, start=outline[0], end=outline[-1]), PLOT) == cells
