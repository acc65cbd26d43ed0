"""Settings, pitch and angles in words."""

import re

import pytest

from benchmate.joinery.rafter.words import datum, foot_of, pitch, setting, slanting
from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane
from tests.builders import length, set_in_words
from tests.joinery.rafter.roofs import Roof, alone, built, tail

TAPE = Tape(style=Style.INCHES)
METRIC = Tape(style=Style.MM, graduation=Graduation.MM)

ANGLES = {
    2: (9.46, 80.54),
    3: (14.04, 75.96),
    4: (18.43, 71.57),
    5: (22.62, 67.38),
    6: (26.57, 63.43),
    7: (30.26, 59.74),
    8: (33.69, 56.31),
    9: (36.87, 53.13),
    10: (39.81, 50.19),
    11: (42.51, 47.49),
    12: (45.00, 45.00),
    13: (47.29, 42.71),
    14: (49.40, 40.60),
    15: (51.34, 38.66),
    16: (53.13, 36.87),
    17: (54.78, 35.22),
    18: (56.31, 33.69),
}
"""The level angle, and the plumb-cut angle from the rafter's edge (trade notes 7.2, CALC)."""


def angles(setting: Setting | None) -> tuple[float, float]:
    """The saw's angle off square and the line's to the edge, as they are told."""
    off, to_edge = re.findall(r"([\d.]+)°", set_in_words(setting))
    return float(off), float(to_edge)


@pytest.mark.parametrize("rise", ANGLES)
def test_both_angles_of_a_plumb_cut_are_told_apart(rise: int) -> None:
    """Off square it is sawn at the pitch; to the edge it stands at 90 degrees less that."""
    level, plumb = ANGLES[rise]
    found = setting(alone(str(rise)), TAPE, plumb=True)
    assert angles(found) == pytest.approx((level, plumb), abs=0.051)
    assert re.search(r"; saw [\d.]+° off square \([\d.]+° to edge\)$", set_in_words(found))


@pytest.mark.parametrize("rise", ANGLES)
def test_a_level_cut_is_the_other_way_round(rise: int) -> None:
    """Off square it is sawn at 90 degrees less the pitch; it stands at the pitch to the edge."""
    level, plumb = ANGLES[rise]
    found = setting(alone(str(rise)), TAPE, plumb=False)
    assert angles(found) == pytest.approx((plumb, level), abs=0.051)


def test_tongue_plumb_blade_level() -> None:
    """12 on the blade for run, rise on the tongue: tongue plumb, blade level (NAV-65)."""
    plumb, level = (set_in_words(setting(alone("7"), TAPE, plumb=way)) for way in (True, False))
    assert plumb.startswith('strike along the tongue: blade 12", tongue 7";')
    assert level.startswith('strike along the blade: blade 12", tongue 7";')


def test_the_pitch_per_foot() -> None:
    """Rise in 12, or in 300 mm."""
    assert pitch(alone("7"), TAPE) == '7" in 12"'
    assert pitch(alone("9"), METRIC) == "225 mm in 300 mm"


def test_a_slope_restated_per_foot() -> None:
    """Trade notes 7.5, row 25 (EN0069): 2 in 5 is 4-4/5 in 12."""
    found = alone("4.8", "5'")
    assert Length(found.line.rise) == length("24"), "2 in 5 over 5 feet"
    assert pitch(found, TAPE) == '4-13/16"- in 12"'


def test_a_line_at_any_other_angle() -> None:
    """3 along for 4 across is 36.9 degrees off square; a square line needs no words."""
    slant = Plane((4, -3, 0), 0)
    assert angles(slanting(slant, Axis.FIRST, TAPE)) == (36.9, 53.1)
    assert slanting(Plane((1, 0, 0), 0), Axis.FIRST, TAPE) is None


def test_which_line_all_along_is_measured_from() -> None:
    """The one at a reference end whose stick reaches on beyond it; no other."""
    stick = built(Roof(), tail()).stick("rafter")
    assert "it is the foot shoulder line" in datum(stick, Face.REFERENCE_END)
    assert datum(stick, Face.FAR_END) == ""
    assert datum(built(Roof()).stick("rafter"), Face.REFERENCE_END) == ""


def test_what_a_step_off_figure_is_given_for() -> None:
    """A foot of run, or 300 mm."""
    assert (foot_of(TAPE), foot_of(METRIC)) == (length("12"), Length.mm(300))
