"""What can be wrong with a rafter's tail, one function and one code each."""

from benchmate.joinery.rafter.tail.shape import TailShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def no_plumb_cut(shape: TailShape, tape: Tape) -> Finding | None:
    """The level cut is so long that it comes out of the top edge, and nothing is cut plumb.

    Example: a level cut of 10" on a 6" rafter at 12 in 12. Remedy: a smaller `level`.
    """
    if shape.level is None or shape.plumb_high > ZERO:
        return None
    return stop(
        "tail-level-too-long",
        shape.rafter.stick.id,
        shape.feature,
        f"A level cut of {tape.text(shape.level)} comes out of the top edge",
        "make level less, or the rafter deeper",
    )


def no_level_cut(shape: TailShape, tape: Tape) -> Finding | None:
    """The stick is so shallow that its underside lies above the level cut.

    The level cuts of a row of tails lie as high under the top edge as drawn. Remedy: another stick,
    or a greater `level`.
    """
    if shape.level is None or shape.level_long > ZERO:
        return None
    return stop(
        "tail-no-level",
        shape.rafter.stick.id,
        shape.feature,
        f"{shape.rafter.stick.name} is only {tape.text(shape.rafter.real_deep)} deep there, so its "
        "underside lies above the level cut",
        "choose another stick, or make level greater for the whole row",
    )


CHECKS = (no_plumb_cut, no_level_cut)


def told(shape: TailShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one tail."""
    found = (check(shape, tape) for check in CHECKS)
    return tuple(finding for finding in found if finding)
