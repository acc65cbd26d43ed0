"""The brace as the catalogue knows it: both sides of one end's joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.brace import cutting, end, findings, hole
from benchmate.joinery.brace.legs import legs
from benchmate.joinery.brace.peg_features import peg_features
from benchmate.joinery.brace.pegged import pegged
from benchmate.joinery.brace.record import BraceJoint
from benchmate.joinery.brace.shape import end_shape, hole_shape
from benchmate.model.feature import Feature


def features(joint: BraceJoint, frame: Frame) -> tuple[Feature, ...]:
    """The brace's end, its mortise and its pegs. What stops one side stops the other."""
    tape = frame.tape
    made = end_shape(joint, frame)
    received = hole_shape(joint, made, frame)
    leg = legs(joint, made.stick, frame)
    told = findings.told(made, received, tape)
    brace_side = replace(
        end_side(made, "tenon", told),
        cuts=end.end_cuts(made),
        lines=end.end_lines(made, leg, tape),
        tasks=cutting.end_tasks(made, tape),
        sizes=cutting.end_sizes(made),
    )
    hole_side = replace(
        mated_side(received, made, told, noun="Mortise", at=received.along[0]),
        cuts=hole.hole_cuts(received),
        lines=hole.hole_lines(received, leg, tape),
        tasks=hole.hole_tasks(received),
    )
    if joint.pegs is None:
        return (brace_side, hole_side)
    return (brace_side, hole_side, *peg_features(pegged(joint.pegs, made, received), told, tape))


FAMILY = Family(name="brace", table="joint", record=BraceJoint, features=features)
