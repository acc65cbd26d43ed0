"""A tenon that goes right through: its mortise bored from both faces, and where its end comes.

It is as long as the timber it passes, and usually held short of flush so that it fouls no siding
(trade notes 2.1: Rogers-tenon).
"""

from functools import partial

from benchmate.frame.practice import CHISEL, DRILL
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import Passage, TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Beside, Reading, Stage, Task

FROM_BOTH = "Never right through from one side: the bit splinters the face it comes out on."
"""Boring from both faces and meeting in the middle: common practice, no source."""


def end_beside(shape: TenonShape, length: Length) -> tuple[Beside, ...]:
    """Where the end of a tenon so long comes; nothing for one that is flush or stops inside."""
    if shape.passage is None or length == shape.passage.wood:
        return ()
    past = length - shape.passage.wood
    words = "proud of" if past > ZERO else "short of"
    return (Beside(abs(past), f"{words} {shape.passage.face}, at the tenon's end"),)


def through_words(shape: TenonShape) -> str:
    """That it goes through and how it ends, in a sentence; nothing for one that stops inside."""
    if shape.passage is None:
        return ""
    past, face = shape.length - shape.passage.wood, shape.passage.face
    ends = f"ends flush with {face}"
    if past:
        ends = f"stands out past {face}" if past > ZERO else f"stops short of {face}"
    return f" The tenon goes right through and {ends}."


def through_bore(shape: MortiseShape, passage: Passage, opening: str, inside: str) -> list[Task]:
    """Boring from both faces, half the wood from each."""
    words, far = shape.stick.pose.words, shape.entry.opposite
    half = Length(passage.wood.nm // 2)
    task = partial(Task, stage=Stage.CUT, waste=inside, caution=f"{FROM_BOTH} {DRILL}")
    return [
        task(
            id="bore",
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
                Reading(value=passage.wood - half, hook=words(far), way="in, to meet the other"),
            ),
            why="Both were struck from the same reference face and end, so they meet.",
        ),
    ]


def through_try(shape: MortiseShape) -> Task:
    """Trying that the two halves meet."""
    return Task(
        id="try-through",
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
        beside=end_beside(shape.tenon, shape.length),
        why="A square laid through it touches each wall from face to face: no step in the middle.",
        caution=CHISEL,
    )
