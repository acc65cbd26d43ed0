"""The wood that a lap takes off one of its timbers."""

from collections.abc import Iterator

from benchmate.joinery.lap.shape import COG_NEAR, Half, reading
from benchmate.measure.length import ZERO
from benchmate.model.directions import Face
from benchmate.model.solids import Cut, Plane


def cuts(half: Half) -> tuple[Cut, ...]:
    """What comes off down to the bed, beside the tail, for a cog, and by square rule."""
    found = []
    if half.depth > ZERO:
        found += [Cut((*half.walls, half.bed, *beside)) for beside in _beside_the_cog(half)]
    if half.tail is not None:
        flanks = half.tail.flanks.items()
        found += [Cut((*half.walls, flank, *_stops(half, face))) for face, flank in flanks]
    if half.slot:
        found.append(Cut(half.slot))
    if half.reduced:
        found.append(Cut(half.reduced))
    return tuple(found)


def _stops(half: Half, face: Face) -> Iterator[Plane]:
    """What else bounds the wood beside a flank: how high it is let in, and how far it runs.

    By square rule there is wood outside the wide end too, and it stays where the timber runs on.
    """
    if half.ledge is not None:
        yield half.ledge
    if half.outside is not None and not face.is_reference and half.lie.over > ZERO:
        yield half.outside


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
