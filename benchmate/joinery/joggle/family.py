"""The joggle as the catalogue knows it: both sides of one end's joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.joggle import cutting, end, findings, hole, notching
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.joinery.joggle.shape import EndShape, HoleShape, end_shape, hole_shape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding


def features(joint: JoggleJoint, frame: Frame) -> tuple[Feature, ...]:
    """The abutting end and its notch. What stops one side stops the other."""
    tape = frame.tape
    made = end_shape(joint, frame)
    received = hole_shape(joint, made, frame)
    told = findings.told(made, received, tape)
    return (_end(made, told, tape), _hole(received, told, tape))


def _end(shape: EndShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        end_side(shape, "tenon", told),
        cuts=end.end_cuts(shape),
        lines=end.end_lines(shape, tape),
        tasks=cutting.end_tasks(shape, tape),
        sizes=cutting.end_sizes(shape),
    )


def _hole(shape: HoleShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        mated_side(shape, shape.tenon, told, noun="Notch", at=shape.along[0]),
        cuts=hole.hole_cuts(shape),
        lines=hole.hole_lines(shape, tape),
        tasks=notching.hole_tasks(shape, tape),
    )


FAMILY = Family(name="joggle", table="joint", record=JoggleJoint, features=features)
