"""Blemish meets joint: a knot, check or wane in wood that a joint counts on.

How it works
1. A blemish is a box from its face inwards. Where its depth is not known it counts as deep as it is
   wide (common practice, no source); whatever of it a joint's own cuts take away does no harm.
2. What a joint counts on is read off its cuts, whatever its family: the wood it leaves standing
   beyond a shoulder, the surfaces that bear, the walls round what is cut into a side, and the wood
   round its peg holes.
3. Each is told once for a joint and a blemish, the gravest first. A scribed joint has no cuts, so
   nothing is known of where its wood lies and nothing is told.
"""

from collections.abc import Callable, Iterator
from typing import NamedTuple

from benchmate.checks.apart import apart
from benchmate.checks.piece import Piece
from benchmate.frame.pegs import DEPTH_LINE
from benchmate.layout.noted import blemish_name, off_the_stick
from benchmate.layout.step import Layout
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, Severity, look
from benchmate.model.progress import Blemish
from benchmate.model.solids import Axis, Cut, Plane
from benchmate.model.stick import Stick, across, axis_from
from benchmate.model.words import lower_first

BEARINGS = (
    *("shoulder", "tongue-shoulder", "abutment"),
    *("seat", "sole", "lap", "ledge", "floor", "housing-floor"),
)
"""The lines that a surface is cut to which bears on another timber: shoulders, seats, beds, and
the floors of housings and notches."""

REMEDY = (
    "turn the stick end for end, move the joint or take another stick; what strength is left is "
    "for the engineer"
)

_SKIN = 1
"""How deep a bearing surface counts as wood: one nanometre, so that it is a piece like others."""


class Met(NamedTuple):
    """A joint and a blemish that meet, or come too near."""

    layout: Layout
    feature: Feature
    blemish: Blemish
    tape: Tape

    @property
    def box(self) -> Piece:
        """The blemish, where the stick is as thick as it was measured at this joint."""
        return blemish_box(self.layout.stick, self.blemish, *self.feature.place)

    @property
    def wood(self) -> Piece:
        """The stick from end to end, as it was measured at this joint."""
        return wood_at(self.layout.stick, self.feature)

    @property
    def left(self) -> tuple[Piece, ...]:
        """What of the blemish is still there once the joint is cut."""
        return left_of(self.box, self.feature.cuts)

    def told(self, code: str, what: str) -> Finding:
        """The finding, on the joint it is found at."""
        name = blemish_name(self.layout.stick, self.blemish, self.tape)
        return look(code, self.layout.stick.id, self.feature.id, f"The {name}, {what}", REMEDY)

    @property
    def title(self) -> str:
        """The joint inside a sentence."""
        return lower_first(self.feature.title)


def blemish_findings(
    layout: Layout, blemishes: tuple[Blemish, ...], tape: Tape
) -> tuple[Finding, ...]:
    """What the blemishes of a timber do to its joints, each told once at a joint."""
    found: list[Finding] = []
    spans = tuple(_spans(layout)) if blemishes else ()
    for blemish in blemishes:
        found += blemish_off_the_stick(layout, blemish, tape)
        near = (layout.stick.start + blemish.from_end).nm
        far, reach = near + blemish.long.nm, layout.least_wood.nm
        for feature, low, high in spans:
            if near <= high + reach and low - reach <= far:
                met = Met(layout, feature, blemish, tape)
                found += next(filter(None, (check(met) for check in _CHECKS)), ())
    return tuple(found)


def _spans(layout: Layout) -> Iterator[tuple[Feature, int, int]]:
    """The joints to look at, with how far along the stick their cuts run.

    What a joint counts on lies no further along, so most joints need no closer look.
    """
    for feature in filter(_looked_at, layout.features):
        wood = wood_at(layout.stick, feature)
        pieces = tuple(filter(None, (wood.within(cut.planes) for cut in feature.cuts)))
        if pieces:
            lows, highs = (each.low[0] for each in pieces), (each.high[0] for each in pieces)
            yield feature, min(lows), max(highs)


def wood_at(stick: Stick, feature: Feature) -> Piece:
    """The stick from end to end, as thick as it was measured at a joint."""
    section = stick.section(*feature.place)
    return Piece((stick.start.nm, 0, 0), (stick.finish.nm, section.first.nm, section.second.nm))


def blemish_box(stick: Stick, blemish: Blemish, *places: str) -> Piece:
    """The wood a blemish fills, in the stick's own readings."""
    face = blemish.side
    into, aside = axis_from(face), across(axis_from(face))
    near = (stick.start + blemish.from_end).nm
    spans = {Axis.ALONG: (near, near + blemish.long.nm)}
    spans[aside] = (blemish.from_arris.nm, (blemish.from_arris + blemish.wide).nm)
    real = stick.depth(into, *places).nm
    deep = blemish.depth.nm
    spans[into] = (0, deep) if face.is_reference else (real - deep, real)
    (x, to_x), (u, to_u), (v, to_v) = (spans[axis] for axis in Axis)
    return Piece((x, u, v), (to_x, to_u, to_v))


def blemish_in_tenon(met: Met) -> tuple[Finding, ...]:
    """A blemish lies in the wood that is left standing beyond a shoulder.

    A tenon, a tongue or the end of a lap is thin and short-grained where a knot sits, and breaks
    at its root when the joint is driven home. Example: a knot on the face of a post, 2" above its
    foot. Remedy: turn the stick end for end, or take another.
    """
    beyond = _beyond(met.feature)
    pieces = [piece for left in met.left for plane in beyond if (piece := _solid(left, (plane,)))]
    pieces = [piece for each in pieces if (piece := _solid(met.wood, _as_planes(each)))]
    if not pieces:
        return ()
    along, wide = (_extent(pieces, axis, met.tape) for axis in _seen(met.blemish))
    return (
        met.told(
            "blemish-in-tenon",
            f"lies in the {met.title}: {along} along and {wide} across of it stay beyond the "
            "shoulder",
        ),
    )


def blemish_in_bearing(met: Met) -> tuple[Finding, ...]:
    """A blemish comes out on a surface that bears: a shoulder, a seat, a bed, a housing floor.

    A knot stands proud as the wood round it shrinks, a check or wane leaves nothing to bear on.
    Example: wane on the arris of a tie at its shoulder. Remedy: move the joint, or take another
    stick; where a shoulder can lose so much is for the engineer.
    """
    found = [
        (plane, piece)
        for cut in met.feature.cuts
        for plane in cut.planes
        if plane.line in BEARINGS
        for left in met.left
        if (piece := _on_surface(met, cut, plane, left))
    ]
    if not found:
        return ()
    line = next((line for line in met.feature.lines if line.id == found[0][0].line), None)
    surface = lower_first(line.title).removesuffix(" line") if line else "bearing"
    axes = [axis for axis in Axis if not found[0][0].normal[_place(axis)]][:2] or [Axis.ALONG]
    sizes = " by ".join(_extent([piece for _, piece in found], axis, met.tape) for axis in axes)
    words = f"comes out on the {surface} of the {met.title}: {sizes} of it"
    return (met.told("blemish-in-bearing", words),)


def blemish_in_wall(met: Met) -> tuple[Finding, ...]:
    """A blemish lies nearer to the walls of a mortise or housing than the shop's `least_wood`.

    The chisel follows the grain round a knot and the wall breaks out; a check opens into it.
    Example: a knot 1/4" beside a mortise. Remedy: move the joint, or take another stick.
    """
    stick, tape, least = met.layout.stick, met.tape, met.layout.least_wood
    if _is_pegs(met.feature):
        return ()
    walls = [piece for cut in met.feature.cuts if (piece := _into_side(stick, met.wood, cut))]
    near = _least_apart(met.left, walls)
    if near is None or (near and near >= least):
        return ()
    words = (
        f"lies {tape.text(near)} off a wall of the {met.title}, less than {tape.text(least)}"
        if near
        else f"lies right at a wall of the {met.title}"
    )
    return (met.told("blemish-in-wall", words),)


def blemish_at_pegs(met: Met) -> tuple[Finding, ...]:
    """A blemish lies in a peg hole, on its peg line, or nearer to one than `least_wood`.

    The bit wanders off a knot, and a check on the peg line splits out when the peg is driven.
    Example: a check in a tenon along its peg line. Remedy: move the pegs, or take another stick.
    """
    if not _is_pegs(met.feature):
        return ()
    tape, least = met.tape, met.layout.least_wood
    holes = [piece for cut in met.feature.cuts if (piece := met.wood.within(cut.planes))]
    left = left_of(met.box, _bored_through(met))
    near = _least_apart(left, holes)
    on_line = _least_apart(left, _peg_line(holes)) == ZERO
    if near is None or (near and near >= least and not on_line):
        return ()
    if not near:
        words = f"lies in a hole of the {met.title}"
    elif on_line:
        words = f"lies on the peg line of the {met.title}, {tape.text(near)} off a hole"
    else:
        words = (
            f"lies {tape.text(near)} off a hole of the {met.title}, less than {tape.text(least)}"
        )
    return (met.told("blemish-at-pegs", words),)


def blemish_off_the_stick(layout: Layout, blemish: Blemish, tape: Tape) -> Iterator[Finding]:
    """A blemish is noted where the stick has no wood.

    It was measured from another end or arris, or the stick was made shorter since. Remedy: measure
    it again; it counts from the squared reference end and from a reference face.
    """
    stick = layout.stick
    off = off_the_stick(stick, stick.section(), blemish)
    if off is not None:
        name = blemish_name(stick, blemish, tape)
        yield look(
            "blemish-off-the-stick",
            stick.id,
            "",
            f"The {name}, runs {tape.text(off[1])} {off[0]}",
            "measure it again, and note it anew",
        )


_CHECKS: tuple[Callable[[Met], tuple[Finding, ...]], ...] = (
    blemish_in_tenon,
    blemish_in_bearing,
    blemish_in_wall,
    blemish_at_pegs,
)


def left_of(piece: Piece, cuts: tuple[Cut, ...]) -> tuple[Piece, ...]:
    """What is left of a piece once some cuts are made, as convex pieces that do not overlap."""
    left: tuple[Piece, ...] = (piece,)
    for cut in cuts:
        left = tuple(part for each in left for part in _without(each, cut))
    return left


def _without(piece: Piece, cut: Cut) -> Iterator[Piece]:
    if _solid(piece, cut.planes) is None:
        yield piece
        return
    inside: Piece | None = piece
    for plane in cut.planes:
        if inside is None:
            return
        outside = _solid(inside, (_turned(plane),))
        if outside:
            yield outside
        inside = inside.within((plane,))


def _turned(plane: Plane) -> Plane:
    """The same plane with the wood for the waste."""
    x, u, v = plane.normal
    return Plane((-x, -u, -v), -plane.offset)


def _solid(piece: Piece, planes: tuple[Plane, ...]) -> Piece | None:
    """What of a piece lies on the waste side of some planes; None where that is no wood."""
    found = piece.within(planes)
    return found if found and found.corners() else None


def _as_planes(piece: Piece) -> tuple[Plane, ...]:
    """The planes that bound a piece."""
    sides = []
    for axis, near, far in zip(Axis, piece.low, piece.high, strict=True):
        x, u, v = axis.value
        sides += [Plane((x, u, v), far), Plane((-x, -u, -v), -near)]
    return (*sides, *piece.slopes)


def _beyond(feature: Feature) -> tuple[Plane, ...]:
    """The planes beyond which a joint leaves wood standing at an end of the stick."""
    lines = ("shoulder", "seat") if feature.sizes else ("shoulder",)
    planes = (plane for cut in feature.cuts for plane in cut.planes if plane.line in lines)
    return tuple(dict.fromkeys(planes))


def _on_surface(met: Met, cut: Cut, plane: Plane, left: Piece) -> Piece | None:
    """What of a blemish comes out on the surface that a cut leaves at one of its planes."""
    others = tuple(each for each in cut.planes if each is not plane)
    largest = max(map(abs, plane.normal))
    skin = Plane(plane.normal, plane.offset + _SKIN * largest)
    found = met.wood.within((*others, _turned(plane), skin))
    return _solid(found, _as_planes(left)) if found else None


def _into_side(stick: Stick, wood: Piece, cut: Cut) -> Piece | None:
    """What a cut takes out of a side; None for one that runs out at an end of the stick."""
    piece = wood.within(cut.planes)
    if piece is None or not stick.start.nm < piece.low[0] < piece.high[0] < stick.finish.nm:
        return None
    return piece


def _peg_line(holes: list[Piece]) -> list[Piece]:
    """The wood from the first hole to the last, where they lie in one line along an axis."""
    if not holes:
        return []
    x, u, v = (min(hole.low[axis] for hole in holes) for axis in range(3))
    to_x, to_u, to_v = (max(hole.high[axis] for hole in holes) for axis in range(3))
    whole = Piece((x, u, v), (to_x, to_u, to_v))
    first = holes[0]
    spans = zip(whole.low, whole.high, first.low, first.high, strict=True)
    straight = sum(low == near and high == far for low, high, near, far in spans)
    return [whole] if straight >= 2 else holes  # noqa: PLR2004 - it runs along the third axis


def _bored_through(met: Met) -> tuple[Cut, ...]:
    """What else comes off at the joint of some pegs: what lay there is gone when they are bored."""
    return tuple(
        cut
        for feature in met.layout.features
        if feature.joint == met.feature.joint and not _is_pegs(feature)
        for cut in feature.cuts
    )


def _is_pegs(feature: Feature) -> bool:
    """Whether a feature is holes alone: none of their sides is struck."""
    lines = {plane.line for cut in feature.cuts for plane in cut.planes}
    return bool(feature.cuts) and lines <= {None, DEPTH_LINE}


def _least_apart(pieces: tuple[Piece, ...], others: list[Piece]) -> Length | None:
    found = (apart(one, other) for one in pieces for other in others)
    return min((each for each in found if each is not None), default=None)


def _extent(pieces: list[Piece], axis: Axis, tape: Tape) -> str:
    place = _place(axis)
    near = min(piece.low[place] for piece in pieces)
    return tape.text(Length(max(piece.high[place] for piece in pieces) - near))


def _place(axis: Axis) -> int:
    return axis.value.index(1)


def _seen(blemish: Blemish) -> tuple[Axis, Axis]:
    """The two ways that one sees a blemish run on its face."""
    return Axis.ALONG, across(axis_from(blemish.side))


def _looked_at(feature: Feature) -> bool:
    stopped = any(found.severity is Severity.STOP for found in feature.findings)
    return bool(feature.joint) and not stopped
