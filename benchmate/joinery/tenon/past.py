"""What is said of a tenon that goes on past one timber into another, and of its mortise there."""

from benchmate.frame.reduction import unmeasured
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import TenonShape
from benchmate.measure.length import ZERO
from benchmate.model.directions import LONG_FACES
from benchmate.model.feature import Beside, Reading, Stage, Task


def draw_ends(shape: TenonShape) -> tuple[Task, ...]:
    """Drawing where both parts of a tenon end, before any end is cut; nothing for one that stops.

    A published account of a tying joint that was cut wrong: connect the datums and draw the end of
    the second tenon before cutting off for the first (trade notes 2.5: TFG-etj).
    """
    if not shape.goes_on or shape.passage is None:
        return ()
    end, face = shape.stick.pose.words(shape.end), shape.passage.face
    return (
        Task(
            id="draw-ends",
            stage=Stage.MARK,
            title=f"Mark all the tenon out before the {end} is sawn",
            faces=(*LONG_FACES, shape.end),
            readings=(
                Reading(
                    value=shape.length,
                    hook=f"{end} shoulder line",
                    way=f"towards the {end}, to the tenon's end",
                ),
            ),
            beside=(
                Beside(shape.passage.wood, f"of it to {face}"),
                Beside(shape.length - shape.passage.wood, f"of it past that, for {shape.goes_on}"),
            ),
            why=f"It is one tenon for two mortises, and {shape.goes_on} is the second.",
            caution=(
                f"Never saw it off at {face}: the tenon for {shape.goes_on} would be gone with it."
            ),
        ),
    )


def comes_past(shape: MortiseShape) -> str:
    """Where the tenon comes from, in a sentence; nothing for the mortise its shoulder bears at."""
    return f"The tenon comes on past {shape.past.face}. " if shape.past else ""


def notched(shape: MortiseShape) -> str:
    """The caution for lines that go with a notch, where the two timbers overlap.

    Where no joint of the two says so, either of them may be notched, and the caution says if.
    """
    told = tuple(
        f"On the {shape.stick.pose.words(face)} the {floor.name} takes these lines away: it is cut "
        "first, and they are struck anew on its floor."
        for face in shape.mouths
        if (floor := shape.floor(face))
    )
    if told:
        return " ".join(told)
    if shape.past is None or shape.past.inside <= ZERO:
        return ""
    name = shape.past.name
    return (
        f"Where this timber is notched over {name}, cut the notch before the mortise, and strike "
        "the mortise anew on its floor."
    )


def from_the_face(shape: MortiseShape) -> str:
    """The cautions for a depth that counts from the face the tenon enters past another timber."""
    if shape.past is None or shape.floor(shape.entry):
        return ""
    measured = ""
    if not shape.entry.is_reference:
        measured = unmeasured(shape.stick, shape.into, (shape.feature,))
    if shape.past.inside <= ZERO:
        return measured
    face = shape.stick.pose.words(shape.entry)
    return (
        f"{measured}Counted from the {face} as it was before any notch: in a notch go so much less "
        "deep as the notch is, until the wood beside is left. "
    )


def under_the_notch(shape: MortiseShape) -> tuple[Beside, ...]:
    """The wood left past the mortise, which is the same however deep a notch was cut before it."""
    face = shape.stick.pose.words(shape.entry.opposite)
    if shape.floor(shape.entry):
        return (Beside(shape.left_below, f"left to the {face}"),)
    if shape.past is None or shape.past.inside <= ZERO:
        return ()
    return (Beside(shape.left_below, f"left to the {face}, however deep a notch there is"),)


def spare_words(shape: MortiseShape) -> str:
    """What the clearance at the bottom is over, in words."""
    return "deeper than the tenon goes in" if shape.past else "deeper than the tenon is long"
