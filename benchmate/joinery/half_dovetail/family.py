"""The wedged half-dovetail as the catalogue knows it: both sides of the joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import measure_task
from benchmate.joinery.half_dovetail import boring, cutting, findings, mortise, tail
from benchmate.joinery.half_dovetail.mortise_shape import MortiseShape, mortise_shape
from benchmate.joinery.half_dovetail.record import HalfDovetail
from benchmate.joinery.half_dovetail.shape import TailShape, tail_shape
from benchmate.measure.length import ZERO
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, told_on

KIND = "half-dovetail"
"""What the end of the tie is called."""


def features(joint: HalfDovetail, frame: Frame) -> tuple[Feature, ...]:
    """The tail on the tie and the mortise through the post. What stops one side stops the other."""
    tape, made = frame.tape, tail_shape(joint, frame)
    if made.run <= ZERO:
        return _without_length(joint, made, frame)
    received = mortise_shape(joint, made, frame)
    told = findings.told(made, received, tape)
    return (_tail(made, told, tape), _mortise(received, told, tape))


def _tail(made: TailShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        end_side(made, KIND, told, passes=True),
        cuts=tail.tail_cuts(made),
        lines=tail.tail_lines(made, tape),
        tasks=cutting.tail_tasks(made, tape),
        sizes=cutting.tail_sizes(made),
    )


def _mortise(received: MortiseShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return replace(
        mated_side(received, received.tail, told, noun="Mortise", at=received.span[0]),
        cuts=mortise.mortise_cuts(received),
        lines=mortise.mortise_lines(received, tape),
        tasks=boring.mortise_tasks(received),
    )


def _without_length(joint: HalfDovetail, made: TailShape, frame: Frame) -> tuple[Feature, ...]:
    """Both sides of a tenon that has no length: nothing to lay out until a size is put right."""
    told, post = findings.told(made, None, frame.tape), frame.stick(joint.into)
    return (
        replace(
            end_side(made, KIND, told),
            tasks=(measure_task(made.stick, *made.places),),
            awaits=(),
        ),
        Feature(
            id=joint.mortise,
            timber=post.id,
            title=f"Mortise for {made.stick.name}",
            at=ZERO,
            place=(joint.mortise,),
            tasks=(measure_task(post, joint.mortise),),
            findings=told_on(post.id, joint.mortise, told),
            mated=True,
        ),
    )


FAMILY = Family(name="wedged half-dovetail", table="joint", record=HalfDovetail, features=features)
