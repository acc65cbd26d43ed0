"""Where a tail is cut."""

from benchmate.frame.flats import along_at
from benchmate.joinery.rafter.tail.shape import TailShape, plumb_tail, tail_shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, built, tail

ROOF = Roof(rise="9", rafter="6 x 4")
"""3-4-5: 6" of depth is 7-1/2" plumb and 10" level."""


def shape(roof: Roof = ROOF, deep: str | None = None, **words: object) -> TailShape:
    """The tail of a roof's rafter, measured so deep there."""
    joint = tail(**words)
    sticks = {"rafter": real({"foot-tail": {"first": deep}})} if deep else None
    return tail_shape(joint, built(roof, joint, real=sticks))


def test_a_plumb_tail() -> None:
    """Through the end of the top edge, 4-1/2" further out on the underside: the stick holds it."""
    found = shape()
    axis = found.rafter.plumb
    assert along_at(found.cut, axis, ZERO) == ZERO
    assert along_at(found.cut, axis, length("6")) == -length("4-1/2")
    assert found.rafter.stick.near == length("4-1/2")
    assert (found.plumb_high, found.soffit, found.at_foot) == (length("7-1/2"), None, True)


def test_a_level_tail() -> None:
    """10" long, back from the end of the top edge: the stick needs nothing beyond it."""
    found = shape(cut="level")
    assert found.level_long == length("10")
    assert along_at(found.cut, found.rafter.plumb, length("6")) == length("8")
    assert found.rafter.stick.near == ZERO


def test_plumb_and_level() -> None:
    """4" of level cut take 3" off the plumb one, and 2.4" of depth off the tip."""
    found = shape(cut="plumb and level", level="4")
    assert (found.plumb_high, found.level_long) == (length("4-1/2"), length("4"))
    assert found.rafter.stick.near == Length(length("3.6").nm * 3 // 4)


def test_the_level_cuts_of_a_row_lie_in_one_line() -> None:
    """A deeper stick has its level cut as high, and longer by what it is deeper, at 3-4-5 5/3."""
    drawn = shape(cut="plumb and level", level="4")
    found = shape(deep="6-3/8", cut="plumb and level", level="4")
    assert found.soffit == drawn.soffit
    assert found.plumb_high == drawn.plumb_high
    assert found.level_long == length("4-5/8")
    assert found.rafter.stick.near == drawn.rafter.stick.near


def test_a_plumb_tail_of_a_deeper_stick_is_longer() -> None:
    """7-1/2" of depth are 9-3/8" plumb, and reach 5-5/8" out."""
    found = shape(deep="7-1/2")
    assert found.plumb_high == length("9-3/8")
    assert found.rafter.stick.near == length("5-5/8")


def test_a_tail_at_the_head() -> None:
    """Plumb through the upper end of the top edge, back from it on the underside."""
    found = shape(end="head")
    stick = found.rafter.stick
    assert not found.at_foot
    assert abs((along_at(found.cut, found.rafter.plumb, ZERO) - stick.body).nm) <= 1
    assert stick.far == ZERO


def test_whether_an_end_is_cut_plumb() -> None:
    """Its own tail says so; a level one, or one at the other end, does not."""
    cases = (
        (tail(), "eaves"),
        (tail(cut="plumb and level", level="3"), "eaves"),
        (tail(cut="level"), ""),
        (tail(end="head"), ""),
    )
    for joint, plumb in cases:
        assert plumb_tail(built(ROOF, joint), "rafter", Direction.DOWN) == plumb
