"""The scarf as the catalogue knows it: both halves from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import AS_CUT
from benchmate.joinery.scarf import cutting, findings
from benchmate.joinery.scarf.bridle import bridle_cuts, bridle_lines
from benchmate.joinery.scarf.key_slot import key_cuts, key_lines
from benchmate.joinery.scarf.lap import lap_cuts, lap_lines
from benchmate.joinery.scarf.record import ScarfJoint
from benchmate.joinery.scarf.shape import Half, halves
from benchmate.measure.printing import Tape
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: ScarfJoint, frame: Frame) -> tuple[Feature, ...]:
    """The half of each stick. What stops one stops the other."""
    both = halves(joint, frame)
    told = findings.told(both, frame)
    return tuple(_feature(half, told, frame.tape) for half in both)


def _feature(half: Half, told: tuple[Finding, ...], tape: Tape) -> Feature:
    first = Awaits(half.mate.id, f"{half.mate_feature}/{AS_CUT}")
    return Feature(
        id=half.feature,
        timber=half.stick.id,
        title=f"{half.stick.pose.words(half.end).capitalize()} scarf",
        at=half.at,
        place=half.places,
        cuts=(*lap_cuts(half), *bridle_cuts(half), *key_cuts(half)),
        lines=(*lap_lines(half, tape), *bridle_lines(half, tape), *key_lines(half)),
        tasks=cutting.half_tasks(half, tape),
        sizes=cutting.half_sizes(half),
        awaits=() if half.leads else (first,),
        mated=not half.leads,
        findings=told_on(half.stick.id, half.feature, told),
    )


FAMILY = Family(name="scarf", table="joint", record=ScarfJoint, features=features)
