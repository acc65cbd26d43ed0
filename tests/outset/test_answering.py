"""Reading what a framer typed."""

import pytest

from benchmate.measure.length import Length
from benchmate.outset.answering import fill
from tests.outset.frames import METRIC, answers, suggestion, told


def test_with_nothing_typed_everything_is_suggested() -> None:
    """And all of it can be, in any units and by either rule."""
    for units in ("feet and inches", "inches", "mm"):
        for rule in ("mill", "square"):
            filled = fill({"units": units, "rule": rule})
            assert filled.faults == ()
            assert {row.question.id for row in filled.rows if row.typed} <= {"units", "rule"}


def test_a_suggestion_follows_the_answers_before_it() -> None:
    """Until it is typed over."""
    assert suggestion("thickness") == "2"
    assert suggestion("thickness", post="6 x 6", tie="8 x 6") == "1-1/2"
    assert suggestion("thickness", post="6 x 6", tie="8 x 6", thickness="1-3/4") == "1-3/4"


@pytest.mark.parametrize(
    ("question", "text", "told_"),
    [
        ("length", "20 elephants", "is not a unit"),
        ("length", "0", "more than nothing"),
        ("bays", "two", "no whole number"),
        ("bays", "0", "0 bays cannot be"),
        ("pitch", "steep", "no pitch"),
        ("pitch", "0", "makes no roof"),
        ("post", "8", "a section has two sides"),
        ("name", " ", "is empty"),
    ],
)
def test_what_cannot_be_read_says_so_at_its_question(question: str, text: str, told_: str) -> None:
    """What is wrong and what to do; the rest is suggested as if nothing had been typed."""
    assert told_ in told(question, {question: text})
    filled = fill({question: text})
    assert [row.question.id for row in filled.faults] == [question]
    assert filled.faults[0].text == text


@pytest.mark.parametrize("text", ["9", "9/12", "9 in 12", "9.0", " 9 "])
def test_a_pitch_is_written_in_several_ways(text: str) -> None:
    """Rise in twelve of run."""
    assert answers(pitch=text).slope * 12 == 9
    assert answers(pitch="8-1/2").slope * 24 == 17


def test_a_number_without_a_unit_takes_that_of_the_tape() -> None:
    """Inches, or millimetres."""
    assert answers(length="240").length("length") == Length.feet(20)
    assert answers(METRIC, length="6500").length("length") == Length.mm(6500)
    assert answers(METRIC, length="20'").length("length") == Length.feet(20)


def test_what_may_be_empty_counts_for_nothing() -> None:
    """Any stick can be had where no longest is given, and no species is told."""
    empty = answers(longest="", species="")
    assert not empty.length("longest")
    assert empty.word("species") == ""


def test_choices_of_another_tape_fall_back() -> None:
    """A sixteenth means nothing in millimetres."""
    rows = {row.question.id: row for row in fill(METRIC | {"graduation": "1/32"}).rows}
    assert rows["graduation"].text == "1 mm"
    assert rows["graduation"].choices == ("1 mm", "0.5 mm")


def test_what_only_the_whole_can_tell_comes_last() -> None:
    """A plate that no scarf brings within the longest stick is told at that stick."""
    words = told("longest", length="40'", bays="1", longest="20'", braces="none", roof="none")
    assert "cannot be scarfed" in words
