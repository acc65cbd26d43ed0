"""The plumb cut at a rafter's head, whether it bears on a ridge or on its pair."""

from benchmate.frame.practice import CHISEL, SAW
from benchmate.joinery.rafter.raking import TOP_EDGE, Rafter
from benchmate.joinery.rafter.words import setting
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Stage, Task


def saw_plumb_cut(rafter: Rafter, end: Face, draws: str, tape: Tape) -> Task:
    """Sawing it at an `end`, along the line it `draws`."""
    long = rafter.plumbed(rafter.real_deep)
    return Task(
        id="saw-end",
        stage=Stage.CUT,
        title="Saw the plumb cut",
        draws=draws,
        faces=rafter.both_sides,
        readings=(Reading(value=long, hook=TOP_EDGE, way="down the plumb line"),),
        waste=f"Towards the {rafter.stick.pose.words(end)}, beyond the line.",
        why="Leave the line: it is trimmed to fit, and what is gone cannot be put back.",
        caution=f"{rafter.unmeasured_depth}{SAW}",
        setting=setting(rafter, tape, plumb=True),
    )


def pare_plumb_cut(rafter: Rafter, why: str) -> Task:
    """Paring it as wide as the rafter is; `why` says what bears on it."""
    side = rafter.stick.pose.words(rafter.side)
    return Task(
        id="pare",
        stage=Stage.PARE,
        title="Pare the plumb cut flat, square across",
        faces=rafter.both_sides,
        readings=(Reading(value=rafter.wide, hook=side, way="across the cut"),),
        waste="Only what stands proud of the line.",
        why=why,
        caution=CHISEL,
    )
