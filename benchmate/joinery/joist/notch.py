"""What every recess that a joist drops into has: a floor, a back, and how it is cut."""

from functools import partial

from benchmate.frame.practice import CHISEL, SAW, bears_on, measure_task
from benchmate.frame.reduction import measured_words, unmeasured
from benchmate.joinery.joist.shape import EndShape, Notch
from benchmate.joinery.joist.tail_shape import TailShape
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Plane, above, below
from benchmate.model.stick import axis_from, reference_for

ENGINEER = "Recesses in a top edge weaken the timber: size and number are for the engineer."
"""A reader quotes 15 to 40 % of a beam's strength for them (trade notes 2.4, TFHQ-dropin)."""

FLOOR, BACK = "floor", "back"


def floor_and_back(shape: Notch) -> tuple[Plane, Plane]:
    """The two planes that every one is bounded by."""
    floor = below if shape.top.is_reference else above
    back = below if shape.entry.is_reference else above
    return floor(shape.plumb, shape.floor, FLOOR), back(shape.into, shape.back, BACK)


def floor_line(
    shape: Notch, joist: EndShape | TailShape, bearing: tuple[Length, Length], tape: Tape
) -> Line:
    """Where the joist bears, on an area so long and so wide."""
    words, name = shape.stick.pose.words, joist.stick.name
    below_top: tuple[Beside, ...] = ()
    measured = ""
    if not shape.top.is_reference:
        below_top = (Beside(shape.from_top, "below the top here"),)
        measured = measured_words(shape.stick, shape.plumb, (shape.feature,))
    return Line(
        id=FLOOR,
        title=f"{shape.noun} floor line",
        axis=shape.plumb,
        at=shape.floor,
        beside=(
            *below_top,
            Beside(joist.real("thickness"), "of joist stands on it"),
            Beside(shape.left_below, f"left to the {words(shape.top.opposite)}"),
        ),
        why=(
            f"{bears_on(name, *bearing, tape)} At this depth its top comes level with the others. "
            f"{measured}"
        ).rstrip(),
        caution=ENGINEER,
    )


def back_line(shape: Notch) -> Line:
    """How far in it goes."""
    words = shape.stick.pose.words
    entry, reference = words(shape.entry), words(reference_for(shape.into))
    far = not shape.entry.is_reference
    return Line(
        id=BACK,
        title=f"{shape.noun} back line",
        axis=shape.into,
        at=shape.back,
        beside=(
            Beside(shape.recess, f"deep from the {entry}"),
            Beside(shape.clearance, "of it to spare behind the joist's end"),
        ),
        why=(
            _far_back(shape, reference)
            if far
            else "As far as the joist's end goes in, and a little to spare behind it."
        ),
        caution=f"Never measure this from the {entry}." if far else "",
    )


def _far_back(shape: Notch, reference: str) -> str:
    """Why the back of one in a far face lies where it does, and whether it was measured."""
    held = (
        f"From the {reference}, so that every joist is as long whatever this stick measures."
        if shape.stick.inner is not None
        else f"From the {reference}; the joist's length follows what this stick measures here."
    )
    return f"{held} {measured_words(shape.stick, shape.into, (shape.feature,))}"


def _follows_stick(shape: Notch, face: Face) -> str:
    """The caution for a depth from a far face that differs with the stick, or nothing."""
    if face.is_reference or (face is shape.entry and shape.stick.inner is None):
        return ""
    return unmeasured(shape.stick, axis_from(face), (shape.feature,))


def notch_tasks(shape: Notch, wide: Reading, *, fits: str) -> tuple[Task, ...]:
    """What to do at it besides striking lines: one figure to one task.

    `wide` is its width where that is tried, and `fits` how the joist's end goes in.
    """
    top, entry = (shape.stick.pose.words(face) for face in (shape.top, shape.entry))
    down = Reading(value=shape.from_top, hook=top, way="straight down, to the floor")
    back = Reading(value=shape.recess, hook=entry, way="straight in, to the back")
    noun = shape.noun.lower()
    task = partial(Task, faces=(shape.top, shape.entry), waste=f"Inside the {noun}'s lines only.")
    return (
        measure_task(shape.stick, shape.feature),
        task(
            id="knife",
            stage=Stage.KNIFE,
            title=f"Knife the {noun}, hatch the inside",
            why="Crisp lines across the grain keep the edges from breaking out.",
        ),
        task(
            id="saw-sides",
            stage=Stage.CUT,
            title=f"Saw the {noun}'s two sides",
            readings=(down,),
            why="No deeper than the floor, no further in than the back, kerfs inside the lines.",
            caution=f"{_follows_stick(shape, shape.top)}{SAW}",
        ),
        task(
            id="chop",
            stage=Stage.CUT,
            title=f"Chop the {noun} out to its back",
            readings=(back,),
            why="In layers, with the floor left full until it is pared.",
            caution=f"{_follows_stick(shape, shape.entry)}{CHISEL}",
        ),
        task(
            id="pare",
            stage=Stage.PARE,
            title=f"Pare the {noun}'s sides",
            readings=(wide,),
            why=fits,
            caution=CHISEL,
        ),
        task(
            id="try-floor",
            stage=Stage.PARE,
            title="Pare the floor flat, try its depth",
            readings=(down,),
            why="The joist bears on all of it: flat, and as deep at the back as in front.",
            caution=CHISEL,
        ),
    )
