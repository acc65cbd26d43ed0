"""Planes in the building, and the same planes as marks on a timber.

How it works
1. A joint lies in one place in the building, whichever of its timbers is looked at. So a family
   says once, in building coordinates, where its shoulders and seats lie, and carries each plane
   into the timber it is marked on. Hand, mirror and rake follow from how that timber stands.
2. A `Flat` keeps the points with `normal . (east, north, up) <= offset`. Normals are whole numbers
   (a slope is its run and rise in nanometres), so a plane is carried without loss; only where it
   crosses an arris is rounded, once, to a nanometre.
"""

from dataclasses import dataclass
from math import gcd

from benchmate.frame.place import Place, Point
from benchmate.frame.rake import root
from benchmate.measure.length import Length
from benchmate.model.directions import Direction
from benchmate.model.solids import Axis, Plane

_FINE = 10**12
"""What a normal is multiplied by before its length is rounded, so that small numbers lose nothing.

A normal of (1, 1, 0) is 1.41 long: rounded as it is, a plane would be moved a third too little.
"""


Pair = tuple[Length, Length]
"""A point on two of a timber's axes."""


@dataclass(frozen=True, slots=True)
class Flat:
    """A plane in the building; all with `normal . point <= offset` lies behind it."""

    normal: Point
    offset: int

    @property
    def turned(self) -> "Flat":
        """The same plane with its other side behind it."""
        east, north, up = self.normal
        return Flat((-east, -north, -up), -self.offset)

    def moved(self, ahead: Length) -> "Flat":
        """The plane parallel to it, so far ahead: away from what lies behind it."""
        east, north, up = (_FINE * part for part in self.normal)
        offset = _FINE * self.offset + ahead.nm * _steep((east, north, up))
        return Flat((east, north, up), offset)

    def through(self, point: Point) -> "Flat":
        """The plane parallel to it through a point."""
        return Flat(self.normal, _dot(self.normal, point))


def behind(direction: Direction, at: int) -> Flat:
    """The plane square to a direction at a coordinate along it; what lies behind looks back.

    `at` counts the way the coordinate grows, in nanometres: behind `DOWN` at 5 is all above 5.
    """
    sense = sum(direction.value)
    return Flat(direction.value, sense * at)


def carried(flat: Flat, place: Place, line: str | None = None) -> Plane:
    """A plane of the building in a timber's own readings: the waste is what lies behind it."""
    whole = max(way.whole for way in place.ways)
    x, u, v = (_dot(flat.normal, way.steps) * (whole // way.whole) for way in place.ways)
    offset = whole * (flat.offset - _dot(flat.normal, place.origin))
    return lowest((x, u, v), offset, line)


def built(plane: Plane, place: Place) -> Flat:
    """A plane of a timber in the building: what lies behind it is its waste side."""
    whole = max(way.whole for way in place.ways)
    parts = [
        tuple(n * (whole // way.whole) * step for step in way.steps)
        for n, way in zip(plane.normal, place.ways, strict=True)
    ]
    east, north, up = (sum(part[axis] for part in parts) for axis in range(3))
    normal = (east, north, up)
    return Flat(normal, whole * plane.offset + _dot(normal, place.origin))


def lowest(normal: tuple[int, int, int], offset: int, line: str | None) -> Plane:
    """A plane in the smallest whole numbers: square to an axis, its normal is 1."""
    sides = [abs(part) for part in normal if part]
    if len(sides) == 1:
        (side,) = sides
        x, u, v = (part // side for part in normal)
        return Plane((x, u, v), (2 * offset + side) // (2 * side), line)
    common = gcd(*normal, offset)
    x, u, v = (part // common for part in normal)
    return Plane((x, u, v), offset // common, line)


def shifted(plane: Plane, ahead: Length) -> Plane:
    """The plane parallel to it, so far ahead: away from its waste."""
    x, u, v = (_FINE * part for part in plane.normal)
    offset = _FINE * plane.offset + ahead.nm * _steep((x, u, v))
    return lowest((x, u, v), offset, plane.line)


def through_spot(plane: Plane, axis: Axis, along: Length, deep: Length) -> Plane:
    """The plane parallel to it through a spot: so far along, and so deep in on an axis across."""
    x, *across = plane.normal
    slope = across[0] if axis is Axis.FIRST else across[1]
    return Plane(plane.normal, x * along.nm + slope * deep.nm, plane.line)


def leaning(
    axes: tuple[Axis, Axis], start: Pair, finish: Pair, waste: Pair, line: str | None = None
) -> Plane:
    """The plane square to a timber's third axis through two points read on the other two.

    `waste` is a point off it, on its waste side. Raises ValueError if the three lie on one line.
    """
    (a, b), (c, d) = ((one.nm, other.nm) for one, other in (start, finish))
    up, over = b - d, c - a
    offset = up * a + over * b
    aside = up * waste[0].nm + over * waste[1].nm - offset
    if not aside:
        raise ValueError(f"no plane {line or 'here'}: its points and its waste lie on one line")
    sense = -1 if aside > 0 else 1
    first, second = (axis.value for axis in axes)
    x, u, v = (sense * (up * i + over * j) for i, j in zip(first, second, strict=True))
    return lowest((x, u, v), sense * offset, line)


def reversed_plane(plane: Plane) -> Plane:
    """The same plane with the waste on its other side."""
    x, u, v = plane.normal
    return Plane((-x, -u, -v), -plane.offset, plane.line)


def along_at(plane: Plane, axis: Axis, deep: Length) -> Length:
    """How far along the timber a plane crosses it, so deep in on an axis across, rounded once.

    Raises ZeroDivisionError for a plane that runs along the timber.
    """
    x, *across = plane.normal
    slope = across[0] if axis is Axis.FIRST else across[1]
    return Length(nearest(plane.offset - slope * deep.nm, x))


def deep_at(plane: Plane, axis: Axis, along: Length) -> Length:
    """How deep in on an axis across a plane lies, so far along the timber, rounded once.

    Raises ZeroDivisionError for a plane square across the timber.
    """
    x, *across = plane.normal
    slope = across[0] if axis is Axis.FIRST else across[1]
    return Length(nearest(plane.offset - x * along.nm, slope))


def nearest(top: int, bottom: int) -> int:
    """A quotient rounded to the nearest whole; ZeroDivisionError for a bottom of nothing."""
    if bottom < 0:
        top, bottom = -top, -bottom
    return (2 * top + bottom) // (2 * bottom)


def _steep(normal: Point) -> int:
    """How long a normal is, to the nearest whole."""
    return root(_dot(normal, normal))


def _dot(one: Point, other: Point) -> int:
    return sum(a * b for a, b in zip(one, other, strict=True))
