"""The arris line of a raking timber, from the three ways to say it."""

from collections.abc import Callable
from dataclasses import dataclass
from math import isqrt

from benchmate.frame.place import Point
from benchmate.measure.length import Length
from benchmate.measure.sums import Sum
from benchmate.measure.tolerance import SAME_SLOPE
from benchmate.model.directions import Direction
from benchmate.model.fields import FACES
from benchmate.model.place import COORDINATES, Incline
from benchmate.model.place import Point as StoredPoint

Value = Callable[[Sum], Length]
"""What a sum comes to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rake:
    """A raking arris from foot to head, in nanometres.

    `run` is level, towards the side the head is said to lie on; `rise` is plumb; `length` along
    the arris is rounded once. `aside` is how far the head lies out of the plane it is said to rake
    in: nothing, if the two points are sound.
    """

    foot: Point
    head: Point
    run: int
    rise: int
    aside: int
    length: int


@dataclass(frozen=True, slots=True)
class Slope:
    """Level and plumb of a slope, in nanometres; no rise for a timber that stands or lies."""

    run: int
    rise: int

    def like(self, other: "Slope") -> bool:
        """Whether two slopes are the same but for a hair."""
        off = self.run * other.rise - self.rise * other.run
        return abs(off) * SAME_SLOPE <= self.run * other.run + self.rise * other.rise


def rake(incline: Incline, value: Value) -> Rake:
    """The arris line of a raking timber."""
    foot, head = _ends(incline, value)
    east, north, rise = (b - a for a, b in zip(foot, head, strict=True))
    ahead = incline.heading.value
    run = ahead[0] * east + ahead[1] * north
    return Rake(
        foot=foot,
        head=head,
        run=run,
        rise=rise,
        aside=ahead[0] * north - ahead[1] * east,
        length=root(run * run + rise * rise),
    )


def root(square: int) -> int:
    """The square root, to the nearest whole."""
    return (isqrt(4 * square) + 1) // 2


def _ends(incline: Incline, value: Value) -> tuple[Point, Point]:
    if incline.corner is not None and incline.legs is not None:
        corner, legs = _point(incline.corner, value), incline.legs.sums()
        ends = {word: _moved(corner, FACES[word], value(leg)) for word, leg in legs.items()}
        (level,) = (end for word, end in ends.items() if word not in ("up", "down"))
        return (level, ends["up"]) if "up" in ends else (ends["down"], level)
    if incline.foot is None:
        raise ValueError("an incline has a foot, or a corner and legs")
    foot = _point(incline.foot, value)
    if incline.head is not None:
        return foot, _point(incline.head, value)
    if incline.run is None or incline.rise is None:
        raise ValueError("an incline has a head, or run and rise")
    ahead = _moved(foot, incline.heading, value(incline.run))
    return foot, _moved(ahead, Direction.UP, value(incline.rise))


def _point(stored: StoredPoint, value: Value) -> Point:
    east, north, up = (value(stored.sums()[name]).nm for name in COORDINATES)
    return east, north, up


def _moved(point: Point, direction: Direction, distance: Length) -> Point:
    east, north, up = (
        start + step * distance.nm for start, step in zip(point, direction.value, strict=True)
    )
    return east, north, up
