"""What to do at a lap besides striking lines: one figure to one task."""

from benchmate.frame.practice import CHISEL, CRISP, SAW, measure_task
from benchmate.frame.reduction import side_words, unmeasured
from benchmate.joinery.lap.cuts import cuts
from benchmate.joinery.lap.hold_tasks import cog_caution, slot_tasks, tail_tasks, width_readings
from benchmate.joinery.lap.limits import limits, slot_limit
from benchmate.joinery.lap.shape import FLOOR, LAP, REDUCED, SHOULDER, Half, reading
from benchmate.joinery.lap.sizes import as_cut_task, sizes
from benchmate.joinery.lap.telling import beyond_words
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Stage, Task
from benchmate.model.stick import reference_for


def tasks(half: Half, tape: Tape) -> tuple[Task, ...]:
    """Every task at one half of a lap, in the order it is done.

    By square rule the stick is brought down to its inner timber first. Then what is struck on the
    face that is cut, while its lines are still there: the flanks of a tail, and a slot.
    """
    found = [measure_task(half.stick, half.lie.place)]
    if cuts(half):
        found.append(_knife(half))
    found += [*_reduce(half), *tail_tasks(half, tape), *slot_tasks(half)]
    if half.depth > ZERO:
        found += _at_the_end(half) if half.end is not None else _on_the_way(half)
    if half.depth > ZERO:
        found += _pare(half)
    if sizes(half):
        found.append(as_cut_task(half))
    return tuple(found)


def _sides(half: Half) -> tuple[Face, ...]:
    """The face that is cut and the two across, which its lines are struck on."""
    near = reference_for(half.lie.wide)
    return (half.cut_face, near, near.opposite)


def _kinds(half: Half) -> list[str]:
    """What is cut there: a shoulder at an end or a notch, a slot, and what goes by square rule."""
    found = []
    if half.depth > ZERO or half.tail is not None:
        found.append("notch" if half.end is None else SHOULDER)
    if half.slot:
        found.append("slot")
    if half.reduced:
        found.append("reduction")
    return found


def _waste(half: Half) -> str:
    closed = " and the ".join(kind for kind in _kinds(half) if kind != SHOULDER)
    inside = f"Inside the lines of the {closed} only." if closed else ""
    beyond = beyond_words(half) if half.end is not None else ""
    return f"{beyond} {inside}".strip()


def _knife(half: Half) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title=f"Knife the {' and the '.join(_kinds(half))}, hatch the waste",
        faces=_sides(half),
        waste=_waste(half),
        why=CRISP,
        caution=" ".join(
            filter(
                None,
                (
                    _which_half(half),
                    *limits(half),
                    slot_limit(half),
                    cog_caution(half),
                    _lay_on(half),
                ),
            )
        ),
    )


def _which_half(half: Half) -> str:
    """Which half stays, before the saw: cut from the wrong face, both come out on one side."""
    words = half.stick.pose.words
    if half.depth <= ZERO:
        return ""
    kept = side_words(words(half.cut_face.opposite))
    return f"Cut from the {words(half.cut_face)}: the {kept} stays."


def _lay_on(half: Half) -> str:
    """A socket is held against the tail that goes into it, before it is cut."""
    if half.end is not None or half.span is not None:
        return ""
    return f"First lay {half.mate.stick.name}'s tail on its lines: they are to agree with it."


def _follows_stick(half: Half) -> str:
    """The caution for a depth from a far face on a stick nobody has measured there, or nothing."""
    if half.cut_face.is_reference:
        return ""
    return unmeasured(half.stick, half.lie.deep, (half.lie.place,))


def _down(half: Half, to: str) -> Reading:
    face = half.stick.pose.words(half.cut_face)
    return Reading(value=half.depth, hook=face, way=f"straight in, to the {to}")


def _to_the_bed(half: Half, to: str) -> Reading:
    """Where the bed lies, from the reference face: it holds whatever the stick measures."""
    deep = half.lie.deep
    face = half.stick.pose.words(reference_for(deep))
    return Reading(value=reading(half.bed, deep), hook=face, way=f"to the {to}")


def _at_the_end(half: Half) -> list[Task]:
    words = half.stick.pose.words
    return [
        Task(
            id="saw-shoulder",
            stage=Stage.CUT,
            title=f"Saw the shoulder, {words(half.cut_face)}",
            draws=SHOULDER,
            faces=(half.cut_face,),
            readings=(_down(half, "lap line"),),
            waste=f"Keep the kerf on the side of the {words(half.tip)}.",
            why="Shoulder before cheek. Stop at the depth: deeper weakens the lap at its root.",
            caution=f"{_follows_stick(half)}{SAW}",
        ),
        Task(
            id="saw-lap",
            stage=Stage.CUT,
            title="Cut the lap",
            draws=LAP,
            faces=(*_sides(half)[1:], half.tip),
            readings=(_to_the_bed(half, "lap line"),),
            waste=f"On the side of the {words(half.cut_face)}.",
            why="Leave the line: what is left on can be pared, what is gone cannot be put back.",
            caution=SAW,
        ),
    ]


def _on_the_way(half: Half) -> list[Task]:
    down = _down(half, "floor")
    return [
        Task(
            id="saw-sides",
            stage=Stage.CUT,
            title="Saw the notch's two ends",
            faces=(half.cut_face,),
            readings=(down,),
            waste="Kerfs inside the lines.",
            why="No deeper than the floor. More kerfs between them make the chopping easier.",
            caution=" ".join(filter(None, (_follows_stick(half).strip(), cog_caution(half), SAW))),
        ),
        Task(
            id="chop",
            stage=Stage.CUT,
            title="Chop the notch out to its floor",
            draws=FLOOR,
            faces=_sides(half),
            readings=(down,),
            waste=_waste(half),
            why="From both sides towards the middle, with the floor left full until it is pared.",
            caution=f"{cog_caution(half)} {CHISEL}".lstrip(),
        ),
    ]


def _reduce(half: Half) -> list[Task]:
    if not half.reduced:
        return []
    wide, words = half.lie.wide, half.stick.pose.words
    far = words(reference_for(wide).opposite)
    return [
        Task(
            id="reduce",
            stage=Stage.CUT,
            title=f"Reduce the {far} to its line",
            draws=REDUCED,
            faces=(reference_for(wide).opposite,),
            readings=(
                Reading(value=half.lie.over, hook=far, way="straight in, between its lines"),
            ),
            waste=f"Towards the {far}, outside its line.",
            why=(
                f"So deep on this stick, here: only what is left lies in {half.mate.stick.name}. "
                "Carry the lap's lines over the fresh face again from the faces beside it."
            ),
            caution=f"{unmeasured(half.stick, wide, (half.lie.place,))}{CHISEL}",
        )
    ]


def _pare(half: Half) -> list[Task]:
    what = "lap" if half.end is not None else "floor"
    flat = Task(
        id="pare" if half.end is not None else "try-floor",
        stage=Stage.PARE,
        title=f"Pare the {what} flat, try its place",
        faces=_sides(half),
        readings=(_to_the_bed(half, what),),
        waste="Only what stands proud of the line.",
        why="The two bear on all of it: flat across, and square to the faces beside it.",
        caution=CHISEL,
    )
    return [flat] if half.end is not None else [*_pare_sides(half), flat]


def _pare_sides(half: Half) -> list[Task]:
    return [
        Task(
            id=f"pare-{name}",
            stage=Stage.PARE,
            title=title,
            faces=_sides(half),
            readings=(wide,),
            waste="Only what stands proud of the lines.",
            why=f"{half.mate.stick.name} goes in by hand, without pounding.",
            caution=CHISEL,
        )
        for name, title, wide in width_readings(half)
    ]
