"""The marks of a brace's pegs: struck on the timber it enters, shifted both ways on its tenon."""

from dataclasses import replace

from benchmate.frame.bored import ToEnd, mark_bored
from benchmate.frame.marking import Says, parallel_mark
from benchmate.frame.peg_steps import ENGINEER, UNDRAWN, peg_title, wood_left
from benchmate.frame.reach import crossing
from benchmate.joinery.brace.end import bears_on_line, line_setting
from benchmate.joinery.brace.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage


def draw_words(shape: Pegged, tape: Tape) -> str:
    """The caution for the two ways of a brace's draw; empty where there is none."""
    if not shape.pegs.draw:
        return ""
    draw = tape.text(shape.pegs.draw)
    return (
        f"Draw {draw} towards the shoulder and {draw} away from the nose: the other way, the peg "
        "holds the joint open. "
    )


def bored_lines(shape: Pegged, tape: Tape) -> tuple[Line, ...]:
    """The lines on the timber the brace enters, on the face it is bored from."""
    nose = shape.hole.nose
    ends = (ToEnd(abs(each.along - nose), "nose end") for each in shape.bored.holes.centres)
    return mark_bored(shape.bored, shape.relish, ends, tape)


def own_lines(shape: Pegged, tape: Tape) -> tuple[Line, ...]:
    """The lines on the brace, once its centres are pricked: shifted both ways by the draw."""
    pegs, brace = shape.pegs, shape.brace
    drawn = (Beside(shape.drawn_in_all, "from each pricked mark, on the slant between both ways"),)
    says = Says(
        title="Peg line, drawn" if pegs.draw else "Peg line",
        beside=(
            *(drawn if pegs.draw else ()),
            *wood_left(shape.relish, pegs, "the tenon's end", tape),
        ),
        why=f"{_shifted(shape, tape)} The wood beyond the holes holds the pegs: {ENGINEER}.",
        caution=draw_words(shape, tape).rstrip(),
        faces=(shape.own.face,),
        setting=line_setting(brace, tape, like_the_face=True),
    )
    reading = Reading(
        value=pegs.drawn,
        hook=bears_on_line(brace),
        way=f"square to it, towards the {brace.end_words}, on the tenon",
    )
    start = crossing(shape.line, brace.nose, brace.plumb)[1]
    line = parallel_mark(shape.line, (start, brace.deep), reading, says)
    centres = (_centre(shape, place, tape) for place in range(pegs.count))
    return tuple(replace(each, stage=Stage.FINISH) for each in (line, *centres))


def _centre(shape: Pegged, place: int, tape: Tape) -> Line:
    brace, across = shape.brace, shape.across(place)
    says = Says(
        title=peg_title(shape.pegs, place),
        beside=_to_short_edge(shape, place, tape),
        why="Where it crosses the peg line is the centre. Parallel to the nose.",
        caution=draw_words(shape, tape).rstrip(),
        faces=(shape.own.face,),
        setting=line_setting(brace, tape, like_the_face=False),
    )
    reading = Reading(
        value=shape.from_nose(place),
        hook="nose line",
        way="square to it, towards the short edge",
    )
    deep = tuple(crossing(across, each, brace.plumb)[1] for each in (brace.seat, brace.tip))
    return parallel_mark(across, (deep[0], deep[1]), reading, says)


def _to_short_edge(shape: Pegged, place: int, tape: Tape) -> tuple[Beside, ...]:
    wood = shape.brace.deep - shape.own.centres[place].deep
    return wood_left(wood, shape.pegs, "the short edge, square to it", tape)


def _shifted(shape: Pegged, tape: Tape) -> str:
    if not shape.pegs.draw:
        return UNDRAWN
    draw = tape.text(shape.pegs.draw)
    return (
        f"Shift every pricked mark {draw} towards the shoulder and {draw} away from the nose, so "
        "that the peg draws both up tight."
    )
