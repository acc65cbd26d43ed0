"""Where a joist's mortise lies in the beam's side, cut to the tenon as it came out."""

from dataclasses import dataclass

from benchmate.frame.flats import leaning
from benchmate.frame.frame import Frame
from benchmate.frame.housing import Housing, housing_for
from benchmate.frame.meeting import Meeting, Span
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.joinery.joist_tenon.shape import EndShape, meeting
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, across, axis_from

START, FINISH, UPPER, LOWER, TUSK_SIDE, DEPTH, TOP, HAUNCH_FLOOR, TUSK_FLOOR = (
    "start",
    "finish",
    "upper-side",
    "lower-side",
    "tusk-side",
    "depth",
    "haunch-top",
    "haunch-floor",
    "tusk-floor",
)
"""The lines in the beam."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleShape:
    """The mortise with the recesses above and below it, in the beam's own readings.

    All of it is as wide `along` as the tenon. `top`, `upper`, `lower` and `lowest` are where the
    joist's top, the tenon's two cheeks and the underside of all that goes in come on the `plumb`
    axis; `housing` is what takes the whole end where the beam is over its size.
    """

    stick: Stick
    feature: str
    joist: EndShape
    housing: Housing
    along: Span
    top: Length
    upper: Length
    lower: Length
    lowest: Length
    clearance: Length

    @property
    def entry(self) -> Face:
        """The face the tenon goes in by."""
        return self.housing.entry

    @property
    def into(self) -> Axis:
        """The axis the mortise is cut down on."""
        return axis_from(self.entry)

    @property
    def plumb(self) -> Axis:
        """The axis its upper and lower sides are measured on."""
        return across(self.into)

    @property
    def downwards(self) -> bool:
        """Whether readings on the plumb axis grow from the top."""
        return self.beam_top.is_reference

    @property
    def beam_top(self) -> Face:
        """The beam's upper face."""
        return self.stick.pose.face(Direction.UP)

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the seat."""
        return self.joist.real("length") + self.clearance

    @property
    def left_behind(self) -> Length:
        """The wood left between its bottom and the face across from the entry."""
        real = self.stick.depth(self.into, self.feature)
        return real - self.housing.recess - self.depth

    @property
    def left_below(self) -> Length:
        """The wood left in the beam under all that goes in."""
        return self.stick.in_from(self.beam_top.opposite, self.lowest, self.feature)

    @property
    def left_above(self) -> Length:
        """The wood left in the beam over the tenon itself."""
        return self.from_top(self.upper)

    @property
    def below_top(self) -> Length:
        """How far the joist's top lies below the beam's real top: below nothing if it is proud."""
        return self.from_top(self.top)

    def from_top(self, at: Length) -> Length:
        """How far a place lies below the beam's real top."""
        return self.stick.in_from(self.beam_top, at, self.feature)

    @property
    def haunch_floor(self) -> Plane:
        """The floor that the haunch lies on, its waste towards the entry."""
        seat, lean = self.housing.seat, self.housing.inside(self.joist.part.haunch)
        axes = (self.into, self.plumb)
        return leaning(axes, (seat, self.top), (lean, self.upper), (seat, self.upper), HAUNCH_FLOOR)


def hole_shape(joint: SoffitTenon | TuskTenon, joist: EndShape, frame: Frame) -> HoleShape:
    """The mortise for a joist's tenon: held to its upper cheek, sized to the tenon as cut."""
    met, stick, part = meeting(joint, frame), frame.stick(joint.into), joist.part
    clearance = joint.bottom_clearance
    return HoleShape(
        stick=stick,
        feature=joint.mortise,
        joist=joist,
        housing=housing_for(joist.guest, met, stick, joint.mortise),
        along=met.along_span(ZERO, joist.real("width")),
        top=_level(met, ZERO),
        upper=_level(met, part.near),
        lower=_level(met, part.near + joist.real("thickness")),
        lowest=_level(met, part.lowest if part.tusk else part.near + joist.real("thickness")),
        clearance=frame.project.practice.bottom_clearance if clearance is None else clearance,
    )


def _level(met: Meeting, deep: Length) -> Length:
    """A depth below the joist's top, on the beam's plumb axis."""
    return met.inset + deep if met.same_side else met.inset - deep
