"""Words and tasks that every family shares: cautions, and measuring the stick at a joint."""

from collections.abc import Iterable

from benchmate.measure.area import area_text
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Awaits, Reading, Stage, Task
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, Unmeasured

SAW = (
    "Support the timber on both sides of the kerf so it cannot pinch and kick the saw back; "
    "never wedge a guard open."
)
"""The guard: WAC 296-807-12005. Support against a pinched kerf: from memory."""

CHAINSAW = "Chainsaw: never cut with the upper quarter of the bar's nose. Guard legs, eyes, ears."
"""The nose: a published chainsaw article (trade notes, DIYnet); protection: LSU, VT-EHS."""

CHISEL = "Keep both hands behind the chisel's edge and pare away from yourself."
"""Sharp chisels away from the hand: from memory."""

DRILL = "A big bit can wrench the drill round: brace it, and clear chips with the bit stopped."
"""Brace large drills against torque: from memory."""

LEAVE_THE_LINE = "Leave the line: what is left on can be pared, what is gone cannot be put back."
"""Common practice, no source."""

STOP_AT_DEPTH = "Stop at the depth: deeper weakens the tenon's root."
"""Common practice, no source."""

CRISP = "Knifed lines stay crisp, and hatching on every face shows which side goes."
"""Common practice, no source."""

NOT_OVERALL = "Shoulder to shoulder, not overall: the tenon lies beyond."
"""Common practice, no source: say which of the two lengths is meant."""

AS_CUT = "as-cut"
"""The task after which the real sizes of a finished end are known, whatever its family."""

LIFT = "Lift no more than half a timber; roll and lever it, or fetch a second pair of hands."
"""Never more than half a timber: a published framers' methods article (trade notes, TFHQ)."""


def bears_on(name: str, long: Length, wide: Length, tape: Tape) -> str:
    """What area of wood a timber bears on, in a sentence that leaves the load to the engineer.

    Load over area is checked against compression across the grain (trade notes 2.4, FF-joist).
    """
    area = area_text(long, wide, metric=tape.graduation.metric)
    return f"{name} bears on {area} here; whether that carries its load is for the engineer."


def unsure(stick: Stick, *, beyond: Face | None = None) -> str:
    """The caution while a length follows faces that nobody has measured yet; empty otherwise.

    Of the whole stick, or of what lies `beyond` the shoulder at one end alone.
    """
    return unsure_of((each.words for each in _unmeasured(stick, beyond)), "length")


def unsure_of(faces: Iterable[str], what: str) -> str:
    """The caution while a length or a mark follows faces that nobody has measured yet."""
    named = " and ".join(faces)
    if not named:
        return ""
    return f"Measure {named} at the joint first: this {what} still goes by the size as drawn."


def awaits_measuring(stick: Stick, *, beyond: Face | None = None) -> tuple[Awaits, ...]:
    """The measuring that comes before a length that follows other timbers as they really are.

    Of the whole stick, or of what lies `beyond` the shoulder at one end alone.
    """
    return tuple(
        Awaits(each.timber, f"{each.place}/section") for each in _unmeasured(stick, beyond)
    )


def _unmeasured(stick: Stick, beyond: Face | None) -> tuple[Unmeasured, ...]:
    if beyond is not None:
        return tuple(each for end, each in stick.unsure_beyond.items() if end is beyond)
    return tuple(dict.fromkeys((*stick.unsure.values(), *stick.unsure_beyond.values())))


def measure_task(stick: Stick, *places: str) -> Task:
    """The task of checking the stick and typing its real section at a joint."""
    return Task(
        id="section",
        stage=Stage.MEASURE,
        title="Check square and wind, measure the section",
        faces=(Face.FIRST, Face.SECOND),
        readings=tuple(
            Reading(
                value=stick.depth(axis, *places),
                hook=stick.pose.words(face),
                way=f"across to the {stick.pose.words(face.opposite)}",
            )
            for axis, face in ((Axis.FIRST, Face.FIRST), (Axis.SECOND, Face.SECOND))
        ),
        why="Marks follow the real stick at this joint, not the size it was sawn to.",
        asks=Asks.SECTION,
        lasting=False,
    )
