"""A dovetailed joist dropped in from above, by its definition.

Seen from above its tail is as wide as the joist at its tip and narrower at the beam's face by its
flares. Of all that lies beyond the face the joist keeps that; the beam loses it, and its straight
continuation for as much as the socket is longer.
"""

from collections.abc import Mapping

from benchmate.frame.frame import Frame
from benchmate.joinery.joist.record import DovetailJoist
from benchmate.model.directions import Direction
from tests.proof.fits import Wastes
from tests.proof.textbook.level import ALL, FAR, Level, Span, housing, level, reduced
from tests.proof.wood import Log


def _spare(joint: DovetailJoist, frame: Frame) -> int:
    own = joint.end_clearance
    return (frame.project.practice.bottom_clearance if own is None else own).nm


def dovetail(joint: DovetailJoist, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a dovetailed joist takes off it and off its beam."""
    found = dict(logs)
    joist = found[joint.timber]
    met = level(joint, found)
    deep = joint.end_depth.nm if joint.end_depth else met.deep
    near = _side(joist)
    long = joint.length.nm + _spare(joint, frame)
    room = joint.wedge.nm if joint.wedge else 0
    down = (-FAR, deep)
    tail = met.prism(_corners(joint, met, (0, joint.length.nm), near), down)
    beyond = met.box((0, FAR), ALL, ALL).without([tail])
    socket = met.prism(_corners(joint, met, (-met.over, long), near, room), down)
    return {
        f"{joint.timber}/{joint.end.word}-end-dovetail": beyond.joined(reduced(met, joist)),
        f"{joint.into}/{joint.id}-socket": socket.joined(housing(met, dropped=True)),
    }


def _side(joist: Log) -> Direction:
    """Where the joist's side reference face looks."""
    timber = joist.timber
    return timber.first_face if timber.second_face is Direction.UP else timber.second_face


def _corners(
    joint: DovetailJoist, met: Level, long: Span, near: Direction, room: float = 0
) -> list[Span]:
    """A tail seen from above, each corner so far in and across; `room` on its wedge's side."""
    sides = (near, near.opposite)
    flares = [0 if joint.straight is side else joint.flare.nm for side in sides]
    out = [room * (joint.wedge_side is side) for side in sides]
    found = []
    for at in long:
        gone = 1 - at / joint.length.nm
        found += [(at, flares[0] * gone - out[0]), (at, met.wide - flares[1] * gone + out[1])]
    return found
