"""Planes that lean on a timber by two figures, and how to set a bevel for them.

A tail, a wedge or a diminished housing is laid out as a framer does it: from one point to another,
each so far along and so far in. The plane through both is kept whole; nothing is rounded.
"""

from benchmate.frame.flats import lowest, reversed_plane
from benchmate.measure.angle import angle_text, tenths
from benchmate.model.feature import Spot
from benchmate.model.solids import Axis, Plane


def leaning(axis: Axis, one: Spot, other: Spot, line: str | None = None) -> Plane:
    """The plane through two spots, `deep` in on an axis across; the waste lies less deep.

    Raises ValueError for spots that lie as far along as each other.
    """
    along, deep = (other.along - one.along).nm, (other.deep - one.deep).nm
    if not along:
        raise ValueError("two spots on one line across the timber make no plane along it")
    sign = 1 if along > 0 else -1
    x, lean = -sign * deep, sign * along
    normal = (x, lean, 0) if axis is Axis.FIRST else (x, 0, lean)
    return lowest(normal, x * one.along.nm + lean * one.deep.nm, line)


def towards_end(plane: Plane, *, reference: bool) -> Plane:
    """A leaning plane with its waste towards the reference end, or towards the far one."""
    return plane if (plane.normal[0] > 0) is reference else reversed_plane(plane)


def slope_setting(along: int, across: int) -> str:
    """How to set a bevel for wood cut in from a face at a slope, off square to that face."""
    return f"bevel {angle_text(tenths(across, along))} off square to the face"
