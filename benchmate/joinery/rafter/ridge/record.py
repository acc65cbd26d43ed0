"""The stored parameters of a rafter's head at a ridge."""

from collections.abc import Mapping
from typing import ClassVar, Literal

from benchmate.joinery.rafter.faults import crossed_faults
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.fields import Id, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import TwoTimbers
from benchmate.model.work import Bearing, Fault


class RafterRidge(TwoTimbers):
    """The head of a rafter, cut plumb against the side of a ridge or another level timber.

    The rafter's incline runs to the peak on the centre line; the side of `into` cuts it short, and
    by how much is the ridge deduction. The end may be `let_in` so deep: it then stands in a housing
    on a level seat as long as it is let in.
    """

    itself: ClassVar[str] = "cannot bear on its own timber; name another in into"

    family: Literal["rafter ridge"]
    timber: Id
    into: Id
    let_in: Size = ZERO

    def timbers(self) -> dict[str, str]:
        """The rafter, and the ridge."""
        return {"timber": self.timber, "into": self.into}

    def bearings(self) -> tuple[Bearing, ...]:
        """The head, on the ridge's side or so deep inside it."""
        return (Bearing(self.timber, Direction.UP, self.into, self.let_in, self.housing),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """A timber that is no rafter, or a ridge that does not lie level across it."""
        return tuple(crossed_faults(timbers[self.timber], timbers[self.into]))

    @property
    def housing(self) -> str:
        """The id of the rafter's place on the ridge, and of its housing."""
        return f"{self.id}-housing"
