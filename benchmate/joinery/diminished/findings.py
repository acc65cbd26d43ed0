"""What can be wrong with a diminished housing and its tenon, one function and one code each."""

from benchmate.frame.both_sides import both_under_inner
from benchmate.frame.cheeks import cheek_outside
from benchmate.frame.mated import end_past_the_side, open_at_the_side, outside_the_side
from benchmate.frame.reduction import side_words
from benchmate.joinery.diminished.mortise_shape import MortiseShape
from benchmate.joinery.diminished.shape import EndShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.findings import Finding, stop
from benchmate.model.stick import reference_for


def no_tenon_left(shape: EndShape, tape: Tape) -> Finding | None:
    """The reliefs take the whole tenon.

    Example: 4" off each edge of an 8" tie. Remedy: cut back less.
    """
    if shape.width > ZERO:
        return None
    return stop(
        "diminished-relief-too-wide",
        shape.stick.id,
        shape.feature,
        f"The reliefs leave no tenon: its width would be {tape.text(shape.width)}",
        "cut back less on one of the narrow edges",
    )


def edge_outside(shape: EndShape, tape: Tape) -> Finding | None:
    """The far relief line lies in the air: the stick is smaller than drawn by all the relief.

    The tenon comes out narrower than drawn and its mortise would be too long. Remedy: another
    stick, or more relief.
    """
    if shape.far_edge <= shape.real_edges or shape.real_edges < shape.framed_edges:
        return None
    far = side_words(shape.stick.pose.words(reference_for(shape.edges).opposite))
    return stop(
        "diminished-edge-outside",
        shape.stick.id,
        shape.feature,
        f"The relief line on the {far} comes {tape.text(shape.far_edge)} in from the reference "
        f"face, but the stick is only {tape.text(shape.real_edges)} there",
        "choose another stick, or make that relief larger",
    )


def through_far_face(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise comes out of the far face.

    Remedy: a shorter tenon or less housing, or a deeper timber.
    """
    if shape.left_below > ZERO:
        return None
    return stop(
        "diminished-mortise-through",
        shape.stick.id,
        shape.feature,
        f"The mortise goes {tape.text(shape.depth)} in, but {shape.stick.name} is only "
        f"{tape.text(shape.real_into)} there",
        "make the tenon, the housing or the bottom clearance less, or the timber deeper",
    )


def past_a_shoulder(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The mortise or its housing runs past a shoulder of its timber, or off its end.

    Remedy: check where both timbers stand.
    """
    over = shape.stick.past_room(*shape.span)
    if over <= ZERO:
        return None
    return stop(
        "diminished-past-shoulder",
        shape.stick.id,
        shape.feature,
        f"The joint runs {tape.text(over)} past a shoulder of {shape.stick.name}",
        f"check where {shape.made.stick.name} and {shape.stick.name} stand",
    )


def no_ledge(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The end's underside lies as low as that of the timber that carries it, or lower.

    The housing would come out below, and there would be no ledge to bear on. Example: a 10" joist
    level with the top of a 10" beam. Remedy: a shallower joist, or a deeper timber under it.
    """
    if shape.upright or shape.ledge_left > ZERO:
        return None
    return stop(
        "diminished-no-ledge",
        shape.stick.id,
        shape.feature,
        f"Under the ledge {tape.text(shape.ledge_left)} of {shape.stick.name} is left: there is "
        f"nothing for {shape.made.stick.name} to bear on",
        f"lay {shape.made.stick.name} higher, or choose a deeper {shape.stick.name}",
    )


def top_in_the_air(shape: MortiseShape, tape: Tape) -> Finding | None:
    """The end stands higher than the timber that carries it.

    The slope of its housing would start in the air, where nothing can be struck. Remedy: lay it
    level with the other's top or lower.
    """
    if shape.upright or shape.top_proud <= ZERO:
        return None
    return stop(
        "diminished-top-in-the-air",
        shape.stick.id,
        shape.feature,
        f"The top of {shape.made.stick.name} lies {tape.text(shape.top_proud)} above that of "
        f"{shape.stick.name}, and its housing starts there",
        f"lay {shape.made.stick.name} level with the top of {shape.stick.name}, or lower",
    )


def _past_the_side(shape: MortiseShape, tape: Tape) -> Finding | None:
    """Past a side of a post; past the top or the underside of a beam is told by its own checks."""
    if not shape.upright:
        return None
    return end_past_the_side(shape.sides, "diminished-end-past-side", tape)


END_CHECKS = (no_tenon_left, edge_outside)
MORTISE_CHECKS = (through_far_face, past_a_shoulder, no_ledge, top_in_the_air)


def told(made: EndShape, mortise: MortiseShape, tape: Tape) -> tuple[Finding, ...]:
    """Everything to tell of one joint."""
    found = [
        cheek_outside(made.cheeks, "diminished-cheek-outside", tape),
        *(check(made, tape) for check in END_CHECKS),
        *(check(mortise, tape) for check in MORTISE_CHECKS),
        outside_the_side(mortise.sides, "diminished-mortise-outside", tape),
        open_at_the_side(mortise.sides, "diminished-mortise-open"),
        _past_the_side(mortise, tape),
        *both_under_inner(made, mortise, tape),
    ]
    return tuple(finding for finding in found if finding)
