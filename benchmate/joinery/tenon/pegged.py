"""Where the pegs of a tenon lie, on its own stick and on the one that receives it."""

from dataclasses import dataclass

from benchmate.frame.meeting import Meeting
from benchmate.frame.pegs import BoredFrom, Centre, Holes, Pegs
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Axis
from benchmate.model.stick import reference_for


@dataclass(frozen=True, slots=True, kw_only=True)
class Bored:
    """The holes through the cheeks of a mortise."""

    mortise: MortiseShape
    holes: Holes

    @property
    def through_tenon(self) -> Length:
        """From the face they are bored from to the cheek of the mortise past the tenon."""
        near, far = self.mortise.across
        return far if self.holes.face.is_reference else self.mortise.real_sides - near


@dataclass(frozen=True, slots=True, kw_only=True)
class Pegged:
    """The pegs of a tenon: its own `holes`, and those `bored` in the timber that receives it.

    Both are measured from where the shoulder bears and from the reference edge, so they hold
    whatever size the tenon came out.
    """

    pegs: Pegs
    tenon: TenonShape
    holes: Holes
    bored: Bored | None

    @property
    def relish(self) -> Length:
        """The wood from the centres of the tenon's holes to its end."""
        return self.tenon.real("length") - self.pegs.drawn


def pegged(
    pegs: Pegs, tenon: TenonShape, mortise: MortiseShape | None, met: Meeting | None
) -> Pegged:
    """The pegs of a tenon on the real sticks; `mortise` and `met` are None if nothing receives it.

    The tenon's own centres lie nearer its shoulder by the draw.
    """
    bored, face = None, _side(tenon.cheeks, pegs.bored_from)
    if mortise is not None and met is not None:
        bored = Bored(mortise=mortise, holes=_received(pegs, tenon, mortise, met))
        face = tenon.stick.pose.face(mortise.stick.pose.direction(bored.holes.face))
    along = tenon.along(pegs.drawn)
    holes = Holes(
        stick=tenon.stick,
        face=face,
        pegs=pegs,
        centres=tuple(Centre(along, tenon.edge + each) for each in pegs.from_edges),
    )
    return Pegged(pegs=pegs, tenon=tenon, holes=holes, bored=bored)


def _side(across: Axis, bored_from: BoredFrom) -> Face:
    near = reference_for(across)
    return near if bored_from == "reference" else near.opposite


def _received(pegs: Pegs, tenon: TenonShape, mortise: MortiseShape, met: Meeting) -> Holes:
    """The holes in the receiving stick, through both cheeks of the mortise."""
    face = _side(mortise.sides, pegs.bored_from)
    deep = mortise.seat + (
        pegs.from_shoulder if mortise.entry.is_reference else -pegs.from_shoulder
    )
    edges = [tenon.edge + each for each in pegs.from_edges]
    return Holes(
        stick=mortise.stick,
        face=face,
        pegs=pegs,
        centres=tuple(Centre(met.along_span(each, each)[0], deep) for each in edges),
        stop=_stop(pegs, mortise, face),
    )


def _stop(pegs: Pegs, mortise: MortiseShape, face: Face) -> Length | None:
    """Where blind holes end on the axis they are bored along; None right through."""
    if pegs.blind_depth is None:
        return None
    return pegs.blind_depth if face.is_reference else mortise.real_sides - pegs.blind_depth
