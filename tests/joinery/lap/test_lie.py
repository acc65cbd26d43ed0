"""How the two timbers of a lap lie to one another, and where the bed between them is."""

import pytest

from benchmate.joinery.lap.lie import Crossing, Stretch, below, crossing, lies
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis
from tests.builders import length
from tests.joinery.lap.crossings import SQUARE, Scene, sizes_of


def _met(scene: Scene, **sizes: tuple[str, str]) -> Crossing:
    built = scene.frame(sizes_of(**sizes))
    return crossing(scene.record(), built, *lies(scene.record(), built))


@pytest.mark.parametrize("side", ["up", "down"])
def test_half_of_what_they_share_comes_off_each(side: str) -> None:
    """Half depth each (trade.md 2.6, Rivington-scarf): 4" of 8" and 8"."""
    met = _met(Scene(side=side))
    assert met == Crossing(length("8"), length("4"), length("-4").nm)


@pytest.mark.parametrize(
    ("up", "tie", "plate", "common"),
    [
        ("6", "8", "8", "2"),
        ("2", "10", "8", "8"),
        ("0", "6", "8", "6"),
        ("8", "8", "8", "0"),
        ("9", "8", "8", "-1"),
        ("-9", "8", "8", "-1"),
    ],
)
def test_the_height_they_have_in_common(up: str, tie: str, plate: str, common: str) -> None:
    """Let down, one within the other, face to face, clear of one another either way."""
    met = _met(Scene(up=up, tie_size=(tie, "6"), plate_size=(plate, "8")))
    assert met.common == length(common)


def test_a_share_is_counted_down_from_the_upper_face_of_what_they_share() -> None:
    """A tie whose top stands 6" up, let in 2": a share of 1-1/2" puts the bed 1-1/2" down."""
    met = _met(Scene(up="6", joint={"share": "1-1/2"}))
    assert (met.common, met.share, met.bed) == (*map(length, ("2", "1-1/2")), length("-1-1/2").nm)


def test_the_bed_does_not_follow_the_sticks() -> None:
    """Law 2: a stick that is over or under moves no line from a reference face."""
    for looks in ((True, True), (False, False)):
        scene = Scene(up="3", tie_looks=looks, plate_looks=looks)
        drawn = _met(scene)
        assert _met(scene, tie=("8-1/2", "6"), plate=("7-3/4", "9")) == drawn


def test_by_square_rule_the_inner_timbers_lie() -> None:
    """7-1/2" of each under one top: 3-3/4" down."""
    assert _met(Scene(**SQUARE)).bed == length("-3-3/4").nm


def test_a_timber_is_stretched_from_its_reference_face() -> None:
    """Held where that face is placed, whichever way it looks."""
    for outward, drawn, thick in (
        (True, ("-8", "0"), ("-8-1/2", "0")),
        (False, ("-8", "0"), ("-8", "1/2")),
    ):
        scene = Scene(tie_looks=(outward, True))
        tie, _ = lies(scene.record(), scene.frame(sizes_of(tie=("8-1/2", "6"))))
        for deep, heights in (("8", drawn), ("8-1/2", thick)):
            expected = Stretch(*(length(height).nm for height in heights))
            assert tie.stretch(length(deep)) == expected
        assert tie.real == Stretch(*(length(height).nm for height in thick))


@pytest.mark.parametrize("side", ["up", "down", "south"])
def test_which_faces_and_axes_a_lap_has(side: str) -> None:
    """The outer face looks to the side, and the other axis runs along the other timber."""
    heading, run = ("up", "east") if side == "south" else ("east", "north")
    scene = Scene(side=side, heading=heading, run=run, tie_looks=(False, True))
    tie, plate = lies(scene.record(), scene.frame())
    assert (tie.outer, tie.inner, tie.far) == (Face.FAR_FIRST, Face.FIRST, Face.FAR_SECOND)
    assert (tie.deep, tie.wide) == (Axis.FIRST, Axis.SECOND)
    assert (plate.outer, plate.end) == (Face.FIRST, None)
    assert tie.end is Face.FAR_END
    assert tie.stick.pose.direction(tie.outer) is Direction[side.upper()]


def test_what_a_far_face_is_over() -> None:
    """Trade.md 7.5 no. 34 and 35, TFDIY-notation: inner 7-1/2", actual 7-7/8" and 8-1/4"."""
    scene = Scene(**SQUARE)
    for actual, over in (("7-7/8", "3/8"), ("8-1/4", "3/4")):
        _, plate = lies(scene.record(), scene.frame(sizes_of(plate=("8", actual))))
        assert plate.over == length(over)


def test_what_lies_below_a_height() -> None:
    """Away from the side, whichever way coordinates grow."""
    up, down = below(Direction.UP, 5), below(Direction.DOWN, 5)
    assert (up.normal, up.offset) == ((0, 0, 1), 5)
    assert (down.normal, down.offset) == ((0, 0, -1), 5)
