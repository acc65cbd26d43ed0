"""What can be wrong with a chamfer, one function and one code each."""

from benchmate.joinery.chamfer.shape import ChamferShape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.findings import Finding, Severity
from benchmate.model.solids import Axis


def stops_crossed(shape: ChamferShape, tape: Tape) -> Finding | None:
    """The stops lie the wrong way round or on one another, so there is no chamfer between them.

    Remedy: check which shoulder each is measured from.
    """
    if shape.near < shape.far:
        return None
    return _finding(
        "chamfer-stops-crossed",
        Severity.STOP,
        shape,
        f"The near stop at {tape.text(shape.near)} is not before the far stop at "
        f"{tape.text(shape.far)}",
        "check which shoulder each stop is measured from",
    )


def past_a_shoulder(shape: ChamferShape, tape: Tape) -> Finding | None:
    """The chamfer runs past a shoulder, into the joint (common practice, no source).

    A gap would show where the timber bears. Remedy: move the stop on to the body.
    """
    if shape.near >= ZERO and shape.far <= shape.stick.body:
        return None
    return _finding(
        "chamfer-past-shoulder",
        Severity.STOP,
        shape,
        f"The chamfer runs from {tape.text(shape.near)} to {tape.text(shape.far)}, past a "
        f"shoulder of a body {tape.text(shape.stick.body)} long",
        "move the stop on to the body, clear of the shoulder",
    )


def too_wide(shape: ChamferShape, tape: Tape) -> Finding | None:
    """The chamfer takes half a face or more.

    Remedy: a smaller leg.
    """
    smallest = min(
        shape.stick.depth(Axis.FIRST, *shape.places), shape.stick.depth(Axis.SECOND, *shape.places)
    )
    if shape.leg + shape.leg < smallest:
        return None
    return _finding(
        "chamfer-too-wide",
        Severity.STOP,
        shape,
        f"A leg of {tape.text(shape.leg)} takes half or more of a {tape.text(smallest)} face",
        "make the leg smaller",
    )


def no_room_for_block(shape: ChamferShape, tape: Tape) -> Finding | None:
    """The guide block would be clamped past the end of the stick.

    The tool has nothing to turn back against. Remedy: move the stop in, or stop by hand.
    """
    for end in (Face.REFERENCE_END, Face.FAR_END):
        at = shape.block_at(end)
        if at < shape.stick.start or at > shape.stick.finish:
            return _finding(
                "chamfer-no-room-for-block",
                Severity.NOTE,
                shape,
                f"The guide block for the {shape.stick.pose.words(end)} stop would sit past the "
                f"end of the stick, {tape.text(shape.block)} outside the stop",
                "move the stop in, or work that stop by hand",
            )
    return None


CHECKS = (stops_crossed, past_a_shoulder, too_wide, no_room_for_block)


def _finding(
    code: str, severity: Severity, shape: ChamferShape, message: str, remedy: str
) -> Finding:
    return Finding(
        code=code,
        severity=severity,
        timber=shape.stick.id,
        feature=shape.feature,
        message=message,
        remedy=remedy,
    )
