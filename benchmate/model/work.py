"""What every piece of work on the timbers tells the rest of the program: joints and chamfers."""

from abc import ABC, abstractmethod
from typing import TYPE_CHECKING, NamedTuple

from benchmate.measure.length import Length
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction, end_words
from benchmate.model.fields import Id
from benchmate.model.record import Record

if TYPE_CHECKING:
    from collections.abc import Mapping

    from benchmate.model.project import Timber


class Extension(NamedTuple):
    """Wood a joint needs beyond the shoulder at one end of a timber."""

    timber: str
    end: Direction
    length: Length


class Fault(NamedTuple):
    """A parameter that cannot stand beside the timbers it is for."""

    key: str
    problem: str
    remedy: str


def end_fault(key: str, end: Direction, timber: "Timber") -> Fault | None:
    """The fault of naming an end that a timber does not have, if it is one."""
    ends = (timber.reference_end, timber.reference_end.opposite)
    if end in ends:
        return None
    words = " and ".join(end_words(each) for each in ends)
    return Fault(
        key,
        f"{timber.name} has no {end_words(end)}: its ends are its {words}",
        "name one of its ends",
    )


class Work(Record, ABC):
    """A joint or other work, written once, on one timber or more.

    Each family's record derives from this and answers for its own parameters.
    """

    id: Id

    @abstractmethod
    def timbers(self) -> dict[str, str]:
        """The timbers the work touches, each under the key of the file that names it."""

    def joins(self) -> bool:
        """Whether its timbers meet, so that the sizes of one bear on the marks of the others."""
        return True

    def sums(self) -> dict[str, Sum]:
        """The parameters that may hold names of levels and lengths, by key."""
        return {}

    def extensions(self) -> tuple[Extension, ...]:
        """The tenons it puts on the ends of timbers."""
        return ()

    def faults(self, timbers: "Mapping[str, Timber]") -> tuple[Fault, ...]:  # noqa: ARG002 - each family's own
        """What cannot be, given how the timbers stand. All the timbers it names are known."""
        return ()
