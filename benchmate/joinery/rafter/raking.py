"""A rafter on its real stick, in the upright plane it rakes in.

How it works
1. In that plane a point lies so far `ahead`, the way the rafter rises, and so far `up`, both in
   nanometres from the frame's zero. Plumb and level lines are then the simplest there are.
2. The top edge is the line the rafter's `incline` says, and it is held: it makes the roof plane.
   What the stick is over or under goes to the underside.
"""

from dataclasses import dataclass

from benchmate.frame.flats import Flat, carried, nearest
from benchmate.frame.frame import Frame
from benchmate.frame.place import Place, Point
from benchmate.frame.rake import Rake
from benchmate.frame.reach import plumb_axis
from benchmate.frame.reduction import unmeasured
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane
from benchmate.model.stick import Stick, across, reference_for

TOP_EDGE = "top edge"
"""What a height is measured down from; words that name no face, for it lies on two."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rafter:
    """A rafter where one of its joints is made: at `places`, the nearest first."""

    stick: Stick
    place: Place
    line: Rake
    heading: Direction
    places: tuple[str, ...]

    @property
    def plumb(self) -> Axis:
        """The axis in from its top face."""
        return plumb_axis(self.stick.pose)

    @property
    def sides(self) -> Axis:
        """The axis across the plane it rakes in."""
        return across(self.plumb)

    @property
    def top(self) -> Face:
        """The face in the roof plane."""
        return reference_for(self.plumb)

    @property
    def side(self) -> Face:
        """Its reference face that looks out of the plane it rakes in."""
        return reference_for(self.sides)

    @property
    def both_sides(self) -> tuple[Face, Face]:
        """The two faces that its plumb and level lines are struck on."""
        return (self.side, self.side.opposite)

    @property
    def unmeasured_depth(self) -> str:
        """The caution for a cut as long as the stick is deep that nobody has measured, or none."""
        return unmeasured(self.stick, self.plumb, self.places)

    @property
    def deep(self) -> Length:
        """How deep the frame counts it, square to the top."""
        return self.stick.framed(self.plumb, *self.places)

    @property
    def real_deep(self) -> Length:
        """How deep it really is, square to the top."""
        return self.stick.depth(self.plumb, *self.places)

    @property
    def wide(self) -> Length:
        """How wide the frame counts it."""
        return self.stick.framed(self.sides, *self.places)

    @property
    def real_wide(self) -> Length:
        """How wide it really is."""
        return self.stick.depth(self.sides, *self.places)

    @property
    def foot(self) -> int:
        """How far ahead its typed foot lies."""
        return self.ahead_of(self.line.foot)

    @property
    def head(self) -> int:
        """How far ahead its typed head lies."""
        return self.ahead_of(self.line.head)

    def ahead_of(self, point: Point) -> int:
        """How far ahead a point of the building lies."""
        return sum(step * at for step, at in zip(self.heading.value, point, strict=True))

    def up_at(self, ahead: int, deep: Length = ZERO) -> int:
        """How high the line so deep below the top edge lies, so far ahead."""
        line = self.line
        rises = (ahead - self.foot) * line.rise - deep.nm * line.length
        return line.foot[2] + nearest(rises, line.run)

    def ahead_at(self, up: int, deep: Length = ZERO) -> int:
        """How far ahead the line so deep below the top edge reaches a height."""
        line = self.line
        runs = (up - line.foot[2]) * line.run + deep.nm * line.length
        return self.foot + nearest(runs, line.rise)

    def along(self, level: Length) -> Length:
        """How long the top edge is over a level distance."""
        return self._steepened(level)

    def plumbed(self, deep: Length) -> Length:
        """A depth square to the top as it is measured down a plumb line."""
        return self._steepened(deep)

    def _steepened(self, size: Length) -> Length:
        return Length(nearest(size.nm * self.line.length, self.line.run))

    def squared(self, plumb: Length) -> Length:
        """A height down a plumb line as it is measured square to the top."""
        return Length(nearest(plumb.nm * self.line.run, self.line.length))

    def downhill(self, ahead: int) -> Flat:
        """The plumb plane so far ahead, with what lies towards the foot behind it."""
        return Flat(self.heading.value, ahead)

    def uphill(self, ahead: int) -> Flat:
        """The plumb plane so far ahead, with what lies towards the head behind it."""
        return self.downhill(ahead).turned

    def carried(self, flat: Flat, line: str | None = None) -> Plane:
        """A plane of the building in the rafter's own readings."""
        return carried(flat, self.place, line)


def under(up: int) -> Flat:
    """The level plane at a height, with what lies below behind it."""
    return Flat(Direction.UP.value, up)


def above(up: int) -> Flat:
    """The level plane at a height, with what lies above behind it."""
    return under(up).turned


def rafter(frame: Frame, timber: str, *places: str) -> Rafter:
    """A rafter of a frame, where a joint is made. Raises ValueError for another timber."""
    stick, line = frame.stick(timber), frame.rake(timber)
    if stick.pose.head is None:
        raise ValueError(f"{stick.name} does not rake")
    return Rafter(
        stick=stick,
        place=frame.standing(timber),
        line=line,
        heading=stick.pose.head,
        places=places,
    )
