"""Where the mortise lies in the real post: right through it, taller than the tenon by the wedge.

How it works
1. The tail's slope and the wedge's are planes of the tie, each through a point at the shoulder and
   one where the tail's slope ends. Carried across they are the two ends of the mortise.
2. The tenon comes in raised by the whole flare and slides down the slope over its last stretch. So
   at the entry face the mortise is at least the flare taller than the tenon at its shoulder, and a
   housing is eased on the wedge's side by what the tie still has to come down once it is in it.
"""

from dataclasses import dataclass, replace
from typing import NamedTuple

from benchmate.frame.both_sides import sides_for
from benchmate.frame.flats import along_at, built, carried, nearest, reversed_plane
from benchmate.frame.frame import Frame
from benchmate.frame.mated import Sides, inside
from benchmate.frame.meeting import Meeting, Span
from benchmate.frame.place import Place
from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.joinery.half_dovetail.shape import TailShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.sums import read_sum
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Axis, Plane, above, below
from benchmate.model.stick import Stick, axis_from

TAIL_END, WEDGE_END = ("tail-end", "wedge-end")
FLOOR, START, FINISH, NEAR, FAR = (
    f"housing-{name}" for name in ("floor", "start", "finish", "near", "far")
)


class Wedge(NamedTuple):
    """The wedge: from the tenon's shoulder to the post's far face, as wide as the mortise."""

    length: Length
    thin: Length
    thick: Length
    width: Length


class Ends(NamedTuple):
    """Where the two ends of the mortise come on one face of the post, along it."""

    tail: Length
    wedge: Length

    @property
    def height(self) -> Length:
        """From one to the other."""
        return abs(self.wedge - self.tail)


@dataclass(frozen=True, slots=True, kw_only=True)
class MortiseShape:
    """The mortise through the post, in the post's own readings.

    `tail_end` and `wedge_end` are its two sloping ends; `walls` the sides the housing is closed at.
    `seat` is where the shoulder bears on the `into` axis, `recess` how deep that lies below the
    real face `entry`. `tie_top` is where the top of the tie comes.
    """

    stick: Stick
    tail: TailShape
    sides: Sides
    entry: Face
    tail_end: Plane
    wedge_end: Plane
    walls: tuple[Plane, ...]
    seat: Length
    wedge: Wedge
    tie_top: Length

    @property
    def feature(self) -> str:
        """Its id on the post."""
        return self.sides.feature

    @property
    def into(self) -> Axis:
        """The axis it goes through the post on."""
        return axis_from(self.entry)

    @property
    def recess(self) -> Length:
        """How deep the seat lies below the real entry face."""
        return self.tail.recess

    @property
    def real_into(self) -> Length:
        """How deep the real post is the way the mortise goes."""
        return self.stick.depth(self.into, self.feature)

    def ends(self, deep: Length) -> Ends:
        """Where the two ends come so deep in from the reference face that the tie goes past."""
        tail, wedge = (
            along_at(plane, self.into, deep) for plane in (self.tail_end, self.wedge_end)
        )
        return Ends(tail, wedge)

    def ends_on(self, face: Face) -> Ends:
        """Where the two ends come on the entry face or the far one."""
        return self.ends(ZERO if face.is_reference else self.real_into)

    @property
    def span(self) -> Span:
        """From the lowest to the highest reading of mortise and housing along the post."""
        found = [at for face in (self.entry, self.entry.opposite) for at in self.ends_on(face)]
        found += [Length(plane.offset * plane.normal[0]) for plane in self.walls if plane.normal[0]]
        return min(found), max(found)

    @property
    def head(self) -> Face:
        """The end of the post that looks up."""
        return self.stick.pose.end(Direction.UP)

    @property
    def below_head(self) -> Length:
        """The post left from the top of the tie to the underside of what the head bears in."""
        stick = self.stick
        if self.head is Face.FAR_END:
            return stick.body - stick.far_housed - self.tie_top
        return self.tie_top - stick.near_housed

    @property
    def flare(self) -> Length:
        """How much deeper the tail is at its end than at the shoulder, as it was really cut."""
        return self.tail.real("length") - self.tail.real("width")

    @property
    def least_thin(self) -> Length:
        """How thick the wedge's thin end has to be for the tail to come in at the entry face.

        There the mortise is lower by its taper over the recess.
        """
        run = self.tail.run
        return self.flare + Length(-(-self.tail.flare.nm * self.recess.nm // run.nm))


def mortise_shape(joint: HalfDovetail, tail: TailShape, frame: Frame) -> MortiseShape:
    """The mortise for a tail, cut to it as it came out.

    A tail that came out without flare is a finding; its mortise then stays as drawn.
    """
    post, here, there = frame.stick(joint.into), *map(frame.standing, (joint.timber, joint.into))
    (bearing,) = joint.bearings()
    met = frame.meeting(bearing, at=None, inset=read_sum("0"))
    root, deep = tail.real("width"), tail.real("length")
    if deep <= root:
        root, deep = tail.root, tail.tail
    thin, recess = joint.wedge_thin, tail.recess
    slopes = (
        (TAIL_END, reversed_plane(tail.slope(root, deep, TAIL_END))),
        (WEDGE_END, tail.slope(-thin, -thin - tail.flare, WEDGE_END)),
    )
    tail_end, wedge_end = (carried(built(plane, here), there, name) for name, plane in slopes)
    sides = sides_for(tail, met, post, joint.mortise, frame.tape)
    lowest = tail.outside(ZERO if joint.wedged == "top" else tail.framed_edges)
    top = carried(built(lowest, here), there)
    return MortiseShape(
        stick=post,
        tail=tail,
        sides=sides,
        entry=met.entry,
        tail_end=tail_end,
        wedge_end=wedge_end,
        walls=_walls(tail, sides, met, (here, there)) if recess else (),
        seat=post.in_from(met.entry, recess, joint.mortise),
        wedge=Wedge(tail.passed, thin, thin + _taper(tail, tail.passed), sides.width),
        tie_top=Length(top.offset * top.normal[0]),
    )


def _taper(tail: TailShape, over: Length) -> Length:
    """How much the slope comes to over a stretch along the tie, to the nearest nanometre."""
    return Length(nearest(tail.flare.nm * over.nm, tail.run.nm))


def _walls(
    tail: TailShape, sides: Sides, met: Meeting, places: tuple[Place, Place]
) -> tuple[Plane, ...]:
    """The sides the housing is closed at, eased on the wedge's side so that the tie comes in."""
    here, there = places
    near, far = met.across_span(ZERO, tail.cheeks.framed)
    ease = Length(-(-tail.flare.nm * tail.recess.nm // tail.run.nm))
    found = [above(sides.axis, near, NEAR), below(sides.axis, far, FAR)]
    for plane in (tail.outside(-ease), reversed_plane(tail.outside(tail.framed_edges))):
        wall = carried(built(plane, here), there)
        found.append(replace(wall, line=FINISH if wall.normal[0] > 0 else START))
    order = (START, FINISH, NEAR, FAR)
    closed = [wall for wall in found if inside(sides.stick, wall, sides.feature)]
    return tuple(sorted(closed, key=lambda wall: order.index(str(wall.line))))
