"""Joists that drop in from above, as the catalogue knows them: both sides from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.reduction import reduction_cuts, reduction_lines
from benchmate.joinery.joist import end, findings, pocket, socket, tail, tailing
from benchmate.joinery.joist.record import DovetailJoist, JoistPocket
from benchmate.joinery.joist.shape import EndShape, PocketShape, shapes
from benchmate.joinery.joist.slope import slope_cuts, slope_lines
from benchmate.joinery.joist.tail_shape import SocketShape, TailShape, tail_shapes
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding


def features(joint: JoistPocket, frame: Frame) -> tuple[Feature, ...]:
    """The joist's end and its pocket. What stops one side stops the other."""
    tape = frame.tape
    made, received = shapes(joint, frame)
    told = findings.told(made, received, tape)
    return (_end(made, told), _pocket(received, told, tape))


def _end(shape: EndShape, told: tuple[Finding, ...]) -> Feature:
    return replace(
        end_side(shape, "bearing", told),
        cuts=(*slope_cuts(shape), *reduction_cuts(shape.reduction)),
        lines=(*slope_lines(shape), *reduction_lines(shape.reduction)),
        tasks=end.end_tasks(shape),
        sizes=end.end_sizes(shape),
    )


def _pocket(shape: PocketShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        mated_side(shape, shape.joist, told, noun="Pocket", at=shape.along[0]),
        cuts=pocket.pocket_cuts(shape),
        lines=pocket.pocket_lines(shape, tape),
        tasks=pocket.pocket_tasks(shape),
    )


def dovetail_features(joint: DovetailJoist, frame: Frame) -> tuple[Feature, ...]:
    """The joist's tail and its socket. What stops one side stops the other."""
    tape = frame.tape
    made, received = tail_shapes(joint, frame)
    told = findings.tail_told(made, received, tape)
    wedged = joint.wedge is not None
    return (_tail(made, told, wedged=wedged), _socket(received, told, tape))


def _tail(shape: TailShape, told: tuple[Finding, ...], *, wedged: bool) -> Feature:
    return replace(
        end_side(shape, "dovetail", told),
        cuts=tail.tail_cuts(shape),
        lines=tail.tail_lines(shape),
        tasks=tailing.tail_tasks(shape, wedged=wedged),
        sizes=tailing.tail_sizes(shape),
    )


def _socket(shape: SocketShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        mated_side(shape, shape.tail, told, noun="Socket", at=shape.along[0]),
        cuts=socket.socket_cuts(shape),
        lines=socket.socket_lines(shape, tape),
        tasks=socket.socket_tasks(shape, tape),
    )


DOVETAIL = Family(
    name="dovetail joist", table="joint", record=DovetailJoist, features=dovetail_features
)
FAMILY = Family(name="joist pocket", table="joint", record=JoistPocket, features=features)
