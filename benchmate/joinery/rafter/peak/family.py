"""The rafter peak as the catalogue knows it: both heads of a pair from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import AS_CUT
from benchmate.joinery.rafter.ends import cut_twice
from benchmate.joinery.rafter.peak import cutting, findings, head
from benchmate.joinery.rafter.peak.record import RafterPeak
from benchmate.joinery.rafter.peak.shape import HeadShape, head_shapes
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on

TITLES = {"head-cut": "Head cut", "head-lap": "Half lap", "head-tongue": "Tongue"}


def features(joint: RafterPeak, frame: Frame) -> tuple[Feature, ...]:
    """Both heads. What stops one side stops the other."""
    tape = frame.tape
    shapes = head_shapes(joint, frame)
    told = (*findings.told(*shapes, tape), *_cut_twice(joint, shapes, frame))
    first, second = (_feature(shape, told, tape) for shape in shapes)
    return (first, second)


def _cut_twice(
    joint: RafterPeak, shapes: tuple[HeadShape, HeadShape], frame: Frame
) -> tuple[Finding, ...]:
    return tuple(
        finding
        for shape in shapes
        for finding in cut_twice(joint, frame, shape.rafter.stick.id, shape.feature, Direction.UP)
    )


def _feature(shape: HeadShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    stick = shape.rafter.stick
    return Feature(
        id=shape.feature,
        timber=stick.id,
        title=TITLES.get(shape.feature, "Fork"),
        at=stick.shoulder(shape.end),
        place=shape.places,
        cuts=head.head_cuts(shape),
        lines=head.head_lines(shape, tape),
        tasks=cutting.head_tasks(shape, tape),
        sizes=cutting.head_sizes(shape),
        awaits=_awaits(shape),
        mated=shape.lapped and not shape.tongue,
        findings=told_on(stick.id, shape.feature, told),
    )


def _awaits(shape: HeadShape) -> tuple[Awaits, ...]:
    """A lap or fork is cut to the one that was made; its root goes by the other's underside."""
    mate = shape.mate
    if not shape.lapped:
        return ()
    if not shape.tongue:
        return (Awaits(mate.stick.id, f"{shape.mate_feature}/{AS_CUT}"),)
    known = mate.stick.measured_depth(mate.plumb, *mate.places) is not None
    if known or mate.stick.inner is not None:
        return ()
    return (Awaits(mate.stick.id, f"{shape.mate_feature}/section"),)


FAMILY = Family(name="rafter peak", table="joint", record=RafterPeak, features=features)
"""The peak of a pair of rafters is a joint."""
