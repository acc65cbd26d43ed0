"""What can be wrong with a wedged half-dovetail, one function and one code each."""

from benchmate.frame.cheeks import cheek_outside
from benchmate.frame.mated import end_past_the_side, open_at_the_side, outside_the_side
from benchmate.frame.reduction import under_inner
from benchmate.joinery.half_dovetail.mortise_shape import MortiseShape
from benchmate.joinery.half_dovetail.shape import TailShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop

LEFT_BELOW_PLATE = Length.inches(8)
"""How much post a framer's rule leaves from the top of a tie to the underside of the plate.

Trade notes 2.5: Rogers-8in. It is one framer's rule, so less is a thing to look at.
"""


def no_length(shape: TailShape, tape: Tape) -> Finding | None:
    """The tenon has no length: the tie bears at the post's far face or past it.

    Example: a housing as deep as the post, or a tenon held short by all of it. Remedy: less of
    either, or a deeper post.
    """
    if shape.run > ZERO:
        return None
    return stop(
        "half-dovetail-no-length",
        shape.stick.id,
        shape.feature,
        f"From its shoulder to {shape.way_out} is {tape.text(shape.passed)}, and the tenon would "
        f"be {tape.text(shape.length)} long",
        "make the housing or held_short less, or the post deeper",
    )


def no_root(shape: TailShape, tape: Tape) -> Finding | None:
    """The flare takes the whole tenon at its shoulder.

    Example: a flare of 6" on a tie that is 6" deep. Remedy: less flare, or a deeper tie.
    """
    if shape.root > ZERO:
        return None
    return stop(
        "half-dovetail-no-root",
        shape.stick.id,
        shape.feature,
        f"The flare leaves {tape.text(shape.root)} of tenon at the shoulder",
        "make the flare less, or the tie deeper",
    )


def out_of_the_tie(shape: TailShape, tape: Tape) -> Finding | None:
    """The tail comes out of the tie: there is no wood for it at its deep end.

    It would come out short of its flare, and lie loose on the mortise's slope. Example: 7" at the
    shoulder and a 1" flare in a tie that measures 7-7/8". Remedy: another stick, or less of either.
    """
    if shape.tail <= shape.framed_edges:
        return None
    inner = "inner timber" if shape.stick.inner is not None else "tie"
    return stop(
        "half-dovetail-out-of-tie",
        shape.stick.id,
        shape.feature,
        f"At its end the tail is {tape.text(shape.tail)} deep, but the {inner} is only "
        f"{tape.text(shape.framed_edges)} there",
        "choose another stick, or make depth or flare less",
    )


def no_flare_left(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The tail came out no deeper at its end than at the shoulder: it would draw straight out.

    Usually the two as-cut depths were typed the wrong way round. Remedy: measure it again.
    """
    if shape.flare > ZERO:
        return None
    tail = shape.tail
    return stop(
        "half-dovetail-no-flare",
        tail.stick.id,
        tail.feature,
        f"As cut the tenon is {tape.text(tail.real('width'))} deep at its shoulder and "
        f"{tape.text(tail.real('length'))} at its end: no tail",
        "measure both depths again from the straight edge; a tail without flare is lost",
    )


def cannot_come_in(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise is not tall enough at its entry for the tail's deep end.

    It comes in raised by the whole flare, so the wedge's thin end is at least that thick; in a
    housing more, as the mortise is lower at the face than at the shoulder. Example: a 1" flare and
    a wedge of 7/8" at its thin end. Remedy: a thicker wedge, or less flare.
    """
    if shape.wedge.thin >= shape.least_thin:
        return None
    words = shape.stick.pose.words(shape.entry)
    return stop(
        "half-dovetail-cannot-enter",
        shape.stick.id,
        shape.feature,
        f"The tail cannot come in from the {words}: the mortise is "
        f"{tape.text(shape.least_thin - shape.wedge.thin)} too low there",
        f"make wedge_thin at least {tape.text(shape.least_thin)}, or the flare less",
    )


def past_a_shoulder(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise or its housing runs past a shoulder of the post.

    It is tallest on the face the wedge is driven from. Remedy: a lower tie, a thinner wedge, or
    less flare.
    """
    over = shape.stick.past_room(*shape.span)
    if over <= ZERO:
        return None
    return stop(
        "half-dovetail-past-shoulder",
        shape.stick.id,
        shape.feature,
        f"The mortise, with its room for the wedge, runs {tape.text(over)} past a shoulder of "
        f"{shape.stick.name}",
        f"check where {shape.tail.stick.name} stands, or make the wedge thinner or the flare less",
    )


def near_the_head(shape: MortiseShape, tape: Tape) -> Finding | None:
    """Less than 8" of post is left from the top of the tie to the underside of the plate.

    The post can shear out above the tie when that pulls. A framer's rule asks 8" (trade notes 2.5:
    Rogers-8in); the engineer decides. Remedy: a lower tie.
    """
    left = shape.below_head
    if left >= LEFT_BELOW_PLATE or left < ZERO:
        return None
    return look(
        "half-dovetail-near-head",
        shape.stick.id,
        shape.feature,
        f"{shape.stick.name} has {tape.text(left)} left above the top of {shape.tail.stick.name}, "
        f"to its {shape.stick.pose.words(shape.head)} shoulder: a framer's rule asks "
        f"{tape.text(LEFT_BELOW_PLATE)}",
        f"lower {shape.tail.stick.name}, or ask the engineer",
    )


TAIL_CHECKS = (no_root, out_of_the_tie)
MORTISE_CHECKS = (no_flare_left, cannot_come_in, past_a_shoulder, near_the_head)


def told(tail: TailShape, mortise: MortiseShape | None, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint; a tenon without length has no mortise."""
    found = [
        no_length(tail, tape),
        cheek_outside(tail.cheeks, "half-dovetail-cheek-outside", tape),
        *(check(tail, tape) for check in TAIL_CHECKS),
    ]
    if mortise is not None:
        found += [check(mortise, tape) for check in MORTISE_CHECKS]
        found.append(outside_the_side(mortise.sides, "half-dovetail-mortise-outside", tape))
        found.append(open_at_the_side(mortise.sides, "half-dovetail-mortise-open"))
        found.append(end_past_the_side(mortise.sides, "half-dovetail-end-past-side", tape))
        found += under_inner(mortise.stick, mortise.feature, (mortise.feature,), tape)
    found += under_inner(tail.stick, tail.feature, tail.places, tape)
    return tuple(finding for finding in found if finding)
