"""The tenon as the catalogue knows it: every side of the joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.tenon import cutting, findings, mortise, scribed, tenoned
from benchmate.joinery.tenon.beyond import mortise_beyond
from benchmate.joinery.tenon.beyond_findings import BEYOND_CHECKS
from benchmate.joinery.tenon.crossing import Crossing, crossings, runs_into
from benchmate.joinery.tenon.hole_features import (
    hole_features,
    hole_findings,
    holes,
    scribed_holes,
)
from benchmate.joinery.tenon.mortise_shape import MortiseShape, mortise_of
from benchmate.joinery.tenon.peg_features import peg_features
from benchmate.joinery.tenon.pegged import pegged
from benchmate.joinery.tenon.record import TenonJoint
from benchmate.joinery.tenon.shape import TenonShape, meeting, shape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding
from benchmate.model.floors import Floors


def features(joint: TenonJoint, frame: Frame, floors: Floors = ()) -> tuple[Feature, ...]:
    """The tenon, and the mortises of the timbers that receive it, and what it goes through.

    What stops one side stops the others: none can be cut to figures that cannot be. `floors` are
    what other joints leave where its mortises open.
    """
    made = shape(joint, frame)
    received = tuple(
        replace(each, floors=floors)
        for each in (mortise_of(joint, made, frame), mortise_beyond(joint, made, frame))
        if each is not None
    )
    crossed = tuple(crossings(joint, received[0], frame)) if received else ()
    told: tuple[Finding, ...] = ()
    if joint.scribed:
        found = _scribed(made, received)
    else:
        found, told = _laid_out(joint, made, received, crossed, frame)
    return (*found, *_pegs(joint, made, received, frame, told), *scribed_holes(crossed))


def _laid_out(
    joint: TenonJoint,
    made: TenonShape,
    received: tuple[MortiseShape, ...],
    crossed: tuple[Crossing, ...],
    frame: Frame,
) -> tuple[tuple[Feature, ...], tuple[Finding, ...]]:
    """All sides of a joint that is cut to figures, but for its pegs, and what is wrong with it."""
    tape = frame.tape
    through = holes(crossed, frame)
    told = (*_told(made, received, tape), *hole_findings(crossed, through, frame))
    sides = (
        _tenon(joint, made, told),
        *(_mortise(each, _meets(joint, each, frame), told, tape) for each in received),
        *hole_features(through, told, tape),
    )
    return sides, told


def _told(made: TenonShape, received: tuple[MortiseShape, ...], tape: Tape) -> tuple[Finding, ...]:
    """What is wrong with the tenon and its mortises."""
    found = [check(made, tape) for check in findings.TENON_CHECKS]
    for each in received:
        checks = BEYOND_CHECKS if each.past else findings.MORTISE_CHECKS
        found += [check(each, tape) for check in checks]
    return (
        *(finding for finding in found if finding),
        *findings.under_inner_section(made, next(iter(received), None), tape),
    )


def _pegs(
    joint: TenonJoint,
    made: TenonShape,
    received: tuple[MortiseShape, ...],
    frame: Frame,
    told: tuple[Finding, ...],
) -> tuple[Feature, ...]:
    """The pegs, which go through the mortise that the shoulder bears at."""
    if joint.pegs is None:
        return ()
    found = pegged(joint.pegs, made, next(iter(received), None), meeting(joint, frame))
    return peg_features(found, told, frame.tape, scribed=joint.scribed)


def _scribed(made: TenonShape, received: tuple[MortiseShape, ...]) -> tuple[Feature, ...]:
    """The sides of a joint that is marked by hand: steps without cuts or figures."""
    mate = received[0].stick.name if received else "its mate"
    return (
        Feature(
            id=made.feature,
            timber=made.stick.id,
            title=f"{made.stick.pose.words(made.end).capitalize()} tenon, scribed",
            at=made.shoulder,
            place=made.places,
            tasks=scribed.scribed_tenon_tasks(made, mate),
            scribed=True,
        ),
        *(
            Feature(
                id=each.feature,
                timber=each.stick.id,
                title=f"{_mortise_title(each)}, scribed",
                at=each.along[0],
                place=(each.feature,),
                tasks=scribed.scribed_mortise_tasks(each),
                scribed=True,
            )
            for each in received
        ),
    )


def _tenon(joint: TenonJoint, made: TenonShape, told: tuple[Finding, ...]) -> Feature:
    return replace(
        end_side(made, "tenon", told, passes=True),
        cuts=tenoned.cuts(made, joint.end_allowance),
        lines=tenoned.lines(made, joint.end_allowance),
        tasks=cutting.tasks(made, joint.end_allowance, received=joint.into is not None),
        sizes=cutting.sizes(made, joint.end_allowance),
    )


def _meets(joint: TenonJoint, shape: MortiseShape, frame: Frame) -> tuple[str, ...]:
    """The timbers whose mortises one runs into; none past the timber that receives the end."""
    return () if shape.past else runs_into(joint, shape, frame)


def _mortise(
    shape: MortiseShape, meets: tuple[str, ...], told: tuple[Finding, ...], tape: Tape
) -> Feature:
    return replace(
        mated_side(shape, shape.tenon, told, noun="Mortise", at=shape.along[0]),
        title=_mortise_title(shape),
        cuts=mortise.cuts(shape),
        lines=mortise.lines(shape, tape),
        tasks=mortise.tasks(shape, tape, meets),
        floors=shape.followed,
    )


def _mortise_title(shape: MortiseShape) -> str:
    past = f", past {shape.past.name}" if shape.past else ""
    return f"Mortise for {shape.tenon.stick.name}{past}"


FAMILY = Family(name="tenon", table="joint", record=TenonJoint, features=features, under=features)
