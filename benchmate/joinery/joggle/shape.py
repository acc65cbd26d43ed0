"""Where an abutting end and its notch lie on the real sticks.

How it works
1. The end is settled in its own stick: the face it enters, the abutment through the toe, the sole
   from the notch's bottom to the heel, and the tenon's tip parallel to the face.
2. The same planes are carried into the receiving timber, where they bound the notch. Only what is
   square to that timber is its own: the walls, the mortise's sides, its back end and its bottom.
3. An end that cannot be let in so deep has no sole, which is a stop. Its lines then stand as those
   of a shallow notch would, with their figures withheld, so that its steps keep their names.
"""

from dataclasses import dataclass, replace

from benchmate.frame.abutting import (
    Foothold,
    abutment_at,
    abutment_plane,
    carried_over,
    foothold,
    notch_bottom,
    sole_plane,
)
from benchmate.frame.flats import along_at, carried, reversed_plane, shifted
from benchmate.frame.frame import Frame
from benchmate.frame.place import Place
from benchmate.frame.rake import Rake, root
from benchmate.frame.raking_hole import EASE, RakingHole, across_receiver, along_receiver
from benchmate.frame.raking_tenon import RakingTenon
from benchmate.frame.reach import crossing, plumb_axis
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Spot
from benchmate.model.progress import AsCut
from benchmate.model.project import Timber
from benchmate.model.solids import Plane
from benchmate.model.stick import across, axis_from, end_place
from benchmate.model.work import Front

SHOULDER, ABUTMENT, SOLE, TIP = ("shoulder", "abutment", "sole", "tenon-end")
"""The lines on the end; those of the notch go by the same names."""


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape(RakingTenon):
    """An abutting end on its real stick.

    `stands` is where it stands on the face it enters, which the receiving stick may be `over`.
    Its front is the `abutment`, which `looks` as the framer chose and meets the `sole` at `bottom`;
    `tip` is the tenon's end. `fits` tells whether the end can be let in so deep.
    """

    rake: Rake
    into: Timber
    looks: Front
    stands: Foothold
    abutment: Plane
    bottom: Spot
    sole: Plane
    tip: Plane
    notch: Length
    over: Length
    fits: bool

    @property
    def foot_length(self) -> Length:
        """How long the end stands on the face, from toe to heel."""
        return apart(self.stands.toe, self.stands.heel)

    @property
    def abutment_length(self) -> Length:
        """How long the abutment is, from the toe to the sole."""
        return apart(self.stands.toe, self.bottom)

    @property
    def sole_length(self) -> Length:
        """How long the sole is, from the abutment to the heel."""
        return apart(self.bottom, self.stands.heel)

    @property
    def front(self) -> Spot:
        """Where the tenon's front, which is the abutment gone on, meets its end."""
        return Spot(*crossing(self.abutment, self.tip, self.plumb))

    @property
    def left_at_tip(self) -> Length:
        """How much of the tenon is left at its end, from the front to the edge with the heel."""
        heel = Spot(*crossing(self.tip, self.stands.heel_edge, self.plumb))
        inside = self.front.deep <= heel.deep
        left = apart(self.front, heel)
        return left if inside is (self.stands.toe.deep == ZERO) else -left

    @property
    def square_on_edge(self) -> bool:
        """Whether the abutment is the timber's own edge, so that nothing comes off for it."""
        return not self.abutment.normal[0]

    @property
    def square_off(self) -> bool:
        """Whether the abutment is the squared end itself, so that no line is struck for it."""
        squared = (self.stick.start, self.stick.finish)
        return not any(self.abutment.normal[1:]) and self.stands.toe.along in squared


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleShape(RakingHole):
    """The notch and its mortise in the receiving stick, in that stick's own readings.

    `toe`, `bottom` and `heel` are where `abutment` and `sole` meet the real face and one another;
    the waste lies behind both. `back_end` bounds the mortise at the heel's side, `ease` beyond it.
    """

    tenon: EndShape
    abutment: Plane
    sole: Plane
    toe: Spot
    bottom: Spot
    heel: Spot
    back_end: Length
    ease: Length
    clearance: Length

    @property
    def onwards(self) -> bool:
        """Whether the heel lies farther from the reference end than the toe."""
        return self.heel.along > self.toe.along

    @property
    def recess(self) -> Length:
        """How deep the notch is below the real face."""
        return self.tenon.over + self.tenon.notch

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the real face."""
        return self.tenon.over + self.tenon.real("length") + self.clearance

    @property
    def floor(self) -> Length:
        """The reading of the mortise's bottom."""
        return self.stick.in_from(self.entry, self.depth, self.feature)

    @property
    def left_below(self) -> Length:
        """The wood left between the bottom and the face across from the entry."""
        return self.real_into - self.depth

    @property
    def relish_end(self) -> Face:
        """The end of the stick that the thrust goes towards."""
        return Face.REFERENCE_END if self.onwards else Face.FAR_END

    @property
    def relish(self) -> Length:
        """The wood left along the grain from the notch to that end's shoulder, or its lap's end."""
        low, high = self.stick.room
        return self.toe.along - low if self.onwards else high - self.toe.along

    @property
    def along(self) -> tuple[Length, Length]:
        """From where to where it lies along the stick."""
        ends = sorted((self.toe.along, self.heel.along, self.back_end))
        return ends[0], ends[-1]


def apart(one: Spot, other: Spot) -> Length:
    """How far apart two spots are."""
    along, deep = other.along - one.along, other.deep - one.deep
    return Length(root(along.nm**2 + deep.nm**2))


def feature_id(joint: JoggleJoint) -> str:
    """The id of the abutting end: `foot-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def end_shape(joint: JoggleJoint, frame: Frame) -> EndShape:
    """The abutting end, as its real stick and the receiving one give it."""
    stick, here = frame.stick(joint.timber), frame.standing(joint.timber)
    (bearing,) = joint.bearings()
    entry = frame.entry(bearing)
    flat = frame.face(joint.into, entry, joint.mortise)
    wood = frame.wood(joint.into)
    over = wood.over_on(entry, joint.mortise)
    end, plumb, feature = stick.pose.end(joint.end), plumb_axis(stick.pose), feature_id(joint)
    places = (feature, stick.place_at(end))
    deep = stick.framed(plumb, *places)
    stands = foothold(
        carried(flat, here, SHOULDER),
        plumb,
        deep,
        stick.shoulder(end),
        outward=-1 if end is Face.REFERENCE_END else 1,
    )
    abutment, bottom, fits = _let_in(joint, stands, here, frame.standing(joint.into))
    length = joint.notch + joint.length
    return EndShape(
        stick=stick,
        end=end,
        feature=feature,
        rake=frame.rake(joint.timber),
        into=frame.timber(joint.into),
        looks=joint.abutment,
        plumb=plumb,
        stands=stands,
        outside=replace(shifted(stands.face, over), line="reduction-stop"),
        abutment=abutment,
        bottom=bottom,
        sole=sole_plane(stands, bottom, SOLE),
        tip=replace(shifted(stands.face, -length), line=TIP),
        notch=joint.notch,
        length=length,
        over=over,
        fits=fits,
        near=joint.set_back,
        far=joint.set_back + joint.thickness,
        deep=deep,
        wide=stick.framed(across(plumb), *places),
        as_cut=stick.as_cut.get(feature, AsCut()),
    )


def _let_in(
    joint: JoggleJoint, stands: Foothold, here: Place, there: Place
) -> tuple[Plane, Spot, bool]:
    """The abutment, where it meets the sole, and whether the end can be let in like that."""
    abutment = abutment_plane(stands, joint.abutment, here, there, ABUTMENT)
    bottom = notch_bottom(stands, abutment, joint.notch)
    if bottom is not None:
        return abutment, bottom, True
    halving = abutment_plane(stands, "bisecting", here, there, ABUTMENT)
    half = Length(abs(stands.heel.deep - stands.toe.deep).nm // 2)
    return halving, abutment_at(stands, halving, half), False


def hole_shape(joint: JoggleJoint, made: EndShape, frame: Frame) -> HoleShape:
    """The notch for an abutting end, its mortise cut to the tenon as it came out."""
    stick, there = frame.stick(joint.into), frame.standing(joint.into)
    here = frame.standing(joint.timber)
    (bearing,) = joint.bearings()
    entry = frame.entry(bearing)
    into, sides = axis_from(entry), across(axis_from(entry))
    abutment, sole = (
        reversed_plane(carried_over(plane, here, there)) for plane in (made.abutment, made.sole)
    )
    face = ZERO if entry.is_reference else stick.depth(into, joint.mortise)
    recess = made.over + made.notch
    low = recess if entry.is_reference else face - recess
    toe, bottom, heel = (
        Spot(along_at(plane, into, deep), deep)
        for plane, deep in ((abutment, face), (abutment, low), (sole, face))
    )
    ease = EASE[frame.project.bare] if joint.ease is None else joint.ease
    stands_heel = along_receiver(there, here, made, *made.stands.heel)
    span, same = across_receiver(
        there, here, made, (made.near, made.near + made.real("thickness")), sides
    )
    clearance = joint.bottom_clearance
    return HoleShape(
        stick=stick,
        feature=joint.mortise,
        tenon=made,
        entry=entry,
        across=span,
        end_across=across_receiver(there, here, made, (ZERO, made.wide), sides)[0],
        same_side=same,
        abutment=abutment,
        sole=sole,
        toe=toe,
        bottom=bottom,
        heel=heel,
        back_end=stands_heel + ease if heel.along > toe.along else stands_heel - ease,
        ease=ease,
        clearance=frame.project.practice.bottom_clearance if clearance is None else clearance,
    )
