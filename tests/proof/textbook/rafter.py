"""A rafter's joints by their definitions: plumb and level boxes, and rafters through one another.

How it works
1. A seat is what a rafter would share with the timber under it, so it loses the box of that timber,
   and all that would lie under it further in. A head at a ridge and a tail lose what is beyond.
2. The other timber loses a box round what goes in.
3. Where two rafters meet, each is a slab between its top and its underside. Beyond the other's top
   it ends; inside the other's slab one keeps its tongue, and the other loses that.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.peak.record import RafterPeak
from benchmate.joinery.rafter.ridge.record import RafterRidge
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.tail.record import RafterTail
from tests.proof.fits import Wastes
from tests.proof.kernel import NOTHING, Solid, block
from tests.proof.wood import Log, slope

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

Span = tuple[float, float]
ALL: Span = (-FAR, FAR)


@dataclass(frozen=True, slots=True, kw_only=True)
class Upright:
    """The upright plane a rafter rakes in: the axis it runs on, the way it rises, and its slope."""

    log: Log
    axis: int
    sense: int
    level: float
    rise: float

    @property
    def plumb(self) -> int:
        """The number of the rafter's reading in from its top."""
        return 1 if self.log.timber.first_face.word == "up" else 2

    def sizes(self, number: int) -> tuple[float, float]:
        """A depth of the rafter as the frame counts on it, and as it really is."""
        return sizes(self.log, number)

    def up_at(self, ahead: float, deep: float = 0.0) -> float:
        """How high the line so deep under the top lies, so far ahead."""
        zero = self.log.stand.zero
        gone = ahead - self.sense * zero[self.axis]
        return zero[2] + (gone * self.rise - deep) / self.level

    def ahead_at(self, up: float, deep: float) -> float:
        """How far ahead that line reaches a height."""
        zero = self.log.stand.zero
        return self.sense * zero[self.axis] + ((up - zero[2]) * self.level + deep) / self.rise

    def box(self, ahead: Span, up: Span, across: Span = ALL) -> Solid:
        """A box in the building from so far ahead to so far ahead."""
        low, high = sorted(self.sense * each for each in ahead)
        spans = {self.axis: (low, high), 1 - self.axis: across, 2: up}
        (a, b), (c, d), (e, f) = (spans[axis] for axis in range(3))
        return block(((round(a), round(b)), (round(c), round(d)), (round(e), round(f))))

    def width(self, wide: float) -> Span:
        """Across the building, from the reference side to so deep in from it."""
        number = 3 - self.plumb
        across = 1 - self.axis
        start, way = self.log.stand.zero[across], self.log.stand.ways[number][across]
        low, high = sorted((start, start + way * wide))
        return low, high

    def slab(self, deep: Span, wide: Span = ALL) -> Solid:
        """What lies between two depths under the top, and two in from the reference side."""
        spans = [ALL, ALL, ALL]
        spans[self.plumb], spans[3 - self.plumb] = deep, wide
        (a, b), (c, d), (e, f) = spans
        body = block(((round(a), round(b)), (round(c), round(d)), (round(e), round(f))))
        return self.log.stand.put(body)


def sizes(log: Log, number: int) -> tuple[float, float]:
    """A depth of a stick as the frame counts on it, and as it really is."""
    stick = log.layout.stick
    real = stick.section()
    framed = stick.inner or real
    pick = [(each.first.nm, each.second.nm)[number - 1] for each in (framed, real)]
    return pick[0], pick[1]


def upright(frame: Frame, log: Log) -> Upright:
    """The plane a rafter rakes in."""
    level, rise = slope(frame, log.timber)
    heading = log.timber.incline.heading.value if log.timber.incline else (1, 0, 0)
    axis = [bool(step) for step in heading].index(True)
    return Upright(log=log, axis=axis, sense=sum(heading), level=level, rise=rise)


@dataclass(frozen=True, slots=True, kw_only=True)
class Faces:
    """How far ahead the two sides of a level timber lie and how high its top and bottom do.

    Each first as the frame counts on it, then as it really is.
    """

    near: Span
    far: Span
    top: Span
    bottom: Span


def faces(plane: Upright, log: Log) -> Faces:
    """The faces of a level timber across a rafter."""

    def both(axis: int, sense: int) -> Span:
        number = next(n for n in (1, 2) if log.stand.ways[n][axis])
        inward, zero = log.stand.ways[number][axis], log.stand.zero[axis]
        if inward == -sense:
            return sense * zero, sense * zero
        framed, real = sizes(log, number)
        return sense * (zero + inward * framed), sense * (zero + inward * real)

    near, far = both(plane.axis, -plane.sense), both(plane.axis, plane.sense)
    top, bottom = both(2, 1), both(2, -1)
    return Faces(near=(-near[0], -near[1]), far=far, top=top, bottom=(-bottom[0], -bottom[1]))


def textbook(
    joint: RafterSeat | RafterTail | RafterRidge | RafterPeak,
    frame: Frame,
    logs: Mapping[str, Log],
) -> Wastes:
    """The wood a rafter's joint takes off its timbers."""
    plane = upright(frame, logs[joint.timber])
    if isinstance(joint, RafterTail):
        return _tail(joint, plane)
    if isinstance(joint, RafterPeak):
        return _peak(joint, plane, upright(frame, logs[joint.into]))
    met = faces(plane, logs[joint.into])
    return _seat(joint, plane, met) if isinstance(joint, RafterSeat) else _ridge(joint, plane, met)


def _all(bodies: list[Solid]) -> Solid:
    return NOTHING.joined(bodies)


def _beyond_width(plane: Upright) -> Solid:
    """What of a rafter lies outside its inner timber, across."""
    framed, _ = plane.sizes(3 - plane.plumb)
    return plane.slab(ALL, (framed, FAR))


def _seat(joint: RafterSeat, plane: Upright, met: Faces) -> Wastes:
    wall = met.near[0] + joint.step.nm
    level = met.top[0] - joint.let_in.nm
    zero = plane.log.stand.zero
    foot = plane.sense * zero[plane.axis] if plane.log.timber.reference_end.word == "down" else None
    foot = _foot(plane) if foot is None else foot
    heeled = foot < met.near[0]
    start = met.near[0] if heeled else -FAR
    lost = [plane.box((wall, FAR), (-FAR, level)), plane.box((start, wall), (-FAR, met.top[0]))]
    if not joint.step:
        lost = [plane.box((start, FAR), (-FAR, level))]
    deep = plane.sizes(plane.plumb)[1]
    recess, outside = met.top[1] - level, (met.near[0] - met.near[1]) if heeled else 0
    if recess or outside:
        inside = plane.box((met.near[1] if heeled else -FAR, FAR), (-FAR, met.top[1]))
        lost.append(inside.within(_beyond_width(plane)))
    width = plane.width(plane.sizes(3 - plane.plumb)[0])
    end = min(plane.ahead_at(met.top[1], deep), FAR)
    hole = []
    if recess:
        hole.append(plane.box((wall if joint.step else -FAR, end), (level, FAR), width))
    if joint.step:
        hole.append(plane.box((-FAR, wall), (met.top[0], FAR), width))
    if outside:
        lip = plane.up_at(met.near[1], deep)
        hole.append(plane.box((-FAR, met.near[0]), (lip, FAR), width))
    return {
        f"{joint.timber}/{joint.id}-notch": _all(lost),
        f"{joint.into}/{joint.id}-seat": _all(hole),
    }


def _foot(plane: Upright) -> float:
    """How far ahead the lower end of a rafter's top edge lies that is measured from its head."""
    stick = plane.log.layout.stick
    low = plane.log.stand.point(stick.body.nm, 0, 0)
    return plane.sense * low[plane.axis]


def _tail(joint: RafterTail, plane: Upright) -> Wastes:
    upper = joint.end.word == "up"
    at_zero = (plane.log.timber.reference_end.word == "up") is upper
    along = 0 if at_zero else plane.log.layout.stick.body.nm
    point = plane.log.stand.point(along, 0, 0)
    ahead, up = plane.sense * point[plane.axis], point[2]
    lost = []
    if joint.cut != "level":
        lost.append(plane.box((ahead, FAR) if upper else (-FAR, ahead), ALL))
    if joint.cut == "level":
        lost.append(plane.box(ALL, (-FAR, up)))
    if joint.level is not None:
        drawn = plane.log.layout.stick
        number = plane.plumb
        section = drawn.inner or drawn.nominal
        deep = (section.first, section.second)[number - 1].nm
        lost.append(plane.box(ALL, (-FAR, plane.up_at(ahead + joint.level.nm, deep))))
    end = "head" if upper else "foot"
    return {f"{joint.timber}/{end}-tail": _all(lost)}


def _ridge(joint: RafterRidge, plane: Upright, met: Faces) -> Wastes:
    floor = met.near[0] + joint.let_in.nm
    framed, _ = plane.sizes(plane.plumb)
    seat, low = plane.up_at(floor, framed), plane.up_at(met.near[1], framed)
    lost = [plane.box((floor, FAR), ALL)]
    if joint.let_in:
        lost.append(plane.box((met.near[0], FAR), (-FAR, seat)))
    over = met.near[0] - met.near[1]
    if joint.let_in or over:
        inside = plane.box((met.near[1], FAR), ALL)
        lost.append(inside.within(_beyond_width(plane)))
        lost.append(inside.within(plane.slab((framed, FAR))))
    width = plane.width(plane.sizes(3 - plane.plumb)[0])
    high = plane.up_at(floor)
    hole = []
    if joint.let_in:
        hole.append(plane.box((-FAR, floor), (seat, high), width))
    if over:
        hole.append(plane.box((-FAR, met.near[0]), (low, high), width))
    return {
        f"{joint.timber}/head-cut": _all(lost),
        f"{joint.into}/{joint.id}-housing": _all(hole),
    }


def _peak(joint: RafterPeak, one: Upright, two: Upright) -> Wastes:
    parts = {"butt": ("cut", "cut"), "half lap": ("lap", "lap"), "bridle": ("tongue", "fork")}
    names = [
        f"{plane.log.timber.id}/head-{part}"
        for plane, part in zip((one, two), parts[joint.cut], strict=True)
    ]
    if joint.cut == "butt":
        return {
            name: plane.box((_peak_ahead(plane), FAR), ALL)
            for name, plane in zip(names, (one, two), strict=True)
        }
    stick = one.log.layout.stick
    section = stick.inner or stick.nominal
    drawn = (section.first, section.second)[2 - one.plumb].nm
    thick = drawn / 2 if joint.thickness is None else joint.thickness.nm
    as_cut = stick.as_cut.get(names[0].partition("/")[2])
    made = as_cut.thickness.nm if as_cut and as_cut.thickness else thick
    near = (drawn - thick) / 2 if joint.set_back is None else joint.set_back.nm
    near = -FAR if joint.cut == "half lap" else near
    start = 0 if joint.cut == "half lap" else near
    kept = one.slab(ALL, (near, start + thick))
    taken = one.slab(ALL, (near, start + made))
    first = two.slab((0, two.sizes(two.plumb)[0])).without([kept])
    second = one.slab((0, one.sizes(one.plumb)[0])).within(taken)
    lost = []
    for own, mate, inside in ((one, two, first), (two, one, second)):
        framed, _ = own.sizes(own.plumb)
        _, real = mate.sizes(mate.plumb)
        under = own.slab((framed, FAR)).within(mate.slab((-FAR, real)))
        lost.append(_all([mate.slab((-FAR, 0)), inside, under]))
    return dict(zip(names, lost, strict=True))


def _peak_ahead(plane: Upright) -> float:
    """How far ahead the upper end of a rafter's top edge lies."""
    stick = plane.log.layout.stick
    at_head = plane.log.timber.reference_end.word == "up"
    point = plane.log.stand.point(0 if at_head else stick.body.nm, 0, 0)
    return plane.sense * point[plane.axis]
