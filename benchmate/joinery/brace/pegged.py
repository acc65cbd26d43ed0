"""Where the pegs of a brace lie, on its own tenon and in the timber it enters.

How it works
1. The hole in the post or beam lies `from_shoulder` square in from where the brace bears, and
   `from_edge` along the grain from the nose end of its mortise.
2. The brace's own hole lies nearer its shoulder by the draw, and as much further from its nose: the
   peg then draws the shoulder down and the nose home, so that both bearings close (trade notes 3,
   TFG-when: towards the shoulder and away from the butt).
3. Both figures of its own hole are square to the lines they count from, which slant on the brace.
"""

from dataclasses import dataclass, replace

from benchmate.frame.bored import Bored, bored_in
from benchmate.frame.flats import shifted
from benchmate.frame.peg_steps import PEG_LINE, peg_id
from benchmate.frame.pegs import Centre, Holes, Pegs
from benchmate.frame.rake import root
from benchmate.frame.reach import crossing
from benchmate.joinery.brace.shape import EndShape, HoleShape
from benchmate.measure.length import Length
from benchmate.model.solids import Plane


@dataclass(frozen=True, slots=True, kw_only=True)
class Pegged:
    """The pegs of a brace's end: its `own` holes, and those `bored` in what receives it."""

    pegs: Pegs
    brace: EndShape
    hole: HoleShape
    own: Holes
    bored: Bored

    @property
    def line(self) -> Plane:
        """The line on the brace that its own centres lie on: parallel to the shoulder."""
        return _peg_plane(self.pegs, self.brace)

    def across(self, place: int) -> Plane:
        """The line through one of its own centres, parallel to the nose."""
        return _centre_plane(self.pegs, self.brace, place)

    def from_nose(self, place: int) -> Length:
        """How far one of its own centres lies from the nose, square to it."""
        return self.pegs.from_edges[place] + self.pegs.draw

    @property
    def drawn_in_all(self) -> Length:
        """How far apart the two holes of one peg are, on the slant."""
        return Length(root(2 * self.pegs.draw.nm**2))

    @property
    def relish(self) -> Length:
        """The wood from its own centres to the tenon's end."""
        return self.brace.real("length") - self.pegs.drawn


def pegged(pegs: Pegs, brace: EndShape, hole: HoleShape) -> Pegged:
    """The pegs of a brace's end on the real sticks."""
    on = 1 if hole.nosed_first else -1
    bored = bored_in(hole, pegs, (hole.nose + each * on for each in pegs.from_edges))
    own = Holes(
        stick=brace.stick,
        face=brace.stick.pose.face(hole.stick.pose.direction(bored.holes.face)),
        pegs=pegs,
        centres=tuple(_centre(pegs, brace, place) for place in range(pegs.count)),
    )
    return Pegged(pegs=pegs, brace=brace, hole=hole, own=own, bored=bored)


def _centre(pegs: Pegs, brace: EndShape, place: int) -> Centre:
    across = _centre_plane(pegs, brace, place)
    return Centre(*crossing(_peg_plane(pegs, brace), across, brace.plumb))


def _peg_plane(pegs: Pegs, brace: EndShape) -> Plane:
    return replace(shifted(brace.seat, -pegs.drawn), line=PEG_LINE)


def _centre_plane(pegs: Pegs, brace: EndShape, place: int) -> Plane:
    inside = pegs.from_edges[place] + pegs.draw
    return replace(shifted(brace.nose, inside), line=peg_id(place))
