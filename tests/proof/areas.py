"""Areas of rectangles with pieces missing, in whole square nanometres."""

from collections.abc import Iterable
from itertools import pairwise

from tests.space import Box, Span

Rect = tuple[Span, Span]


def seen(box: Box, axis: int) -> Rect:
    """A box as it looks along one of its axes."""
    one, other = (span for number, span in enumerate(box) if number != axis)
    return one, other


def common(one: Rect, other: Rect) -> Rect:
    """What two rectangles have in common; a span that ends before it starts if nothing."""
    across, up = ((max(a[0], b[0]), min(a[1], b[1])) for a, b in zip(one, other, strict=True))
    return across, up


def area(of: Rect, missing: Iterable[Rect] = ()) -> int:
    """The area of a rectangle without some others, which may overlap."""
    holes = tuple(common(of, hole) for hole in missing)
    total = 0
    for left, right in pairwise(_cuts(0, of, holes)):
        for low, high in pairwise(_cuts(1, of, holes)):
            if not any(_inside((left, low), hole) for hole in holes):
                total += (right - left) * (high - low)
    return total


def _cuts(axis: int, of: Rect, holes: tuple[Rect, ...]) -> list[int]:
    """Where anything starts or ends on one axis, within the rectangle."""
    low, high = of[axis]
    ends = {end for rect in (of, *holes) for end in rect[axis]}
    return sorted(end for end in ends if low <= end <= high)


def _inside(corner: tuple[int, int], hole: Rect) -> bool:
    """Whether the cell that starts at a corner lies in a hole."""
    return all(low <= at < high for at, (low, high) in zip(corner, hole, strict=True))
