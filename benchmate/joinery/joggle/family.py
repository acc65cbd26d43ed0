"""The joggle as the catalogue knows it: both sides of one end's joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.frame.raking_tenon import AS_CUT
from benchmate.joinery.joggle import cutting, end, findings, hole, notching
from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.joinery.joggle.shape import EndShape, HoleShape, end_shape, hole_shape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: JoggleJoint, frame: Frame) -> tuple[Feature, ...]:
    """The abutting end and its notch. What stops one side stops the other."""
    tape = frame.project.tape
    made = end_shape(joint, frame)
    received = hole_shape(joint, made, frame)
    told = findings.told(made, received, tape)
    return (
        _end(made, told_on(made.stick.id, made.feature, told), tape),
        _hole(received, told_on(received.stick.id, received.feature, told), tape),
    )


def _end(shape: EndShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"{shape.end_words.capitalize()} tenon",
        at=shape.shoulder,
        place=shape.places,
        cuts=end.end_cuts(shape),
        lines=end.end_lines(shape, tape),
        tasks=cutting.end_tasks(shape, tape),
        sizes=cutting.end_sizes(shape),
        awaits=awaits_measuring(shape.stick) if shape.end is Face.FAR_END else (),
        findings=told,
    )


def _hole(shape: HoleShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"Notch for {shape.tenon.stick.name}",
        at=shape.along[0],
        place=(shape.feature,),
        cuts=hole.hole_cuts(shape),
        lines=hole.hole_lines(shape, tape),
        tasks=notching.hole_tasks(shape, tape),
        awaits=(Awaits(shape.tenon.stick.id, f"{shape.tenon.feature}/{AS_CUT}"),),
        mated=True,
        findings=told,
    )


FAMILY = Family(name="joggle", table="joint", record=JoggleJoint, features=features)
