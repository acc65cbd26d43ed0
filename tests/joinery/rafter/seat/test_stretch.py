"""What of a rafter is stepped off from a seat."""

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.seat.shape import seat_shape
from benchmate.joinery.rafter.seat.stretch import step_off_task
from benchmate.measure.length import NM_PER_INCH
from benchmate.model.feature import Task
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, built, ridge, seat, shed, tail


def stretch(frame: Frame, joint: RafterSeat) -> Task:
    """The stretch from one seat."""
    return step_off_task(seat_shape(joint, frame), frame)


def test_from_the_heel_to_the_peak() -> None:
    """Trade notes 7.5, row 15 (NAV-64): 7/12 over a 16-ft span is 111.140"."""
    task = stretch(built(Roof(rise="7"), seat(), tail()), seat())
    assert abs(task.readings[0].value.nm / NM_PER_INCH - 111.140) < 0.0005
    assert task.beside[0].words.endswith('8 steps of 12"')
    assert len(task.beside) == 3, "no ridge, so no centre line apart"


def test_a_ridge_cuts_it_short() -> None:
    """A 2" ridge takes 1" of run; the book's figure to the centre line is told beside."""
    task = stretch(built(Roof(rise="7"), seat(), ridge()), seat())
    assert task.beside[0].value == length("95")
    assert task.beside[3].value == length("96")
    assert abs(task.beside[4].value.nm / NM_PER_INCH - 111.140) < 0.0005


def test_from_seat_to_seat_of_a_shed_roof() -> None:
    """The lower is stepped to the upper, and that one to the head."""
    low, high = seat(), seat(id="high", into="upper")
    frame = shed(Roof(run="12'"), low, high)
    assert stretch(frame, low).title == "Step off from the heel line to the heel line on Upper"
    assert stretch(frame, low).beside[0].value == length("10' 6")
    assert stretch(frame, high).title == "Step off from the heel line to the head"
    assert stretch(frame, high).beside[0].value == length("18")


def test_without_a_heel_from_the_tail_line() -> None:
    """A rafter that ends at its plate is stepped from its own end."""
    task = stretch(built(Roof(out="0"), seat(), tail()), seat())
    assert task.readings[0].hook == "tail line"
