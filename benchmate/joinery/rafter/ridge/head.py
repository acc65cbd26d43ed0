"""The rafter's head at a ridge: the wood that comes off, the lines to strike, and what to do."""

from benchmate.frame.marking import Says, parallel_mark, slanting_mark
from benchmate.frame.practice import CRISP, SAW, measure_task
from benchmate.frame.reach import crossing
from benchmate.frame.reduction import reduction_tasks, side_line
from benchmate.joinery.rafter.plumb_cut import pare_plumb_cut, saw_plumb_cut
from benchmate.joinery.rafter.raking import TOP_EDGE
from benchmate.joinery.rafter.ridge.shape import SEAT, SHOULDER, STOP, HeadShape
from benchmate.joinery.rafter.words import setting
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Cut, above


def head_cuts(shape: HeadShape) -> tuple[Cut, ...]:
    """What is past the bearing, what is under the level seat, and what goes by square rule."""
    found = [Cut((shape.shoulder,))]
    if shape.let_in:
        found.append(Cut((shape.seat, shape.face)))
    lost = shape.reduction
    found += [Cut((shape.stop, above(axis, at, lost.line(axis)))) for axis, at in lost.to.items()]
    return tuple(found)


def head_lines(shape: HeadShape, tape: Tape) -> tuple[Line, ...]:
    """The plumb line it bears at, then the ridge's face and the level seat of one let in."""
    found = [_shoulder(shape, tape)]
    if shape.let_in:
        found += [_face(shape, tape), _seat(shape, tape)]
    return (*found, *_reduction(shape, tape))


def _shoulder(shape: HeadShape, tape: Tape) -> Line:
    rafter, ridge = shape.rafter, shape.ridge
    where = f"the housing's floor in {ridge.stick.name}" if shape.let_in else ridge.stick.name
    says = Says(
        title="Plumb line",
        beside=(
            *(_deduction_let_in(shape) if shape.let_in else _deduction(shape)),
            Beside(rafter.plumbed(rafter.real_deep), "long, plumb"),
        ),
        why=f"Plumb, from the {TOP_EDGE} down: the head bears on {where} here.",
        caution=ridge.unsure(ridge.near_face),
        setting=setting(rafter, tape, plumb=True),
    )
    return slanting_mark(rafter.stick, shape.shoulder, (ZERO, rafter.real_deep), says)


def _deduction(shape: HeadShape) -> tuple[Beside, ...]:
    """Half the ridge, level, which is square to the plumb line (trade notes 7.3, NAV-65)."""
    if shape.deduction <= ZERO:
        return ()
    name = shape.ridge.stick.name
    return (
        Beside(
            shape.deduction,
            f"of ridge deduction, from the centre line to the face of {name}: level, which is "
            "square to the plumb line",
        ),
        Beside(shape.rafter.along(shape.deduction), f"of it along the {TOP_EDGE}"),
    )


def _deduction_let_in(shape: HeadShape) -> tuple[Beside, ...]:
    """What is left of the deduction where the head bears inside the ridge."""
    left = shape.deduction - shape.let_in
    if shape.deduction <= ZERO:
        return ()
    return (
        Beside(left, "back from the centre line, level: the ridge deduction less what is let in"),
        Beside(shape.rafter.along(left), f"of it along the {TOP_EDGE}"),
    )


def _face(shape: HeadShape, tape: Tape) -> Line:
    rafter, ridge = shape.rafter, shape.ridge
    says = Says(
        title="Face line",
        beside=(
            *_deduction(shape),
            Beside(shape.let_in, "level, from there to where it bears"),
        ),
        why=f"Plumb, at the {ridge.words(ridge.near_face)} of {ridge.stick.name}: the end goes in "
        "beyond it.",
        caution=f"{ridge.unsure(ridge.near_face)} Do not saw past the seat line.".strip(),
        waste="Under the seat line only.",
        setting=setting(rafter, tape, plumb=True),
    )
    return slanting_mark(rafter.stick, shape.face, (ZERO, rafter.real_deep), says)


def _seat(shape: HeadShape, tape: Tape) -> Line:
    rafter = shape.rafter
    reading = Reading(
        value=rafter.plumbed(rafter.deep), hook=TOP_EDGE, way="down the plumb line, then level"
    )
    high = Length(shape.level - rafter.up_at(shape.ridge.near, rafter.deep))
    says = Says(
        title="Seat line",
        beside=(
            Beside(shape.let_in, "long, level"),
            Beside(high, "of heel under it at the face line"),
        ),
        why="Level: the end stands on the bottom of its housing.",
        waste="Under it, as far as the face line.",
        setting=setting(rafter, tape, plumb=False),
    )
    start, finish = (
        crossing(shape.seat, plumb, rafter.plumb)[1] for plumb in (shape.shoulder, shape.face)
    )
    return parallel_mark(shape.seat, (start, finish), reading, says)


def _reduction(shape: HeadShape, tape: Tape) -> tuple[Line, ...]:
    lost = shape.reduction
    if not lost.to:
        return ()
    marks = tuple(side_line(lost, axis) for axis in lost.to)
    if shape.stop.line != STOP:
        return marks
    says = Says(
        title="Reduction end line",
        why="As far back as the end goes in: beyond it the stick keeps its full size.",
        setting=setting(shape.rafter, tape, plumb=True),
    )
    deep = (ZERO, shape.rafter.real_deep)
    return (slanting_mark(shape.rafter.stick, shape.stop, deep, says), *marks)


def head_tasks(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    """What to do at the head besides striking lines: one figure to one task."""
    return (
        measure_task(shape.rafter.stick, *shape.places),
        _knife(shape),
        saw_plumb_cut(shape.rafter, shape.end, SHOULDER, tape),
        *_saw_seat(shape, tape),
        *reduction_tasks(shape.reduction),
        pare_plumb_cut(
            shape.rafter,
            "It bears on all of its width: a proud spot holds it off, and lifts the roof plane.",
        ),
    )


def _knife(shape: HeadShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the plumb line, hatch the waste",
        draws=SHOULDER,
        faces=LONG_FACES,
        waste=f"Towards the {shape.rafter.stick.pose.words(shape.end)}.",
        why=CRISP,
        caution="Hold it up as it will lie before the first cut: plumb, not level.",
    )


def _saw_seat(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    if not shape.let_in:
        return ()
    return (
        Task(
            id="saw-seat",
            stage=Stage.CUT,
            title="Saw the level seat",
            draws=SEAT,
            faces=shape.rafter.both_sides,
            readings=(
                Reading(value=shape.let_in, hook="plumb line", way="level, to the face line"),
            ),
            waste="Under the seat line, as far as the face line.",
            why="Stop at the face line: the heel outside it stays, against the ridge.",
            caution=SAW,
            setting=setting(shape.rafter, tape, plumb=False),
        ),
    )
