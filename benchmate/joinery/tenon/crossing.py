"""One tenon through another: whether the two really cross, in the timber that receives both.

Where a joint meets another whose end enters the same timber square to it, its own tenon goes
through that one's. Both mortises are in the readings of the timber that receives them, so whether
they cross, and by how much they miss, follows there, whether the timbers have places or not.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from benchmate.frame.frame import Frame
from benchmate.frame.meeting import Span
from benchmate.joinery.tenon.mortise_shape import MortiseShape, mortise_of
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import shape
from benchmate.measure.length import ZERO, Length
from benchmate.model.solids import Axis

_Box = dict[Axis, Span]
"""Some room in the receiving timber, by its axes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossing:
    """A mortise (`stub`) whose tenon is to go through the tenon in another one (`crossed`).

    `mutual` tells that the other joint says the same of this one, and `placed` that the timbers
    have places, so that it can be carried from one into the other.
    """

    joint: TenonJoint
    other: TenonJoint
    stub: MortiseShape
    crossed: MortiseShape
    mutual: bool
    placed: bool

    @property
    def scribed(self) -> bool:
        """Whether either of the two is marked by hand, so that there are no figures."""
        return self.joint.scribed or self.other.scribed

    @property
    def reaches(self) -> bool:
        """Whether the one tenon comes into the other, so that it has to go through it."""
        return self.missed_by < ZERO

    @property
    def missed_by(self) -> Length:
        """How far the one tenon misses the other; below nothing where they cross."""
        return max(_gaps(_tenon(self.stub), _tenon(self.crossed)))

    @property
    def apart(self) -> int:
        """The square of the wood left between the two mortises, in square nanometres."""
        gaps = _gaps(_void(self.stub), _void(self.crossed))
        return sum(max(gap, ZERO).nm ** 2 for gap in gaps)

    @property
    def ends_clash(self) -> bool:
        """Whether a housed end of either is in the way of the other's tenon or housed end."""
        one = [_housing(self.stub)] * self.stub.housed
        other = [_housing(self.crossed)] * self.crossed.housed
        pairs = (
            *product(one, [_tenon(self.crossed), *other]),
            *product([_tenon(self.stub)], other),
        )
        return any(_overlap(*pair) for pair in pairs)


def crossings(joint: TenonJoint, stub: MortiseShape, frame: Frame) -> Iterator[Crossing]:
    """Every tenon that a joint's own is to go through."""
    others = (work for work in frame.cut_through(joint) if isinstance(work, TenonJoint))
    for other in others:
        crossed = mortise_of(other, shape(other, frame), frame)
        if crossed is not None:
            yield Crossing(
                joint=joint,
                other=other,
                stub=stub,
                crossed=crossed,
                mutual=other.cuts_through(joint) is not None,
                placed=all(frame.place(each) for each in (joint.timber, other.timber)),
            )


def runs_into(joint: TenonJoint, mortise: MortiseShape, frame: Frame) -> tuple[str, ...]:
    """The timbers whose mortises a mortise runs into, of those it goes through or lets through."""
    works = (work for work in frame.works_on(mortise.stick.id) if isinstance(work, TenonJoint))
    met = (
        other
        for other in works
        if joint.cuts_through(other) is not None or other.cuts_through(joint) is not None
    )
    others = (mortise_of(other, shape(other, frame), frame) for other in met)
    return tuple(
        other.tenon.stick.name
        for other in others
        if other and _overlap(_void(mortise), _void(other))
    )


def _void(shape: MortiseShape) -> _Box:
    """The mortise itself, from the face it is cut from."""
    whole = (ZERO, shape.real_into)
    reference = shape.entry.is_reference
    deep = (ZERO, shape.bottom) if reference else (shape.bottom, shape.real_into)
    return _box(shape, whole if shape.through else deep)


def _tenon(shape: MortiseShape) -> _Box:
    """The tenon in it, as it was cut."""
    end = shape.seat + (shape.length if shape.entry.is_reference else -shape.length)
    return _box(shape, (min(shape.seat, end), max(shape.seat, end)))


def _housing(shape: MortiseShape) -> _Box:
    """The housing round it."""
    reference = shape.entry.is_reference
    deep = (ZERO, shape.seat) if reference else (shape.seat, shape.real_into)
    return {Axis.ALONG: shape.end_along, shape.sides: shape.end_across, shape.into: deep}


def _box(shape: MortiseShape, deep: Span) -> _Box:
    return {Axis.ALONG: shape.along, shape.sides: shape.across, shape.into: deep}


def _gaps(one: _Box, other: _Box) -> list[Length]:
    """How far apart two boxes are on each axis; below nothing where they overlap on it."""
    return [max(span[0] - other[axis][1], other[axis][0] - span[1]) for axis, span in one.items()]


def _overlap(one: _Box, other: _Box) -> bool:
    return max(_gaps(one, other)) < ZERO
