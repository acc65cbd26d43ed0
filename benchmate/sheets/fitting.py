"""Figures put beside their lines where they hide nothing and nothing hides them."""

from collections.abc import Iterator
from dataclasses import dataclass

from benchmate.sheets.ink import SMALL, Spot

ROW = SMALL * 0.9
"""The height of a row of figures, which have nothing below their line."""

GAP = 0.9
"""Millimetres between a figure and what stands beside it."""

COLUMNS = 6
"""How many widths of itself a figure may stand away from its line."""


@dataclass(frozen=True, slots=True)
class Box:
    """A patch of paper: its left, top, right and bottom."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: "Box") -> bool:
        """Whether the two share more than an edge."""
        apart = (
            self.right <= other.left
            or other.right <= self.left
            or self.bottom <= other.top
            or other.bottom <= self.top
        )
        return not apart

    def covers(self, path: tuple[Spot, ...]) -> bool:
        """Whether any of some spots lies inside."""
        return any(self.left < x < self.right and self.top < y < self.bottom for x, y in path)

    def holds(self, other: "Box") -> bool:
        """Whether another lies wholly inside."""
        across = self.left <= other.left and other.right <= self.right
        return across and self.top <= other.top and other.bottom <= self.bottom


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a figure stands, and the spot of its line that it belongs to."""

    box: Box
    spot: Spot

    @property
    def path(self) -> tuple[Spot, ...]:
        """Spots along the lead, close enough that nothing to be read lies between two of them."""
        (x, y), (to_x, to_y) = self.lead
        parts = (step / _STEPS for step in range(_STEPS + 1))
        return tuple((x + (to_x - x) * part, y + (to_y - y) * part) for part in parts)

    @property
    def lead(self) -> tuple[Spot, Spot]:
        """From the line to the nearer side of the figure."""
        right = self.box.left >= self.spot[0]
        side = self.box.left if right else self.box.right
        return self.spot, (side, (self.box.top + self.box.bottom) / 2)


_STEPS = 40


def placed(
    line: tuple[Spot, Spot],
    width: float,
    face: Box,
    taken: tuple[Box, ...],
    others: tuple[Placed, ...],
) -> Placed | None:
    """The nearest free place for a figure so wide, beside either end of its line; None for none.

    It stays on the face and clear of all that is taken; no lead runs through another's figure.
    """
    start, end = line
    tops = tuple(_rows(face))

    def rows_from(level: float) -> list[float]:
        return sorted(tops, key=lambda top: abs(top + ROW / 2 - level))

    for away in range(COLUMNS):
        for spot, side in ((end, 1), (start, -1)):
            for top in rows_from(spot[1]):
                found = Placed(_box(spot[0], side, away, width, top), spot)
                if face.holds(found.box) and _free(found, taken, others):
                    return found
    return None


def _free(found: Placed, taken: tuple[Box, ...], others: tuple[Placed, ...]) -> bool:
    """Whether a figure stands clear, and neither its lead nor another's crosses a figure."""
    boxes = (*taken, *(each.box for each in others))
    if any(map(found.box.meets, boxes)):
        return False
    crosses = any(each.box.covers(found.path) for each in others)
    return not crosses and not any(found.box.covers(each.path) for each in others)


def _rows(face: Box) -> Iterator[float]:
    """The tops of the rows of figures that a face has room for, evenly."""
    count = max(int((face.bottom - face.top) / ROW), 1)
    spare = (face.bottom - face.top - count * ROW) / (count + 1)
    for row in range(count):
        yield face.top + spare + row * (ROW + spare)


def _box(at: float, side: int, away: int, width: float, top: float) -> Box:
    near = at + side * (GAP + away * (width + GAP) / 2)
    left, right = sorted((near, near + side * width))
    return Box(left, top, right, top + ROW)
