"""Where a brace's end and its mortise lie on the real sticks.

How it works
1. The brace's end is settled in the building: the face it enters, the seat `housing` behind that
   face, the tip of the tenon a `length` further, and the nose square to them all, through the point
   where the long edge meets the face.
2. Each plane is carried into the brace, where it slants, and into the receiving timber, where it is
   square. So the two sides cannot disagree, whatever the legs.
"""

from dataclasses import dataclass

from benchmate.frame.flats import along_at, built, carried, shifted
from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Span
from benchmate.frame.rake import Rake, root
from benchmate.frame.raking_hole import EASE, RakingHole, across_receiver, along_receiver
from benchmate.frame.raking_tenon import RakingTenon
from benchmate.frame.reach import crossing, nose_plane, plumb_axis
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import across, axis_from, end_place

SHOULDER, NOSE, SEAT, TIP = (
    "shoulder",
    "nose",
    "seat",
    "tenon-end",
)
"""The lines on the brace."""


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape(RakingTenon):
    """A brace's end on its real stick.

    `plumb` is the axis in from the long edge, `cheeks` the one across. Of its slanting planes,
    `face` is the receiving timber's face as the frame counts on it, `outside` the same where that
    stick is `over` its size, `seat` where the shoulder bears, `tip` the tenon's end, `nose` square
    to them all; what lies behind each is beyond it.
    """

    rake: Rake
    face: Plane
    seat: Plane
    tip: Plane
    nose: Plane
    nose_in: Length
    over: Length
    housing: Length
    upright: bool

    @property
    def abutment(self) -> Plane:
        """Where the end stops beside a nose that is set in: at the face as it really is."""
        return self.outside if self.over else self.face

    @property
    def beside_nose(self) -> Length:
        """How much is cut off along the abutment, from the long edge to a nose that is set in.

        Nothing where the nose line comes out on the long edge before it gets there.
        """
        along, deep = crossing(self.abutment, self.nose, self.plumb)
        if not self.nose_in or deep <= ZERO:
            return ZERO
        edge = along_at(self.abutment, self.plumb, ZERO)
        return _apart((along - edge, deep))

    @property
    def sawn_at_face(self) -> bool:
        """Whether some of the end stops at the face line, so that it is sawn there."""
        return not self.housing or (bool(self.beside_nose) and not self.over)

    @property
    def foot_length(self) -> Length:
        """How long the end stands on the face, from the long edge to the short one."""
        along, deep = crossing(self.face, _edge(self.plumb, self.deep), self.plumb)
        return _apart((along - self.shoulder, deep))

    @property
    def left_at_nose(self) -> Length:
        """How much of the tenon is left at its tip, from the nose to the short edge."""
        near = crossing(self.tip, self.nose, self.plumb)
        short = crossing(self.tip, _edge(self.plumb, self.deep), self.plumb)
        gap = _apart((short[0] - near[0], short[1] - near[1]))
        return gap if near[1] <= self.deep else -gap


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleShape(RakingHole):
    """The mortise and housing in the receiving stick, in that stick's own readings.

    `nose` and `heel` bound both along the grain; `nosed_first` tells whether the nose lies nearer
    to the reference end. `across` bounds the mortise and `end_across` the whole brace. `seat` is
    where the shoulder bears, `recess` how deep that lies below the real face.
    """

    tenon: EndShape
    nose: Length
    heel: Length
    nosed_first: bool
    ease: Length
    seat: Length
    recess: Length
    clearance: Length

    @property
    def along(self) -> Span:
        """From start to finish along the grain."""
        return (self.nose, self.heel) if self.nosed_first else (self.heel, self.nose)

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the seat."""
        return self.tenon.real("length") + self.clearance

    @property
    def bottom(self) -> Length:
        """The reading of the mortise's bottom."""
        return self.seat + self.depth if self.entry.is_reference else self.seat - self.depth

    @property
    def left_below(self) -> Length:
        """The wood left between the bottom and the face across from the entry."""
        return self.stick.in_from(self.entry.opposite, self.bottom, self.feature)


def feature_id(joint: BraceJoint) -> str:
    """The id of the brace's end: `foot-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def end_shape(joint: BraceJoint, frame: Frame) -> EndShape:
    """The brace's end, as its real stick and the receiving one give it."""
    stick, place = frame.stick(joint.timber), frame.standing(joint.timber)
    (bearing,) = joint.bearings()
    entry, into = frame.entry(bearing), frame.wood(joint.into)
    flat = frame.face(joint.into, entry, joint.mortise)
    over = into.over_on(entry, joint.mortise)
    end = stick.pose.end(joint.end)
    plumb, feature = plumb_axis(stick.pose), feature_id(joint)
    places = (feature, stick.place_at(end))
    face = carried(flat, place, SHOULDER)
    nose = nose_plane(face, plumb, stick.shoulder(end), NOSE)
    return EndShape(
        stick=stick,
        end=end,
        feature=feature,
        rake=frame.rake(joint.timber),
        plumb=plumb,
        face=face,
        outside=carried(flat.moved(over), place, "reduction-stop"),
        seat=carried(flat.moved(-joint.housing), place, SEAT if joint.housing else SHOULDER),
        tip=carried(flat.moved(-joint.housing - joint.length), place, TIP),
        nose=shifted(nose, joint.nose),
        nose_in=joint.nose,
        over=over,
        housing=joint.housing,
        length=joint.length,
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        deep=stick.framed(plumb, *places),
        wide=stick.framed(across(plumb), *places),
        upright=into.pose.reference_end in (Direction.UP, Direction.DOWN),
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def hole_shape(joint: BraceJoint, brace: EndShape, frame: Frame) -> HoleShape:
    """The mortise for a brace's end, cut to the tenon as it came out."""
    stick, place = frame.stick(joint.into), frame.standing(joint.into)
    here = frame.standing(joint.timber)
    (bearing,) = joint.bearings()
    entry = frame.entry(bearing)
    nose = Length(_square_at(carried(built(brace.nose, here), place)))
    heel_at = along_at(brace.outside, brace.plumb, brace.deep)
    heel = along_receiver(place, here, brace, heel_at, brace.deep)
    first = nose <= heel
    ease = EASE[frame.project.bare] if joint.ease is None else joint.ease
    over = stick.over_on(entry, joint.mortise)
    recess, into = joint.housing + over, axis_from(entry)
    clearance = joint.bottom_clearance
    sides = across(into)
    thick = brace.real("thickness")
    span, same = across_receiver(place, here, brace, (brace.near, brace.near + thick), sides)
    return HoleShape(
        stick=stick,
        feature=joint.mortise,
        tenon=brace,
        entry=entry,
        nose=nose,
        heel=heel + ease if first else heel - ease,
        nosed_first=first,
        ease=ease,
        across=span,
        end_across=across_receiver(place, here, brace, (ZERO, brace.wide), sides)[0],
        same_side=same,
        seat=stick.in_from(entry, recess, joint.mortise),
        recess=recess,
        clearance=frame.project.practice.bottom_clearance if clearance is None else clearance,
    )


def _edge(axis: Axis, deep: Length) -> Plane:
    return Plane(axis.value, deep.nm)


def _apart(gap: tuple[Length, Length]) -> Length:
    return Length(root(gap[0].nm ** 2 + gap[1].nm ** 2))


def _square_at(plane: Plane) -> int:
    """Where a plane square to the grain crosses its timber."""
    return plane.offset * plane.normal[0]
