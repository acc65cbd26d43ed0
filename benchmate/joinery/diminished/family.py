"""The diminished tenon as the catalogue knows it: both sides of the joint from one record."""

from dataclasses import replace

from benchmate.frame.both_sides import end_side, mated_side
from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.diminished import boring, cutting, findings, mortise, tenoned
from benchmate.joinery.diminished.between import between
from benchmate.joinery.diminished.mortise_shape import mortise_shape
from benchmate.joinery.diminished.record import DiminishedTenon
from benchmate.joinery.diminished.shape import end_shape
from benchmate.model.feature import Feature


def features(joint: DiminishedTenon, frame: Frame) -> tuple[Feature, ...]:
    """The tenon and its mortise. What stops one side stops the other."""
    tape = frame.tape
    made = end_shape(joint, frame)
    received = mortise_shape(joint, made, frame)
    told = findings.told(made, received, tape)
    tenon_side = replace(
        end_side(made, "tenon", told),
        cuts=tenoned.tenon_cuts(made),
        lines=tenoned.tenon_lines(made, between(joint, frame), tape),
        tasks=cutting.tenon_tasks(made, tape),
        sizes=cutting.tenon_sizes(made),
    )
    mortise_side = replace(
        mated_side(received, made, told, noun="Mortise", at=received.span[0]),
        cuts=mortise.mortise_cuts(received),
        lines=mortise.mortise_lines(received, tape),
        tasks=boring.mortise_tasks(received),
    )
    return (tenon_side, mortise_side)


FAMILY = Family(name="diminished tenon", table="joint", record=DiminishedTenon, features=features)
