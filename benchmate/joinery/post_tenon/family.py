"""The post tenon as the catalogue knows it: both sides of the joint from one record."""

from dataclasses import replace

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.post_tenon import cutting, findings, mortise, tenon
from benchmate.joinery.post_tenon.mortise import MortiseShape, mortise_shape
from benchmate.joinery.post_tenon.record import PostTenon
from benchmate.joinery.post_tenon.shape import TenonShape, meeting, shape
from benchmate.measure.printing import Tape
from benchmate.model.feature import Feature
from benchmate.model.findings import Finding, Severity


def features(joint: PostTenon, frame: Frame) -> tuple[Feature, ...]:
    """The tenon, and the mortise if another timber receives it.

    What stops one side stops the other: neither can be cut to figures that cannot be.
    """
    tape = frame.project.tape
    tenoned = shape(joint, frame)
    received = _received(joint, tenoned, frame)
    found = [check(tenoned, tape) for check in findings.TENON_CHECKS]
    if received is not None:
        found += [check(received, tape) for check in findings.MORTISE_CHECKS]
    told = tuple(finding for finding in found if finding)
    tenon_side = _tenon(joint, tenoned, told)
    return (tenon_side,) if received is None else (tenon_side, _mortise(received, told, tape))


def _tenon(joint: PostTenon, tenoned: TenonShape, told: tuple[Finding, ...]) -> Feature:
    return Feature(
        id=tenoned.feature,
        timber=joint.timber,
        title=f"{tenoned.stick.pose.words(tenoned.end).capitalize()} tenon",
        at=tenoned.shoulder,
        place=tenoned.places,
        cuts=tenon.cuts(tenoned, joint.end_allowance),
        lines=tenon.lines(tenoned, joint.end_allowance),
        tasks=cutting.tasks(tenoned, joint.end_allowance, received=joint.into is not None),
        sizes=cutting.sizes(tenoned, joint.end_allowance),
        findings=_told_on(joint.timber, tenoned.feature, told),
    )


def _mortise(received: MortiseShape, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"Mortise for {received.tenon.stick.name}",
        at=received.along[0],
        place=(received.feature,),
        cuts=mortise.cuts(received),
        lines=mortise.lines(received, tape),
        tasks=mortise.tasks(received),
        findings=_told_on(received.stick.id, received.feature, told),
    )


def _received(joint: PostTenon, tenoned: TenonShape, frame: Frame) -> MortiseShape | None:
    met = meeting(joint, frame)
    if met is None or joint.into is None:
        return None
    clearance = joint.bottom_clearance
    return mortise_shape(
        joint.mortise,
        tenoned,
        met,
        frame.stick(joint.into),
        frame.project.practice.bottom_clearance if clearance is None else clearance,
    )


def _told_on(timber: str, feature: str, told: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """What to tell on one side: its own findings, and what stops the other."""
    return tuple(
        replace(finding, timber=timber, feature=feature)
        for finding in told
        if finding.severity is Severity.STOP or finding.timber == timber
    )


FAMILY = Family(name="post tenon", table="joint", record=PostTenon, features=features)
