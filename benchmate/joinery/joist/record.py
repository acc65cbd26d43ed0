"""The stored parameters of joists that drop into a timber from above, straight or dovetailed."""

from collections.abc import Iterator, Mapping
from typing import Literal, Self

from pydantic import model_validator

from benchmate.frame.level_end import LevelEnd
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.fields import FaceDirection, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Extension, Fault


class JoistPocket(LevelEnd):
    """An end of a joist, and the pocket in the top of a level timber that it drops into.

    The end goes `bearing` deep into the timber `into`; the pocket is `end_clearance` longer, the
    shop's bottom clearance if not given. A joist cut down at its end is `end_depth` deep there,
    from its top; with `diminished` its underside slopes up to that, from so far back of the pocket,
    so that the joist is less apt to split at the notch.
    """

    family: Literal["joist pocket"]
    bearing: PositiveSize
    end_depth: PositiveSize | None = None
    diminished: PositiveSize | None = None
    end_clearance: Size | None = None

    @model_validator(mode="after")
    def _slopes_to_a_depth(self) -> Self:
        if self.diminished is not None and self.end_depth is None:
            raise ValueError(
                'has "diminished" but no "end_depth"; say how deep the end is that its underside '
                "slopes up to"
            )
        return self

    def bearings(self) -> tuple[Bearing, ...]:
        """The end of the joist, inside the pocket."""
        return (Bearing(self.timber, self.end, self.into, self.bearing, self.pocket),)

    @property
    def pocket(self) -> str:
        """The id of the pocket on the receiving timber."""
        return f"{self.id}-pocket"


class DovetailJoist(LevelEnd):
    """A joist whose end is a dovetail, and the socket it drops into from above.

    The tail goes `length` in from the shoulder, as deep as the joist, or `end_depth` from its top.
    Each flank comes in by `flare` at the shoulder and runs out to the joist's side at the tip, but
    for one that is left straight, if the joist's side that looks towards `straight` is named. The
    socket is `end_clearance` longer than the tail, the shop's bottom clearance if not given, and
    `wedge` wider on the joist's side that looks towards `wedge_side`: room for a dry wedge.
    """

    family: Literal["dovetail joist"]
    length: PositiveSize
    flare: PositiveSize
    straight: FaceDirection | None = None
    end_depth: PositiveSize | None = None
    end_clearance: Size | None = None
    wedge: PositiveSize | None = None
    wedge_side: FaceDirection | None = None

    @model_validator(mode="after")
    def _wedge_on_a_side(self) -> Self:
        if (self.wedge is None) is not (self.wedge_side is None):
            raise ValueError('has one of "wedge" and "wedge_side" without the other; give both')
        return self

    def extensions(self) -> tuple[Extension, ...]:
        """The tail."""
        return (Extension(self.timber, self.end, self.length),)

    def bearings(self) -> tuple[Bearing, ...]:
        """The shoulder, on the face of the receiving timber."""
        return (Bearing(self.timber, self.end, self.into, ZERO, self.socket),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """What keeps a joist out of a beam, or a side that the joist does not have."""
        found = super().faults(timbers)
        return found or tuple(self._side_faults(timbers[self.timber]))

    def _side_faults(self, joist: Timber) -> Iterator[Fault]:
        side = joist.first_face if joist.second_face is Direction.UP else joist.second_face
        words = f"{side.word} and {side.opposite.word}"
        for key, named in (("straight", self.straight), ("wedge_side", self.wedge_side)):
            if named not in (None, side, side.opposite):
                problem = f"{joist.name} has no side that looks {named.word}"
                yield Fault(key, f"{problem}: its sides look {words}", "name one of its sides")

    @property
    def socket(self) -> str:
        """The id of the socket on the receiving timber."""
        return f"{self.id}-socket"
