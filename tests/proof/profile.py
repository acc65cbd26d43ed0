"""A level end and the timber it enters, as one drawing in the building: how far in, how far across.

For textbooks of square joints whose parts slope in the upright plane. Everything is reckoned from
where the timbers stand, the sections of their sticks and the joint's own figures.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from benchmate.model.directions import Direction
from tests.proof.kernel import Solid, block, hull
from tests.proof.wood import Log

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

Span = tuple[float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """One building axis: a reading of nothing lies at `zero`, and readings grow by `sense`."""

    axis: int
    zero: float
    sense: int

    def at(self, reading: float) -> float:
        """Where a reading lies in the building."""
        return self.zero + self.sense * reading


@dataclass(frozen=True, slots=True, kw_only=True)
class Profile:
    """`inwards` counts from a shoulder or a face, `down` along the plumb, `across` level."""

    inwards: Side
    down: Side
    across: Side

    def box(self, deep: Span, down: Span, across: Span) -> Solid:
        """A squared body."""
        spans = [(0, 0)] * 3
        for side, span in zip(
            (self.inwards, self.down, self.across), (deep, down, across), strict=True
        ):
            low, high = sorted(round(side.at(each)) for each in span)
            spans[side.axis] = (low, high)
        return block((spans[0], spans[1], spans[2]))

    def prism(self, corners: Iterable[tuple[float, float]], across: Span) -> Solid:
        """A body with an outline in the upright plane, so far in and so far down, and a width."""
        points = []
        for deep, down in corners:
            for wide in across:
                point = [0, 0, 0]
                for side, at in ((self.inwards, deep), (self.down, down), (self.across, wide)):
                    point[side.axis] = round(side.at(at))
                points.append((point[0], point[1], point[2]))
        return hull(points)

    def moved(self, body: Solid, *, deep: int = 0, down: int = 0) -> Solid:
        """A body so much further in and down."""
        by = [0, 0, 0]
        by[self.inwards.axis] = self.inwards.sense * deep
        by[self.down.axis] = self.down.sense * down
        return body.moved((by[0], by[1], by[2]))


def number_on(log: Log, axis: int) -> int:
    """Which of a timber's two depths lies on a building axis."""
    return next(number for number in (1, 2) if log.stand.ways[number][axis])


def depths(log: Log, number: int) -> tuple[float, float]:
    """How deep a stick is on one of its two depths: as the frame counts on it, and really."""
    stick = log.layout.stick
    real = stick.section()
    framed = stick.inner or real
    return tuple((each.first, each.second)[number - 1].nm for each in (framed, real))  # type: ignore[return-value]


def readings(log: Log, axis: int) -> Side:
    """A timber's own depth on a building axis."""
    number = number_on(log, axis)
    return Side(axis=axis, zero=log.stand.zero[axis], sense=round(log.stand.ways[number][axis]))


def entry(into: Log, end: Direction) -> tuple[Side, float, float]:
    """The face an end enters, how far it really stands out from there, and where the far face is.

    The side counts in from the face as the frame counts on it.
    """
    axis = [bool(step) for step in end.value].index(True)
    sense = sum(end.value)
    own = readings(into, axis)
    framed, real = depths(into, number_on(into, axis))
    if own.sense == sense:
        return Side(axis=axis, zero=own.zero, sense=sense), 0, real
    return Side(axis=axis, zero=own.at(framed), sense=sense), real - framed, framed


def level(log: Log, end: Direction) -> Side:
    """The level way across an end: the timber's own depth there."""
    axis = 1 if end.value[0] else 0
    return readings(log, axis)


def opened(across: Side, wide: float, into: Log) -> Span:
    """Across a housing, on past every face of the timber that the end comes flush to."""
    own = readings(into, across.axis)
    framed, _ = depths(into, number_on(into, across.axis))
    low, high = sorted(own.sense * (across.at(each) - own.zero) for each in (0, wide))
    spans = [-FAR if low <= 0 else low, FAR if high >= framed else high]
    found = sorted(across.sense * (own.at(each) - across.zero) for each in spans)
    return found[0], found[1]


def outside(log: Log, axis: int, beyond: Solid) -> Solid:
    """What of a body lies past the inner timber on a far face."""
    own = readings(log, axis)
    framed, _ = depths(log, number_on(log, axis))
    spans = [(-FAR, FAR)] * 3
    low, high = sorted(round(own.at(each)) for each in (framed, FAR))
    spans[axis] = (low, high)
    return beyond.within(block((spans[0], spans[1], spans[2])))
