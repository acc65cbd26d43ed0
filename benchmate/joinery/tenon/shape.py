"""The tenon as it comes out on the real stick, in the stick's own readings."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.frame.cheeks import Cheeks
from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting
from benchmate.frame.reduction import Reduction, reduction
from benchmate.frame.stick_end import StickEnd
from benchmate.frame.through import exit_face, wood_passed
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis
from benchmate.model.stick import across, end_place


class Passage(NamedTuple):
    """The wood a tenon that goes through passes, to a face in words, and what it is held short."""

    wood: Length
    face: str
    held_short: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class TenonShape(StickEnd):
    """Where a tenon lies on a stick, before and after it is cut.

    `near`, `far` are the cheeks on the `cheeks` axis; `edge`, `far_edge` the narrow edges on the
    `edges` axis; `far_edge_struck` is False where the tenon runs out to the stick's far face.
    `recess` is how deep the end goes in through the real face of the receiving timber; a tenon that
    goes right through it has a `passage`, and one that goes on into another says which: `goes_on`.
    """

    length: Length
    cheeks: Axis
    edges: Axis
    near: Length
    far: Length
    edge: Length
    far_edge: Length
    far_edge_struck: bool
    recess: Length
    passage: Passage | None
    goes_on: str = ""

    @property
    def between(self) -> Cheeks:
        """Its two cheeks, which are those of any tenon."""
        return self.cheeks_at(self.cheeks, self.near, self.far)

    @property
    def width(self) -> Length:
        """From narrow edge to narrow edge as laid out."""
        return self.far_edge - self.edge

    @property
    def thickness(self) -> Length:
        """From cheek to cheek as laid out."""
        return self.far - self.near

    @property
    def real_cheeks(self) -> Length:
        """The real depth of the stick across the cheeks."""
        return self.stick.depth(self.cheeks, *self.places)

    @property
    def real_edges(self) -> Length:
        """The real depth of the stick from narrow edge to narrow edge."""
        return self.stick.depth(self.edges, *self.places)

    @property
    def framed_cheeks(self) -> Length:
        """How deep its shoulder is across the cheeks, as the frame counts on it."""
        return self.stick.framed(self.cheeks, *self.places)

    @property
    def framed_edges(self) -> Length:
        """How deep its shoulder is from narrow edge to narrow edge, as the frame counts on it."""
        return self.stick.framed(self.edges, *self.places)

    @property
    def reduction(self) -> Reduction:
        """What the end loses on its far faces so that it goes into its recess."""
        to = {self.cheeks: self.framed_cheeks, self.edges: self.framed_edges}
        struck = {}
        if self.far == self.framed_cheeks:
            struck[self.cheeks] = "far-cheek"
        if self.far_edge_struck and self.far_edge == self.framed_edges:
            struck[self.edges] = "far-edge"
        return reduction(self.stick, self.end, self.recess, to, places=self.places, struck=struck)

    @property
    def laid_out(self) -> Mapping[str, Length]:
        """The sizes that are typed once it is cut, as they are laid out."""
        return {"thickness": self.thickness, "width": self.width, "length": self.length}


def feature_id(joint: TenonJoint) -> str:
    """The id of the tenon on its own timber: `foot-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def meeting(joint: TenonJoint, frame: Frame) -> Meeting | None:
    """How the timber meets the one that receives it; None for one that stands alone."""
    bearing = next(iter(joint.bearings()), None)
    return bearing and frame.meeting(bearing, at=joint.at, inset=joint.inset)


def shape(joint: TenonJoint, frame: Frame) -> TenonShape:
    """The tenon on its real stick.

    Lines struck from a reference face hold whatever the stick measures; only what lies beyond the
    far cheek and the far edge follows the real section. Under square rule the far edge is struck
    too, at the inner timber.
    """
    stick = frame.stick(joint.timber)
    end = stick.pose.end(joint.end)
    met = meeting(joint, frame)
    cheeks = met.cheeks if met else _axis_named(joint.cheeks_from)
    edges = across(cheeks)
    passage = _passage(joint, frame)
    feature = feature_id(joint)
    places = (feature, stick.place_at(end))
    far_cut_back = joint.far_cut_back()
    struck = bool(far_cut_back) or stick.inner is not None
    return TenonShape(
        stick=stick,
        end=end,
        feature=feature,
        length=_length(joint, passage),
        cheeks=cheeks,
        edges=edges,
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        edge=joint.reference_cut_back(),
        far_edge=(stick.held(edges) if struck else stick.depth(edges, *places)) - far_cut_back,
        far_edge_struck=struck,
        recess=frame.recess(joint.bearings()[0], met) if met else joint.housing,
        passage=passage,
        goes_on="" if joint.beyond is None else frame.wood(joint.beyond).name,
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def _axis_named(cheeks_from: str | None) -> Axis:
    return Axis.SECOND if cheeks_from == "second" else Axis.FIRST


def _passage(joint: TenonJoint, frame: Frame) -> Passage | None:
    """How a tenon goes through the timber that receives it; None for one that stops inside."""
    if not joint.through:
        return None
    (bearing,) = joint.bearings()
    wood = frame.wood(bearing.into)
    face = f"{wood.name}'s {wood.pose.words(exit_face(wood, bearing))}"
    held_short = ZERO if joint.beyond else joint.held_short
    return Passage(wood_passed(wood, bearing), face, held_short)


def _length(joint: TenonJoint, passage: Passage | None) -> Length:
    """A tenon's length as given, or all the wood it passes and as far as it ends past that."""
    if joint.length is not None:
        return joint.length
    if passage is None:
        raise ValueError(f"{joint.id} has neither a length nor anything to go through")
    return passage.wood + joint.past_the_wood
