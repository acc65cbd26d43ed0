"""How far a slanting end reaches beyond its shoulder along its own timber.

A tenon measured square to the face it enters is longer along the timber that rakes, and shorter
where its nose is cut off. The stick has to hold the farthest tip.
"""

from fractions import Fraction

from benchmate.frame.flats import along_at, nearest
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Pose
from benchmate.model.solids import Axis, Plane


def plumb_axis(pose: Pose) -> Axis:
    """The axis across a timber that turns up with it when it rakes, or that is plumb if level."""
    return Axis.FIRST if pose.first in (Direction.UP, Direction.DOWN) else Axis.SECOND


def slopes(plane: Plane, axis: Axis) -> tuple[int, int]:
    """A plane's normal along the timber and across it on one axis."""
    x, *across = plane.normal
    return x, across[0] if axis is Axis.FIRST else across[1]


def nose_plane(plane: Plane, axis: Axis, shoulder: Length, line: str | None = None) -> Plane:
    """The plane square to another through the reference edge at a shoulder.

    Its waste lies to the side of the reference edge.
    """
    along, across = slopes(plane, axis)
    if along < 0:
        along, across = -along, -across
    x, deep = -across, along
    normal = (x, deep, 0) if axis is Axis.FIRST else (x, 0, deep)
    return Plane(normal, x * shoulder.nm, line)


def crossing(one: Plane, other: Plane, axis: Axis) -> tuple[Length, Length]:
    """Where two slanting planes cross: along the timber, and in on an axis across; each rounded.

    Raises ZeroDivisionError for planes that are parallel.
    """
    (a, b), (c, d) = slopes(one, axis), slopes(other, axis)
    whole = a * d - b * c
    along = Fraction(one.offset * d - other.offset * b, whole)
    deep = Fraction(a * other.offset - c * one.offset, whole)
    return _rounded(along), _rounded(deep)


def _rounded(value: Fraction) -> Length:
    return Length(nearest(value.numerator, value.denominator))


def reach(
    end: Plane, axis: Axis, deep: Length, shoulder: Length, *, outward: int, nosed: bool
) -> Length:
    """From the shoulder to the tip of an end, `outward` 1 or -1 along the timber's readings.

    `deep` is how deep the end is on the axis; nothing for an end that lies short of its shoulder.
    """
    first = (
        crossing(end, nose_plane(end, axis, shoulder), axis)[0]
        if nosed
        else along_at(end, axis, ZERO)
    )
    tips = (first, along_at(end, axis, deep))
    return max(ZERO, *(outward * (tip - shoulder) for tip in tips))
