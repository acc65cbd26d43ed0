"""A brace's joint by its definition: a triangle, a face, and boxes square to that face.

How it works
1. In the receiving timber's own directions everything but the brace's edges is a box: in from the
   face, along from where the long edge meets it, and across.
2. The brace keeps its housed end and its tenon beyond the face, both cut off square at the nose.
   All else of it beyond the face comes off.
3. Mortise and housing run from the nose to a little past the short edge.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import Length
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, block
from tests.proof.wood import Log, slope

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Corner:
    """The face a brace enters, in building axes: `into` is the axis in, `sense` the way in.

    `face` is the face's coordinate as the frame counts on it, `outside` where the wood really ends.
    `toe` is where the long edge meets it along `grain`, and `heel` steps from there to the short
    edge, `foot` away; `lean` is how far along the brace leans for each step out. `across` is the
    level axis across, with the brace's reference face at `side`.
    """

    into: int
    sense: int
    face: float
    outside: float
    grain: int
    toe: float
    heel: int
    foot: float
    lean: float
    across: int
    side: float
    inward: int

    def box(
        self, deep: tuple[float, float], along: tuple[float, float], wide: tuple[float, float]
    ) -> Solid:
        """A box from so deep to so deep, along from the toe towards the heel, across from side."""
        spans = [(0, 0)] * 3
        spans[self.into] = _span(self.face, self.sense, deep)
        spans[self.grain] = _span(self.toe, self.heel, along)
        spans[self.across] = _span(self.side, self.inward, wide)
        return block((spans[0], spans[1], spans[2]))


def _span(start: float, sense: int, run: tuple[float, float]) -> tuple[int, int]:
    low, high = sorted(round(start + sense * each) for each in run)
    return low, high


def corner(joint: BraceJoint, frame: Frame, logs: Mapping[str, Log]) -> Corner:
    """Where a brace's end meets the timber it enters."""
    brace, into = logs[joint.timber], logs[joint.into]
    run, rise = slope(frame, brace.timber)
    heading = brace.timber.incline.heading.value if brace.timber.incline else (0, 0, 0)
    axis = _axis(heading)
    outwards = 1 if joint.end.word == "up" else -1
    way = [0.0, 0.0, outwards * rise]
    way[axis] = outwards * run * sum(heading)
    standing = into.timber.upright
    enters, grain = (axis, 2) if standing else (2, axis)
    sense = 1 if way[enters] > 0 else -1
    start = brace.stand.zero
    face, outside = _face(into, enters, sense)
    toe = start[grain] + way[grain] * (face - start[enters]) / way[enters]
    cheek = 2 if brace.timber.first_face.word in ("up", "down") else 1
    looks = (brace.timber.first_face, brace.timber.second_face)[cheek - 1]
    across = _axis(looks.value)
    deep = _section(brace, 3 - cheek)
    return Corner(
        into=enters,
        sense=sense,
        face=face,
        outside=outside,
        grain=grain,
        toe=toe,
        heel=-1 if way[grain] > 0 else 1,
        foot=deep / abs(way[enters]),
        lean=abs(way[grain] / way[enters]),
        across=across,
        side=start[across],
        inward=-sum(looks.value),
    )


def _axis(direction: tuple[int, int, int]) -> int:
    return [bool(step) for step in direction].index(True)


def _face(into: Log, axis: int, sense: int) -> tuple[float, float]:
    """The coordinate of the face an end enters, as the frame counts on it and as it really is."""
    number = next(n for n in (1, 2) if into.stand.ways[n][axis])
    inward = into.stand.ways[number][axis]
    arris = into.stand.zero[axis]
    if inward == sense:
        return arris, arris
    stick = into.layout.stick
    section = stick.inner or stick.section()
    framed = (section.first, section.second)[number - 1].nm
    real = (stick.section().first, stick.section().second)[number - 1].nm
    return arris + inward * framed, arris + inward * real


def _section(log: Log, number: int) -> float:
    """How deep a stick is as the frame counts on it."""
    section = log.layout.stick.inner or log.layout.stick.section()
    return (section.first, section.second)[number - 1].nm


def textbook(joint: BraceJoint, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that one end of a brace takes off it and off the timber it enters."""
    brace, into = logs[joint.timber], logs[joint.into]
    met = corner(joint, frame, logs)
    housed, long = joint.housing.nm, joint.length.nm
    cheeks = (joint.set_back.nm, (joint.set_back + joint.thickness).nm)
    cheek = 2 if brace.timber.first_face.word in ("up", "down") else 1
    wide = _section(brace, cheek)
    over = abs(met.outside - met.face)
    past_nose = (joint.nose.nm, FAR)
    kept = [met.box((housed, housed + long), past_nose, cheeks)]
    if housed:
        kept.append(met.box((0, housed), past_nose, (-FAR, FAR)))
    beyond = met.box((0, FAR), (-FAR, FAR), (-FAR, FAR)).without(kept)
    if joint.nose and over:
        beyond = beyond.joined([met.box((-over, FAR), (-FAR, joint.nose.nm), (-FAR, FAR))])
    taken = [beyond, *_reduced(brace, joint, met, over, wide)]
    foot = met.foot + over * met.lean + (joint.ease or Length.inches(0, 1, 4)).nm
    bottom = housed + long + (joint.bottom_clearance or Length.inches(0, 1, 8)).nm
    hole = [met.box((housed, bottom), (joint.nose.nm, foot), cheeks)]
    if housed or over:
        hole.append(met.box((-over, housed), (joint.nose.nm, foot), _open(met, into, wide)))
    end = "head" if joint.end.word == "up" else "foot"
    return {
        f"{joint.timber}/{end}-tenon": taken[0].joined(taken[1:]),
        f"{joint.into}/{joint.id}-mortise": hole[0].joined(hole[1:]),
    }


def _open(met: Corner, into: Log, wide: float) -> tuple[float, float]:
    """Across a housing, on past every face of the timber that the brace comes flush to."""
    number = next(n for n in (1, 2) if into.stand.ways[n][met.across])
    way = round(into.stand.ways[number][met.across])
    near = (met.side - into.stand.zero[met.across]) * met.inward
    low, high = -near, -near + _section(into, number)
    if way != met.inward:
        low, high = -near - _section(into, number), -near
    return (-FAR if low >= 0 else 0, FAR if high <= wide else wide)


def _reduced(brace: Log, joint: BraceJoint, met: Corner, over: float, wide: float) -> list[Solid]:
    """By square rule, what lies outside the inner timber as far as the end goes in."""
    if brace.layout.stick.inner is None:
        return []
    plumb = 1 if brace.timber.first_face.word in ("up", "down") else 2
    found = []
    inside = met.box((-over, FAR), (-FAR, FAR), (-FAR, FAR))
    if joint.housing or over:
        found.append(inside.within(met.box((-FAR, FAR), (-FAR, FAR), (wide, FAR))))
    deep = _section(brace, plumb)
    spans = [(-FAR, FAR)] * 3
    spans[plumb] = (round(deep), FAR)
    outer = brace.stand.put(block((spans[0], spans[1], spans[2])))
    found.append(inside.within(outer))
    return found


def bored(
    joint: BraceJoint, frame: Frame, logs: Mapping[str, Log]
) -> dict[str, list[tuple[float, ...]]]:
    """Where the peg holes of one end come, by timber and feature; nothing without pegs.

    Each goes level across the frame, so it is told by its other two coordinates in the building:
    the one in from the face, and the one along it. Towards the brace's shoulder is out of the face;
    away from its nose is on towards the heel.
    """
    pegs = joint.pegs
    if pegs is None:
        return {}
    met = corner(joint, frame, logs)
    end = "head" if joint.end.word == "up" else "foot"
    apart = pegs.spacing.nm if pegs.spacing else 0
    sides = {f"{joint.timber}/{end}-tenon-pegs": pegs.draw.nm}
    sides[f"{joint.into}/{joint.id}-mortise-pegs"] = 0
    found = {}
    for name, draw in sides.items():
        deep = joint.housing.nm + pegs.from_shoulder.nm - draw
        alongs = (
            joint.nose.nm + pegs.from_edge.nm + apart * place + draw for place in range(pegs.count)
        )
        spots = []
        for along in alongs:
            spot = {met.into: met.face + met.sense * deep, met.grain: met.toe + met.heel * along}
            spots.append(tuple(spot[axis] for axis in sorted(spot)))
        found[name] = spots
    return found
