"""The calculator without its screen."""

import pytest

from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reading import Unit
from benchmate.tui.desk import Desk
from benchmate.tui.pad import HOW, MOST_KEPT, Kept, Pad

SIZES = {"deck": Length.inches(1, 1, 4), "floor top": Length.inches(10)}


@pytest.fixture
def pad() -> Pad:
    """A calculator in feet and inches with nothing on its tape."""
    return Pad(Tape(), Unit.INCH, SIZES, [])


def kept(pad: Pad, *lines: str) -> None:
    """Put lines on the tape."""
    for line in lines:
        answer = pad.work(line).answer
        assert answer is not None
        pad.keep(line, answer)


def said(pad: Pad, line: str, field: str = "", *, same: bool = False) -> list[tuple[str, str]]:
    """What is said of a line, label and text."""
    found = pad.sayings(pad.work(line), field, same=same)
    return [(saying.label, saying.text) for saying in found]


@pytest.mark.parametrize("line", ["", "   "])
def test_an_empty_line_shows_how_to_begin(pad: Pad, line: str) -> None:
    """Nothing is wrong yet, and there is an example of everything."""
    worked = pad.work(line)
    assert (worked.answer, worked.problem) == (None, "")
    assert [text for _, text in said(pad, line)] == [text for _, text in HOW]


def test_every_example_can_be_reckoned(pad: Pad) -> None:
    """What the empty pad shows is what it takes."""
    for _, text in HOW:
        for part in text.replace(", or ", "|").split("|"):
            line = part.split(", each")[0].split(", with")[0].split(", when")[0].split(", for")[0]
            assert pad.work(line.split(" for spaces")[0]).answer is not None, line


def test_a_slip_is_told_with_its_place(pad: Pad) -> None:
    """What is wrong, what to do, and a caret under it."""
    worked = pad.work("12' 6 -2")
    assert worked.answer is None
    assert worked.excerpt == "12' 6 -2\n      ^"
    ((label, text),) = said(pad, "12' 6 -2")
    assert label == ""
    assert text.startswith("a space stands on one side of the - only; put spaces on both sides")


def test_what_a_bare_number_is_taken_for() -> None:
    """Inches, or millimetres in a metric project."""
    metric = Pad(Tape(style=Style.MM, graduation=Graduation.MM), Unit.MM, {}, [])
    assert metric.about == "without a unit: mm"
    answer = metric.work("190 + 10").answer
    assert answer is not None
    assert answer.result.length == Length.mm(200)


def test_an_answer_begins_with_what_it_is(pad: Pad) -> None:
    """Where that is not plain from the line."""
    assert said(pad, "12' / 2")[0] == ("feet", "6' 0\"")
    assert said(pad, "12' in 4 spaces")[0] == ("is", "each space")


def test_a_field_is_told_what_it_is_given(pad: Pad) -> None:
    """In the spelling of the project's files, in place of the exact line."""
    assert said(pad, "12' 6 - 2 x 7-1/2", "span")[0] == ("gives", '135", to span')
    assert said(pad, "0.1", "span")[0] == ("gives", "2.54 mm, to span")
    assert "exact" not in dict(said(pad, "0.1", "span"))


def test_a_result_that_no_field_can_hold_is_rounded_and_says_so(pad: Pad) -> None:
    """To a 64th or, in a metric project, a tenth of a millimetre; the exact one stays in sight."""
    found = said(pad, "10 / 3", "span")
    assert found[:2] == [
        ("gives", '3-21/64", to span'),
        ("round", "rounded to the nearest 64th, as it has no exact spelling in a field"),
    ]
    assert dict(found)["exact"] == "84.666667 mm, rounded to a millionth of a mm"
    metric = Pad(Tape(style=Style.MM, graduation=Graduation.MM), Unit.MM, {}, [])
    assert said(metric, "100 / 3", "span")[:2] == [
        ("gives", "33.3 mm, to span"),
        ("round", "rounded to the nearest tenth of a mm, as it has no exact spelling in a field"),
    ]


def test_a_sum_of_names_that_becomes_a_figure_is_told(pad: Pad) -> None:
    """What the field followed it will follow no more."""
    assert said(pad, "floor top - 2 x deck", "span")[1] == (
        "look",
        "a plain figure: it will not follow floor top, deck any more",
    )
    assert said(pad, "floor top", "span", same=True)[0] == (
        "gives",
        "nothing new: span is written so already",
    )


def test_the_tape_holds_the_last_results_the_newest_first(pad: Pad) -> None:
    """As typed and as the tape shows them; the same line twice running counts once."""
    kept(pad, "1 + 1", " 12' / 5 ", "12' / 5")
    assert [(row.text, row.tail) for row in pad.rows()] == [
        ("12' / 5", "2' 4-13/16\"-"),
        ("1 + 1", '2"'),
    ]
    kept(pad, *(f"{n} + 1" for n in range(1, 30)))
    assert len(pad.rows()) == MOST_KEPT
    assert pad.rows()[0].text == "29 + 1"


@pytest.mark.parametrize(
    ("line", "text"),
    [
        ("12' 6 - 2 x 7-1/2", '135"'),
        ("3 - 5", '(-2")'),
        ("10 / 3", "(10 / 3)"),
        ("pitch 8 in 12", "366.32401 mm"),
        ("190 mm + 0.5 mm", '7-1/2"'),
    ],
)
def test_a_result_is_taken_up_exactly(pad: Pad, line: str, text: str) -> None:
    """One that was rounded as its line, so that three thirds are the whole again."""
    kept(pad, line)
    assert pad.taken_up(0) == text
    again, first = (pad.work(each).answer for each in (text, line))
    assert again is not None
    assert first is not None
    assert again.result.length == first.result.length


def test_three_thirds_taken_up_are_the_whole(pad: Pad) -> None:
    """Nothing is lost on the tape."""
    kept(pad, "10 / 3")
    worked = pad.work(f"{pad.taken_up(0)} x 3").answer
    assert worked is not None
    assert worked.result.length == Length.inches(10)


def test_the_desk_keeps_one_tape(desk: Desk) -> None:
    """Whatever opens the calculator, the last results are there, and the project's names."""
    pad = desk.pad()
    kept(pad, "floor top - deck")
    assert [row.text for row in desk.pad().rows()] == ["floor top - deck"]
    assert pad.about == "without a unit: inches"


def test_two_of_one_result_are_equal(pad: Pad) -> None:
    """A kept result is its line and its answer."""
    answer = pad.work("3").answer
    assert answer is not None
    assert Kept("3", answer) == Kept("3", answer)
