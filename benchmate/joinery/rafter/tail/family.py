"""The rafter tail as the catalogue knows it."""

from benchmate.frame.family import Family
from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.ends import cut_twice
from benchmate.joinery.rafter.seats import heels
from benchmate.joinery.rafter.strike import Mark
from benchmate.joinery.rafter.tail import end, findings
from benchmate.joinery.rafter.tail.record import RafterTail
from benchmate.joinery.rafter.tail.shape import TailShape, tail_shape
from benchmate.model.feature import Feature


def features(joint: RafterTail, frame: Frame) -> tuple[Feature, ...]:
    """The free end of one rafter."""
    tape = frame.tape
    shape = tail_shape(joint, frame)
    stick = shape.rafter.stick
    return (
        Feature(
            id=shape.feature,
            timber=stick.id,
            title=f"{stick.pose.words(shape.end).capitalize()} tail",
            at=stick.shoulder(shape.end),
            place=shape.rafter.places,
            cuts=end.tail_cuts(shape),
            lines=end.tail_lines(shape, _next_seat(shape, frame), tape),
            tasks=end.tail_tasks(shape, tape),
            findings=(
                *findings.told(shape, tape),
                *cut_twice(joint, frame, stick.id, shape.feature, joint.end),
            ),
        ),
    )


def _next_seat(shape: TailShape, frame: Frame) -> Mark | None:
    """The seat nearest to a tail, from whose heel it projects."""
    found = heels(shape.rafter, frame)
    return min(found, key=lambda mark: abs(mark.ahead - shape.ahead), default=None)


FAMILY = Family(name="rafter tail", table="joint", record=RafterTail, features=features)
"""A rafter's tail is told with the joints."""
