"""The tenon as the catalogue knows it: both sides of the joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.joinery.tenon import cutting, findings, mortise, scribed, tenoned
from benchmate.joinery.tenon.mortise_shape import MortiseShape, mortise_shape
from benchmate.joinery.tenon.peg_features import peg_features
from benchmate.joinery.tenon.pegged import pegged
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import TenonShape, meeting, shape
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: TenonJoint, frame: Frame) -> tuple[Feature, ...]:
    """The tenon, and the mortise if another timber receives it.

    What stops one side stops the other: neither can be cut to figures that cannot be.
    """
    tape = frame.project.tape
    made = shape(joint, frame)
    received = _received(joint, made, frame)
    if joint.scribed:
        return (*_scribed(made, received), *_pegs(joint, made, received, frame))
    found = [check(made, tape) for check in findings.TENON_CHECKS]
    if received is not None:
        found += [check(received, tape) for check in findings.MORTISE_CHECKS]
    told = (
        *(finding for finding in found if finding),
        *findings.under_inner_section(made, received, tape),
    )
    tenon_side = _tenon(joint, made, told)
    sides = (tenon_side, _mortise(received, told, tape)) if received else (tenon_side,)
    return (*sides, *_pegs(joint, made, received, frame, told))


def _pegs(
    joint: TenonJoint,
    made: TenonShape,
    received: MortiseShape | None,
    frame: Frame,
    told: tuple[Finding, ...] = (),
) -> tuple[Feature, ...]:
    if joint.pegs is None:
        return ()
    found = pegged(joint.pegs, made, received, meeting(joint, frame))
    return peg_features(found, told, frame.project.tape, scribed=joint.scribed)


def _scribed(made: TenonShape, received: MortiseShape | None) -> tuple[Feature, ...]:
    """Both sides of a joint that is marked by hand: steps without cuts or figures."""
    mate = received.stick.name if received else "its mate"
    tenon_side = Feature(
        id=made.feature,
        timber=made.stick.id,
        title=f"{made.stick.pose.words(made.end).capitalize()} tenon, scribed",
        at=made.shoulder,
        place=made.places,
        tasks=scribed.scribed_tenon_tasks(made, mate),
        scribed=True,
    )
    if received is None:
        return (tenon_side,)
    mortise_side = Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"Mortise for {made.stick.name}, scribed",
        at=received.along[0],
        place=(received.feature,),
        tasks=scribed.scribed_mortise_tasks(received),
        scribed=True,
    )
    return (tenon_side, mortise_side)


def _tenon(joint: TenonJoint, made: TenonShape, told: tuple[Finding, ...]) -> Feature:
    return Feature(
        id=made.feature,
        timber=joint.timber,
        title=f"{made.stick.pose.words(made.end).capitalize()} tenon",
        at=made.shoulder,
        place=made.places,
        cuts=tenoned.cuts(made, joint.end_allowance),
        lines=tenoned.lines(made, joint.end_allowance),
        tasks=cutting.tasks(made, joint.end_allowance, received=joint.into is not None),
        sizes=cutting.sizes(made, joint.end_allowance),
        awaits=_lengths_first(made),
        findings=told_on(joint.timber, made.feature, told),
    )


def _lengths_first(made: TenonShape) -> tuple[Awaits, ...]:
    """The measuring a tenon waits for: at the reference end only what its own length follows."""
    reference = made.end is Face.REFERENCE_END
    return awaits_measuring(made.stick, beyond=made.end if reference else None)


def _mortise(received: MortiseShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"Mortise for {received.tenon.stick.name}",
        at=received.along[0],
        place=(received.feature,),
        cuts=mortise.cuts(received),
        lines=mortise.lines(received, tape),
        tasks=mortise.tasks(received, tape),
        awaits=(Awaits(received.tenon.stick.id, f"{received.tenon.feature}/{cutting.AS_CUT}"),),
        mated=True,
        findings=told_on(received.stick.id, received.feature, told),
    )


def _received(joint: TenonJoint, made: TenonShape, frame: Frame) -> MortiseShape | None:
    met = meeting(joint, frame)
    if met is None or joint.into is None:
        return None
    clearance = joint.bottom_clearance
    return mortise_shape(
        joint.mortise,
        made,
        met,
        frame.stick(joint.into),
        frame.project.practice.bottom_clearance if clearance is None else clearance,
    )


FAMILY = Family(name="tenon", table="joint", record=TenonJoint, features=features)
