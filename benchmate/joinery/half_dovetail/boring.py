"""What to do at the mortise besides striking lines, and the wedge: one figure to one task."""

from functools import partial

from benchmate.frame.anew import struck_anew
from benchmate.frame.chopping import FROM_BOTH, Mouth, pare_sides
from benchmate.frame.practice import CHISEL, DRILL, SAW, measure_task
from benchmate.frame.reduction import unmeasured_recess
from benchmate.frame.tapers import slope_setting
from benchmate.joinery.half_dovetail.mortise import open_faces, wedge_beside
from benchmate.joinery.half_dovetail.mortise_shape import FLOOR, TAIL_END, WEDGE_END, MortiseShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Reading, Stage, Task

INSIDE = "Inside the four lines of that face only."

ENGINEER = (
    "A mortise so tall weakens the post, and the tie pulls on what is left above it: whether that "
    "holds is for local code and a licensed engineer."
)

DRIVE = (
    "Drive it snug with a mallet, the tie held down on its slope. Stop when it rings: harder "
    "splits the post. Eyes and fingers clear of the blow."
)
"""From memory."""


def mortise_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    """Measuring, the housing, boring from both faces, the two slopes, then the wedge."""
    return (
        measure_task(shape.stick, shape.feature),
        _knife(shape),
        *_housing_tasks(shape),
        *_bores(shape),
        pare_sides(
            Mouth(faces=_mouths(shape), waste=INSIDE),
            shape.sides.width,
            how="Square to the face, right through",
        ),
        *_slopes(shape),
        _make_wedge(shape),
        _drive(shape),
    )


def _mouths(shape: MortiseShape) -> tuple[Face, Face]:
    return (shape.entry, shape.entry.opposite)


def _knife(shape: MortiseShape) -> Task:
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the mortise on both faces, hatch the inside",
        faces=(*open_faces(shape), shape.entry.opposite) if shape.recess else _mouths(shape),
        waste=INSIDE,
        why="Both mouths show beside tie and wedge: crisp lines keep them from breaking out.",
        caution=ENGINEER,
    )


def _opening(shape: MortiseShape) -> str:
    return "housing floor" if shape.recess else shape.stick.pose.words(shape.entry)


def _bores(shape: MortiseShape) -> tuple[Task, ...]:
    """Half the wood from each face; no further along than the entry face's own lines."""
    words, far = shape.stick.pose.words, shape.entry.opposite
    wood = shape.tail.passed
    half = Length(wood.nm // 2)
    enters, leaves = shape.ends_on(shape.entry), shape.ends_on(far)
    task = partial(Task, stage=Stage.CUT, waste=INSIDE, caution=f"{FROM_BOTH} {DRILL}")
    return (
        task(
            id="bore",
            title=f"Bore half the mortise from the {words(shape.entry)}",
            faces=(shape.entry,),
            readings=(Reading(value=half, hook=_opening(shape), way="in, to the middle"),),
            why="Square to the face; the slopes are pared afterwards.",
        ),
        task(
            id="bore-far",
            title=f"Turn the post, bore the rest from the {words(far)}",
            faces=(far,),
            readings=(Reading(value=wood - half, hook=words(far), way="in, to meet the other"),),
            beside=(
                Beside(abs(leaves.tail - enters.tail), "to keep inside the tail end line"),
                Beside(abs(leaves.wedge - enters.wedge), "to keep inside the wedge end line"),
            ),
            why=(
                f"Both ends slope in from here: bore no further along than the mortise is on the "
                f"{words(shape.entry)}, or the bit goes through the slope the tail bears on."
            ),
        ),
    )


def _slopes(shape: MortiseShape) -> tuple[Task, ...]:
    """Paring the two ends, the one the tail bears on first."""
    enters, leaves = (shape.ends_on(face) for face in _mouths(shape))
    words = shape.stick.pose.words(shape.entry.opposite)
    task = partial(Task, stage=Stage.PARE, faces=_mouths(shape), waste=INSIDE, caution=CHISEL)
    run = shape.tail.run.nm
    return (
        task(
            id="pare-tail-end",
            draws=TAIL_END,
            title="Pare the tail end to its slope",
            readings=(
                Reading(
                    value=abs(leaves.tail - enters.tail),
                    hook="tail end line square through",
                    way=f"out to its line on the {words}",
                ),
            ),
            why="A straight edge lies flat on it from face to face: the tail bears on all of it.",
            setting=slope_setting(run, max(shape.flare, ZERO).nm),
        ),
        task(
            id="pare-wedge-end",
            draws=WEDGE_END,
            title="Pare the wedge end to its slope",
            readings=(
                Reading(
                    value=abs(leaves.wedge - enters.wedge),
                    hook="wedge end line square through",
                    way=f"out to its line on the {words}",
                ),
            ),
            why="The wedge bears along all of it.",
            setting=slope_setting(run, shape.tail.flare.nm),
        ),
    )


def _make_wedge(shape: MortiseShape) -> Task:
    """Dry hardwood wedges are a framer's own account of wedged dovetails (trade notes 2.4)."""
    wedge = shape.wedge
    return Task(
        id="make-wedge",
        stage=Stage.FIT,
        title="Make the wedge",
        readings=(
            Reading(value=wedge.thick, hook="wedge's straight side", way="thick, at the far face"),
        ),
        beside=(*wedge_beside(shape)[::2], Beside(wedge.width, "wedge, wide as the mortise")),
        why=(
            "Of dry hardwood, the grain along it, and longer at both ends: it is driven until it "
            "is tight, then trimmed."
        ),
        caution=SAW,
        setting=slope_setting(shape.tail.run.nm, shape.tail.flare.nm),
    )


def _drive(shape: MortiseShape) -> Task:
    words = shape.stick.pose.words
    return Task(
        id="drive-wedge",
        stage=Stage.FINISH,
        title=f"Drive the wedge from the {words(shape.entry.opposite)}",
        faces=(shape.entry.opposite,),
        why=(
            f"Once {shape.tail.stick.name} is in from the {words(shape.entry)}: thin end first. "
            "Look at it again when the timbers have dried, and drive it up."
        ),
        caution=DRIVE,
    )


def _housing_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    if not shape.recess:
        return ()
    entry = shape.stick.pose.words(shape.entry)
    first = unmeasured_recess(shape.stick, shape.entry, shape.feature)
    return (
        Task(
            id="cut-housing",
            stage=Stage.CUT,
            title="Saw and chop the housing, pare its floor flat",
            draws=FLOOR,
            faces=open_faces(shape),
            readings=(Reading(value=shape.recess, hook=entry, way="straight in, to its floor"),),
            waste="Inside the housing's lines only.",
            why="The shoulder bears on all of it.",
            caution=f"{first}{SAW} {CHISEL}",
        ),
        _strike_anew(shape),
    )


def _strike_anew(shape: MortiseShape) -> Task:
    """The mortise's lines on the housing's floor, where its ends lie otherwise than at the face."""
    floor = shape.ends(shape.seat)
    ends = (("tail end", floor.tail), ("wedge end", floor.wedge))
    return Task(
        id="strike-floor",
        stage=Stage.CUT,
        title="Strike the mortise anew on the housing floor, knife its ends",
        faces=(shape.entry,),
        readings=struck_anew(shape.sides, ends),
        waste="Inside the four lines only.",
        why="Cutting the housing took its lines away. On the floor the ends lie where the slopes "
        "pass it.",
    )
