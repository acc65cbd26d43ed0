"""Where a tenon with a sloping shoulder lies on its real stick.

The shoulder is the plane through two points: at the top it comes to the face of the other timber,
at the underside `housing` past it. What stands on the bearing is the end as the frame counts on it,
so the slope runs from top to underside of that, whatever the stick has over.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.cheeks import SHOULDER
from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting
from benchmate.frame.reduction import Reduction
from benchmate.frame.stick_end import CheekedEnd
from benchmate.frame.tapers import leaning, towards_end
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Spot
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import across, axis_from, end_place

REFERENCE_EDGE, FAR_EDGE = ("reference-edge", "far-edge")
"""The lines of the tenon's narrow edges."""


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape(CheekedEnd):
    """A tenon with a sloping shoulder on its stick.

    `plumb` is the axis from its top to its underside, `top_is_reference` whether depths on it count
    from the top. `edge` and `far_edge` are its narrow edges, the far one struck or run out to the
    stick's own face. `over` is how much the other timber's real face stands proud of the one the
    frame counts on.
    """

    plumb: Axis
    top_is_reference: bool
    housing: Length
    over: Length
    length: Length
    edge: Length
    far_edge: Length
    far_edge_struck: bool

    @property
    def width(self) -> Length:
        """From narrow edge to narrow edge as laid out."""
        return self.far_edge - self.edge

    @property
    def deep(self) -> Length:
        """From the top of the end to its underside, as the frame counts on it."""
        return self.stick.framed(self.plumb, *self.places)

    @property
    def top(self) -> Length:
        """The reading of its top."""
        return ZERO if self.top_is_reference else self.deep

    @property
    def bottom(self) -> Length:
        """The reading of its underside."""
        return self.deep - self.top

    @property
    def recess(self) -> Length:
        """How deep the underside goes in through the real face of the other timber."""
        return self.over + self.housing

    @property
    def slope(self) -> Plane:
        """The shoulder; its waste lies beyond it."""
        spots = (Spot(self.along(ZERO), self.top), Spot(self.along(self.housing), self.bottom))
        plane = leaning(self.plumb, *spots, SHOULDER)
        return towards_end(plane, reference=self.end is Face.REFERENCE_END)

    @property
    def reduction(self) -> Reduction:
        """What the end loses on its far faces, from the other timber's real face on."""
        framed = {self.cheeks.axis: self.cheeks.framed, self.edges: self.framed_edges}
        real = {self.cheeks.axis: self.cheeks.real, self.edges: self.real_edges}
        struck = {}
        if self.cheeks.far == self.cheeks.framed:
            struck[self.cheeks.axis] = "far-cheek"
        if self.far_edge_struck and self.far_edge == self.framed_edges:
            struck[self.edges] = FAR_EDGE
        return Reduction(
            stick=self.stick,
            end=self.end,
            length=self.over,
            to={axis: at for axis, at in framed.items() if real[axis] > at},
            struck=struck,
            places=self.places,
        )

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, as they are laid out."""
        return {"thickness": self.cheeks.thickness, "width": self.width, "length": self.length}


def feature_id(joint: DiminishedTenon) -> str:
    """The id of the tenon on its own timber: `west-end-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def meeting(joint: DiminishedTenon, frame: Frame) -> Meeting:
    """How the end meets the timber that receives it."""
    (bearing,) = joint.bearings()
    return frame.meeting(bearing, at=None, inset=read_sum("0"))


def end_shape(joint: DiminishedTenon, frame: Frame) -> EndShape:
    """The tenon on its real stick.

    Lines from a reference face hold whatever the stick measures. The far edge is struck where it is
    relieved or goes by square rule; otherwise it runs out to the real face.
    """
    stick, met = frame.stick(joint.timber), meeting(joint, frame)
    end, feature = stick.pose.face(joint.end), feature_id(joint)
    places = (feature, stick.place_at(end))
    edges, up = across(met.cheeks), stick.pose.face(Direction.UP)
    struck = bool(joint.relief_far) or stick.inner is not None
    far_edge = stick.held(edges) if struck else stick.depth(edges, *places)
    (bearing,) = joint.bearings()
    return EndShape(
        stick=stick,
        end=end,
        feature=feature,
        cheek_axis=met.cheeks,
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        plumb=axis_from(up),
        top_is_reference=up.is_reference,
        housing=joint.housing,
        over=frame.recess(bearing, met),
        length=joint.length,
        edge=joint.relief_reference,
        far_edge=far_edge - joint.relief_far,
        far_edge_struck=struck,
        as_cut=stick.as_cut.get(feature, AsCut()),
    )
