"""Slanting lines in words and figures."""

from dataclasses import replace

import pytest

from benchmate.frame.marking import Says, parallel_mark, slanting_mark, square_mark, tapering_mark
from benchmate.frame.settings import rake_setting
from benchmate.layout.slants import (
    inside,
    other_end,
    parallel_rests,
    setting_of,
    slant_rests,
    start_words,
)
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Reading
from benchmate.model.setting import Arm, Setting, Square
from benchmate.model.solids import Axis, Plane, above
from tests.builders import frame, length, set_in_words, timber

SAYS = Says(title="Shoulder line", why="Because.")
TAPE = Tape()
STICK = frame(timber("post")).stick("post")
AHEAD = Plane((1, 0, -2), 100, "shoulder")
BACK = Plane((1, 0, 2), 100, "shoulder")


def test_a_slant_says_where_it_starts_and_how_much_further_it_ends() -> None:
    """The second figure counts from the first, towards the end it lies nearer to."""
    for plane, end in ((AHEAD, "head"), (BACK, "foot")):
        line = slanting_mark(STICK, plane, (ZERO, Length(49)), SAYS)
        words = f"nearer the {end} on the East face"
        assert start_words(line) == ", on the West face"
        assert other_end(STICK, line, ()) == (Beside(Length(98), words),)


def test_a_taper_counts_both_ends_from_the_reference_face() -> None:
    """So no figure is a sum of two."""
    where = ("shoulder line", "end grain")
    line = tapering_mark(AHEAD, (Length(120), Length(300)), where, SAYS)
    assert start_words(line) == ", on the shoulder line"
    assert other_end(STICK, line, ()) == (
        Beside(Length(100), "from the West face on the end grain"),
    )


def test_a_tick_remembers_the_other_end_too() -> None:
    """A line whose slope changes is struck anew, though its start stays."""
    line = slanting_mark(STICK, AHEAD, (ZERO, Length(50)), SAYS)
    (rest,) = slant_rests(line)
    assert (rest.value, rest.hook) == (Length(200), "other end of the shoulder line")


def test_square_and_parallel_lines_have_one_place_only() -> None:
    """There is nothing to say of another end."""
    reading = Reading(value=Length(5), hook="shoulder line", way="square to it")
    parallel = parallel_mark(AHEAD, (ZERO, Length(50)), reading, SAYS)
    square = square_mark(above(Axis.FIRST, Length(5), "side"), SAYS)
    for line in (square, parallel):
        assert (other_end(STICK, line, ()), slant_rests(line)) == ((), ())
    assert start_words(square) == ""


def test_a_tick_remembers_how_far_a_parallel_line_lies_from_the_other() -> None:
    """A tenon that was sawn to its end line is looked at again once that line moves."""
    reading = Reading(value=Length(5), hook="shoulder line", way="square to it")
    parallel = parallel_mark(AHEAD, (ZERO, Length(50)), reading, SAYS)
    (rest,) = parallel_rests(parallel)
    assert (rest.value, rest.hook, rest.way) == (
        Length(5),
        "shoulder line",
        "from the shoulder line",
    )
    assert rest.name == "shoulder (line)"
    assert parallel_rests(slanting_mark(STICK, AHEAD, (ZERO, Length(50)), SAYS)) == ()


def test_a_slant_that_leaves_at_the_end_says_how_deep_it_comes_out_there() -> None:
    """Never a point that has been sawn off: 100 short of the end, 50 in."""
    gone = Plane((1, 0, 2), 100, "shoulder")
    line = slanting_mark(STICK, gone, (ZERO, Length(200)), SAYS)
    (found,) = other_end(STICK, line, ())
    assert found == Beside(Length(50), "from the West face, foot end grain")
    level = slanting_mark(STICK, gone, (ZERO, Length(49)), SAYS)
    assert other_end(STICK, level, ())[0].words == "nearer the foot on the East face"


def test_the_setting_says_where_the_blade_lies() -> None:
    """Along the tongue a line leans towards the blade, along the blade away from it."""
    for plumb, planes in ((True, (AHEAD, BACK)), (False, (BACK, AHEAD))):
        says = Says(title="Line", why="Because.", setting=rake_setting(4, 3, TAPE, plumb=plumb))
        for plane, end in zip(planes, ("head", "foot"), strict=True):
            line = slanting_mark(STICK, plane, (ZERO, Length(9)), says)
            found = set_in_words(setting_of(STICK, line, ()))
            assert f'blade 12" towards the {end}, tongue 9", on the West edge;' in found
    square = square_mark(above(Axis.FIRST, Length(5), "side"), SAYS)
    assert setting_of(STICK, square, ()) is None


def test_a_bevel_alone_does_not_lie_on_an_edge() -> None:
    """It is set by its angle, from the face."""
    slope = Setting(off_square=71, bevel=True)
    says = Says(title="Line", why="Because.", setting=slope)
    line = slanting_mark(STICK, AHEAD, (ZERO, Length(9)), says)
    assert setting_of(STICK, line, ()) == slope


def test_a_line_that_leans_only_going_in_is_struck_square_across() -> None:
    """A notch closed on both sides shows none of its slope: that is for the bevel."""
    says = Says(title="Line", why="Because.", setting=rake_setting(4, 3, TAPE, plumb=True))
    line = slanting_mark(STICK, AHEAD, (ZERO, Length(9)), says, ("West face", "sole line"))
    on_top = (Face.SECOND,)
    assert set_in_words(setting_of(STICK, line, on_top)) == (
        "strike square across; bevel going in, "
        'along the tongue: blade 12", tongue 9"; 36.9° off square'
    )
    assert other_end(STICK, line, on_top)[0].words == "nearer the head at the sole line"
    assert not inside(line, (Face.SECOND, Face.FIRST))


@pytest.mark.parametrize(("tongue", "by_hand"), [("8", False), ("4-1/2", False), ("3", True)])
def test_an_arm_that_ends_well_inside_the_line_is_no_way_to_strike_it(
    tongue: str, by_hand: bool
) -> None:
    """About 9" of line: half of it has to lie between the figure on the edge and the heel."""
    square = Square(blade=length("12"), tongue=length(tongue), arm=Arm.TONGUE)
    says = replace(SAYS, setting=Setting(square=square, off_square=266))
    line = slanting_mark(STICK, AHEAD, (ZERO, length("4")), says)
    setting = setting_of(STICK, line, (Face.FIRST,))
    assert setting is not None
    assert setting.straightedge is by_hand
    assert (setting.square is None) is by_hand


def test_a_taper_is_set_by_its_square_however_long_it_is() -> None:
    """It has no saw to lean, and its square says what it makes with the edge."""
    square = Square(blade=length("12"), tongue=length("2"), arm=Arm.TONGUE)
    says = replace(SAYS, setting=Setting(square=square, to_edge=95))
    setting = setting_of(STICK, slanting_mark(STICK, AHEAD, (ZERO, length("4")), says), ())
    assert setting is not None
    assert setting.square is not None
    assert setting.square.edge
