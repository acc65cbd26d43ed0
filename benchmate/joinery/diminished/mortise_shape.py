"""Where the mortise and the diminished housing lie on the real stick that receives the end."""

from dataclasses import dataclass, replace

from benchmate.frame.both_sides import sides_for
from benchmate.frame.flats import built, carried, reversed_plane
from benchmate.frame.frame import Frame
from benchmate.frame.mated import Sides, inside
from benchmate.frame.meeting import Span
from benchmate.frame.place import Place
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.joinery.diminished.shape import EndShape, meeting
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Stick, across, axis_from

TOP, LEDGE, START, FINISH, NEAR, FAR = (
    f"housing-{name}" for name in ("top", "ledge", "start", "finish", "near", "far")
)
"""The lines of the housing: its floor starts at its top, so the two are struck as one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MortiseShape:
    """A mortise and its diminished housing in the receiving stick, in that stick's own readings.

    `along` bounds the mortise along the grain, `sides` across it. Of the housing, `slope` is its
    floor, `top` and `ledge` the planes the end's top and underside lie in, and `walls` the sides it
    is closed at. `plumb` is the axis that top and ledge are on.
    """

    stick: Stick
    made: EndShape
    sides: Sides
    entry: Face
    along: Span
    slope: Plane
    top: Plane
    ledge: Plane
    walls: tuple[Plane, ...]
    clearance: Length

    @property
    def feature(self) -> str:
        """Its id on its timber."""
        return self.sides.feature

    @property
    def into(self) -> Axis:
        """The axis the mortise is cut down on."""
        return axis_from(self.entry)

    @property
    def upright(self) -> bool:
        """Whether the receiving timber stands, so that top and ledge lie along it."""
        return bool(self.top.normal[0])

    @property
    def plumb(self) -> Axis:
        """The axis that top and ledge are on."""
        return Axis.ALONG if self.upright else across(self.into)

    @property
    def top_at(self) -> Length:
        """The reading of the top."""
        return _at(self.top)

    @property
    def ledge_at(self) -> Length:
        """The reading of the ledge."""
        return _at(self.ledge)

    @property
    def real_into(self) -> Length:
        """How deep the real stick is the way the mortise goes."""
        return self.stick.depth(self.into, self.feature)

    @property
    def depth(self) -> Length:
        """How deep the mortise is below the real face."""
        return self.made.recess + self.made.real("length") + self.clearance

    @property
    def bottom(self) -> Length:
        """The reading of the mortise's bottom."""
        return self.stick.in_from(self.entry, self.depth, self.feature)

    @property
    def left_below(self) -> Length:
        """The wood left between the bottom and the face across from the entry."""
        return self.real_into - self.depth

    @property
    def ledge_left(self) -> Length:
        """The wood left under the ledge of a timber that lies level."""
        return self._from(Direction.DOWN, self.ledge_at)

    @property
    def top_proud(self) -> Length:
        """How far the end's top lies above that of a timber that lies level."""
        return -self._from(Direction.UP, self.top_at)

    def _from(self, looks: Direction, reading: Length) -> Length:
        return self.stick.in_from(self.stick.pose.face(looks), reading, self.feature)

    @property
    def span(self) -> Span:
        """From the lowest to the highest reading of mortise and housing along the stick."""
        planes = (self.top, self.ledge) if self.upright else ()
        found = [*self.along, *map(_at, planes)]
        found += [_at(wall) for wall in self.walls if wall.normal[0]]
        return min(found), max(found)


def _at(plane: Plane) -> Length:
    """The reading of a square plane."""
    return Length(plane.offset * sum(plane.normal))


def mortise_shape(joint: DiminishedTenon, made: EndShape, frame: Frame) -> MortiseShape:
    """The mortise for a tenon, held to its reference side and sized to it as cut."""
    met, stick = meeting(joint, frame), frame.stick(joint.into)
    here, there = frame.standing(joint.timber), frame.standing(joint.into)
    top, ledge = (carried(built(plane, here), there) for plane in _top_and_bottom(made))
    slope = carried(built(reversed_plane(made.slope), here), there)
    clearance = joint.bottom_clearance
    return MortiseShape(
        stick=stick,
        made=made,
        sides=sides_for(made, met, stick, joint.mortise, frame.tape),
        entry=met.entry,
        along=met.along_span(made.edge, made.edge + made.real("width")),
        slope=replace(slope, line=TOP),
        top=replace(top, line=TOP),
        ledge=replace(ledge, line=LEDGE),
        walls=_walls(joint, made, stick, (here, there)),
        clearance=frame.project.practice.bottom_clearance if clearance is None else clearance,
    )


def _top_and_bottom(made: EndShape) -> tuple[Plane, Plane]:
    """The end's top and underside in its own readings, with the end itself behind both."""
    over, under = (above, below) if made.top_is_reference else (below, above)
    return over(made.plumb, made.top), under(made.plumb, made.bottom)


def _walls(
    joint: DiminishedTenon, made: EndShape, stick: Stick, places: tuple[Place, Place]
) -> tuple[Plane, ...]:
    """The sides the housing is closed at, besides its ledge.

    There is a wall at the top only where the other timber's real face stands proud there.
    """
    here, there = places
    level = across(made.plumb)
    wide = made.stick.framed(level, *made.places)
    found = []
    for plane in (above(level, ZERO), below(level, wide)):
        wall = carried(built(plane, here), there)
        names = (START, FINISH) if wall.normal[0] else (NEAR, FAR)
        found.append(replace(wall, line=names[sum(wall.normal) > 0]))
    if made.over:
        top, _ = _top_and_bottom(made)
        found.append(replace(carried(built(top, here), there), line=TOP))
    return tuple(wall for wall in found if _closed(stick, wall, joint.mortise))


def _closed(stick: Stick, wall: Plane, place: str) -> bool:
    """Whether the housing has this wall; its top has one wherever there is wood above it."""
    return inside(stick, wall, place, real=wall.line == TOP)
