"""Where a timber stands in the building: its own readings as building coordinates."""

from collections.abc import Sequence
from dataclasses import dataclass

from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import Section
from benchmate.model.directions import Direction, Pose

Point = tuple[int, int, int]
"""East, north and up from the frame's zero, in nanometres."""


@dataclass(frozen=True, slots=True)
class Way:
    """A direction in the building as whole steps and their length: `steps / whole` is one long."""

    steps: Point
    whole: int = 1

    def go(self, distance: int, axis: int) -> int:
        """How far a distance this way goes on one building axis, rounded once to a nanometre."""
        return (2 * distance * self.steps[axis] + self.whole) // (2 * self.whole)


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A timber in the building.

    `origin` is where its reference arris crosses its reference shoulder (the squared end where it
    has none); `ways` are the directions its readings x, u and v grow in.
    """

    origin: Point
    ways: tuple[Way, Way, Way]

    def point(self, x: Length, u: Length, v: Length) -> Point:
        """A point of the timber in the building."""
        readings = (x.nm, u.nm, v.nm)
        east, north, up = (
            start + sum(way.go(value, axis) for way, value in zip(self.ways, readings, strict=True))
            for axis, start in enumerate(self.origin)
        )
        return east, north, up

    def corners(self, section: Section, start: Length, finish: Length) -> tuple[Point, ...]:
        """Eight corners: round the section at `start`, then in the same order at `finish`."""
        ring = (
            (ZERO, ZERO),
            (section.first, ZERO),
            (section.first, section.second),
            (ZERO, section.second),
        )
        return tuple(self.point(x, u, v) for x in (start, finish) for u, v in ring)


def square_ways(pose: Pose) -> tuple[Way, Way, Way]:
    """How the readings of a timber that stands or lies grow: away from end and faces."""
    looks = (pose.reference_end, pose.first, pose.second)
    x, u, v = (Way(direction.opposite.value) for direction in looks)
    return x, u, v


def raking_ways(pose: Pose, run: int, rise: int, length: int) -> tuple[Way, Way, Way]:
    """How the readings of a raking timber grow; `run` and `rise` from foot to head, in nanometres.

    Its ways along and across in the vertical plane turn together from where they would be if it
    lay level; the way across that plane stays.
    """

    def tilted(direction: Direction) -> Way:
        """A direction of the level timber once its head is raised."""
        if pose.head is None or (direction.square_to(pose.head) and not direction.value[2]):
            return Way(direction.value)
        ahead = pose.head.value
        if direction.value[2]:
            return _scaled(ahead, -rise * direction.value[2], run * direction.value[2], length)
        sign = 1 if direction is pose.head else -1
        return _scaled(ahead, sign * run, sign * rise, length)

    looks = (pose.reference_end, pose.first, pose.second)
    x, u, v = (tilted(direction.opposite) for direction in looks)
    return x, u, v


def _scaled(ahead: Sequence[int], level: int, up: int, length: int) -> Way:
    return Way((ahead[0] * level, ahead[1] * level, up), length)
