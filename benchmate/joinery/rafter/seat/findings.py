"""What can be wrong with a rafter's seat, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.rafter.seat.shape import SeatShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop

LEAST_LEFT = Length.inches(2)
"""The least wood above a seat (US Navy Builder manual, trade notes 2.7, NAV-63); square to the
rafter, which is the lesser measure: Griffith-18 in the same notes measures it plumb."""

MOST_NOTCH = 3
"""A notch takes at most one part in so many of the rafter's depth (trade notes 2.7, Newman-65)."""


def passes_above(shape: SeatShape, tape: Tape) -> Finding | None:
    """The rafter's underside lies over the seat all the way, so it bears on nothing.

    Example: an 8" rafter whose top edge runs 10" over its plate. Remedy: check where both lie, or a
    deeper rafter.
    """
    if shape.long > ZERO:
        return None
    gap = Length(shape.rafter.up_at(shape.outer, shape.rafter.real_deep) - shape.level)
    return stop(
        "seat-above",
        shape.rafter.stick.id,
        shape.feature,
        f"{shape.rafter.stick.name} passes {tape.text(gap)} above {shape.plate.stick.name}, so "
        "there is no seat",
        "check where the rafter's top edge runs and how high the other timber lies",
    )


def passes_below(shape: SeatShape, tape: Tape) -> Finding | None:
    """The seat lies over the rafter's top edge: the notch would cut it in two.

    Usually the two do not stand at the heights that were meant. Remedy: check where they lie.
    """
    if shape.left_plumb > ZERO:
        return None
    return stop(
        "seat-below",
        shape.rafter.stick.id,
        shape.feature,
        f"The top edge of {shape.rafter.stick.name} lies {tape.text(-shape.left_plumb)} under its "
        f"seat on {shape.plate.stick.name}: the notch would cut it in two",
        "check where the rafter's top edge runs and how high the other timber lies",
    )


def no_plumb_line(shape: SeatShape, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """A rafter that ends at its plate's face, and is not cut plumb there.

    The seat is measured down that plumb cut, so there is nothing to measure it from. Remedy: a
    rafter tail cut plumb, or a foot further out.
    """
    if shape.bound or shape.tail:
        return None
    return stop(
        "seat-no-plumb",
        shape.rafter.stick.id,
        shape.feature,
        f"{shape.rafter.stick.name} ends at {shape.plate.stick.name}, and its foot is not cut "
        "plumb: there is no plumb line to measure the seat down",
        'give it a "rafter tail" with cut = "plumb", or let its incline start further out',
    )


def off_the_end(shape: SeatShape, tape: Tape) -> Finding | None:
    """The rafter stands past an end of the timber it is to bear on.

    Remedy: check where the rafter stands along it.
    """
    return shape.plate.off_the_end("seat-off-the-end", tape)


def no_step_left(shape: SeatShape, tape: Tape) -> Finding | None:
    """The step is as wide as the timber, or the seat ends before it begins.

    Remedy: a smaller `step`, or a wider timber.
    """
    if not shape.step or shape.long <= ZERO or shape.bearing > ZERO:
        return None
    return stop(
        "seat-no-room",
        shape.plate.stick.id,
        shape.plate.feature,
        f"A step of {tape.text(shape.step)} leaves no room for the seat on "
        f"{shape.plate.stick.name}",
        "make the step less, or the timber wider",
    )


def through_below(shape: SeatShape, tape: Tape) -> Finding | None:
    """The recess goes through the timber.

    Remedy: a smaller `let_in`, or a deeper timber.
    """
    left = Length(shape.level - shape.plate.bottom)
    if left > ZERO:
        return None
    return stop(
        "seat-through",
        shape.plate.stick.id,
        shape.plate.feature,
        f"The seat is let {tape.text(shape.let_in)} into {shape.plate.stick.name}, which leaves "
        f"{tape.text(left)} under it",
        "make let_in less, or the timber deeper",
    )


def notched_deep(shape: SeatShape, tape: Tape) -> Finding | None:
    """The notch takes more than a third of the rafter's depth (trade notes 2.7, Newman-65).

    Example: a 3-1/2" seat in a 6" rafter at 12 in 12 takes 41 in 100. Remedy: a shorter seat, which
    a higher top edge gives, or a deeper rafter; the engineer decides.
    """
    deep = shape.rafter.real_deep
    if MOST_NOTCH * shape.notch.nm <= deep.nm:
        return None
    return look(
        "seat-notch-deep",
        shape.rafter.stick.id,
        shape.feature,
        f"The notch takes {tape.text(shape.notch)} of {tape.text(deep)}, {shape.share} % of the "
        "rafter's depth: more than a third",
        "raise the top edge or take a deeper rafter; what it may be is for the engineer",
    )


def little_left(shape: SeatShape, tape: Tape) -> Finding | None:
    """Less than 2" of wood is left above the seat (trade notes 2.7, NAV-63).

    The rafter splits there. Remedy: raise the top edge, or take a deeper rafter.
    """
    if shape.left_square >= LEAST_LEFT or shape.left_plumb <= ZERO:
        return None
    return look(
        "seat-little-left",
        shape.rafter.stick.id,
        shape.feature,
        f"Only {tape.text(shape.left_square)} of wood is left above the seat, square to the "
        f"rafter: less than {tape.text(LEAST_LEFT)}",
        "raise the top edge or take a deeper rafter; what is enough is for the engineer",
    )


def past_the_far_face(shape: SeatShape, tape: Tape) -> Finding | None:
    """The seat is longer than the timber is wide: the notch runs on past it.

    It weakens the rafter and bears on nothing there. Remedy: raise the top edge.
    """
    over = Length(shape.inner - shape.plate.far)
    if over <= ZERO:
        return None
    plate = shape.plate
    return look(
        "seat-past-far-face",
        shape.rafter.stick.id,
        shape.feature,
        f"The seat runs {tape.text(over)} past the {plate.words(plate.near_face.opposite)} of "
        f"{plate.stick.name}",
        "raise the top edge, or take a wider timber",
    )


CHECKS = (
    passes_above,
    passes_below,
    no_plumb_line,
    off_the_end,
    no_step_left,
    through_below,
    notched_deep,
    little_left,
    past_the_far_face,
)


def told(shape: SeatShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one seat."""
    found = (check(shape, tape) for check in CHECKS)
    plate = shape.plate
    return (
        *(finding for finding in found if finding),
        *under_inner(shape.rafter.stick, shape.feature, shape.places, tape),
        *under_inner(plate.stick, plate.feature, (plate.feature,), tape),
    )
