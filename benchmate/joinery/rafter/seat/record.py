"""The stored parameters of a rafter's seat on a level timber."""

from collections.abc import Mapping
from typing import ClassVar, Literal, Self

from pydantic import model_validator

from benchmate.joinery.rafter.faults import crossed_faults
from benchmate.measure.length import ZERO
from benchmate.model.fields import Id, Size
from benchmate.model.project import Timber
from benchmate.model.two_timbers import TwoTimbers
from benchmate.model.work import Fault


class RafterSeat(TwoTimbers):
    """A rafter that bears on a plate, a purlin or any other level timber it crosses.

    A birdsmouth: a level cut, the seat, stands on the top of `into`, and a plumb cut, the heel,
    against its face that looks down the slope. How high, how deep and how long both are follows
    from where the two timbers stand and what they measure. The seat may be `let_in` so deep below
    that top; then a step of the timber, so wide, may be left standing outside it for the rafter to
    thrust against: a step seat. A rafter that ends at the timber's face has a seat and no heel.
    """

    itself: ClassVar[str] = "cannot bear on its own timber; name another in into"

    family: Literal["rafter seat"]
    timber: Id
    into: Id
    let_in: Size = ZERO
    step: Size = ZERO

    @model_validator(mode="after")
    def _sound(self) -> Self:
        if self.step and not self.let_in:
            raise ValueError(
                'has a "step" to thrust against, but its seat is not let in; give "let_in" as '
                "well, or take step out"
            )
        return self

    def timbers(self) -> dict[str, str]:
        """The rafter, and the timber it bears on."""
        return {"timber": self.timber, "into": self.into}

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """A timber that is no rafter, or one that does not lie level across it."""
        return tuple(crossed_faults(timbers[self.timber], timbers[self.into]))

    @property
    def notch(self) -> str:
        """The id of the notch in the rafter."""
        return f"{self.id}-notch"

    @property
    def seat(self) -> str:
        """The id of the seat on the other timber."""
        return f"{self.id}-seat"
