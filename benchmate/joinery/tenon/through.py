"""A tenon that goes right through: its mortise bored from both faces, and where its end comes.

It is as long as the timber it passes, and usually held short of flush so that it fouls no siding
(trade notes 2.1: Rogers-tenon).
"""

from functools import partial

from benchmate.frame.chopping import BORE, FROM_BOTH
from benchmate.frame.practice import CHISEL, DRILL
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import Passage, TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Beside, Reading, Stage, Task

TRY_THROUGH = "try-through"
"""The last task at a mortise that goes right through."""


def end_beside(passage: Passage | None, length: Length) -> tuple[Beside, ...]:
    """Where the end of a tenon so long comes; nothing for one that is flush or stops inside."""
    if passage is None or length == passage.wood:
        return ()
    past = length - passage.wood
    words = "proud of" if past > ZERO else "short of"
    return (Beside(abs(past), f"{words} {passage.face}, at the tenon's end"),)


def through_words(shape: TenonShape) -> str:
    """That it goes through and how it ends, in a sentence; nothing for one that stops inside."""
    if shape.passage is None:
        return ""
    past, face = shape.length - shape.passage.wood, shape.passage.face
    ends = f"ends flush with {face}"
    if past:
        ends = f"stands out past {face}" if past > ZERO else f"stops short of {face}"
    if shape.goes_on:
        ends = f"goes on past {face} into {shape.goes_on}"
    return f" The tenon goes right through and {ends}."


def through_bore(
    shape: MortiseShape, passage: Passage, opening: str, *, waste: str, beware: str
) -> tuple[Task, ...]:
    """Boring from both faces, half the wood from each; `beware` is what comes in the way."""
    words, far = shape.stick.pose.words, shape.entry.opposite
    wood = passage.wood - shape.cut_back(shape.entry) - shape.cut_back(far)
    half, floor = Length(wood.nm // 2), shape.floor(far)
    task = partial(Task, stage=Stage.CUT, waste=waste, caution=f"{FROM_BOTH} {beware}{DRILL}")
    return (
        task(
            id=BORE,
            title=f"Bore half the mortise from the {words(shape.entry)}",
            faces=(shape.entry,),
            readings=(Reading(value=half, hook=opening, way="in, to the middle"),),
            why="Stay inside the lines; the walls are pared afterwards.",
        ),
        task(
            id="bore-far",
            title=f"Turn the timber, bore the rest from the {words(far)}",
            faces=(far,),
            readings=(
                Reading(
                    value=wood - half,
                    hook=floor.words if floor else words(far),
                    way="in, to meet the other",
                ),
            ),
            why="Both were struck from the same reference face and end, so they meet.",
        ),
    )


def through_try(shape: MortiseShape) -> Task:
    """Trying that the two halves meet."""
    return Task(
        id=TRY_THROUGH,
        stage=Stage.PARE,
        title="Try the mortise right through",
        faces=shape.mouths,
        readings=(
            Reading(
                value=shape.across[1] - shape.across[0],
                hook="near side",
                way="to the far side, all the way through",
            ),
        ),
        waste="Only what stands proud inside.",
        beside=end_beside(shape.passage, shape.length),
        why="A square laid through it touches each wall from face to face: no step in the middle.",
        caution=CHISEL,
    )
