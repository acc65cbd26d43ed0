"""What a lap takes off each of its timbers, on the real sticks and in their own readings.

How it works
1. The notch in one timber is as wide as the other lies in it, as the frame counts on that one: as
   measured, or by square rule its inner timber. So the walls of each are the other's own faces,
   carried over, and cannot disagree.
2. By square rule what a stick has over its inner timber on its far face comes off where the other
   clasps it. The timber that is cut first loses it over the other's inner timber, the second over
   the real width of the first, so that nothing is in the way where both have too much.
3. The second is cut to the first as it came out: its bed, the width of its notch and its cog.
"""

from dataclasses import dataclass, replace

from benchmate.frame.flats import Flat, along_at, built, carried, reversed_plane
from benchmate.frame.frame import Frame
from benchmate.joinery.lap.lie import Crossing, Lie, below, crossing, lies
from benchmate.joinery.lap.record import LapJoint
from benchmate.joinery.lap.tail import Tail, tail
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.progress import AsCut
from benchmate.model.solids import Axis, Plane, above
from benchmate.model.solids import below as less_than
from benchmate.model.stick import Stick, reference_for

SHOULDER, START, FINISH = "shoulder", "start", "finish"
LAP, FLOOR, LEDGE, REDUCED = "lap", "floor", "ledge", "reduced"
OUTSIDE = "outside"
SLOT_START, SLOT_FINISH = "slot-start", "slot-finish"
COG_NEAR, COG_FAR = "cog-near", "cog-far"
"""The lines of a lap."""

Planes = tuple[Plane, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Half:
    """One timber of a lap, and what comes off it.

    `walls` bound it along the timber: the shoulder of an end, or both ends of a notch. `bed` is
    where the two timbers lie on one another, cut down to from `cut_face`. `ledge` is where the
    other timber's own face comes on this one, if that is inside it; `outside` where its far face
    comes on an end that runs `past` it. `tail` is on the timber cut first; `slot` and `cog` bound
    what goes over what is left standing. `reduced` bounds what comes off the far face across by
    square rule, where no flank of a tail takes it. `mate` is the other timber, `as_cut` what was
    typed of the one cut first, and `mated` tells whether this is the other.
    """

    lie: Lie
    mate: Lie
    cut_face: Face
    walls: Planes
    bed: Plane
    ledge: Plane | None = None
    tail: Tail | None = None
    slot: Planes = ()
    cog: Planes = ()
    reduced: Planes = ()
    past: Length = ZERO
    outside: Plane | None = None
    as_cut: AsCut
    mated: bool

    @property
    def stick(self) -> Stick:
        """The timber itself."""
        return self.lie.stick

    @property
    def end(self) -> Face | None:
        """Its end that laps; None where it is notched on its way."""
        return self.lie.end

    @property
    def tip(self) -> Face:
        """Its end that laps. Raises ValueError for a timber that is notched on its way."""
        if self.lie.end is None:
            raise ValueError(f"{self.stick.name} laps at no end")
        return self.lie.end

    @property
    def corner(self) -> bool:
        """Whether the other timber's end laps as well."""
        return self.lie.end is not None and self.mate.end is not None

    @property
    def wide(self) -> Length:
        """How wide it lies in the other, as the frame counts on it."""
        return self.stick.framed(self.lie.wide, self.lie.place)

    @property
    def real_deep(self) -> Length:
        """How deep the real stick is, the way it is cut down."""
        return self.stick.depth(self.lie.deep, self.lie.place)

    @property
    def real_wide(self) -> Length:
        """How wide the real stick is across, along the other timber."""
        return self.stick.depth(self.lie.wide, self.lie.place)

    @property
    def depth(self) -> Length:
        """How deep it is cut down to the bed; below nothing where the stick does not reach it."""
        at = reading(self.bed, self.lie.deep)
        return at if self.cut_face.is_reference else self.real_deep - at

    @property
    def left(self) -> Length:
        """What is left of the stick at the bed."""
        return self.real_deep - self.depth

    @property
    def span(self) -> tuple[Length, Length] | None:
        """From start to finish along a notch, where its walls are square; None at an end."""
        if self.end is not None or any(not _square(wall) for wall in self.walls):
            return None
        start, finish = sorted(self.walls, key=lambda wall: wall.normal[0])
        return reading(start, Axis.ALONG), reading(finish, Axis.ALONG)

    @property
    def reach(self) -> tuple[Length, Length]:
        """From the first to the last of a notch along the timber, whether its walls lean or not."""
        found = [
            along_at(wall, self.lie.wide, deep)
            for wall in self.walls
            for deep in (ZERO, self.real_wide)
        ]
        return min(found), max(found)

    def into_ledge(self) -> Length:
        """How deep the ledge lies below the face that is cut."""
        if self.ledge is None:
            return self.real_deep
        at = reading(self.ledge, self.lie.deep)
        return at if self.cut_face.is_reference else self.real_deep - at


def reading(plane: Plane, axis: Axis) -> Length:
    """Where a plane square to an axis lies on it."""
    return Length(plane.offset * plane.normal[axis.value.index(1)])


def halves(joint: LapJoint, frame: Frame) -> tuple[Half, Half, Crossing]:
    """What comes off the timber that is cut first, off the other, and how they cross."""
    cutter = _Cutter(joint, frame)
    first = cutter.first()
    return first, cutter.second(first), cutter.met


class _Cutter:
    """Works out both halves of one lap."""

    def __init__(self, joint: LapJoint, frame: Frame) -> None:
        self.joint, self.frame = joint, frame
        self.one, self.other = lies(joint, frame)
        self.met = crossing(joint, frame, self.one, self.other)
        self.as_cut = self.one.stick.as_cut.get(joint.feature, AsCut())

    def first(self) -> Half:
        """The timber that is let in, from its inner face to the bed."""
        one, stands = self.one, self.one.stands
        walls = self._walls_of_other()
        made = Half(
            lie=one,
            mate=self.other,
            cut_face=one.inner,
            walls=walls,
            bed=carried(below(self.joint.side, self.met.bed), stands, self._bed_line(one)),
            ledge=self._ledge(one, self.other.real.top, one.real.top),
            tail=tail(self.joint, self.frame, one, one.stick.framed(one.wide, one.place)),
            slot=self._slot(walls),
            past=self.joint.past,
            outside=self._outside(),
            as_cut=self.as_cut,
            mated=False,
        )
        held = self.other.real.top > self.met.bed
        flanked = made.tail is not None and one.far in made.tail.flanks
        if one.over <= ZERO or not held or flanked or one.far not in self._clasped(one):
            return made
        stop = () if made.outside is None else (made.outside,)
        return replace(made, reduced=self._reduced(made, (*walls, *stop)))

    def second(self, first: Half) -> Half:
        """The timber it is let into, from its outer face to the bed as the other came out."""
        other, thickness = self.other, self.as_cut.thickness
        bed = self.met.bed if thickness is None else self.one.real.top - thickness.nm
        made = Half(
            lie=other,
            mate=self.one,
            cut_face=other.outer,
            walls=self._walls_of_one(),
            bed=carried(below(self.joint.side, bed).turned, other.stands, self._bed_line(other)),
            ledge=self._ledge(other, self.one.real.base, other.real.base),
            cog=self._cog(),
            as_cut=self.as_cut,
            mated=True,
        )
        clasps = first.depth > ZERO or first.reduced or first.tail
        if other.over <= ZERO or not clasps or other.far not in self._clasped(other):
            return made
        return replace(made, reduced=self._reduced(made, self._clearing(made)))

    def _bed_line(self, lie: Lie) -> str:
        return FLOOR if lie.end is None else LAP

    def _face(self, lie: Lie, face: Face) -> Flat:
        return self.frame.face(lie.stick.id, face, lie.place)

    def _entry(self, lie: Lie) -> Face | None:
        """The face of a timber that the end of the other stops at, if it does."""
        mate = self.other if lie is self.one else self.one
        into = next((b for b in self.joint.bearings() if b.timber == mate.stick.id), None)
        return None if into is None else self.frame.entry(into)

    def _clasped(self, lie: Lie) -> tuple[Face, ...]:
        """The faces across a timber that the other has wood beside."""
        entry = self._entry(lie)
        if entry is not None:
            return (entry,)
        return (reference_for(lie.wide), reference_for(lie.wide).opposite)

    def _walls_of_other(self) -> Planes:
        """What bounds the first timber's cut along it: the faces of the other beside it."""
        faces = self._clasped(self.other)
        return tuple(self._wall(self.one, self._face(self.other, face)) for face in faces)

    def _walls_of_one(self) -> Planes:
        """What bounds the second timber's cut along it: the first timber as it was cut."""
        return tuple(self._wall(self.other, self._side(face)) for face in self._clasped(self.one))

    def _side(self, face: Face) -> Flat:
        """One side of the first timber as it was cut; the wood lies behind it."""
        one = self.one
        framed = one.stick.framed(one.wide, one.place)
        width = self.as_cut.width or framed
        made = tail(self.joint, self.frame, one, width)
        if made is not None and face in made.flanks:
            return built(reversed_plane(made.flanks[face]), one.stands)
        flat = self._face(one, face)
        return flat if face.is_reference else flat.moved(width - framed)

    def _wall(self, lie: Lie, flat: Flat, prefix: str = "") -> Plane:
        """A face of the other timber as a wall on this one."""
        plane = carried(flat, lie.stands)
        name = START if plane.normal[0] < 0 else FINISH
        if lie.end is not None and not prefix:
            name = SHOULDER
        return replace(plane, line=f"{prefix}{name}")

    def _outside(self) -> Plane | None:
        """The other timber's far face, on an end that runs on past it: the near side is behind."""
        entry = self._entry(self.other)
        if entry is None or not self.joint.past:
            return None
        flat = self._face(self.other, entry.opposite)
        real = flat if entry.opposite.is_reference else flat.moved(self.other.over)
        return carried(real, self.one.stands, OUTSIDE)

    def _ledge(self, lie: Lie, height: int, limit: int) -> Plane | None:
        """A face of the other timber on this one, where it lies short of this one's own."""
        upper = lie is self.one
        if height >= limit if upper else height <= limit:
            return None
        flat = below(self.joint.side, height)
        return carried(flat if upper else flat.turned, lie.stands, LEDGE)

    def _slot(self, walls: Planes) -> Planes:
        """What bounds the slot over a cog along the first timber, and how deep it goes."""
        cog, side = self.joint.cog, self.joint.side
        if cog is None:
            return ()
        start = self._cog_start(cog)
        near = self._face(self.other, reference_for(self.other.wide)).moved(-start)
        sides = (near, near.moved(-cog).turned)
        planes = (_or_alike(self._wall(self.one, flat, "slot-"), walls) for flat in sides)
        roof = carried(below(side, self.other.real.top), self.one.stands, LEDGE)
        return (*planes, roof)

    def _cog(self) -> Planes:
        """What bounds the cog across the second timber, made to the slot as it was cut."""
        cog, wide = self.joint.cog, self.other.wide
        if cog is None:
            return ()
        start = self._cog_start(cog)
        finish = start + (self.as_cut.length or cog)
        return (less_than(wide, start, COG_NEAR), above(wide, finish, COG_FAR))

    def _cog_start(self, cog: Length) -> Length:
        """How far in from the reference face the cog starts: in the middle if nothing is said."""
        if self.joint.cog_set_back is not None:
            return self.joint.cog_set_back
        return Length((self.other.stick.held(self.other.wide) - cog).nm // 2)

    def _reduced(self, half: Half, walls: Planes) -> Planes:
        """What bounds the wood that comes off the far face, up to the other timber's own face."""
        lie = half.lie
        to = above(lie.wide, lie.stick.framed(lie.wide, lie.place), REDUCED)
        return (*walls, to) if half.ledge is None else (*walls, to, half.ledge)

    def _clearing(self, half: Half) -> Planes:
        """The faces of the first timber as it really is, where they differ from the walls."""
        one, found = self.one, []
        for face in self._clasped(one):
            flat = self._face(one, face)
            real = flat if face.is_reference else flat.moved(one.over)
            found.append(_or_alike(self._wall(self.other, real, "reduction-"), half.walls))
        return tuple(found)


def _or_alike(plane: Plane, walls: Planes) -> Plane:
    """The wall that is the same plane, so that one line shows both; else the plane itself."""
    same = (wall for wall in walls if (wall.normal, wall.offset) == (plane.normal, plane.offset))
    return next(same, plane)


def _square(plane: Plane) -> bool:
    return not any(plane.normal[1:])
