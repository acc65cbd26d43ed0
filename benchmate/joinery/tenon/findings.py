"""What can be wrong with a tenon or its mortise, one function and one code each."""

from benchmate.frame.reduction import under_inner
from benchmate.joinery.tenon.mortise_shape import MortiseShape
from benchmate.joinery.tenon.shape import Passage, TenonShape
from benchmate.measure.length import ZERO, Length
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop
from benchmate.model.stick import reference_for


def cheek_outside(shape: TenonShape, tape: Tape) -> Finding | None:
    """The far cheek lies in the air: the stick is too small there for set-back and thickness.

    The tenon would come out thin on its far side. Example: a 2" tenon set back 2" in a stick that
    measures 3-7/8". By square rule it has to lie inside the inner timber, or the reduction would
    cut into it. Remedy: another stick, a thinner tenon or a smaller set-back.
    """
    inner = shape.stick.inner is not None
    room = shape.framed_cheeks if inner else shape.real_cheeks
    if shape.far <= room:
        return None
    return stop(
        "tenon-cheek-outside",
        shape.stick.id,
        shape.feature,
        f"The far cheek comes {tape.text(shape.far)} in from the reference face, but the "
        f"{'inner timber' if inner else 'stick'} is only {tape.text(room)} there",
        "make the tenon thinner or its set-back less"
        if inner
        else "choose another stick, or make the tenon thinner or its set-back less",
    )


def no_tenon_left(shape: TenonShape, tape: Tape) -> Finding | None:
    """The reliefs take the whole tenon.

    Example: 3" off one edge and 4" off the other of a 6" timber. Remedy: cut back less.
    """
    if shape.width > ZERO:
        return None
    return stop(
        "tenon-relief-too-wide",
        shape.stick.id,
        shape.feature,
        f"The reliefs leave no tenon: its width would be {tape.text(shape.width)}",
        "cut back less on one of the narrow edges",
    )


def edge_outside(shape: TenonShape, tape: Tape) -> Finding | None:
    """The far relief line lies in the air: the stick is smaller than drawn by all the relief.

    There is no wood left to cut back, so the tenon is narrower than drawn and its mortise would be
    too long. Remedy: take the relief off as nothing, or choose another stick.
    """
    if shape.far_edge <= shape.real_edges or shape.real_edges < shape.framed_edges:
        return None
    far = shape.stick.pose.words(reference_for(shape.edges).opposite)
    return stop(
        "tenon-edge-outside",
        shape.stick.id,
        shape.feature,
        f"The relief line on the {far} side comes {tape.text(shape.far_edge)} in from the "
        f"reference face, but the stick is only {tape.text(shape.real_edges)} there",
        "choose another stick, or make that relief larger",
    )


def no_tenon_through(shape: TenonShape, tape: Tape) -> Finding | None:
    """A tenon that goes through has no length: its timber bears at the far face or past it.

    Example: a housing as deep as the receiving timber, or held short by all of it. Remedy: less of
    either, or a deeper timber.
    """
    if shape.passage is None or shape.length > ZERO:
        return None
    wood, face, held_short = shape.passage
    return stop(
        "tenon-no-length",
        shape.stick.id,
        shape.feature,
        f"From its shoulder to {face} is {tape.text(wood)}, which less {tape.text(held_short)} "
        "held short leaves no tenon",
        "make the housing or held_short less, or the receiving timber deeper",
    )


def not_held_short(shape: TenonShape, tape: Tape) -> Finding | None:
    """The length of a tenon that goes through does not bring its end where it is said to be.

    It stops inside the timber with nothing said of it, or not as much short of flush as said, and
    may foul what is fixed there. Example: 7" through 8" of wood, held short by nothing. Remedy:
    leave the length out, or say how much it is held short.
    """
    if shape.passage is None or shape.goes_on:
        return None
    return end_comes_elsewhere(shape, shape.passage, shape.length, tape)


def end_comes_elsewhere(
    shape: TenonShape, passage: Passage, length: Length, tape: Tape
) -> Finding | None:
    """What is told where a tenon does not end as far short of a face, or past it, as it is said to.

    `length` is what of it lies in the wood it passes there.
    """
    wood, face, held_short = passage
    short = wood - length
    if short == held_short or (short < ZERO and not held_short):
        return None
    ends = "short" if short >= ZERO else "proud"
    return look(
        "tenon-not-held-short",
        shape.stick.id,
        shape.feature,
        f"The tenon ends {tape.text(abs(short))} {ends} of {face}, but held_short says "
        f"{tape.text(held_short)}",
        "make the tenon's length and held_short agree",
    )


def through_far_face(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise comes out of the far face, though its tenon is not said to go through.

    The tenon is longer than the wood that receives it. Remedy: a shorter tenon or a deeper timber,
    or a tenon that goes through.
    """
    if shape.through or shape.left_below > ZERO:
        return None
    key = "beyond_through" if shape.past else "through"
    return stop(
        "mortise-through",
        shape.stick.id,
        shape.feature,
        f"The mortise goes {tape.text(shape.recess + shape.depth)} in, but the stick is only "
        f"{tape.text(shape.real_into)} there",
        "make the tenon or the bottom clearance shorter, or the receiving timber deeper; or write "
        f"{key} = true",
    )


def off_the_end(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise runs off the end of its timber.

    Usually a position measured to the wrong face, or a relief forgotten. Remedy: check `at` and
    which way the post's reference face looks.
    """
    relish, end = shape.relish
    if relish >= ZERO:
        return None
    words = shape.stick.pose.words(end)
    return stop(
        "mortise-off-the-end",
        shape.stick.id,
        shape.feature,
        f"The mortise runs {tape.text(-relish)} past the {words}",
        f"check where {shape.tenon.stick.name} stands, which way its reference faces look and its "
        "relief",
    )


def into_a_tenon(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise or its housing is cut into the receiving timber's own tenon, past its shoulder.

    Usually a position measured from the end where the shoulder was meant. Remedy: measure from the
    reference shoulder, and keep the whole of a housed end on the body.
    """
    stick = shape.stick
    spans = (shape.along, shape.end_along) if shape.housed else (shape.along,)
    low, high = stick.room
    over = max(
        low - min(start for start, _ in spans) if stick.near else ZERO,
        max(finish for _, finish in spans) - high if stick.far else ZERO,
    )
    relish, _ = shape.relish
    if over <= ZERO or relish < ZERO:
        return None
    return stop(
        "mortise-into-tenon",
        stick.id,
        shape.feature,
        f"The {'housing' if shape.housed else 'mortise'} runs {tape.text(over)} past a shoulder, "
        "into this timber's own tenon",
        f"check where {shape.tenon.stick.name} stands: it counts from the reference shoulder, not "
        "the end",
    )


def open_at_the_end(shape: MortiseShape, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """No wood is left between the mortise and the end of its timber.

    The mortise is open there and its tenon is held on three sides only. Remedy: cut the tenon
    back on that edge, or let the timber run on.
    """
    relish, end = shape.relish
    if relish:
        return None
    return look(
        "mortise-open-at-end",
        shape.stick.id,
        shape.feature,
        f"The mortise leaves no relish to the {shape.stick.pose.words(end)}: it is open",
        "relieve the tenon on that edge, or let the receiving timber run on",
    )


def outside_the_side(shape: MortiseShape, tape: Tape) -> Finding | None:
    """A side of the mortise lies in the air.

    The post stands too far in or out across its timber. Remedy: check `inset` and set-back.
    """
    near, far = shape.across
    if near >= ZERO and far <= shape.real_sides:
        return None
    return stop(
        "mortise-outside",
        shape.stick.id,
        shape.feature,
        f"The mortise runs from {tape.text(near)} to {tape.text(far)} in from the reference face "
        f"of a stick that is {tape.text(shape.real_sides)} there",
        "check where the two stand, the set-back and which way the reference faces look",
    )


def open_at_the_side(shape: MortiseShape, tape: Tape) -> Finding | None:  # noqa: ARG001 - a check
    """A side of the mortise lies in a face of its timber, so it is open all along.

    Its tenon is held on three sides only, and shows. Remedy: more set-back, or stand the tenoned
    timber further in.
    """
    near, far = shape.across
    if near and far != shape.real_sides:
        return None
    reference = reference_for(shape.sides)
    open_at = reference.opposite if near else reference
    return look(
        "mortise-open-at-side",
        shape.stick.id,
        shape.feature,
        f"The mortise has no wall at the {shape.stick.pose.words(open_at)}",
        "give the tenon more set-back, or stand its timber further in",
    )


def end_past_the_side(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The tenoned timber stands out past a face of the one that receives it.

    Part of its shoulder bears on nothing. Example: a tie 2" clear of its post's outside face.
    Remedy: check where the two stand.
    """
    near, far = shape.end_across
    low, high = -near, far - shape.framed_sides
    over = max(low, high)
    if over <= ZERO:
        return None
    reference = reference_for(shape.sides)
    past = shape.stick.pose.words(reference if low == over else reference.opposite)
    return look(
        "end-past-side",
        shape.stick.id,
        shape.feature,
        f"{shape.tenon.stick.name} stands {tape.text(over)} out past the {past} of "
        f"{shape.stick.name}",
        "check where the two stand, if that is not meant",
    )


def bearing_face_off(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The shoulder bears on a far face that does not lie where it was drawn.

    The receiving timber's reference face then stands too high, or too low, at this joint by as
    much as the stick is over or under there. Remedy: reduce the stick to its drawn depth at the
    bearing, or make the tenoned timber that much shorter or longer.
    """
    name = shape.tenon.stick.name
    over = shape.real_into - shape.drawn_into
    follows = shape.tenon.stick.placed or shape.stick.inner is not None
    if shape.entry.is_reference or follows or not over:
        return None
    pose = shape.stick.pose
    entry, reference = pose.words(shape.entry), pose.words(shape.entry.opposite)
    return look(
        "mortise-bearing-off",
        shape.stick.id,
        shape.feature,
        (
            f"The {entry}, where the shoulder bears, lies {tape.text(shape.real_into)} from the "
            f"{reference}, drawn {tape.text(shape.drawn_into)}: the {reference} would stand "
            f"{tape.text(abs(over))} {'proud' if over > ZERO else 'low'} here"
        ),
        (
            f"reduce the stick to {tape.text(shape.drawn_into)} at the bearing, or make {name} "
            f"{tape.text(over)} shorter"
            if over > ZERO
            else f"make {name} {tape.text(-over)} longer, or choose another stick"
        ),
    )


def under_inner_section(
    tenon: TenonShape, mortise: MortiseShape | None, tape: Tape
) -> tuple[Finding, ...]:
    """Either stick is smaller at the joint than its inner timber: see `under_inner`."""
    sides = [(tenon.stick, tenon.feature, tenon.places)]
    if mortise is not None:
        sides.append((mortise.stick, mortise.feature, (mortise.feature,)))
    return tuple(finding for side in sides for finding in under_inner(*side, tape, scribable=True))


TENON_CHECKS = (cheek_outside, no_tenon_left, edge_outside, no_tenon_through, not_held_short)
MORTISE_CHECKS = (
    through_far_face,
    off_the_end,
    into_a_tenon,
    open_at_the_end,
    outside_the_side,
    open_at_the_side,
    end_past_the_side,
    bearing_face_off,
)
