"""The geometry kernel, behind the few operations that the proof needs.

The kernel is a general one for solids and knows nothing of timbers. It has no types that the type
checker can find, so everything untyped stays in this module. Coordinates are in nanometres: its
doubles hold every whole number up to 2**53, and a frame is far smaller.
"""

from collections.abc import Iterable, Sequence
from importlib import import_module
from math import hypot
from typing import Any

from tests.space import Box

Vector = tuple[int, int, int]

_kernel: Any = import_module("manifold3d")


class Solid:
    """A body of wood, or nothing at all.

    The kernel puts work off and may then take several cuts in one, which blurs faces that coincide.
    So every body is worked out as soon as it is made. One that it could not make has no volume and
    takes none off any other, which would look like a fit, so it raises ValueError.
    """

    __slots__ = ("body",)

    def __init__(self, body: Any) -> None:  # noqa: ANN401 - see above
        body.num_tri()
        if body.status() != _kernel.Error.NoError:
            raise ValueError(f"no solid: {body.status()}")
        self.body = body

    @property
    def volume(self) -> float:
        """Cubic nanometres."""
        return float(self.body.volume())

    @property
    def corners(self) -> tuple[tuple[float, float, float], tuple[float, float, float]]:
        """The least and the greatest corner of the box it fits in."""
        east, north, up, far_east, far_north, far_up = self.body.bounding_box()
        return (east, north, up), (far_east, far_north, far_up)

    def moved(self, by: Vector) -> "Solid":
        """The same body somewhere else."""
        return Solid(self.body.translate(by))

    def within(self, other: "Solid") -> "Solid":
        """What of it lies inside another body."""
        return Solid(self.body ^ other.body)

    def behind(self, normal: Vector, offset: int) -> "Solid":
        """What of it lies where `normal . point <= offset`."""
        if self.body.is_empty():
            return self
        steep = hypot(*normal)
        ahead = [-part / steep for part in normal]
        return Solid(self.body.trim_by_plane(ahead, -offset / steep))

    def turned(self, ways: Sequence[Sequence[float]], to: Sequence[float]) -> "Solid":
        """The same body with its three axes laid along `ways` and its zero put `to` a point."""
        rows = [[way[axis] for way in ways] + [to[axis]] for axis in range(3)]
        return Solid(self.body.transform(rows))

    def joined(self, others: Iterable["Solid"]) -> "Solid":
        """It and other bodies as one."""
        bodies = [self.body, *(other.body for other in others)]
        return Solid(_kernel.Manifold.batch_boolean(bodies, _kernel.OpType.Add))

    def without(self, wastes: Iterable["Solid"]) -> "Solid":
        """What is left of it when wood has been taken away."""
        bodies = [self.body, *(waste.body for waste in wastes)]
        return Solid(_kernel.Manifold.batch_boolean(bodies, _kernel.OpType.Subtract))


def block(box: Box) -> Solid:
    """A squared block; an empty solid where the box has no inside."""
    sizes = [high - low for low, high in box]
    if min(sizes) <= 0:
        return Solid(_kernel.Manifold())
    return Solid(_kernel.Manifold.cube(sizes)).moved((box[0][0], box[1][0], box[2][0]))


def hull(points: Iterable[Vector]) -> Solid:
    """The smallest convex body round some points."""
    return Solid(_kernel.Manifold.hull_points(list(points)))


def touching(one: Solid, other: Solid) -> bool:
    """Whether the boxes round two bodies have any room in common, so that the bodies might."""
    (low, high), (other_low, other_high) = one.corners, other.corners
    starts = (max(pair) for pair in zip(low, other_low, strict=True))
    stops = (min(pair) for pair in zip(high, other_high, strict=True))
    return all(start < stop for start, stop in zip(starts, stops, strict=True))


NOTHING = Solid(_kernel.Manifold())
"""No body at all."""
