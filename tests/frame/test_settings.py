"""How a square and a saw are set for a slant."""

import pytest

from benchmate.frame.settings import (
    on_the_square,
    plane_setting,
    rake_setting,
    slant_setting,
    square_set,
    taper_setting,
)
from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.setting import Arm, Setting, Square
from benchmate.model.solids import Axis, Plane
from tests.builders import length

INCHES = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
MM = Tape(style=Style.MM, graduation=Graduation.MM)
FOOT = Length.inches(12)


@pytest.mark.parametrize("rise", [2, 4, 8, 12, 14])
def test_twelve_lies_on_the_blade_for_a_foot_of_run(rise: int) -> None:
    """12 on the blade for run and the rise on the tongue (US Navy Builder manual, NAV-65)."""
    assert on_the_square(12, rise, INCHES) == (FOOT, Length.inches(rise))


def test_a_rise_that_does_not_fit_the_tongue_turns_the_scale_round() -> None:
    """Past 14 no stop holds on a tongue, so the rise is 12 there and the blade has less."""
    assert on_the_square(12, 16, INCHES) == (Length.inches(9), FOOT)
    assert on_the_square(12, 18, INCHES) == (Length.inches(8), FOOT)


def test_the_brace_settings_of_the_old_books() -> None:
    """A 3 ft by 4 ft brace is set with 12 and 9, one of 2 ft by 4 ft with 12 and 6.

    Hodgson, ABC of the Steel Square (trade notes 7.5, rows 12 and 13).
    """
    assert on_the_square(48, 36, INCHES) == (FOOT, Length.inches(9))
    assert on_the_square(48, 24, INCHES) == (FOOT, Length.inches(6))


def test_a_metric_square_is_set_by_300() -> None:
    """300 mm stands for the foot of run."""
    assert on_the_square(4, 3, MM) == (Length.mm(300), Length.mm(225))


def test_plumb_and_level_take_one_setting_and_two_arms() -> None:
    """Tongue for plumb, blade for level, and the saw's bevel off square is not the same."""
    plumb, level = (rake_setting(48, 36, INCHES, plumb=plumb) for plumb in (True, False))
    assert plumb == Setting(square=_square("12", "9", Arm.TONGUE), off_square=369)
    assert level == Setting(square=_square("12", "9", Arm.BLADE), off_square=531)


def _square(blade: str, tongue: str, arm: Arm) -> Square:
    return Square(blade=length(blade), tongue=length(tongue), arm=arm)


def test_a_slant_is_set_by_how_far_it_goes_each_way() -> None:
    """1 along in 4 across is 3 on the tongue to 12 on the blade, 14 degrees off square."""
    assert slant_setting(1, 4, INCHES) == Setting(
        square=_square("12", "3", Arm.TONGUE), off_square=140
    )


def test_a_plane_is_set_by_how_its_line_goes() -> None:
    """1 along in 4 across, whichever way it leans; nothing is set for a square line or an edge."""
    for plane in (Plane((4, 1, 0), 0), Plane((-4, 1, 0), 0), Plane((8, -2, 0), 9)):
        assert plane_setting(plane, Axis.FIRST, INCHES) == slant_setting(1, 4, INCHES)
    assert plane_setting(Plane((4, 0, 1), 0), Axis.SECOND, INCHES) == slant_setting(1, 4, INCHES)
    assert plane_setting(Plane((1, 0, 0), 0), Axis.FIRST, INCHES) is None
    assert plane_setting(Plane((0, 1, 0), 0), Axis.FIRST, INCHES) is None


def test_a_taper_is_set_by_how_far_it_falls_along_the_timber() -> None:
    """4" in 36" is 1-1/3" in 12", and 6.3 degrees to the long edge (CALC); 33.3 mm in 300."""
    found = taper_setting(36, 4, INCHES)
    assert found.square == square_set(36, 4, INCHES, Arm.BLADE)
    assert (found.off_square, found.to_edge) == (None, 63)
    for tape, shown in ((INCHES, ('12"', '1-5/16"+')), (MM, ("300 mm", "33 mm+"))):
        square = square_set(36, 4, tape, Arm.BLADE)
        assert (tape.text(square.blade), tape.text(square.tongue)) == shown


def test_a_square_that_is_stepped_is_struck_along_no_arm() -> None:
    """Only its figures count."""
    assert square_set(12, 7, INCHES, None) == Square(blade=FOOT, tongue=Length.inches(7), arm=None)
