"""What to do at a brace's end besides striking lines: one figure to one task."""

from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.raking_tenon import AS_CUT, reduce_tasks, saw_cheeks, saw_side_tasks
from benchmate.frame.settings import rake_setting
from benchmate.joinery.brace.end import reduced
from benchmate.joinery.brace.shape import NOSE, SEAT, SHOULDER, TIP, EndShape
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Asks, Reading, Size, Stage, Task
from benchmate.model.stick import reference_for


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the brace's end, in the order it is done."""
    return (
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        _saw_tip(shape, tape),
        _saw_nose(shape, tape),
        *_saw_beside_nose(shape, tape),
        *saw_side_tasks(shape, "Saw the shoulder", _shoulder_line(shape), _setting(shape, tape)),
        *saw_cheeks(shape),
        *reduce_tasks(shape, reduced(shape)),
        _pare(shape),
        _as_cut(shape),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("length", shape.length, "tenon length, square to the shoulder"),
    )


def _knife(shape: EndShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder and the nose, hatch the waste",
        draws=_shoulder_line(shape),
        faces=LONG_FACES,
        waste=f"Towards the {shape.end_words}, outside the tenon's own lines.",
        why="Knifed lines stay crisp, and hatching on every face shows which side goes.",
        caution="Hold it up as it will stand before the first cut: which end is the foot, which "
        "edge is the long one.",
    )


def _setting(shape: EndShape, tape: Tape) -> str:
    return rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=shape.upright)


def _shoulder_line(shape: EndShape) -> str:
    return SEAT if shape.housing else SHOULDER


def _saw_tip(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title="Saw the tenon's end",
        draws=TIP,
        faces=LONG_FACES,
        waste=f"Towards the {shape.end_words}, beyond the line.",
        why="Parallel to the shoulder. It need not be fine: the tenon never touches bottom.",
        caution=SAW,
        setting=_setting(shape, tape),
    )


def _saw_nose(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="saw-nose",
        stage=Stage.CUT,
        title="Saw the nose",
        draws=NOSE,
        faces=(reference_for(shape.cheeks), shape.edge_face),
        waste=f"The point of the long edge, towards the {shape.end_words}.",
        why="Leave the line: the nose bears, and is pared to fit.",
        caution=SAW,
        setting=rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=not shape.upright),
    )


def _saw_beside_nose(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Sawing off the point beside a nose that is set in, right across the brace."""
    if not shape.beside_nose:
        return ()
    edge = shape.stick.pose.words(shape.edge_face)
    return (
        Task(
            id="saw-beside-nose",
            stage=Stage.CUT,
            title="Saw off the point beside the nose, right across",
            draws=shape.abutment.line or "",
            faces=(reference_for(shape.cheeks), shape.edge_face),
            readings=(
                Reading(value=shape.beside_nose, hook=edge, way="along the line, to the nose line"),
            ),
            waste=f"The point of the long edge, towards the {shape.end_words}.",
            why="Stop at the nose line: from there on the end goes into the other timber.",
            caution=SAW,
            setting=_setting(shape, tape),
        ),
    )


def _pare(shape: EndShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon and the nose, check them flat",
        faces=(shape.edge_face, reference_for(shape.cheeks)),
        readings=(Reading(value=shape.thickness, hook=shape.near_cheek, way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why="Shoulder and nose bear together: a proud spot on one holds the other off.",
        caution=CHISEL,
    )


def _as_cut(shape: EndShape) -> Task:
    return Task(
        id=AS_CUT,
        stage=Stage.AS_CUT,
        title="Measure the tenon as cut",
        faces=(shape.end,),
        readings=(
            Reading(value=shape.real("thickness"), hook=shape.near_cheek, way="to the far cheek"),
            Reading(
                value=shape.real("length"), hook="shoulder", way="square to it, to the tenon's end"
            ),
        ),
        why="The mortise is cut to the tenon that was really made.",
        caution=(
            "The thickness counts from the near cheek. If that was overcut, move its line in the "
            "mortise as well."
        ),
        asks=Asks.AS_CUT,
        lasting=False,
    )
