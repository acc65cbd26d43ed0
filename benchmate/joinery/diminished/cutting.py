"""What to do at the tenon besides striking lines: one figure to one task."""

from benchmate.frame.cheeks import (
    LEANS,
    SHOULDER,
    near_edge_words,
    saw_cheeks,
    saw_edges,
    saw_shoulder,
)
from benchmate.frame.end_tasks import knife_only, knife_shoulder, measure_finished
from benchmate.frame.practice import CHISEL, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks
from benchmate.joinery.diminished.shape import EndShape
from benchmate.joinery.diminished.tenoned import edge_sides, shoulder_setting
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Direction, Face
from benchmate.model.feature import Reading, Size, Stage, Task
from benchmate.model.setting import Setting
from benchmate.model.stick import axis_from

COUNTED = (
    "Sizes count from the near cheek and the reference edge. If one of those was overcut, move its "
    "line in the mortise as well."
)


def tenon_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the tenon, in the order it is done."""
    reduced, setting = shape.cheeks.axis in shape.reduction.to, shoulder_setting(shape, tape)
    sides = shape.cheeks.sides(reduced=reduced) | edge_sides(shape)
    edges = (
        (saw_edges(shape.end, shape.cheeks.face, shape.width, _near_edge(shape)),)
        if edge_sides(shape)
        else ()
    )
    return (
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        *reduction_knife(shape.reduction),
        *(_saw_shoulder(shape, face, deep, setting) for face, deep in sides.items()),
        *saw_cheeks(shape.cheeks, reduced=reduced),
        *edges,
        *reduction_tasks(shape.reduction),
        _pare(shape, tape),
        _as_cut(shape),
    )


def _saw_shoulder(shape: EndShape, face: Face, deep: Length, setting: Setting) -> Task:
    """The kerf leans on top and underside; on the sides it goes in square along the slant."""
    before = LEANS if axis_from(face) is shape.plumb else ""
    return saw_shoulder(shape.cheeks, face, deep, setting=setting, before=before)


def tenon_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.cheeks.thickness, "tenon thickness"),
        Size("width", shape.width, "tenon width"),
        Size("length", shape.length, f"tenon length from the shoulder at the {_under(shape)}"),
    )


def _under(shape: EndShape) -> str:
    return shape.stick.pose.words(shape.stick.pose.face(Direction.DOWN))


def _knife(shape: EndShape) -> Task:
    return knife_shoulder(shape, LONG_FACES, draws=SHOULDER, caution=_flush(shape))


def _flush(shape: EndShape) -> str:
    """Where the tenon runs out to a face, so that a knifed line across would sever its root."""
    words = shape.stick.pose.words
    sides = shape.cheeks.sides(reduced=shape.cheeks.axis in shape.reduction.to)
    edges = edge_sides(shape)
    found = []
    for face in LONG_FACES:
        by_edge = axis_from(face) is shape.edges
        own, other = (edges, sides) if by_edge else (sides, edges)
        if face not in own and other:
            lines = "cheek" if by_edge else "relief"
            found.append(knife_only(words(face), f"outside the {lines} lines"))
    return " ".join(found)


def _pare(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the shoulder to its slope, then the tenon",
        draws=SHOULDER,
        faces=(*LONG_FACES, shape.end),
        readings=(
            Reading(
                value=shape.cheeks.thickness, hook=shape.cheeks.near_words, way="to the far cheek"
            ),
        ),
        waste="Only what stands proud of the lines.",
        why="The slope lies flat in its housing, and the underside by the shoulder on the ledge.",
        caution=CHISEL,
        setting=shoulder_setting(shape, tape),
    )


def _as_cut(shape: EndShape) -> Task:
    return measure_finished(
        "the tenon",
        (shape.end,),
        (
            Reading(
                value=shape.real("thickness"), hook=shape.cheeks.near_words, way="to the far cheek"
            ),
            Reading(value=shape.real("width"), hook=_near_edge(shape), way="to the other edge"),
            Reading(
                value=shape.real("length"),
                hook=f"shoulder at the {_under(shape)}",
                way="to the tenon's end",
            ),
        ),
        caution=COUNTED,
    )


def _near_edge(shape: EndShape) -> str:
    return near_edge_words(shape.stick, shape.edges, shape.edge)
