"""Sentences that several lines and tasks of a scarf share."""

from benchmate.joinery.scarf.shape import Half
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Direction, Face
from benchmate.model.feature import Beside
from benchmate.model.solids import Axis
from benchmate.model.stick import axis_from

ENGINEER = (
    "How long it is and where it stands are for the engineer: best over or near a support, and "
    "clear of brace mortises."
)
"""Over or near a support, clear of brace mortises: common practice, no source (trade notes 2.6)."""

RULE = (
    "A published rule asks 6 times the depth in oak, ash and elm and 12 in fir, without bolts; "
    "half of that with bolts, a third with bolts and indents."
)
"""Tredgold's rule as a building construction handbook gives it (trade notes 2.6, Rivington)."""


def beam_depth(half: Half) -> Length:
    """The depth that the published rule counts: plumb where the stick lies, else as halved."""
    if half.stick.pose.reference_end in (Direction.UP, Direction.DOWN):
        return half.stick.held(half.halved)
    plumb = half.stick.pose.face(Direction.UP)
    return half.stick.held(axis_from(plumb))


def times_deep(half: Half) -> str:
    """How many times the stick's depth the lap is long, to a tenth: `4.5`."""
    deep = beam_depth(half).nm
    whole, rest = divmod((20 * half.length.nm + deep) // (2 * deep), 10)
    return f"{whole}.{rest}" if rest else f"{whole}"


def lap_beside(half: Half, tape: Tape) -> Beside:
    """The whole lap, beside how many times the depth it is."""
    deep = tape.text(beam_depth(half))
    return Beside(half.length, f"of lap from tip to tip, {times_deep(half)} times the {deep} depth")


def follows(half: Half, tape: Tape) -> str:
    """What the lap of the stick that follows is laid out to; for the leading one, that it leads."""
    if half.leads:
        return f"{half.mate.name} is laid out to this lap as it comes out, so cut it first."
    name = half.mate.name
    known = [size for _, size in half.as_cut if size is not None]
    if not known:
        return f"Follows {name}'s lap as drawn; it has not been measured as cut."
    return f"Follows {name}'s lap as cut: {' and '.join(map(tape.text, known))}."


def words(half: Half, face: Face) -> str:
    """What a framer calls a side of the stick."""
    return half.stick.pose.words(face)


def kept_words(half: Half) -> str:
    """The face its lap keeps, as it is once the lap is cut."""
    first = "reduced " if half.halved in half.reduced() else ""
    return f"{first}{words(half, half.keeps)}"


def far_words(half: Half, axis: Axis) -> str:
    """The far face of an axis in words."""
    return words(half, Face.FAR_FIRST if axis is Axis.FIRST else Face.FAR_SECOND)
