"""A tenon and its mortise by their definition: boxes round one middle, and round holes across.

How it works
1. The shoulder bears so deep in as it is housed. Past it the stick keeps its tenon alone: cheek to
   cheek as thick as said, with the other timber's grain from one narrow edge to the other.
2. The mortise lets in the tenon as it was made, and is a little deeper than that is long; where the
   tenon goes through it has no bottom. The housing takes the whole end, and by square rule the end
   comes down to its inner timber as far as it goes in.
3. A peg goes square through the cheeks. Its hole in the tenon lies nearer the shoulder by the draw.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import cos, pi, sin

from benchmate.frame.frame import Frame
from benchmate.joinery.tenon.record import TenonJoint
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, hull
from tests.proof.raising import end_names
from tests.proof.textbook.entry import FAR, Across, Entry, Side, Span, entry
from tests.proof.wood import Direction, Log

ROUND = 40
"""How many sides stand for a round hole, their corners on it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tenon:
    """One tenon in its place: how far in its shoulder bears, and all of it across and along."""

    joint: TenonJoint
    met: Entry
    shoulder: int

    @property
    def long(self) -> float:
        """As given, or all the wood it passes less what it is held short of the face across."""
        if self.joint.length is not None:
            return self.joint.length.nm
        return self.met.beyond - self.shoulder - self.joint.held_short.nm

    @property
    def edge(self) -> int:
        """How far in the narrow edge on the reference side lies."""
        return (self.joint.relief_reference or self.joint.all_round).nm

    @property
    def across(self) -> Across:
        """From cheek to cheek and from edge to edge, as laid out.

        A far edge that is struck is struck in from the reference side: on the stick as drawn, or on
        its inner timber. One that is not is the stick's own face.
        """
        stick, number = self.met.stick, self.met.grain
        off = (self.joint.relief_far or self.joint.all_round).nm
        held = stick.stock.inner or stick.stock.drawn
        struck = bool(off) or stick.stock.inner is not None
        far = held[number - 1] - off if struck else stick.real(number)
        near = self.joint.set_back.nm
        return {
            self.met.aside: (near, near + self.joint.thickness.nm),
            number: (self.edge, far),
        }

    def made(self, size: str, laid_out: float) -> float:
        """A size as it was cut, if that was measured."""
        stock, feature = self.met.stick.stock, self.met.stick.feature
        return stock.cut(feature, size) or laid_out

    @property
    def made_across(self) -> Across:
        """The same as cut, counted from the near cheek and the reference edge."""
        found = {}
        for number, size in ((self.met.aside, "thickness"), (self.met.grain, "width")):
            low, high = self.across[number]
            found[number] = (low, low + self.made(size, high - low))
        return found

    @property
    def made_long(self) -> float:
        """Its length as cut."""
        return self.made("length", self.long)

    def body(self, *, longer: float = 0) -> Solid:
        """The tenon that was made, in the building, `longer` than that."""
        end = self.shoulder + self.made_long + longer
        return self.met.box((self.shoulder, end), self.made_across)

    def bottom(self, frame: Frame) -> float:
        """How far in the mortise goes."""
        if self.joint.through:
            return FAR
        own = self.joint.bottom_clearance
        spare = frame.project.practice.bottom_clearance if own is None else own
        return self.shoulder + self.made_long + spare.nm


def tenon(joint: TenonJoint, logs: Mapping[str, Log]) -> Tenon:
    """The tenon of a joint of two timbers. Raises KeyError for one that stands alone."""
    feature, other = end_names(joint)
    stick = Side(log=logs[joint.timber], feature=feature)
    met = entry(stick, joint.end, Side(log=logs[joint.into or ""], feature=other))
    return Tenon(joint=joint, met=met, shoulder=joint.housing.nm)


def textbook(joint: TenonJoint, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a tenon and its mortise take off their timbers, without their pegs."""
    found = tenon(joint, logs)
    met, shoulder = found.met, found.shoulder
    kept = met.box((shoulder, shoulder + found.long), found.across)
    beyond = met.box((shoulder, FAR)).without([kept])
    hole = met.box((-FAR, found.bottom(frame)), found.made_across)
    return {
        f"{joint.timber}/{met.stick.feature}": beyond.joined(_reduced(found)),
        f"{joint.into}/{met.other.feature}": hole.joined(_housing(found)),
    }


def _recess(found: Tenon) -> Span:
    """From the other timber's real face to where the shoulder bears."""
    return -found.met.over, found.shoulder


def _reduced(found: Tenon) -> list[Solid]:
    """What lies outside the section that the frame counts on, as far as the end goes in."""
    low, high = _recess(found)
    if low == high:
        return []
    stick = found.met.stick
    return [found.met.box((low, FAR), {number: (stick.framed(number), FAR)}) for number in (1, 2)]


def _housing(found: Tenon) -> list[Solid]:
    """The recess that takes the whole end: open at each side of the other that it comes out to."""
    low, high = _recess(found)
    if low == high:
        return []
    met = found.met
    wide = met.stick.framed(met.aside)
    lowest, highest = sorted((met.near, met.far))
    sides = (-FAR if lowest >= 0 else 0, FAR if highest <= wide else wide)
    ends = (0, met.stick.framed(met.grain))
    return [met.box((low, high), {met.aside: sides, met.grain: ends})]


@dataclass(frozen=True, slots=True, kw_only=True)
class Bore:
    """A round hole across a joint: its axis so far `deep` in, `edge` along the other timber.

    It goes `across`, in from the stick's face that looks across the other timber's grain.
    """

    met: Entry
    deep: float
    edge: float
    across: Span
    size: float

    def body(self) -> Solid:
        """The hole in the building."""
        turns = (2 * pi * step / ROUND for step in range(ROUND))
        ring = [
            (self.deep + self.size / 2 * cos(turn), self.edge + self.size / 2 * sin(turn))
            for turn in turns
        ]
        corners = []
        for deep, edge in ring:
            for at in self.across:
                spot = {self.met.aside: at, self.met.grain: edge}
                corners.append((round(deep), round(spot[1]), round(spot[2])))
        return self.met.stand.put(hull(corners))

    def off(self, point: Direction) -> tuple[float, float]:
        """How far a point of the building lies off its axis: in, and along the other timber."""
        east, north, up = (a - b for a, b in zip(point, self.met.stand.zero, strict=True))
        gone = [
            sum(a * b for a, b in zip((east, north, up), way, strict=True))
            for way in self.met.stand.ways
        ]
        return gone[0] - self.deep, gone[self.met.grain] - self.edge


Bores = Mapping[str, tuple[Bore, ...]]
"""The round holes that a joint has in its timbers, by `<timber>/<feature>`."""


def bores(joint: TenonJoint, logs: Mapping[str, Log]) -> Bores:
    """The holes of a joint's pegs; none where it has no pegs."""
    pegs = joint.pegs
    if pegs is None:
        return {}
    found = tenon(joint, logs)
    first, apart = found.edge + pegs.from_edge.nm, pegs.spacing.nm if pegs.spacing else 0
    centres = [first + place * apart for place in range(pegs.count)]
    deep = found.shoulder + pegs.from_shoulder.nm
    bored = {
        (joint.into, found.met.other.feature): (deep, _bored(found)),
        (joint.timber, found.met.stick.feature): (deep - pegs.draw.nm, (-FAR, FAR)),
    }
    return {
        f"{timber}/{feature}-pegs": tuple(
            Bore(met=found.met, deep=at, edge=edge, across=across, size=pegs.size.nm)
            for edge in centres
        )
        for (timber, feature), (at, across) in bored.items()
    }


def _bored(found: Tenon) -> Span:
    """From the face of the other timber that its holes are bored from, to where they stop."""
    pegs, met = found.joint.pegs, found.met
    if pegs is None or pegs.blind_depth is None:
        return -FAR, FAR
    here, there = met.near, met.far_real
    if pegs.bored_from == "far":
        here, there = there, here
    inwards = 1 if there > here else -1
    low, high = sorted((here - inwards * FAR, here + inwards * pegs.blind_depth.nm))
    return low, high
