"""How far slanting ends reach."""

import pytest

from benchmate.frame.flats import shifted
from benchmate.frame.reach import crossing, nose_plane, plumb_axis, reach, slopes
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Pose
from benchmate.model.solids import Axis, Plane

INCH = Length.inches(1)

FACE = Plane((1, -1, 0), 0)
"""The face a brace's foot meets at 45 degrees: further back on the short edge."""


def test_the_axis_that_turns_up_with_the_rake() -> None:
    """It is the one from the face that looks up or down when the timber is laid level."""
    ways = (Direction.SOUTH, Direction.UP, Direction.WEST)
    assert plumb_axis(Pose(*ways, head=Direction.EAST)) is Axis.SECOND
    assert plumb_axis(Pose(Direction.DOWN, ways[0], ways[2], head=Direction.EAST)) is Axis.FIRST


def test_a_nose_is_square_to_the_face_and_wastes_the_long_edge() -> None:
    """At 45 degrees it slants the other way, with its waste beyond the point on the long edge."""
    nose = nose_plane(FACE, Axis.FIRST, ZERO)
    assert nose == Plane((1, 1, 0), 0)
    assert nose.holds(-10, 5, 0)
    assert not nose.holds(10, 0, 0)


def test_the_nose_of_a_far_end_lies_the_other_way_round() -> None:
    """Its waste is beyond the far shoulder."""
    face = Plane((-1, -1, 0), -1000)
    nose = nose_plane(face, Axis.FIRST, Length(1000))
    assert nose.holds(1010, 5, 0)
    assert not nose.holds(990, 0, 0)


def test_planes_cross_where_both_hold() -> None:
    """Square planes at 45 degrees through two points cross half-way."""
    assert crossing(FACE, Plane((1, 1, 0), 20), Axis.FIRST) == (Length(10), Length(10))
    with pytest.raises(ZeroDivisionError):
        crossing(FACE, Plane((2, -2, 0), 7), Axis.FIRST)


def test_a_slope_is_read_on_its_own_axis() -> None:
    """Along, and across on the axis asked for."""
    assert slopes(Plane((3, 4, 5), 0), Axis.SECOND) == (3, 5)


def test_a_nosed_tenon_reaches_as_far_as_its_nose() -> None:
    """4" square to a face at 45 degrees is 4 / 1.4142 = 2.828" along a 6" brace [CALC]."""
    tip = shifted(FACE, -4 * INCH)
    found = reach(tip, Axis.FIRST, 6 * INCH, ZERO, outward=-1, nosed=True)
    assert found == Length(round(4 * INCH.nm / 2**0.5))


def test_without_a_nose_the_long_edge_reaches_furthest() -> None:
    """The same end left pointed would be 4 x 1.4142 = 5.657" long on the long edge [CALC]."""
    tip = shifted(FACE, -4 * INCH)
    found = reach(tip, Axis.FIRST, 6 * INCH, ZERO, outward=-1, nosed=False)
    assert abs(found.nm - 4 * INCH.nm * 2**0.5) < 1


def test_an_end_short_of_its_shoulder_reaches_nothing() -> None:
    """A plumb cut that goes back from the long edge adds nothing to the stick."""
    assert reach(FACE, Axis.FIRST, 6 * INCH, ZERO, outward=-1, nosed=False) == ZERO
