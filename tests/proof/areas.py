"""Areas and volumes square to the axes, counted in whole nanometres: a second opinion on both."""

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np

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


def content(of: Sequence[Span], missing: Iterable[Sequence[Span]] = ()) -> int:
    """The area of a rectangle, or the volume of a box, without some others that may overlap.

    Everything is cut into cells along every edge there is, and the cells that are left counted.
    """
    if any(low >= high for low, high in of):
        return 0
    holes = tuple(missing)
    edges = [_edges(axis, span, holes) for axis, span in enumerate(of)]
    left: Any = np.ones([len(each) - 1 for each in edges], dtype=object)
    for hole in holes:
        cells = (_cells(each, span) for each, span in zip(edges, hole, strict=True))
        left[tuple(cells)] = 0
    for each in reversed(edges):
        left = left @ np.diff(np.array(each, dtype=object))
    return int(left)


def _edges(axis: int, span: Span, holes: tuple[Sequence[Span], ...]) -> list[int]:
    """Where anything starts or ends on one axis, between the ends of a span."""
    low, high = span
    ends = {end for hole in holes for end in hole[axis]}
    return [low, *sorted(end for end in ends if low < end < high), high]


def _cells(edges: list[int], span: Span) -> slice:
    """The cells that lie inside a span."""
    low, high = (min(max(end, edges[0]), edges[-1]) for end in span)
    return slice(bisect_left(edges, low), bisect_left(edges, high))
