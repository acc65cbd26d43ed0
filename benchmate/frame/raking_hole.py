"""The mortise for an end of a raking timber: what every family that cuts one says and does alike.

How it works
1. The end is settled in its own stick. What lies across its plane is carried over here point by
   point, so hand and mirror follow from how the two timbers stand.
2. The whole end goes in a little way, so beside the mortise there may be walls: at every side of
   the end that does not come flush with the receiving timber.
"""

from dataclasses import dataclass

from benchmate.frame import mated
from benchmate.frame.flats import nearest
from benchmate.frame.marking import Says, square_mark
from benchmate.frame.meeting import Span
from benchmate.frame.place import Place, Point
from benchmate.frame.raking_tenon import RakingTenon
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.reading import Unit
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.findings import Finding
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Stick, across, axis_from, reference_for

EASE = {Unit.INCH: Length.inches(0, 1, 4), Unit.MM: Length.mm(7)}
"""How much longer than the end its mortise is where the joint says nothing.

At least 1/4", so that rough stock still enters (trade notes 2.3, Rogers-var); in metric rounded up,
as less would fall short of that.
"""

WALL_NEAR, WALL_FAR = "housing-near", "housing-far"
"""The lines of the walls beside the whole end."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RakingHole:
    """A mortise in the stick that receives an end, in that stick's own readings.

    `tenon` is the one it is cut for. `across` bounds the mortise and `end_across` the whole end.
    `same_side` tells whether the two sticks measure across from faces that look the same way.
    """

    stick: Stick
    feature: str
    tenon: RakingTenon
    entry: Face
    across: Span
    end_across: Span
    same_side: bool

    @property
    def into(self) -> Axis:
        """The axis the mortise is cut down on."""
        return axis_from(self.entry)

    @property
    def sides(self) -> Axis:
        """The axis across the mortise."""
        return across(self.into)

    @property
    def real_into(self) -> Length:
        """How deep the real stick is the way the mortise goes."""
        return self.stick.depth(self.into, self.feature)

    @property
    def not_from_far(self) -> str:
        """The caution on a line across that lies by the far face."""
        far = self.stick.pose.words(reference_for(self.sides).opposite)
        return f"Never measure this from the {far}."


def across_receiver(
    place: Place, here: Place, tenon: RakingTenon, span: Span, sides: Axis
) -> tuple[Span, bool]:
    """Two depths across an end as depths across the stick at `place`, in order.

    Tells with them whether the two sticks measure across from faces that look the same way.
    """
    number = 1 if sides is Axis.FIRST else 2
    found = []
    for each in span:
        first, second = (each, ZERO) if tenon.cheeks is Axis.FIRST else (ZERO, each)
        found.append(reading_at(place, here.point(ZERO, first, second), number))
    near, far = found
    return ((near, far), True) if near <= far else ((far, near), False)


def along_receiver(
    place: Place, here: Place, tenon: RakingTenon, along: Length, deep: Length
) -> Length:
    """How far along the stick at `place` a spot of the end lies."""
    first, second = (deep, ZERO) if tenon.plumb is Axis.FIRST else (ZERO, deep)
    return reading_at(place, here.point(along, first, second), 0)


def reading_at(place: Place, point: Point, number: int) -> Length:
    """One reading of a point of the building on a stick: along it, or in from a reference face."""
    way = place.ways[number]
    apart = (b - a for a, b in zip(place.origin, point, strict=True))
    return Length(
        nearest(sum(step * gap for step, gap in zip(way.steps, apart, strict=True)), way.whole)
    )


def walls(hole: RakingHole) -> dict[str, Plane]:
    """The sides the whole end is closed in at, by line: not those it comes flush to."""
    near, far = hole.end_across
    found = {}
    if near > ZERO:
        found[WALL_NEAR] = above(hole.sides, near, WALL_NEAR)
    if far < hole.stick.framed(hole.sides, hole.feature):
        found[WALL_FAR] = below(hole.sides, far, WALL_FAR)
    return found


def wall_lines(hole: RakingHole, what: str) -> tuple[Line, ...]:
    """The walls to strike; `what` the whole end goes into: `Housing`, `Notch`."""
    name = hole.tenon.stick.name
    near, far = hole.end_across
    return tuple(
        square_mark(
            plane,
            Says(
                title=f"{what} near line" if line == WALL_NEAR else f"{what} far line",
                beside=(Beside(far - near, f"of {name} goes in"),),
                why=f"The whole end of {name} goes in.",
                caution=hole.not_from_far if line == WALL_FAR else "",
            ),
        )
        for line, plane in walls(hole).items()
    )


def open_faces(hole: RakingHole) -> tuple[Face, ...]:
    """The faces that what the whole end goes into comes out on."""
    closed, near = walls(hole), reference_for(hole.sides)
    sides = ((WALL_NEAR, near), (WALL_FAR, near.opposite))
    return (hole.entry, *(face for line, face in sides if line not in closed))


def side_planes(hole: RakingHole) -> tuple[Plane, Plane]:
    """The two sides of the mortise."""
    return _sides(hole).planes()


def side_lines(hole: RakingHole, tape: Tape) -> tuple[Line, ...]:
    """The two sides of the mortise: it follows the tenon as it was cut."""
    return mated.side_lines(_sides(hole, follows_words(hole.tenon, "thickness", tape)))


def _sides(hole: RakingHole, follows: str = "") -> mated.Sides:
    """Its two sides, which are those of any mortise cut to a finished tenon."""
    return mated.Sides(
        stick=hole.stick,
        feature=hole.feature,
        axis=hole.sides,
        span=hole.across,
        same_side=hole.same_side,
        set_back=hole.tenon.near,
        mate=hole.tenon.stick.name,
        follows=follows,
    )


def follows_words(tenon: RakingTenon, size: str, tape: Tape) -> str:
    """Whether a mortise follows its tenon as it was cut or as it is drawn, in a sentence."""
    name = f"{tenon.stick.name}'s {tenon.feature.replace('-', ' ')}"
    laid_out = {"thickness": tenon.thickness, "length": tenon.length}[size]
    return mated.follows_words(name, size, tenon.as_cut.get(size), laid_out, tape)


def outside_the_side(family: str, hole: RakingHole, tape: Tape) -> Finding | None:
    """A side of the mortise lies in the air.

    The raking timber stands too far in or out across the other. Remedy: check where both stand.
    """
    return mated.outside_the_side(_sides(hole), f"{family}-mortise-outside", tape)


def open_at_the_side(family: str, hole: RakingHole, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """A barefaced tenon flush with its timber leaves the mortise without a wall.

    The tenon is then held on three sides only, and shows. Remedy: set-back, or a timber that stands
    further in.
    """
    return mated.open_at_the_side(_sides(hole), f"{family}-mortise-open")
