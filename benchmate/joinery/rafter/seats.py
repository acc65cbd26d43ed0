"""The seats along a rafter: where the heel of each lies."""

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.lying import lying
from benchmate.joinery.rafter.raking import Rafter
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.strike import Mark


def heels(rafter: Rafter, frame: Frame) -> list[Mark]:
    """The heel of every seat on a rafter, from the foot up."""
    seats = (
        work
        for work in frame.works_on(rafter.stick.id)
        if isinstance(work, RafterSeat) and work.timber == rafter.stick.id
    )
    found = (
        Mark(
            lying(frame, seat.into, seat.seat, rafter).near,
            f"the heel line on {frame.wood(seat.into).name}",
        )
        for seat in seats
    )
    return sorted(found)
