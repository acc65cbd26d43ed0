"""The tail: the wood that comes off, the lines to strike, and what to do."""

from benchmate.frame.marking import Says, parallel_mark, slanting_mark
from benchmate.frame.practice import SAW, measure_task
from benchmate.frame.reach import crossing
from benchmate.joinery.rafter.raking import TOP_EDGE, under
from benchmate.joinery.rafter.strike import Mark
from benchmate.joinery.rafter.tail.shape import LEVEL, SHOULDER, TailShape
from benchmate.joinery.rafter.words import datum, setting
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Cut, Plane


def tail_cuts(shape: TailShape) -> tuple[Cut, ...]:
    """What lies beyond the end, and under the level cut."""
    level = _level(shape)
    return (Cut((shape.cut,)), *((Cut((level,)),) if level else ()))


def _level(shape: TailShape) -> Plane | None:
    if shape.soffit is None:
        return None
    return shape.rafter.carried(under(shape.soffit), LEVEL)


def tail_lines(shape: TailShape, seat: Mark | None, tape: Tape) -> tuple[Line, ...]:
    """The cut at the end of the top edge, then the level one under it; `seat` is the next seat."""
    level = _level(shape)
    found = [_end_line(shape, seat, tape)]
    if level is not None:
        found.append(_level_line(shape, level, tape))
    return tuple(found)


def _end_line(shape: TailShape, seat: Mark | None, tape: Tape) -> Line:
    rafter = shape.rafter
    top = rafter.stick.pose.words(rafter.top)
    says = Says(
        title="Tail line",
        beside=(*_projection(shape, seat), *_long(shape)),
        why=(
            f"{'Plumb' if shape.plumb else 'Level'}, from the {top} down: the {TOP_EDGE} is held, "
            f"as it makes the roof plane. {datum(rafter.stick, shape.end)}".rstrip()
        ),
        setting=setting(rafter, tape, plumb=shape.plumb),
    )
    return slanting_mark(rafter.stick, shape.cut, (ZERO, rafter.real_deep), says)


def _projection(shape: TailShape, seat: Mark | None) -> tuple[Beside, ...]:
    """How far the tail stands out: tail length = unit length x projection (trade notes 7.3)."""
    if seat is None:
        return ()
    level = abs(Length(seat.ahead - shape.ahead))
    if not level:
        return ()
    return (
        Beside(level, f"of projection, level, from {seat.words}"),
        Beside(shape.rafter.along(level), f"of tail, along the {TOP_EDGE}, from there"),
    )


def _long(shape: TailShape) -> tuple[Beside, ...]:
    if shape.plumb:
        return (Beside(shape.plumb_high, "of plumb cut, down from the top edge"),)
    return (Beside(shape.level_long, "of level cut, from the top edge"),)


def _level_line(shape: TailShape, level: Plane, tape: Tape) -> Line:
    rafter = shape.rafter
    reading = Reading(value=shape.plumb_high, hook=TOP_EDGE, way="down the tail line, then level")
    says = Says(
        title="Level line",
        beside=(Beside(shape.level_long, "long, to the underside"),),
        why=(
            "Level. Measured from the top edge, so that a row of tails has its level cuts in one "
            "line; what the rafter is over or under makes this one longer or shorter."
        ),
        waste="Below it: the lower corner of the tail.",
        setting=setting(rafter, tape, plumb=False),
    )
    start = crossing(level, shape.cut, rafter.plumb)[1]
    return parallel_mark(level, (start, rafter.real_deep), reading, says)


def tail_tasks(shape: TailShape, tape: Tape) -> tuple[Task, ...]:
    """What to do at a tail besides striking lines: one figure to one task."""
    rafter = shape.rafter
    return (
        measure_task(rafter.stick, *rafter.places),
        _knife(shape),
        *_saw_level(shape, tape),
        _saw_end(shape, tape),
    )


def _knife(shape: TailShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the tail, hatch the waste",
        draws=SHOULDER,
        faces=LONG_FACES,
        waste=f"Towards the {shape.rafter.stick.pose.words(shape.end)}.",
        why="It stays in sight: knifed lines keep its edges crisp.",
        caution="Hold it up as it will lie before the first cut: a plumb and a level cut look "
        "alike on the horses.",
    )


def _saw_end(shape: TailShape, tape: Tape) -> Task:
    rafter = shape.rafter
    long, way = (
        (shape.plumb_high, "down the tail line")
        if shape.plumb
        else (shape.level_long, "along the tail line")
    )
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title=f"Saw the {'plumb' if shape.plumb else 'level'} cut",
        draws=SHOULDER,
        faces=shape.rafter.both_sides,
        readings=(Reading(value=long, hook=TOP_EDGE, way=way),),
        waste=f"Towards the {rafter.stick.pose.words(shape.end)}, beyond the line.",
        why="Last of the tail's cuts, as the saw then runs out into waste.",
        caution=f"{_follows(shape)}{SAW}",
        setting=setting(rafter, tape, plumb=shape.plumb),
    )


def _follows(shape: TailShape) -> str:
    """The caution for a cut as long as the stick is deep."""
    if shape.soffit is not None:
        return ""
    return shape.rafter.unmeasured_depth


def _saw_level(shape: TailShape, tape: Tape) -> tuple[Task, ...]:
    rafter = shape.rafter
    if shape.soffit is None:
        return ()
    under_words = rafter.stick.pose.words(rafter.top.opposite)
    return (
        Task(
            id="saw-level",
            stage=Stage.CUT,
            title="Saw the level cut",
            draws=LEVEL,
            faces=shape.rafter.both_sides,
            readings=(
                Reading(
                    value=shape.level_long, hook=under_words, way="along the level line, outwards"
                ),
            ),
            waste="Below the level line.",
            why="While the tip still holds the corner that goes.",
            caution=f"{rafter.unmeasured_depth}{SAW}",
            setting=setting(rafter, tape, plumb=False),
        ),
    )
