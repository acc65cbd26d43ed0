"""What can be wrong with a joist's end or its pocket, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.joist.shape import EndShape, PocketShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def end_too_deep(shape: EndShape, tape: Tape) -> Finding | None:
    """The end is to be deeper than the joist is there, so its bearing would lie in the air.

    Example: an end of 5-1/2" on a joist that measures 5-3/8". Remedy: another stick, or a smaller
    `end_depth`. An end as deep as the inner timber is `under_inner`'s to tell of.
    """
    real = shape.stick.depth(shape.plumb, *shape.places)
    if shape.deep <= real or real < shape.stick.framed(shape.plumb, *shape.places):
        return None
    return stop(
        "joist-end-too-deep",
        shape.stick.id,
        shape.feature,
        f"The end is to be {tape.text(shape.deep)} deep, but the joist is only "
        f"{tape.text(real)} there",
        "choose another stick, or make end_depth less",
    )


def no_pocket(shape: PocketShape, tape: Tape) -> Finding | None:
    """The joist's bearing lies at the timber's top or above it, so there is nothing to cut.

    Usually the two do not stand at the levels that were meant. Remedy: check where they lie.
    """
    if shape.from_top > ZERO:
        return None
    return stop(
        "pocket-none",
        shape.stick.id,
        shape.feature,
        f"The pocket's floor would lie {tape.text(-shape.from_top)} above the top of "
        f"{shape.stick.name}",
        "check the levels of the joist and of the timber it bears on",
    )


def through_below(shape: PocketShape, tape: Tape) -> Finding | None:
    """The pocket comes out of the underside.

    The joist would fall through. Remedy: a smaller `end_depth`, a deeper timber, or a higher joist.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "pocket-through-below",
        shape.stick.id,
        shape.feature,
        f"The pocket goes {tape.text(shape.from_top)} down, which leaves "
        f"{tape.text(shape.left_below)} under it",
        "make end_depth less, the timber deeper, or lay the joist higher",
    )


def through_behind(shape: PocketShape, tape: Tape) -> Finding | None:
    """The pocket comes out of the face across from the joist.

    Remedy: less bearing, or a wider timber.
    """
    if shape.left_behind > ZERO:
        return None
    return stop(
        "pocket-through-behind",
        shape.stick.id,
        shape.feature,
        f"The pocket goes {tape.text(shape.recess)} in, which leaves "
        f"{tape.text(shape.left_behind)} behind it",
        "make the bearing less, or the timber wider",
    )


def past_a_shoulder(shape: PocketShape, tape: Tape) -> Finding | None:
    """The pocket runs past a shoulder, into the timber's own tenon or off its end.

    Remedy: check where the joist lies.
    """
    stick = shape.stick
    low, high = stick.room
    over = max(low - shape.along[0], shape.along[1] - high)
    if over <= ZERO:
        return None
    return stop(
        "pocket-past-shoulder",
        stick.id,
        shape.feature,
        f"The pocket runs {tape.text(over)} past a shoulder of {stick.name}",
        "check where the joist lies and which way its side reference face looks",
    )


END_CHECKS = (end_too_deep,)
POCKET_CHECKS = (no_pocket, through_below, through_behind, past_a_shoulder)


def told(end: EndShape, pocket: PocketShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint."""
    found = [check(end, tape) for check in END_CHECKS]
    found += [check(pocket, tape) for check in POCKET_CHECKS]
    return (
        *(finding for finding in found if finding),
        *under_inner(end.stick, end.feature, end.places, tape),
        *under_inner(pocket.stick, pocket.feature, (pocket.feature,), tape),
    )
