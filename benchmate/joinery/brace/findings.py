"""What can be wrong with a brace's end or its mortise, one function and one code each."""

from functools import partial

from benchmate.frame.both_sides import both_under_inner
from benchmate.frame.raking_hole import open_at_the_side, outside_the_side
from benchmate.frame.raking_tenon import cheek_outside
from benchmate.joinery.brace.shape import EndShape, HoleShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop


def no_tenon_left(shape: EndShape, tape: Tape) -> Finding | None:
    """The nose cuts the whole tip of the tenon away: the brace is too narrow for its length.

    Square to the shoulder the tenon runs out of the short edge before it ends. Example: a 4" tenon
    on a 3" brace at 45 degrees. Remedy: a shorter tenon, a wider brace, or a nose set less far in.
    """
    if shape.left_at_nose > ZERO:
        return None
    return stop(
        "brace-tenon-runs-out",
        shape.stick.id,
        shape.feature,
        f"The tenon runs out of the short edge {tape.text(-shape.left_at_nose)} before its end",
        "make the tenon shorter, the brace wider, or the nose less far in",
    )


def through_far_face(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise comes out of the far face.

    Remedy: a shorter tenon or less housing, or a deeper timber.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "brace-mortise-through",
        shape.stick.id,
        shape.feature,
        f"The mortise goes {tape.text(shape.recess + shape.depth)} in, but {shape.stick.name} is "
        f"only {tape.text(shape.real_into)} there",
        "make the tenon, the housing or the bottom clearance less, or the timber deeper",
    )


def past_a_shoulder(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise runs past a shoulder of its timber, or off its end.

    Usually a leg that is too long, or one counted from the wrong end. Remedy: check where the
    brace's incline starts and how long its legs are.
    """
    over = shape.stick.past_room(*shape.along)
    if over <= ZERO:
        return None
    return stop(
        "brace-past-shoulder",
        shape.stick.id,
        shape.feature,
        f"The mortise runs {tape.text(over)} past a shoulder of {shape.stick.name}",
        f"check the legs of {shape.tenon.stick.name} and where its incline starts",
    )


FAMILY = "brace"

END_CHECKS = (partial(cheek_outside, FAMILY), no_tenon_left)
HOLE_CHECKS = (
    through_far_face,
    past_a_shoulder,
    partial(outside_the_side, FAMILY),
    partial(open_at_the_side, FAMILY),
)


def told(end: EndShape, hole: HoleShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint."""
    found = [check(end, tape) for check in END_CHECKS]
    found += [check(hole, tape) for check in HOLE_CHECKS]
    return (
        *(finding for finding in found if finding),
        *both_under_inner(end, hole, tape),
    )
