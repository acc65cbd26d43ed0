"""The hole that lets one tenon through another, in the readings of the timber it is cut in.

The mortise of the one is carried through the building into the tenon of the other. So the hole is
that mortise: as wide and as long as the tenon that goes through was cut, and no deeper. Where it
runs out of the tenon's wood it is open, and no line is struck.
"""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Span
from benchmate.joinery.tenon.carrying import carried_reading, carried_span
from benchmate.joinery.tenon.crossing import Crossing
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis, Cut, Plane, above, below

SHOULDER_SIDE, END_SIDE = "shoulder-side", "end-side"
REFERENCE_SIDE, FAR_SIDE, DEPTH = "reference-side", "far-side", "depth"


@dataclass(frozen=True, slots=True, kw_only=True)
class Hole:
    """A hole in a `tenon`, which has its own mortise `crossed`, for the tenon in mortise `stub`.

    `entry` is the long face on whose side it is cut in. `along` bounds it along the timber,
    `across` on the axis of the tenon's narrow edges, and `bottom` on that of its cheeks.
    """

    feature: str
    stub: MortiseShape
    crossed: MortiseShape
    entry: Face
    along: Span
    across: Span
    bottom: Length

    @property
    def tenon(self) -> TenonShape:
        """The tenon it is cut in."""
        return self.crossed.tenon

    @property
    def beyond(self) -> Span:
        """How far beyond the tenon's shoulder it starts and stops."""
        shoulder, (low, high) = self.tenon.shoulder, self.along
        if self.tenon.end is Face.REFERENCE_END:
            return shoulder - high, shoulder - low
        return low - shoulder, high - shoulder

    @property
    def to_end(self) -> Length:
        """The wood left between it and the tenon's end; nothing or less where it is open."""
        return self.tenon.real("length") - self.beyond[1]

    @property
    def to_edges(self) -> Span:
        """The wood left to the narrow edge on the reference side, and to the other."""
        edge, far_edge = self.tenon.edge, self.tenon.edge + self.tenon.real("width")
        return self.across[0] - edge, far_edge - self.across[1]

    @property
    def taken(self) -> tuple[Length, Length]:
        """How much of the tenon it takes, along it and across."""
        start, finish = self.beyond
        edge, far_edge = self.tenon.edge, self.tenon.edge + self.tenon.real("width")
        return (
            min(finish, self.tenon.real("length")) - start,
            min(self.across[1], far_edge) - max(self.across[0], edge),
        )

    @property
    def depth(self) -> Length:
        """How deep it goes in from the cheek on its entry's side."""
        if self.entry.is_reference:
            return self.bottom - self.tenon.near
        return self.tenon.near + self.tenon.real("thickness") - self.bottom

    @property
    def to_cheek(self) -> Length:
        """The wood left between it and the other cheek; nothing or less where it goes through."""
        return self.tenon.real("thickness") - self.depth

    @property
    def through(self) -> bool:
        """Whether it goes through both cheeks."""
        return self.to_cheek <= ZERO

    @property
    def notch(self) -> bool:
        """Whether it is open at an edge or at the end."""
        return any(wood <= ZERO for wood in (self.to_end, *self.to_edges))

    @property
    def mouths(self) -> tuple[Face, ...]:
        """The faces on whose side it comes out, its entry first."""
        return (self.entry, self.entry.opposite) if self.through else (self.entry,)

    @property
    def planes(self) -> dict[str, Plane]:
        """What bounds it within the tenon's wood, each plane by its line."""
        outwards, back = above, below
        root, tip = self.along
        if self.tenon.end is Face.REFERENCE_END:
            outwards, back, root, tip = below, above, tip, root
        bottom = below if self.entry.is_reference else above
        edges, (near, far) = self.tenon.edges, self.across
        sides = (
            (True, outwards(Axis.ALONG, root, SHOULDER_SIDE)),
            (self.to_end > ZERO, back(Axis.ALONG, tip, END_SIDE)),
            (self.to_edges[0] > ZERO, above(edges, near, REFERENCE_SIDE)),
            (self.to_edges[1] > ZERO, below(edges, far, FAR_SIDE)),
            (not self.through, bottom(self.tenon.cheeks, self.bottom, DEPTH)),
        )
        return {str(plane.line): plane for closed, plane in sides if closed}

    @property
    def cut(self) -> Cut:
        """The wood it takes."""
        return Cut(tuple(self.planes.values()))


def hole(crossing: Crossing, frame: Frame) -> Hole:
    """The hole where two tenons cross. Raises ValueError for timbers without places."""
    stub, tenon = crossing.stub, crossing.crossed.tenon
    here, there = frame.standing(stub.stick.id), frame.standing(tenon.stick.id)
    _, bottom = carried_reading(stub.into, _deepest(stub), here, there)
    return Hole(
        feature=hole_id(crossing),
        stub=stub,
        crossed=crossing.crossed,
        entry=tenon.stick.pose.face(stub.stick.pose.direction(stub.entry)),
        along=carried_span(stub.sides, stub.across, here, there).span,
        across=carried_span(Axis.ALONG, stub.along, here, there).span,
        bottom=bottom,
    )


def hole_id(crossing: Crossing) -> str:
    """What the hole is called on the timber it is cut in: `sw-foot-hole`."""
    return f"{crossing.joint.id}-hole"


def _deepest(stub: MortiseShape) -> Length:
    """Where the mortise ends: at its bottom, or at the far face."""
    if not stub.through:
        return stub.bottom
    return stub.real_into if stub.entry.is_reference else ZERO
