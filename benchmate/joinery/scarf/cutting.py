"""What to do at one half of a scarf besides striking lines: one figure to one task.

The order of the work and what is said of it are common practice, no source.
"""

from collections.abc import Iterator

from benchmate.frame.end_tasks import measure_finished
from benchmate.frame.practice import CHAINSAW, CHISEL, SAW, measure_task
from benchmate.frame.reduction import unmeasured
from benchmate.frame.settings import slant_setting
from benchmate.joinery.scarf.bridle import bridle_tasks
from benchmate.joinery.scarf.key_slot import key_tasks
from benchmate.joinery.scarf.lap import reduced_line
from benchmate.joinery.scarf.shape import ABUTMENT, LAP, SHOULDER, TIP, Half
from benchmate.joinery.scarf.words import far_words, kept_words, words
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Size, Stage, Task
from benchmate.model.stick import reference_for


def half_tasks(half: Half, tape: Tape) -> tuple[Task, ...]:
    """Every task at one half, in the order it is done."""
    return (
        measure_task(half.stick, *half.places),
        _knife(half),
        _saw_shoulder(half, tape),
        *_saw_tip(half, tape),
        *_reduce(half),
        _cut_lap(half),
        _pare(half),
        *bridle_tasks(half),
        *key_tasks(half),
        _as_cut(half) if half.leads else _try(half),
    )


def half_sizes(half: Half) -> tuple[Size, ...]:
    """What can be typed of the finished lap of the leading stick."""
    if not half.leads:
        return ()
    kept = words(half, half.keeps)
    if half.bridle is not None:
        return (
            Size("thickness", half.bridle.far - half.bridle.near, "tongue thickness"),
            Size("width", half.root, f"lap thickness, from the {kept}"),
            Size("length", half.bridle.length, "tongue length"),
        )
    if half.stepped:
        return (Size("thickness", half.root, f"lap thickness, from the {kept}"),)
    return (
        Size("thickness", half.tip, f"lap thickness at the tip, from the {kept}"),
        Size("width", half.root, f"lap thickness at the shoulder, from the {kept}"),
    )


def _beside(half: Half) -> tuple[Face, Face]:
    near = reference_for(half.sides)
    return near, near.opposite


def _reduced_face(half: Half) -> tuple[Face, ...]:
    """The face its lap keeps, where that is brought down to the inner timber."""
    return (half.keeps,) if half.halved in half.reduced() else ()


def _bounds(half: Half) -> str:
    """The line that the lap is sawn down to at the body."""
    return SHOULDER if half.abutment is None else ABUTMENT


def _line_words(half: Half) -> str:
    return "lap line" if half.stepped else "splay line"


def _knife(half: Half) -> Task:
    away, end = words(half, half.keeps.opposite), words(half, half.end)
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title=f"Knife the {_bounds(half)}, hatch the waste",
        draws=_bounds(half),
        faces=(half.keeps.opposite, *_beside(half), *_reduced_face(half)),
        waste=f"Towards the {end} and the {away}, outside the {_line_words(half)}.",
        why=(
            "The joint shows all round: crisp lines make it tight, and hatching shows which half "
            "goes."
        ),
        caution=(
            f"This stick keeps its {words(half, half.keeps)} and {half.mate.name} its {away}: lay "
            "them end to end and look before the first cut."
        ),
    )


def _saw_shoulder(half: Half, tape: Tape) -> Task:
    away = half.keeps.opposite
    first = unmeasured(half.stick, half.halved, half.places) if half.leads else ""
    leans = half.abutment is not None
    return Task(
        id="saw-shoulder",
        stage=Stage.CUT,
        title=f"Saw the {_bounds(half)}",
        draws=_bounds(half),
        faces=(away, *_beside(half)),
        readings=(
            Reading(
                value=half.off(half.root),
                hook=words(half, away),
                way=f"straight in, to the {_line_words(half)}",
            ),
        ),
        waste=f"Keep the kerf on the {words(half, half.end)} side of the knifed line.",
        why="Stop at the depth: deeper cuts into the lap that stays.",
        caution=f"{first}{SAW}",
        setting=slant_setting(half.squint.nm, half.butt.nm, tape) if leans else None,
    )


def _saw_tip(half: Half, tape: Tape) -> Iterator[Task]:
    if half.point is None:
        return
    yield Task(
        id="saw-tip",
        stage=Stage.CUT,
        title="Saw the tip to its line",
        draws=TIP,
        faces=(half.keeps, *_beside(half)),
        waste=f"The wedge at the {words(half, half.end)}, along the {words(half, half.keeps)}.",
        why="Saw it while the stick is still whole there: afterwards the tip is thin.",
        caution=SAW,
        setting=slant_setting(half.squint.nm, half.butt.nm, tape),
    )


def _thick(half: Half) -> Reading:
    """How thick the lap is, at its tip where it slopes."""
    at = "to the lap" if half.stepped else "to the splay, at the tip"
    return Reading(value=half.left(half.tip), hook=kept_words(half), way=at)


def _goes_by_stick(half: Half) -> str:
    """The caution while the thickness of a lap along a far face goes by a size as drawn."""
    if half.leads or half.stick.inner is not None:
        return ""
    return unmeasured(half.stick, half.halved, half.places)


def _cut_lap(half: Half) -> Task:
    line = _line_words(half)
    return Task(
        id="cut-lap",
        stage=Stage.CUT,
        title=f"Rip or hew the waste off, down to the {line}",
        draws=LAP,
        faces=(*_beside(half), half.end),
        readings=(_thick(half),),
        waste=f"Towards the {words(half, half.keeps.opposite)}, beyond the {line}.",
        why="Leave the line: what is left on can be pared, what is gone cannot be put back.",
        caution=f"{_goes_by_stick(half)}{SAW} {CHAINSAW}",
    )


def _reduce(half: Half) -> tuple[Task, ...]:
    end = words(half, half.end)
    return tuple(
        Task(
            id=f"reduce-{axis.name.lower()}",
            stage=Stage.CUT,
            title=f"Reduce the {far_words(half, axis)} to its line",
            draws=reduced_line(axis),
            faces=(reference_for(axis).opposite,),
            readings=(
                Reading(
                    value=half.stick.depth(axis, *half.places) - at,
                    hook=far_words(half, axis),
                    way=f"straight in, from the shoulder line to the {end}",
                ),
            ),
            waste=f"Towards the {far_words(half, axis)}, outside its line.",
            why="So deep on this stick, here: along the lap both sticks are the inner timber.",
            caution=f"{unmeasured(half.stick, axis, half.places)}{SAW} {CHISEL}",
        )
        for axis, at in half.reduced().items()
    )


def _pare(half: Half) -> Task:
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the lap flat, the shoulder clean",
        draws=LAP,
        faces=_beside(half),
        readings=(_thick(half),),
        waste="Only what stands proud of the lines.",
        why=(
            "Straight along, square across, out of wind: one high spot holds the whole lap off. "
            "The tip bears too: it is no rough end."
        ),
        caution=f"{_goes_by_stick(half)}{CHISEL}",
    )


def _as_cut(half: Half) -> Task:
    kept = words(half, half.keeps)
    return measure_finished(
        "the lap",
        (half.end, *_beside(half)),
        tuple(
            Reading(value=half.as_cut.get(size.name) or size.laid_out, hook=hook, way=way)
            for size, (hook, way) in zip(half_sizes(half), _measured(half, kept), strict=True)
        ),
        why=f"{half.mate.name} is laid out to the lap that was really made.",
        caution=f"Measure from the {kept}, which both sticks share.",
    )


def _measured(half: Half, kept: str) -> tuple[tuple[str, str], ...]:
    """How each size as cut is measured."""
    if half.bridle is not None:
        return (
            ("tongue's near side", "to its far side"),
            (kept, "to the lap"),
            ("tongue shoulder", "to the tongue's end"),
        )
    if half.stepped:
        return ((kept, "to the lap"),)
    return ((kept, "to the splay, at the tip"), (kept, "to the splay, at the shoulder"))


def _try(half: Half) -> Task:
    flush = " and the ".join(words(half, face) for face in (Face.FIRST, Face.SECOND))
    return Task(
        id="try",
        stage=Stage.FINISH,
        title="Try the two sticks together",
        readings=(
            Reading(
                value=half.total,
                hook=f"outer end of this stick to the outer end of {half.mate.name}",
                way="in all",
                key="both sticks together",
            ),
        ),
        why=(
            f"Flush on the {flush}, both ends of the lap bearing at once. What either stick is "
            "over shows on the far faces."
        ),
        caution="Block both sticks up level first: a lap forced straight splits at its tip.",
    )
