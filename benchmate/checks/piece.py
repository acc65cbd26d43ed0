"""Pieces of wood: what a cut really takes from a stick, convex and clipped to the wood itself.

How it works
1. A cut is free to run past its timber's faces, so it says nothing of where wood is until it is
   clipped to the stick. Of most cuts a box is left, in whole nanometres.
2. A sloping plane draws the box in as far as it can by itself. That box may hold more than the
   piece does and never less, so pieces whose boxes lie apart are at least as far apart.
3. The corners of a sloping piece lie where three planes cross and all the others hold. They are
   whole numbers over a whole number, so nothing is rounded.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations, product

from benchmate.model.solids import Plane

Point = tuple[int, int, int]
Corner = tuple[Fraction, Fraction, Fraction]

_Half = tuple[Point, int]
"""The points with `normal . point <= offset`."""

_Crossing = tuple[Point, int]
"""A point as three whole numbers, each over the same whole number above nothing."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A convex piece of wood: the box from `low` to `high`, on the waste side of its `slopes`.

    Readings are (x, u, v) in nanometres.
    """

    low: Point
    high: Point
    slopes: tuple[Plane, ...] = ()

    def within(self, planes: Iterable[Plane]) -> "Piece | None":
        """What of it lies on the waste side of some planes; None where its box is empty."""
        low, high, slopes = list(self.low), list(self.high), list(self.slopes)
        slopes += [plane for plane in planes if not _square_drawn(low, high, plane)]
        for plane in slopes:
            _drawn_in(low, high, plane)
        if any(near >= far for near, far in zip(low, high, strict=True)):
            return None
        left = tuple(plane for plane in slopes if _cuts(low, high, plane))
        return Piece((low[0], low[1], low[2]), (high[0], high[1], high[2]), left)

    def corners(self) -> tuple[Corner, ...]:
        """Its corners; none where it is so thin that it takes no wood at all."""
        spans = zip(self.low, self.high, strict=True)
        if not self.slopes:
            return tuple((Fraction(x), Fraction(u), Fraction(v)) for x, u, v in product(*spans))
        halves = (*_sides(self), *((plane.normal, plane.offset) for plane in self.slopes))
        found = tuple(_crossings(halves))
        flat = any(
            all(_dot(way, point) == offset * whole for point, whole in found)
            for way, offset in halves
        )
        return () if flat else tuple(dict.fromkeys(map(_corner, found)))


def box_gap(one: Piece, other: Piece) -> int:
    """The square of how far the boxes of two pieces lie apart, in square nanometres."""
    gaps = (
        max(0, near - far, back - front)
        for near, far, back, front in zip(one.low, other.high, other.low, one.high, strict=True)
    )
    return sum(gap * gap for gap in gaps)


def _square_drawn(low: list[int], high: list[int], plane: Plane) -> bool:
    """Draw a box in to a plane square to an axis; False for any other plane.

    One that lies at no whole number of nanometres counts as another: a box cannot end there.
    """
    sides = [axis for axis, part in enumerate(plane.normal) if part]
    part = plane.normal[sides[0]]
    at, over = divmod(plane.offset, part)
    if len(sides) > 1 or over:
        return False
    (axis,) = sides
    if part > 0:
        high[axis] = min(high[axis], at)
    else:
        low[axis] = max(low[axis], at)
    return True


def _drawn_in(low: list[int], high: list[int], plane: Plane) -> None:
    """Draw a box in to what it holds on the waste side of a plane, rounded outwards."""
    least = [
        min(part * near, part * far)
        for part, near, far in zip(plane.normal, low, high, strict=True)
    ]
    for axis, part in enumerate(plane.normal):
        room = plane.offset - (sum(least) - least[axis])
        if part > 0:
            high[axis] = min(high[axis], -(-room // part))
        elif part < 0:
            low[axis] = max(low[axis], -room // -part)


def _cuts(low: list[int], high: list[int], plane: Plane) -> bool:
    """Whether a plane leaves any of a box off its waste side."""
    spans = zip(plane.normal, low, high, strict=True)
    return sum(max(part * near, part * far) for part, near, far in spans) > plane.offset


def _sides(piece: Piece) -> Iterator[_Half]:
    """The six sides of its box."""
    for axis, (near, far) in enumerate(zip(piece.low, piece.high, strict=True)):
        x, u, v = (int(axis == each) for each in range(3))
        yield (x, u, v), far
        yield (-x, -u, -v), -near


def _crossings(halves: tuple[_Half, ...]) -> Iterator[_Crossing]:
    """Where three of the planes cross on the waste side of all the others."""
    for (one, first), (two, second), (three, third) in combinations(halves, 3):
        ways = (_cross(two, three), _cross(three, one), _cross(one, two))
        whole = _dot(one, ways[0])
        if not whole:
            continue
        sign = 1 if whole > 0 else -1
        x, u, v = (
            sign * (first * a + second * b + third * c) for a, b, c in zip(*ways, strict=True)
        )
        if all(_dot(way, (x, u, v)) <= offset * sign * whole for way, offset in halves):
            yield (x, u, v), sign * whole


def _corner(crossing: _Crossing) -> Corner:
    (x, u, v), whole = crossing
    return Fraction(x, whole), Fraction(u, whole), Fraction(v, whole)


def _dot(one: Point, other: Point) -> int:
    return sum(a * b for a, b in zip(one, other, strict=True))


def _cross(one: Point, other: Point) -> Point:
    (a, b, c), (d, e, f) = one, other
    return b * f - c * e, c * d - a * f, a * e - b * d
