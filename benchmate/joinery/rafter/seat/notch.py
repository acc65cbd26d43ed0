"""The rafter's side of a seat: the notch, and the lines to strike for it."""

from benchmate.frame.marking import Says, parallel_mark, slanting_mark
from benchmate.frame.reach import crossing
from benchmate.frame.reduction import Reduction, side_line
from benchmate.joinery.rafter.raking import TOP_EDGE, under
from benchmate.joinery.rafter.seat.shape import ABUTMENT, HEEL, SeatShape
from benchmate.joinery.rafter.words import ENGINEER, setting
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction
from benchmate.model.feature import Beside, Line, Reading
from benchmate.model.solids import Cut, Plane, above

STOP_LEVEL, STOP_PLUMB = ("reduction-top", "reduction-outside")
"""The lines where a reduced side ends."""

WORDS = {HEEL: "heel line", ABUTMENT: "abutment line", "": "tail line"}
"""The plumb lines that a height is measured down, by id; the tail line is the rafter's own end."""

WASTE = "Between the plumb and the level line, towards the underside: the notch only."


def notch_cuts(shape: SeatShape) -> tuple[Cut, ...]:
    """The seat's notch, the one over a step, and what goes by square rule."""
    heel = (shape.heel,) if shape.heeled else ()
    found = [Cut((shape.seat, *heel))]
    if shape.stepped:
        found.append(Cut((shape.ledge, *heel, shape.abutment)))
    if shape.reduced:
        lost, axis = reduction(shape), shape.rafter.sides
        found.append(Cut((*stops(shape), above(axis, lost.to[axis], lost.line(axis)))))
    return tuple(found)


def reduction(shape: SeatShape) -> Reduction:
    """What comes off the far side by square rule, so that the rafter goes in."""
    rafter = shape.rafter
    return Reduction(
        stick=rafter.stick,
        end=rafter.stick.pose.end(Direction.DOWN),
        length=shape.recess,
        to={rafter.sides: rafter.wide},
        struck={},
        places=shape.places,
    )


def stops(shape: SeatShape) -> tuple[Plane, ...]:
    """Where a reduced side ends: at the timber's real top, and at its real outside face."""
    if not shape.heeled:
        return (_stop_level(shape),)
    plate = shape.plate
    outside = shape.rafter.carried(shape.rafter.uphill(plate.real_near), STOP_PLUMB)
    return (_stop_level(shape), outside if plate.over_near else shape.heel)


def _stop_level(shape: SeatShape) -> Plane:
    """The plate's real top: the seat itself, or the level cut over a step, where they lie there."""
    if not shape.recess:
        return shape.seat
    if shape.stepped and not shape.plate.over_top:
        return shape.ledge
    return shape.rafter.carried(under(shape.plate.real_top), STOP_LEVEL)


def notch_lines(shape: SeatShape, tape: Tape) -> tuple[Line, ...]:
    """The plumb lines from the top edge, the level ones down them, and where a side is reduced."""
    found = []
    if shape.heeled:
        found.append(_heel(shape, tape))
    if shape.stepped:
        found += [_abutment(shape, tape), _ledge(shape, tape)]
    return (*found, _seat(shape, tape), *_reduction(shape, tape))


def level_words(shape: SeatShape) -> str:
    """The level line that the heel ends at."""
    return "ledge line" if shape.stepped else "seat line"


def _heel(shape: SeatShape, tape: Tape) -> Line:
    plate = shape.plate
    near = plate.words(plate.near_face)
    inner = "inner timber's " if plate.over_near else ""
    says = Says(
        title="Heel line",
        beside=(
            Beside(shape.over_plate, "height above plate, down this line"),
            Beside(shape.heel_high, "of it is heel, up from the underside"),
            Beside(shape.rafter.plumbed(shape.rafter.real_deep), "plumb depth of the rafter"),
        ),
        why=f"Plumb, against the {inner}{near} of {plate.stick.name}. Strike all of it.",
        caution=f"{plate.unsure(plate.near_face)} Saw it only from the underside to the "
        f"{level_words(shape)}.".strip(),
        waste=WASTE,
        setting=setting(shape.rafter, tape, plumb=True),
    )
    return slanting_mark(shape.rafter.stick, shape.heel, (ZERO, shape.rafter.real_deep), says)


def _abutment(shape: SeatShape, tape: Tape) -> Line:
    plate = shape.plate
    says = Says(
        title="Abutment line",
        beside=(Beside(shape.step, f"in from the {plate.words(plate.near_face)}, level"),),
        why=f"Plumb, against the step left standing on {plate.stick.name}: it takes the thrust.",
        caution=plate.unsure(plate.near_face),
        waste=WASTE,
        setting=setting(shape.rafter, tape, plumb=True),
    )
    return slanting_mark(shape.rafter.stick, shape.abutment, (ZERO, shape.rafter.real_deep), says)


def _ledge(shape: SeatShape, tape: Tape) -> Line:
    plate = shape.plate
    down = shape.heel if shape.heeled else shape.abutment
    ahead = plate.near if shape.heeled else shape.wall
    reading = Reading(
        value=Length(shape.rafter.up_at(ahead) - plate.top),
        hook=TOP_EDGE,
        way=f"down the {WORDS[HEEL if shape.heeled else ABUTMENT]}, then level",
    )
    says = Says(
        title="Ledge line",
        beside=(Beside(shape.over_plate, "height above plate"),),
        why=f"Level, over the top of the step on {plate.stick.name}.",
        caution=plate.unsure(plate.top_face),
        waste=WASTE,
        setting=setting(shape.rafter, tape, plumb=False),
    )
    start = crossing(shape.ledge, down, shape.rafter.plumb)[1]
    finish = crossing(shape.ledge, shape.abutment, shape.rafter.plumb)[1]
    if not shape.heeled:
        finish = crossing(shape.ledge, _own_end(shape), shape.rafter.plumb)[1]
    return parallel_mark(shape.ledge, (start, finish), reading, says)


def _seat(shape: SeatShape, tape: Tape) -> Line:
    rafter, plate = shape.rafter, shape.plate
    reading = Reading(
        value=shape.left_plumb, hook=TOP_EDGE, way=f"down the {WORDS[shape.bound]}, then level"
    )
    let_in = (Beside(shape.over_plate, "height above plate"),) if shape.let_in else ()
    says = Says(
        title="Seat line",
        beside=(
            *let_in,
            Beside(shape.long, "long, level"),
            Beside(shape.bearing, f"of it stands on {plate.stick.name}"),
            Beside(shape.left_square, "of wood left at the least, square to the rafter"),
            Beside(shape.notch, f"of notch, square: {shape.share} % of the rafter's depth"),
        ),
        why=_what_holds(shape),
        caution=" ".join(filter(None, (plate.unsure(plate.top_face), ENGINEER))),
        waste=WASTE,
        setting=setting(rafter, tape, plumb=False),
    )
    plumb = {ABUTMENT: shape.abutment, HEEL: shape.heel, "": _own_end(shape)}[shape.bound]
    start = crossing(shape.seat, plumb, rafter.plumb)[1]
    return parallel_mark(shape.seat, (start, rafter.real_deep), reading, says)


def _own_end(shape: SeatShape) -> Plane:
    """The plumb cut at the rafter's own foot."""
    return shape.rafter.carried(shape.rafter.downhill(shape.rafter.foot))


def _what_holds(shape: SeatShape) -> str:
    let_in = "the floor let into" if shape.recess else "the top of"
    return (
        f"Level, on {let_in} {shape.plate.stick.name}. Measured from the top edge, as the roof "
        "plane holds: what the rafter is over or under in depth only makes the seat longer or "
        "shorter."
    )


def _reduction(shape: SeatShape, tape: Tape) -> tuple[Line, ...]:
    if not shape.reduced:
        return ()
    rafter, found = shape.rafter, []
    for plane in stops(shape):
        if plane.line == STOP_PLUMB:
            says = _stop_says("Outside reduction line", shape, tape, plumb=True)
            found.append(slanting_mark(rafter.stick, plane, (ZERO, rafter.real_deep), says))
        elif plane.line == STOP_LEVEL:
            reading = Reading(value=shape.recess, hook="seat line", way="square to it, upwards")
            start = crossing(plane, _own_end(shape), rafter.plumb)[1]
            says = _stop_says("Upper reduction line", shape, tape, plumb=False)
            found.append(parallel_mark(plane, (start, rafter.real_deep), reading, says))
    return (*found, side_line(reduction(shape), rafter.sides))


def _stop_says(title: str, shape: SeatShape, tape: Tape, *, plumb: bool) -> Says:
    far = shape.rafter.stick.pose.words(shape.rafter.side.opposite)
    return Says(
        title=title,
        why=f"As far as the rafter goes into {shape.plate.stick.name}; beyond it the stick keeps "
        "its full size.",
        waste=f"Towards the seat, outside the reduction line on the {far} only.",
        faces=(shape.rafter.side.opposite,),
        setting=setting(shape.rafter, tape, plumb=plumb),
    )
