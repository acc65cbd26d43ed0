"""One tenon through another: whether the two really cross, in the timber that receives both.

Where a joint meets another whose end enters the same timber square to it, its own tenon goes
through that one's. Both mortises are in the readings of the timber that receives them, so whether
they cross, and by how much they miss, follows there, whether the timbers have places or not.
"""

from collections.abc import Iterator
from dataclasses import dataclass

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
        """Whether the mortise comes to the tenon that it is to go through."""
        return all(gap < ZERO for gap in _gaps(_void(self.stub), _tenon(self.crossed)))

    @property
    def missed_by(self) -> Length:
        """How far the mortise misses the tenon; nothing or less where they touch or cross."""
        return max(_gaps(_void(self.stub), _tenon(self.crossed)))

    @property
    def apart(self) -> int:
        """The square of the wood left between the two mortises, in square nanometres."""
        gaps = _gaps(_void(self.stub), _void(self.crossed))
        return sum(max(gap, ZERO).nm ** 2 for gap in gaps)

    @property
    def housing_reaches(self) -> bool:
        """Whether the housing round the mortise cuts into that tenon, or into its housed end."""
        if not self.stub.housed:
            return False
        parts = [_tenon(self.crossed)] + [_housing(self.crossed)] * self.crossed.housed
        return any(all(gap < ZERO for gap in _gaps(_housing(self.stub), each)) for each in parts)


def crossings(joint: TenonJoint, stub: MortiseShape, frame: Frame) -> Iterator[Crossing]:
    """Every tenon that a joint's own is to go through."""
    for other in frame.cut_through(joint):
        crossed = isinstance(other, TenonJoint) and mortise_of(other, shape(other, frame), frame)
        if isinstance(other, TenonJoint) and crossed:
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
        if other and all(gap < ZERO for gap in _gaps(_void(mortise), _void(other)))
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
