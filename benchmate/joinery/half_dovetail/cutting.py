"""What to do at the tail besides striking lines: one figure to one task."""

from benchmate.frame.cheeks import SHOULDER, saw_cheeks, saw_shoulder
from benchmate.frame.end_tasks import knife_only, knife_shoulder, measure_finished
from benchmate.frame.practice import CHAINSAW, CHISEL, LEAVE_THE_LINE, SAW, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks
from benchmate.frame.settings import taper_setting
from benchmate.joinery.half_dovetail.shape import LAND, STRAIGHT, TAIL, TailShape
from benchmate.joinery.half_dovetail.tail import shouldered_over
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Reading, Size, Stage, Task

COUNTED = (
    "Depths count from the straight edge, the thickness from the near cheek. If one of those was "
    "overcut, move its line in the mortise as well."
)


def tail_tasks(shape: TailShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the tail, in the order it is done."""
    reduced = shape.cheeks.axis in shape.reduction.to
    sides = shape.cheeks.sides(reduced=reduced)
    return (
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        *reduction_knife(shape.reduction),
        *(saw_shoulder(shape.cheeks, face, deep) for face, deep in sides.items()),
        *_saw_edges_shoulders(shape),
        _saw_tail(shape, tape),
        *_saw_straight(shape),
        *_saw_land(shape),
        *saw_cheeks(shape.cheeks, reduced=reduced),
        *reduction_tasks(shape.reduction),
        _pare(shape),
        _as_cut(shape),
    )


def tail_sizes(shape: TailShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.cheeks.thickness, "tenon thickness"),
        Size("width", shape.root, "tenon depth at its shoulder"),
        Size("length", shape.tail, "tail depth at its end"),
    )


def _straight_words(shape: TailShape) -> str:
    """What depths are measured from: the face itself where nothing comes off it."""
    face = shape.stick.pose.words(shape.wedged)
    return "straight edge" if shape.straightened else face


def _knife(shape: TailShape) -> Task:
    return knife_shoulder(shape, _shouldered(shape), draws=SHOULDER, caution=_flush(shape))


def _shouldered(shape: TailShape) -> tuple[Face, ...]:
    cheek = shape.cheeks.face
    return (cheek, cheek.opposite, shape.wedged, shape.wedged.opposite)


def _flush(shape: TailShape) -> str:
    """Where the tenon runs out to a face, so that a knifed line across would sever its root."""
    words = shape.stick.pose.words
    sides = shape.cheeks.sides(reduced=shape.cheeks.axis in shape.reduction.to)
    flush = [
        (face, "on the waste side of the tail line")
        for face in (shape.cheeks.face, shape.cheeks.face.opposite)
        if face not in sides
    ]
    if sides and not shouldered_over(shape):
        flush.append((shape.wedged, "outside the cheek lines"))
    return " ".join(knife_only(words(face), where) for face, where in flush)


def _saw_edges_shoulders(shape: TailShape) -> tuple[Task, ...]:
    under = shape.wedged.opposite
    deep = shape.sense * (shape.surface - shape.at(shape.root))
    found = [saw_shoulder(shape.cheeks, under, deep)]
    if shouldered_over(shape):
        over = shape.real_edges - shape.straight
        found.append(saw_shoulder(shape.cheeks, shape.wedged, over))
    return tuple(found)


def _saw_tail(shape: TailShape, tape: Tape) -> Task:
    return Task(
        id="saw-tail",
        stage=Stage.CUT,
        title="Saw the tail to its slope",
        draws=TAIL,
        faces=(shape.cheeks.face, shape.cheeks.face.opposite, shape.wedged.opposite),
        readings=(
            Reading(value=shape.root, hook=_straight_words(shape), way="to the tail, left on"),
        ),
        beside=(Beside(shape.tail, "at its deep end"),),
        waste="Outside the tail line, before the cheeks take its line away.",
        why=f"At the shoulder. {LEAVE_THE_LINE}",
        caution=f"{SAW} {CHAINSAW}",
        setting=taper_setting(shape.run.nm, shape.flare.nm, tape),
    )


def _saw_straight(shape: TailShape) -> tuple[Task, ...]:
    if not shouldered_over(shape):
        return ()
    words = shape.stick.pose.words(shape.wedged)
    return (
        Task(
            id="saw-straight",
            stage=Stage.CUT,
            title="Cut the straight edge",
            draws=STRAIGHT,
            faces=(shape.cheeks.face, shape.cheeks.face.opposite, shape.wedged),
            readings=(
                Reading(
                    value=shape.real_edges - shape.straight, hook=words, way="in, the line left on"
                ),
            ),
            waste=f"Towards the {words}, outside the line.",
            why=LEAVE_THE_LINE,
            caution=SAW,
        ),
    )


def _saw_land(shape: TailShape) -> tuple[Task, ...]:
    if not shape.landed:
        return ()
    under = shape.wedged.opposite
    return (
        Task(
            id="saw-land",
            stage=Stage.CUT,
            title="Cut the tail's edge past the post",
            draws=LAND,
            faces=(shape.cheeks.face, shape.cheeks.face.opposite, under),
            readings=(
                Reading(value=shape.tail, hook=_straight_words(shape), way="to the edge, left on"),
            ),
            waste=f"Towards the {shape.stick.pose.words(under)}, outside the line.",
            why="Deeper than the tail it would not come in through the mortise.",
            caution=SAW,
        ),
    )


def _pare(shape: TailShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tail's slope flat, then the cheeks",
        draws=TAIL,
        faces=(shape.end, shape.wedged.opposite),
        readings=(Reading(value=shape.tail, hook=_straight_words(shape), way="to the tail's end"),),
        beside=(Beside(shape.cheeks.thickness, f"thick, from the {shape.cheeks.near_words}"),),
        waste="Only what stands proud of the lines.",
        why="The slope bears on the mortise along all of its length: flat, and square across.",
        caution=CHISEL,
    )


def _as_cut(shape: TailShape) -> Task:
    straight = _straight_words(shape)
    return measure_finished(
        "the tenon",
        (shape.end,),
        (
            Reading(
                value=shape.real("thickness"), hook=shape.cheeks.near_words, way="to the far cheek"
            ),
            Reading(
                value=shape.real("width"),
                hook=straight,
                way="to the tail, at the shoulder",
                key="depth at the shoulder",
            ),
            Reading(
                value=shape.real("length"),
                hook=straight,
                way="to the tail, at its end",
                key="depth at the end",
            ),
        ),
        caution=COUNTED,
    )
