"""An end of one timber in the side of another, wherever the two stand in the building.

How it works
1. An end goes in one way, through the other timber's reference face, which its arris lies in, or
   through the far one: as deep as that timber measures there by mill rule, as its inner timber is
   by square rule.
2. Three measures tell every place of a joint: how far in past that face, and how far in from each
   of the stick's own two reference faces.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.model.directions import Direction
from benchmate.model.stick import Wood
from tests.proof.kernel import Solid, block
from tests.proof.stock import Depths, Stock
from tests.proof.wood import Direction as Way
from tests.proof.wood import Log, Stand

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

Span = tuple[float, float]
ALL: Span = (-FAR, FAR)

Across = Mapping[int, Span]
"""From where to where, in from the first (1) and from the second (2) reference face."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """One timber where a joint touches it; depths are in nanometres, in from face 1 or 2."""

    log: Log
    feature: str

    @property
    def stock(self) -> Stock:
        """The stick as it was drawn and as it came out."""
        return stock_of(self.log.layout.stick)

    def real(self, number: int) -> int:
        """How deep it measures here."""
        return self.stock.depth(number, self.feature)

    def framed(self, number: int) -> int:
        """How deep the frame counts on it to be here."""
        return self.stock.framed(number, self.feature)


def stock_of(wood: Wood) -> Stock:
    """What a framer knows of a stick: its sections, and what was typed of it."""
    return Stock(
        drawn=_depths(wood.nominal.first.nm, wood.nominal.second.nm),
        inner=_depths(wood.inner.first.nm, wood.inner.second.nm) if wood.inner else None,
        measured=wood.measured,
        as_cut=wood.as_cut,
    )


def _depths(first: int, second: int) -> Depths:
    return first, second


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """Where an end goes in.

    `stand` has its zero where the stick's arris passes the face, and its ways are inwards and in
    from the stick's two reference faces. `grain` is the number of the stick's face in from which
    one goes along the other timber. `over` is how far out from the face the other's wood really
    reaches, and `beyond` how far in its wood ends. Across it, in from the stick's face `aside`, its
    reference side lies at `near`, and the other at `far` as the frame counts on it, at `far_real`
    as it is.
    """

    stick: Side
    other: Side
    stand: Stand
    grain: int
    over: float
    beyond: float
    near: float
    far: float
    far_real: float

    @property
    def aside(self) -> int:
        """The number of the stick's face in from which one goes across the other timber."""
        return 3 - self.grain

    def box(self, deep: Span, across: Across | None = None) -> Solid:
        """A box in the building: so far in, and across so far in from each reference face."""
        spans = (across or {}).get(1, ALL), (across or {}).get(2, ALL)
        inwards, first, second = (_whole(span) for span in (deep, *spans))
        return self.stand.put(block((inwards, first, second)))


def _whole(span: Span) -> tuple[int, int]:
    low, high = span
    return round(low), round(high)


def entry(stick: Side, end: Direction, other: Side) -> Entry:
    """An end of a stick in another timber's side. Raises StopIteration if they run the same way."""
    here, there = stick.log.stand, other.log.stand
    outwards = -1 if end is stick.log.timber.reference_end else 1
    east, north, up = (outwards * part for part in here.ways[0])
    inwards = (east, north, up)
    into = next(n for n in (1, 2) if runs_with(there.ways[n], inwards))
    by_reference = dot(there.ways[into], inwards) > 0
    arris = dot(there.zero, inwards) - dot(here.zero, inwards)
    ahead = arris if by_reference else arris - other.framed(into)
    stand = Stand(zero=_gone(here.zero, inwards, ahead), ways=(inwards, *here.ways[1:]))
    grain = next(n for n in (1, 2) if runs_with(here.ways[n], there.ways[0]))
    aside = here.ways[3 - grain]
    near = dot(there.zero, aside) - dot(stand.zero, aside)
    sense = round(dot(there.ways[3 - into], aside))
    return Entry(
        stick=stick,
        other=other,
        stand=stand,
        grain=grain,
        over=0 if by_reference else other.real(into) - other.framed(into),
        beyond=other.real(into) if by_reference else other.framed(into),
        near=near,
        far=near + sense * other.framed(3 - into),
        far_real=near + sense * other.real(3 - into),
    )


def dot(one: Way, other: Way) -> float:
    """How far one direction goes in another, times how long they are."""
    return sum(a * b for a, b in zip(one, other, strict=True))


def runs_with(one: Way, other: Way) -> bool:
    """Whether two directions of a frame, each one long, run the same way or against each other."""
    return abs(dot(one, other)) > 0.5


def _gone(start: Way, way: Way, far: float) -> Way:
    east, north, up = (at + far * step for at, step in zip(start, way, strict=True))
    return east, north, up
