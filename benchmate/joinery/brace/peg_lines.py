"""The marks of a brace's pegs: struck on the timber it enters, shifted both ways on its tenon."""

from dataclasses import replace

from benchmate.frame.marking import Says, parallel_mark
from benchmate.frame.peg_steps import ENGINEER, PEG_LINE, depth_line, peg_id, peg_title, wood_left
from benchmate.frame.reach import crossing
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.brace.end import bears_on_line, line_setting
from benchmate.joinery.brace.hole import opening
from benchmate.joinery.brace.pegged import Pegged
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Stage
from benchmate.model.solids import Axis


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
    holes, pegs, hole = shape.bored, shape.pegs, shape.hole
    inside = wood_left(pegs.from_shoulder, pegs, f"the {opening(hole)}", tape)
    entry = hole.stick.pose.words(hole.entry)
    in_all = (Beside(hole.recess + pegs.from_shoulder, f"in from the {entry}"),)
    line = Line(
        id=PEG_LINE,
        title="Peg line",
        axis=holes.aside,
        at=holes.centres[0].deep,
        faces=(holes.face,),
        beside=(*(in_all if hole.recess else ()), *inside, *_relish(shape, tape)),
        why=f"The holes' centre line. The wood round them holds the pegs: {ENGINEER}.",
        caution=_follows_stick(shape),
    )
    centres = tuple(
        Line(
            id=peg_id(place),
            title=peg_title(pegs, place),
            axis=Axis.ALONG,
            at=centre.along,
            faces=(holes.face,),
            beside=_to_ends(shape, centre.along, tape),
            why="Where it crosses the peg line is the centre: prick it for the bit's lead screw.",
        )
        for place, centre in enumerate(holes.centres)
    )
    return (line, *centres, *_depth(shape))


def _follows_stick(shape: Pegged) -> str:
    """The caution for a seat on a far face that nobody has measured there yet, or nothing."""
    hole = shape.hole
    if hole.entry.is_reference or hole.stick.inner is not None:
        return ""
    return unmeasured(hole.stick, hole.into, (hole.feature,)).rstrip()


def _to_ends(shape: Pegged, at: Length, tape: Tape) -> tuple[Beside, ...]:
    """How far a centre is from the end of the mortise that the nose bears on."""
    return wood_left(abs(at - shape.hole.nose), shape.pegs, "the mortise's nose end", tape)


def _relish(shape: Pegged, tape: Tape) -> tuple[Beside, ...]:
    return wood_left(shape.relish, shape.pegs, "the tenon's end", tape)


def _depth(shape: Pegged) -> tuple[Line, ...]:
    """How deep blind holes go, past the tenon."""
    depth = shape.pegs.blind_depth
    if depth is None:
        return ()
    other = shape.hole.stick.pose.words(shape.bored.face.opposite)
    beside = (
        Beside(depth - shape.through_tenon, "past the tenon"),
        Beside(shape.real_sides - depth, f"left to the {other}"),
    )
    return (depth_line(shape.bored, depth, beside),)


def own_lines(shape: Pegged, tape: Tape) -> tuple[Line, ...]:
    """The lines on the brace, once its centres are pricked: shifted both ways by the draw."""
    pegs, brace = shape.pegs, shape.brace
    drawn = (Beside(shape.drawn_in_all, "from each pricked mark, on the slant between both ways"),)
    says = Says(
        title="Peg line, drawn" if pegs.draw else "Peg line",
        beside=(*(drawn if pegs.draw else ()), *_relish(shape, tape)),
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
        return "No draw: the holes lie where they were pricked."
    draw = tape.text(shape.pegs.draw)
    return (
        f"Shift every pricked mark {draw} towards the shoulder and {draw} away from the nose, so "
        "that the peg draws both up tight."
    )
