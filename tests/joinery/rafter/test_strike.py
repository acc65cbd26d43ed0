"""Step-off figures against the published tables and examples, each with its source."""

import pytest

from benchmate.joinery.rafter.raking import rafter
from benchmate.joinery.rafter.strike import Mark, step_off, steps, steps_words, unit_length
from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.feature import Task
from tests.builders import frame, length, set_in_words
from tests.joinery.rafter.roofs import Roof, alone

TAPE = Tape(style=Style.INCHES)
FEET = Tape()

UNITS = {
    2: "12.17",
    3: "12.37",
    4: "12.65",
    5: "13.00",
    6: "13.42",
    7: "13.89",
    8: "14.42",
    9: "15.00",
    10: "15.62",
    11: "16.28",
    12: "16.97",
    13: "17.69",
    14: "18.44",
    15: "19.21",
    16: "20.00",
    17: "20.81",
    18: "21.63",
}
"""Inches of rafter per foot of run by rise (trade notes 7.2: Instr-unit, exact figures CALC)."""


def inches(size: Length, places: int) -> str:
    """A length in decimal inches, as books print it."""
    return f"{size.nm / NM_PER_INCH:.{places}f}"


@pytest.mark.parametrize("rise", UNITS)
def test_the_unit_length(rise: int) -> None:
    """Trade notes 7.2: the published list of rafter per foot of run, 2 to 18."""
    assert inches(unit_length(alone(str(rise)), TAPE), 2) == UNITS[rise]


def test_metric_figures_go_by_300_mm() -> None:
    """3-4-5: at 9 in 12, 300 mm of run are 375 mm of rafter."""
    tape = Tape(style=Style.MM, graduation=Graduation.MM)
    assert unit_length(alone("9"), tape) == Length.mm(375)


@pytest.mark.parametrize(
    ("rise", "run", "exact", "shown", "source"),
    [
        ("7", "8'", "111.140", "9' 3-1/8\"+", "NAV-64 prints 9'-3-1/8\""),
        ("6", "12' 6", "167.705", "13' 11-11/16\"+", "Griffith-21 prints 167.75, trap 7.6 no. 6"),
        ("12", "12' 6", "212.132", "17' 8-1/8\"", "Griffith-IV prints 17'-8-1/8\""),
        ("13", "10' 4", "182.815", "15' 2-13/16\"", "EN5156-75 prints 15'-3\", trap 7.6 no. 5"),
        ("4", "12'", "151.789", "12' 7-13/16\"-", "Hodgson-11 prints 12'-7-10/12\""),
        ("12", "12'", "203.647", "16' 11-5/8\"+", "Hodgson-11 and -28: 16'-11-8/12\""),
        ("12", "12' 4", "209.304", "17' 5-5/16\"-", "Hodgson-11 prints 17'-5-4/12\""),
        ("6", "15'", "201.246", "16' 9-1/4\"", "Hodgson-29, stepped 15 times"),
        ("5", "12'", "156.000", "13' 0\"", "Verydays prints 13 ft"),
        ("8", "12'", "173.066", "14' 5-1/16\"", "CALC, no book"),
        ("8", "10'", "144.222", "12' 0-1/4\"-", "CALC, no book"),
        ("9", "12'", "180.000", "15' 0\"", "CALC, no book"),
        ("12", "30'", "509.117", "42' 5-1/8\"-", "CALC; Hodgson prints 42'-6-1/8\", trap no. 3"),
    ],
)
def test_the_length_of_a_rafter(rise: str, run: str, exact: str, shown: str, source: str) -> None:
    """Trade notes 7.5, rows 15 to 24, and the slips of 7.6: the exact value wins."""
    found = alone(rise, run).along(length(run))
    assert (inches(found, 3), FEET.text(found)) == (exact, shown), source


def test_decimal_feet_are_not_inches() -> None:
    """Trade notes 7.6, trap 4: 60 x 0.71 = 42.6 feet, printed as 42 ft 6 in, are 42' 7-1/4" nearly.

    The exact rafter of that building is 42' 5-1/8": neither of the printed two.
    """
    decimal = Length(42 * 12 * NM_PER_INCH + 12 * NM_PER_INCH * 6 // 10)
    assert FEET.text(decimal) == "42' 7-3/16\"+"
    assert FEET.text(alone("12", "30'").along(length("30'"))) == "42' 5-1/8\"-"


def stepped(rise: str, run: str, *, centre: str | None = None) -> Task:
    """A rafter of one run stepped off from its foot to its head."""
    roof = Roof(rise=rise, run=run, out="0")
    found = rafter(frame(roof.raking(), units="inches"), "rafter", "notch")
    start, finish = Mark(found.foot, "heel line"), Mark(found.head, "the head")
    return step_off(found, TAPE, start, finish, length(centre).nm if centre else None)


@pytest.mark.parametrize(
    ("rise", "run", "found"),
    [
        ("6", "15'", (15, "0")),  # Hodgson-29: 12 and 6 stepped 15 times
        ("13", "10' 4", (10, "4")),  # EN5156-73: odd inches as a part step
        ("18", "4'", (6, "0")),  # 12 on the tongue is 8 on the blade: 16" of tongue hold no more
    ],
)
def test_how_often_the_square_is_set(rise: str, run: str, found: tuple[int, str]) -> None:
    """As many settings as feet of run, and what is over as a part step (trade notes 7.3)."""
    assert steps(alone(rise), length(run), TAPE) == (found[0], length(found[1]))


def test_steps_in_words() -> None:
    """With the odd inches, and without."""
    assert steps_words(alone("7"), length("8'"), FEET) == '8 steps of 12"'
    words = steps_words(alone("7"), length("8' 4"), FEET)
    assert words == '8 steps of 12", then 4" more at the same setting'


def test_a_stretch_is_stepped_off() -> None:
    """Run, rise, unit length, steps and the length of the edge, all of one stretch."""
    task = stepped("7", "8'")
    assert inches(task.readings[0].value, 3) == "111.140"
    run, rise, unit = task.beside
    assert (run.value, run.words) == (length("96"), 'of run, level: 8 steps of 12"')
    assert (rise.value, rise.words) == (length("56"), 'of rise, plumb, at 7" in 12"')
    assert (inches(unit.value, 2), unit.words) == ("13.89", 'along it to 12" of run')
    assert set_in_words(task.setting) == 'blade 12" towards the foot, tongue 7", on the top edge'


def test_the_rise_of_a_pitch() -> None:
    """Trade notes 7.5: row 26 (Radford), 9/12 over 14 ft; 6/12 over 12'-6" (CALC)."""
    assert stepped("9", "14'").beside[1].value == length("10' 6")
    assert stepped("6", "12' 6").beside[1].value == length("6' 3")


def test_the_centre_line_is_told_where_a_ridge_cuts_the_rafter_short() -> None:
    """What a book calls the rafter's length goes to the centre line, before the deduction."""
    task = stepped("12", "8'", centre="8' 1")
    assert [beside.value for beside in task.beside[3:]] == [
        length("97"),
        alone("12", "8'").along(length("97")),
    ]
