"""What can be wrong with a joist's tenon or its mortise, one function and one code each."""

from benchmate.frame.both_sides import both_under_inner
from benchmate.joinery.joist_tenon.hole_shape import HoleShape
from benchmate.joinery.joist_tenon.shape import EndShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, look, stop


def no_room_above(shape: EndShape, tape: Tape) -> Finding | None:
    """The tenon comes to the joist's top or above it, which leaves the haunch no room.

    Example: a soffit tenon 7" deep on a 7" joist; or a tusk tenon on the centre line of a shallow
    beam. Remedy: a thinner or a lower tenon; `set_back` for a tusk tenon.
    """
    near = shape.part.near
    if near > ZERO or (near == ZERO and not shape.part.haunch):
        return None
    return stop(
        "joist-tenon-at-the-top",
        shape.stick.id,
        shape.feature,
        f"The tenon's upper cheek would lie {tape.text(near)} below the joist's top, which leaves "
        f"no room for its {shape.haunch_word}",
        f"make the tenon thinner{_or_lower(shape)}",
    )


def _or_lower(shape: EndShape) -> str:
    return ", or write set_back for a lower one" if shape.part.usual else " or above_soffit less"


def no_tenon_left(shape: EndShape, tape: Tape) -> Finding | None:
    """The joist is so much smaller than drawn that a flush tenon has no depth left.

    Its upper cheek is held from the top, and its lower one is the joist's own underside. Remedy:
    another stick, or a thicker tenon.
    """
    if shape.thickness > ZERO:
        return None
    return stop(
        "joist-tenon-none",
        shape.stick.id,
        shape.feature,
        f"The tenon would be {tape.text(shape.thickness)} deep",
        "choose another stick, or make the tenon thicker",
    )


def below_the_joist(shape: EndShape, tape: Tape) -> Finding | None:
    """The underside of what goes in, tusk or tenon, lies in the air below the joist.

    Example: a tusk tenon on the centre line of a 12" beam, on a 7" joist. Remedy: a higher tenon,
    a smaller tusk, or a deeper joist.
    """
    inner = shape.stick.inner is not None
    room = shape.framed if inner else shape.real_deep
    if shape.part.lowest <= room:
        return None
    what = "tusk" if shape.part.tusk else "tenon"
    return stop(
        "joist-tenon-below-the-joist",
        shape.stick.id,
        shape.feature,
        f"The underside of the {what} would lie {tape.text(shape.part.lowest)} below the joist's "
        f"top, but the {'inner timber' if inner else 'joist'} is only {tape.text(room)} deep there",
        "make tusk_height or set_back less, or choose a deeper joist"
        if shape.part.tusk
        else "choose another stick, or make above_soffit more",
    )


def haunch_past_the_tenon(shape: EndShape, tape: Tape) -> Finding | None:
    """The haunch goes in further than the tenon under it.

    Then the tenon is no tenon. Remedy: a longer tenon or less haunch.
    """
    if shape.part.haunch < shape.part.length:
        return None
    key = shape.haunch_word
    return stop(
        "joist-haunch-past-tenon",
        shape.stick.id,
        shape.feature,
        f"The {key} goes in {tape.text(shape.part.haunch)}, but the tenon is only "
        f"{tape.text(shape.part.length)} long",
        f"make {key} less, or the tenon longer",
    )


def tusk_past_the_tenon(shape: EndShape, tape: Tape) -> Finding | None:
    """The tusk is let in as far as the tenon goes, or further.

    Remedy: a longer tenon or less tusk.
    """
    if shape.part.tusk < shape.part.length:
        return None
    return stop(
        "joist-tusk-past-tenon",
        shape.stick.id,
        shape.feature,
        f"The tusk is let in {tape.text(shape.part.tusk)}, but the tenon is only "
        f"{tape.text(shape.part.length)} long",
        "make tusk less, or the tenon longer",
    )


def through_behind(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise comes out of the face across from the joist.

    Remedy: a shorter tenon, or a wider beam.
    """
    if shape.left_behind > ZERO:
        return None
    return stop(
        "joist-mortise-through",
        shape.stick.id,
        shape.feature,
        f"The mortise goes {tape.text(shape.housing.recess + shape.depth)} in, which leaves "
        f"{tape.text(shape.left_behind)} behind it",
        "make the tenon or the bottom clearance less, or the beam wider",
    )


def through_below(shape: HoleShape, tape: Tape) -> Finding | None:
    """What the joist bears on comes out of the beam's underside.

    Usually a joist that is deeper than its beam, or lies too low. Remedy: a higher joist or tenon.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "joist-mortise-below",
        shape.stick.id,
        shape.feature,
        f"It leaves {tape.text(shape.left_below)} of {shape.stick.name} under it to bear on",
        "raise the joist or its tenon, or choose a deeper beam",
    )


def open_above(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise has no upper side: the tenon comes to the beam's top, or above it.

    Usually two timbers that do not lie at the levels that were meant. Remedy: check the levels; a
    joist pocket is the joint for an end that drops in from above.
    """
    if shape.left_above > ZERO:
        return None
    return stop(
        "joist-mortise-above",
        shape.stick.id,
        shape.feature,
        f"The mortise's upper side would lie {tape.text(-shape.left_above)} above the top of "
        f"{shape.stick.name}",
        "check the levels of the joist and the beam, or drop the joist into a pocket",
    )


def past_a_shoulder(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise runs past a shoulder of the beam, into its own tenon or off its end.

    Remedy: check where the joist lies.
    """
    stick, wide = shape.stick, shape.housing.along if shape.housing.cut else shape.along
    over = stick.past_room(min(wide[0], shape.along[0]), max(wide[1], shape.along[1]))
    if over <= ZERO:
        return None
    return stop(
        "joist-mortise-past-shoulder",
        stick.id,
        shape.feature,
        f"The mortise runs {tape.text(over)} past a shoulder of {stick.name}",
        "check where the joist lies and which way its side reference face looks",
    )


def end_past_the_beam(shape: HoleShape, tape: Tape) -> Finding | None:
    """The joist's underside hangs below the beam, so part of its shoulder comes up to nothing.

    It may be meant, where a shallow beam carries deep joists. Remedy: check the levels.
    """
    low, high = shape.housing.across
    over = high - shape.stick.framed(shape.plumb, shape.feature) if shape.downwards else -low
    if over <= ZERO:
        return None
    return look(
        "joist-below-the-beam",
        shape.stick.id,
        shape.feature,
        f"{shape.joist.stick.name} hangs {tape.text(over)} below {shape.stick.name}",
        "check the levels of the two, if that is not meant",
    )


END_CHECKS = (
    no_room_above,
    no_tenon_left,
    below_the_joist,
    haunch_past_the_tenon,
    tusk_past_the_tenon,
)
HOLE_CHECKS = (through_behind, through_below, open_above, past_a_shoulder, end_past_the_beam)


def told(end: EndShape, hole: HoleShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint."""
    found = [check(end, tape) for check in END_CHECKS]
    found += [check(hole, tape) for check in HOLE_CHECKS]
    return (
        *(finding for finding in found if finding),
        *both_under_inner(end, hole, tape),
    )
