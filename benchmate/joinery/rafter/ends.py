"""Whether an end of a rafter is cut by one joint alone."""

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.peak.record import RafterPeak
from benchmate.joinery.rafter.ridge.record import RafterRidge
from benchmate.joinery.rafter.tail.record import RafterTail
from benchmate.model.directions import Direction
from benchmate.model.findings import Finding, stop
from benchmate.model.work import Work


def cut_twice(
    joint: Work, frame: Frame, timber: str, feature: str, end: Direction
) -> tuple[Finding, ...]:
    """Two joints cut the same end of a rafter, and only one of them can be right.

    Example: a head with both a "rafter ridge" and a "rafter peak". Remedy: take one of them out.
    """
    other = next(
        (
            work
            for work in frame.works_on(timber)
            if work.id != joint.id and end in _ends(work, timber)
        ),
        None,
    )
    if other is None:
        return ()
    name, which = frame.wood(timber).name, "foot" if end is Direction.DOWN else "head"
    return (
        stop(
            "rafter-end-twice",
            timber,
            feature,
            f'The {which} of {name} is cut by "{other.id}" as well',
            "take one of the two joints out",
        ),
    )


def _ends(work: Work, timber: str) -> tuple[Direction, ...]:
    """The ends of a timber that a rafter's joint cuts."""
    if isinstance(work, RafterTail):
        return (work.end,)
    if isinstance(work, RafterPeak) or (isinstance(work, RafterRidge) and work.timber == timber):
        return (Direction.UP,)
    return ()
