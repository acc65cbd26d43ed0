"""The brace as the catalogue knows it: both sides of one end's joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.frame.raking_tenon import AS_CUT
from benchmate.joinery.brace import cutting, end, findings, hole
from benchmate.joinery.brace.legs import legs
from benchmate.joinery.brace.peg_features import peg_features
from benchmate.joinery.brace.pegged import pegged
from benchmate.joinery.brace.record import BraceJoint
from benchmate.joinery.brace.shape import end_shape, hole_shape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import told_on


def features(joint: BraceJoint, frame: Frame) -> tuple[Feature, ...]:
    """The brace's end, its mortise and its pegs. What stops one side stops the other."""
    tape = frame.project.tape
    made = end_shape(joint, frame)
    received = hole_shape(joint, made, frame)
    leg = legs(joint, made.stick, frame)
    told = findings.told(made, received, tape)
    brace_side = Feature(
        id=made.feature,
        timber=made.stick.id,
        title=f"{made.stick.pose.words(made.end).capitalize()} tenon",
        at=made.shoulder,
        place=made.places,
        cuts=end.end_cuts(made),
        lines=end.end_lines(made, leg, tape),
        tasks=cutting.end_tasks(made, tape),
        sizes=cutting.end_sizes(made),
        awaits=awaits_measuring(made.stick) if made.end is Face.FAR_END else (),
        findings=told_on(made.stick.id, made.feature, told),
    )
    hole_side = Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"Mortise for {made.stick.name}",
        at=received.along[0],
        place=(received.feature,),
        cuts=hole.hole_cuts(received),
        lines=hole.hole_lines(received, leg, tape),
        tasks=hole.hole_tasks(received),
        awaits=(Awaits(made.stick.id, f"{made.feature}/{AS_CUT}"),),
        mated=True,
        findings=told_on(received.stick.id, received.feature, told),
    )
    if joint.pegs is None:
        return (brace_side, hole_side)
    return (brace_side, hole_side, *peg_features(pegged(joint.pegs, made, received), told, tape))


FAMILY = Family(name="brace", table="joint", record=BraceJoint, features=features)
