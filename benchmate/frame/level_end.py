"""What every joint of a joist's end in the side of a beam has in common: both lie level."""

from collections.abc import Mapping
from typing import ClassVar

from benchmate.measure.sums import Sum, read_sum
from benchmate.model.directions import Direction
from benchmate.model.fields import Position
from benchmate.model.project import Timber
from benchmate.model.two_timbers import EndAtTimber
from benchmate.model.work import Fault, meeting_faults

NO_DROP = read_sum("0")
"""A joist whose top is level with the reference face of the timber it bears in."""


class LevelEnd(EndAtTimber):
    """An end of a level timber, measured from its top, in the side of another level timber `into`.

    Where both have places, those say where they meet. Otherwise `at` is where the joist's side
    reference face crosses the receiving timber, from that one's reference shoulder, and `drop` how
    far in from that timber's upper or lower reference face the joist's top lies.
    """

    itself: ClassVar[str] = "cannot bear on its own timber; name another in into"

    at: Position | None = None
    drop: Position = NO_DROP

    def sums(self) -> dict[str, Sum]:
        """Where the joist crosses the timber it bears in."""
        return {"drop": self.drop} | ({"at": self.at} if self.at is not None else {})

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
            problem = f"{timber.name} stands upright, and a joist and its beam both lie level"
            return (Fault(key, problem, "use a tenon there, or name a timber that lies level"),)
        if Direction.UP not in (joist.first_face, joist.second_face):
            problem = f"{joist.name} is not measured from its top, which is what comes level"
            remedy = 'write "up" for the reference face of it that is its top'
            return (Fault("timber", problem, remedy),)
        return ()
