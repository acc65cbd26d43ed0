"""The marks of a tenon's pegs: struck on the receiving timber, shifted on the tenon."""

from benchmate.frame.peg_steps import (
    ENGINEER,
    PEG_LINE,
    depth_line,
    peg_id,
    peg_title,
    towards_shoulder,
    wood_left,
)
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.tenon.cutting import near_edge
from benchmate.joinery.tenon.mortise import opening
from benchmate.joinery.tenon.pegged import Bored, Pegged
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage
from benchmate.model.solids import Axis


def bored_lines(shape: Pegged, bored: Bored, tape: Tape) -> tuple[Line, ...]:
    """The lines on the receiving timber, on the face it is bored from."""
    holes = bored.holes
    line = Line(
        id=PEG_LINE,
        title="Peg line",
        axis=holes.aside,
        at=holes.centres[0].deep,
        faces=(holes.face,),
        beside=(*_from_opening(bored, tape), *_relish(shape, tape)),
        why=f"The holes' centre line. The wood round them holds the pegs: {ENGINEER}.",
        caution=_follows_stick(bored),
    )
    centres = tuple(
        Line(
            id=peg_id(place),
            title=peg_title(shape.pegs, place),
            axis=Axis.ALONG,
            at=at.along,
            faces=(holes.face,),
            beside=_to_mortise_end(bored, at.along, tape),
            why="Where it crosses the peg line is the centre: prick it for the bit's lead screw.",
        )
        for place, at in enumerate(holes.centres)
    )
    return (line, *centres, *_depth(bored))


def _follows_stick(bored: Bored) -> str:
    """The caution for a seat on a far face that nobody has measured there yet, or nothing."""
    mortise = bored.mortise
    if mortise.entry.is_reference or mortise.stick.inner is not None:
        return ""
    return unmeasured(mortise.stick, mortise.into, (mortise.feature,)).rstrip()


def _from_opening(bored: Bored, tape: Tape) -> tuple[Beside, ...]:
    """How far in the holes are from where the shoulder bears, and from the face over a housing."""
    mortise, pegs = bored.mortise, bored.holes.pegs
    words = mortise.stick.pose.words(mortise.entry)
    inside = wood_left(pegs.from_shoulder, pegs, f"the {opening(mortise)}", tape)
    if not mortise.housed:
        return inside
    return (Beside(mortise.recess + pegs.from_shoulder, f"in from the {words}"), *inside)


def _to_mortise_end(bored: Bored, at: Length, tape: Tape) -> tuple[Beside, ...]:
    """How far a centre is from the nearer end of the mortise."""
    start, finish = bored.mortise.along
    if at - start <= finish - at:
        return wood_left(at - start, bored.holes.pegs, "the mortise's start line", tape)
    return wood_left(finish - at, bored.holes.pegs, "the mortise's finish line", tape)


def _relish(shape: Pegged, tape: Tape) -> tuple[Beside, ...]:
    return wood_left(shape.relish, shape.pegs, "the tenon's end", tape)


def _depth(bored: Bored) -> tuple[Line, ...]:
    """How deep blind holes go, past the tenon."""
    depth, mortise = bored.holes.pegs.blind_depth, bored.mortise
    if depth is None:
        return ()
    across = mortise.stick.pose.words(bored.holes.face.opposite)
    beside = (
        Beside(depth - bored.through_tenon, "past the tenon"),
        Beside(mortise.real_sides - depth, f"left to the {across}"),
    )
    return (depth_line(bored.holes, depth, beside),)


def tenon_lines(shape: Pegged, tape: Tape) -> tuple[Line, ...]:
    """The lines on the tenon, once its centres are pricked: shifted by the draw, and as pricked."""
    pegs, end = shape.pegs, shape.tenon.stick.pose.words(shape.tenon.end)
    drawn = (Beside(pegs.draw, "nearer the shoulder than the holes in the mortise"),)
    line = Line(
        id=PEG_LINE,
        title="Peg line, drawn" if pegs.draw else "Peg line",
        axis=Axis.ALONG,
        at=shape.holes.centres[0].along,
        faces=(shape.holes.face,),
        readings=(
            Reading(
                value=pegs.drawn,
                hook=f"{end} shoulder line",
                way=f"towards the {end}, on the tenon",
            ),
        ),
        beside=(*(drawn if pegs.draw else ()), *_relish(shape, tape)),
        why=f"{_shifted(shape, tape)} The wood beyond the holes holds the pegs: {ENGINEER}.",
        caution=towards_shoulder(pegs, end, tape).rstrip(),
        stage=Stage.FINISH,
    )
    return (line, *(_centre(shape, place) for place in range(pegs.count)))


def _centre(shape: Pegged, place: int) -> Line:
    return Line(
        id=peg_id(place),
        title=peg_title(shape.pegs, place),
        axis=shape.holes.aside,
        at=shape.holes.centres[place].deep,
        faces=(shape.holes.face,),
        readings=(
            Reading(
                value=shape.pegs.from_edges[place],
                hook=near_edge(shape.tenon),
                way="across the tenon",
            ),
        ),
        why="Where it was pricked: the draw does not move it this way.",
        stage=Stage.FINISH,
    )


def _shifted(shape: Pegged, tape: Tape) -> str:
    if not shape.pegs.draw:
        return "No draw: the holes lie where they were pricked."
    return (
        f"Shift every pricked mark {tape.text(shape.pegs.draw)} towards the shoulder, so that the "
        "peg draws it up tight."
    )
