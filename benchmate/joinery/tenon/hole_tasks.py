"""What is done for a hole in a tenon: tried in the corner first, then cut apart from it.

Two ways are in use: to mark the hole from the corner put together, or to lay it out by figures.
Here the figures are the layout and the corner is the check: they hold before anything is put
together, and the corner shows a slip while there is still wood to correct it in (common practice,
no source).
"""

from functools import partial

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.peg_steps import FINGERS
from benchmate.frame.practice import CHISEL, DRILL, SAW
from benchmate.frame.reduction import side_words
from benchmate.joinery.tenon.hole import Hole
from benchmate.joinery.tenon.hole_lines import end_words, opening, what
from benchmate.measure.length import ZERO
from benchmate.model.feature import Reading, Stage, Task
from benchmate.model.stick import reference_for

INSIDE = "Inside its lines only."


def hole_tasks(shape: Hole) -> tuple[Task, ...]:
    """Try it in the corner, knife it, cut it, pare it: one figure to one task."""
    return (try_corner(shape), _knife(shape), _cut(shape), *_pare(shape))


def try_corner(shape: Hole) -> Task:
    """Looking at the lines through the other mortise, with the tenon driven home."""
    name = shape.stub.tenon.stick.name
    return Task(
        id="try-corner",
        stage=Stage.FIT,
        title=f"Drive the tenon home, look at the lines through {name}'s mortise",
        faces=(shape.entry,),
        why=(
            f"The lines should show along the walls of the mortise in {shape.stub.stick.name}: the "
            "figures are the layout, the corner put together is the check. Where a wall and its "
            "line differ, find out why; then go by the wall, as the tenon comes through there."
        ),
        caution=FINGERS,
    )


def _knife(shape: Hole) -> Task:
    over = ", and square them over to the other cheek" if shape.through else ""
    return Task(
        id="knife",
        stage=Stage.FINISH,
        title=f"Take it apart, knife the {what(shape).lower()}, hatch the inside",
        faces=shape.mouths,
        waste=INSIDE,
        why=f"Knife what crosses the grain{over}.",
    )


def _cut(shape: Hole) -> Task:
    task = partial(
        Task,
        id="cut",
        stage=Stage.FINISH,
        faces=shape.mouths,
        waste=INSIDE,
        why="Not before the corner was tried: what is gone cannot be put back.",
    )
    if shape.through:
        deep = Reading(
            value=shape.tenon.real("thickness"), hook=opening(shape), way="to the other cheek"
        )
    else:
        deep = Reading(value=shape.depth, hook=opening(shape), way="in, no deeper")
    if shape.notch:
        title, caution = "Saw and chop the notch", f"{SAW} {CHISEL}"
    else:
        title, caution = "Bore and chop the hole", f"{DRILL} {CHISEL}"
        if shape.through:
            caution = f"{FROM_BOTH} {caution}"
    return task(title=title, readings=(deep,), caution=caution)


def _pare(shape: Hole) -> tuple[Task, ...]:
    """Paring it to the tenon that goes through, one way and then the other."""
    start, finish = shape.beyond
    end = end_words(shape)
    along = Reading(value=finish - start, hook="shoulder side", way="to the end side")
    if shape.to_end <= ZERO:
        along = Reading(value=start, hook=f"{end} shoulder", way="to the shoulder side")
    near, far = shape.to_edges
    face = reference_for(shape.tenon.edges)
    one, other = (side_words(shape.tenon.stick.pose.words(each)) for each in (face, face.opposite))
    wide = shape.across[1] - shape.across[0]
    across = Reading(value=wide, hook=one, way=f"to the {other}")
    if near <= ZERO or far <= ZERO:
        across = Reading(
            value=max(near, far), hook="narrow edge that is whole", way="to the side of the notch"
        )
    return (
        _paring("pare-along", f"Pare the {what(shape).lower()} along the tenon", along, shape),
        _paring("pare-across", f"Pare the {what(shape).lower()} across the tenon", across, shape),
    )


def _paring(name: str, title: str, reading: Reading, shape: Hole) -> Task:
    return Task(
        id=name,
        stage=Stage.FINISH,
        title=title,
        faces=shape.mouths,
        readings=(reading,),
        waste=INSIDE,
        why=f"Square to the cheeks: {shape.stub.tenon.stick.name}'s tenon slides by without force.",
        caution=CHISEL,
    )
