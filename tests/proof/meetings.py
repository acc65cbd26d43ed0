"""What every joint should come to in the building, reckoned from the project file and real sticks.

This is the second opinion that the carved timbers are held against. It goes by where the arrises
run, by the sections found, and by the joint's own record. Of the marks it takes the shoulder alone,
to know where to look, and for other joints nearby where they left no wood.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from tests.proof.areas import Rect, common, content, seen
from tests.proof.boxes import beyond
from tests.proof.kernel import Vector
from tests.proof.marks import ALONG
from tests.proof.raising import Joint, Piece, Raising, end_names
from tests.space import TOWARDS, Box, Span

UP = 2
"""The building axis that runs up."""

NECK = 1_000_000
"""How much of the part in a joint is left out at its mouth, in nanometres, where it is pushed by
itself: a millimetre, as the kernel blurs a cut that lies flush with a face."""

SKIN = 2_000
"""How deep under a face its wood is looked at, in nanometres: as deep as anything is pushed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """How an end should sit in the other timber, with areas in square nanometres.

    Pushed along `bearing` it should meet `bears` of wood at once. The part in the joint `alone`,
    pushed along each way of `walls`, should meet that much at once; pushed on `inward` it should
    meet nothing for `clearance`, and then `end`.
    """

    bearing: Vector
    bears: int
    alone: Box
    walls: dict[Vector, int]
    inward: Vector
    clearance: int
    end: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Meeting:
    """An end of a timber, which looks along an axis of the building, in the side of another.

    `feature` and `other` are what the joint puts on the two.
    """

    stick: Piece
    receiver: Piece
    axis: int
    sense: int
    feature: str
    other: str

    @property
    def inward(self) -> Vector:
        """The way in."""
        return vector(self.axis, self.sense)

    @property
    def aside(self) -> tuple[int, int]:
        """The two axes of the building that the end does not look along."""
        one, other = (axis for axis in range(3) if axis != self.axis)
        return one, other

    @property
    def grain(self) -> int:
        """The axis of the building that the receiver runs along."""
        return self.receiver.placed.inward[ALONG][0]

    @property
    def over(self) -> int:
        """The wood on the receiver that its mates do not count on: none at a reference face."""
        reading = reading_along(self.receiver, self.axis)
        far = self.receiver.placed.inward[reading][1] != self.sense
        return self.receiver.rule.stock.over(reading, self.other) if far else 0

    @property
    def extent(self) -> Box:
        """The receiver with its section here, uncut."""
        first, second = self.receiver.rule.stock.section(self.other)
        whole = self.receiver.carving.blank[ALONG]
        return self.receiver.placed.box((whole, (0, first), (0, second)))


def vector(axis: int, length: int) -> Vector:
    """So far along an axis of the building."""
    east, north, up = (length * (axis == each) for each in range(3))
    return east, north, up


def reading_along(piece: Piece, axis: int) -> int:
    """Which of a timber's readings runs along an axis of the building."""
    return next(number for number, way in enumerate(piece.placed.inward) if way[0] == axis)


def meeting(raising: Raising, joint: Joint) -> Meeting:
    """The end of one joint and the timber it enters. Raises KeyError if either is not raised."""
    axis, sense = TOWARDS[joint.end.word]
    feature, other = end_names(joint)
    return Meeting(
        stick=raising.pieces[joint.timber],
        receiver=raising.pieces[joint.into or ""],
        axis=axis,
        sense=sense,
        feature=feature,
        other=other,
    )


def expected(raising: Raising, joint: Joint) -> Expected:
    """How one joint should sit."""
    met = meeting(raising, joint)
    if isinstance(joint, TenonJoint):
        return _tenon(met, joint, raising.frame)
    return _joist(met, joint, raising.frame)


def _tenon(met: Meeting, joint: TenonJoint, frame: Frame) -> Expected:
    stock, feature = met.stick.rule.stock, met.feature
    cheeks = next(n for n in (1, 2) if met.stick.placed.inward[n][0] != met.grain)
    edges = 3 - cheeks
    near, edge = joint.set_back.nm, (joint.relief_reference or joint.all_round).nm
    far_relief = (joint.relief_far or joint.all_round).nm
    struck = far_relief or stock.inner
    held = (stock.inner or stock.drawn)[edges - 1] if struck else stock.depth(edges, feature)
    thick = stock.cut(feature, "thickness") or joint.thickness.nm
    wide = stock.cut(feature, "width") or held - far_relief - edge
    long = stock.cut(feature, "length") or joint.length.nm
    root = _rect(met, {cheeks: (near, near + thick), edges: (edge, edge + wide)})
    seat = _seat(met)
    broad = {met.stick.placed.inward[cheeks][0]: wide, met.stick.placed.inward[edges][0]: thick}
    return Expected(
        bearing=met.inward,
        bears=_shoulder(met, root, seat, joint.housing.nm + met.over),
        alone=_past(met, seat + met.sense * NECK),
        walls={
            vector(axis, sense): (long - NECK) * broad[axis]
            for axis in met.aside
            for sense in (1, -1)
        },
        inward=met.inward,
        clearance=_clearance(joint.bottom_clearance, frame),
        end=thick * wide,
    )


def _clearance(stated: Length | None, frame: Frame) -> int:
    return (frame.project.practice.bottom_clearance if stated is None else stated).nm


def _seat(met: Meeting) -> int:
    """The plane of a shoulder, as it was marked, on the axis the end looks along."""
    return met.stick.placed.plane(ALONG, met.stick.rule.place(met.feature, "shoulder").at)


def _past(met: Meeting, plane: int) -> Box:
    """All that lies further in than a plane."""
    return beyond(met.axis, plane, far=met.sense > 0)


def _shoulder(met: Meeting, root: Rect, seat: int, recess: int) -> int:
    """The wood that a shoulder meets, on its seat and on the face round the recess."""
    stock, feature = met.stick.rule.stock, met.feature
    full = _rect(met, {n: (0, stock.depth(n, feature)) for n in (1, 2)})
    reduced = {
        n: (0, stock.framed(n, feature) if recess else stock.depth(n, feature)) for n in (1, 2)
    }
    goes_in = _rect(met, reduced)
    wood = seen(met.extent, met.axis)
    on_seat = content(common(goes_in, wood), (root, *_voids(met, seat, but=met.other)))
    face = seat - met.sense * recess
    on_face = content(common(full, wood), (goes_in, *_voids(met, face)))
    return on_seat + on_face


def _voids(met: Meeting, plane: int, *, but: str = "") -> Iterator[Rect]:
    """Where the receiver has no wood just inside a plane across the way in."""
    low, high = sorted((plane, plane + met.sense * SKIN))
    for feature, box in met.receiver.voids():
        start, finish = box[met.axis]
        if feature != but and start < high and finish > low:
            yield seen(box, met.axis)


def _rect(met: Meeting, spans: dict[int, Span]) -> Rect:
    """A part of the stick's section in the building, as seen along the end."""
    return seen(met.stick.placed.box(((0, 0), spans[1], spans[2])), met.axis)


def _joist(met: Meeting, joint: JoistPocket, frame: Frame) -> Expected:
    stock, feature = met.stick.rule.stock, met.feature
    plumb = reading_along(met.stick, UP)
    deep = joint.end_depth.nm if joint.end_depth else stock.framed(plumb, feature)
    deep = stock.cut(feature, "thickness") or deep
    wide = stock.cut(feature, "width") or stock.framed(3 - plumb, feature)
    top = met.stick.placed.origin[UP]
    high = min(top, met.extent[UP][1]) - (top - deep)
    recess = joint.bearing.nm + met.over
    face = met.extent[met.axis][met.sense < 0]
    return Expected(
        bearing=vector(UP, -1),
        bears=recess * wide,
        alone=_past(met, face + met.sense * NECK),
        walls={vector(met.grain, sense): (recess - NECK) * high for sense in (1, -1)},
        inward=met.inward,
        clearance=_clearance(joint.end_clearance, frame),
        end=wide * high,
    )
