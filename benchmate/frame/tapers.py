"""Planes that lean on a timber by two figures, and how to set a bevel for them.

A tail, a wedge or a diminished housing is laid out as a framer does it: from one point to another,
each so far along and so far in. The plane through both is kept whole; nothing is rounded.
"""

from benchmate.frame.flats import leaning as through_points
from benchmate.frame.flats import reversed_plane
from benchmate.measure.angle import tenths
from benchmate.measure.length import Length
from benchmate.model.feature import Spot
from benchmate.model.setting import Setting
from benchmate.model.solids import Axis, Plane


def leaning(axis: Axis, one: Spot, other: Spot, line: str | None = None) -> Plane:
    """The plane through two spots, `deep` in on an axis across; the waste lies less deep.

    Raises ValueError for spots that lie as far along as each other.
    """
    start, finish = (one.along, one.deep), (other.along, other.deep)
    above = (one.along, one.deep - Length(1))
    return through_points((Axis.ALONG, axis), start, finish, above, line)


def towards_end(plane: Plane, *, reference: bool) -> Plane:
    """A leaning plane with its waste towards the reference end, or towards the far one."""
    return plane if (plane.normal[0] > 0) is reference else reversed_plane(plane)


def slope_setting(along: int, across: int) -> Setting:
    """How to set a bevel for wood cut in from a face at a slope, off square to that face."""
    return Setting(off_square=tenths(across, along), bevel=True)
