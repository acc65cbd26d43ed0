"""A scarf by its definition: what each stick keeps beyond its body, drawn along and in.

How it works
1. Seen from beside the lap, along from the middle of the scarf and in from the face both sticks
   share, each stick is a body with a tapering tongue of wood. Its outline is drawn here corner by
   corner; what is not kept comes off.
2. Beside that, a bridled lap ends in a narrower tongue, with a slot for it in the other body, and
   a key takes a block out of both.
3. By square rule what lies outside the inner timber comes off beyond each stick's own shoulder.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.scarf.record import ScarfJoint
from benchmate.measure.length import Length
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


def _faces(log: Log) -> tuple[object, ...]:
    return log.timber.first_face, log.timber.second_face


def textbook(joint: ScarfJoint, frame: Frame, logs: Mapping[str, Log]) -> Wastes:
    """The wood that a scarf takes off both its sticks."""
    seen = view(joint, frame, logs)
    near = joint.keeps in _faces(logs[joint.timber])
    ends = {joint.timber: (1, near), joint.into: (-1, not near)}
    words = {joint.timber: joint.end.word, joint.into: joint.end.opposite.word}
    names = {"up": "head", "down": "foot"}
    return {
        f"{timber}/{names.get(words[timber], words[timber] + '-end')}-scarf": _waste(
            joint, seen, logs[timber], sense, keeps_near=keeps_near, frame=frame
        )
        for timber, (sense, keeps_near) in ends.items()
    }


def _waste(
    joint: ScarfJoint, seen: View, log: Log, sense: int, *, keeps_near: bool, frame: Frame
) -> Solid:
    """What is not kept of one stick, from a little before its shoulder on."""
    mirrored = _Mirrored(seen, sense, keeps_near)
    reach = joint.length.nm / 2 - (joint.tongue_length.nm if joint.tongue_length else 0)
    all_ahead = mirrored.box((-reach, FAR), (-ROOM, seen.deep + ROOM), (-ROOM, seen.wide + ROOM))
    kept = [each for each in _kept(joint, mirrored, reach)]
    if log.layout.stick.inner is not None:
        kept = [each.within(_inner(mirrored, reach)) for each in kept]
    taken = [all_ahead.without(kept)]
    if joint.tongue_length and joint.tongue and joint.set_back:
        clearance = joint.bottom_clearance
        room = Length.inches(0, 1, 8) if clearance is None else clearance
        slot = (joint.set_back.nm, (joint.set_back + joint.tongue).nm)
        back = -reach - joint.tongue_length.nm - room.nm
        taken.append(mirrored.box((back, 0), (seen.deep / 2, seen.deep + ROOM), slot))
    if joint.key:
        half = joint.key.nm / 2
        taken.append(
            mirrored.box((-half, half), (seen.deep / 2 - half, seen.deep), (-ROOM, FAR))
        )
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


def _kept(joint: ScarfJoint, stick: _Mirrored, reach: float) -> list[Solid]:
    """What one stick keeps ahead of its shoulder, in from the face its lap keeps."""
    deep, wide = stick.seen.deep, (-ROOM, stick.seen.wide + ROOM)
    if joint.butt is None:
        kept = [stick.box((-reach, reach), (-ROOM, deep / 2), wide)]
        if joint.tongue and joint.set_back:
            tongue = (joint.set_back.nm, (joint.set_back + joint.tongue).nm)
            kept.append(stick.box((-reach, FAR), (-ROOM, deep / 2), tongue))
        return kept
    butt = joint.butt.nm
    lean = (joint.squint.nm if joint.squint else 0) / butt
    heel, toe = (-reach, deep - butt), (reach, butt)
    lap = [heel, toe, (reach - lean * (butt + ROOM), -ROOM), (-reach, -ROOM)]
    kept = [stick.solid(lap, wide)]
    if lean:
        lip = [heel, (-reach + lean * (butt + ROOM), deep + ROOM), (-reach, deep + ROOM)]
        kept.append(stick.solid(lip, wide))
    return kept


def _inner(stick: _Mirrored, reach: float) -> Solid:
    """The inner timber ahead of the shoulder: its far faces, as far as the lap runs along them."""
    deep = (-ROOM, stick.seen.deep + ROOM) if stick.near else (0.0, FAR)
    return stick.box((-reach, FAR), deep, (-ROOM, stick.seen.wide))
