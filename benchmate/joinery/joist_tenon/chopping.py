"""What to do at the beam besides striking lines: one figure to one task."""

from functools import partial

from benchmate.frame.chopping import Depth, Mouth, bore, try_depth
from benchmate.frame.housing import housing_tasks
from benchmate.frame.practice import CHISEL, SAW, measure_task
from benchmate.joinery.joist_tenon.hole_shape import DEPTH, HAUNCH_FLOOR, TUSK_FLOOR, HoleShape
from benchmate.joinery.joist_tenon.mortise import own_lines, straight_in
from benchmate.measure.printing import Tape
from benchmate.model.feature import Reading, Stage, Task


def hole_tasks(shape: HoleShape, tape: Tape) -> tuple[Task, ...]:
    """Housing first, then the mortise, then the shallower recesses beside it, then paring."""
    return (
        measure_task(shape.stick, shape.feature),
        *(housing_tasks(shape.housing, "mortise", own_lines(shape, tape)) or (_knife(shape),)),
        bore(
            Mouth(faces=(shape.entry,), waste="Between the upper and the lower side line only."),
            Depth(down=straight_in(shape, DEPTH), draws=DEPTH),
            why="The mortise first: the recesses over and under it are not so deep.",
        ),
        *_haunch(shape),
        *_tusk(shape),
        *_pare(shape),
    )


def _knife(shape: HoleShape) -> Task:
    """Knifing the joint on the face; in a housing that waits until its floor is cut."""
    return Task(
        id="knife",
        stage=Stage.KNIFE,
        title="Knife the joint's edges, hatch the inside",
        faces=(shape.entry,),
        waste="Inside the lines only.",
        why="Its edges show round the joist: knifed lines keep them from tearing.",
    )


def _haunch(shape: HoleShape) -> tuple[Task, ...]:
    if not shape.joist.haunched:
        return ()
    word = shape.joist.haunch_word
    return (
        Task(
            id="cut-haunch",
            stage=Stage.CUT,
            title=f"Saw the {word}'s sides, chop it to its slope",
            draws=HAUNCH_FLOOR,
            faces=(shape.entry,),
            readings=(straight_in(shape, HAUNCH_FLOOR, "straight in, at the upper side line"),),
            waste=f"Above the mortise, inside the {word}'s lines only.",
            why="From nothing at the joist's top to this depth at the mortise, flat all the way.",
            caution=f"{SAW} {CHISEL}",
        ),
    )


def _tusk(shape: HoleShape) -> tuple[Task, ...]:
    if not shape.joist.part.tusk:
        return ()
    return (
        Task(
            id="cut-tusk",
            stage=Stage.CUT,
            title="Chop the tusk's recess",
            draws=TUSK_FLOOR,
            faces=(shape.entry,),
            readings=(straight_in(shape, TUSK_FLOOR),),
            waste="Under the mortise, down to the tusk side line only.",
            why="Leave the tusk side line: the tusk bears there, and it is pared last.",
            caution=CHISEL,
        ),
    )


def _pare(shape: HoleShape) -> tuple[Task, ...]:
    wide = Reading(value=shape.along[1] - shape.along[0], hook="start", way="to the finish")
    high = Reading(value=abs(shape.lower - shape.upper), hook="upper side", way="to the lower side")
    mouth = Mouth(faces=(shape.entry,), waste="Inside the lines only.")
    task = partial(Task, stage=Stage.PARE, faces=mouth.faces, waste=mouth.waste)
    return (
        task(
            id="pare-ends",
            title="Pare the two ends of it all",
            readings=(wide,),
            why="Square to the face: the joist slides in by hand, without pounding.",
            caution=CHISEL,
        ),
        task(
            id="pare-sides",
            title="Pare the bearing faces flat and level",
            readings=(high,),
            why="Tenon and tusk bear on all of their lower sides at once: no proud spot.",
            caution=CHISEL,
        ),
        try_depth(
            mouth, Depth(down=straight_in(shape, DEPTH)), bears="the shoulder comes up to the beam"
        ),
    )
