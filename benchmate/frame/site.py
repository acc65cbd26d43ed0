"""Where the placed timbers of a frame stand, each settled by what it meets.

How it works
1. A timber that stands or lies has two coordinates typed for its arris. The third, along it, is
   settled end by end: by the face its end bears on, by the coordinate of a joint with another stick
   of its line, by a typed coordinate, or by its length from the other end.
2. The face an end bears on is a plane of the receiving timber. A reference face lies on that
   timber's own arris; a far face as deep in from it as the frame counts on there (`Wood.framed`).
   So a shoulder follows from sections and places alone, never from another timber's length.
3. A raking timber has both ends of its arris line typed. An end that bears in another timber comes
   where that timber's face crosses the line; any other comes at the point as typed.
"""

from collections.abc import Callable
from dataclasses import dataclass

from benchmate.frame.flats import Flat, behind, nearest
from benchmate.frame.place import Place, Point, Way, raking_ways, square_ways
from benchmate.frame.rake import Rake, Slope, rake, root
from benchmate.measure.length import Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, Face
from benchmate.model.place import COORDINATES, coordinate_along, sense
from benchmate.model.project import Timber
from benchmate.model.solids import Axis
from benchmate.model.stick import Wood, axis_from
from benchmate.model.work import Abutment, Bearing


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """Where timbers stand, given how to ask after one of them.

    `bearing` is what an end bears in, `abutment` where it stops at another stick of its line,
    `beyond` the wood past its shoulder, `value` what a sum comes to.
    """

    timber: Callable[[str], Timber]
    wood: Callable[[str], Wood]
    bearing: Callable[[str, Direction], Bearing | None]
    abutment: Callable[[str, Direction], Abutment | None]
    beyond: Callable[[str, Direction], Length]
    value: Callable[[Sum], Length]

    def arris(self, timber: str, direction: Direction) -> int:
        """The coordinate of a timber's arris along a direction square to it, in nanometres.

        Raises ValueError if the timber has none there.
        """
        record, name = self.timber(timber), coordinate_along(direction)
        total = None if record.at is None else record.at.sums().get(name)
        if total is None:
            raise ValueError(f"{record.name} does not say where its arris lies {name}")
        return self.value(total).nm

    def body(self, timber: str) -> Length:
        """From a timber's reference shoulder to its far shoulder: by its place, or its length."""
        record = self.timber(timber)
        if not record.placed and record.length is None:
            raise ValueError(f"{record.name} has neither a place nor a length")
        if not record.placed:
            return self.typed_body(record)
        if record.incline is not None:
            low, high = self._along_rake(record, self.rake(timber))
            return Length(high - low)
        near, far = self._shoulders(record)
        return Length((far - near) * sense(record.reference_end.opposite))

    def place(self, timber: str) -> Place | None:
        """Where a timber stands; None for one without a place."""
        record = self.timber(timber)
        if record.incline is not None:
            return self._raking(record)
        if record.at is None:
            return None
        along = coordinate_along(record.reference_end)
        near, _ = self._shoulders(record)
        typed = {name: self.value(total).nm for name, total in record.at.sums().items()}
        east, north, up = (({along: near} | typed)[name] for name in COORDINATES)
        return Place(origin=(east, north, up), ways=self._ways(record))

    def _ways(self, record: Timber) -> tuple[Way, Way, Way]:
        """The directions a timber's readings grow in."""
        if record.pose.head is None:
            return square_ways(record.pose)
        slope = self.slope(record.id)
        length = root(slope.run * slope.run + slope.rise * slope.rise)
        return raking_ways(record.pose, slope.run, slope.rise, length)

    def slope(self, timber: str) -> Slope:
        """How a timber slopes: along itself if it rakes, across if it is rolled."""
        record = self.timber(timber)
        if record.incline is not None:
            line = self.rake(timber)
            return Slope(line.run, line.rise)
        if record.roll is None:
            return Slope(1, 0)
        return Slope(self.value(record.roll.run).nm, self.value(record.roll.rise).nm)

    def rake(self, timber: str) -> Rake:
        """The line a raking timber's arris is said to run on. Raises ValueError for another."""
        record = self.timber(timber)
        if record.incline is None:
            raise ValueError(f"{record.name} does not rake")
        return rake(record.incline, self.value)

    def face(self, timber: str, face: Face, place: str) -> Flat:
        """The plane of a long face as deep as the frame counts on; the wood lies behind it.

        `place` is where a far face is measured. Raises ValueError for a timber without a place.
        """
        record, pose = self.timber(timber), self.timber(timber).pose
        looks = pose.direction(face)
        deep = self.wood(timber).framed(axis_from(face), place)
        if pose.head is None:
            arris = self.arris(timber, looks)
            forward = 0 if face.is_reference else sense(looks) * deep.nm
            return behind(looks, arris + forward)
        (_, u, v) = self._ways(record)
        east, north, up = (u if axis_from(face) is Axis.FIRST else v).steps
        plane = Flat((-east, -north, -up), 0).through(self._on_arris(record))
        return plane if face.is_reference else plane.turned.moved(deep)

    def _on_arris(self, record: Timber) -> Point:
        """A point on the line a timber's arris runs on."""
        if record.incline is not None:
            return self.rake(record.id).foot
        typed = record.at.sums() if record.at is not None else {}
        east, north, up = (
            self.value(typed[name]).nm if name in typed else 0 for name in COORDINATES
        )
        return east, north, up

    def entry(self, bearing: Bearing) -> Face:
        """The face an end enters: across from where it looks, or the one its rake runs into."""
        timber, into = self.timber(bearing.timber), self.timber(bearing.into)
        if timber.incline is None or into.incline is None:
            return entry_face(timber, bearing.end, into)
        return self._raked_into(timber, bearing.end, into)

    def _raked_into(self, timber: Timber, end: Direction, into: Timber) -> Face:
        """The face of a raking timber that another one's end runs against: its top or underside."""
        line, other = self.rake(timber.id), self.rake(into.id)
        same = 1 if timber.pose.head is into.pose.head else -1
        climbs = line.rise * other.run - same * line.run * other.rise
        from_below = (climbs > 0) is (end is Direction.UP)
        return into.pose.face(Direction.DOWN if from_below else Direction.UP)

    def _raking(self, record: Timber) -> Place:
        line = self.rake(record.id)
        low, high = self._along_rake(record, line)
        at = low if record.reference_end is Direction.DOWN else high
        foot_to_head = (b - a for a, b in zip(line.foot, line.head, strict=True))
        east, north, up = (
            start + nearest(step * at, line.length)
            for start, step in zip(line.foot, foot_to_head, strict=True)
        )
        return Place(origin=(east, north, up), ways=self._ways(record))

    def _along_rake(self, record: Timber, line: Rake) -> tuple[int, int]:
        """Where a raking timber's lower and upper shoulders lie, from its typed foot."""
        low, high = (self._crossing(record, end, line) for end in (Direction.DOWN, Direction.UP))
        return 0 if low is None else low, line.length if high is None else high

    def _crossing(self, record: Timber, end: Direction, line: Rake) -> int | None:
        """How far from its foot an arris line crosses the plane its end bears on, if it bears."""
        bearing = self.bearing(record.id, end)
        if bearing is None:
            return None
        plane = self.face(bearing.into, self.entry(bearing), bearing.place).moved(-bearing.depth)
        ahead = [b - a for a, b in zip(line.foot, line.head, strict=True)]
        steep = sum(n * step for n, step in zip(plane.normal, ahead, strict=True))
        gap = plane.offset - sum(n * at for n, at in zip(plane.normal, line.foot, strict=True))
        return nearest(gap * line.length, steep)

    def _shoulders(self, record: Timber) -> tuple[int, int]:
        """The coordinates of both shoulders along a timber that stands or lies."""
        near_end, far_end = record.reference_end, record.reference_end.opposite
        near, far = self._settled(record, near_end), self._settled(record, far_end)
        if near is None and far is not None:
            near = far + sense(near_end) * self.typed_body(record).nm
        elif far is None and near is not None:
            far = near + sense(far_end) * self.typed_body(record).nm
        if near is None or far is None:
            raise ValueError(f"nothing settles where {record.name} starts and ends")
        return near, far

    def _settled(self, record: Timber, end: Direction) -> int | None:
        """Where a shoulder comes by what the end meets, or by the coordinate typed for it."""
        bearing = self.bearing(record.id, end)
        if bearing is not None:
            return self.seat(bearing)
        abutment = self.abutment(record.id, end)
        if abutment is not None:
            return self.value(abutment.at).nm - sense(end) * abutment.short.nm
        reference = end is record.reference_end
        typed = record.reference_end_at if reference else record.far_end_at
        return None if typed is None else self.value(typed).nm

    def seat(self, bearing: Bearing) -> int:
        """The coordinate, along the end's direction, of the plane an end bears on."""
        plane = self.face(bearing.into, self.entry(bearing), bearing.place)
        axis = COORDINATES.index(coordinate_along(bearing.end))
        at = nearest(plane.offset, plane.normal[axis])
        return at + sense(bearing.end) * bearing.depth.nm

    def typed_body(self, record: Timber) -> Length:
        """From shoulder to shoulder by a timber's own length. Raises ValueError if it has none."""
        if record.length is None:
            raise ValueError(f"{record.name} has no length")
        length = self.value(record.length)
        if record.length_is == "overall":
            ends = (record.reference_end, record.reference_end.opposite)
            return length - self.beyond(record.id, ends[0]) - self.beyond(record.id, ends[1])
        return length


def entry_face(timber: Timber, end: Direction, into: Timber) -> Face:
    """The face of another timber that an end enters.

    An end of a raking timber enters a side that looks back along its run, unless that timber runs
    the same way or rakes too: then it enters the side that looks up or down at it.
    """
    head, pose = timber.pose.head, into.pose
    if head is None or not timber.pose.rakes:
        return pose.face(end.opposite)
    grain = pose.direction(Face.FAR_END)
    if grain in (head, head.opposite):
        return pose.face(end.opposite)
    return pose.face(head.opposite if end is Direction.UP else head)
