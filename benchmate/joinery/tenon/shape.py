"""The tenon as it comes out on the real stick, in the stick's own readings."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting, meet
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, across, end_place


@dataclass(frozen=True, slots=True, kw_only=True)
class TenonShape:
    """Where a tenon lies on a stick, before and after it is cut.

    `near`, `far` are the cheeks on the `cheeks` axis; `edge`, `far_edge` the narrow edges on the
    `edges` axis; `far_edge_struck` is False where the tenon runs out to the stick's far face.
    """

    stick: Stick
    end: Face
    feature: str
    shoulder: Length
    length: Length
    cheeks: Axis
    edges: Axis
    near: Length
    far: Length
    edge: Length
    far_edge: Length
    far_edge_struck: bool
    real_cheeks: Length
    real_edges: Length
    as_cut: AsCut

    @property
    def width(self) -> Length:
        """From narrow edge to narrow edge as laid out."""
        return self.far_edge - self.edge

    @property
    def thickness(self) -> Length:
        """From cheek to cheek as laid out."""
        return self.far - self.near

    @property
    def places(self) -> tuple[str, ...]:
        """Where its section may have been measured, the nearest place first."""
        return (self.feature, self.stick.place_at(self.end))

    def real(self, size: str) -> Length:
        """A size as cut if it was typed, otherwise as laid out."""
        laid_out = {"thickness": self.thickness, "width": self.width, "length": self.length}
        return self.as_cut.get(size) or laid_out[size]

    def along(self, beyond: Length) -> Length:
        """The reading of a place `beyond` the shoulder, towards the tenon's end."""
        if self.end is Face.REFERENCE_END:
            return self.shoulder - beyond
        return self.shoulder + beyond


def feature_id(joint: TenonJoint) -> str:
    """The id of the tenon on its own timber: `foot-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def meeting(joint: TenonJoint, frame: Frame) -> Meeting | None:
    """How the post meets its receiving timber; None for a post that stands alone."""
    if joint.into is None or joint.at is None:
        return None
    stick = frame.stick(joint.timber)
    return meet(
        stick,
        stick.pose.face(joint.end),
        frame.stick(joint.into),
        at=frame.value(joint.at),
        inset=frame.value(joint.inset),
    )


def shape(joint: TenonJoint, frame: Frame) -> TenonShape:
    """The tenon on its real stick.

    Lines struck from a reference face hold whatever the stick measures; only what lies beyond the
    far cheek and the far edge follows the real section.
    """
    stick = frame.stick(joint.timber)
    end = stick.pose.face(joint.end)
    met = meeting(joint, frame)
    cheeks = met.cheeks if met else _axis_named(joint.cheeks_from)
    edges = across(cheeks)
    feature = feature_id(joint)
    places = (feature, stick.place_at(end))
    real_edges = stick.depth(edges, *places)
    far_cut_back = joint.far_cut_back()
    return TenonShape(
        stick=stick,
        end=end,
        feature=feature,
        shoulder=stick.body if end is Face.FAR_END else ZERO,
        length=joint.length,
        cheeks=cheeks,
        edges=edges,
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        edge=joint.reference_cut_back(),
        far_edge=stick.drawn(edges) - far_cut_back if far_cut_back else real_edges,
        far_edge_struck=bool(far_cut_back),
        real_cheeks=stick.depth(cheeks, *places),
        real_edges=real_edges,
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def _axis_named(cheeks_from: str | None) -> Axis:
    return Axis.SECOND if cheeks_from == "second" else Axis.FIRST
