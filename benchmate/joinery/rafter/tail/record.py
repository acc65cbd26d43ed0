"""The stored parameters of a rafter's free end."""

from collections.abc import Mapping
from typing import Literal, Self

from pydantic import model_validator

from benchmate.joinery.rafter.faults import rafter_faults
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.fields import EndDirection, Id, PositiveSize
from benchmate.model.project import Timber
from benchmate.model.stick import end_place
from benchmate.model.work import EndShape, Extension, Fault, Work, end_fault

TailCut = Literal["plumb", "level", "plumb and level"]
"""How a free end is cut; one without a tail stays square."""


class RafterTail(Work):
    """A free end of a rafter, cut plumb, level, or plumb with its lower corner cut off level.

    The end of the rafter's incline is where the cut meets the top edge. `level` is how long the
    level cut is, from the plumb one to the underside of the stick as drawn: its height under the
    top edge then holds, and a row of tails has its level cuts in one line.
    """

    family: Literal["rafter tail"]
    timber: Id
    end: EndDirection = Direction.DOWN
    cut: TailCut
    level: PositiveSize | None = None

    @model_validator(mode="after")
    def _level_said_once(self) -> Self:
        if self.cut == "plumb and level" and self.level is None:
            raise ValueError('does not say how long its level cut is; give "level"')
        if self.cut != "plumb and level" and self.level is not None:
            raise ValueError(
                f'is cut {self.cut}, so "level" says nothing; write cut = "plumb and level", or '
                "take it out"
            )
        return self

    def timbers(self) -> dict[str, str]:
        """The rafter."""
        return {"timber": self.timber}

    def extensions(self) -> tuple[Extension, ...]:
        """A plumb or level cut reaches beyond the end of the incline, on the longer edge."""
        shape: EndShape = "level" if self.cut == "level" else "plumb"
        level = self.level or ZERO
        place = self.tail
        return (Extension(self.timber, self.end, ZERO, shape=shape, place=place, level=level),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """A timber that is no rafter, or a level cut at the upper end."""
        timber = timbers[self.timber]
        found = tuple(rafter_faults("timber", timber))
        if found:
            return found
        ended = end_fault("end", self.end, timber)
        if ended is not None:
            return (ended,)
        if self.end is Direction.UP and self.cut != "plumb":
            problem = f"is {self.cut} at the head, where a level cut would leave a beak"
            return (Fault("cut", problem, 'write cut = "plumb", or end = "foot"'),)
        return ()

    @property
    def tail(self) -> str:
        """The id of the tail: `foot-tail`."""
        return f"{end_place(self.end)}-tail"
