"""Wood taken away: planes, and the convex cuts they bound.

How it works
1. A point in a timber is (x, u, v) in nanometres: x along from the reference shoulder, u in
   from the first reference face, v in from the second.
2. A `Plane` keeps the points with `n . p <= d` on its waste side. Normals are whole numbers, so a
   sloping plane (rise and run in nanometres) is as exact as a square one.
3. A `Cut` is the wood of the timber on the waste side of all its planes: always convex, and free
   to run past the timber's own faces.
4. A plane that the framer strikes as a line carries that line's id. Marks, hatching and checks
   are all read off the planes, so they cannot disagree.
"""

from dataclasses import dataclass
from enum import Enum

from benchmate.measure.length import Length


class Axis(Enum):
    """One of the three ways to measure in a timber; the value picks it out of (x, u, v)."""

    ALONG = (1, 0, 0)
    FIRST = (0, 1, 0)
    SECOND = (0, 0, 1)


@dataclass(frozen=True, slots=True)
class Plane:
    """A boundary of a cut: the waste is where `normal . (x, u, v) <= offset`.

    `normal` is in whole numbers; `offset` is in nanometres times the normal's scale. `line` is the
    id of the mark that shows the plane on the wood, or None where no mark is struck.
    """

    normal: tuple[int, int, int]
    offset: int
    line: str | None = None

    def holds(self, x: int, u: int, v: int) -> bool:
        """Whether a point lies on the waste side of the plane or in it."""
        nx, nu, nv = self.normal
        return nx * x + nu * u + nv * v <= self.offset


def below(axis: Axis, at: Length, line: str | None = None) -> Plane:
    """The plane square to an axis, with the waste on the side of smaller readings."""
    return Plane(axis.value, at.nm, line)


def above(axis: Axis, at: Length, line: str | None = None) -> Plane:
    """The plane square to an axis, with the waste on the side of larger readings."""
    nx, nu, nv = axis.value
    return Plane((-nx, -nu, -nv), -at.nm, line)


@dataclass(frozen=True, slots=True)
class Cut:
    """A convex piece of wood taken away: the timber on the waste side of every plane."""

    planes: tuple[Plane, ...]

    def takes(self, x: int, u: int, v: int) -> bool:
        """Whether the cut takes away the wood at a point."""
        return all(plane.holds(x, u, v) for plane in self.planes)
