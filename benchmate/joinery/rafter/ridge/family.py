"""The rafter at a ridge as the catalogue knows it: both sides of one head from one record."""

from dataclasses import replace

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.joinery.rafter.ends import cut_twice
from benchmate.joinery.rafter.recess import lying_side
from benchmate.joinery.rafter.ridge import findings, head, housing
from benchmate.joinery.rafter.ridge.record import RafterRidge
from benchmate.joinery.rafter.ridge.shape import HeadShape, head_shape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, told_on


def features(joint: RafterRidge, frame: Frame) -> tuple[Feature, ...]:
    """The rafter's head and its place on the ridge. What stops one side stops the other."""
    tape = frame.tape
    shape = head_shape(joint, frame)
    stick = shape.rafter.stick
    told = (
        *findings.told(shape, tape),
        *cut_twice(joint, frame, stick.id, shape.feature, Direction.UP),
    )
    rafter_side = Feature(
        id=shape.feature,
        timber=stick.id,
        title="Head cut",
        at=stick.shoulder(shape.end),
        place=shape.places,
        cuts=head.head_cuts(shape),
        lines=head.head_lines(shape, tape),
        tasks=head.head_tasks(shape, tape),
        awaits=awaits_measuring(stick) if shape.end is Face.FAR_END else (),
        findings=told_on(stick.id, shape.feature, told),
    )
    return (rafter_side, _ridge(shape, told))


def _ridge(shape: HeadShape, told: tuple[Finding, ...]) -> Feature:
    what = "Housing" if shape.recess else "Place"
    return replace(
        lying_side(shape.ridge, shape.rafter, shape.feature, what, told),
        cuts=housing.housing_cuts(shape),
        lines=housing.housing_lines(shape),
        tasks=housing.housing_tasks(shape),
    )


FAMILY = Family(name="rafter ridge", table="joint", record=RafterRidge, features=features)
"""A rafter's head at a ridge is a joint."""
