"""What can be wrong with a brace's end or its mortise, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.brace.shape import EndShape, HoleShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop
from benchmate.model.stick import reference_for


def cheek_outside(shape: EndShape, tape: Tape) -> Finding | None:
    """The far cheek lies in the air: the brace is too thin there for set-back and thickness.

    Example: a 1-1/2" tenon set back 1-1/2" in a brace that measures 2-7/8". Remedy: another stick,
    a thinner tenon, or less set-back.
    """
    room = shape.wide if shape.stick.inner else shape.real_wide
    if shape.far <= room:
        return None
    return stop(
        "brace-cheek-outside",
        shape.stick.id,
        shape.feature,
        f"The far cheek comes {tape.text(shape.far)} in from the reference face, but "
        f"{shape.stick.name} is only {tape.text(room)} there",
        "choose another stick, or make the tenon thinner or its set-back less",
    )


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
    start, finish = shape.along
    low, high = shape.stick.room
    over = max(low - start, finish - high)
    if over <= ZERO:
        return None
    return stop(
        "brace-past-shoulder",
        shape.stick.id,
        shape.feature,
        f"The mortise runs {tape.text(over)} past a shoulder of {shape.stick.name}",
        f"check the legs of {shape.brace.stick.name} and where its incline starts",
    )


def outside_the_side(shape: HoleShape, tape: Tape) -> Finding | None:
    """A side of the mortise lies in the air.

    The brace stands too far in or out across its timber. Remedy: check where both stand.
    """
    near, far = shape.across
    real = shape.stick.depth(shape.sides, shape.feature)
    if near >= ZERO and far <= real:
        return None
    return stop(
        "brace-mortise-outside",
        shape.stick.id,
        shape.feature,
        f"The mortise runs from {tape.text(near)} to {tape.text(far)} in from the reference face "
        f"of a stick that is {tape.text(real)} there",
        f"check where {shape.brace.stick.name} stands across {shape.stick.name}, and its set-back",
    )


def open_at_the_side(shape: HoleShape, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """A barefaced brace flush with its timber leaves the mortise without a wall.

    The tenon is then held on three sides only, and shows. Remedy: set-back, or a brace that stands
    further in.
    """
    near, far = shape.across
    if near and far != shape.stick.depth(shape.sides, shape.feature):
        return None
    reference = reference_for(shape.sides)
    words = shape.stick.pose.words(reference.opposite if near else reference)
    return look(
        "brace-mortise-open",
        shape.stick.id,
        shape.feature,
        f"The mortise has no wall at the {words}",
        "give the tenon set-back, or stand the brace further in",
    )


END_CHECKS = (cheek_outside, no_tenon_left)
HOLE_CHECKS = (through_far_face, past_a_shoulder, outside_the_side, open_at_the_side)


def told(end: EndShape, hole: HoleShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint."""
    found = [check(end, tape) for check in END_CHECKS]
    found += [check(hole, tape) for check in HOLE_CHECKS]
    return (
        *(finding for finding in found if finding),
        *under_inner(end.stick, end.feature, end.places, tape),
        *under_inner(hole.stick, hole.feature, (hole.feature,), tape),
    )
