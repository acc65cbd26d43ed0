"""Shoulder to shoulder along top and underside, so that neither is taken for the other.

Square housings lengthen a timber by both their depths (trade notes 2.2); diminished ones only
along the underside.
"""

from benchmate.frame.frame import Frame
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.measure.length import ZERO
from benchmate.model.feature import Beside


def between(joint: DiminishedTenon, frame: Frame) -> tuple[Beside, ...]:
    """Both lengths in words."""
    top = frame.stick(joint.timber).body
    other = next(
        (
            work.housing
            for work in frame.works_on(joint.timber)
            if isinstance(work, DiminishedTenon)
            and work.timber == joint.timber
            and work.end is joint.end.opposite
        ),
        ZERO,
    )
    return (
        Beside(top, "shoulder to shoulder along the top"),
        Beside(top + joint.housing + other, "shoulder to shoulder along the underside"),
    )
