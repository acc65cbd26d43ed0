"""What cannot be of pegs in any joint, one function and one code each."""

from benchmate.frame.pegs import Holes, Pegs
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.measure.section import Section
from benchmate.model.directions import Face
from benchmate.model.findings import Finding, look, stop
from benchmate.model.solids import Axis
from benchmate.model.stick import Stick, reference_for


def draw_too_large(
    pegs: Pegs, draw: Length, stick: Stick, feature: str, tape: Tape
) -> Finding | None:
    """The draw is as large as the hole, so the two holes pass one another by.

    `draw` is how far apart their centres are. No peg goes through. Example: a 1" draw of a 3/4"
    hole. Remedy: a smaller draw.
    """
    if draw < pegs.size:
        return None
    return stop(
        "peg-draw-too-large",
        stick.id,
        feature,
        f"A draw of {tape.text(draw)} moves a {tape.text(pegs.size)} hole clear of its mate",
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


def past_the_end(
    pegs: Pegs, length: Length, stick: Stick, feature: str, tape: Tape
) -> Finding | None:
    """A hole breaks out of the tenon's end.

    No wood holds the peg. `length` is the tenon's. Example: 1" holes 2" from the shoulder of a 2"
    stub. Remedy: nearer the shoulder, smaller, or a longer tenon.
    """
    reach = pegs.drawn + pegs.radius
    if reach < length:
        return None
    return stop(
        "peg-past-end",
        stick.id,
        feature,
        f"The {tape.text(pegs.size)} peg holes reach {tape.text(reach)} from the shoulder "
        f"of a tenon {tape.text(length)} long",
        "move the pegs nearer the shoulder, make them smaller, or the tenon longer",
    )


def past_the_shoulder(pegs: Pegs, stick: Stick, feature: str, tape: Tape) -> Finding | None:
    """A hole in the tenon runs across its shoulder line.

    The draw brings it there, or the pegs are too near from the start. Example: 3/4" from the
    shoulder with a 1" hole drawn 1/2". Remedy: less draw, or further from the shoulder.
    """
    over = pegs.radius - pegs.drawn
    if over <= ZERO:
        return None
    return stop(
        "peg-past-shoulder",
        stick.id,
        feature,
        f"The {tape.text(pegs.size)} peg holes in the tenon run {tape.text(over)} past its "
        "shoulder line",
        "set the pegs further from the shoulder, or make the draw or the holes less",
    )


def blind_too_short(
    pegs: Pegs, needed: Length, stick: Stick, feature: str, tape: Tape
) -> Finding | None:
    """Blind holes stop short of the tenon's far cheek.

    The peg would not go through the tenon. `needed` is how deep
    that cheek lies. Remedy: bore deeper, or right through.
    """
    depth = pegs.blind_depth
    if depth is None or depth >= needed:
        return None
    return stop(
        "peg-blind-short",
        stick.id,
        feature,
        f"Peg holes {tape.text(depth)} deep end inside the tenon: its far cheek is "
        f"{tape.text(needed)} in",
        "make blind_depth larger, or leave it out to bore right through",
    )


def blind_comes_out(
    pegs: Pegs, whole: Length, stick: Stick, feature: str, tape: Tape
) -> Finding | None:
    """Blind holes are as deep as the stick.

    They come out on its other face, which was to stay whole. `whole` is how deep it is. Remedy:
    bore less deep, or say that they go right through.
    """
    depth = pegs.blind_depth
    if depth is None or depth < whole:
        return None
    return look(
        "peg-blind-through",
        stick.id,
        feature,
        f"Blind peg holes {tape.text(depth)} deep come out of a stick that is {tape.text(whole)} "
        "there",
        "make blind_depth less, or leave it out to bore right through",
    )
