"""The plot: true in its proportions, as large as fits, in the middle."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from benchmate.tui.drawing.key_plot import Plot, plot_of
from benchmate.tui.drawing.key_shape import Shape

FOOT = 12 * 25_400_000


def rectangle(wide: int, tall: int, left: int = 0, top: int = 0) -> Shape:
    """A shape of so many nanometres, its upper left corner where it is put."""
    right, bottom = left + wide, top + tall
    return Shape(
        outline=((left, top), (right, top), (right, bottom), (left, bottom)),
        start=(left, top),
        end=(right, bottom),
    )


def laid(wide: int, tall: int, width: int, height: int) -> Plot:
    """The plot of one rectangle."""
    plot = plot_of((rectangle(wide, tall),), width, height)
    assert plot is not None
    return plot


def test_a_foot_is_as_long_down_as_across() -> None:
    """Half a row stands for the same length as a column, as a cell is twice as high as wide."""
    plot = laid(16 * FOOT, 12 * FOOT, 44, 10)
    assert plot.across == plot.down
    assert (plot.columns, plot.halves) == (24, 18)


def test_a_flat_frame_is_drawn_out_to_be_seen() -> None:
    """A long low frame in a small pane is up to twice as high as true, and no wider."""
    low = laid(80 * FOOT, 20 * FOOT, 20, 6)
    assert (low.columns, low.halves) == (18, 9)
    assert low.down == -(-low.across // 2)
    narrow = laid(5 * FOOT, 60 * FOOT, 78, 20)
    assert (narrow.columns, narrow.halves) == (6, 34)
    assert narrow.across == -(-narrow.down // 2)


@given(
    st.integers(10**6, 10**11),
    st.integers(10**6, 10**11),
    st.integers(5, 220),
    st.integers(4, 60),
)
def test_the_picture_fits_and_fills_the_room_one_way(
    wide: int, tall: int, width: int, height: int
) -> None:
    """Under the heading and clear of the edges, no more than twice out of its proportions."""
    plot = laid(wide, tall, width, height)
    roomy = width >= 32 and height >= 12
    room = (width - 4, 2 * (height - 3)) if roomy else (width - 2, 2 * (height - 1))
    assert plot.columns == room[0] or plot.halves == room[1]
    assert plot.columns <= room[0]
    assert plot.halves <= room[1]
    assert 2 * plot.first[0] >= 2
    assert 2 * plot.first[0] + plot.halves <= 2 * height
    assert plot.first[1] >= 1
    assert plot.first[1] + plot.columns <= width - 1
    assert plot.columns * plot.across >= wide
    assert plot.halves * plot.down >= tall
    assert max(plot.across, plot.down) <= 2 * min(plot.across, plot.down)


def test_a_spot_on_the_far_edge_counts_to_the_last_cell() -> None:
    """The corner of the frame has a cell to be marked in."""
    plot = laid(16 * FOOT, 12 * FOOT, 44, 10)
    assert plot.column(16 * FOOT) == plot.first[1] + plot.columns - 1
    assert plot.half(12 * FOOT) == 2 * plot.first[0] + plot.halves - 1
    assert plot.row(0) == plot.first[0]


def test_a_cell_knows_what_it_stands_for() -> None:
    """The edges of a half row follow on each other, and the middle of a column lies in it."""
    plot = laid(16 * FOOT, 12 * FOOT, 44, 10)
    first = 2 * plot.first[0]
    assert plot.edges(first) == (0, plot.down)
    assert plot.edges(first + 1) == (plot.down, 2 * plot.down)
    assert plot.column(plot.middle(15)) == 15


def test_nothing_to_draw_has_no_plot() -> None:
    """No shape, or no room: no plot."""
    assert plot_of((), 44, 10) is None
    assert plot_of((rectangle(FOOT, FOOT),), 4, 10) is None
    assert plot_of((rectangle(FOOT, FOOT),), 44, 3) is None
    assert plot_of((rectangle(FOOT, FOOT),), 5, 4) is not None


def test_a_frame_without_extent_still_has_a_cell() -> None:
    """A single point is plotted, not divided by."""
    plot = laid(0, 0, 44, 10)
    assert (plot.columns, plot.halves) == (1, 1)
