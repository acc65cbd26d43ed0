"""The receiving side of a dovetailed joist: the socket, open above and narrow at the face."""

from benchmate.frame.housing import housing_cuts, housing_lines, housing_tasks
from benchmate.frame.marking import Says, slanting_mark, square_mark
from benchmate.joinery.joist.notch import back_line, floor_and_back, floor_line, notch_tasks
from benchmate.joinery.joist.tail import DRAWS, flank_name
from benchmate.joinery.joist.tail_shape import FAR, NEAR, SocketShape
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Line, Reading, Task
from benchmate.model.solids import Cut, Plane


def socket_cuts(shape: SocketShape) -> tuple[Cut, ...]:
    """What takes the whole end, and the socket: a box with leaning sides and no lid."""
    return (*housing_cuts(shape.housing), Cut((*shape.flanks, *floor_and_back(shape))))


def socket_lines(shape: SocketShape, tape: Tape) -> tuple[Line, ...]:
    """The housing, the two flanks, the floor and the back."""
    return (*housing_lines(shape.housing), *own_lines(shape, tape))


def own_lines(shape: SocketShape, tape: Tape) -> tuple[Line, ...]:
    """The lines of the socket itself, without a housing's."""
    tail = shape.tail
    middle = Length((tail.real("width") + tail.real("width") - tail.wide + tail.neck).nm // 2)
    bearing = (tail.real("length"), middle)
    return (
        *(_flank(shape, plane, tape) for plane in shape.flanks),
        floor_line(shape, tail, bearing, tape),
        back_line(shape),
    )


def _flank(shape: SocketShape, plane: Plane, tape: Tape) -> Line:
    line = NEAR if plane.line == NEAR else FAR
    name, tail = flank_name(shape.tail, line), shape.tail
    flare = tail.flares[0] if line == NEAR else tail.flares[1]
    room = (Beside(shape.wedge, "of it for the wedge"),) if line == shape.wedge_line else ()
    says = Says(
        title=f"{name} line",
        beside=(*room, Beside(shape.wide(shape.seat), "wide at the mouth")),
        why=" ".join(
            filter(
                None,
                (
                    "Run it on as far as the back line.",
                    _follows(shape, tape),
                    _wedge(shape) if room else "",
                ),
            )
        ),
        caution=DRAWS,
    )
    if not flare:
        return square_mark(plane, says)
    words = shape.stick.pose.words
    mouth = "housing floor line" if shape.housing.cut else words(shape.entry)
    tip = f"line {tape.text(tail.real('length'))} in from there, where the tip comes"
    deep = (shape.seat, shape.housing.inside(tail.real("length")))
    return slanting_mark(shape.stick, plane, deep, says, (mouth, tip))


def _follows(shape: SocketShape, tape: Tape) -> str:
    name, as_cut = f"{shape.tail.stick.name}'s tail", shape.tail.as_cut.get("width")
    if as_cut is None:
        return f"Follows {name} as drawn; it has not been measured as cut."
    return f"Follows {name} as cut: {tape.text(as_cut)} wide at its tip."


def _wedge(shape: SocketShape) -> str:
    side = shape.tail.looks(shape.wedge_line).word
    return (
        f"It stands out by the room for a wedge on the {side} side: dry hardwood, driven from "
        "above at the raising."
    )


def socket_tasks(shape: SocketShape, tape: Tape) -> tuple[Task, ...]:
    """What to do at the socket besides striking lines: one figure to one task."""
    wide = Reading(
        value=shape.wide(shape.seat), hook="flank", way="to the other flank, at the mouth"
    )
    fits = (
        "Plumb, and as wide at the floor as at the top: the tail drops straight in. Try it with "
        "a gauge made to the tail."
    )
    measure, *rest = notch_tasks(shape, wide, fits=fits)
    return (measure, *housing_tasks(shape.housing, "socket", own_lines(shape, tape)), *rest)
