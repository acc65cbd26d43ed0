"""What to do at an abutting end besides striking lines: one figure to one task."""

from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.raking_tenon import AS_CUT, reduce_tasks, saw_cheeks, saw_side_tasks
from benchmate.joinery.joggle.end import reduced
from benchmate.joinery.joggle.shape import ABUTMENT, SOLE, TIP, EndShape
from benchmate.joinery.joggle.words import end_setting, face_setting
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Asks, Reading, Size, Stage, Task
from benchmate.model.stick import reference_for


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the abutting end, in the order it is done."""
    return (
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        _saw_tip(shape, tape),
        *_saw_abutment(shape, tape),
        *saw_side_tasks(shape, "Saw the sole", SOLE, end_setting(shape, shape.sole, tape)),
        *saw_cheeks(shape),
        *reduce_tasks(shape, reduced(shape)),
        _pare(shape),
        _as_cut(shape),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("length", shape.length, "from the face line to the tenon's end, square to the line"),
    )


def _knife(shape: EndShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the abutment and the sole, hatch the waste",
        draws=SOLE,
        faces=LONG_FACES,
        waste=f"Towards the {shape.end_words}, outside the tenon's own lines.",
        why="Knifed lines stay crisp, and hatching on every face shows which side goes.",
        caution="Hold it up as it will stand before the first cut: which end is the foot, and "
        "which edge has the toe.",
    )


def _saw_tip(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title="Saw the tenon's end",
        draws=TIP,
        faces=LONG_FACES,
        waste=f"Towards the {shape.end_words}, beyond the line.",
        why="Parallel to the face line. It need not be fine: the tenon never touches bottom.",
        caution=SAW,
        setting=face_setting(shape, tape),
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


def _pare(shape: EndShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon, the sole and the abutment, check them flat",
        faces=(shape.edge_face, reference_for(shape.cheeks)),
        readings=(Reading(value=shape.thickness, hook=shape.near_cheek, way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why="The abutment bears on all of its face: a proud spot takes the whole thrust.",
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
                value=shape.real("length"), hook="face line", way="square to it, to the tenon's end"
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
