"""What can be wrong where a pair of rafters meets, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.rafter.peak.shape import HeadShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def peaks_apart(shape: HeadShape, tape: Tape) -> Finding | None:
    """The two inclines do not end at one peak, so the heads do not meet.

    Example: one rise typed 1/32" more than the other. Remedy: let both inclines end at one point.
    """
    if not shape.tongue or shape.apart <= ZERO:
        return None
    pair = f"{shape.rafter.stick.name} and {shape.mate.stick.name}"
    return stop(
        "peak-apart",
        shape.rafter.stick.id,
        shape.feature,
        f"The top edges of {pair} end {tape.text(shape.apart)} apart",
        "let both inclines end at the same peak",
    )


def cheek_outside(shape: HeadShape, tape: Tape) -> Finding | None:
    """A cheek of the tongue or the fork lies in the air, or leaves nothing beside it.

    The rafter is too thin there, or the two do not stand in one plane. Example: a tongue of 2" set
    back 1" in a rafter that measures 2-7/8". Remedy: another stick, a thinner tongue, or check
    where the two stand.
    """
    wide = shape.rafter.wide if shape.rafter.stick.inner else shape.rafter.real_wide
    outside = [at for at in shape.cheek_depths if not ZERO < at < wide]
    if not outside:
        return None
    return stop(
        "peak-cheek-outside",
        shape.rafter.stick.id,
        shape.feature,
        f"A cheek comes {tape.text(outside[0])} in from the reference side, but "
        f"{shape.rafter.stick.name} is {tape.text(wide)} there",
        "choose another stick, make the tongue thinner or its set-back less, or check where the "
        "two stand",
    )


def side_by_side(shape: HeadShape, tape: Tape) -> Finding | None:
    """Butted heads that stand beside one another bear on nothing.

    Remedy: check where the two stand across the roof.
    """
    if shape.lapped or not shape.tongue or shape.beside < ZERO:
        return None
    return stop(
        "peak-beside",
        shape.rafter.stick.id,
        shape.feature,
        f"{shape.rafter.stick.name} stands {tape.text(shape.beside)} beside "
        f"{shape.mate.stick.name}, so their heads do not meet",
        "let both stand in the same plane",
    )


CHECKS = (peaks_apart, cheek_outside, side_by_side)


def told(first: HeadShape, second: HeadShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one pair."""
    shapes = (first, second)
    found = (check(shape, tape) for shape in shapes for check in CHECKS)
    return (
        *(finding for finding in found if finding),
        *(
            finding
            for shape in shapes
            for finding in under_inner(shape.rafter.stick, shape.feature, shape.places, tape)
        ),
    )
