"""What to do at the housing and the mortise besides striking lines: one figure to one task."""

from functools import partial

from benchmate.frame.anew import struck_anew
from benchmate.frame.chopping import Depth, Mouth, bore, pare_ends, pare_sides, try_depth
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.frame.reduction import unmeasured_recess
from benchmate.frame.tapers import slope_setting
from benchmate.joinery.diminished.mortise import open_faces
from benchmate.joinery.diminished.mortise_shape import LEDGE, TOP, MortiseShape
from benchmate.model.feature import Beside, Reading, Stage, Task

INSIDE = "Inside the four lines only."

INSIDE_HOUSING = "Inside the housing's lines only."


def mortise_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    """Measuring, the housing from its ledge up, then the mortise struck anew in it."""
    return (
        measure_task(shape.stick, shape.feature),
        *_housing_tasks(shape),
        _strike_anew(shape),
        *_mortise_tasks(shape),
    )


def _housing_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    entry = shape.stick.pose.words(shape.entry)
    made = shape.made
    task = partial(
        Task,
        faces=open_faces(shape),
        waste=INSIDE_HOUSING,
        setting=slope_setting(made.deep.nm, made.housing.nm),
    )
    first = unmeasured_recess(shape.stick, shape.entry, shape.feature)
    full = Reading(value=made.recess, hook=entry, way="straight in, at the ledge")
    at_top = (Beside(made.over, f"deep from the {entry}, at its top"),)
    return (
        Task(
            id="knife-housing",
            stage=Stage.KNIFE,
            title="Knife the housing, hatch the inside",
            faces=open_faces(shape),
            waste=INSIDE_HOUSING,
            why="Its edges show round the other timber: crisp lines make a tight housing.",
        ),
        task(
            id="cut-housing",
            stage=Stage.CUT,
            title="Saw the ledge to full depth, chop the slope up from it",
            draws=TOP,
            readings=(full,),
            beside=at_top,
            why="Leave the floor full: it is pared flat next.",
            caution=f"{first}{SAW} {CHISEL}",
        ),
        task(
            id="pare-housing",
            stage=Stage.CUT,
            title="Pare the housing's floor and its ledge, try the depth",
            draws=LEDGE,
            readings=(full,),
            beside=at_top,
            why="The ledge square to the face, the floor flat from the ledge to the top.",
            caution=CHISEL,
        ),
    )


def _strike_anew(shape: MortiseShape) -> Task:
    """The mortise's four lines on the housing's floor, each from where it was first struck."""
    start, finish = shape.along
    ends = (("start", start), ("finish", finish))
    return Task(
        id="strike-floor",
        stage=Stage.CUT,
        title="Strike the mortise anew on the housing's floor, knife its ends",
        faces=(shape.entry,),
        readings=struck_anew(shape.sides, ends),
        waste=INSIDE,
        why=(
            "Cutting the housing took its lines away. Measure each as it was first struck, square "
            "to the face and not along the slope."
        ),
    )


def _mortise_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    start, finish = shape.along
    down = Reading(
        value=shape.depth, hook=shape.stick.pose.words(shape.entry), way="in, square to it"
    )
    mouth, depth = Mouth(faces=(shape.entry,), waste=INSIDE), Depth(down=down)
    return (
        bore(
            mouth,
            depth,
            why="From the face, a straight edge laid over the housing. The walls are pared later.",
        ),
        pare_sides(mouth, shape.sides.width),
        pare_ends(mouth, finish - start),
        try_depth(mouth, depth, bears="the shoulder bears, not the end"),
    )
