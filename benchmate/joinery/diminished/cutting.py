"""What to do at the tenon besides striking lines: one figure to one task."""

from benchmate.frame.cheeks import SHOULDER, saw_cheeks, saw_edges, saw_shoulder
from benchmate.frame.practice import AS_CUT, CHISEL, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks
from benchmate.joinery.diminished.shape import EndShape
from benchmate.joinery.diminished.tenoned import edge_sides, shoulder_setting
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Direction, Face
from benchmate.model.feature import Asks, Reading, Size, Stage, Task
from benchmate.model.setting import Setting
from benchmate.model.stick import axis_from, reference_for

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
    leans = axis_from(face) is shape.plumb
    return saw_shoulder(shape.cheeks, face, deep, setting=setting, leans=leans)


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
    end = shape.stick.pose.words(shape.end)
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder, hatch the waste",
        draws=SHOULDER,
        faces=(*LONG_FACES, shape.end),
        waste=f"Towards the {end}, outside the tenon's own lines.",
        why="A knifed line stays crisp, and hatching on every face shows which side goes.",
        caution=_flush(shape),
    )


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
            found.append(
                f"Knife the {words(face)} only outside the {lines} lines: the tenon runs out to it "
                "there."
            )
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
    return Task(
        id=AS_CUT,
        stage=Stage.AS_CUT,
        title="Measure the tenon as cut",
        faces=(shape.end,),
        readings=(
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
        why="The mortise is cut to the tenon that was really made.",
        caution=COUNTED,
        asks=Asks.AS_CUT,
        lasting=False,
    )


def _near_edge(shape: EndShape) -> str:
    """What the tenon's width is measured from: the face itself where that edge is not cut back."""
    face: Face = reference_for(shape.edges)
    words = shape.stick.pose.words(face)
    return f"narrow edge by the {words}" if shape.edge else words
