"""Where a rafter's notch and its seat lie on the real sticks.

How it works
1. Two planes make a birdsmouth: level with the timber's top, or `let_in` below it, and plumb at its
   face that looks down the slope. A step seat has a second pair, `step` further in and `let_in`
   deeper.
2. The planes hold, as the top edge does: what the rafter is over or under in depth makes the seat
   longer or shorter, and leaves as much wood above it.
"""

from dataclasses import dataclass

from benchmate.frame.flats import nearest
from benchmate.frame.frame import Frame
from benchmate.joinery.rafter.lying import Lying, lying
from benchmate.joinery.rafter.raking import Rafter, rafter, under
from benchmate.joinery.rafter.seat.record import RafterSeat
from benchmate.joinery.rafter.tail.shape import plumb_tail
from benchmate.measure.length import ZERO, Length
from benchmate.model.directions import Direction
from benchmate.model.solids import Plane

HEEL, SEAT, LEDGE, ABUTMENT = ("heel", "seat", "ledge", "abutment")
"""The lines of the notch."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatShape:
    """A rafter's notch, and the timber it bears on.

    `let_in` is how deep the seat lies below the timber's top, `step` how far its outer end lies in
    from the face that looks down the slope. `tail` is the joint that cuts the foot plumb, if any.
    """

    rafter: Rafter
    plate: Lying
    feature: str
    let_in: Length
    step: Length
    tail: str

    @property
    def places(self) -> tuple[str, ...]:
        """Where the rafter's section may have been measured."""
        return self.rafter.places

    @property
    def heeled(self) -> bool:
        """Whether any of the rafter lies beyond the timber's face, so that there is a heel."""
        return self.rafter.foot < self.plate.near

    @property
    def stepped(self) -> bool:
        """Whether any of the rafter lies on a step outside the seat."""
        return bool(self.step) and self.rafter.foot < self.wall

    @property
    def bound(self) -> str:
        """The plumb line that the seat begins at; none where the rafter's own end is the first."""
        if self.stepped:
            return ABUTMENT
        return HEEL if self.heeled else ""

    @property
    def wall(self) -> int:
        """How far ahead the seat may begin: at the timber's face, or a step further in."""
        return self.plate.near + self.step.nm

    @property
    def outer(self) -> int:
        """How far ahead the seat does begin: there, or where the rafter ends."""
        return max(self.wall, self.rafter.foot)

    @property
    def level(self) -> int:
        """How high the seat lies."""
        return self.plate.top - self.let_in.nm

    @property
    def seat(self) -> Plane:
        """The level cut."""
        return self.rafter.carried(under(self.level), SEAT)

    @property
    def heel(self) -> Plane:
        """The plumb cut at the timber's face."""
        return self.rafter.carried(self.rafter.uphill(self.plate.near), HEEL)

    @property
    def ledge(self) -> Plane:
        """The level cut over the step."""
        return self.rafter.carried(under(self.plate.top), LEDGE)

    @property
    def abutment(self) -> Plane:
        """The plumb cut against the step: the step is on the foot's side of it."""
        return self.rafter.carried(self.rafter.downhill(self.wall), ABUTMENT)

    @property
    def over_plate(self) -> Length:
        """The height above plate: plumb, from its top to the top edge over its outside face."""
        return Length(self.rafter.up_at(max(self.plate.near, self.rafter.foot)) - self.plate.top)

    @property
    def left_plumb(self) -> Length:
        """The wood left above the outer end of the seat, plumb."""
        return Length(self.rafter.up_at(self.outer) - self.level)

    @property
    def left_square(self) -> Length:
        """The least wood left above the seat, or above a step, square to the rafter."""
        left = min(self.left_plumb, self.over_plate) if self.stepped else self.left_plumb
        return self.rafter.squared(left)

    @property
    def notch(self) -> Length:
        """How deep the notch goes, square to the rafter."""
        return self.rafter.real_deep - self.left_square

    @property
    def share(self) -> int:
        """How deep the notch goes, in hundredths of the rafter's depth."""
        return nearest(100 * self.notch.nm, self.rafter.real_deep.nm)

    @property
    def inner(self) -> int:
        """How far ahead the seat ends, where it comes out of the underside."""
        return self.rafter.ahead_at(self.level, self.rafter.real_deep)

    @property
    def long(self) -> Length:
        """How long the seat is, level."""
        return Length(self.inner - self.outer)

    @property
    def bearing(self) -> Length:
        """How much of the seat stands on the timber, level."""
        return Length(min(self.inner, self.plate.far) - self.outer)

    @property
    def heel_high(self) -> Length:
        """How high the heel is, plumb, from the underside up to the level cut it ends at."""
        level = self.plate.top if self.stepped else self.level
        return Length(level - self.rafter.up_at(self.plate.near, self.rafter.real_deep))

    @property
    def recess(self) -> Length:
        """How deep the rafter goes in through the real top."""
        return self.let_in + self.plate.over_top

    @property
    def recess_near(self) -> Length:
        """How deep the rafter goes in through the real face that looks down the slope."""
        return self.plate.over_near if self.heeled else ZERO

    @property
    def recessed(self) -> bool:
        """Whether wood comes off the timber for the rafter to go in."""
        return bool(self.recess or self.recess_near)

    @property
    def reduced(self) -> bool:
        """Whether the rafter's far side comes down to its inner timber, so that it goes in."""
        return self.recessed and self.rafter.real_wide > self.rafter.wide

    @property
    def end(self) -> int | None:
        """How far ahead a recess in the top ends: where the rafter rises out of it.

        None where it runs out to the face that looks up the slope.
        """
        found = self.rafter.ahead_at(self.plate.real_top, self.rafter.real_deep)
        return found if found < self.plate.real_far else None

    @property
    def lip(self) -> int:
        """How high the underside lies where it passes the real face that looks down the slope."""
        return self.rafter.up_at(self.plate.real_near, self.rafter.real_deep)


def seat_shape(joint: RafterSeat, frame: Frame) -> SeatShape:
    """A rafter's notch and its seat, as the real sticks give them."""
    crossing = rafter(frame, joint.timber, joint.notch)
    return SeatShape(
        rafter=crossing,
        plate=lying(frame, joint.into, joint.seat, crossing),
        feature=joint.notch,
        let_in=joint.let_in,
        step=joint.step,
        tail=plumb_tail(frame, joint.timber, Direction.DOWN),
    )
