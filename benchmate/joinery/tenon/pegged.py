"""Where the pegs of a tenon lie, on its own stick and on the one that receives it."""

from dataclasses import dataclass

from benchmate.frame.bored import Bored, bored_in, bored_side
from benchmate.frame.meeting import Meeting
from benchmate.frame.pegs import Centre, Holes, Pegs
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import Length


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
    bored, face = None, bored_side(tenon.cheeks, pegs.bored_from)
    if mortise is not None and met is not None:
        edges = (tenon.edge + each for each in pegs.from_edges)
        bored = bored_in(mortise, pegs, (met.along_span(each, each)[0] for each in edges))
        face = tenon.stick.pose.face(mortise.stick.pose.direction(bored.holes.face))
    along = tenon.along(pegs.drawn)
    holes = Holes(
        stick=tenon.stick,
        face=face,
        pegs=pegs,
        centres=tuple(Centre(along, tenon.edge + each) for each in pegs.from_edges),
    )
    return Pegged(pegs=pegs, tenon=tenon, holes=holes, bored=bored)
