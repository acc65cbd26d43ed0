"""The holes of pegs through the cheeks of a mortise, and their marks on the timber that has it."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple, Protocol

from benchmate.frame.meeting import Span
from benchmate.frame.peg_steps import (
    ENGINEER,
    PEG_LINE,
    depth_line,
    peg_id,
    peg_title,
    relish_beyond,
    wood_left,
)
from benchmate.frame.pegs import BoredFrom, Centre, Holes, Pegs
from benchmate.frame.reduction import unmeasured
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for


class PeggedMortise(Protocol):
    """A mortise that pegs go through, in its stick's own readings.

    It is cut `into` the stick from `entry`. `along` and `across` bound it, the latter on the axis
    of its `sides`. The shoulder bears at `seat`, which lies `recess` below the real face.
    """

    @property
    def stick(self) -> Stick:
        """The stick it is cut in."""

    @property
    def feature(self) -> str:
        """Its id there."""

    @property
    def entry(self) -> Face:
        """The face it is cut in from."""

    @property
    def into(self) -> Axis:
        """The axis it is cut down on."""

    @property
    def sides(self) -> Axis:
        """The axis across it, which its pegs run along."""

    @property
    def along(self) -> Span:
        """From start to finish along the grain."""

    @property
    def across(self) -> Span:
        """From side to side."""

    @property
    def seat(self) -> Length:
        """The reading that the shoulder bears at."""

    @property
    def recess(self) -> Length:
        """How deep the seat lies below the real face."""


class ToEnd(NamedTuple):
    """How far a centre is from an end of its mortise, and what that end is called."""

    wood: Length
    end: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Bored:
    """The holes through the cheeks of a mortise, in the stick that has it."""

    mortise: PeggedMortise
    holes: Holes

    @property
    def through_tenon(self) -> Length:
        """From the face they are bored from to the cheek of the mortise past the tenon."""
        near, far = self.mortise.across
        return far if self.holes.face.is_reference else self.real_sides - near

    @property
    def real_sides(self) -> Length:
        """How deep the stick really is, the way it is bored."""
        return self.mortise.stick.depth(self.mortise.sides, self.mortise.feature)


def bored_side(sides: Axis, bored_from: BoredFrom) -> Face:
    """The face that holes along an axis are bored from."""
    near = reference_for(sides)
    return near if bored_from == "reference" else near.opposite


def bored_in(mortise: PeggedMortise, pegs: Pegs, along: Iterable[Length]) -> Bored:
    """The holes through both cheeks of a mortise, their centres so far `along` its stick."""
    face = bored_side(mortise.sides, pegs.bored_from)
    deep = mortise.seat + pegs.from_shoulder * (1 if mortise.entry.is_reference else -1)
    stop = pegs.blind_depth
    if stop is not None:
        stop = mortise.stick.in_from(face, stop, mortise.feature)
    centres = tuple(Centre(each, deep) for each in along)
    holes = Holes(stick=mortise.stick, face=face, pegs=pegs, centres=centres, stop=stop)
    return Bored(mortise=mortise, holes=holes)


def mark_bored(bored: Bored, relish: Length, ends: Iterable[ToEnd], tape: Tape) -> tuple[Line, ...]:
    """The lines on the timber with the mortise, on the face it is bored from.

    `relish` is the wood in the tenon from its own holes to its end; `ends` tells for each centre
    which end of the mortise it is near.
    """
    holes = bored.holes
    line = Line(
        id=PEG_LINE,
        title="Peg line",
        axis=holes.aside,
        at=holes.centres[0].deep,
        faces=(holes.face,),
        beside=(*_from_opening(bored, tape), *relish_beyond(relish, holes.pegs, tape)),
        why=f"The holes' centre line. The wood round them holds the pegs: {ENGINEER}.",
        caution=_follows_stick(bored.mortise),
    )
    centres = (_centre(holes, place, to_end, tape) for place, to_end in enumerate(ends))
    return (line, *centres, *_depth(bored))


def _centre(holes: Holes, place: int, to_end: ToEnd, tape: Tape) -> Line:
    return Line(
        id=peg_id(place),
        title=peg_title(holes.pegs, place),
        axis=Axis.ALONG,
        at=holes.centres[place].along,
        faces=(holes.face,),
        beside=wood_left(to_end.wood, holes.pegs, f"the mortise's {to_end.end}", tape),
        why="Where it crosses the peg line is the centre: prick it for the bit's lead screw.",
    )


def _from_opening(bored: Bored, tape: Tape) -> tuple[Beside, ...]:
    """How far in the holes are from where the shoulder bears, and from the face over a housing."""
    mortise, pegs = bored.mortise, bored.holes.pegs
    entry = mortise.stick.pose.words(mortise.entry)
    if mortise.recess <= ZERO:
        return wood_left(pegs.from_shoulder, pegs, f"the {entry}", tape)
    in_all = Beside(mortise.recess + pegs.from_shoulder, f"in from the {entry}")
    return (in_all, *wood_left(pegs.from_shoulder, pegs, "the housing floor", tape))


def _follows_stick(mortise: PeggedMortise) -> str:
    """The caution for a seat on a far face that nobody has measured there yet, or nothing."""
    if mortise.entry.is_reference or mortise.stick.inner is not None:
        return ""
    return unmeasured(mortise.stick, mortise.into, (mortise.feature,)).rstrip()


def _depth(bored: Bored) -> tuple[Line, ...]:
    """How deep blind holes go, past the tenon."""
    depth, holes = bored.holes.pegs.blind_depth, bored.holes
    if depth is None:
        return ()
    across = holes.stick.pose.words(holes.face.opposite)
    beside = (
        Beside(depth - bored.through_tenon, "past the tenon"),
        Beside(bored.real_sides - depth, f"left to the {across}"),
    )
    return (depth_line(holes, depth, beside),)
