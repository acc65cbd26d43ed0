"""Where a mortise and its housing lie on the real stick that receives a tenon."""

from dataclasses import dataclass
from typing import Literal, NamedTuple

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Meeting, Span
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import Passage, TenonShape, meeting
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.floors import Floor, Floors, floor_at
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick

TenonSize = Literal["thickness", "width"]
"""A size of the tenon across itself, which a mortise takes over."""


class Past(NamedTuple):
    """The timber a tenon goes through before it comes to a mortise, and the face it leaves it by.

    `inside` is how far that face lies within the stick with the mortise: below nothing if clear.
    """

    name: str
    face: str
    inside: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class MortiseShape:
    """A mortise in the receiving stick, in that stick's own readings.

    `along`, `across` bound the mortise and are as long as the sizes of the tenon that they follow;
    `end_along`, `end_across` bound the whole end of the tenoned timber, which is also what a
    housing takes. `seat` is the reading the shoulder bears at on the `into` axis, and `recess` how
    deep that lies below the real face. `held` is the side line the tenon's set-back holds; the
    other follows the tenon's size. One that the tenon goes through has a `passage`, and neither a
    bottom nor a clearance.

    One that the tenon comes to `past` another timber has its `seat` at the real face it enters,
    where no shoulder bears, and `length` is how far the tenon goes in from there. Of the `floors`
    that other joints leave on its stick, those over its mouths are where its depths count from.
    """

    stick: Stick
    feature: str
    tenon: TenonShape
    entry: Face
    into: Axis
    sides: Axis
    along: Span
    across: Span
    end_along: Span
    end_across: Span
    seat: Length
    recess: Length
    length: Length
    clearance: Length
    real_into: Length
    drawn_into: Length
    real_sides: Length
    framed_sides: Length
    held: str
    passage: Passage | None
    past: Past | None = None
    floors: Floors = ()
    along_follows: TenonSize = "width"
    across_follows: TenonSize = "thickness"

    @property
    def housed(self) -> bool:
        """Whether there is a recess to cut before the mortise."""
        return self.recess > ZERO

    @property
    def through(self) -> bool:
        """Whether it is open at the face across from its entry too."""
        return self.passage is not None

    @property
    def mouths(self) -> tuple[Face, ...]:
        """The faces it comes out on, its entry first."""
        return (self.entry, self.entry.opposite) if self.through else (self.entry,)

    def floor(self, face: Face) -> Floor | None:
        """The floor of another joint that it opens on at one of its mouths; None for a face.

        Where a shoulder bears there is to be a face: a floor in its place is followed by nothing.
        """
        if face is self.entry and self.past is None:
            return None
        return floor_at(self.floors, self.stick.id, self.feature, face)

    @property
    def followed(self) -> Floors:
        """The floors that its figures follow: all that are left at mouths where none bears."""
        faces = [face for face in self.mouths if self.floor(face)]
        own = (self.stick.id, self.feature)
        return tuple(
            each for each in self.floors if each.face in faces and (each.timber, each.under) == own
        )

    def cut_back(self, face: Face) -> Length:
        """How much of the wood the tenon passes has gone at one of the mouths."""
        floor = self.floor(face)
        if floor is None:
            return ZERO
        if face is self.entry:
            return abs(floor.at - self.seat)
        return self.real_into - floor.at if self.entry.is_reference else floor.at

    @property
    def down(self) -> Length:
        """How deep its bottom lies below the floor it opens on, or below the seat."""
        return self.depth - self.cut_back(self.entry)

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the seat."""
        return self.length + self.clearance

    @property
    def bottom(self) -> Length:
        """The reading of the mortise's bottom on the `into` axis."""
        return self.seat + self.depth if self.entry.is_reference else self.seat - self.depth

    @property
    def left_below(self) -> Length:
        """The wood left between the bottom and the face across from the entry."""
        return self.real_into - self.bottom if self.entry.is_reference else self.bottom

    @property
    def relish(self) -> tuple[Length, Face]:
        """The wood left to the nearer end of the stick, and which end that is."""
        near = self.along[0] - self.stick.start
        far = self.stick.finish - self.along[1]
        return (near, Face.REFERENCE_END) if near <= far else (far, Face.FAR_END)


def mortise_shape(
    feature: str, tenon: TenonShape, met: Meeting, stick: Stick, clearance: Length
) -> MortiseShape:
    """The mortise for a tenon: held to the tenon's reference side, sized to the tenon as cut."""
    real_into = stick.depth(met.into, feature)
    reference = met.entry.is_reference
    return MortiseShape(
        stick=stick,
        feature=feature,
        tenon=tenon,
        entry=met.entry,
        into=met.into,
        sides=met.across,
        along=met.along_span(tenon.edge, tenon.edge + tenon.real("width")),
        across=met.across_span(tenon.near, tenon.near + tenon.real("thickness")),
        end_along=met.along_span(ZERO, tenon.framed_edges),
        end_across=met.across_span(ZERO, tenon.framed_cheeks),
        seat=tenon.recess if reference else real_into - tenon.recess,
        recess=tenon.recess,
        length=tenon.real("length"),
        clearance=clearance,
        real_into=real_into,
        drawn_into=stick.drawn(met.into),
        real_sides=stick.depth(met.across, feature),
        framed_sides=stick.framed(met.across, feature),
        held="near-side" if met.same_side else "far-side",
        passage=tenon.passage,
    )


def mortise_of(joint: TenonJoint, tenon: TenonShape, frame: Frame) -> MortiseShape | None:
    """The mortise for a joint's tenon; None for one that stands alone."""
    met = meeting(joint, frame)
    if met is None or joint.into is None:
        return None
    clearance = bottom_clearance(joint, frame)
    return mortise_shape(joint.mortise, tenon, met, frame.stick(joint.into), clearance)


def bottom_clearance(joint: TenonJoint, frame: Frame) -> Length:
    """How much deeper than its tenon a mortise is: the joint's own, or the shop's."""
    own = joint.bottom_clearance
    return frame.project.practice.bottom_clearance if own is None else own
