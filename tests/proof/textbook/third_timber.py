"""A tenon that touches a third timber, by its definition: boxes in the building.

How it works
1. A tenon is a box beyond the face its timber bears on: so thick, so wide, so long, set back from
   the reference face that looks across the grain of the timber that receives it. Sizes that were
   measured as cut count instead.
2. Its mortise is that box, open at the face it goes in by, and a little deeper.
3. Where it goes through another tenon, that tenon loses whatever of it lies in the mortise.
4. In a timber that it goes on into, the mortise is the same box again.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.measure.length import Length
from tests.proof.kernel import Solid, block
from tests.proof.wood import Log
from tests.space import TOWARDS, Box, Span

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tenon:
    """A tenon in the building: its box, the axis it runs on, and the sense it goes in."""

    box: Box
    axis: int
    sense: int

    def stretched(self, back: int, ahead: int) -> Solid:
        """The same with so much more at its root and at its end."""
        low, high = self.box[self.axis]
        spans = list(self.box)
        before, after = (back, ahead) if self.sense > 0 else (ahead, back)
        spans[self.axis] = (low - before, high + after)
        return block((spans[0], spans[1], spans[2]))


def tenon_of(joint: TenonJoint, logs: Mapping[str, Log]) -> Tenon:
    """Where a tenon comes, by the faces of its own timber and of the one that receives it."""
    log, into = logs[joint.timber], logs[joint.into or ""]
    axis, sense = TOWARDS[joint.end.word]
    made = log.layout.stick.as_cut.get(_feature(joint))
    cheek = next(n for n in (1, 2) if _axis(log, n) != _axis(into, 0))
    thick = (made and made.thickness) or joint.thickness
    near = joint.set_back.nm
    start = (joint.relief_reference or joint.all_round).nm
    wide = made and made.width
    stop = start + wide.nm if wide else _far_edge(joint, log, 3 - cheek)
    seat, exit_ = _bears(joint, into, axis, sense)
    long = abs(exit_ - seat) + joint.past.nm - joint.held_short.nm
    if joint.length is not None:
        long = joint.length.nm
    if made and made.length:
        long = made.length.nm
    spans: list[Span] = [(0, 0)] * 3
    spans[axis] = _sorted(seat, seat + sense * long)
    spans[_axis(log, cheek)] = _across(log, cheek, near, near + thick.nm)
    spans[_axis(log, 3 - cheek)] = _across(log, 3 - cheek, start, stop)
    return Tenon(box=(spans[0], spans[1], spans[2]), axis=axis, sense=sense)


def mortise_of(joint: TenonJoint, frame: Frame, logs: Mapping[str, Log]) -> Solid:
    """The wood of the receiving timber that a tenon takes the place of, whatever takes off more."""
    deeper = FAR if joint.through else _clearance(joint, frame)
    return tenon_of(joint, logs).stretched(FAR, deeper)


def mortise_beyond(joint: TenonJoint, frame: Frame, logs: Mapping[str, Log]) -> Solid:
    """The wood that it takes the place of in the timber it goes on into."""
    deeper = FAR if joint.beyond_through else _clearance(joint, frame)
    return tenon_of(joint, logs).stretched(FAR, deeper)


def tenon_wood(joint: TenonJoint, logs: Mapping[str, Log]) -> Solid:
    """A tenon itself."""
    return block(tenon_of(joint, logs).box)


def _clearance(joint: TenonJoint, frame: Frame) -> int:
    return (joint.bottom_clearance or frame.project.practice.bottom_clearance).nm


def _feature(joint: TenonJoint) -> str:
    return {"up": "head", "down": "foot"}.get(joint.end.word, f"{joint.end.word}-end") + "-tenon"


def _axis(log: Log, number: int) -> int:
    """Which building axis a reading of a timber goes along."""
    return [bool(step) for step in log.stand.ways[number]].index(True)


def _deep(log: Log, number: int, *, framed: bool) -> Length:
    stick = log.layout.stick
    section = stick.inner if framed and stick.inner else stick.section()
    return (section.first, section.second)[number - 1]


def _far_edge(joint: TenonJoint, log: Log, number: int) -> int:
    """How far in the far narrow edge lies: held by a relief or the inner timber, or as it is."""
    stick, cut_back = log.layout.stick, joint.relief_far or joint.all_round
    section = stick.inner or (stick.nominal if cut_back else stick.section())
    return ((section.first, section.second)[number - 1] - cut_back).nm


def _across(log: Log, number: int, start: int, stop: int) -> Span:
    axis = _axis(log, number)
    zero, way = log.stand.zero[axis], log.stand.ways[number][axis]
    return _sorted(round(zero + way * start), round(zero + way * stop))


def _bears(joint: TenonJoint, into: Log, axis: int, sense: int) -> Span:
    """Where a shoulder bears, and the face across from it, as coordinates in the building."""
    number = next(n for n in (1, 2) if _axis(into, n) == axis)
    arris, way = round(into.stand.zero[axis]), round(into.stand.ways[number][axis])
    framed, real = (arris + way * _deep(into, number, framed=each).nm for each in (True, False))
    enters, leaves = (arris, real) if way == sense else (framed, arris)
    return enters + sense * joint.housing.nm, leaves


def _sorted(one: int, other: int) -> Span:
    return (one, other) if one <= other else (other, one)
