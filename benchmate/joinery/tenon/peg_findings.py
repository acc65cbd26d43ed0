"""What cannot be of the pegs in a tenon, one function and one code each."""

from benchmate.frame.peg_findings import (
    blind_comes_out,
    blind_too_short,
    draw_too_large,
    hole_off_timber,
    holes_meet,
    past_the_end,
    past_the_shoulder,
)
from benchmate.joinery.tenon.pegged import Pegged
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def peg_findings(shape: Pegged, own: str, other: str, tape: Tape) -> tuple[Finding, ...]:
    """Everything that cannot be; `own` and `other` are the features it is told on."""
    pegs, stick = shape.pegs, shape.tenon.stick
    found = [
        draw_too_large(pegs, pegs.draw, stick, own, tape),
        holes_meet(pegs, stick, own, tape),
        past_the_end(pegs, shape.tenon.real("length"), stick, own, tape),
        outside_the_width(shape, own, tape),
        past_the_shoulder(pegs, stick, own, tape),
    ]
    if shape.bored is not None:
        mortise, stick = shape.bored.mortise, shape.bored.mortise.stick
        found += [
            hole_off_timber(shape.bored.holes, stick.section(mortise.feature), other, tape),
            blind_too_short(pegs, shape.bored.through_tenon, stick, other, tape),
            blind_comes_out(pegs, shape.bored.real_sides, stick, other, tape),
        ]
    return tuple(each for each in found if each)


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
