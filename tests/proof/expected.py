"""What every joint should come to, reckoned from its record and from the sticks as they are.

This is the second opinion that the carved timbers are held against: how much wood has to meet, and
how much room has to be left.
"""

from dataclasses import dataclass

from benchmate.joinery.joist.record import JoistPocket
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from tests.builders import given_length
from tests.proof.boxes import between, meet
from tests.proof.kernel import Vector
from tests.proof.marks import ALONG
from tests.proof.meetings import Meeting, meeting, reading_along, vector
from tests.proof.raising import Joint, Raising
from tests.space import Box, Span

UP = 2
"""The building axis that runs up."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Snug:
    """A part of the stick, and the wood it should meet at once when it is pushed to each side."""

    part: Box
    walls: dict[Vector, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """How an end should sit in the other timber, with areas in square nanometres.

    Pushed along `bearing` it should meet `bears` of wood at once. What is in the joint should be
    `snug`. Its `point` pushed `inward` should meet nothing for `clearance`, and then `end`.
    """

    bearing: Vector
    bears: int
    snug: tuple[Snug, ...]
    point: Box
    inward: Vector
    clearance: int
    end: int


def expected(raising: Raising, joint: Joint) -> Expected:
    """How one joint should sit."""
    met = meeting(raising, joint)
    stated = joint.bottom_clearance if isinstance(joint, TenonJoint) else joint.end_clearance
    room = raising.frame.project.practice.bottom_clearance if stated is None else stated
    if isinstance(joint, TenonJoint):
        return _tenon(met, joint, room)
    return _joist(met, joint, room)


def _tenon(met: Meeting, joint: TenonJoint, room: Length) -> Expected:
    cheeks = next(n for n in (1, 2) if met.stick.placed.inward[n][0] != met.grain)
    edges = 3 - cheeks
    spans = {cheeks: _between_cheeks(met, joint), edges: _between_edges(met, joint, edges)}
    thick, wide = (high - low for low, high in (spans[cheeks], spans[edges]))
    long = met.stick.rule.stock.cut(met.feature, "length") or given_length(joint).nm
    broad = {met.stick.placed.inward[cheeks][0]: wide, met.stick.placed.inward[edges][0]: thick}
    seat = met.stick.placed.plane(ALONG, met.stick.rule.place(met.feature, "shoulder").at)
    recess = joint.housing.nm + met.over
    point = met.past(seat)
    walls = {vector(axis, sense): long * broad[axis] for axis, sense in met.aside}
    return Expected(
        bearing=met.inward,
        bears=_shoulder(met, met.across(spans), seat, recess),
        snug=(Snug(part=point, walls=walls), *_collar(met, seat, recess)),
        point=point,
        inward=met.inward,
        clearance=room.nm,
        end=thick * wide,
    )


def _between_cheeks(met: Meeting, joint: TenonJoint) -> Span:
    thick = met.stick.rule.stock.cut(met.feature, "thickness") or joint.thickness.nm
    return joint.set_back.nm, joint.set_back.nm + thick


def _between_edges(met: Meeting, joint: TenonJoint, axis: int) -> Span:
    """From one narrow edge to the other; a far one that is struck holds whatever the stick is."""
    stock = met.stick.rule.stock
    near = (joint.relief_reference or joint.all_round).nm
    off_far = (joint.relief_far or joint.all_round).nm
    far = stock.depth(axis, met.feature)
    if stock.inner or off_far:
        far = (stock.inner or stock.drawn)[axis - 1] - off_far
    made = stock.cut(met.feature, "width")
    return near, far if made is None else near + made


def _whole(met: Meeting) -> Box:
    """The stick's real section at its end."""
    stock = met.stick.rule.stock
    return met.across({n: (0, stock.depth(n, met.feature)) for n in (1, 2)})


def _goes_in(met: Meeting) -> Box:
    """The section that goes into a recess."""
    stock = met.stick.rule.stock
    return met.across({n: (0, stock.framed(n, met.feature)) for n in (1, 2)})


def _shoulder(met: Meeting, root: Box, seat: int, recess: int) -> int:
    """The wood a shoulder meets: on its seat, and on the face round a recess."""
    way, face = (met.axis, met.sense), seat - met.sense * recess
    inside = _goes_in(met) if recess else _whole(met)
    on_seat = met.facing(meet(inside, met.before(seat)), way, root, uncut=True)
    return on_seat + met.facing(meet(_whole(met), met.before(face)), way, inside)


def _collar(met: Meeting, seat: int, recess: int) -> tuple[Snug, ...]:
    """The end inside its housing, which is open wherever it comes to the framed timber's side."""
    if not recess:
        return ()
    low, high = sorted((seat - met.sense * recess, seat))
    part = meet(_goes_in(met), between(met.axis, low, high))
    walls = {}
    for axis, sense in met.aside:
        side, limit = part[axis][sense > 0], met.framed[axis][sense > 0]
        closed = side * sense < limit * sense
        walls[vector(axis, sense)] = met.facing(part, (axis, sense), uncut=True) if closed else 0
    return (Snug(part=part, walls=walls),)


def _joist(met: Meeting, joint: JoistPocket, room: Length) -> Expected:
    stock, feature = met.stick.rule.stock, met.feature
    plumb = reading_along(met.stick, UP)
    deep = joint.end_depth.nm if joint.end_depth else stock.framed(plumb, feature)
    deep = stock.cut(feature, "thickness") or deep
    wide = stock.cut(feature, "width") or stock.framed(3 - plumb, feature)
    top, recess = met.stick.placed.origin[UP], joint.bearing.nm + met.over
    high = min(top, met.wood[UP][1]) - (top - deep)
    point = met.past(met.wood[met.axis][met.sense < 0])
    walls = {vector(met.grain, sense): recess * high for sense in (1, -1)}
    return Expected(
        bearing=vector(UP, -1),
        bears=recess * wide,
        snug=(Snug(part=point, walls=walls),),
        point=point,
        inward=met.inward,
        clearance=room.nm,
        end=wide * high,
    )
