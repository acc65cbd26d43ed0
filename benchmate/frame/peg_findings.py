"""What cannot be of pegs in any joint, one function and one code each."""

from benchmate.frame.pegs import Holes, Pegs
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section
from benchmate.model.directions import Face
from benchmate.model.findings import Finding, stop
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for


def draw_too_large(pegs: Pegs, stick: Stick, feature: str, tape: Tape) -> Finding | None:
    """The draw is as large as the hole, so the two holes pass one another by.

    No peg goes through. Example: a 1" draw of a 3/4" hole. Remedy: a smaller draw.
    """
    if pegs.draw < pegs.size:
        return None
    return stop(
        "peg-draw-too-large",
        stick.id,
        feature,
        f"A draw of {tape.text(pegs.draw)} moves a {tape.text(pegs.size)} hole clear of its mate",
        "make the draw less",
    )


def holes_meet(pegs: Pegs, stick: Stick, feature: str, tape: Tape) -> Finding | None:
    """Two holes run into one another.

    There is no wood between their pegs. Example: 1" holes 3/4" apart. Remedy: a larger spacing, or
    smaller holes.
    """
    if pegs.spacing is None or pegs.spacing > pegs.size:
        return None
    return stop(
        "peg-holes-meet",
        stick.id,
        feature,
        f"Holes of {tape.text(pegs.size)} with centres {tape.text(pegs.spacing)} apart leave no "
        "wood between them",
        "make the spacing larger, or the holes smaller",
    )


def hole_off_timber(holes: Holes, section: Section, feature: str, tape: Tape) -> Finding | None:
    """A hole breaks out of an edge or an end of the timber it is bored in.

    Nothing holds the peg there. Example: 5" from the shoulder in a timber 5" deep. Remedy: move it
    in.
    """
    stick, radius = holes.stick, holes.pegs.radius
    wide = section.first if holes.aside is Axis.FIRST else section.second
    near = reference_for(holes.aside)
    over = {
        Face.REFERENCE_END: stick.start - min(at.along for at in holes.centres) + radius,
        Face.FAR_END: max(at.along for at in holes.centres) + radius - stick.finish,
        near: radius - min(at.deep for at in holes.centres),
        near.opposite: max(at.deep for at in holes.centres) + radius - wide,
    }
    face = max(over, key=lambda each: over[each])
    if over[face] < ZERO:
        return None
    return stop(
        "peg-off-timber",
        stick.id,
        feature,
        f"A {tape.text(holes.pegs.size)} peg hole would break out of the "
        f"{stick.pose.words(face)} of {stick.name}",
        "move the pegs in: nearer the shoulder, or along the tenon",
    )
