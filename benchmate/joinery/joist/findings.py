"""What can be wrong with a joist's end or its pocket, one function and one code each."""

from benchmate.frame.both_sides import both_under_inner
from benchmate.joinery.joist.shape import EndShape, Notch, PocketShape
from benchmate.joinery.joist.tail_shape import SocketShape, TailShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop


def end_too_deep(shape: EndShape | TailShape, tape: Tape) -> Finding | None:
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


def no_pocket(shape: Notch, tape: Tape) -> Finding | None:
    """The joist's bearing lies at the timber's top or above it, so there is nothing to cut.

    Usually the two do not stand at the levels that were meant. Remedy: check where they lie.
    """
    if shape.from_top > ZERO:
        return None
    return stop(
        "pocket-none",
        shape.stick.id,
        shape.feature,
        f"The {shape.noun.lower()}'s floor would lie {tape.text(-shape.from_top)} above the top of "
        f"{shape.stick.name}",
        "check the levels of the joist and of the timber it bears on",
    )


def through_below(shape: Notch, tape: Tape) -> Finding | None:
    """The pocket comes out of the underside.

    The joist would fall through. Remedy: a smaller `end_depth`, a deeper timber, or a higher joist.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "pocket-through-below",
        shape.stick.id,
        shape.feature,
        f"The {shape.noun.lower()} goes {tape.text(shape.from_top)} down, which leaves "
        f"{tape.text(shape.left_below)} under it",
        "make end_depth less, the timber deeper, or lay the joist higher",
    )


def through_behind(shape: Notch, tape: Tape) -> Finding | None:
    """The pocket comes out of the face across from the joist.

    Remedy: less bearing, or a wider timber.
    """
    if shape.left_behind > ZERO:
        return None
    return stop(
        "pocket-through-behind",
        shape.stick.id,
        shape.feature,
        f"The {shape.noun.lower()} goes {tape.text(shape.recess)} in, which leaves "
        f"{tape.text(shape.left_behind)} behind it",
        "make the bearing less, or the timber wider",
    )


def past_a_shoulder(shape: Notch, tape: Tape) -> Finding | None:
    """The pocket runs past a shoulder, into the timber's own tenon or off its end.

    Remedy: check where the joist lies.
    """
    stick = shape.stick
    over = stick.past_room(*shape.along)
    if over <= ZERO:
        return None
    return stop(
        "pocket-past-shoulder",
        stick.id,
        shape.feature,
        f"The {shape.noun.lower()} runs {tape.text(over)} past a shoulder of {stick.name}",
        "check where the joist lies and which way its side reference face looks",
    )


def slope_too_long(shape: EndShape, tape: Tape) -> Finding | None:
    """The sloping underside runs past the joist's other shoulder.

    Usually a slope typed for another joist. Remedy: a shorter `diminished`.
    """
    over = shape.recess + shape.diminished - shape.stick.body
    if not shape.sloped or over <= ZERO:
        return None
    return stop(
        "joist-slope-too-long",
        shape.stick.id,
        shape.feature,
        f"Its underside would slope {tape.text(over)} further than the joist is long",
        "make diminished less",
    )


def no_neck(shape: TailShape, tape: Tape) -> Finding | None:
    """The flares take the whole tail at its shoulder.

    Example: 2" of flare on each flank of a 4" joist. Remedy: less flare, or one flank straight.
    """
    if shape.neck > ZERO:
        return None
    return stop(
        "dovetail-no-neck",
        shape.stick.id,
        shape.feature,
        f"The flanks leave a neck of {tape.text(shape.neck)} at the shoulder",
        "make flare less, or leave one flank straight",
    )


def wedge_over_flare(shape: SocketShape, tape: Tape) -> Finding | None:
    """The room for the wedge is as much as the tail flares, so only the wedge holds it.

    Until it is driven the joist can be drawn straight out. Remedy: more flare, or less wedge.
    """
    flared = sum(shape.tail.flares, ZERO)
    if not shape.wedge or shape.wedge < flared:
        return None
    return look(
        "dovetail-loose-without-wedge",
        shape.stick.id,
        shape.feature,
        f"The room for the wedge, {tape.text(shape.wedge)}, is no less than the tail's flare of "
        f"{tape.text(flared)} in all",
        "make flare more or wedge less; until then only the wedge holds the joist",
    )


END_CHECKS = (end_too_deep, slope_too_long)
TAIL_CHECKS = (end_too_deep, no_neck)
POCKET_CHECKS = (no_pocket, through_below, through_behind, past_a_shoulder)


def told(end: EndShape, pocket: PocketShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of a joist's end in its pocket."""
    found = (*(check(end, tape) for check in END_CHECKS), *_of_notch(pocket, tape))
    return (*(each for each in found if each), *both_under_inner(end, pocket, tape))


def tail_told(tail: TailShape, socket: SocketShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of a dovetailed joist in its socket."""
    found = (
        *(check(tail, tape) for check in TAIL_CHECKS),
        *_of_notch(socket, tape),
        wedge_over_flare(socket, tape),
    )
    return (*(each for each in found if each), *both_under_inner(tail, socket, tape))


def _of_notch(notch: Notch, tape: Tape) -> tuple[Finding | None, ...]:
    return tuple(check(notch, tape) for check in POCKET_CHECKS)
