"""The marks of a tenon's pegs: struck on the receiving timber, shifted on the tenon."""

from benchmate.frame.bored import Bored, ToEnd, mark_bored
from benchmate.frame.peg_steps import (
    ENGINEER,
    PEG_LINE,
    UNDRAWN,
    peg_id,
    peg_title,
    towards_shoulder,
    wood_left,
)
from benchmate.joinery.tenon.cutting import near_edge
from benchmate.joinery.tenon.pegged import Pegged
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage
from benchmate.model.solids import Axis


def bored_lines(shape: Pegged, bored: Bored, tape: Tape) -> tuple[Line, ...]:
    """The lines on the receiving timber, on the face it is bored from."""
    ends = (_nearer_end(bored, centre.along) for centre in bored.holes.centres)
    return mark_bored(bored, shape.relish, ends, tape)


def _nearer_end(bored: Bored, at: Length) -> ToEnd:
    """The end of the mortise that a centre lies nearer to."""
    start, finish = bored.mortise.along
    if at - start <= finish - at:
        return ToEnd(at - start, "start line")
    return ToEnd(finish - at, "finish line")


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
        beside=(
            *(drawn if pegs.draw else ()),
            *wood_left(shape.relish, pegs, "the tenon's end", tape),
        ),
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
        return UNDRAWN
    return (
        f"Shift every pricked mark {tape.text(shape.pegs.draw)} towards the shoulder, so that the "
        "peg draws it up tight."
    )
