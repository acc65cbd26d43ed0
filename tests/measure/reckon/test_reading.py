"""What a line asks for, in the words of the trade, and what is refused at its column."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.measure.length import NM_PER_INCH, NM_PER_MM, Length
from benchmate.measure.reading import LengthError, Unit
from benchmate.measure.reckon.reading import Asked, read_line
from benchmate.measure.reckon.rectangle import Racked, Rectangle
from benchmate.measure.reckon.slope import Slope
from benchmate.measure.reckon.spaces import Spaces
from benchmate.measure.reckon.total import Total

SIZES = {
    "bay": Length.feet(14, 3),
    "run in": Length.inches(5),
    "tie by wall": Length.inches(9),
    "rise": Length.inches(7),
}


def asked(text: str, bare: Unit = Unit.INCH) -> Asked:
    """What a line asks for."""
    return read_line(text, bare=bare, sizes=SIZES)


def inches(size: Fraction | int) -> Fraction:
    """A size in nanometres."""
    return Fraction(size) * NM_PER_INCH


BAY = inches(171)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("14' 3 in 5 spaces", Spaces(total=BAY, count=5)),
        ("14' 3 into 5 equal spaces", Spaces(total=BAY, count=5)),
        ("171 in in 5 spaces", Spaces(total=BAY, count=5)),
        ("14' 3 in 1 space", Spaces(total=BAY, count=1)),
        ("14' 3 at most 16", Spaces(total=BAY, count=11)),
        ("14' 3 in spaces at most 16", Spaces(total=BAY, count=11)),
        ("14' 3 in equal spaces of at most 16 ", Spaces(total=BAY, count=11)),
        ("14' 3 - 9 in 2 spaces", Spaces(total=inches(162), count=2)),
        (
            "14' 3 in 5 spaces with 5-1/2 between",
            Spaces(total=BAY, count=5, between=inches(Fraction(11, 2))),
        ),
        (
            "14' 3 at most 30 with 5-1/2 between",
            Spaces(total=BAY, count=5, between=inches(Fraction(11, 2))),
        ),
        (
            "bay - rise in 4 spaces with run in between",
            Spaces(total=inches(164), count=4, between=inches(5), names=("bay", "rise", "run in")),
        ),
        ("14' 3 at most rise", Spaces(total=BAY, count=25, names=("rise",))),
        ("diagonal 14' 3 by 22'", Rectangle(one=BAY, other=inches(264))),
        ("Diagonals bay by 22'", Rectangle(one=BAY, other=inches(264), names=("bay",))),
        (
            "diagonal tie by wall by 2 x 6",
            Rectangle(one=inches(9), other=inches(12), names=("tie by wall",)),
        ),
        (
            "diagonal 3' by 4', 5' and 5' 1",
            Racked(
                sides=Rectangle(one=inches(36), other=inches(48)),
                first=inches(60),
                second=inches(61),
            ),
        ),
        (
            "diagonal 3' by 4' measured 5' and 5' 1",
            Racked(
                sides=Rectangle(one=inches(36), other=inches(48)),
                first=inches(60),
                second=inches(61),
            ),
        ),
        ("run 12' rise 8'", Slope(run=inches(144), rise=inches(96))),
        ("rise 8', run 12'", Slope(run=inches(144), rise=inches(96))),
        ("run 12' rise 8", Slope(run=inches(144), rise=inches(8))),
        ("run 7' rise 4' 8 in", Slope(run=inches(84), rise=inches(56))),
        ("run 12' rise 8 in 12", Slope(run=inches(144), rise=inches(96))),
        ("run 12' pitch 8 in 12", Slope(run=inches(144), rise=inches(96))),
        ("pitch 8 in 12 run 12'", Slope(run=inches(144), rise=inches(96))),
        ("run 10 pitch 1 in 3", Slope(run=inches(10), rise=inches(Fraction(10, 3)))),
        ("pitch 8 in 12", Slope(run=inches(12), rise=inches(8))),
        ("run 6' rise 3", Slope(run=inches(72), rise=inches(3))),
        ("run run in rise 2 x 3", Slope(run=inches(5), rise=inches(6), names=("run in",))),
        ("12' 6 - 2 x 7-1/2", Total(inches(135))),
        ("run in / 2", Total(inches(Fraction(5, 2)), ("run in",))),
    ],
)
def test_what_a_line_asks_for(text: str, found: Asked) -> None:
    """Arithmetic, equal spaces, a diagonal, a run and a rise."""
    assert asked(text) == found


def test_a_name_that_is_a_word_of_the_trade_is_the_name() -> None:
    """Where a project calls a length `rise`, it is the name unless figures stand behind it."""
    assert asked("rise + 1") == Total(inches(8), ("rise",))
    assert asked("rise x 2") == Total(inches(14), ("rise",))
    assert asked("run 12' rise rise") == Slope(run=inches(144), rise=inches(7), names=("rise",))
    assert asked("2 x rise in 2 spaces") == Spaces(total=inches(14), count=2, names=("rise",))


def test_a_pitch_gives_the_run_of_a_rise() -> None:
    """Walls 24 inches apart in height, 6 in 12: 48 of run (JLC-Holladay; trade.md 7.5 row 27)."""
    found = read_line("rise 24 pitch 6 in 12", bare=Unit.INCH, sizes={})
    assert found == Slope(run=inches(48), rise=inches(24))


def test_bare_numbers_are_millimetres_in_a_metric_project() -> None:
    """Sides, runs and pitches too."""
    found = asked("run 3600 pitch 200 in 300", Unit.MM)
    assert found == Slope(run=Fraction(3600 * NM_PER_MM), rise=Fraction(2400 * NM_PER_MM))


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("", 0, "a length is missing"),
        ("14' 3 in 5", 6, "in how many what"),
        ("14' 3 in 0 spaces", 9, "makes 0 spaces"),
        ("14' 3 in 201 spaces", 9, "makes 201 spaces"),
        ("20' at most 1", 12, "makes 240 spaces"),
        ("14' 3 at most 0", 14, "this must be above zero"),
        ("14' 3 at most ", 6, "`at` is not a unit"),
        ("3 - 5 in 2 spaces", 0, "this must be above zero"),
        ("12 in 4 spaces with 4 between", 20, "what stands between leaves nothing for the spaces"),
        ("14' 3x in 5 spaces", 6, "a length is missing"),
        ("diagonal", 8, "a rectangle has two sides"),
        ("diagonal 14' 3", 14, "a rectangle has two sides"),
        ("diagonal 14' 3 x 22'", 20, "a rectangle has two sides"),
        ("diagonal 14' 3 by 0", 18, "this must be above zero"),
        ("diagonal 14' 3 by 22', 26'", 21, "two diagonals are measured, or none"),
        ("diagonal 3' by 4', 5' and 7'", 26, "with these sides no diagonal measures that"),
        ("diagonal 3' by 4', 1' and 5'", 19, "with these sides no diagonal measures that"),
        ("diagonal 3' by 4', 5' and 7-11", 28, "a fraction belongs here"),
        ("run 12'", 7, "the rise is missing"),
        ("rise 8'  ", 7, "the run is missing"),
        ("run", 3, "a length is missing"),
        ("run 12' rise", 12, "a length is missing"),
        ("run 12' rise 8 rise 9", 15, "the rise is said twice"),
        ("pitch 8 in 12 pitch 9 in 12", 14, "the rise is said twice"),
        ("run 12' rise 8 pitch 3 in 4", 27, "run and rise leave nothing for the pitch to say"),
        ("pitch 8", 7, "a pitch is so much in so much"),
        ("run 12' pitch", 13, "a pitch is so much in so much"),
        ("run 12' pitch 8 in", 18, "a pitch is so much in so much"),
        ("run 12' rise 0", 13, "this must be above zero"),
        ("run 12' rise 3/", 14, "this is not a fraction"),
        ("diag 3", 0, "`diag` is no name or word known here"),
        ("1" * 241, 240, "longer than 240 characters"),
    ],
)
def test_what_is_refused(text: str, column: int, problem: str) -> None:
    """Each refusal names its column in the whole line."""
    with pytest.raises(LengthError) as caught:
        read_line(text, bare=Unit.INCH, sizes={})
    assert (caught.value.column, caught.value.problem) == (column, problem)
    assert caught.value.text == text


PARTS = st.sampled_from(
    (
        *("14' 3", "7-1/2", "190 mm", "bay", "run in", "2", "in", "5 spaces", "at most", "with"),
        *("between", "diagonal", "by", ",", "and", "run", "rise", "pitch", "-", "x", "/", "(", ")"),
    )
)


@settings(max_examples=500)
@given(st.lists(PARTS, max_size=9).map(" ".join))
def test_any_words_are_reckoned_or_refused_in_their_place(text: str) -> None:
    """Never another error, and always a column in the text."""
    try:
        asked(text)
    except LengthError as error:
        assert 0 <= error.column <= len(text)  # noqa: PT017 - either way will do
