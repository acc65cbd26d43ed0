"""The lines and tasks of a head at a ridge."""

from benchmate.joinery.rafter.ridge.head import head_cuts, head_lines, head_tasks
from benchmate.joinery.rafter.ridge.shape import HeadShape
from benchmate.measure.printing import Style, Tape
from benchmate.model.feature import Task
from tests.builders import length, line, real, set_in_words
from tests.joinery.rafter.ridge.test_shape import SQUARE, shape
from tests.joinery.rafter.roofs import Roof

TAPE = Tape(style=Style.INCHES)


def tasks(found: HeadShape) -> dict[str, Task]:
    """The tasks by id, in order."""
    return {task.id: task for task in head_tasks(found, TAPE)}


def test_a_plain_head_is_one_plumb_line() -> None:
    """Struck along the tongue, with the deduction level and along the edge, 7-1/2" long."""
    (found,) = head_lines(shape(), TAPE)
    assert found.id == "shoulder"
    assert found.slant is not None
    assert "strike along the tongue" in set_in_words(found.slant.setting)
    assert [each.value for each in found.beside] == [
        length("1"),
        length("1-1/4"),
        length("7-1/2"),
    ]
    assert "square to the plumb line" in found.beside[0].words
    assert "Ridge's West face" in found.caution, "a far face that nobody has measured"


def test_a_rafter_that_stops_short_of_its_ridge_has_no_deduction() -> None:
    """Its incline ends before the face, so there is nothing to take off."""
    roof = Roof(rise="9", run="8'", ridge=("10", "2"))
    found = shape(Roof(rise="9", own={"ridge": {"at": {"east": "8' 3", "up": "13'"}}}))
    (plumb,) = head_lines(found, TAPE)
    assert len(plumb.beside) == 1
    assert len(head_lines(shape(roof), TAPE)[0].beside) == 3


def test_a_head_let_in_has_a_face_line_and_a_seat() -> None:
    """The seat is measured down the plumb line, then level for 3/4"; 9/16" of heel stays."""
    found = head_lines(shape(let_in="3/4"), TAPE)
    assert [each.id for each in found] == ["shoulder", "face", "seat"]
    seat = line(found, "seat")
    assert seat.readings[0].value == length("7-1/2")
    assert seat.readings[0].words == "from the top edge, down the plumb line, then level"
    assert [each.value for each in seat.beside] == [length("3/4"), length("9/16")]
    assert "Do not saw past" in line(found, "face").caution


def test_what_comes_off() -> None:
    """All past the plumb cut; under the seat, past the face; far faces by square rule."""
    assert [len(cut.planes) for cut in head_cuts(shape())] == [1]
    assert [len(cut.planes) for cut in head_cuts(shape(let_in="3/4"))] == [1, 2]
    sticks = {
        "ridge": real({"all": {"first": "10", "second": "2-1/2"}}),
        "rafter": real({"all": {"first": "6-1/4", "second": "4-1/8"}}),
    }
    ruled = shape(Roof(rise="9", own=SQUARE), sticks=sticks)
    assert [len(cut.planes) for cut in head_cuts(ruled)] == [1, 2, 2]
    names = [each.id for each in head_lines(ruled, TAPE)]
    assert names == ["shoulder", "reduction-stop", "reduced-first", "reduced-second"]
    assert list(tasks(ruled))[-3:] == ["reduce-first", "reduce-second", "pare"]


def test_the_order_of_work() -> None:
    """Measure, knife, saw plumb, saw the seat, pare: one figure each."""
    found = tasks(shape(let_in="3/4"))
    assert list(found) == ["section", "knife", "saw-end", "saw-seat", "pare"]
    figures = [found[each].readings[0].value for each in ("saw-end", "saw-seat", "pare")]
    assert figures == [length("7-1/2"), length("3/4"), length("4")]
    assert "saw-seat" not in tasks(shape())


def test_a_cut_as_long_as_the_stick_is_deep_is_measured_first() -> None:
    """Until the rafter was measured at its head."""
    assert "measure first" in tasks(shape())["saw-end"].caution
    sticks = {"rafter": real({"head": {"first": "6"}})}
    assert "measure first" not in tasks(shape(sticks=sticks))["saw-end"].caution
