"""A setting of square, saw or bevel, and how it is put in words."""

from dataclasses import replace

import pytest

from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.setting import Arm, Setting, Square
from tests.builders import length

FEET = Tape()
MM = Tape(style=Style.MM, graduation=Graduation.MM)
PLUMB = Setting(
    square=Square(blade=length("12"), tongue=length("8"), arm=Arm.TONGUE), off_square=337
)
LEVEL = Setting(square=Square(blade=length("12"), tongue=length("8"), arm=Arm.BLADE), to_edge=337)
SLOPE = Setting(off_square=71, bevel=True)


def test_a_line_says_arm_blade_tongue_edge_and_saw() -> None:
    """The arm to strike along first, each figure with its arm, the end by the blade's."""
    assert PLUMB.lying("foot", "South edge").words(FEET) == (
        'strike along the tongue: blade 12" towards the foot, tongue 8", on the South edge; '
        "saw 33.7° off square"
    )


def test_a_saw_cut_goes_by_a_line_that_is_struck() -> None:
    """So nothing is said of how the square lies."""
    assert PLUMB.words(FEET) == (
        'strike along the tongue: blade 12", tongue 8"; saw 33.7° off square'
    )


def test_a_taper_is_told_by_what_it_makes_with_the_long_edge() -> None:
    """It runs along the timber: no saw is set off square for it."""
    assert LEVEL.words(FEET) == (
        'strike along the blade: blade 12", tongue 8"; 33.7° to the long edge'
    )


def test_a_rafter_has_both_its_angles() -> None:
    """The saw's off square, the line's to the edge."""
    words = replace(PLUMB, to_edge=563).words(FEET)
    assert words.endswith('tongue 8"; saw 33.7° off square (56.3° to edge)')


def test_a_bevel_takes_the_place_of_the_saw() -> None:
    """Where no saw gets in."""
    assert PLUMB.with_bevel().words(FEET) == (
        'bevel set along the tongue: blade 12", tongue 8"; 33.7° off square'
    )


def test_what_leans_only_going_in_is_struck_square_across() -> None:
    """With the bevel by the square, or by its angle alone."""
    assert PLUMB.leaning_in().words(FEET) == (
        "strike square across; bevel going in, "
        'along the tongue: blade 12", tongue 8"; 33.7° off square'
    )
    assert SLOPE.leaning_in().words(FEET) == (
        "strike square across; bevel going in, 7.1° off square to the face"
    )
    assert SLOPE.words(FEET) == "bevel 7.1° off square to the face"


def test_a_stepped_square_is_struck_along_neither_arm() -> None:
    """It is only walked along the edge."""
    square = Square(blade=length("12"), tongue=length("8"), arm=None)
    stepped = Setting(square=square).lying("foot", "top edge")
    assert stepped.words(FEET) == 'blade 12" towards the foot, tongue 8", on the top edge'


def test_a_setting_without_a_square_has_none_to_lay() -> None:
    """A bevel alone lies nowhere."""
    assert SLOPE.lying("foot", "top edge") == SLOPE


def test_a_square_has_no_feet() -> None:
    """On a tape in feet and inches its figures stay in inches; millimetres stay as they are."""
    assert 'blade 12"' in PLUMB.words(FEET)
    metric = Square(blade=length("300 mm"), tongue=length("200 mm"), arm=Arm.TONGUE)
    assert "blade 300 mm, tongue 200 mm;" in replace(PLUMB, square=metric).words(MM)


def test_a_setting_sets_something() -> None:
    """An angle to the edge is no way to set a bevel."""
    with pytest.raises(ValueError, match="sets a square, a bevel or both"):
        Setting(to_edge=563)


def test_a_line_the_square_is_too_short_for_is_struck_with_a_straightedge() -> None:
    """From end to end, as both are given; the saw still leans."""
    square = Square(blade=length("12"), tongue=length("1-1/2"), arm=Arm.TONGUE)
    shallow = Setting(square=square, off_square=71).by_straightedge()
    assert shallow.words(FEET) == (
        "straightedge from one end of the line to the other; saw 7.1° off square"
    )
