"""What the calculator answers, on the framer's tape and in plain words."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import LengthError, Unit, read_length
from benchmate.measure.reckon.rounding import Reckoned
from benchmate.workbench.bench import Bench
from benchmate.workbench.reckoning import (
    ROUNDED,
    Answer,
    exactly,
    for_a_field,
    named_sizes,
    plain_text,
    reckon,
)

FEET = Tape()
MM = Tape(style=Style.MM, graduation=Graduation.HALF_MM)


def answer(text: str, tape: Tape = FEET) -> Answer:
    """The answer to a line."""
    bare = Unit.MM if tape.graduation.metric else Unit.INCH
    return reckon(text, tape=tape, bare=bare, sizes={"deck": Length.inches(1, 1, 4)})


def told(text: str, tape: Tape = FEET) -> dict[str, str]:
    """What is told beneath the figure, by its label."""
    return {line.label: line.text for line in answer(text, tape).lines}


def test_a_sum_in_every_unit() -> None:
    """The figure on the tape and, as nothing is hidden, no exact spelling beneath."""
    assert plain_text(answer("12' 6 - 2 x 7-1/2"), FEET) == (
        '11\' 3"\nfeet   11\' 3"\ninches 135"\nmm     3429 mm'
    )


def test_a_division_that_does_not_come_out_says_so_where_its_digits_show() -> None:
    """A third of 10 is marked on every tape, and its last shown digit is told to be rounded."""
    assert told("10 / 3") == {
        "feet": '3-5/16"+',
        "inches": '3-5/16"+',
        "mm": "85 mm-",
        "exact": f"84.666667 mm, {ROUNDED}",
    }
    assert told("10 / 4")["mm"] == "64 mm-"
    assert "exact" not in told("10 / 4")
    assert told("342 / 10")["exact"] == "868.68 mm"


def test_a_metric_tape_has_its_own_graduation() -> None:
    """Half a millimetre where the project says so, a sixteenth beside it."""
    assert told("3600 / 7", MM) == {
        "feet": "1' 8-1/4\"",
        "inches": '20-1/4"',
        "mm": "514.5 mm-",
        "exact": f"514.285714 mm, {ROUNDED}",
    }


def test_equal_spaces_run_from_one_end() -> None:
    """Each space in big, and every running figure with its own mark."""
    found = answer("14' 3 in 5 spaces")
    assert found.what == "each space"
    lines = [(line.label, line.text) for line in found.lines]
    assert lines[0] == ("also", '2\' 10-3/16"+ or 34-3/16"+ or 869 mm-')
    assert lines[2:] == [
        ("spaces", "5 equal spaces; run all the marks from one end:"),
        ("1", "2' 10-3/16\"+"),
        ("2", "5' 8-3/8\"+"),
        ("3", "8' 6-5/8\"-"),
        ("4", "11' 4-13/16\"-"),
        ("5", "14' 3\""),
    ]
    assert told("10' at most 12'")["spaces"].startswith("one space")


def test_timbers_between_are_marked_on_both_sides() -> None:
    """Where each begins and ends; behind the last space there is none."""
    found = told("10' in 4 spaces with 5-1/2 between")
    assert found["1"] == "2' 1-7/8\" to 2' 7-3/8\", the timber after space 1"
    assert found["4"] == "10' 0\""


def test_a_frame_is_squared_by_its_diagonals() -> None:
    """3, 4, 5: the diagonal, what to do when they differ, and what to write to see how far."""
    found = answer("diagonal 9' by 12'")
    assert (found.what, found.result) == ("both diagonals", Reckoned(Length.feet(15)))
    assert told("diagonal 9' by 12'")["else"] == (
        "push in a corner of the longer one until both read this"
    )
    assert 'diagonal 108" by 144", 26' in told("diagonal 9' by 12'")["push"]


@pytest.mark.parametrize(
    ("line", "which"),
    [
        ("diagonal 14' 3 by 22', 26' 2-1/2 and 26' 2-5/8", "second diagonal, 26' 2-5/8\""),
        ("diagonal 14' 3 by 22', 26' 2-5/8 and 26' 2-1/2", "first diagonal, 26' 2-5/8\""),
    ],
)
def test_the_longer_diagonal_is_pushed_in(line: str, which: str) -> None:
    """How far, along which side, at which corner; sides that fit are told to be checked alike."""
    found = answer(line)
    assert found.what == "to push"
    assert FEET.text(found.result.length) == '1/16"+'
    words = told(line)
    assert words["push"].startswith(f"the {which}, is the longer. Hold one 22' 0\" side; push the ")
    assert words["then"] == "both diagonals read 26' 2-9/16\"; measure them again"
    assert words["sides"].startswith("diagonals alike prove it square only")


def test_sides_that_cannot_have_these_diagonals_are_told() -> None:
    """The push alone would leave a frame that is still no rectangle of these sides."""
    longer = told("diagonal 14' 3 by 22', 26' 2-1/2 and 26' 3")["sides"]
    assert longer.startswith(
        "CHECK THE SIDES: these diagonals come out 3/16\"+ longer than the 26'"
    )
    shorter = told("diagonal 9' by 12', 14' 11 and 14' 11")
    assert shorter["sides"].startswith('CHECK THE SIDES: these diagonals come out 1" shorter')
    assert shorter["square"] == "the diagonals are alike: it is square"


def test_a_slope_gives_pitch_angles_and_the_square() -> None:
    """8 in 12: 33.7 degrees, 12 on the blade and 8 on the tongue (NAV-65), 12 and a part steps."""
    found = answer("run 12' 6 pitch 8 in 12")
    assert found.what == "along the slope"
    words = told("run 12' 6 pitch 8 in 12")
    assert words["run"] == "12' 6\", rise 8' 4\""
    assert words["pitch"] == '8" in 12"; 33.7° from level, 56.3° from plumb'
    figures = 'blade 12", tongue 8"'
    assert words["plumb"] == f"strike along the tongue: {figures}; saw 33.7° off square"
    assert words["level"] == f"strike along the blade: {figures}; saw 56.3° off square"
    assert words["steps"] == 'step it off 12 times, then 6" of run at the same setting'
    assert "look" not in words


def test_a_metric_slope_is_so_much_in_300() -> None:
    """And its square is set by 300."""
    words = told("run 3600 pitch 200 in 300", MM)
    assert words["pitch"].startswith("200 mm in 300 mm; 33.7°")
    assert words["plumb"].startswith("strike along the tongue: blade 300 mm, tongue 200 mm")
    assert words["steps"] == "step it off 12 times"


@pytest.mark.parametrize(
    ("line", "steps"),
    [
        ("pitch 8 in 12", "step it off 1 time"),
        ("run 9 rise 5", '9" of run at the same setting'),
        ("run 16 rise 24", "step it off 2 times"),
    ],
)
def test_steps_of_the_square(line: str, steps: str) -> None:
    """Whole settings and a part; a steep slope is stepped by what the blade then carries."""
    assert told(line)["steps"] == steps


def test_a_rise_meant_in_twelve_is_noticed() -> None:
    """Eight inches over twelve feet is rarely meant: it says how a pitch is written."""
    assert told("run 12' rise 8")["look"] == (
        'the rise is 8" in all; a rise in so much of run is written pitch 8 in 12'
    )
    assert "look" not in told("run 12' rise 1'")


def test_the_names_a_line_goes_by_are_told_once() -> None:
    """In a sum, in spaces, among the sides of a racked frame."""
    assert answer("deck + deck").names == ("deck",)
    assert answer("10' at most 10 x deck").names == ("deck",)
    assert answer("diagonal 10 x deck by 10 x deck, 17 and 17").names == ("deck",)


def test_every_name_of_a_project_has_its_size(bench: Bench) -> None:
    """Levels, lengths and the sides of sections, as a sum in the file would take them."""
    sizes = named_sizes(bench.frame)
    assert sizes["deck"] == Length.inches(1, 1, 4)
    assert sizes["floor top"] == Length.inches(4, 3, 4)
    assert sizes["joist depth"] == Length.inches(5, 1, 2)


@given(st.integers(-(10**12), 10**12).map(Length))
def test_the_exact_spelling_reads_back(length: Length) -> None:
    """It is the very length, whatever the tape shows of it."""
    assert read_length(exactly(Reckoned(length)), exact=True, negative=True, most=None) == length


@given(st.integers(-(10**12), 10**12).map(Length), st.sampled_from(Unit))
def test_a_field_is_given_what_a_file_holds(length: Length, bare: Unit) -> None:
    """It reads back as files are read, and lies nearer than half a 64th, or a tenth of a mm."""
    given = for_a_field(length, bare)
    assert read_length(given.exact_text(), negative=True, most=None) == given
    step = 100_000 if bare is Unit.MM else 396_875
    assert 2 * abs(given.nm - length.nm) <= step
    assert for_a_field(given, bare) == given


@pytest.mark.parametrize("length", [Length.inches(0, 1, 64), Length.hundredths_mm(1)])
def test_what_a_file_holds_is_given_as_it_is(length: Length) -> None:
    """A 64th in a metric project, and a hundredth of a millimetre in one of inches."""
    assert for_a_field(length, Unit.INCH) == for_a_field(length, Unit.MM) == length
    assert for_a_field(Length(8_466_667), Unit.INCH) == Length.inches(0, 21, 64)
    assert for_a_field(Length(8_466_667), Unit.MM) == Length.hundredths_mm(850)


def test_a_line_that_cannot_be_reckoned_is_refused() -> None:
    """With its column, as the reader says it."""
    with pytest.raises(LengthError) as caught:
        answer("12' 6 -")
    assert caught.value.column == 7
