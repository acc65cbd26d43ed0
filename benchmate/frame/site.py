"""Where the placed timbers of a frame stand, each settled by what it meets.

How it works
1. A timber that stands or lies has two coordinates typed for its arris. The third, along it, is
   settled end by end: by the face its end bears on, by a typed coordinate, or by its length from
   the other end.
2. The face an end bears on is a plane of the receiving timber. A reference face lies on that
   timber's own arris; a far face as deep in from it as the frame counts on there (`Wood.framed`).
   So a shoulder follows from sections and places alone, never from another timber's length.
3. A raking timber has both ends of its arris typed, so it needs no other timber.
"""

from collections.abc import Callable
from dataclasses import dataclass

from benchmate.frame.place import Place, Point, raking_ways, square_ways
from benchmate.frame.rake import rake
from benchmate.measure.length import Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction
from benchmate.model.place import COORDINATES, coordinate_along, sense
from benchmate.model.project import Timber
from benchmate.model.stick import Wood, axis_from
from benchmate.model.work import Bearing


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """Where timbers stand, given how to ask after one of them.

    `bearing` is what an end bears in, `beyond` the wood past its shoulder, `value` what a sum
    comes to.
    """

    timber: Callable[[str], Timber]
    wood: Callable[[str], Wood]
    bearing: Callable[[str, Direction], Bearing | None]
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
            return Length(rake(record.incline, self.value).length)
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
        return Place(origin=(east, north, up), ways=square_ways(record.pose))

    def _raking(self, record: Timber) -> Place:
        if record.incline is None:
            raise ValueError(f"{record.name} does not rake")
        line = rake(record.incline, self.value)
        origin: Point = line.foot if record.reference_end is Direction.DOWN else line.head
        ways = raking_ways(record.pose, line.run, line.rise, line.length)
        return Place(origin=origin, ways=ways)

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
        reference = end is record.reference_end
        typed = record.reference_end_at if reference else record.far_end_at
        return None if typed is None else self.value(typed).nm

    def seat(self, bearing: Bearing) -> int:
        """The coordinate, along the end's direction, of the plane an end bears on."""
        entry = self.timber(bearing.into).pose.face(bearing.end.opposite)
        arris, forward = self.arris(bearing.into, bearing.end), sense(bearing.end)
        if entry.is_reference:
            return arris + forward * bearing.depth.nm
        framed = self.wood(bearing.into).framed(axis_from(entry), bearing.place)
        return arris - forward * (framed.nm - bearing.depth.nm)

    def typed_body(self, record: Timber) -> Length:
        """From shoulder to shoulder by a timber's own length. Raises ValueError if it has none."""
        if record.length is None:
            raise ValueError(f"{record.name} has no length")
        length = self.value(record.length)
        if record.length_is == "overall":
            ends = (record.reference_end, record.reference_end.opposite)
            return length - self.beyond(record.id, ends[0]) - self.beyond(record.id, ends[1])
        return length
