"""Where a rafter's head and its place on a ridge lie on the real sticks.

How it works
1. The head is cut plumb where it bears: at the ridge's side, or `let_in` behind it.
2. A head that is let in stands on a level seat through the point where its underside meets that
   plumb cut, so nothing of its depth is lost there. The ridge's housing has a level bottom to
   match, and is open above or ends level with the highest point that goes in.
"""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.frame.reduction import Reduction, reduction
from benchmate.joinery.rafter.lying import Lying, lying
from benchmate.joinery.rafter.raking import Rafter, rafter, under
from benchmate.joinery.rafter.ridge.record import RafterRidge
from benchmate.measure.length import Length
from benchmate.model.directions import Face
from benchmate.model.solids import Plane

SHOULDER, FACE, SEAT, STOP = ("shoulder", "face", "seat", "reduction-stop")
"""The lines on the rafter: where it bears, the ridge's face, the level seat, and where a reduced
side ends."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeadShape:
    """A rafter's head, and the ridge it bears on."""

    rafter: Rafter
    ridge: Lying
    end: Face
    feature: str
    let_in: Length

    @property
    def places(self) -> tuple[str, ...]:
        """Where the rafter's section may have been measured."""
        return self.rafter.places

    @property
    def bears(self) -> int:
        """How far ahead the head bears."""
        return self.ridge.near + self.let_in.nm

    @property
    def deduction(self) -> Length:
        """The ridge deduction: level, from the peak's centre line back to the ridge's face."""
        return Length(self.rafter.head - self.ridge.near)

    @property
    def level(self) -> int:
        """How high the seat of a head that is let in lies."""
        return self.rafter.up_at(self.bears, self.rafter.deep)

    @property
    def lowest(self) -> int:
        """How high the underside lies where the end goes in through the real face."""
        return self.rafter.up_at(self.ridge.real_near, self.rafter.deep)

    @property
    def highest(self) -> int:
        """How high the highest point of the end lies."""
        return self.rafter.up_at(self.bears)

    @property
    def recess(self) -> Length:
        """How deep the end goes in through the ridge's real face."""
        return self.let_in + self.ridge.over_near

    @property
    def shoulder(self) -> Plane:
        """The plumb cut where the head bears."""
        return self.rafter.carried(self.rafter.uphill(self.bears), SHOULDER)

    @property
    def face(self) -> Plane:
        """The plumb plane of the ridge's face."""
        return self.rafter.carried(self.rafter.uphill(self.ridge.near), FACE)

    @property
    def seat(self) -> Plane:
        """The level cut a head that is let in stands on."""
        return self.rafter.carried(under(self.level), SEAT)

    @property
    def stop(self) -> Plane:
        """Where a reduced side ends: at the ridge's real face."""
        if not self.ridge.over_near:
            return self.face
        return self.rafter.carried(self.rafter.uphill(self.ridge.real_near), STOP)

    @property
    def reduction(self) -> Reduction:
        """What comes off the far faces by square rule, so that the end goes in.

        Behind the framed face the seat takes off more of the underside than that.
        """
        raking = self.rafter
        under = {raking.plumb: raking.deep} if self.ridge.over_near else {}
        to = under | {raking.sides: raking.wide}
        return reduction(raking.stick, self.end, self.recess, to, places=self.places)


def head_shape(joint: RafterRidge, frame: Frame) -> HeadShape:
    """A rafter's head and its place on the ridge, as the real sticks give them."""
    (bearing,) = joint.bearings()
    raking = rafter(frame, joint.timber, "head-cut", "head")
    return HeadShape(
        rafter=raking,
        ridge=lying(frame, joint.into, joint.housing, raking),
        end=raking.stick.pose.end(bearing.end),
        feature="head-cut",
        let_in=joint.let_in,
    )
