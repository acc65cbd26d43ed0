"""What to do at the notch besides striking lines: one figure to one task."""

from benchmate.frame.chopping import Depth, Mouth, bore, pare_sides, try_depth
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.raking_hole import open_faces
from benchmate.frame.reduction import unmeasured_recess
from benchmate.frame.settings import plane_setting
from benchmate.joinery.joggle.hole import DEPTH
from benchmate.joinery.joggle.shape import ABUTMENT, SOLE, HoleShape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Reading, Stage, Task

_INSIDE = "Inside the mortise's four lines only."

_CLOSED = f"Only between the notch's lines: a kerf across would cut the wood beside it. {CHISEL}"


def hole_tasks(shape: HoleShape, tape: Tape) -> tuple[Task, ...]:
    """Every task at the notch and its mortise, in the order it is done."""
    return (
        measure_task(shape.stick, shape.feature),
        _knife(shape),
        _saw(shape, tape),
        _chop(shape),
        *_mortise(shape),
        _pare(shape),
    )


def _entry(shape: HoleShape) -> str:
    return shape.stick.pose.words(shape.entry)


def _knife(shape: HoleShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the abutment and the sole, hatch the inside",
        draws=ABUTMENT,
        faces=open_faces(shape),
        waste="Between the abutment line and the sole line.",
        why="The abutment bears and shows: a knifed line keeps it crisp.",
        caution=f"Look which way {shape.tenon.stick.name} leans before the first cut: its thrust "
        f"goes towards the {shape.stick.pose.words(shape.relish_end)}.",
    )


def _saw(shape: HoleShape, tape: Tape) -> Task:
    """Sawn where the notch runs out to both sides; a kerf across a closed one cuts its walls."""
    through = len(open_faces(shape)) == len(("entry", "near side", "far side"))
    first = unmeasured_recess(shape.stick, shape.entry, shape.feature)
    setting = plane_setting(shape.abutment, shape.into, tape)
    leaned = ", leaned to the bevel" if any(shape.abutment.normal[1:]) else ""
    return Task(
        id="saw-abutment",
        stage=Stage.CUT,
        title=f"{'Saw' if through else 'Chop'} down the abutment{leaned}",
        draws=ABUTMENT,
        faces=open_faces(shape),
        readings=(
            Reading(
                value=shape.recess, hook=_entry(shape), way="square to it, to the notch's bottom"
            ),
        ),
        waste=f"{'Keep the kerf' if through else 'Chop'} on the notch's side of the knifed line.",
        why="Stop at the depth: deeper cuts into the wood that takes the thrust.",
        caution=f"{first}{SAW if through else _CLOSED}",
        setting=setting if through or setting is None else setting.with_bevel(),
    )


def _chop(shape: HoleShape) -> Task:
    return Task(
        id="chop-sole",
        stage=Stage.CUT,
        title="Chop the notch down to its sole",
        draws=SOLE,
        faces=open_faces(shape),
        readings=(
            Reading(
                value=shape.recess,
                hook=_entry(shape),
                way="straight in at the abutment; nothing at the heel",
            ),
        ),
        waste="Between the abutment line and the sole line.",
        why="With the grain, from the heel down to the abutment. Then strike the mortise's sides "
        "on the sole again from the face.",
        caution=CHISEL,
    )


def _mortise(shape: HoleShape) -> tuple[Task, ...]:
    near, far = shape.across
    mouth = Mouth(faces=(shape.entry,), waste=_INSIDE)
    down = Reading(value=shape.depth, hook=_entry(shape), way="down, from a straightedge across")
    depth = Depth(down=down, draws=DEPTH)
    return (
        bore(mouth, depth),
        pare_sides(mouth, far - near),
        try_depth(mouth, depth, bears="abutment and sole bear"),
    )


def _pare(shape: HoleShape) -> Task:
    return Task(
        id="pare-abutment",
        stage=Stage.PARE,
        title="Pare abutment and mortise front in one plane",
        draws=ABUTMENT,
        faces=open_faces(shape),
        readings=(
            Reading(value=shape.tenon.abutment_length, hook="toe", way="down it, to the sole"),
        ),
        waste="Only what stands proud of the lines.",
        why=f"All of the end of {shape.tenon.stick.name} bears here: flat across, no proud spot.",
        caution=CHISEL,
    )
