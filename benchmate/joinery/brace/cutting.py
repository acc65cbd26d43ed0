"""What to do at a brace's end besides striking lines: one figure to one task."""

from benchmate.frame.practice import SAW, measure_task
from benchmate.frame.raking_tenon import (
    knife,
    measure_as_cut,
    pare,
    reduce_tasks,
    saw_cheeks,
    saw_side_tasks,
    saw_tip,
)
from benchmate.frame.settings import rake_setting
from benchmate.joinery.brace.end import reduced
from benchmate.joinery.brace.shape import NOSE, SEAT, SHOULDER, TIP, EndShape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Reading, Size, Stage, Task
from benchmate.model.setting import Setting
from benchmate.model.stick import reference_for


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the brace's end, in the order it is done."""
    return (
        measure_task(shape.stick, *shape.places),
        knife(
            shape,
            "the shoulder and the nose",
            _shoulder_line(shape),
            "which end is the foot, which edge is the long one",
        ),
        saw_tip(shape, TIP, "shoulder", _setting(shape, tape)),
        _saw_nose(shape, tape),
        *_saw_beside_nose(shape, tape),
        *saw_side_tasks(shape, "Saw the shoulder", _shoulder_line(shape), _setting(shape, tape)),
        *saw_cheeks(shape),
        *reduce_tasks(shape, reduced(shape)),
        pare(
            shape,
            "the tenon and the nose",
            "Shoulder and nose bear together: a proud spot on one holds the other off.",
        ),
        measure_as_cut(shape, "shoulder"),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("length", shape.length, "tenon length, square to the shoulder"),
    )


def _setting(shape: EndShape, tape: Tape) -> Setting:
    return rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=shape.upright)


def _shoulder_line(shape: EndShape) -> str:
    return SEAT if shape.housing else SHOULDER


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
