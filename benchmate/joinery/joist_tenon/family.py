"""Soffit and tusk tenons as the catalogue knows them: both sides of a joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.joist_tenon import chopping, cutting, end, findings, mortise
from benchmate.joinery.joist_tenon.hole_shape import HoleShape, hole_shape
from benchmate.joinery.joist_tenon.record import SoffitTenon, TuskTenon
from benchmate.joinery.joist_tenon.shape import EndShape, end_shape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding


def features(joint: SoffitTenon | TuskTenon, frame: Frame) -> tuple[Feature, ...]:
    """The joist's end and its mortise. What stops one side stops the other."""
    tape = frame.tape
    whole = joint.proportioned(frame.wood, frame.project.bare)
    made = end_shape(whole, frame)
    received = hole_shape(whole, made, frame)
    told = findings.told(made, received, tape)
    return (_end(made, told, tape), _hole(received, told, tape))


def _end(shape: EndShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    kind = "soffit" if shape.part.usual is None else "tusk"
    return replace(
        end_side(shape, f"{kind} tenon", told),
        cuts=end.end_cuts(shape),
        lines=end.end_lines(shape, tape),
        tasks=cutting.end_tasks(shape, tape),
        sizes=cutting.end_sizes(shape),
    )


def _hole(shape: HoleShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        mated_side(shape, shape.joist, told, noun="Mortise", at=shape.along[0]),
        cuts=mortise.hole_cuts(shape),
        lines=mortise.hole_lines(shape, tape),
        tasks=chopping.hole_tasks(shape, tape),
    )


SOFFIT = Family(name="soffit tenon", table="joint", record=SoffitTenon, features=features)
TUSK = Family(name="tusk tenon", table="joint", record=TuskTenon, features=features)
