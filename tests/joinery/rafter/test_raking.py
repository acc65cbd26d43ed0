"""A rafter in the upright plane it rakes in."""

import pytest

from benchmate.frame.flats import along_at, deep_at
from benchmate.joinery.rafter.raking import above, rafter, under
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from tests.builders import frame, length, real, timber
from tests.joinery.rafter.roofs import Roof, alone

ROOF = Roof(rise="9", run="8'", over="5", out="12")


def test_its_top_edge_is_the_line_its_incline_says() -> None:
    """9 in 12, 5" over a wall at 8 ft: 101" up there, 9" lower at the tail, 72" higher ahead."""
    found = rafter(frame(ROOF.raking()), "rafter")
    assert (Length(found.foot), Length(found.head)) == (length("-12"), length("8'"))
    ups = [Length(found.up_at(length(at).nm)) for at in ("-12", "0", "8'")]
    assert ups == [length("92"), length("101"), length("173")]


@pytest.mark.parametrize("heading", ["west", "south"])
def test_ahead_is_the_way_it_rises(heading: str) -> None:
    """Towards the west or south, coordinates shrink and it still lies ahead."""
    found = rafter(frame(Roof(heading=heading).raking()), "rafter")
    assert found.foot < found.head
    assert found.heading is Direction[heading.upper()]


def test_its_two_sides_and_what_is_sawn_across_them() -> None:
    """Struck on both; a cut as long as the stick is deep waits for it to be measured."""
    found = rafter(frame(ROOF.raking()), "rafter", "head-cut")
    assert found.both_sides == (Face.SECOND, Face.FAR_SECOND)
    assert "measure first" in found.unmeasured_depth
    sizes = {"rafter": real({"head-cut": {"first": "6"}})}
    assert rafter(frame(ROOF.raking(), real=sizes), "rafter", "head-cut").unmeasured_depth == ""


def test_a_depth_under_the_top_edge() -> None:
    """At 3-4-5, 4" square to the edge are 5" plumb: that much lower everywhere."""
    found = rafter(frame(ROOF.raking()), "rafter")
    assert found.plumbed(length("4")) == length("5")
    assert found.squared(length("5")) == length("4")
    assert Length(found.up_at(0, length("4"))) == length("96")
    assert found.ahead_at(length("96").nm, length("4")) == 0


def test_a_level_distance_along_the_edge() -> None:
    """At 3-4-5, 12" level are 15" along it."""
    assert alone("9").along(length("12")) == length("15")


def test_where_walls_differ_in_height() -> None:
    """Trade notes 7.5, row 27 (JLC-Holladay): 24" of height at 6/12 is 48" of run."""
    found = alone("6", "8'")
    foot = found.line.foot[2]
    runs = found.ahead_at(foot + length("24").nm) - found.foot
    assert Length(runs) == length("48")


def test_real_and_framed_sizes() -> None:
    """By square rule the frame counts on the inner timber, in depth and across."""
    stick = Roof(own={"rafter": {"rule": "square", "inner": "5-1/2 x 3-1/2"}}).raking()
    found = rafter(frame(stick, real={"rafter": real({"all": {"first": "6-1/8"}})}), "rafter")
    assert (found.deep, found.real_deep) == (length("5-1/2"), length("6-1/8"))
    assert (found.wide, found.real_wide) == (length("3-1/2"), length("4"))
    assert (found.plumb, found.sides) == (Axis.FIRST, Axis.SECOND)
    assert (found.top, found.side) == (Face.FIRST, Face.SECOND)


def test_planes_in_its_own_readings() -> None:
    """At 12 in 12 plumb and level planes lean a right angle apart, 45 degrees to the edge."""
    found = alone("12")
    plumb = found.carried(found.uphill(found.foot), "plumb")
    assert along_at(plumb, Axis.FIRST, ZERO) == ZERO
    assert along_at(plumb, Axis.FIRST, length("6")) == -length("6")
    level = found.carried(under(found.line.foot[2]), "level")
    assert abs(deep_at(level, Axis.FIRST, length("6")) - length("6")) <= Length(1)
    assert plumb.holds(length("1").nm, 0, 0), "uphill is behind it"
    assert not found.carried(found.downhill(found.foot)).holds(length("1").nm, 0, 0)
    turned = found.carried(above(found.line.foot[2]))
    assert (turned.normal, turned.offset) == (tuple(-n for n in level.normal), -level.offset)


def test_another_timber_is_no_rafter() -> None:
    """Asked for a post, it says so rather than guess a slope."""
    with pytest.raises(ValueError, match="does not rake"):
        rafter(frame(timber("post")), "post")
