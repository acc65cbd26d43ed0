"""Where a mortise and its housing lie on the real stick that receives a tenon."""

from dataclasses import dataclass

from benchmate.frame.meeting import Meeting, Span
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick


@dataclass(frozen=True, slots=True, kw_only=True)
class MortiseShape:
    """A mortise in the receiving stick, in that stick's own readings.

    `along`, `across` bound the mortise; `end_along`, `end_across` the whole end of the tenoned
    timber, which is also what a housing takes. `seat` is the reading the shoulder bears at on the
    `into` axis, and `recess` how deep that lies below the real face. `held` is the side line the
    tenon's set-back holds; the other follows the tenon's thickness. One whose tenon goes through
    has neither a bottom nor a clearance.
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

    @property
    def housed(self) -> bool:
        """Whether there is a recess to cut before the mortise."""
        return self.recess > ZERO

    @property
    def through(self) -> bool:
        """Whether it is open at the face across from its entry too."""
        return self.tenon.passage is not None

    @property
    def mouths(self) -> tuple[Face, ...]:
        """The faces it comes out on, its entry first."""
        return (self.entry, self.entry.opposite) if self.through else (self.entry,)

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
    feature: str, tenon: TenonShape, meeting: Meeting, stick: Stick, clearance: Length
) -> MortiseShape:
    """The mortise for a tenon: held to the tenon's reference side, sized to the tenon as cut."""
    real_into = stick.depth(meeting.into, feature)
    reference = meeting.entry.is_reference
    return MortiseShape(
        stick=stick,
        feature=feature,
        tenon=tenon,
        entry=meeting.entry,
        into=meeting.into,
        sides=meeting.across,
        along=meeting.along_span(tenon.edge, tenon.edge + tenon.real("width")),
        across=meeting.across_span(tenon.near, tenon.near + tenon.real("thickness")),
        end_along=meeting.along_span(ZERO, tenon.framed_edges),
        end_across=meeting.across_span(ZERO, tenon.framed_cheeks),
        seat=tenon.recess if reference else real_into - tenon.recess,
        recess=tenon.recess,
        length=tenon.real("length"),
        clearance=clearance,
        real_into=real_into,
        drawn_into=stick.drawn(meeting.into),
        real_sides=stick.depth(meeting.across, feature),
        framed_sides=stick.framed(meeting.across, feature),
        held="near-side" if meeting.same_side else "far-side",
    )
