"""The receiving side: the pocket, open above and at the face the joist comes from."""

from functools import partial

from benchmate.frame.practice import CHISEL, SAW, bears_on, measure_task
from benchmate.frame.reduction import measured_words, unmeasured
from benchmate.joinery.joist.shape import PocketShape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Beside, Line, Reading, Stage, Task
from benchmate.model.solids import Axis, Cut, above, below
from benchmate.model.stick import axis_from, reference_for

ENGINEER = "Pockets in a top edge weaken the timber: their size and number are for the engineer."
"""A reader quotes 15 to 40 % of a beam's strength for them (trade notes 2.4, TFHQ-dropin)."""


def pocket_cuts(shape: PocketShape) -> tuple[Cut, ...]:
    """One box without a lid."""
    floor = below if shape.top.is_reference else above
    back = below if shape.entry.is_reference else above
    return (
        Cut(
            (
                above(Axis.ALONG, shape.along[0], "start"),
                below(Axis.ALONG, shape.along[1], "finish"),
                floor(shape.plumb, shape.floor, "floor"),
                back(shape.into, shape.back, "back"),
            )
        ),
    )


def pocket_lines(shape: PocketShape, tape: Tape) -> tuple[Line, ...]:
    """Its two sides, its floor and its back."""
    start, finish = shape.along
    wide = Beside(finish - start, "pocket width")
    follows = _follows(shape, tape)
    return (
        Line(
            id="start",
            title="Pocket start line",
            axis=Axis.ALONG,
            at=start,
            beside=(wide,),
            why=follows,
        ),
        Line(
            id="finish",
            title="Pocket finish line",
            axis=Axis.ALONG,
            at=finish,
            beside=(wide,),
            why=follows,
        ),
        _floor(shape, tape),
        _back(shape),
    )


def _follows(shape: PocketShape, tape: Tape) -> str:
    name = shape.joist.stick.name
    as_cut = shape.joist.as_cut.get("width")
    if as_cut is None:
        return f"Follows {name}'s end as drawn; it has not been measured as cut."
    return f"Follows {name}'s end as cut: {tape.text(as_cut)} wide."


def _floor(shape: PocketShape, tape: Tape) -> Line:
    words, name = shape.stick.pose.words, shape.joist.stick.name
    below_top: tuple[Beside, ...] = ()
    measured = ""
    if not shape.top.is_reference:
        below_top = (Beside(shape.from_top, "below the top here"),)
        measured = measured_words(shape.stick, shape.plumb, (shape.feature,))
    return Line(
        id="floor",
        title="Pocket floor line",
        axis=shape.plumb,
        at=shape.floor,
        beside=(
            *below_top,
            Beside(shape.joist.real("thickness"), "of joist stands on it"),
            Beside(shape.left_below, f"left to the {words(shape.top.opposite)}"),
        ),
        why=(
            f"{bears_on(name, shape.joist.recess, shape.joist.real('width'), tape)} At this depth "
            f"its top comes level with the others. {measured}"
        ).rstrip(),
        caution=ENGINEER,
    )


def _back(shape: PocketShape) -> Line:
    words = shape.stick.pose.words
    entry, reference = words(shape.entry), words(reference_for(shape.into))
    far = not shape.entry.is_reference
    return Line(
        id="back",
        title="Pocket back line",
        axis=shape.into,
        at=shape.back,
        beside=(
            Beside(shape.recess, f"deep from the {entry}"),
            Beside(shape.clearance, "of it to spare behind the joist's end"),
        ),
        why=_far_back(shape, reference) if far else "The bearing, and a little to spare behind it.",
        caution=f"Never measure this from the {entry}." if far else "",
    )


def _far_back(shape: PocketShape, reference: str) -> str:
    """Why the back of a pocket in a far face lies where it does, and whether it was measured."""
    held = (
        f"From the {reference}, so that every joist is as long whatever this stick measures."
        if shape.stick.inner is not None
        else f"From the {reference}; the joist's length follows what this stick measures here."
    )
    return f"{held} {measured_words(shape.stick, shape.into, (shape.feature,))}"


def _follows_stick(shape: PocketShape, face: Face) -> str:
    """The caution for a depth from a far face that differs with the stick, or nothing."""
    if face.is_reference or (face is shape.entry and shape.stick.inner is None):
        return ""
    return unmeasured(shape.stick, axis_from(face), (shape.feature,))


def pocket_tasks(shape: PocketShape) -> tuple[Task, ...]:
    """What to do at the pocket besides striking lines: one figure to one task."""
    top, entry = (shape.stick.pose.words(face) for face in (shape.top, shape.entry))
    wide = Reading(value=shape.along[1] - shape.along[0], hook="start", way="to the finish")
    down = Reading(value=shape.from_top, hook=top, way="straight down, to the floor")
    back = Reading(value=shape.recess, hook=entry, way="straight in, to the back")
    faces = (shape.top, shape.entry)
    task = partial(Task, faces=faces, waste="Inside the pocket's lines only.")
    return (
        measure_task(shape.stick, shape.feature),
        task(
            id="knife",
            stage=Stage.KNIFE,
            title="Knife the pocket, hatch the inside",
            why="Crisp lines across the grain keep the edges from breaking out.",
        ),
        task(
            id="saw-sides",
            stage=Stage.CUT,
            title="Saw the pocket's two sides",
            readings=(down,),
            why="No deeper than the floor, no further in than the back, kerfs inside the lines.",
            caution=f"{_follows_stick(shape, shape.top)}{SAW}",
        ),
        task(
            id="chop",
            stage=Stage.CUT,
            title="Chop the pocket out to its back",
            readings=(back,),
            why="In layers, with the floor left full until it is pared.",
            caution=f"{_follows_stick(shape, shape.entry)}{CHISEL}",
        ),
        task(
            id="pare",
            stage=Stage.PARE,
            title="Pare the pocket's sides",
            readings=(wide,),
            why="The joist drops in by hand, without pounding.",
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
