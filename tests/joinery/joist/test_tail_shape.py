"""Where a tail and its socket lie, by hand-reckoned figures."""

import pytest

from benchmate.joinery.joist.tail_shape import FAR, NEAR
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane
from tests.builders import length, lengths
from tests.floor import over
from tests.joinery.joist.tails import HALF, LOW, as_cut, tailed

EAST, WEST = "east", "west"
"""Where the sides of a joist look whose end looks south: its left is the east."""


def test_a_tail_is_as_wide_as_its_joist_at_the_tip() -> None:
    """3/4" in at each flank leaves a neck of 2-1/2" of 4"."""
    tail, _ = tailed().shapes
    assert (tail.wide, tail.neck, tail.length, tail.deep) == lengths("4", "2-1/2", "3", "7")
    assert (tail.shoulder, tail.tip) == lengths("0", "-3")
    assert tail.places == ("south-end-dovetail", "south-end")


def test_its_flanks_lean_from_neck_to_tip() -> None:
    """3/4" over 3": 1 across for 4 along, the waste outside each."""
    near, far = tailed().shapes[0].flanks
    assert near == Plane((-1, 0, 4), length("3").nm, NEAR)
    assert far == Plane((-1, 0, -4), -length("13").nm, FAR)
    assert near.holds(length("-1").nm, 0, length("0").nm)
    assert not near.holds(length("-1").nm, 0, length("5/8").nm)


@pytest.mark.parametrize(
    ("straight", "flares", "neck"),
    [
        (None, ("3/4", "3/4"), "2-1/2"),
        (EAST, ("0", "3/4"), "3-1/4"),
        (WEST, ("3/4", "0"), "3-1/4"),
    ],
)
def test_a_flank_may_be_left_straight(
    straight: str | None, flares: tuple[str, str], neck: str
) -> None:
    """The side is named by where it looks, so either hand is told right."""
    tail, _ = tailed(straight=straight).shapes
    assert tail.flares == lengths(*flares)
    assert tail.neck == length(neck)
    assert (tail.looks(NEAR), tail.looks(FAR)) == (Direction.EAST, Direction.WEST)
    other, _ = tailed(LOW.with_(left=False), straight=straight).shapes
    assert other.flares == lengths(*reversed(flares))


def test_a_tail_may_be_less_deep_than_its_joist() -> None:
    """Half a dovetail deep, or as deep as the inner timber by square rule."""
    assert tailed(end_depth="3-1/2").shapes[0].deep == length("3-1/2")
    square, _ = tailed(HALF).shapes
    assert (square.deep, square.framed, square.real_deep) == lengths("7", "7", "7-1/2")
    assert (square.wide, square.real_wide) == lengths("4", "4-1/4")


def test_through_a_beam_over_its_size_the_whole_end_is_reduced() -> None:
    """1/2" in; to the tail's own line below, to the inner timber's at a flared side."""
    tail, _ = tailed(HALF).shapes
    assert tail.recess == length("1/2")
    assert tail.reduction.to == {Axis.FIRST: length("7"), Axis.SECOND: length("4")}
    assert tail.reduction.struck == {Axis.FIRST: "tail-underside"}
    shallow, _ = tailed(HALF, end_depth="4", straight=WEST).shapes
    assert shallow.reduction.struck == {Axis.SECOND: FAR}


def test_the_socket_is_the_tail_and_a_little_longer() -> None:
    """Its flanks run on past the tip: 3/4" over 3" is 1/32" in 1/8"."""
    tail, socket = tailed().shapes
    assert (socket.seat, socket.back, socket.clearance) == lengths("0", "3-1/8", "1/8")
    assert socket.wide(socket.seat) == tail.neck
    assert socket.wide(length("3")) == tail.wide
    assert socket.wide(socket.back) == length("4-1/16")
    assert socket.along[1] - socket.along[0] == length("4-1/16")
    assert (socket.floor, socket.from_top, socket.left_below) == lengths("8", "8", "2")
    assert tailed(end_clearance="0").shapes[1].back == length("3")


@pytest.mark.parametrize(("side", "line"), [(EAST, NEAR), (WEST, FAR)])
def test_a_wedge_has_room_on_its_own_side(side: str, line: str) -> None:
    """That flank stands so far out all along; the other holds."""
    plain = tailed().shapes[1]
    found = tailed(wedge="3/8", wedge_side=side).shapes[1]
    assert (found.wedge, found.wedge_line) == (length("3/8"), line)
    for deep in ("0", "3"):
        assert found.wide(length(deep)) == plain.wide(length(deep)) + length("3/8")
    held = {NEAR: FAR, FAR: NEAR}[line]
    kept = {plane.line: plane for plane in found.flanks}[held]
    assert kept in plain.flanks
    assert (plain.wedge, plain.wedge_line) == (ZERO, "")


@pytest.mark.parametrize(
    ("made", "mouth", "back", "floor"),
    [
        ({"width": "3-7/8"}, "2-3/8", "3", "8"),
        ({"length": "2-3/4"}, "2-1/2", "2-3/4", "8"),
        ({"thickness": "6-7/8"}, "2-1/2", "3", "7-7/8"),
    ],
)
def test_it_follows_the_tail_as_cut(
    made: dict[str, str], mouth: str, back: str, floor: str
) -> None:
    """Law 5: from the joist's reference side at the tip, and from its top."""
    _, socket = tailed(LOW.with_(real=as_cut(**made))).shapes
    assert socket.wide(socket.seat) == length(mouth)
    assert socket.back == length(back) + length("1/8")
    assert socket.floor == length(floor)


def test_in_a_far_face_it_counts_from_there() -> None:
    """By mill rule from the real face; by square rule from the inner timber's."""
    _, mill = tailed(LOW.with_(near=False)).shapes
    assert (mill.seat, mill.back) == lengths("8", "4-7/8")
    assert mill.entry is Face.FAR_SECOND
    _, square = tailed(HALF).shapes
    assert (square.seat, square.recess) == lengths("8", "3-5/8")
    assert (square.housing.recess, square.housing.dropped) == (length("1/2"), True)


def test_flares_that_take_the_whole_neck_still_have_a_shape() -> None:
    """Law 7: the figures are what they are, and a finding tells of them."""
    for flare in ("2", "2-1/2"):
        tail, socket = tailed(flare=flare).shapes
        assert tail.neck == length("4") - length(flare) * 2
        assert socket.wide(length("3")) == length("4")


def test_either_hand_is_the_other_s_mirror_image() -> None:
    """The socket of a joist measured from its other side has the same flanks."""
    one, other = (tailed(LOW.with_(left=left)).shapes[1] for left in (True, False))
    assert one.wide(one.back) == other.wide(other.back)
    assert {plane.normal for plane in one.flanks} == {plane.normal for plane in other.flanks}


def test_as_drawn_by_mill_rule_an_odd_joist_is_as_wide_as_it_measures() -> None:
    """Like a pocket's joist: what it is over shows on its far side only."""
    tail, socket = tailed(over(LOW, (0, 0, 0, 8), "mill")).shapes
    assert tail.wide == length("4-1/4")
    assert socket.wide(length("3")) == length("4-1/4")
