"""Whether a frame can be cut at all, before it is proved."""

from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Severity


def stopped(frame: Frame) -> bool:
    """Whether some stick came out so that a joint of it cannot be, which is told."""
    layouts = (lay_out(frame, timber.id) for timber in frame.project.timbers)
    found = (each for layout in layouts for feature in layout.features for each in feature.findings)
    return any(each.severity is Severity.STOP for each in found)
