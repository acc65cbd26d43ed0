"""What can be wrong with a rafter's head at a ridge, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.rafter.ridge.shape import HeadShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop


def passes_ridge(shape: HeadShape, tape: Tape) -> Finding | None:
    """The head comes wholly above or below the ridge, so it bears on nothing.

    Usually the two do not stand at the heights that were meant. Remedy: check where they lie.
    """
    rafter, ridge = shape.rafter, shape.ridge
    above = Length(rafter.up_at(shape.bears, rafter.real_deep) - ridge.real_top)
    below = Length(ridge.real_bottom - shape.highest)
    gap = max(above, below)
    if gap < ZERO:
        return None
    where = "above" if gap == above else "below"
    return stop(
        "ridge-missed",
        rafter.stick.id,
        shape.feature,
        f"The head of {rafter.stick.name} comes {tape.text(gap)} {where} {ridge.stick.name}",
        "check where the rafter's top edge runs and how high the ridge lies",
    )


def past_an_end(shape: HeadShape, tape: Tape) -> Finding | None:
    """The rafter stands past an end of the ridge.

    Remedy: check where the rafter stands along it.
    """
    return shape.ridge.off_the_end("ridge-off-the-end", tape)


def through_ridge(shape: HeadShape, tape: Tape) -> Finding | None:
    """The housing comes out of the far side of the ridge.

    Remedy: a smaller `let_in`, or a thicker ridge.
    """
    left = Length(shape.ridge.real_far - shape.bears)
    if left > ZERO:
        return None
    return stop(
        "ridge-through",
        shape.ridge.stick.id,
        shape.ridge.feature,
        f"The housing goes {tape.text(shape.recess)} in, which leaves {tape.text(left)} behind it",
        "make let_in less, or the ridge thicker",
    )


def no_seat(shape: HeadShape, tape: Tape) -> Finding | None:
    """The level seat lies under the ridge, so the end that is let in stands on nothing.

    Remedy: a deeper ridge, or a head that is not let in.
    """
    if not shape.let_in or shape.level > shape.ridge.real_bottom:
        return None
    under = Length(shape.ridge.real_bottom - shape.level)
    return stop(
        "ridge-no-seat",
        shape.ridge.stick.id,
        shape.ridge.feature,
        f"The seat of {shape.rafter.stick.name} would lie {tape.text(under)} under "
        f"{shape.ridge.stick.name}",
        "take a deeper ridge, or take let_in out",
    )


def seat_too_long(shape: HeadShape, tape: Tape) -> Finding | None:
    """The level seat comes out of the rafter's top edge: nothing is left above it.

    Remedy: a smaller `let_in`.
    """
    if not shape.let_in or shape.rafter.up_at(shape.ridge.near) > shape.level:
        return None
    return stop(
        "ridge-seat-too-long",
        shape.rafter.stick.id,
        shape.feature,
        f"A seat {tape.text(shape.let_in)} long comes out of the top edge",
        "make let_in less",
    )


def hangs_below(shape: HeadShape, tape: Tape) -> Finding | None:
    """The plumb cut comes lower than the ridge, so its lower edge bears on nothing.

    Common practice, no source: a ridge is at least as deep as the rafter's plumb cut. Remedy: a
    deeper ridge, or a lower one.
    """
    ridge, rafter = shape.ridge, shape.rafter
    over = Length(ridge.bottom - rafter.up_at(shape.bears, rafter.deep))
    if over <= ZERO or shape.highest <= ridge.bottom:
        return None
    return look(
        "ridge-shallow",
        rafter.stick.id,
        shape.feature,
        f"The plumb cut hangs {tape.text(over)} below {ridge.stick.name}",
        "take a deeper ridge, or set it lower; what it must be is for the engineer",
    )


CHECKS = (passes_ridge, past_an_end, through_ridge, no_seat, seat_too_long, hangs_below)


def told(shape: HeadShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one head at a ridge."""
    found = (check(shape, tape) for check in CHECKS)
    ridge = shape.ridge
    return (
        *(finding for finding in found if finding),
        *under_inner(shape.rafter.stick, shape.feature, shape.places, tape),
        *under_inner(ridge.stick, ridge.feature, (ridge.feature,), tape),
    )
