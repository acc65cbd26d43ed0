"""Where a rafter's tail is cut on the real stick."""

from dataclasses import dataclass

from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.raking import Rafter, rafter, under
from benchmate.joinery.rafter.tail.record import RafterTail
from benchmate.measure.length import Length
from benchmate.model.directions import Direction, Face
from benchmate.model.solids import Plane
from benchmate.model.stick import end_place

SHOULDER, LEVEL = ("shoulder", "level")
"""The lines of a tail: the cut that meets the end of the top edge, and the level one under it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TailShape:
    """A free end of a rafter; `level` is how long its level cut is as drawn, if it has one."""

    rafter: Rafter
    end: Face
    feature: str
    plumb: bool
    level: Length | None

    @property
    def at_foot(self) -> bool:
        """Whether it is the lower end."""
        return self.rafter.stick.pose.direction(self.end) is not self.rafter.heading

    @property
    def ahead(self) -> int:
        """How far ahead the end of the top edge lies."""
        return self.rafter.foot if self.at_foot else self.rafter.head

    @property
    def cut(self) -> Plane:
        """The plumb or level cut through the end of the top edge."""
        rafter = self.rafter
        if not self.plumb:
            return rafter.carried(under(rafter.up_at(self.ahead)), SHOULDER)
        beyond = rafter.downhill if self.at_foot else rafter.uphill
        return rafter.carried(beyond(self.ahead), SHOULDER)

    @property
    def soffit(self) -> int | None:
        """How high the level cut under a plumb one lies; None without one."""
        if self.level is None:
            return None
        drawn = self.rafter.stick.held(self.rafter.plumb)
        return self.rafter.up_at(self.ahead + self.level.nm, drawn)

    @property
    def plumb_high(self) -> Length:
        """How high the plumb cut is, from the top edge down."""
        if self.soffit is None:
            return self.rafter.plumbed(self.rafter.real_deep)
        return Length(self.rafter.up_at(self.ahead) - self.soffit)

    @property
    def level_long(self) -> Length:
        """How long the level cut really is."""
        low = self.rafter.up_at(self.ahead) if self.soffit is None else self.soffit
        return Length(self.rafter.ahead_at(low, self.rafter.real_deep) - self.ahead)


def tail_shape(joint: RafterTail, frame: Frame) -> TailShape:
    """A rafter's free end, as its real stick gives it."""
    raking = rafter(frame, joint.timber, joint.tail, end_place(joint.end))
    return TailShape(
        rafter=raking,
        end=raking.stick.pose.end(joint.end),
        feature=joint.tail,
        plumb=joint.cut != "level",
        level=joint.level,
    )


def plumb_tail(frame: Frame, timber: str, end: Direction) -> str:
    """The joint that cuts an end of a rafter as a plumb tail; empty if there is none."""
    tails = (
        work.id
        for work in frame.works_on(timber)
        if isinstance(work, RafterTail) and work.end is end and work.cut != "level"
    )
    return next(tails, "")
