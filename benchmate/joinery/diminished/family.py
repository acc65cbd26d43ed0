"""The diminished tenon as the catalogue knows it: both sides of the joint from one record."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.frame.practice import awaits_measuring
from benchmate.joinery.diminished import boring, cutting, findings, mortise, tenoned
from benchmate.joinery.diminished.between import between
from benchmate.joinery.diminished.mortise_shape import mortise_shape
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.joinery.diminished.shape import end_shape
from benchmate.model.directions import Face
from benchmate.model.feature import Awaits, Feature
from benchmate.model.findings import told_on


def features(joint: DiminishedTenon, frame: Frame) -> tuple[Feature, ...]:
    """The tenon and its mortise. What stops one side stops the other."""
    tape = frame.project.tape
    made = end_shape(joint, frame)
    received = mortise_shape(joint, made, frame)
    told = findings.told(made, received, tape)
    tenon_side = Feature(
        id=made.feature,
        timber=made.stick.id,
        title=f"{made.stick.pose.words(made.end).capitalize()} tenon",
        at=made.shoulder,
        place=made.places,
        cuts=tenoned.tenon_cuts(made),
        lines=tenoned.tenon_lines(made, between(joint, frame), tape),
        tasks=cutting.tenon_tasks(made, tape),
        sizes=cutting.tenon_sizes(made),
        awaits=awaits_measuring(made.stick) if made.end is Face.FAR_END else (),
        findings=told_on(made.stick.id, made.feature, told),
    )
    mortise_side = Feature(
        id=received.feature,
        timber=received.stick.id,
        title=f"Mortise for {made.stick.name}",
        at=received.span[0],
        place=(received.feature,),
        cuts=mortise.mortise_cuts(received),
        lines=mortise.mortise_lines(received, tape),
        tasks=boring.mortise_tasks(received),
        awaits=(Awaits(made.stick.id, f"{made.feature}/{cutting.AS_CUT}"),),
        mated=True,
        findings=told_on(received.stick.id, received.feature, told),
    )
    return (tenon_side, mortise_side)


FAMILY = Family(name="diminished tenon", table="joint", record=DiminishedTenon, features=features)
