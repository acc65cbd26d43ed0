"""What to do at a dovetailed joist's end besides striking lines: one figure to one task."""

from benchmate.frame.end_tasks import knife_shoulder, measure_finished
from benchmate.frame.practice import CHISEL, LEAVE_THE_LINE, SAW, measure_task
from benchmate.frame.reduction import reduction_knife, reduction_tasks, unmeasured
from benchmate.joinery.joist.tail import cut_flanks, cut_under, flank_name
from benchmate.joinery.joist.tail_shape import FAR, NEAR, SHOULDER, UNDER, TailShape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Size, Stage, Task
from benchmate.model.stick import reference_for

TAKE_THE_LINE = "Take the line: a wedged tail is made a little under, and its socket a little over."
"""Massie-dt, trade notes 2.4."""


def tail_tasks(shape: TailShape, *, wedged: bool) -> tuple[Task, ...]:
    """Every task at the tail, in the order it is done: shoulders before flanks."""
    found = [measure_task(shape.stick, *shape.places), _knife(shape)]
    found += reduction_knife(shape.reduction)
    lines = tuple(str(plane.line) for plane in cut_flanks(shape))
    found += [_saw_side(shape, line) for line in lines]
    if cut_under(shape):
        found.append(_saw_under(shape))
    found += [_cut_flank(shape, line, wedged=wedged) for line in lines]
    if cut_under(shape):
        found.append(_cut_under(shape))
    found += reduction_tasks(shape.reduction)
    return (*found, _pare(shape, wedged=wedged), _as_cut(shape))


def tail_sizes(shape: TailShape) -> tuple[Size, ...]:
    """What can be typed of the finished tail."""
    return (
        Size("thickness", shape.deep, "depth of the tail, from the top"),
        Size("width", shape.wide, "width of the tail at its tip"),
        Size("length", shape.length, "length of the tail, from the shoulder"),
    )


def _words(shape: TailShape, face: Face) -> str:
    return shape.stick.pose.words(face)


def _under_face(shape: TailShape) -> Face:
    return reference_for(shape.plumb).opposite


def _side(shape: TailShape, line: str) -> Face:
    near = reference_for(shape.sides)
    return near if line == NEAR else near.opposite


def _kerf(shape: TailShape) -> str:
    return f"Keep the kerf on the {_words(shape, shape.end)} side of the line."


def _knife(shape: TailShape) -> Task:
    lines = tuple(str(plane.line) for plane in cut_flanks(shape))
    under = (_under_face(shape),) if cut_under(shape) or lines else ()
    sides = tuple(_side(shape, line) for line in (NEAR, FAR) if line in lines or cut_under(shape))
    return knife_shoulder(
        shape,
        (reference_for(shape.plumb), *sides, *under),
        draws=SHOULDER,
        outside="the tail's own lines",
        caution="On the top knife it only outside the flank lines.",
    )


def _saw_side(shape: TailShape, line: str) -> Task:
    face = _side(shape, line)
    deep, first = shape.flares[0], ""
    if line == FAR:
        deep = shape.real_wide - shape.wide + shape.flares[1]
        first = unmeasured(shape.stick, shape.sides, shape.places)
    return Task(
        id=f"saw-{line.removesuffix('-flank')}",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {_words(shape, face)}",
        draws=SHOULDER,
        faces=(face,),
        readings=(Reading(value=deep, hook=_words(shape, face), way="straight in, to the neck"),),
        waste=_kerf(shape),
        why="Stop at the depth: deeper weakens the neck.",
        caution=f"{first}{SAW}",
    )


def _saw_under(shape: TailShape) -> Task:
    face = _under_face(shape)
    return Task(
        id="saw-under",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {_words(shape, face)}",
        draws=SHOULDER,
        faces=(face,),
        readings=(_off_under(shape, "straight up, to the tail"),),
        waste=_kerf(shape),
        why="Stop at the depth: deeper weakens the tail's root.",
        caution=f"{unmeasured(shape.stick, shape.plumb, shape.places)}{SAW}",
    )


def _off_under(shape: TailShape, way: str) -> Reading:
    off = shape.real_deep - shape.deep
    return Reading(value=off, hook=_words(shape, _under_face(shape)), way=way)


def _cut_flank(shape: TailShape, line: str, *, wedged: bool) -> Task:
    face = _side(shape, line)
    name = flank_name(shape, line)
    return Task(
        id=f"cut-{line.removesuffix('-flank')}",
        stage=Stage.CUT,
        title=f"Cut the {name}",
        draws=line,
        faces=(reference_for(shape.plumb), shape.end),
        readings=(
            Reading(value=shape.length, hook="shoulder", way="out to the tip, along the flank"),
        ),
        waste=f"Towards the {_words(shape, face)}, outside the {name} line.",
        why=TAKE_THE_LINE if wedged else LEAVE_THE_LINE,
        caution=f"{SAW} {CHISEL}",
    )


def _cut_under(shape: TailShape) -> Task:
    return Task(
        id="cut-under",
        stage=Stage.CUT,
        title="Cut the tail's underside",
        draws=UNDER,
        faces=(shape.end, reference_for(shape.sides), reference_for(shape.sides).opposite),
        readings=(
            Reading(
                value=shape.deep,
                hook=_words(shape, reference_for(shape.plumb)),
                way="down to the tail's underside, left on",
            ),
        ),
        waste="Below the tail line.",
        why=f"This face bears. {LEAVE_THE_LINE}",
        caution=SAW,
    )


def _pare(shape: TailShape, *, wedged: bool) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tail, try it with a gauge",
        faces=(reference_for(shape.plumb), shape.end),
        readings=(Reading(value=shape.neck, hook="neck", way="from flank to flank"),),
        waste="Only what stands proud of the lines.",
        why=(
            "Flanks square to the top, so that it drops straight in. A gauge cut to the socket's "
            f"shape saves lifting the joist{'; the wedge takes up the rest' if wedged else ''}."
        ),
        caution=CHISEL,
    )


def _as_cut(shape: TailShape) -> Task:
    top, side = (_words(shape, reference_for(axis)) for axis in (shape.plumb, shape.sides))
    return measure_finished(
        "the tail",
        (shape.end,),
        (
            Reading(value=shape.real("thickness"), hook=top, way="down to the tail's underside"),
            Reading(value=shape.real("width"), hook=side, way="across the tip"),
            Reading(value=shape.real("length"), hook="shoulder", way="to its end"),
        ),
        why="The socket is cut to the tail that was really made.",
        caution=(
            "The width counts from the reference side at the tip. If that flank was overcut, move "
            "its line in the socket as well."
        ),
    )
