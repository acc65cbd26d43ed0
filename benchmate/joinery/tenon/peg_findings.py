"""What cannot be of the pegs in a tenon, one function and one code each."""

from benchmate.frame.peg_findings import draw_too_large, hole_off_timber, holes_meet
from benchmate.joinery.tenon.pegged import Bored, Pegged
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop


def peg_findings(shape: Pegged, own: str, other: str, tape: Tape) -> tuple[Finding, ...]:
    """Everything that cannot be; `own` and `other` are the features it is told on."""
    stick = shape.tenon.stick
    found = [check(shape.pegs, stick, own, tape) for check in (draw_too_large, holes_meet)]
    found += [check(shape, own, tape) for check in TENON_CHECKS]
    if shape.bored is not None:
        section = shape.bored.mortise.stick.section(shape.bored.mortise.feature)
        found.append(hole_off_timber(shape.bored.holes, section, other, tape))
        found += [check(shape.bored, other, tape) for check in BORED_CHECKS]
    return tuple(each for each in found if each)


def past_the_end(shape: Pegged, feature: str, tape: Tape) -> Finding | None:
    """A hole breaks out of the tenon's end.

    No wood holds the peg. Example: 1" holes 2" from the shoulder of a 2" stub. Remedy: nearer the
    shoulder, smaller, or a longer tenon.
    """
    reach, length = shape.pegs.drawn + shape.pegs.radius, shape.tenon.real("length")
    if reach < length:
        return None
    return stop(
        "peg-past-end",
        shape.tenon.stick.id,
        feature,
        f"The {tape.text(shape.pegs.size)} peg holes reach {tape.text(reach)} from the shoulder "
        f"of a tenon {tape.text(length)} long",
        "move the pegs nearer the shoulder, make them smaller, or the tenon longer",
    )


def outside_the_width(shape: Pegged, feature: str, tape: Tape) -> Finding | None:
    """A hole breaks out of a narrow edge of the tenon.

    Example: two pegs 4" apart in a tenon 4" wide. Remedy: move it in, or fewer pegs.
    """
    first, last, radius = shape.pegs.from_edges[0], shape.pegs.from_edges[-1], shape.pegs.radius
    wide = shape.tenon.real("width")
    if first > radius and last + radius < wide:
        return None
    return stop(
        "peg-outside-tenon",
        shape.tenon.stick.id,
        feature,
        f"The {tape.text(shape.pegs.size)} peg holes run from {tape.text(first - radius)} to "
        f"{tape.text(last + radius)} across a tenon {tape.text(wide)} wide",
        "move the pegs in from its edges, closer together, or make them smaller or fewer",
    )


def past_the_shoulder(shape: Pegged, feature: str, tape: Tape) -> Finding | None:
    """A hole in the tenon runs across its shoulder line.

    The draw brings it there, or the pegs are too near from the start. Example: 3/4" from the
    shoulder with a 1" hole drawn 1/2". Remedy: less draw, or further from the shoulder.
    """
    over = shape.pegs.radius - shape.pegs.drawn
    if over <= ZERO:
        return None
    return stop(
        "peg-past-shoulder",
        shape.tenon.stick.id,
        feature,
        f"The {tape.text(shape.pegs.size)} peg holes in the tenon run {tape.text(over)} past its "
        "shoulder line",
        "set the pegs further from the shoulder, or make the draw or the holes less",
    )


def blind_too_short(bored: Bored, feature: str, tape: Tape) -> Finding | None:
    """Blind holes stop short of the tenon's far cheek.

    The peg would not go through the tenon. Remedy: bore deeper, or right through.
    """
    depth, needed = bored.holes.pegs.blind_depth, bored.through_tenon
    if depth is None or depth >= needed:
        return None
    return stop(
        "peg-blind-short",
        bored.mortise.stick.id,
        feature,
        f"Peg holes {tape.text(depth)} deep end inside the tenon: its far cheek is "
        f"{tape.text(needed)} in",
        "make blind_depth larger, or leave it out to bore right through",
    )


def blind_comes_out(bored: Bored, feature: str, tape: Tape) -> Finding | None:
    """Blind holes are as deep as the stick.

    They come out on its other face, which was to stay whole. Remedy: bore less deep, or say that
    they go right through.
    """
    depth, whole = bored.holes.pegs.blind_depth, bored.mortise.real_sides
    if depth is None or depth < whole:
        return None
    return look(
        "peg-blind-through",
        bored.mortise.stick.id,
        feature,
        f"Blind peg holes {tape.text(depth)} deep come out of a stick that is {tape.text(whole)} "
        "there",
        "make blind_depth less, or leave it out to bore right through",
    )


TENON_CHECKS = (past_the_end, outside_the_width, past_the_shoulder)
BORED_CHECKS = (blind_too_short, blind_comes_out)
