"""Boxes square to three axes, and what two of them have in common."""

from tests.space import Box, Span

OPEN: Span = (-(10**11), 10**11)
"""No boundary: 100 m either way in nanometres, beyond any timber."""

EVERYWHERE: Box = (OPEN, OPEN, OPEN)


def box(spans: dict[int, Span]) -> Box:
    """A box bounded on some axes and open on the others."""
    x, u, v = (spans.get(axis, OPEN) for axis in range(3))
    return x, u, v


def meet(*boxes: Box) -> Box:
    """What boxes have in common; a span that ends before it starts where they are apart."""
    x, u, v = (
        (max(span[0] for span in spans), min(span[1] for span in spans))
        for spans in zip(*boxes, strict=True)
    )
    return x, u, v


def grown(one: Box, by: int) -> Box:
    """A box with room to spare all round."""
    x, u, v = ((low - by, high + by) for low, high in one)
    return x, u, v


def beyond(axis: int, at: int, *, far: bool) -> Box:
    """All that lies on one side of a plane square to an axis."""
    return box({axis: (at, OPEN[1]) if far else (OPEN[0], at)})


def between(axis: int, low: int, high: int) -> Box:
    """All that lies between two planes square to an axis."""
    return box({axis: (low, high)})


def empty(one: Box) -> bool:
    """Whether a box has no inside."""
    return any(low >= high for low, high in one)
