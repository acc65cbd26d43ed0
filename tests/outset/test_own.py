"""A framer's own settings as suggestions to a new frame: first in line, and never forced."""

from fractions import Fraction

from benchmate.checks.design import findings_of
from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.measure.length import Length
from benchmate.model.findings import Severity
from benchmate.outset.answering import fill
from benchmate.outset.own import Own
from benchmate.outset.project_text import frame_text
from benchmate.store.reading import parse_project

PEGGED = {"pegs": "heads, ties and braces"}
MINE = Own(
    lengths={
        "trim": Length.inches(2),
        "least_wood": Length.inches(0, 3, 4),
        "bottom_clearance": Length.inches(0, 1, 4),
        "set_back": Length.inches(1, 1, 2),
        "housing": Length.inches(0, 3, 4),
        "peg_size": Length.inches(0, 7, 8),
        "peg_from_shoulder": Length.inches(1, 3, 4),
        "draw": Length.inches(0, 1, 16),
    },
    share=Fraction(1, 5),
)


def texts(own: Own, **typed: str) -> dict[str, str]:
    """What stands at every question."""
    return {row.question.id: row.text for row in fill(typed, own).rows}


def test_his_own_stand_where_he_typed_nothing() -> None:
    """And what he types goes before them."""
    found = texts(MINE, **PEGGED)
    wanted = ("thickness", "set back", "tie housing", "brace housing", "peg", "draw")
    assert [found[each] for each in wanted] == ["1-1/2", "1-1/2", "3/4", "3/4", "7/8", "1/16"]
    assert texts(MINE, **{"set back": "2"})["set back"] == "2"
    (row,) = (row for row in fill({}, MINE).rows if row.question.id == "set back")
    assert row.own
    assert not row.typed


def test_the_file_says_his_practice_for_everybody() -> None:
    """A project's figures never depend on whose machine it is opened on."""
    project = parse_project(frame_text(fill(PEGGED, MINE).answers).encode())
    assert project.shop.trim == Length.inches(2)
    assert project.shop.least_wood == Length.inches(0, 3, 4)
    assert project.shop.guide_block is None
    plain = frame_text(fill({}).answers)
    assert "[shop]" not in plain


def test_a_frame_of_his_own_sizes_has_no_stops() -> None:
    """What is suggested around them leaves the wood that he wants left."""
    project = parse_project(frame_text(fill(PEGGED, MINE).answers).encode())
    frame = Frame(project, {})
    found = [
        finding
        for timber in project.timbers
        for finding in findings_of(lay_out(frame, timber.id), frame.tape)
    ]
    assert [each.message for each in found if each.severity is Severity.STOP] == []


def test_what_a_frame_has_no_room_for_is_not_suggested() -> None:
    """The trade's size stands then, and no fault is told of a field nobody typed in."""
    huge = Own(lengths={"set_back": Length.inches(20), "peg_size": Length.inches(9)})
    assert texts(huge, **PEGGED) == texts(Own(), **PEGGED)
    assert not fill(PEGGED, huge).faults


def test_his_units_and_marks_are_suggested_too() -> None:
    """A mark of other units is not."""
    metric = Own(units="mm", graduation="0.5 mm")
    assert texts(metric)["units"] == "mm"
    assert texts(metric)["graduation"] == "0.5 mm"
    assert texts(metric, units="inches")["graduation"] == "1/16"
