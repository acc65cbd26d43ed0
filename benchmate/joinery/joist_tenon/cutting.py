"""What to do at a joist's tenon besides striking lines: one figure to one task."""

from benchmate.frame.end_tasks import knife_shoulder, measure_finished
from benchmate.frame.practice import (
    CHAINSAW,
    CHISEL,
    LEAVE_THE_LINE,
    SAW,
    STOP_AT_DEPTH,
    measure_task,
)
from benchmate.frame.reduction import reduction_knife, reduction_tasks, unmeasured
from benchmate.frame.settings import slant_setting
from benchmate.joinery.joist_tenon.end import edged, flush, shouldered, under
from benchmate.joinery.joist_tenon.shape import (
    EDGE,
    FAR,
    HAUNCH,
    NEAR,
    SHOULDER,
    TUSK_END,
    EndShape,
)
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Size, Stage, Task
from benchmate.model.stick import reference_for


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the joist's end, in the order it is done: shoulders before cheeks."""
    found = [measure_task(shape.stick, *shape.places), _knife(shape)]
    found += reduction_knife(shape.reduction)
    if shape.part.near > ZERO:
        found += [_saw_upper(shape, tape), _cut_upper(shape)]
    if shape.part.tusk:
        found += [_saw_tusk_end(shape), _cut_lower(shape)]
    if shape.below > ZERO and not (flush(shape) and shape.plumb in shape.reduction.to):
        found.append(_saw_lower(shape))
        found.append(_cut_underside(shape) if shape.part.tusk else _cut_lower(shape))
    if edged(shape) and shape.sides not in shape.reduction.to:
        found += [_saw_side(shape), _cut_side(shape)]
    found += reduction_tasks(shape.reduction)
    return (*found, _pare(shape), _as_cut(shape))


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness, from its upper cheek to its lower"),
        Size("width", shape.wide, "tenon width"),
        Size("length", shape.part.length, "tenon length"),
    )


def _words(shape: EndShape, face: Face) -> str:
    return shape.stick.pose.words(face)


def _end(shape: EndShape) -> str:
    return _words(shape, shape.end)


def _kerf(shape: EndShape) -> str:
    return f"Keep the kerf on the {_end(shape)} side of the line."


def _knife(shape: EndShape) -> Task:
    return knife_shoulder(
        shape,
        shouldered(shape),
        outside="the lines of all that goes in",
        caution="On the two sides knife nothing across the tenon: it is as wide as the joist.",
    )


def _saw_upper(shape: EndShape, tape: Tape) -> Task:
    part, top = shape.part, reference_for(shape.plumb)
    word = _up_to(shape)
    setting = slant_setting(part.haunch.nm, part.near.nm, tape) if shape.haunched else None
    return Task(
        id="saw-upper",
        stage=Stage.CUT,
        title=f"Saw the {word} down to the tenon",
        draws=HAUNCH if shape.haunched else SHOULDER,
        faces=(top,),
        readings=(
            Reading(
                value=part.near,
                hook=_words(shape, top),
                way="straight down, to the near cheek line, following the line on both sides",
            ),
        ),
        waste=_kerf(shape),
        why=STOP_AT_DEPTH,
        caution=SAW,
        setting=setting,
    )


def _cut_upper(shape: EndShape) -> Task:
    top = _words(shape, reference_for(shape.plumb))
    return Task(
        id="cut-near-cheek",
        stage=Stage.CUT,
        title="Cut the tenon's upper cheek",
        draws=NEAR,
        faces=(shape.end, *_sides(shape)),
        readings=(
            Reading(
                value=shape.part.near,
                hook=top,
                way=f"down to the tenon, left on; in from the end to the {_up_to(shape)} line",
            ),
        ),
        waste="Above the near cheek line.",
        why=LEAVE_THE_LINE,
        caution=f"{SAW} {CHAINSAW}",
    )


def _up_to(shape: EndShape) -> str:
    """The line above the tenon that its upper cheek is cut in to."""
    return shape.haunch_word if shape.haunched else "shoulder"


def _saw_tusk_end(shape: EndShape) -> Task:
    return Task(
        id="saw-tusk-end",
        stage=Stage.CUT,
        title="Saw the tusk's end up to the tenon",
        draws=TUSK_END,
        faces=(reference_for(shape.plumb).opposite,),
        readings=(_up(shape, shape.real_deep - shape.part.far, "to the far cheek line"),),
        waste=_kerf(shape),
        why=STOP_AT_DEPTH,
        caution=f"{_follows(shape)}{SAW}",
    )


def _up(shape: EndShape, value: Length, to: str) -> Reading:
    return Reading(value=value, hook=under(shape), way=f"straight up, {to}")


def _follows(shape: EndShape) -> str:
    """The caution for a depth from an underside that nobody has measured there, or nothing."""
    return unmeasured(shape.stick, shape.plumb, shape.places)


def _cut_lower(shape: EndShape) -> Task:
    stop = "tusk end" if shape.part.tusk else "shoulder"
    first = "No further in: the tusk behind that line is left on. " if shape.part.tusk else ""
    return Task(
        id="cut-far-cheek",
        stage=Stage.CUT,
        title="Cut the tenon's lower cheek",
        draws=FAR,
        faces=(shape.end, *_sides(shape)),
        readings=(
            Reading(
                value=shape.thickness,
                hook="near cheek",
                way=f"to the far cheek, left on; in from the end to the {stop} line",
            ),
        ),
        waste=f"Below the far cheek line, as far as the {stop} line.",
        why=f"This face bears. {LEAVE_THE_LINE}",
        caution=f"{first}{SAW} {CHAINSAW}",
    )


def _saw_lower(shape: EndShape) -> Task:
    return Task(
        id="saw-lower",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {under(shape)}",
        draws=SHOULDER,
        faces=(reference_for(shape.plumb).opposite,),
        readings=(_up(shape, shape.below, "no further"),),
        waste=_kerf(shape),
        why="Stop at the depth: what goes in starts above it.",
        caution=f"{_follows(shape)}{SAW}",
    )


def _cut_underside(shape: EndShape) -> Task:
    return Task(
        id="cut-tusk-underside",
        stage=Stage.CUT,
        title="Cut the tusk's underside",
        draws=shape.under_line,
        faces=_sides(shape),
        readings=(
            Reading(
                value=shape.part.lowest - shape.part.far,
                hook="far cheek",
                way="down to the tusk's underside, left on",
            ),
        ),
        waste="Below the tusk underside line.",
        why=f"This face bears. {LEAVE_THE_LINE}",
        caution=CHISEL,
    )


def _saw_side(shape: EndShape) -> Task:
    far = reference_for(shape.sides).opposite
    value = shape.real_wide - shape.wide
    return Task(
        id="saw-side",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {_words(shape, far)}",
        draws=SHOULDER,
        faces=(far,),
        readings=(Reading(value=value, hook=_words(shape, far), way="straight in"),),
        waste=_kerf(shape),
        why="Only what is over the inner timber comes off: stop at the depth.",
        caution=f"{unmeasured(shape.stick, shape.sides, shape.places)}{SAW}",
    )


def _cut_side(shape: EndShape) -> Task:
    near = reference_for(shape.sides)
    return Task(
        id="cut-side",
        stage=Stage.CUT,
        title=f"Cut the side to its line, {_words(shape, near.opposite)}",
        draws=EDGE,
        faces=(shape.end, near.opposite),
        readings=(
            Reading(value=shape.wide, hook=_words(shape, near), way="to the far edge, left on"),
        ),
        waste="Outside the far edge line.",
        why=LEAVE_THE_LINE,
        caution=CHISEL,
    )


def _sides(shape: EndShape) -> tuple[Face, Face]:
    near = reference_for(shape.sides)
    return near, near.opposite


def _pare(shape: EndShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon, check it flat",
        faces=(shape.end, *_sides(shape)),
        readings=(Reading(value=shape.thickness, hook="near cheek", way="to the far cheek"),),
        waste="Only what stands proud of the lines.",
        why="Flat and square to the sides: the lower faces bear on all of their wood.",
        caution=CHISEL,
    )


def _as_cut(shape: EndShape) -> Task:
    side = _words(shape, reference_for(shape.sides))
    return measure_finished(
        "the tenon",
        (shape.end,),
        (
            Reading(value=shape.real("thickness"), hook="near cheek", way="to the far cheek"),
            Reading(value=shape.real("width"), hook=side, way="across to the other side"),
            Reading(value=shape.real("length"), hook="shoulder", way="to its end"),
        ),
        caution=(
            "Sizes count from the upper cheek and the reference side. If the upper cheek was "
            "overcut, move its line in the beam as well."
        ),
    )
