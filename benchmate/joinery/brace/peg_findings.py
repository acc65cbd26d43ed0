"""What cannot be of the pegs in a brace, one function and one code each."""

from benchmate.frame.peg_findings import (
    blind_comes_out,
    blind_too_short,
    draw_too_large,
    hole_off_timber,
    holes_meet,
    past_the_end,
    past_the_shoulder,
)
from benchmate.joinery.brace.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section
from benchmate.model.findings import Finding, stop
from benchmate.model.solids import Axis


def peg_findings(shape: Pegged, own: str, other: str, tape: Tape) -> tuple[Finding, ...]:
    """Everything that cannot be; `own` and `other` are the features it is told on."""
    pegs, brace, received = shape.pegs, shape.brace.stick, shape.hole.stick
    section = received.section(shape.hole.feature)
    found = (
        draw_too_large(pegs, shape.drawn_in_all, brace, own, tape),
        holes_meet(pegs, brace, own, tape),
        past_the_end(pegs, shape.brace.real("length"), brace, own, tape),
        past_the_shoulder(pegs, brace, own, tape),
        hole_off_timber(shape.own, _goes_in(shape), own, tape),
        at_the_nose(shape, other, tape),
        hole_off_timber(shape.bored.holes, section, other, tape),
        blind_too_short(pegs, shape.bored.through_tenon, received, other, tape),
        blind_comes_out(pegs, shape.bored.real_sides, received, other, tape),
    )
    return tuple(each for each in found if each)


def _goes_in(shape: Pegged) -> Section:
    """As much of the brace as goes into the other timber: by square rule its inner timber."""
    deep, wide = shape.brace.deep, shape.brace.wide
    return Section(deep, wide) if shape.brace.plumb is Axis.FIRST else Section(wide, deep)


def at_the_nose(shape: Pegged, feature: str, tape: Tape) -> Finding | None:
    """A hole in the cheeks runs out of the nose end of the mortise, which the brace bears on.

    The peg would lie against the end grain there. Example: a 1" hole 1/2" from it. Remedy: further
    in from the nose, or a smaller hole.
    """
    first, radius = shape.pegs.from_edges[0], shape.pegs.radius
    if first > radius:
        return None
    return stop(
        "brace-peg-at-nose",
        shape.hole.stick.id,
        feature,
        f"A {tape.text(shape.pegs.size)} peg hole {tape.text(first)} from the nose end of the "
        f"mortise in {shape.hole.stick.name} runs into that end",
        "make from_edge larger, or the holes smaller",
    )
