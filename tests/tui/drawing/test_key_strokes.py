"""Strokes: one for a thin timber, an outline for a thick one, a mark for one seen end on."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from benchmate.tui.drawing.key import Bar, View
from benchmate.tui.drawing.key_plot import plot_of
from benchmate.tui.drawing.key_shape import shape_of
from benchmate.tui.drawing.key_strokes import strokes
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from tests.tui.drawing.key_frames import box, slanting

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Cell


def drawn(
    *bars: Bar,
    view: View = View.FROM_SOUTH,
    size: tuple[int, int] = (20, 9),
    glyphs: Glyphs = UNICODE,
) -> str:
    """The strokes of some timbers, without the blank rows and columns round them."""
    shapes = tuple(shape_of(bar, view) for bar in bars)
    plot = plot_of(shapes, *size)
    assert plot is not None
    return picture(dict(strokes(shapes, plot, glyphs)))


def picture(cells: dict[Cell, str]) -> str:
    """The cells as lines of text."""
    rows, columns = ([cell[axis] for cell in cells] for axis in (0, 1))
    return "\n".join(
        "".join(
            cells.get((row, column), " ") for column in range(min(columns), max(columns) + 1)
        ).rstrip()
        for row in range(min(rows), max(rows) + 1)
    )


def bent() -> tuple[Bar, ...]:
    """Two posts on a sill, a tie and a plate over them, a brace in either corner."""
    return (
        box("Sill", (0, 0, 0), (160, 8, 8), along=0),
        box("West post", (0, 0, 8), (8, 8, 112), along=2),
        box("East post", (152, 0, 8), (160, 8, 112), along=2),
        box("Tie", (8, 0, 80), (152, 8, 88), along=0),
        box("Plate", (0, 0, 112), (160, 8, 120), along=0),
        slanting("West brace", (8, 0, 40), (48, 0, 80), 6, (0, 4, 0)),
        slanting("East brace", (112, 0, 80), (152, 0, 40), 6, (0, 4, 0)),
    )


BENT = """\
┌────────────────┐
│                │
├────────────────┤
│  /          \\  │
│/              \\│
│                │
└────────────────┘"""
SLOPES = str.maketrans("/\\", UNICODE.rise + UNICODE.fall)


def test_timbers_that_meet_are_joined() -> None:
    """Posts stand on the sill and under the plate, the tie goes in between them."""
    assert drawn(*bent()) == BENT.translate(SLOPES)


def test_plain_characters_join_too() -> None:
    """In ASCII every joint is a plus."""
    assert drawn(*bent(), glyphs=ASCII) == BENT.translate(str.maketrans("┌┐└┘├┤─│", "++++++-|"))


def test_timbers_that_cross_show_it() -> None:
    """Joists laid over a tie cross it; the four ways of ending at one are told apart."""
    over = (
        box("Tie", (0, 60, 0), (120, 66, 8), along=0),
        box("Over", (57, 0, 8), (63, 120, 16), along=1),
    )
    assert UNICODE.crossing in drawn(*over, view=View.PLAN)
    for low, high, char in (
        ((57, 66, 0), (63, 120, 8), UNICODE.tee_up),
        ((57, 0, 0), (63, 60, 8), UNICODE.tee_down),
    ):
        assert drawn(over[0], box("Joist", low, high, along=1), view=View.PLAN).count(char) == 1
    for low, high, char in (
        ((63, 57, 0), (120, 63, 8), UNICODE.tee_right),
        ((0, 57, 0), (57, 63, 8), UNICODE.tee_left),
    ):
        assert drawn(over[1], box("Joist", low, high, along=0), view=View.PLAN).count(char) == 1


def test_a_thick_timber_shows_both_its_edges() -> None:
    """A post wide enough is a box, from the side and from above."""
    post = box("Post", (0, 0, 0), (24, 24, 72), along=2)
    assert drawn(post).splitlines() == ["┌────────┐", *["│        │"] * 6, "└────────┘"]
    text = drawn(post, view=View.PLAN)
    assert text.startswith("┌──")
    assert text.endswith("──┘")


def test_a_thin_upright_is_a_mark_on_the_plan() -> None:
    """It lies over the strokes that run through it."""
    plan = drawn(*bent(), view=View.PLAN)
    assert plan == "□────────────────□"


@pytest.mark.parametrize(
    ("run", "rise", "expected"),
    [
        (46, 46, ["    /", "  /", "/"]),
        (62, 30, ["    ▁──▔", "▁──▔"]),
        (14, 94, [" │", " │", " │", "│", "│", "│"]),
    ],
    ids=["45 degrees", "shallow", "nearly upright"],
)
def test_a_slope_is_told_by_its_steps(run: int, rise: int, expected: list[str]) -> None:
    """A steep one has a stroke in every row, a shallow one tells the third of the row it is in."""
    frame = box("Frame", (0, 0, 0), (128, 1, 128), along=2)
    slope = slanting("Slope", (1, 0, 2), (run + 1, 0, rise + 2), 2, (0, 1, 0))
    shapes = tuple(shape_of(bar, View.FROM_SOUTH) for bar in (frame, slope))
    plot = plot_of(shapes, 40, 9)
    assert plot is not None
    plain = str.maketrans(UNICODE.rise, ASCII.rise)
    assert (
        picture(dict(strokes(shapes[1:], plot, UNICODE))).translate(plain).splitlines() == expected
    )


def test_a_slope_down_to_the_right_leans_the_other_way() -> None:
    """The two braces of a bent are mirror images."""
    lines = drawn(*bent()).splitlines()
    swapped = str.maketrans("/\\┌┐└┘├┤".translate(SLOPES), "\\/┐┌┘└┤├".translate(SLOPES))
    assert [line[::-1].translate(swapped) for line in lines] == lines
