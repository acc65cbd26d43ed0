"""The legs of a brace, each to the face and to the seat, so that nobody mistakes one for the other.

A leg measured to a face and the same leg measured to a housing's seat differ by the housing, and
the brace then by more: 36" legs with 1/2" housings make 51-5/8" instead of 50-15/16" (trade notes
2.3, from the published rule that adds the housing to each leg).
"""

from typing import NamedTuple

from benchmate.frame.frame import Frame
from benchmate.joinery.brace.record import BraceJoint
from benchmate.measure.length import ZERO, Length
from benchmate.model.feature import Beside
from benchmate.model.stick import Stick


class Legs(NamedTuple):
    """A leg along the timber a brace enters, from its long edge to the corner.

    `face` is to the face of the timber at its other end, `seat` to the floor of the housing there.
    """

    face: Length
    seat: Length
    on: str
    to: str

    def beside(self) -> tuple[Beside, ...]:
        """The leg both ways, in words; once where there is no housing."""
        to_face = Beside(self.face, f"leg, along {self.on} to the face of {self.to}")
        if self.face == self.seat:
            return (to_face,)
        return (to_face, Beside(self.seat, f"leg to the housing's floor in {self.to}"))


def legs(joint: BraceJoint, stick: Stick, frame: Frame) -> Legs | None:
    """The leg along the timber a brace's end enters; None while its other end enters nothing."""
    other = next(
        (
            work
            for work in frame.works_on(joint.timber)
            if isinstance(work, BraceJoint) and work.end is not joint.end
        ),
        None,
    )
    if other is None:
        return None
    (bearing,) = other.bearings()
    flat = frame.face(other.into, frame.entry(bearing), other.mortise)
    point = frame.standing(joint.timber).point(
        stick.shoulder(stick.pose.end(joint.end)), ZERO, ZERO
    )
    leg = abs(Length(sum(n * at for n, at in zip(flat.normal, point, strict=True)) - flat.offset))
    names = (frame.wood(joint.into).name, frame.wood(other.into).name)
    return Legs(leg, leg + other.housing, *names)
