"""An abutting end by its definition: angles and lengths in the upright plane it thrusts in.

How it works
1. In that plane everything is said from the face that is entered: how far along it from the toe
   towards the heel, and how deep in. The toe is where the edge that reaches farther out meets it.
2. The abutment leaves the toe at an angle off square: none, the whole angle between timber and
   face, or half of it. The sole goes from where it is as deep as the notch back to the heel.
3. Both lines are sawn straight on through what a stick is over. Of the end, all stays that lies
   before both of them, and the tenon. The other timber loses what is let in, and the mortise.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import acos, tan

from benchmate.joinery.joggle.record import JoggleJoint
from benchmate.measure.length import Length
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, block
from tests.proof.wood import Direction, Log

FAR = 20_000_000_000
"""Further than any timber runs, in nanometres."""

_FINE = 10**12
_HAIR = 1e-6

_TURNS = {"square to the face": 0.0, "bisecting": 0.5, "square to the rake": 1.0}
"""How much of the angle between timber and face each abutment leans back from square."""

Run = tuple[float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Half:
    """All on one side of a plane through a point; `out` points away from it."""

    out: Direction
    point: Direction

    def short_of(self, point: Direction) -> float:
        """How far the plane lies short of a point, as its own side goes outwards."""
        return _dot(self.out, _plus(point, _times(self.point, -1)))

    @property
    def other(self) -> "Half":
        """All on the other side."""
        return Half(out=_times(self.out, -1), point=self.point)


def region(halves: Iterable[Half]) -> Solid:
    """What lies on the right side of every plane."""
    body = block(((-FAR, FAR),) * 3)
    for half in halves:
        east, north, up = (round(part * _FINE) for part in half.out)
        body = body.behind((east, north, up), round(_dot(half.out, half.point) * _FINE))
    return body


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """An end on the face it enters, in the building.

    `inward` goes into the receiving timber, `heelward` along its face from `toe` to heel, which is
    `foot` away; `back` goes up the end's own timber, away from the joint, and makes `angle` with
    the face. `lean` is how much the abutment leans off square. `over` is how far the real face lies
    before the face as the frame counts on it.
    """

    toe: Direction
    inward: Direction
    heelward: Direction
    back: Direction
    foot: float
    angle: float
    lean: float
    over: float

    def spot(self, along: float, deep: float) -> Direction:
        """A point so far along the face from the toe and so deep in."""
        return _plus(self.toe, _times(self.heelward, along), _times(self.inward, deep))

    def line(self, one: Run, other: Run, keeps: Run) -> Half:
        """The side of the line through two such points that a third lies on."""
        along, deep = other[0] - one[0], other[1] - one[1]
        out = (deep, -along)
        if out[0] * (keeps[0] - one[0]) + out[1] * (keeps[1] - one[1]) > 0:
            out = (-deep, along)
        long = (along**2 + deep**2) ** 0.5
        normal = _plus(_times(self.heelward, out[0] / long), _times(self.inward, out[1] / long))
        return Half(out=normal, point=self.spot(*one))

    def deeper_than(self, deep: float) -> Half:
        """All that lies deeper in than that."""
        return Half(out=_times(self.inward, -1), point=self.spot(0, deep))

    def abutment(self, deep: float) -> Run:
        """Where the abutment is so deep in."""
        return deep * tan(self.lean), deep

    def behind_abutment(self) -> Half:
        """All on the heel's side of the abutment's line."""
        return self.line((0, 0), self.abutment(FAR / 20), (FAR / 20, 0))

    def sole(self, notch: float) -> Half:
        """All on the end's own side of the sole's line."""
        return self.line(self.abutment(notch), (self.foot, 0), (0, 0))


def stand(joint: JoggleJoint, logs: Mapping[str, Log]) -> Stand:
    """Where an end stands on the face it enters."""
    rake, into = logs[joint.timber], logs[joint.into]
    aside = _aside(rake)
    back = _times(rake.stand.ways[0], 1 if joint.end is rake.timber.reference_end else -1)
    number = _in_plane(into, aside)
    inward, far = into.stand.ways[number], _dot(into.stand.ways[number], back) > 0
    face, over = into.stand.zero, 0.0
    if far:
        counted = framed(into, number)
        face, over = _plus(face, _times(inward, counted)), _real(into, number) - counted
        inward = _times(inward, -1)
    across = _in_plane(rake, aside)
    edges = [
        _plus(rake.stand.zero, _times(rake.stand.ways[across], deep))
        for deep in (0.0, framed(rake, across))
    ]
    meets = [_meets(edge, back, face, inward) for edge in edges]
    reach = [-_dot(back, _plus(meet, _times(meets[0], -1))) for meet in meets]
    toe, heel = meets if reach[1] < 1 else meets[::-1]
    apart = _plus(heel, _times(toe, -1))
    foot = _dot(apart, apart) ** 0.5
    heelward = _times(apart, 1 / foot)
    angle = acos(max(-1.0, min(1.0, _dot(heelward, back))))
    return Stand(
        toe=toe,
        inward=inward,
        heelward=heelward,
        back=back,
        foot=foot,
        angle=angle,
        lean=_TURNS[joint.abutment] * angle,
        over=over,
    )


def _aside(rake: Log) -> int:
    """The level building axis square to the upright plane a timber rakes in: east or north."""
    return 0 if abs(rake.stand.ways[0][0]) < _HAIR else 1


def _in_plane(log: Log, aside: int) -> int:
    """Which of a timber's two ways across lies in that plane."""
    return 1 if abs(log.stand.ways[1][aside]) < _HAIR else 2


def _meets(start: Direction, way: Direction, face: Direction, inward: Direction) -> Direction:
    gap = _dot(inward, _plus(face, _times(start, -1)))
    return _plus(start, _times(way, gap / _dot(inward, way)))


def framed(log: Log, number: int) -> float:
    """How deep a stick is as the frame counts on it, in from its first or second face."""
    section = log.layout.stick.inner or log.layout.stick.section()
    return (section.first, section.second)[number - 1].nm


def _real(log: Log, number: int) -> float:
    section = log.layout.stick.section()
    return (section.first, section.second)[number - 1].nm


def textbook(joint: JoggleJoint, logs: Mapping[str, Log]) -> Wastes:
    """The wood that an abutting end loses, and the timber it is let into."""
    rake, into = logs[joint.timber], logs[joint.into]
    met = stand(joint, logs)
    notch, tip = joint.notch.nm, (joint.notch + joint.length).nm
    end = "head" if joint.end.word == "up" else "foot"
    return {
        f"{joint.timber}/{end}-tenon": _off_the_end(joint, rake, met, notch, tip),
        f"{joint.into}/{joint.id}-notch": _off_the_other(joint, (rake, into), met, notch, tip),
    }


def _off_the_end(joint: JoggleJoint, rake: Log, met: Stand, notch: float, tip: float) -> Solid:
    abutment, sole = met.behind_abutment(), met.sole(notch)
    kept = [
        region([abutment, sole]),
        region([abutment, met.deeper_than(tip).other, *_cheeks(joint, rake)]),
    ]
    return region([]).without(kept).joined(_reduced(rake, met))


def _reduced(rake: Log, met: Stand) -> list[Solid]:
    """By square rule, what lies outside the inner timber as far as the end goes in."""
    if rake.layout.stick.inner is None:
        return []
    goes_in, found = met.deeper_than(-met.over), []
    for number in (1, 2):
        way = rake.stand.ways[number]
        outer = _plus(rake.stand.zero, _times(way, framed(rake, number)))
        found.append(region([goes_in, Half(out=_times(way, -1), point=outer)]))
    return found


def _cheeks(joint: JoggleJoint, rake: Log) -> tuple[Half, Half]:
    """What lies between the cheeks of the tenon."""
    far = joint.set_back + joint.thickness
    return _between(rake, _aside(rake), (joint.set_back.nm, far.nm))


def _between(log: Log, aside: int, depths: Run) -> tuple[Half, Half]:
    """What lies between two depths across a timber."""
    way = log.stand.ways[3 - _in_plane(log, aside)]
    low, high = (_plus(log.stand.zero, _times(way, depth)) for depth in depths)
    return Half(out=_times(way, -1), point=low), Half(out=way, point=high)


def _off_the_other(
    joint: JoggleJoint, logs: tuple[Log, Log], met: Stand, notch: float, tip: float
) -> Solid:
    rake, into = logs
    aside = _aside(rake)
    abutment, sole = met.behind_abutment(), met.sole(notch)
    cheeks = _cheeks(joint, rake)
    wide = _between(rake, aside, (0, framed(rake, 3 - _in_plane(rake, aside))))
    let_in = region([abutment, sole, *_closed(wide, into, aside)])
    ease = (Length.inches(0, 1, 4) if joint.ease is None else joint.ease).nm
    clear = joint.bottom_clearance
    floor = tip + (Length.inches(0, 1, 8) if clear is None else clear).nm
    back = met.line((met.foot + ease, 0), (met.foot + ease, floor), (0, 0))
    mortise = region([abutment, back, met.deeper_than(floor).other, *cheeks])
    return let_in.joined([mortise])


def _closed(wide: tuple[Half, Half], into: Log, aside: int) -> list[Half]:
    """The sides of an end at which the other timber has wood beside it."""
    own = _between(into, aside, (0, framed(into, 3 - _in_plane(into, aside))))
    return [half for half in wide if max(half.short_of(side.point) for side in own) > 1]


def _times(way: Direction, by: float) -> Direction:
    return way[0] * by, way[1] * by, way[2] * by


def _plus(*ways: Direction) -> Direction:
    east, north, up = (sum(way[axis] for way in ways) for axis in range(3))
    return east, north, up


def _dot(one: Direction, other: Direction) -> float:
    return sum(a * b for a, b in zip(one, other, strict=True))
