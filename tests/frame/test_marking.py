"""Lines made from planes."""

import pytest

from benchmate.frame.marking import (
    Says,
    axis_of,
    cross_mark,
    parallel_mark,
    slant_axis,
    slanting_mark,
    square_mark,
    tapering_mark,
)
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Reading, Spot
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane, above, below
from tests.builders import frame, timber

SET = Setting(off_square=266, bevel=True)
SAYS = Says(title="Line", why="Because.", caution="Mind.", waste="There.", setting=SET)
STICK = frame(timber("post")).stick("post")
SLOPE = Plane((1, 0, -2), 100, "slope")


def test_a_square_plane_is_a_line_on_its_axis() -> None:
    """Whichever side its waste lies, the line is where the plane is."""
    for bound in (above, below):
        line = square_mark(bound(Axis.SECOND, Length(7), "far"), SAYS)
        assert (line.id, line.axis, line.at, line.slant) == ("far", Axis.SECOND, Length(7), None)
    assert (line.title, line.why, line.caution, line.waste) == (
        "Line",
        "Because.",
        "Mind.",
        "There.",
    )


def test_a_slanting_plane_is_set_off_along_at_two_depths() -> None:
    """It starts on the reference face it leans from, and its words name the two faces."""
    line = slanting_mark(STICK, SLOPE, (ZERO, Length(50)), SAYS)
    assert (line.axis, line.at) == (Axis.ALONG, Length(100))
    assert line.slant is not None
    assert line.slant.start == Spot(Length(100), ZERO)
    assert line.slant.finish == Spot(Length(200), Length(50))
    assert line.slant.where == ("West face", "East face")
    assert line.slant.setting == SET


def test_a_slant_that_stops_short_says_what_it_stops_on() -> None:
    """Its other end need not lie on a face."""
    line = slanting_mark(STICK, SLOPE, (ZERO, Length(9)), SAYS, ("West face", "tenon end line"))
    assert line.slant is not None
    assert line.slant.where == ("West face", "tenon end line")


def test_a_line_across_is_square_or_slants_as_its_plane_has_it() -> None:
    """The same call for both, and neither for a plane along the timber."""
    deep = (ZERO, Length(50))
    assert cross_mark(STICK, SLOPE, deep, SAYS) == slanting_mark(STICK, SLOPE, deep, SAYS)
    square = above(Axis.ALONG, Length(7), "end")
    assert cross_mark(STICK, square, deep, SAYS) == square_mark(square, SAYS)
    with pytest.raises(ValueError, match="slant"):
        cross_mark(STICK, above(Axis.FIRST, Length(7), "edge"), deep, SAYS)


def test_a_tapering_plane_is_set_off_in_at_two_places() -> None:
    """It is measured from the reference face, at its root first."""
    line = tapering_mark(SLOPE, (Length(100), Length(300)), ("shoulder line", "end grain"), SAYS)
    assert (line.axis, line.at) == (Axis.SECOND, ZERO)
    assert line.slant is not None
    assert line.slant.finish == Spot(Length(300), Length(100))


def test_a_parallel_is_set_off_square_from_another() -> None:
    """It has no figure of its own along the timber, only the one its reading says."""
    reading = Reading(value=Length(5), hook="shoulder line", way="square to it")
    line = parallel_mark(SLOPE, (ZERO, Length(50)), reading, SAYS)
    assert (line.axis, line.readings) == (None, (reading,))


def test_what_is_no_slant_and_what_is_no_square() -> None:
    """Each kind refuses the other, a plane that leans two ways and a plane without an id."""
    with pytest.raises(ValueError, match="square to no axis"):
        axis_of(SLOPE)
    for plane in (Plane((0, 1, 1), 0, "x"), Plane((1, 1, 1), 0, "x"), Plane((1, 0, 0), 0, "x")):
        with pytest.raises(ValueError, match="does not slant"):
            slant_axis(plane)
    with pytest.raises(ValueError, match="has an id"):
        square_mark(above(Axis.FIRST, ZERO), SAYS)
