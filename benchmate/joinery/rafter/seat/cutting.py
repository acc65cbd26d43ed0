"""What to do at a rafter's notch besides striking lines: one figure to one task."""

from benchmate.frame.practice import CHISEL, LEAVE_THE_LINE, SAW, measure_task
from benchmate.frame.reduction import reduction_tasks
from benchmate.joinery.rafter.raking import TOP_EDGE
from benchmate.joinery.rafter.seat.notch import WASTE, WORDS, level_words, reduction
from benchmate.joinery.rafter.seat.shape import ABUTMENT, HEEL, LEDGE, SEAT, SeatShape
from benchmate.joinery.rafter.words import setting
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.feature import Reading, Stage, Task

OVERCUT = "Stop both kerfs where the lines cross: an overcut weakens what is left above the seat."
"""Common practice, no source."""


def notch_tasks(shape: SeatShape, tape: Tape, step_off: Task) -> tuple[Task, ...]:
    """Every task at the notch, in the order it is done."""
    return (
        measure_task(shape.rafter.stick, *shape.places),
        step_off,
        _knife(shape),
        *_saw_plumb(shape, tape),
        _saw_seat(shape, tape),
        *_saw_step(shape, tape),
        *(reduction_tasks(reduction(shape)) if shape.reduced else ()),
        _pare(shape),
    )


def _under(shape: SeatShape) -> str:
    return shape.rafter.stick.pose.words(shape.rafter.top.opposite)


def _knife(shape: SeatShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the lines, hatch the notch",
        draws=SEAT,
        faces=(*shape.rafter.both_sides, shape.rafter.top.opposite),
        waste=WASTE,
        why="Knifed lines stay crisp, and hatching on both sides shows which corner goes.",
        caution="Hold it up as it will lie before the first cut: the notch is in the underside.",
    )


def _saw_plumb(shape: SeatShape, tape: Tape) -> tuple[Task, ...]:
    """Sawing the heel, as far up as the level cut."""
    if not shape.heeled:
        return ()
    way = f"up the heel line, to the {level_words(shape)}"
    reading = Reading(value=shape.heel_high, hook=_under(shape), way=way)
    return (
        Task(
            id="saw-heel",
            stage=Stage.CUT,
            title="Saw the heel",
            draws=HEEL,
            faces=shape.rafter.both_sides,
            readings=(reading,),
            waste=WASTE,
            why="Plumb, and square through from side to side.",
            caution=f"{shape.rafter.unmeasured_depth}{OVERCUT} {SAW}",
            setting=setting(shape.rafter, tape, plumb=True),
        ),
    )


def _saw_seat(shape: SeatShape, tape: Tape) -> Task:
    plumb = WORDS[shape.bound]
    return Task(
        id="saw-seat",
        stage=Stage.CUT,
        title="Saw the seat",
        draws=SEAT,
        faces=shape.rafter.both_sides,
        readings=(
            Reading(
                value=shape.long, hook=_under(shape), way=f"along the seat line, to the {plumb}"
            ),
        ),
        waste=WASTE,
        why=LEAVE_THE_LINE,
        caution=f"{shape.rafter.unmeasured_depth}{OVERCUT} {SAW}",
        setting=setting(shape.rafter, tape, plumb=False),
    )


def _saw_step(shape: SeatShape, tape: Tape) -> tuple[Task, ...]:
    """Sawing the ledge over a step and the abutment behind it."""
    if not shape.stepped:
        return ()
    wide = Length(shape.wall - max(shape.plate.near, shape.rafter.foot))
    reading = Reading(value=wide, hook="heel line", way="level, to the abutment line")
    deep = Reading(value=shape.let_in, hook="seat line", way="up the abutment line, to the ledge")
    return (
        Task(
            id="saw-abutment",
            stage=Stage.CUT,
            title="Saw the abutment",
            draws=ABUTMENT,
            faces=shape.rafter.both_sides,
            readings=(deep,),
            waste=WASTE,
            why="It thrusts against the step: straight and plumb.",
            caution=f"{OVERCUT} {SAW}",
            setting=setting(shape.rafter, tape, plumb=True),
        ),
        Task(
            id="saw-ledge",
            stage=Stage.CUT,
            title="Saw the ledge over the step",
            draws=LEDGE,
            faces=shape.rafter.both_sides,
            readings=(reading,),
            waste=WASTE,
            why="It passes over the step; the seat bears.",
            caution=f"{OVERCUT} {SAW}",
            setting=setting(shape.rafter, tape, plumb=False),
        ),
    )


def _pare(shape: SeatShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the seat flat, try its height",
        faces=shape.rafter.both_sides,
        readings=(
            Reading(value=shape.left_plumb, hook=TOP_EDGE, way=f"down the {WORDS[shape.bound]}"),
        ),
        waste="Only what stands proud of the lines.",
        why="All rafters as high as this over their plates make one roof plane.",
        caution=CHISEL,
    )
