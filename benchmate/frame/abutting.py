"""How an end of a raking timber abuts in a notch: where its toe is, and which way its front looks.

How it works
1. Cut to the face it enters, an end reaches out farther on one edge than on the other. Where the
   edge that reaches farther meets the face is its toe, where the other does its heel. The thrust
   goes to the toe. Of two edges that reach equally far the reference edge has the toe.
2. The abutment goes in from the toe, and is the front of notch and tenon alike. It is square to the
   face, square to the rake, or half-way between. The sole goes from where the abutment is as deep
   as the notch back to the heel.
3. All planes are in the raking timber's own readings, and what lies behind each is beyond the end.
"""

from dataclasses import dataclass

from benchmate.frame.flats import Flat, along_at, built, carried, lowest, shifted, through_spot
from benchmate.frame.place import Place, Point, Way
from benchmate.frame.reach import crossing, slopes
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Spot
from benchmate.model.solids import Axis, Plane
from benchmate.model.work import Front


@dataclass(frozen=True, slots=True, kw_only=True)
class Foothold:
    """Where an end stands on the `face` it enters, before anything is let in.

    `plumb` is the axis across that turns up with the timber, `outward` 1 or -1 along its readings.
    `face` passes through the shoulder.
    """

    plumb: Axis
    outward: int
    face: Plane
    toe: Spot
    heel: Spot

    @property
    def shoulder(self) -> Length:
        """Where its reference edge meets the face."""
        return self.toe.along if self.toe.deep == ZERO else self.heel.along

    @property
    def heel_edge(self) -> Plane:
        """The edge with the heel, as a plane along the timber."""
        return Plane(self.plumb.value, self.heel.deep.nm)


def foothold(face: Plane, plumb: Axis, deep: Length, shoulder: Length, *, outward: int) -> Foothold:
    """Where an end so deep stands on the plane of a face that meets its edge at the shoulder.

    Raises ZeroDivisionError for a face that runs along the timber.
    """
    held = through_spot(face, plumb, shoulder, ZERO)
    reference, far = Spot(shoulder, ZERO), Spot(along_at(held, plumb, deep), deep)
    first = outward * (far.along - shoulder) <= ZERO
    toe, heel = (reference, far) if first else (far, reference)
    return Foothold(plumb=plumb, outward=outward, face=held, toe=toe, heel=heel)


def abutment_plane(
    stands: Foothold, looks: Front, here: Place, there: Place, line: str | None = None
) -> Plane:
    """The front of an end that stands `here` in a timber that stands `there`, through its toe."""
    back = _turned(here.ways[0], -stands.outward)
    inward = _towards(there.ways[0], _to_heel(stands, here))
    normal = {
        "square to the face": inward.steps,
        "square to the rake": back.steps,
        "bisecting": _half_way(inward, back),
    }[looks]
    plane = carried(Flat(normal, 0), here, line)
    return through_spot(plane, stands.plumb, *stands.toe)


def notch_bottom(stands: Foothold, abutment: Plane, notch: Length) -> Spot | None:
    """Where the abutment is as deep as the notch; None where it leaves the timber before that."""
    if parallel(abutment, stands.face, stands.plumb):
        return None
    found = abutment_at(stands, abutment, notch)
    deep = abs(stands.heel.deep - stands.toe.deep)
    return found if abs(found.deep - stands.toe.deep) < deep else None


def abutment_at(stands: Foothold, abutment: Plane, deep: Length) -> Spot:
    """Where an abutment is so deep in. Raises ZeroDivisionError for one along the face."""
    return Spot(*crossing(abutment, shifted(stands.face, -deep), stands.plumb))


def sole_plane(stands: Foothold, bottom: Spot, line: str | None = None) -> Plane:
    """The plane from the bottom of the notch back to the heel."""
    along, deep = stands.heel.along - bottom.along, stands.heel.deep - bottom.deep
    x, across = deep.nm, -along.nm
    if x * stands.outward > 0:
        x, across = -x, -across
    normal = (x, across, 0) if stands.plumb is Axis.FIRST else (x, 0, across)
    return through_spot(lowest(normal, 0, line), stands.plumb, *bottom)


def abutting_reach(stands: Foothold, abutment: Plane, tip: Plane) -> Length:
    """From the shoulder to what reaches farthest: the toe, or one of the tenon's two corners."""
    corners = [
        crossing(tip, edge, stands.plumb)
        for edge in (abutment, stands.heel_edge)
        if not parallel(tip, edge, stands.plumb)
    ]
    alongs = (stands.toe.along, *(along for along, _ in corners))
    return max(ZERO, *(stands.outward * (along - stands.shoulder) for along in alongs))


def carried_over(plane: Plane, here: Place, there: Place) -> Plane:
    """A plane of one timber in another one's readings, its waste where it was in the building."""
    return carried(built(plane, here), there, plane.line)


def parallel(one: Plane, other: Plane, axis: Axis) -> bool:
    """Whether two planes never cross in the plane of an axis."""
    (a, b), (c, d) = slopes(one, axis), slopes(other, axis)
    return a * d == b * c


def _to_heel(stands: Foothold, here: Place) -> Point:
    """The direction across the timber from the edge with the toe to the one with the heel."""
    way = here.ways[1 if stands.plumb is Axis.FIRST else 2]
    return _turned(way, 1 if stands.toe.deep == ZERO else -1).steps


def _turned(way: Way, sense: int) -> Way:
    east, north, up = (sense * step for step in way.steps)
    return Way((east, north, up), way.whole)


def _towards(way: Way, direction: Point) -> Way:
    """A way or its opposite, whichever goes with a direction."""
    ahead = sum(a * b for a, b in zip(way.steps, direction, strict=True))
    return _turned(way, 1 if ahead > 0 else -1)


def _half_way(one: Way, other: Way) -> Point:
    """The direction that halves the angle between two."""
    east, north, up = (
        a * other.whole + b * one.whole for a, b in zip(one.steps, other.steps, strict=True)
    )
    return east, north, up
