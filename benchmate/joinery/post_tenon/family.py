"""The post tenon as the catalogue knows it: both sides of the joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.post_tenon import cutting, findings, mortise, tenon
from benchmate.joinery.post_tenon.mortise import mortise_shape
from benchmate.joinery.post_tenon.record import PostTenon
from benchmate.joinery.post_tenon.shape import TenonShape, meeting, shape
from benchmate.model.feature import Feature


def features(joint: PostTenon, frame: Frame) -> tuple[Feature, ...]:
    """The tenon, and the mortise if another timber receives it."""
    tenoned = shape(joint, frame)
    side = _tenon(joint, tenoned, frame)
    received = _mortise(joint, tenoned, frame)
    return (side,) if received is None else (side, received)


def _tenon(joint: PostTenon, tenoned: TenonShape, frame: Frame) -> Feature:
    tape = frame.project.tape
    found = (check(tenoned, tape) for check in findings.TENON_CHECKS)
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
        findings=tuple(finding for finding in found if finding),
    )


def _mortise(joint: PostTenon, tenoned: TenonShape, frame: Frame) -> Feature | None:
    met = meeting(joint, frame)
    if met is None or joint.into is None:
        return None
    clearance = joint.bottom_clearance
    cut = mortise_shape(
        joint.mortise,
        tenoned,
        met,
        frame.stick(joint.into),
        frame.project.shop.bottom_clearance if clearance is None else clearance,
    )
    tape = frame.project.tape
    found = (check(cut, tape) for check in findings.MORTISE_CHECKS)
    return Feature(
        id=joint.mortise,
        timber=joint.into,
        title=f"Mortise for {tenoned.stick.name}",
        at=cut.along[0],
        place=(joint.mortise,),
        cuts=mortise.cuts(cut),
        lines=mortise.lines(cut, tape),
        tasks=mortise.tasks(cut),
        findings=tuple(finding for finding in found if finding),
    )


FAMILY = Family(name="post tenon", table="joint", record=PostTenon, features=features)
