"""Where a level joist's end meets the side of a level beam, in the building's own directions.

Three measures tell every place there: how far in from the beam's face, how far across from the
joist's side reference face, and how far down from the joist's top.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from benchmate.frame.level_end import LevelEnd
from benchmate.model.directions import Direction
from tests.proof.kernel import Solid, Vector, block, hull
from tests.proof.wood import Log

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

Span = tuple[float, float]
ALL: Span = (-FAR, FAR)


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """The corner of beam and joist: where each of the three measures starts, and which way it goes.

    `over` is how much further out the beam's wood really reaches than the frame counts on. `deep`
    and `wide` are the joist as the frame counts on it.
    """

    zero: tuple[float, float, float]
    axes: tuple[int, int, int]
    ways: tuple[int, int, int]
    over: float
    deep: float
    wide: float
    beam_top: float
    beam_under: float

    def box(self, deep_in: Span, wide: Span, down: Span) -> Solid:
        """A box, each span in its own measure."""
        spans = [(0, 0)] * 3
        for axis, way, run in zip(self.axes, self.ways, (deep_in, wide, down), strict=True):
            low, high = sorted(round(self.zero[axis] + way * each) for each in run)
            spans[axis] = (low, high)
        return block((spans[0], spans[1], spans[2]))

    def prism(self, seen_from_above: Iterable[Span], down: Span) -> Solid:
        """What has these corners seen from above, each so far in and across, from down to down."""
        return self._hull((deep, wide, at) for deep, wide in seen_from_above for at in down)

    def profile(self, seen_from_the_side: Iterable[Span], wide: Span) -> Solid:
        """What has these corners seen from the side, each so far in and down, as wide as said."""
        return self._hull((deep, at, down) for deep, down in seen_from_the_side for at in wide)

    def _hull(self, points: Iterable[tuple[float, float, float]]) -> Solid:
        return hull(map(self._corner, points))

    def _corner(self, point: tuple[float, float, float]) -> Vector:
        found = [0, 0, 0]
        for axis, way, at in zip(self.axes, self.ways, point, strict=True):
            found[axis] = round(self.zero[axis] + way * at)
        return found[0], found[1], found[2]


def level(joint: LevelEnd, logs: dict[str, Log]) -> Level:
    """Where a joist's end meets its beam."""
    joist, beam = logs[joint.timber], logs[joint.into]
    side = next(
        face
        for face in (joist.timber.first_face, joist.timber.second_face)
        if face is not Direction.UP
    )
    axis, across = _axis(joint.end), _axis(side)
    sense = sum(joint.end.value)
    face, outside = _face(beam, axis, sense)
    top, under = _face(beam, 2, -1)[0], _face(beam, 2, 1)[0]
    start = joist.stand.zero
    zero = [0.0, 0.0, start[2]]
    zero[axis], zero[across] = face, start[across]
    return Level(
        zero=(zero[0], zero[1], zero[2]),
        axes=(axis, across, 2),
        ways=(sense, -sum(side.value), -1),
        over=abs(outside - face),
        deep=framed(joist, 2),
        wide=framed(joist, across),
        beam_top=start[2] - top,
        beam_under=start[2] - under,
    )


def _axis(direction: Direction) -> int:
    return [bool(step) for step in direction.value].index(True)


def _number(log: Log, axis: int) -> int:
    """Which of a timber's readings runs along a building axis."""
    return next(number for number in (1, 2) if log.stand.ways[number][axis])


def framed(log: Log, axis: int) -> float:
    """How deep a timber is along a building axis, as the frame counts on it."""
    section = log.layout.stick.inner or log.layout.stick.section()
    return (section.first, section.second)[_number(log, axis) - 1].nm


def _face(log: Log, axis: int, sense: int) -> tuple[float, float]:
    """The coordinate of the side one goes in by, going that way: as counted on, and as it is."""
    number = _number(log, axis)
    inward, arris = log.stand.ways[number][axis], log.stand.zero[axis]
    if inward == sense:
        return arris, arris
    section = log.layout.stick.section()
    real = (section.first, section.second)[number - 1].nm
    return arris + inward * framed(log, axis), arris + inward * real


def housing(met: Level, *, dropped: bool = False) -> list[Solid]:
    """What takes the whole end where the beam is over its size: open where the end runs out.

    An end that is dropped in needs it open above in any case.
    """
    if not met.over:
        return []
    low = -FAR if dropped or met.beam_top >= 0 else 0
    high = FAR if met.deep >= met.beam_under else met.deep
    return [met.box((-met.over, 0), (0, met.wide), (low, high))]


def reduced(met: Level, log: Log) -> list[Solid]:
    """By square rule, what lies outside the joist's inner timber as far as it goes in."""
    if log.layout.stick.inner is None or not met.over:
        return []
    inside = (-met.over, FAR)
    return [met.box(inside, (met.wide, FAR), ALL), met.box(inside, ALL, (met.deep, FAR))]
