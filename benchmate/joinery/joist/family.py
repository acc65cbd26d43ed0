"""Joists that drop in from above, as the catalogue knows them: both sides from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.frame.reduction import reduction_cuts, reduction_lines
from benchmate.joinery.joist import end, findings, pocket, socket, tail, tailing
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from benchmate.joinery.joist.shape import EndShape, PocketShape, shapes
from benchmate.joinery.joist.slope import slope_cuts, slope_lines
from benchmate.joinery.joist.tail_shape import SocketShape, TailShape, tail_shapes
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: JoistPocket, frame: Frame) -> tuple[Feature, ...]:
    """The joist's end and its pocket. What stops one side stops the other."""
    tape = frame.project.tape
    made, received = shapes(joint, frame)
    told = findings.told(made, received, tape)
    return (
        _end(made, told_on(made.stick.id, made.feature, told)),
        _pocket(received, told_on(received.stick.id, received.feature, told), tape),
    )


def _end(shape: EndShape, told: tuple[Finding, ...]) -> Feature:
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"{shape.stick.pose.words(shape.end).capitalize()} bearing",
        at=shape.stick.shoulder(shape.end),
        place=shape.places,
        cuts=(*slope_cuts(shape), *reduction_cuts(shape.reduction)),
        lines=(*slope_lines(shape), *reduction_lines(shape.reduction)),
        tasks=end.end_tasks(shape),
        sizes=end.end_sizes(shape),
        awaits=awaits_measuring(shape.stick) if shape.end is Face.FAR_END else (),
        findings=told,
    )


def _pocket(shape: PocketShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"Pocket for {shape.joist.stick.name}",
        at=shape.along[0],
        place=(shape.feature,),
        cuts=pocket.pocket_cuts(shape),
        lines=pocket.pocket_lines(shape, tape),
        tasks=pocket.pocket_tasks(shape),
        findings=told,
        awaits=(Awaits(shape.joist.stick.id, f"{shape.joist.feature}/{end.AS_CUT}"),),
        mated=True,
    )


def dovetail_features(joint: DovetailJoist, frame: Frame) -> tuple[Feature, ...]:
    """The joist's tail and its socket. What stops one side stops the other."""
    tape = frame.project.tape
    made, received = tail_shapes(joint, frame)
    told = findings.tail_told(made, received, tape)
    wedged = joint.wedge is not None
    return (
        _tail(made, told_on(made.stick.id, made.feature, told), wedged=wedged),
        _socket(received, told_on(received.stick.id, received.feature, told), tape),
    )


def _tail(shape: TailShape, told: tuple[Finding, ...], *, wedged: bool) -> Feature:
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"{shape.stick.pose.words(shape.end).capitalize()} dovetail",
        at=shape.shoulder,
        place=shape.places,
        cuts=tail.tail_cuts(shape),
        lines=tail.tail_lines(shape),
        tasks=tailing.tail_tasks(shape, wedged=wedged),
        sizes=tailing.tail_sizes(shape),
        awaits=awaits_measuring(shape.stick) if shape.end is Face.FAR_END else (),
        findings=told,
    )


def _socket(shape: SocketShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    joist = shape.tail
    return Feature(
        id=shape.feature,
        timber=shape.stick.id,
        title=f"Socket for {joist.stick.name}",
        at=shape.along[0],
        place=(shape.feature,),
        cuts=socket.socket_cuts(shape),
        lines=socket.socket_lines(shape, tape),
        tasks=socket.socket_tasks(shape, tape),
        findings=told,
        awaits=(Awaits(joist.stick.id, f"{joist.feature}/{tailing.AS_CUT}"),),
        mated=True,
    )


DOVETAIL = Family(
    name="dovetail joist", table="joint", record=DovetailJoist, features=dovetail_features
)
FAMILY = Family(name="joist pocket", table="joint", record=JoistPocket, features=features)
