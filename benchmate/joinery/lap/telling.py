"""What a lap says beside its lines: what follows what, what is weak, and what dries open."""

from benchmate.frame.reduction import lies_in_words, measured_words
from benchmate.joinery.lap.shape import Half
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.solids import Axis
from benchmate.model.stick import Wood, reference_for

ENGINEER = (
    "A notch weakens both timbers: how deep it may be, and where along them, is for the engineer."
)
"""The user's local codes and a licensed engineer decide; common practice, no source."""

_OPENS = {False: '1/4" on an 8 x 8', True: "6 mm on a 200 x 200"}


def shrinks(tape: Tape) -> str:
    """The caution for a dovetail across wood that will dry: by inches or, rounded, in metric.

    It opens by about 1/4" on an 8 x 8 of white pine: wedge it, or use a cog (trade notes 2.5,
    TFG-etj). Tredgold distrusted dovetails in carpentry ties for the same reason (Tredgold-ties).
    """
    opens = _OPENS[tape.graduation.metric]
    return (
        f"The tail narrows as it dries and the joint opens, about {opens} of white pine: wedge it "
        "tight again, or use a cog. What a tie has to hold is for the engineer."
    )


def from_far(stick: Wood, axis: Axis) -> str:
    """The caution for a line whose far face shows what the stick is over or under."""
    return f"Never measure this from the {stick.pose.words(reference_for(axis).opposite)}."


def part_words(half: Half) -> str:
    """The part of the timber cut first that the other is cut to: `Tie's west end lap`."""
    first = half.mate if half.mated else half.lie
    words = first.stick.pose.words
    part = "notch" if first.end is None else f"{words(first.end)} lap"
    return f"{first.stick.name}'s {part}"


def beyond_words(half: Half) -> str:
    """Where the waste at an end that laps lies: what goes is on one side of it only."""
    words = half.stick.pose.words
    found = []
    if half.depth > ZERO:
        found.append(f"on the side of the {words(half.cut_face)}")
    if half.tail is not None:
        found.append("beside the tail")
    where = " and ".join(found)
    return f"Towards the {words(half.tip)}, {where}." if where else ""


def follows(half: Half, size: str, tape: Tape) -> str:
    """What a size on one half goes by, in a sentence: the other timber as cut, or as measured."""
    if not half.mated:
        return lies_in_words(half.mate.stick, half.mate.wide, (half.mate.place,))
    as_cut = half.as_cut.get(size)
    if as_cut is None:
        return f"Follows {part_words(half)} as laid out; it has not been measured as cut."
    what = {"width": "wide, counted from its reference side", "length": "wide at its slot"}[size]
    return f"Follows {part_words(half)} as cut: {tape.text(as_cut)} {what}."


def as_placed(half: Half, tape: Tape) -> str:
    """What the bed goes by."""
    face = half.stick.pose.words(reference_for(half.lie.deep))
    if half.mated and half.as_cut.thickness is not None:
        cut = tape.text(half.as_cut.thickness)
        return f"Follows {part_words(half)} as cut: {cut} left of it."
    held = f"From the {face}, so that the faces come as placed whatever the sticks measure."
    if half.cut_face.is_reference:
        return held
    return f"{held} {measured_words(half.stick, half.lie.deep, (half.lie.place,))}"


def ledge_title(half: Half) -> str:
    """What the line of the other timber's own face is called."""
    mate = half.mate.stick
    face = half.mate.inner if half.mated else half.mate.outer
    return f"line of {mate.name}'s {mate.pose.words(face)}"


def ledge_words(half: Half) -> str:
    """What the line of the other timber's face bounds."""
    mate = half.mate.stick.name
    if half.tail is not None:
        return f"The tail is let in as far as this; beyond it the timber lies on {mate} in full."
    if half.slot:
        return f"The cog stands as high as {mate} itself, so the slot goes in to here."
    return f"What does not lie beside {mate} keeps its full width."
