"""A stopped chamfer by its definition: a wedge off an arris, as far in on one face as on the other.

A stop lies so far from where the timber bears at one of its ends, or at a level. Where the far face
of an arris lies is as it was measured for the chamfer, or half-way along.
"""

from collections.abc import Mapping
from itertools import product

from benchmate.frame.frame import Frame
from benchmate.joinery.chamfer.record import Chamfer, Stop
from benchmate.model.progress import Measured
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, hull
from tests.proof.textbook.entry import stock_of
from tests.proof.wood import Log

SENSES = {"first": 1, "second": 1, "far": -1}
"""Which way it is into the wood from a face, as an arris is named."""


def textbook(chamfer: Chamfer, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a chamfer takes off each of its timbers."""
    return {f"{timber}/{chamfer.id}": _off(chamfer, frame, logs[timber]) for timber in chamfer.on}


def _off(chamfer: Chamfer, frame: Frame, log: Log) -> Solid:
    stops = [stop_along(stop, frame, log) for stop in (chamfer.near_stop, chamfer.far_stop)]
    wedges = [_wedge(word, chamfer, log, stops) for word in chamfer.arrises]
    return log.stand.put(wedges[0].joined(wedges[1:]))


def stop_along(stop: Stop, frame: Frame, log: Log) -> float:
    """How far along the timber a stop lies, from its reference shoulder."""
    if stop.level is not None:
        up = log.stand.ways[0][2]
        return (frame.value(stop.level).nm - log.stand.zero[2]) / up
    if stop.distance is None:
        raise ValueError("a stop is at a level or at a distance")
    away = frame.value(stop.distance).nm
    if stop.shoulder is log.timber.reference_end:
        return away
    return log.layout.stick.body.nm - away


def _wedge(word: str, chamfer: Chamfer, log: Log, stops: list[float]) -> Solid:
    """The wedge off one arris, in the timber's own readings, with room to spare outside."""
    one, other = (SENSES[side] for side in word.split("-"))
    first, second = _section(chamfer, log)
    arris = (0 if one > 0 else first, 0 if other > 0 else second)
    leg, room = chamfer.leg.nm, chamfer.leg.nm // 2
    ends = ((-room, -room), (leg + room, -room), (-room, leg + room))
    return hull(
        (round(x), arris[0] + one * in_first, arris[1] + other * in_second)
        for x, (in_first, in_second) in product(stops, ends)
    )


def _section(chamfer: Chamfer, log: Log) -> tuple[int, int]:
    """The section where the chamfer is: as measured for it, half-way along, all along, or drawn."""
    first, second = (_depth(chamfer, log, number) for number in (1, 2))
    return first, second


def _depth(chamfer: Chamfer, log: Log, number: int) -> int:
    stock = stock_of(log.layout.stick)
    for place in (chamfer.id, "middle"):
        size = stock.measured.get(place, Measured())
        real = size.first if number == 1 else size.second
        if real is not None:
            return real.nm
    return stock.depth(number, chamfer.id)
