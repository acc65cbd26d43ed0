"""A scarf by its definition: what each stick keeps beyond its body, drawn along and in.

How it works
1. Seen from beside the lap, along from the middle of the scarf and in from the face both sticks
   share, each stick is a body with a tapering tongue of wood. Its outline is drawn here corner by
   corner; what is not kept comes off.
2. A leaning abutment and the slope between cross where two lines of the outline do.
3. Beside that, a bridled lap ends in a narrower tongue, with a slot for it in the other body, and
   a key takes a block out of both.
4. By square rule what lies outside the inner timber comes off beyond each stick's own shoulder.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from benchmate.frame.frame import Frame
from benchmate.joinery.scarf.record import ScarfJoint
from benchmate.measure.length import Length
from benchmate.model.directions import Direction
from benchmate.model.progress import AsCut
from tests.proof.fits import Wastes
from tests.proof.kernel import Solid, block, hull
from tests.proof.wood import Log
from tests.space import TOWARDS

FAR = 10_000_000_000
"""Further than any stick of these frames runs, in nanometres."""

ROOM = 80_000_000
"""Past every face of a stick that is no more than three inches over its size, in nanometres."""

Spot = tuple[float, float]
"""Along from the middle of the scarf, towards the tip of the stick that is named first, and in."""


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """How spots lie in the building: the axes along, in and beside, each with its sense and zero.

    Beside counts in from the shared face there. `deep` and `wide` are the framed section.
    """

    along: tuple[int, int]
    inward: tuple[int, int]
    beside: tuple[int, int]
    zero: tuple[float, float, float]
    deep: float
    wide: float

    def solid(self, spots: list[Spot], wide: tuple[float, float]) -> Solid:
        """A convex outline, so far across beside it."""
        return hull([self.point(along, deep, at) for along, deep in spots for at in wide])

    def box(self, along: Spot, deep: Spot, wide: Spot) -> Solid:
        """A box by its three spans."""
        low, high = self.point(along[0], deep[0], wide[0]), self.point(along[1], deep[1], wide[1])
        spans = [(min(pair), max(pair)) for pair in zip(low, high, strict=True)]
        return block((spans[0], spans[1], spans[2]))

    def point(self, along: float, deep: float, wide: float) -> tuple[int, int, int]:
        """A spot of the view in the building."""
        found = [0, 0, 0]
        ways = (self.along, self.inward, self.beside)
        for (axis, sense), at, zero in zip(ways, (along, deep, wide), self.zero, strict=True):
            found[axis] = round(zero + sense * at)
        return found[0], found[1], found[2]


def view(joint: ScarfJoint, frame: Frame, logs: Mapping[str, Log]) -> View:
    """The scarf as seen from beside it, ahead towards the tip of `timber`."""
    log = logs[joint.timber]
    along = TOWARDS[joint.end.word]
    looks = {TOWARDS[each.word][0]: TOWARDS[each.word][1] for each in _faces(log)}
    halved = TOWARDS[joint.keeps.word][0]
    side = next(axis for axis in range(3) if axis not in (halved, along[0]))
    start = log.stand.zero
    section = log.layout.stick.inner or log.layout.stick.nominal
    first = TOWARDS[log.timber.first_face.word][0] == halved
    depths = (section.first.nm, section.second.nm)
    return View(
        along=along,
        inward=(halved, -looks[halved]),
        beside=(side, -looks[side]),
        zero=(float(frame.value(joint.at).nm), start[halved], start[side]),
        deep=float(depths[0] if first else depths[1]),
        wide=float(depths[1] if first else depths[0]),
    )


def _faces(log: Log) -> tuple[Direction, Direction]:
    return log.timber.first_face, log.timber.second_face


@dataclass(frozen=True, slots=True, kw_only=True)
class Lap:
    """How deep in from the shared face a lap lies, at the leading shoulder and at its tip.

    `thick` and `long` are those of the tongue that the other stick's slot takes.
    """

    root: float
    tip: float
    thick: float = 0
    long: float = 0


def textbook(joint: ScarfJoint, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a scarf takes off both its sticks, the second cut to the first as it came out.

    First is the stick whose lap keeps the shared face.
    """
    seen = view(joint, frame, logs)
    first = joint.timber if joint.keeps in _faces(logs[joint.timber]) else joint.into
    ends = {joint.timber: joint.end.word, joint.into: joint.end.opposite.word}
    names = {"up": "head", "down": "foot"}
    parts = {timber: f"{names.get(word, word + '-end')}-scarf" for timber, word in ends.items()}
    drawn = _drawn(joint, seen)
    as_cut = logs[first].layout.stick.as_cut.get(parts[first], AsCut())
    laps = {timber: drawn if timber == first else _as_cut(joint, drawn, as_cut) for timber in ends}
    return {
        f"{timber}/{parts[timber]}": _waste(
            joint,
            _Mirrored(seen, 1 if timber == joint.timber else -1, near=timber == first),
            laps[timber],
            square=logs[timber].layout.stick.inner is not None,
        )
        for timber in ends
    }


def _drawn(joint: ScarfJoint, seen: View) -> Lap:
    if joint.butt is not None:
        return Lap(root=seen.deep - joint.butt.nm, tip=joint.butt.nm)
    thick, long = joint.tongue, joint.tongue_length
    half = seen.deep / 2
    return Lap(root=half, tip=half, thick=thick.nm if thick else 0, long=long.nm if long else 0)


def _as_cut(joint: ScarfJoint, drawn: Lap, made: AsCut) -> Lap:
    """The leading lap as it came out: which size is which depends on its kind."""
    sizes = {name: size.nm for name, size in made if size is not None}
    thick, wide, long = (sizes.get(name) for name in ("thickness", "width", "length"))
    if joint.kind == "half lap":
        return replace(drawn, root=thick or drawn.root, tip=thick or drawn.tip)
    if joint.kind == "bridled":
        return Lap(
            root=wide or drawn.root,
            tip=wide or drawn.tip,
            thick=thick or drawn.thick,
            long=long or drawn.long,
        )
    return replace(drawn, root=wide or drawn.root, tip=thick or drawn.tip)


def _waste(joint: ScarfJoint, stick: "_Mirrored", lap: Lap, *, square: bool) -> Solid:
    """What is not kept of one stick, from its shoulder on, and what is cut into its body."""
    seen, own = stick.seen, joint.tongue_length.nm if joint.tongue_length else 0
    reach = joint.length.nm / 2 - own
    kept = _kept(joint, stick, lap, reach)
    start = -reach - ROOM if joint.squint else -reach
    all_ahead = stick.box((start, FAR), (-ROOM, seen.deep + ROOM), (-ROOM, seen.wide + ROOM))
    if square:
        kept = [each.within(_inner(stick, reach)) for each in kept]
    taken = [all_ahead.without(kept)]
    if joint.tongue and joint.set_back:
        given = joint.bottom_clearance
        clearance = (Length.inches(0, 1, 8) if given is None else given).nm
        slot = (joint.set_back.nm, joint.set_back.nm + lap.thick)
        deep = (stick.depths(lap)[0], seen.deep + ROOM)
        taken.append(stick.box((-reach - lap.long - clearance, 0), deep, slot))
    if joint.key:
        half = joint.key.nm / 2
        taken.append(stick.box((-half, half), (seen.deep / 2 - half, seen.deep), (-ROOM, FAR)))
    return taken[0].joined(taken[1:])


@dataclass(frozen=True, slots=True)
class _Mirrored:
    """The view with ahead towards this stick's own tip, and in from the face that its lap keeps."""

    seen: View
    sense: int
    near: bool

    def solid(self, spots: list[Spot], wide: Spot) -> Solid:
        """A convex outline, so far across beside it."""
        return self.seen.solid([self.turned(spot) for spot in spots], wide)

    def box(self, along: Spot, deep: Spot, wide: Spot) -> Solid:
        """A box by its three spans."""
        corners = [self.turned((along[0], deep[0])), self.turned((along[1], deep[1]))]
        spans = [tuple(sorted(pair)) for pair in zip(*corners, strict=True)]
        return self.seen.box((spans[0][0], spans[0][1]), (spans[1][0], spans[1][1]), wide)

    def turned(self, spot: Spot) -> Spot:
        """A spot of this stick in the view both share."""
        along, deep = spot
        return self.sense * along, deep if self.near else self.seen.deep - deep

    def depths(self, lap: Lap) -> Spot:
        """How deep in this stick's lap lies at its own shoulder and at its own tip."""
        if self.near:
            return lap.root, lap.tip
        return self.seen.deep - lap.tip, self.seen.deep - lap.root


def _kept(joint: ScarfJoint, stick: _Mirrored, lap: Lap, reach: float) -> list[Solid]:
    """What one stick keeps ahead of its shoulder, in from the face its lap keeps."""
    deep, wide = stick.seen.deep, (-ROOM, stick.seen.wide + ROOM)
    at_heel, at_toe = stick.depths(lap)
    if joint.butt is None:
        kept = [stick.box((-reach, reach), (-ROOM, at_heel), wide)]
        if joint.tongue and joint.set_back:
            tongue = (joint.set_back.nm, (joint.set_back + joint.tongue).nm)
            kept.append(stick.box((-reach, FAR), (-ROOM, at_heel), tongue))
        return kept
    butt = joint.butt.nm
    lean = (joint.squint.nm if joint.squint else 0) / butt
    slope = (at_toe - at_heel) / (2 * reach)
    low = (at_heel - slope * lean * (deep - butt)) / (1 - slope * lean)
    high = (at_toe - slope * lean * butt) / (1 - slope * lean)
    heel = (-reach + lean * (low - deep + butt), low)
    toe = (reach + lean * (high - butt), high)
    outline = [heel, toe, (reach - lean * (butt + ROOM), -ROOM), (-reach - ROOM, -ROOM)]
    kept = [stick.solid([*outline, (-reach - ROOM, low)], wide)]
    if lean:
        lip = [heel, (-reach + lean * (butt + ROOM), deep + ROOM), (-reach - ROOM, deep + ROOM)]
        kept.append(stick.solid([*lip, (-reach - ROOM, low)], wide))
    return kept


def _inner(stick: _Mirrored, reach: float) -> Solid:
    """The inner timber ahead of the shoulder, and the whole stick before it.

    Ahead it has its far faces, as far as the lap runs along them.
    """
    whole = (-ROOM, stick.seen.deep + ROOM)
    ahead = stick.box((-reach, FAR), whole if stick.near else (0.0, FAR), (-ROOM, stick.seen.wide))
    return ahead.joined([stick.box((-FAR, -reach), whole, (-ROOM, stick.seen.wide + ROOM))])
