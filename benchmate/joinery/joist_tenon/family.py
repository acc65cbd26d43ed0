"""Soffit and tusk tenons as the catalogue knows them: both sides of a joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.joinery.joist_tenon import chopping, cutting, end, findings, mortise
from benchmate.joinery.joist_tenon.hole_shape import HoleShape, hole_shape
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.joinery.joist_tenon.shape import EndShape, end_shape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: SoffitTenon | TuskTenon, frame: Frame) -> tuple[Feature, ...]:
    """The joist's end and its mortise. What stops one side stops the other."""
    tape = frame.project.tape
    whole = joint.proportioned(frame.wood, frame.project.bare)
    made = end_shape(whole, frame)
    received = hole_shape(whole, made, frame)
    told = findings.told(made, received, tape)
    return (
        _end(made, told_on(made.stick.id, made.feature, told), tape),
        _hole(received, told_on(received.stick.id, received.feature, told), tape),
    )


def _end(shape: EndShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    kind = "soffit" if shape.part.usual is None else "tusk"
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"{shape.stick.pose.words(shape.end).capitalize()} {kind} tenon",
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
    joist = shape.joist
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"Mortise for {joist.stick.name}",
        at=shape.along[0],
        place=(shape.feature,),
        cuts=mortise.hole_cuts(shape),
        lines=mortise.hole_lines(shape, tape),
        tasks=chopping.hole_tasks(shape, tape),
        awaits=(Awaits(joist.stick.id, f"{joist.feature}/{cutting.AS_CUT}"),),
        mated=True,
        findings=told,
    )


SOFFIT = Family(name="soffit tenon", table="joint", record=SoffitTenon, features=features)
TUSK = Family(name="tusk tenon", table="joint", record=TuskTenon, features=features)
