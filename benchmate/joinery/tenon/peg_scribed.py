"""The pegs of a scribed joint: tasks without lines, as nobody knows where it comes on the stick.

Their figures count from the shoulder and the edge that were scribed, so they hold all the same.
"""

from collections.abc import Sequence
from dataclasses import replace

from benchmate.frame.bored import Bored
from benchmate.frame.peg_steps import PEG_LINE
from benchmate.joinery.tenon.cutting import near_edge
from benchmate.joinery.tenon.peg_lines import bored_lines, tenon_lines
from benchmate.joinery.tenon.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.model.feature import Line, Reading, Task
from benchmate.model.words import lower_first


def scribed_tenon_tasks(shape: Pegged, tape: Tape) -> tuple[Task, ...]:
    """The marks on the tenon, measured from its scribed shoulder and its narrow edge."""
    return tuple(_as_task(line, line.readings) for line in tenon_lines(shape, tape))


def scribed_bored_tasks(shape: Pegged, bored: Bored, tape: Tape) -> tuple[Task, ...]:
    """The marks on the receiving timber, measured from the scribed mortise."""
    line, *others = bored_lines(shape, bored, tape)
    inwards = Reading(
        value=shape.pegs.from_shoulder, hook="place where the shoulder bears", way="straight in"
    )
    edge = f"mortise end at {shape.tenon.stick.name}'s {near_edge(shape.tenon)}"
    along = [
        Reading(value=each, hook=edge, way="towards the other end of the mortise")
        for each in shape.pegs.from_edges
    ]
    centres, depth = others[: len(along)], others[len(along) :]
    return (
        _as_task(replace(line, beside=line.beside[-2:], caution=""), (inwards,)),
        *(
            _as_task(replace(each, beside=()), (reading,))
            for each, reading in zip(centres, along, strict=True)
        ),
        *(_as_task(replace(each, beside=()), each.readings) for each in depth),
    )


def _as_task(line: Line, readings: Sequence[Reading]) -> Task:
    verb = "Strike the" if line.id == PEG_LINE else "Mark the"
    return Task(
        id=line.id,
        stage=line.stage,
        title=f"{verb} {lower_first(line.title)}",
        faces=line.faces,
        readings=tuple(readings),
        beside=line.beside,
        why=line.why,
        caution=line.caution,
    )
