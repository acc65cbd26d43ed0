"""Where the two halves of a scarf lie on the real sticks.

How it works
1. The scarf is settled once in the building: along the line from the leading stick's shoulder, and
   in from the reference face both sticks share. The leading stick is the one whose lap keeps that
   face: it is cut first, as its lap is measured from there.
2. Each plane is carried into both sticks, with its waste on either side of it. So the halves cannot
   disagree, whichever way the sticks are measured.
3. The lap runs from `root` deep at the leading shoulder to `tip` deep at the other one. The stick
   that follows is laid out to what the leading one came out as.
4. Far lines go by the section as drawn, or by the inner timber under square rule: what a stick is
   over or under shows on its far faces.
"""

from dataclasses import dataclass, replace

from benchmate.frame.flats import Flat, carried
from benchmate.frame.frame import Frame
from benchmate.frame.place import Place, Point
from benchmate.joinery.scarf.record import Kind, ScarfJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Spot
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, across, axis_from, end_place, reference_for

SHOULDER, LAP, ABUTMENT, TIP = ("shoulder", "lap", "abutment", "tip")
"""The lines of every lap, and those of one whose abutments lean."""

TONGUE_SHOULDER, TONGUE_NEAR, TONGUE_FAR = ("tongue-shoulder", "tongue-near", "tongue-far")
SLOT_END, SLOT_NEAR, SLOT_FAR = ("slot-end", "slot-near", "slot-far")
KEY_START, KEY_FINISH, KEY_FLOOR = ("key-start", "key-finish", "key-floor")


@dataclass(frozen=True, slots=True, kw_only=True)
class Bridle:
    """A stick's own tongue, and the open slot in its body for the other's.

    `near` and `far` bound the tongue, `near` and `slot_far` the slot, in from the reference face
    beside the lap. `shoulder` and `slot_end` are planes square across the stick.
    """

    near: Length
    far: Length
    length: Length
    shoulder: Plane
    slot_far: Length
    slot_end: Plane
    slot_length: Length
    clearance: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class KeySlot:
    """A stick's half of the slot for folding wedges: its two ends along and how deep in it goes.

    `start` and `finish` are planes; `floor` counts in from the reference face, `deep` from the lap
    at the slot's middle.
    """

    start: Plane
    finish: Plane
    floor: Length
    wide: Length
    deep: Length


@dataclass(frozen=True, slots=True, kw_only=True)
class Half:
    """One stick's half of a scarf, in that stick's own readings.

    `halved` is the axis the lap is split on, `deep` what is split. The lap lies `root` in from the
    reference face at this stick's shoulder and `tip` in at its tip. `reach` is from the one
    shoulder to the other, `total` from the outer end of the one stick to that of the other. Where
    the abutments lean, `abutment` is this stick's own and `point` the end of its tip. `as_cut` are
    the sizes of the leading stick.
    """

    stick: Stick
    mate: Stick
    end: Face
    feature: str
    mate_feature: str
    kind: Kind
    leads: bool
    halved: Axis
    deep: Length
    length: Length
    reach: Length
    total: Length
    shoulder: Plane
    lap: Plane
    root: Length
    tip: Length
    butt: Length
    squint: Length
    abutment: Plane | None
    point: Plane | None
    bridle: Bridle | None
    key: KeySlot | None
    as_cut: AsCut

    @property
    def sides(self) -> Axis:
        """The axis beside the lap."""
        return across(self.halved)

    @property
    def keeps(self) -> Face:
        """The face its lap runs on along."""
        near = reference_for(self.halved)
        return near if self.leads else near.opposite

    @property
    def places(self) -> tuple[str, ...]:
        """Where its section may have been measured, the nearest place first."""
        return (self.feature, self.stick.place_at(self.end))

    @property
    def real_deep(self) -> Length:
        """The real depth of the stick the way it is halved."""
        return self.stick.depth(self.halved, *self.places)

    @property
    def real_wide(self) -> Length:
        """The real depth of the stick the other way."""
        return self.stick.depth(self.sides, *self.places)

    @property
    def at(self) -> Length:
        """The reading of its shoulder, which is the datum."""
        return self.stick.shoulder(self.end)

    @property
    def tip_at(self) -> Length:
        """The reading of its tip."""
        return self.stick.start if self.end is Face.REFERENCE_END else self.stick.finish

    @property
    def stepped(self) -> bool:
        """Whether its lap runs parallel to the stick, and does not slope."""
        return self.kind in ("half lap", "bridled")

    def off(self, depth: Length) -> Length:
        """What comes off the face across from the one it keeps, down to a depth."""
        return self.real_deep - depth if self.leads else depth

    def left(self, depth: Length) -> Length:
        """What its lap is thick at a depth, once its far face is brought to size."""
        framed = self.stick.framed(self.halved, *self.places)
        return depth if self.leads else framed - depth

    def reduced(self) -> dict[Axis, Length]:
        """The far faces that its lap loses by square rule, each with what it comes down to."""
        if self.stick.inner is None:
            return {}
        axes = (self.sides,) if self.leads else (self.sides, self.halved)
        depths = {axis: self.stick.depth(axis, *self.places) for axis in axes}
        return {
            axis: self.stick.held(axis)
            for axis, real in depths.items()
            if real > self.stick.held(axis)
        }


@dataclass(frozen=True, slots=True, kw_only=True)
class _Course:
    """The scarf's own readings in the building: ahead from the leading shoulder, and in."""

    place: Place
    start: Length
    outward: int
    halved: Axis
    ahead: Direction
    inward: Direction

    def flat(self, start: Spot, finish: Spot) -> Flat:
        """The plane across the sticks through two spots.

        Behind it lies what is on the right on the way from the one to the other, with the depth
        downwards: ahead of a way up, below a way ahead.
        """
        run, fall = finish.along.nm - start.along.nm, finish.deep.nm - start.deep.nm
        east, north, up = (
            fall * ahead - run * inward
            for ahead, inward in zip(self.ahead.value, self.inward.value, strict=True)
        )
        return Flat((east, north, up), 0).through(self.point(start))

    def square(self, along: Length) -> Flat:
        """The plane square across, with all that is ahead behind it."""
        return self.flat(Spot(along, Length(1)), Spot(along, ZERO))

    def slope(self, root: Length, along: Length, tip: Length) -> Flat:
        """The lap's plane, from its depth at the leading shoulder to that so far along."""
        if root == tip:
            return self.flat(Spot(ZERO, root), Spot(Length(1), root))
        return self.flat(Spot(ZERO, root), Spot(along, tip))

    def point(self, spot: Spot) -> Point:
        """A spot on the face beside the lap that both sticks share, in the building."""
        first, second = (spot.deep, ZERO) if self.halved is Axis.FIRST else (ZERO, spot.deep)
        return self.place.point(self.start + spot.along * self.outward, first, second)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Plan:
    """What is the same for both halves: the course, the lap's depths and the leading stick."""

    joint: ScarfJoint
    frame: Frame
    course: _Course
    leading: str
    deep: Length
    root: Length
    tip: Length
    as_cut: AsCut


def feature_id(end: Direction) -> str:
    """The id of a stick's half: `east-end-scarf`."""
    return f"{end_place(end)}-scarf"


def halves(joint: ScarfJoint, frame: Frame) -> tuple[Half, Half]:
    """The half of `timber`, then that of `into`."""
    plan = _plan(joint, frame)
    one, other = (joint.timber, joint.end), (joint.into, joint.end.opposite)
    return _half(plan, one, other), _half(plan, other, one)


def _plan(joint: ScarfJoint, frame: Frame) -> _Plan:
    first = frame.timber(joint.timber).pose.face(joint.keeps).is_reference
    leading, end = (joint.timber, joint.end) if first else (joint.into, joint.end.opposite)
    looks = joint.keeps if first else joint.keeps.opposite
    stick = frame.stick(leading)
    face, halved = stick.pose.face(end), axis_from(stick.pose.face(looks))
    course = _Course(
        place=frame.standing(leading),
        start=stick.shoulder(face),
        outward=-1 if face is Face.REFERENCE_END else 1,
        halved=halved,
        ahead=end,
        inward=looks.opposite,
    )
    deep = stick.held(halved)
    half = Length(deep.nm // 2)
    return _Plan(
        joint=joint,
        frame=frame,
        course=course,
        leading=leading,
        deep=deep,
        root=half if joint.butt is None else deep - joint.butt,
        tip=half if joint.butt is None else joint.butt,
        as_cut=stick.as_cut.get(feature_id(end), AsCut()),
    )


def _half(plan: _Plan, own: tuple[str, Direction], mate: tuple[str, Direction]) -> Half:
    joint, leads = plan.joint, own[0] == plan.leading
    stick, other = plan.frame.stick(own[0]), plan.frame.stick(mate[0])
    end = stick.pose.face(own[1])
    root, tip = (plan.root, plan.tip) if leads else _as_cut_depths(plan)
    abutment, point = _leaning(plan, own[0])
    course, reach = plan.course, joint.between
    return Half(
        stick=stick,
        mate=other,
        end=end,
        feature=feature_id(own[1]),
        mate_feature=feature_id(mate[1]),
        kind=joint.kind,
        leads=leads,
        halved=axis_from(stick.pose.face(course.inward)),
        deep=plan.deep,
        length=joint.length,
        reach=reach,
        total=stick.overall + other.overall - joint.length,
        shoulder=_carried(plan, own[0], course.square(ZERO if leads else reach), SHOULDER),
        lap=_carried(plan, own[0], course.slope(root, reach, tip), LAP),
        root=root if leads else tip,
        tip=tip if leads else root,
        butt=joint.butt or ZERO,
        squint=joint.squint or ZERO,
        abutment=abutment,
        point=point,
        bridle=_bridle(plan, own[0]) if joint.tongue else None,
        key=_key(plan, own[0], Length((root + tip).nm // 2)) if joint.key else None,
        as_cut=plan.as_cut,
    )


def _as_cut_depths(plan: _Plan) -> tuple[Length, Length]:
    """How deep in the leading lap came out, at its shoulder and at its tip."""
    if plan.joint.butt is not None:
        return plan.as_cut.width or plan.root, plan.as_cut.thickness or plan.tip
    both = plan.as_cut.width if plan.joint.tongue else plan.as_cut.thickness
    return both or plan.root, both or plan.tip


def _carried(plan: _Plan, timber: str, flat: Flat, line: str) -> Plane:
    """A plane on one of the sticks: what is ahead or below is the leading stick's waste."""
    there = plan.frame.standing(timber)
    return carried(flat if timber == plan.leading else flat.turned, there, line)


def _leaning(plan: _Plan, timber: str) -> tuple[Plane | None, Plane | None]:
    """The abutment of one stick and the end of its tip, where they lean."""
    butt, squint = plan.joint.butt, plan.joint.squint
    if butt is None or squint is None:
        return None, None
    heel, toe = Spot(ZERO, plan.root), Spot(plan.joint.between, plan.tip)
    at_heel = plan.course.flat(Spot(heel.along + squint, heel.deep + butt), heel)
    at_toe = plan.course.flat(toe, Spot(toe.along - squint, toe.deep - butt))
    own, mate = (at_heel, at_toe) if timber == plan.leading else (at_toe, at_heel)
    return _carried(plan, timber, own, ABUTMENT), _carried(plan, timber, mate, TIP)


def _bridle(plan: _Plan, timber: str) -> Bridle:
    joint, leads = plan.joint, timber == plan.leading
    thick, long, near = joint.tongue or ZERO, joint.tongued, joint.set_back or ZERO
    given = joint.bottom_clearance
    clearance = plan.frame.project.practice.bottom_clearance if given is None else given
    mate_thick, mate_long = thick, long
    if not leads:
        mate_thick, mate_long = plan.as_cut.thickness or thick, plan.as_cut.length or long
    room, square, reach = mate_long + clearance, plan.course.square, joint.between
    return Bridle(
        near=near,
        far=near + thick,
        length=long,
        shoulder=_carried(plan, timber, square(reach if leads else ZERO), TONGUE_SHOULDER),
        slot_far=near + mate_thick,
        slot_end=_carried(plan, timber, square(-room if leads else reach + room), SLOT_END),
        slot_length=room,
        clearance=clearance,
    )


def _key(plan: _Plan, timber: str, middle: Length) -> KeySlot:
    """One stick's half of the slot; its lap lies `middle` deep in at the slot's middle."""
    leads, wide = timber == plan.leading, plan.joint.key or ZERO
    half = Length(wide.nm // 2)
    low = Length(plan.joint.between.nm // 2) - half
    ends = plan.course.square(low), plan.course.square(low + wide).turned
    there = plan.frame.standing(timber)
    start, finish = sorted((carried(each, there) for each in ends), key=lambda it: it.normal)
    upper = Length(plan.deep.nm // 2) - half
    floor = upper if leads else upper + wide
    return KeySlot(
        start=replace(start, line=KEY_START),
        finish=replace(finish, line=KEY_FINISH),
        floor=floor,
        wide=wide,
        deep=middle - floor if leads else floor - middle,
    )
