"""From a seat up to what comes next on the rafter: the stretch that is stepped off."""

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.seat.notch import WORDS
from benchmate.joinery.rafter.seat.shape import HEEL, SeatShape
from benchmate.joinery.rafter.seats import heels
from benchmate.joinery.rafter.strike import Mark, step_off
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.feature import Task


def step_off_task(shape: SeatShape, frame: Frame) -> Task:
    """Stepping off from a seat's heel to the next seat, or to the head.

    Where the head stops short of the peak, at a ridge, the run to the peak is told as well.
    """
    rafter, tape = shape.rafter, frame.tape
    start = Mark(max(shape.plate.near, rafter.foot), WORDS[HEEL] if shape.heeled else WORDS[""])
    above = [mark for mark in heels(rafter, frame) if mark.ahead > start.ahead]
    if above:
        return step_off(rafter, tape, start, above[0])
    stick = rafter.stick
    along = stick.shoulder(stick.pose.end(Direction.UP))
    ends = rafter.ahead_of(rafter.place.point(along, ZERO, ZERO))
    borne = frame.bearing(stick.id, Direction.UP) is not None and ends < rafter.head
    centre = rafter.head if borne else None
    return step_off(rafter, tape, start, Mark(ends, "the head"), centre)
