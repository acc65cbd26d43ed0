"""What to do at a brace's end besides striking lines: one figure to one task."""

from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.reduction import unmeasured
from benchmate.frame.settings import rake_setting
from benchmate.joinery.brace.end import reduced, reduced_line
from benchmate.joinery.brace.shape import FAR, NOSE, SEAT, SHOULDER, TIP, EndShape
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Asks, Reading, Size, Stage, Task
from benchmate.model.stick import reference_for

AS_CUT = "as-cut"
"""The task after which the tenon's real sizes are known."""


def end_tasks(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the brace's end, in the order it is done."""
    return (
        measure_task(shape.stick, *shape.places),
        _knife(shape),
        _saw_tip(shape, tape),
        _saw_nose(shape, tape),
        *_saw_shoulders(shape, tape),
        _saw_cheeks(shape),
        *_reduce(shape),
        _pare(shape),
        _as_cut(shape),
    )


def end_sizes(shape: EndShape) -> tuple[Size, ...]:
    """What can be typed of the finished tenon."""
    return (
        Size("thickness", shape.thickness, "tenon thickness"),
        Size("length", shape.length, "tenon length, square to the shoulder"),
    )


def _end(shape: EndShape) -> str:
    return shape.stick.pose.words(shape.end)


def _knife(shape: EndShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the shoulder and the nose, hatch the waste",
        draws=_shoulder_line(shape),
        faces=LONG_FACES,
        waste=f"Towards the {_end(shape)}, outside the tenon's own lines.",
        why="Knifed lines stay crisp, and hatching on every face shows which side goes.",
        caution="Hold it up as it will stand before the first cut: which end is the foot, which "
        "edge is the long one.",
    )


def _shoulder_line(shape: EndShape) -> str:
    return SEAT if shape.housing else SHOULDER


def _saw_tip(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title="Saw the tenon's end",
        draws=TIP,
        faces=LONG_FACES,
        waste=f"Towards the {_end(shape)}, beyond the line.",
        why="Parallel to the shoulder. It need not be fine: the tenon never touches bottom.",
        caution=SAW,
        setting=rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=shape.upright),
    )


def _saw_nose(shape: EndShape, tape: Tape) -> Task:
    return Task(
        id="saw-nose",
        stage=Stage.CUT,
        title="Saw the nose",
        draws=NOSE,
        faces=(reference_for(shape.cheeks), shape.long_face),
        waste=f"The point of the long edge, towards the {_end(shape)}.",
        why="Leave the line: the nose bears, and is pared to fit.",
        caution=SAW,
        setting=rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=not shape.upright),
    )


def _saw_shoulders(shape: EndShape, tape: Tape) -> tuple[Task, ...]:
    near = reference_for(shape.cheeks)
    sides = (
        (near, shape.near, "near", ""),
        (
            near.opposite,
            shape.real_wide - shape.far,
            "far",
            unmeasured(shape.stick, shape.cheeks, shape.places),
        ),
    )
    words = shape.stick.pose.words
    return tuple(
        Task(
            id=f"saw-{side}",
            stage=Stage.CUT,
            title=f"Saw the shoulder, {words(face)}",
            draws=_shoulder_line(shape),
            faces=(face,),
            readings=(Reading(value=deep, hook=words(face), way="straight in"),),
            waste=f"Keep the kerf on the {_end(shape)} side of the knifed line.",
            why="Stop at the depth: deeper weakens the tenon's root.",
            caution=f"{first}{SAW}",
            setting=rake_setting(shape.rake.run, shape.rake.rise, tape, plumb=shape.upright),
        )
        for face, deep, side, first in sides
        if deep
    )


def _saw_cheeks(shape: EndShape) -> Task:
    return Task(
        id="saw-cheeks",
        stage=Stage.CUT,
        title="Cut the cheeks",
        draws=FAR,
        faces=(shape.long_face, shape.long_face.opposite),
        readings=(
            Reading(
                value=shape.thickness, hook=_near_cheek(shape), way="to the far cheek, left on"
            ),
        ),
        waste="Outside the cheek lines.",
        why="Leave the line: what is left on can be pared, what is gone cannot be put back.",
        caution=SAW,
    )


def _reduce(shape: EndShape) -> tuple[Task, ...]:
    words = shape.stick.pose.words
    return tuple(
        Task(
            id=f"reduce-{axis.name.lower()}",
            stage=Stage.CUT,
            title=f"Reduce the {words(reference_for(axis).opposite)} to its line",
            draws=reduced_line(axis),
            faces=(reference_for(axis).opposite,),
            readings=(
                Reading(
                    value=shape.stick.depth(axis, *shape.places) - at,
                    hook=words(reference_for(axis).opposite),
                    way=f"straight in, from the reduction end line to the {_end(shape)}",
                ),
            ),
            waste=f"Towards the {words(reference_for(axis).opposite)}, outside its line.",
            why="So deep on this stick, here: only the inner timber goes in.",
            caution=f"{unmeasured(shape.stick, axis, shape.places)}{SAW} {CHISEL}",
        )
        for axis, at in reduced(shape).items()
    )


def _pare(shape: EndShape) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the tenon and the nose, check them flat",
        faces=(shape.long_face, reference_for(shape.cheeks)),
        readings=(Reading(value=shape.thickness, hook=_near_cheek(shape), way="to the far cheek"),),
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
            Reading(value=shape.real("thickness"), hook=_near_cheek(shape), way="to the far cheek"),
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


def _near_cheek(shape: EndShape) -> str:
    """What the thickness is measured from: the face itself where the tenon is barefaced."""
    face = shape.stick.pose.words(reference_for(shape.cheeks))
    return f"near cheek, by the {face}" if shape.near else face
