"""A second opinion on where timbers stand, worked out from directions and coordinates alone.

Nothing here asks the engine how timbers meet. A placed timber is the building point where its
arris crosses its reference shoulder, and three building directions: along, and in from each
reference face. Building axes are east, north and up, in nanometres.
"""

from dataclasses import dataclass
from itertools import permutations
from typing import NamedTuple

from benchmate.model.solids import Cut

TOWARDS = {
    "east": (0, 1),
    "west": (0, -1),
    "north": (1, 1),
    "south": (1, -1),
    "up": (2, 1),
    "down": (2, -1),
}
"""Each direction as a building axis and a sense along it."""

Span = tuple[int, int]
Box = tuple[Span, Span, Span]


class Stance(NamedTuple):
    """Where the first face, the second face and the reference end look, in words."""

    first: str
    second: str
    end: str


STANCES = tuple(
    Stance(*words)
    for words in permutations(TOWARDS, 3)
    if len({TOWARDS[word][0] for word in words}) == 3
)
"""All 48 ways a timber can stand: 24 of each hand."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A timber in the building: `inward[i]` is the axis and sense its reading i grows in."""

    origin: tuple[int, int, int]
    inward: tuple[tuple[int, int], tuple[int, int], tuple[int, int]]

    def box(self, readings: Box) -> Box:
        """A box in (x, u, v) as a box in the building."""
        found = [(0, 0)] * 3
        for (axis, sense), (low, high) in zip(self.inward, readings, strict=True):
            ends = sorted(self.origin[axis] + sense * value for value in (low, high))
            found[axis] = (ends[0], ends[1])
        return found[0], found[1], found[2]

    def plane(self, reading: int, value: int) -> int:
        """The building coordinate of a plane square to one of the timber's readings."""
        axis, sense = self.inward[reading]
        return self.origin[axis] + sense * value


def inward(stance: Stance) -> tuple[tuple[int, int], tuple[int, int], tuple[int, int]]:
    """The directions that x, u and v grow in: away from the end and from each reference face."""
    end, first, second = (
        (TOWARDS[word][0], -TOWARDS[word][1]) for word in (stance.end, stance.first, stance.second)
    )
    return end, first, second


def bounds(cut: Cut, open_to: Box) -> Box:
    """The box of a cut with square planes; a side that no plane bounds runs to `open_to`."""
    found = [list(span) for span in open_to]
    for plane in cut.planes:
        (axis,) = (place for place, part in enumerate(plane.normal) if part)
        if plane.normal[axis] > 0:
            found[axis][1] = plane.offset
        else:
            found[axis][0] = -plane.offset
    x, u, v = ((low, high) for low, high in found)
    return x, u, v
