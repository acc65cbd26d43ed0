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
from benchmate.frame.place import Place
from benchmate.frame.rake import Rake, root
from benchmate.frame.reach import crossing, nose_plane, plumb_axis
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import Unit
from benchmate.model.directions import Direction, Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, across, axis_from, end_place, reference_for

EASE = {Unit.INCH: Length.inches(0, 1, 4), Unit.MM: Length.mm(6)}
"""How much longer than the brace its mortise is where the joint says nothing.

At least 1/4", so that rough stock still enters (trade notes 2.3, Rogers-var); rounded in metric.
"""

SHOULDER, NOSE, SEAT, TIP, NEAR, FAR = (
    "shoulder",
    "nose",
    "seat",
    "tenon-end",
    "near-cheek",
    "far-cheek",
)
"""The lines on the brace."""


@dataclass(frozen=True, slots=True, kw_only=True)
class EndShape:
    """A brace's end on its real stick.

    `plumb` is the axis in from the long edge, `cheeks` the one across. Of its slanting planes,
    `face` is the receiving timber's face as the frame counts on it, `outside` the same where that
    stick is `over` its size, `seat` where the shoulder bears, `tip` the tenon's end, `nose` square
    to them all; what lies behind each is beyond it.
    """

    stick: Stick
    end: Face
    feature: str
    rake: Rake
    plumb: Axis
    face: Plane
    outside: Plane
    seat: Plane
    tip: Plane
    nose: Plane
    nose_in: Length
    over: Length
    housing: Length
    length: Length
    near: Length
    far: Length
    deep: Length
    wide: Length
    upright: bool
    as_cut: AsCut

    @property
    def abutment(self) -> Plane:
        """Where the end stops beside a nose that is set in: at the face as it really is."""
        return self.outside if self.over else self.face

    @property
    def cheeks(self) -> Axis:
        """The axis its cheeks are measured on: across the plane it rakes in."""
        return across(self.plumb)

    @property
    def shoulder(self) -> Length:
        """The reading of the point where the long edge meets the face."""
        return self.stick.shoulder(self.end)

    @property
    def thickness(self) -> Length:
        """From cheek to cheek as laid out."""
        return self.far - self.near

    @property
    def places(self) -> tuple[str, ...]:
        """Where its section may have been measured, the nearest place first."""
        return (self.feature, self.stick.place_at(self.end))

    @property
    def real_wide(self) -> Length:
        """The real depth of the stick across its plane."""
        return self.stick.depth(self.cheeks, *self.places)

    @property
    def real_deep(self) -> Length:
        """The real depth of the stick from its long edge."""
        return self.stick.depth(self.plumb, *self.places)

    @property
    def long_face(self) -> Face:
        """The reference face along the long edge."""
        return reference_for(self.plumb)

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

    def real(self, size: str) -> Length:
        """A size as cut if it was typed, otherwise as laid out."""
        return self.as_cut.get(size) or {"thickness": self.thickness, "length": self.length}[size]


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleShape:
    """The mortise and housing in the receiving stick, in that stick's own readings.

    `nose` and `heel` bound both along the grain; `nosed_first` tells whether the nose lies nearer
    to the reference end. `across` bounds the mortise and `end_across` the whole brace. `seat` is
    where the shoulder bears, `recess` how deep that lies below the real face.
    """

    stick: Stick
    feature: str
    brace: EndShape
    entry: Face
    nose: Length
    heel: Length
    nosed_first: bool
    ease: Length
    across: Span
    end_across: Span
    same_side: bool
    seat: Length
    recess: Length
    clearance: Length

    @property
    def into(self) -> Axis:
        """The axis the mortise is cut down on."""
        return axis_from(self.entry)

    @property
    def sides(self) -> Axis:
        """The axis across the mortise."""
        return across(self.into)

    @property
    def along(self) -> Span:
        """From start to finish along the grain."""
        return (self.nose, self.heel) if self.nosed_first else (self.heel, self.nose)

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the seat."""
        return self.brace.real("length") + self.clearance

    @property
    def bottom(self) -> Length:
        """The reading of the mortise's bottom."""
        return self.seat + self.depth if self.entry.is_reference else self.seat - self.depth

    @property
    def real_into(self) -> Length:
        """How deep the real stick is the way the mortise goes."""
        return self.stick.depth(self.into, self.feature)

    @property
    def left_below(self) -> Length:
        """The wood left between the bottom and the face across from the entry."""
        return self.real_into - self.bottom if self.entry.is_reference else self.bottom


def feature_id(joint: BraceJoint) -> str:
    """The id of the brace's end: `foot-tenon`."""
    return f"{end_place(joint.end)}-tenon"


def end_shape(joint: BraceJoint, frame: Frame) -> EndShape:
    """The brace's end, as its real stick and the receiving one give it."""
    stick, place = frame.stick(joint.timber), frame.standing(joint.timber)
    (bearing,) = joint.bearings()
    entry, into = frame.entry(bearing), frame.wood(joint.into)
    flat = frame.face(joint.into, entry, joint.mortise)
    over = ZERO if entry.is_reference else into.over(axis_from(entry), joint.mortise)
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
    heel = _along(place, here, along_at(brace.outside, brace.plumb, brace.deep), brace)
    first = nose <= heel
    ease = EASE[frame.project.bare] if joint.ease is None else joint.ease
    over = ZERO if entry.is_reference else stick.over(axis_from(entry), joint.mortise)
    recess, into = joint.housing + over, axis_from(entry)
    clearance = joint.bottom_clearance
    sides = across(into)
    thick = brace.real("thickness")
    span, same = _across(place, here, brace, (brace.near, brace.near + thick), sides)
    return HoleShape(
        stick=stick,
        feature=joint.mortise,
        brace=brace,
        entry=entry,
        nose=nose,
        heel=heel + ease if first else heel - ease,
        nosed_first=first,
        ease=ease,
        across=span,
        end_across=_across(place, here, brace, (ZERO, brace.wide), sides)[0],
        same_side=same,
        seat=recess if entry.is_reference else stick.depth(into, joint.mortise) - recess,
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


def _along(place: Place, here: Place, at: Length, brace: EndShape) -> Length:
    """Where the short edge meets the real face, along the receiving timber."""
    deep = {brace.plumb: brace.deep}
    point = here.point(at, deep.get(Axis.FIRST, ZERO), deep.get(Axis.SECOND, ZERO))
    return _reading(place, point, 0)


def _across(
    place: Place, here: Place, brace: EndShape, span: Span, sides: Axis
) -> tuple[Span, bool]:
    """Two depths across the brace as depths across the receiving timber, in order."""
    number = 1 if sides is Axis.FIRST else 2
    found = []
    for each in span:
        first, second = (each, ZERO) if brace.cheeks is Axis.FIRST else (ZERO, each)
        found.append(_reading(place, here.point(ZERO, first, second), number))
    near, far = found
    return ((near, far), True) if near <= far else ((far, near), False)


def _reading(place: Place, point: tuple[int, int, int], number: int) -> Length:
    """A reading of a point of the building on a timber that stands or lies."""
    way = place.ways[number].steps
    apart = (b - a for a, b in zip(place.origin, point, strict=True))
    return Length(sum(step * gap for step, gap in zip(way, apart, strict=True)))
