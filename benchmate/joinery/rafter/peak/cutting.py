"""What to do at one head of a pair besides striking lines: one figure to one task."""

from functools import partial

from benchmate.frame.end_tasks import measure_finished
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.reduction import reduction_tasks, unmeasured
from benchmate.joinery.rafter.peak.shape import FAR, NEAR, ROOT, SHOULDER, HeadShape
from benchmate.joinery.rafter.plumb_cut import pare_plumb_cut, saw_plumb_cut
from benchmate.joinery.rafter.words import slanting
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Reading, Size, Stage, Task


def head_tasks(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the head, in the order it is done."""
    joint = _butt if not shape.lapped else _tongue if _laps(shape) else _fork
    return (
        measure_task(shape.rafter.stick, *shape.places),
        _knife(shape),
        *_saw_end(shape, tape),
        *joint(shape, tape),
        *reduction_tasks(shape.reduction),
    )


def head_sizes(shape: HeadShape) -> tuple[Size, ...]:
    """What can be typed of the finished tongue."""
    if not (shape.lapped and shape.tongue):
        return ()
    return (Size("thickness", shape.thickness, f"{_part(shape)} thickness"),)


def _laps(shape: HeadShape) -> bool:
    """Whether wood comes off outside the cheeks, so that shoulders are sawn."""
    return shape.tongue or shape.cut == "half lap"


def _part(shape: HeadShape) -> str:
    return "lap" if shape.cut == "half lap" else "tongue"


def _words(shape: HeadShape, face: Face) -> str:
    return shape.rafter.stick.pose.words(face)


def _knife(shape: HeadShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the lines, hatch the waste",
        draws=ROOT if shape.lapped else SHOULDER,
        faces=LONG_FACES,
        waste=f"Towards the {_words(shape, shape.end)}.",
        why="Knifed lines stay crisp, and hatching shows which side goes: one rafter of the pair "
        "loses what the other keeps.",
        caution="Lay the pair down as it will stand before the first cut: a mistake is cut twice.",
    )


def _saw_end(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    if shape.ended:
        return ()
    if not shape.lapped:
        return (saw_plumb_cut(shape.rafter, shape.end, SHOULDER, tape),)
    return (
        Task(
            id="saw-end",
            stage=Stage.CUT,
            title="Saw the end",
            draws=SHOULDER,
            faces=shape.rafter.both_sides,
            waste=f"Towards the {_words(shape, shape.end)}, beyond the line.",
            why=(
                "Leave the line: it is planed flush with the other slope once the pair is together."
            ),
            caution=SAW,
            setting=slanting(shape.shoulder, shape.rafter.plumb, tape),
        ),
    )


def _butt(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:  # noqa: ARG001 - as the others
    return (pare_plumb_cut(shape.rafter, "Both bear on all of it: a proud spot lifts the peak."),)


def lost(shape: HeadShape) -> tuple[tuple[Face, Length], ...]:
    """The sides that wood comes off beside a lap or a tongue, and how deep."""
    (near, far), (side, other) = shape.span, shape.rafter.both_sides
    wide = shape.rafter.real_wide
    if shape.tongue:
        found = [(side, near), (other, wide - far)]
    elif shape.cheeks[0].line == FAR:
        found = [(side, far)]
    else:
        found = [(other, wide - near)]
    return tuple((face, deep) for face, deep in found if deep > ZERO)


def _tongue(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    """Shoulders sawn side by side, then the cheeks, pared and measured."""
    return (
        *(_saw_shoulder(shape, face, deep, tape) for face, deep in lost(shape)),
        _saw_cheeks(shape),
        _pare(shape),
        *((_as_cut(shape),) if shape.tongue else ()),
    )


def _saw_shoulder(shape: HeadShape, face: Face, deep: Length, tape: Tape) -> Task:
    side = "near" if face is shape.rafter.side else "far"
    sure = "" if face is shape.rafter.side else _unsure_wide(shape)
    return Task(
        id=f"saw-{side}",
        stage=Stage.CUT,
        title=f"Saw the shoulder, {_words(shape, face)}",
        draws=ROOT,
        faces=(face,),
        readings=(Reading(value=deep, hook=_words(shape, face), way="straight in"),),
        waste=f"Keep the kerf on the {_words(shape, shape.end)} side of the knifed line.",
        why=f"Stop at the depth: deeper weakens the root of the {_part(shape)}.",
        caution=f"{sure}{SAW}",
        setting=slanting(shape.root, shape.rafter.plumb, tape),
    )


def _unsure_wide(shape: HeadShape) -> str:
    return unmeasured(shape.rafter.stick, shape.rafter.sides, shape.places)


def _kept(shape: HeadShape) -> tuple[Length, Face]:
    """How thick the part is that stays, and the side it is measured from."""
    if shape.tongue or shape.cut == "bridle":
        return shape.thickness, shape.rafter.side
    (face, deep), *_ = lost(shape)
    return shape.rafter.real_wide - deep, face.opposite


def _saw_cheeks(shape: HeadShape) -> Task:
    thick, face = _kept(shape)
    return Task(
        id="saw-cheeks",
        stage=Stage.CUT,
        title="Cut the lap's face" if shape.cut == "half lap" else "Cut the cheeks",
        draws=FAR if any(plane.line == FAR for plane in shape.cheeks) else NEAR,
        faces=(shape.rafter.top, shape.rafter.top.opposite),
        readings=(
            Reading(value=thick, hook=_hook(shape, face), way=f"of {_part(shape)}, line left on"),
        ),
        waste="Outside the lines.",
        why="Leave the line: what is left on can be pared, what is gone cannot be put back.",
        caution=SAW,
    )


def _hook(shape: HeadShape, face: Face) -> str:
    """What the thickness is measured from: the face itself where nothing comes off it."""
    words = _words(shape, face)
    return words if shape.cut == "half lap" else f"near cheek, by the {words}"


def _pare(shape: HeadShape) -> Task:
    thick, face = _kept(shape)
    return Task(
        id="pare",
        stage=Stage.PARE,
        title=f"Pare the {_part(shape)}, check it flat",
        faces=(shape.rafter.top, shape.rafter.side),
        readings=(Reading(value=thick, hook=_hook(shape, face), way=f"of {_part(shape)}"),),
        waste="Only what stands proud of the lines.",
        why="Flat and out of wind: a proud spot throws the pair out of its plane.",
        caution=CHISEL,
    )


def _as_cut(shape: HeadShape) -> Task:
    real = shape.as_cut.get("thickness") or shape.thickness
    return measure_finished(
        f"the {_part(shape)}",
        (shape.end,),
        (
            Reading(
                value=real,
                hook=_hook(shape, shape.rafter.side),
                way=f"of {_part(shape)}",
            ),
        ),
        why=f"The other rafter is cut to the {_part(shape)} that was really made.",
        caution=(
            "The thickness counts from the near cheek. If that was overcut, move its line in the "
            "fork as well."
            if shape.cut == "bridle"
            else ""
        ),
    )


def _fork(shape: HeadShape, tape: Tape) -> tuple[Task, ...]:
    task = partial(
        Task,
        faces=(shape.rafter.top, shape.rafter.top.opposite),
        waste="Between the cheek lines only.",
    )
    wide = Reading(value=shape.thickness, hook="near cheek", way="to the far cheek")
    angle = slanting(shape.root, shape.rafter.plumb, tape)
    return (
        task(
            id="rip-cheeks",
            stage=Stage.CUT,
            title="Rip the fork's two cheeks down to its bottom",
            draws=FAR,
            readings=(wide,),
            why="Inside both lines, from top and underside in turn, and not past the bottom line.",
            caution=SAW,
        ),
        task(
            id="chop-bottom",
            stage=Stage.CUT,
            title="Bore or chop the fork's bottom out",
            draws=ROOT,
            readings=(Reading(value=shape.mate.deep, hook="peak line", way="square back from it"),),
            why="The tongue's underside bears here: leave the line until it is pared.",
            caution=CHISEL,
            setting=angle,
        ),
        task(
            id="pare",
            stage=Stage.PARE,
            title="Pare the fork, try its width",
            readings=(wide,),
            why="The tongue slides in by hand, without pounding: a tight fork splits.",
            caution=CHISEL,
        ),
    )
