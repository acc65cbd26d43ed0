"""The lap as the catalogue knows it: both of its timbers from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import AS_CUT, awaits_measuring
from benchmate.joinery.lap import cuts, cutting, findings, lines, sizes
from benchmate.joinery.lap.record import LapJoint
from benchmate.joinery.lap.shape import LEDGE, Half, halves
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import Finding, told_on


def features(joint: LapJoint, frame: Frame) -> tuple[Feature, ...]:
    """What is cut on the timber that comes first, and on the other. What stops one stops both."""
    tape = frame.tape
    first, second, met = halves(joint, frame)
    told = findings.told(first, second, met, tape)
    return (_feature(first, second, told, tape), _feature(second, first, told, tape))


def _feature(half: Half, other: Half, told: tuple[Finding, ...], tape: Tape) -> Feature:
    return Feature(
        id=half.lie.place,
        timber=half.stick.id,
        title=_title(half),
        at=_at(half),
        place=(half.lie.place,),
        cuts=cuts.cuts(half),
        lines=lines.lines(half, tape),
        tasks=cutting.tasks(half, tape),
        sizes=sizes.sizes(half),
        awaits=_awaits(half, other),
        mated=half.mated,
        made=sizes.made(half),
        findings=told_on(half.stick.id, half.lie.place, told),
    )


def _title(half: Half) -> str:
    if half.end is None:
        return f"Notch for {half.mate.stick.name}"
    end = half.stick.pose.words(half.end).capitalize()
    return f"{end} dovetail lap" if half.tail else f"{end} lap"


def _at(half: Half) -> Length:
    """Where along its timber it starts."""
    if half.end is not None:
        return half.stick.shoulder(half.end)
    return half.reach[0]


def _awaits(half: Half, other: Half) -> tuple[Awaits, ...]:
    """What had better come first: the other timber measured, or cut and measured as it came out."""
    beyond = half.end if half.end is Face.REFERENCE_END else None
    found = list(awaits_measuring(half.stick, beyond=beyond)) if half.end is not None else []
    if half.mated and sizes.sizes(other):
        found.append(Awaits(other.stick.id, f"{other.lie.place}/{AS_CUT}"))
    elif _follows_unmeasured(half):
        found.append(Awaits(other.stick.id, f"{other.lie.place}/section"))
    return tuple(dict.fromkeys(found))


def _follows_unmeasured(half: Half) -> bool:
    """Whether a notch or a ledge follows a far face of the other that nobody has measured."""
    mate, axes = half.mate, []
    if half.end is None and mate.stick.inner is None:
        axes.append(mate.wide)
    facing = mate.inner if half.mated else mate.outer
    if LEDGE in cuts.bounding(half) and not facing.is_reference:
        axes.append(mate.deep)
    return any(mate.stick.measured_depth(axis, mate.place) is None for axis in axes)


FAMILY = Family(name="lap", table="joint", record=LapJoint, features=features)
