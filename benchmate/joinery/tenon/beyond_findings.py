"""What can be wrong with a tenon that goes on past one timber into another."""

from benchmate.joinery.tenon.findings import (
    MORTISE_CHECKS,
    bearing_face_off,
    end_comes_elsewhere,
    end_past_the_side,
)
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def nothing_past(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The tenon ends inside the first timber, so nothing of it goes on into the next.

    Example: a tenon 7" long through an 8" plate, said to go on into the tie. Remedy: a longer one,
    or no third timber.
    """
    passage, length = shape.tenon.passage, shape.tenon.real("length")
    if passage is None or length > passage.wood:
        return None
    return stop(
        "tenon-nothing-past",
        shape.tenon.stick.id,
        shape.tenon.feature,
        f"The tenon is {tape.text(length)} long, and from its shoulder to {passage.face} is "
        f"{tape.text(passage.wood)}: nothing is left for {shape.stick.name}",
        'make the tenon longer, or take "beyond" out',
    )


def does_not_reach(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The tenon ends before it comes to the timber beyond.

    That one lies clear of the first by more than the tenon stands past it. Example: 2" past the
    plate, and a tie that lies 3" above it. Remedy: a longer tenon, or another place for the tie.
    """
    if shape.length > ZERO:
        return None
    face = shape.stick.pose.words(shape.entry)
    return stop(
        "tenon-does-not-reach",
        shape.tenon.stick.id,
        shape.tenon.feature,
        f"The tenon ends {tape.text(-shape.length)} short of {shape.stick.name}'s {face}",
        f"make the tenon longer, or check where {shape.stick.name} lies",
    )


def ends_elsewhere(shape: MortiseShape, tape: Tape) -> Finding | None:
    """A tenon said to go through the timber beyond too does not end where it is said to.

    Its end stops inside, or stands out, with nothing said of it. Remedy: another length, or say how
    much it is held short.
    """
    if shape.passage is None:
        return None
    return end_comes_elsewhere(shape.tenon, shape.passage, shape.length, tape)


_NO_SHOULDER = (bearing_face_off, end_past_the_side)
"""What is asked only of the timber that the shoulder bears on."""

BEYOND_CHECKS = (
    nothing_past,
    does_not_reach,
    *(check for check in MORTISE_CHECKS if check not in _NO_SHOULDER),
    ends_elsewhere,
)
