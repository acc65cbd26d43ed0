"""A lap by its definition: two bars that cross, shared out at one height.

How it works
1. Each timber is a bar of the building: without end along itself, and as wide and deep across as
   the frame counts on. Only where its reference arris runs is taken from the program.
2. What the first timber keeps under the other's own face is its bar, or its tail, and all of it
   past the other's far face; the other is hollowed out for that. What the first has below the bed
   comes off, between the faces of the other's bar or beyond the first of them.
3. What a stick is over its bar comes off wherever the other has wood beside it.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.lap.record import LapJoint
from tests.proof.fits import Wastes
from tests.proof.kernel import NOTHING, Solid, block, hull
from tests.proof.wood import Log

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

Span = tuple[int, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A timber across two building axes: where its reference face is, and the way in from it.

    `counted` is its section as the frame counts on it, `drawn` as it is drawn or its inner one.
    """

    log: Log
    run: int
    faces: dict[int, tuple[int, int]]
    real: dict[int, int]
    counted: dict[int, int]
    drawn: dict[int, int]

    def span(self, axis: int, deep: Mapping[int, int]) -> Span:
        """From where to where it lies on an axis across, if it is so deep."""
        start, inward = self.faces[axis]
        low, high = sorted((start, start + inward * deep[axis]))
        return low, high


def bar(log: Log) -> Bar:
    """A timber as a bar of the building."""
    ways = [[round(part) for part in way] for way in log.stand.ways]
    axes = [[bool(part) for part in way].index(True) for way in ways]
    stick = log.layout.stick
    real, drawn = stick.section(), stick.inner or stick.nominal
    counted = stick.inner or real
    zero = [round(at) for at in log.stand.zero]
    across = axes[1:]
    return Bar(
        log=log,
        run=axes[0],
        faces={axes[n]: (zero[axes[n]], sum(ways[n])) for n in (1, 2)},
        real=dict(zip(across, (real.first.nm, real.second.nm), strict=True)),
        counted=dict(zip(across, (counted.first.nm, counted.second.nm), strict=True)),
        drawn=dict(zip(across, (drawn.first.nm, drawn.second.nm), strict=True)),
    )


def within(axis: int, span: Span) -> Solid:
    """All that lies between two places on an axis."""
    spans = [(-FAR, FAR)] * 3
    spans[axis] = span
    return block((spans[0], spans[1], spans[2]))


def beyond(axis: int, sense: int, at: int) -> Solid:
    """All that lies past a place on an axis, the way it is faced."""
    return within(axis, (at, FAR) if sense > 0 else (-FAR, at))


def facing(way: tuple[int, int, int]) -> tuple[int, int]:
    """A direction as a building axis and a sense along it."""
    return [bool(step) for step in way].index(True), sum(way)


class Lap:
    """The textbook's own reckoning of one lap."""

    def __init__(self, joint: LapJoint, frame: Frame, logs: Mapping[str, Log]) -> None:
        self.joint = joint
        self.one, self.other = bar(logs[joint.timber]), bar(logs[joint.into])
        self.axis, self.up = facing(joint.side.value)
        drawn = [each.span(self.axis, each.drawn) for each in (self.one, self.other)]
        low, high = max(span[0] for span in drawn), min(span[1] for span in drawn)
        share = (high - low) // 2 if joint.share is None else frame.value(joint.share).nm
        self.bed = high - share if self.up > 0 else low + share

    def _height(self, each: Bar, *, top: bool) -> int:
        low, high = each.span(self.axis, each.real)
        return high if top is (self.up > 0) else low

    def _end(self, each: Bar, other: Bar) -> tuple[int, int] | None:
        """Where an end of one bar stops at the other's near face, and the way it was going."""
        end = self.joint.end if each is self.one else self.joint.into_end
        if end is None:
            return None
        axis, sense = facing(end.value)
        span = other.span(axis, other.counted)
        return (span[0], sense) if sense > 0 else (span[1], sense)

    def _reach(self, each: Bar, other: Bar, deep: Mapping[int, int]) -> Solid:
        """Along one bar, all that lies in the other, or past where its end comes to it."""
        stop = self._end(each, other)
        if stop is None:
            return within(each.run, other.span(each.run, deep))
        return beyond(each.run, stop[1], stop[0])

    def kept(self) -> Solid:
        """The first timber's bar as it lies in the other: between its sides, or its tail."""
        one, other = self.one, self.other
        corner = self._end(other, one)
        if corner is not None:
            return beyond(other.run, corner[1], corner[0])
        stop = self._end(one, other)
        wide = one.span(other.run, one.counted)
        if stop is None:
            return within(other.run, wide)
        low, high = other.span(one.run, other.real)
        near, mouth = stop[0], high if stop[1] > 0 else low
        tail = self._tail(near, mouth, wide) if self.joint.dovetailed else within(other.run, wide)
        return tail.joined([beyond(one.run, stop[1], mouth)])

    def _tail(self, near: int, mouth: int, wide: Span) -> Solid:
        run, inward = self.other.run, self.one.faces[self.other.run][1]
        first, last = (
            (self.joint.flare if own is None else own).nm
            for own in (self.joint.flare_reference, self.joint.flare_far)
        )
        if inward < 0:
            first, last = last, first
        points = []
        for at, (low, high) in (
            (near, (wide[0] + first, wide[1] - last)),
            (mouth, wide),
        ):
            for side in (low, high):
                for height in (-FAR, FAR):
                    point = [0, 0, 0]
                    point[self.one.run], point[run], point[self.axis] = at, side, height
                    points.append((point[0], point[1], point[2]))
        return hull(points)

    def cog(self) -> Solid:
        """All that lies where the cog stands, across the second timber."""
        if self.joint.cog is None:
            return NOTHING
        other, run = self.other, self.one.run
        start, inward = other.faces[run]
        back = self.joint.cog_set_back
        first = (other.drawn[run] - self.joint.cog.nm) // 2 if back is None else back.nm
        low, high = sorted(start + inward * at for at in (first, first + self.joint.cog.nm))
        return within(run, (low, high))

    def first(self) -> Solid:
        """What comes off the timber that is cut first."""
        reach = self._reach(self.one, self.other, self.other.counted)
        taken = reach.within(beyond(self.axis, -self.up, self.bed))
        under = beyond(self.axis, -self.up, self._height(self.other, top=True))
        beside = reach.within(under).without([self.kept()])
        slot = self.cog().within(under)
        return taken.joined([beside, slot])

    def second(self) -> Solid:
        """What comes off the one it is let into."""
        one, other = self.one, self.other
        above = beyond(self.axis, self.up, self.bed)
        taken = above.within(self.kept()).without([self.cog()])
        low, high = other.span(one.run, other.counted)
        stop = self._end(one, other)
        excess = [beyond(one.run, -1, low), beyond(one.run, 1, high)]
        if stop is not None:
            excess = [beyond(one.run, -stop[1], stop[0])]
        corner = self._end(other, one)
        reach = within(other.run, one.span(other.run, one.real))
        if corner is not None:
            real = one.span(other.run, one.real)
            reach = beyond(other.run, corner[1], real[0] if corner[1] > 0 else real[1])
        clear = beyond(self.axis, self.up, self._height(one, top=False)).within(reach)
        return taken.joined([clear.within(each) for each in excess])


def textbook(joint: LapJoint, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a lap takes off its two timbers."""
    lap = Lap(joint, frame, logs)
    ends = [
        end and {"up": "head", "down": "foot"}.get(end.word, f"{end.word}-end")
        for end in (joint.end, joint.into_end)
    ]
    first = f"{joint.timber}/{ends[0] or joint.id}-lap"
    second = f"{joint.into}/{f'{ends[1]}-lap' if ends[1] else f'{joint.id}-notch'}"
    return {first: lap.first(), second: lap.second()}
