"""The stored parameters of a joist's end and the pocket it drops into."""

from collections.abc import Mapping
from typing import Literal, Self

from pydantic import model_validator

from benchmate.measure.sums import Sum, read_sum
from benchmate.model.directions import Direction
from benchmate.model.fields import EndDirection, Id, Position, PositiveSize, Size
from benchmate.model.project import Timber
from benchmate.model.work import Bearing, Fault, Work, meeting_faults

NO_DROP = read_sum("0")
"""A joist whose top is level with the reference face of the timber it bears on."""


class JoistPocket(Work):
    """An end of a joist, and the pocket in the top of a level timber that it drops into.

    The end goes `bearing` deep into the timber `into`; the pocket is `end_clearance` longer, the
    shop's bottom clearance if not given. A joist cut down at its end is `end_depth` deep there,
    from its top. Where both timbers have places, those say where they meet. Otherwise `at` is where
    the joist's side reference face crosses the receiving timber, from that one's reference
    shoulder, and `drop` how far in from that timber's upper or lower reference face the joist's top
    lies.
    """

    family: Literal["joist pocket"]
    timber: Id
    end: EndDirection
    into: Id
    at: Position | None = None
    drop: Position = NO_DROP
    bearing: PositiveSize
    end_depth: PositiveSize | None = None
    end_clearance: Size | None = None

    @model_validator(mode="after")
    def _two_timbers(self) -> Self:
        if self.into == self.timber:
            raise ValueError("cannot bear on its own timber; name another in into")
        return self

    def timbers(self) -> dict[str, str]:
        """The joist, and the timber it bears on."""
        return {"timber": self.timber, "into": self.into}

    def sums(self) -> dict[str, Sum]:
        """Where the joist crosses the timber it bears on."""
        return {"drop": self.drop} | ({"at": self.at} if self.at is not None else {})

    def bearings(self) -> tuple[Bearing, ...]:
        """The end of the joist, inside the pocket."""
        return (Bearing(self.timber, self.end, self.into, self.bearing, self.pocket),)

    def faults(self, timbers: Mapping[str, Timber]) -> tuple[Fault, ...]:
        """Timbers that do not both lie level, or a joist that is not measured from its top."""
        joist, into = timbers[self.timber], timbers[self.into]
        typed = {"at": self.at is not None, "drop": self.drop != NO_DROP}
        found = tuple(meeting_faults(joist, self.end, into, typed))
        if found:
            return found
        standing = next(((k, t) for k, t in (("timber", joist), ("into", into)) if t.upright), None)
        if standing is not None:
            key, timber = standing
            problem = f"{timber.name} stands upright, and a joist and its pocket lie level"
            return (Fault(key, problem, "use a tenon there, or name a timber that lies level"),)
        if Direction.UP not in (joist.first_face, joist.second_face):
            problem = f"{joist.name} is not measured from its top, which is what comes level"
            remedy = 'write "up" for the reference face of it that is its top'
            return (Fault("timber", problem, remedy),)
        return ()

    @property
    def pocket(self) -> str:
        """The id of the pocket on the receiving timber."""
        return f"{self.id}-pocket"
