"""A scribed joint: listed step by step on both timbers, its figures left to the framer.

Scribing lays the timbers over one another and marks each joint from its real mate, so no figure
reckoned here would be true (trade notes 1.1, scribe rule: TFHQ-rules, Underhill).
"""

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.peg_steps import FINGERS
from benchmate.frame.practice import CHAINSAW, CHISEL, DRILL, SAW, measure_task
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Stage, Task

FITTED = "fit"
"""The task after which a scribed joint is done."""

_LEVEL = (
    "Lay the two over one another as they will stand, lined up and plumb, and mark each from the "
    "other. They fit only one another: number the joint on both."
)


def _lay_up() -> Task:
    """Looking at the stick before it is laid up: no figure, as none is marked to.

    The faces laid up lie in one plane and the rest of the stick is left as irregular as it is
    (trade notes 1.1: DBRG-2).
    """
    return Task(
        id="lay-up",
        stage=Stage.MEASURE,
        title="Check wind and bow, choose the face to lay up",
        faces=(Face.FIRST, Face.SECOND),
        why="The faces laid up come flush; what is out of true goes to the other side.",
        lasting=False,
    )


def scribed_tenon_tasks(shape: TenonShape, receiver: str) -> tuple[Task, ...]:
    """What is done at the tenon; the task that finds its shoulder is named as the line would be."""
    end = shape.stick.pose.words(shape.end)
    return (
        _lay_up(),
        Task(
            id="shoulder",
            stage=Stage.MARK,
            title=f"Scribe the shoulder and the tenon to {receiver}",
            faces=(*LONG_FACES, shape.end),
            why=_LEVEL,
            caution="No figure here: the shoulder lies where its mate puts it.",
        ),
        Task(
            id="saw",
            stage=Stage.CUT,
            title="Cut the tenon to its scribed lines",
            faces=(*LONG_FACES, shape.end),
            waste=f"Towards the {end}, outside the scribed lines.",
            why="Shoulders before cheeks. Leave the line: the joint is tried before it is pared.",
            caution=f"{SAW} {CHAINSAW}",
        ),
        Task(
            id=FITTED,
            stage=Stage.PARE,
            title=f"Pare the tenon until it fits {receiver}",
            faces=(shape.end,),
            why="Try it in its own mortise and in no other.",
            caution=CHISEL,
        ),
    )


def scribed_mortise_tasks(shape: MortiseShape) -> tuple[Task, ...]:
    """What is done at the mortise."""
    mate = shape.tenon.stick.name
    why = "Deeper than the tenon is long: the shoulder bears, not the end."
    if shape.through:
        why = "Right through, half of it from each face, without a step where they meet."
    return (
        # How long a tenon that goes through is follows the wood it passes, scribed or not.
        *((measure_task(shape.stick, shape.feature),) if shape.through else ()),
        _lay_up(),
        Task(
            id="scribe",
            stage=Stage.MARK,
            title=f"Scribe the mortise from {mate}",
            faces=shape.mouths,
            why=_LEVEL,
            caution="No figure here: the mortise lies where its tenon puts it.",
        ),
        Task(
            id="bore",
            stage=Stage.CUT,
            title="Cut the mortise to its scribed lines",
            faces=shape.mouths,
            waste="Inside the scribed lines only.",
            why=why,
            caution=f"{f'{FROM_BOTH} ' if shape.through else ''}{DRILL} {CHISEL}",
        ),
    )


def scribed_hole_tasks(stub: MortiseShape, tenon: TenonShape) -> tuple[Task, ...]:
    """What is done where one scribed tenon goes through another, in the one that is crossed."""
    mate, entry = stub.tenon.stick.name, stub.stick.pose.direction(stub.entry)
    face = tenon.stick.pose.face(entry)
    return (
        Task(
            id="scribe",
            stage=Stage.FIT,
            title=f"Drive the tenon home, mark the hole through {mate}'s mortise",
            faces=(face,),
            why=f"{mate}'s tenon comes through there: knife round the walls of its mortise.",
            caution=f"No figure here: it lies where the corner puts it. {FINGERS}",
        ),
        Task(
            id="cut",
            stage=Stage.FINISH,
            title="Take it apart, cut the hole to its marks",
            faces=(face,),
            waste="Inside the marks only.",
            why=f"As deep as the mortise in {stub.stick.name}, and right through if that is.",
            caution=f"{DRILL} {CHISEL}",
        ),
    )
