"""The proof itself: does everything bear, does nothing overlap, is every joint a fit?

How it works
1. Two timbers that merely touch have no volume in common, however large the face.
2. Pushed together by d they share the touching area times d. Pushed by 2 d they share twice as
   much; a gap g would leave them area times g short of that.
"""

from collections.abc import Iterable, Iterator
from enum import Enum
from itertools import combinations
from typing import NamedTuple

from tests.proof.expected import Expected, Snug, expected
from tests.proof.kernel import Solid, Vector, touching
from tests.proof.meetings import SKIN
from tests.proof.raising import Joint, Piece, Raising

PUSH = SKIN // 2
"""How far a timber is pushed, in nanometres: one thousandth of a millimetre, far less than any
clearance, and far more than the tolerance."""

TOLERANCE = 0.5
"""How far a face may seem to lie from where it should, in nanometres.

Every coordinate that can differ is a whole nanometre, so what is really wrong is wrong by one or
more. The kernel's doubles blur a face by less than a millionth of one.
"""

SLIVER = TOLERANCE * 10**12
"""The most volume that two timbers may share, in cubic nanometres: the tolerance deep on a square
millimetre. The least real overlap, a nanometre deep on the least land in a joint, is far more."""


class Kind(Enum):
    """What can be wrong."""

    OVERLAP = "two timbers in one place"
    GAP = "no bearing"
    BEARING = "bears on more or less than it should"
    LOOSE = "loose or tight at a side"
    BOTTOM = "more or less room past the end than stated"


class Fault(NamedTuple):
    """One thing wrong: what, between which timbers, and by how much."""

    kind: Kind
    timbers: tuple[str, str]
    figures: str


def faults(raising: Raising) -> tuple[Fault, ...]:
    """Everything wrong with a raised frame."""
    found = list(overlaps(raising))
    for joint in raising.joints:
        found += joint_faults(raising, joint)
    return tuple(found)


def told(found: Iterable[Fault]) -> str:
    """What is wrong, one line to a fault; nothing where all is well."""
    return "\n".join(
        f"{' and '.join(fault.timbers)}: {fault.kind.value} ({fault.figures})" for fault in found
    )


def overlaps(raising: Raising) -> Iterator[Fault]:
    """Timbers that are in the same place."""
    for one, other in combinations(raising.pieces.values(), 2):
        if touching(one.solid, other.solid):
            shared = one.solid.within(other.solid).volume
            if shared > SLIVER:
                figures = f"{shared / 1e18:.6f} mm3"
                yield Fault(Kind.OVERLAP, (one.timber.id, other.timber.id), figures)


def joint_faults(raising: Raising, joint: Joint) -> Iterator[Fault]:
    """What is wrong with one joint."""
    stick, receiver = raising.pieces[joint.timber], raising.pieces[joint.into or ""]
    right = expected(raising, joint)
    for kind, figures in (
        *_bearing(stick, receiver, right),
        *(loose for snug in right.snug for loose in _sides(stick, receiver, snug)),
        *_bottom(stick, receiver, right),
    ):
        yield Fault(kind, (stick.timber.id, receiver.timber.id), f"{joint.id}: {figures}")


def _bearing(stick: Piece, receiver: Piece, right: Expected) -> Iterator[tuple[Kind, str]]:
    once, twice = (_shared(stick.solid, receiver, right.bearing, times * PUSH) for times in (1, 2))
    if once <= SLIVER or abs(2 * once - twice) > TOLERANCE * right.bears:
        yield Kind.GAP, f"pushed by {PUSH} nm shares {once:.6g} nm3, by twice as much {twice:.6g}"
    elif not _agree(once, right.bears):
        yield Kind.BEARING, f"{once / PUSH / 1e12:.3f} mm2, not {right.bears / 1e12:.3f}"


def _sides(stick: Piece, receiver: Piece, right: Snug) -> Iterator[tuple[Kind, str]]:
    part = stick.part(right.part)
    for way, wall in right.walls.items():
        shared = _shared(part, receiver, way, PUSH)
        if not _agree(shared, wall):
            yield Kind.LOOSE, f"{way}: {shared / PUSH / 1e12:.3f} mm2, not {wall / 1e12:.3f}"


def _bottom(stick: Piece, receiver: Piece, right: Expected) -> Iterator[tuple[Kind, str]]:
    point, room = stick.part(right.point), right.clearance
    within = _shared(point, receiver, right.inward, room)
    past = _shared(point, receiver, right.inward, room + PUSH)
    if within > SLIVER or not _agree(past, right.end):
        yield Kind.BOTTOM, f"in by {room} nm shares {within:.6g} nm3, by {PUSH} nm more {past:.6g}"


def _shared(solid: Solid, receiver: Piece, way: Vector, by: int) -> float:
    """The wood that a body moved some way would share with a timber."""
    east, north, up = way
    return solid.moved((east * by, north * by, up * by)).within(receiver.solid).volume


def _agree(shared: float, area: int) -> bool:
    """Whether a body pushed into a face met all of an area, and at once; or met none."""
    return abs(shared - PUSH * area) <= max(TOLERANCE * area, SLIVER)
