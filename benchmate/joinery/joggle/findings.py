"""What can be wrong with an abutting end or its notch, one function and one code each."""

from functools import partial

from benchmate.frame.both_sides import both_under_inner
from benchmate.frame.raking_hole import open_at_the_side, outside_the_side
from benchmate.frame.raking_tenon import cheek_outside
from benchmate.joinery.joggle.shape import EndShape, HoleShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop
from benchmate.model.work import Front

FAMILY = "joggle"

_LESS_SQUARE: dict[Front, str] = {
    "square to the rake": ', or the abutment "bisecting"',
    "bisecting": ', or the abutment "square to the face"',
    "square to the face": "",
}
"""What else leaves more wood, by how the abutment looks: one that leans back less."""


def no_sole_left(shape: EndShape, tape: Tape) -> Finding | None:
    """The abutment runs out of the heel's edge before it is as deep as the notch.

    The end is then cut right across, and what is left does not fill the notch. Example: 6" notched
    5" deep square to a rake of 45 degrees, where 4-1/4" is all it has. Remedy: a shallower notch, a
    deeper timber, or an abutment that is less square to the rake.
    """
    if shape.fits:
        return None
    return stop(
        "joggle-no-sole",
        shape.stick.id,
        shape.feature,
        f'An abutment "{shape.looks}" runs out of {shape.stick.name} before it is '
        f"{tape.text(shape.notch)} deep in {shape.into.name}",
        f"make the notch less deep or the timber deeper{_LESS_SQUARE[shape.looks]}",
    )


def no_tenon_left(shape: EndShape, tape: Tape) -> Finding | None:
    """The abutment cuts the whole tip of the tenon away.

    In line with the abutment the tenon runs out of the heel's edge before it ends. Remedy: a
    shorter tenon or a shallower notch, or a deeper timber.
    """
    if shape.left_at_tip > ZERO or not shape.fits:
        return None
    return stop(
        "joggle-tenon-runs-out",
        shape.stick.id,
        shape.feature,
        f"The tenon runs out of the edge with the heel {tape.text(-shape.left_at_tip)} before its "
        "end",
        "make the tenon shorter, the notch less deep, or the timber deeper",
    )


def through_far_face(shape: HoleShape, tape: Tape) -> Finding | None:
    """The mortise, or the notch itself, comes out of the far face.

    Remedy: a shorter tenon or a shallower notch, or a deeper timber.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "joggle-through",
        shape.stick.id,
        shape.feature,
        f"Notch and mortise go {tape.text(shape.depth)} in, but {shape.stick.name} is only "
        f"{tape.text(shape.real_into)} there",
        "make the notch, the tenon or the bottom clearance less, or the timber deeper",
    )


def no_relish(shape: HoleShape, tape: Tape) -> Finding | None:
    """The notch starts at a shoulder of its timber or beyond it: no wood is left for the thrust.

    Usually an incline that starts too far out. How much is enough is for the engineer; nothing is
    never enough. Remedy: check where the raking timber's incline runs, or let the other run on.
    """
    if shape.relish > ZERO:
        return None
    end = shape.stick.pose.words(shape.relish_end)
    return stop(
        "joggle-no-relish",
        shape.stick.id,
        shape.feature,
        f"The notch starts {tape.text(-shape.relish)} past the {end} of {shape.stick.name}: no "
        "wood is left to take the thrust",
        f"check where the incline of {shape.tenon.stick.name} runs, or make {shape.stick.name} "
        f"longer at its {end}",
    )


def past_a_shoulder(shape: HoleShape, tape: Tape) -> Finding | None:
    """The heel's side of the notch runs past the other shoulder of its timber.

    Remedy: check where the raking timber's incline runs.
    """
    start, finish = shape.along
    low, high = shape.stick.room
    over = finish - high if shape.onwards else low - start
    if over <= ZERO:
        return None
    return stop(
        "joggle-past-shoulder",
        shape.stick.id,
        shape.feature,
        f"The notch runs {tape.text(over)} past a shoulder of {shape.stick.name}",
        f"check where the incline of {shape.tenon.stick.name} runs",
    )


END_CHECKS = (partial(cheek_outside, FAMILY), no_sole_left, no_tenon_left)
HOLE_CHECKS = (
    through_far_face,
    no_relish,
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
