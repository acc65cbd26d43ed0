"""What to do at an abutting end besides striking lines: one figure to one task."""

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
from benchmate.joinery.joggle.end import reduced
from benchmate.joinery.joggle.shape import ABUTMENT, SOLE, TIP, EndShape
from benchmate.joinery.joggle.words import end_setting, face_setting
from benchmate.measure.printing import Tape
from benchmate.model.feature import Size, Stage, Task
from benchmate.model.stick import reference_for


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the abutting end, in the order it is done."""
    return (
        measure_task(shape.stick, *shape.places),
        knife(
            shape,
            "the abutment and the sole",
            SOLE,
            "which end is the foot, and which edge has the toe",
        ),
        saw_tip(shape, TIP, "face line", face_setting(shape, tape)),
        *_saw_abutment(shape, tape),
        *saw_side_tasks(shape, "Saw the sole", SOLE, end_setting(shape, shape.sole, tape)),
        *saw_cheeks(shape),
        *reduce_tasks(shape, reduced(shape)),
        pare(
            shape,
            "the tenon, the sole and the abutment",
            "The abutment bears on all of its face: a proud spot takes the whole thrust.",
        ),
        measure_as_cut(shape, "face line"),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("length", shape.length, "from the face line to the tenon's end, square to the line"),
    )


def _saw_abutment(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    if shape.square_on_edge or shape.square_off:
        return ()
    return (
        Task(
            id="saw-abutment",
            stage=Stage.CUT,
            title="Saw the abutment, right across",
            draws=ABUTMENT,
            faces=(reference_for(shape.cheeks), shape.edge_face),
            waste=f"The point at the toe, towards the {shape.end_words}.",
            why="Leave the line: the whole of it bears, and is pared to fit.",
            caution=SAW,
            setting=end_setting(shape, shape.abutment, tape),
        ),
    )
