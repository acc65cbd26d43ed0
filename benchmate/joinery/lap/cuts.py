"""The wood that a lap takes off one of its timbers."""

from collections.abc import Iterator

from benchmate.joinery.lap.shape import COG_NEAR, Half, reading
from benchmate.measure.length import ZERO
from benchmate.model.solids import Cut, Plane


def cuts(half: Half) -> tuple[Cut, ...]:
    """What comes off down to the bed, beside the tail, for a cog, and by square rule."""
    found = []
    if half.depth > ZERO:
        found += [Cut((*half.walls, half.bed, *beside)) for beside in _beside_the_cog(half)]
    if half.tail is not None:
        ledge = () if half.ledge is None else (half.ledge,)
        found += [Cut((*half.walls, flank, *ledge)) for flank in half.tail.flanks.values()]
    if half.slot:
        found.append(Cut(half.slot))
    if half.reduced:
        found.append(Cut(half.reduced))
    return tuple(found)


def bounding(half: Half) -> dict[str, Plane]:
    """The planes of its cuts by the line that shows each, in the order of the cuts."""
    planes = (plane for cut in cuts(half) for plane in cut.planes)
    return {plane.line: plane for plane in planes if plane.line is not None}


def _beside_the_cog(half: Half) -> Iterator[tuple[Plane, ...]]:
    """What else bounds the cut down to the bed: a side of the cog, wherever there is wood by it."""
    if not half.cog:
        yield ()
    for plane in half.cog:
        at = reading(plane, half.lie.wide)
        if at > ZERO if plane.line == COG_NEAR else at < half.real_wide:
            yield (plane,)
