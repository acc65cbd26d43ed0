"""What a timber's sheet holds: values only, with nothing in them that a screen would withhold.

The workbench makes these from a walk. A figure that cannot be trusted is left out there, so no form
of a sheet can print it.
"""

from dataclasses import dataclass

from benchmate.layout.common import crown_goes
from benchmate.layout.standing import Standing, State
from benchmate.layout.step import Layout, Step
from benchmate.measure.printing import Tape
from benchmate.model.feature import Beside, Reading
from benchmate.model.project import Timber
from benchmate.model.stick import ENDS

CAUTION = (
    "benchmate checks arithmetic and sequence, not strength. Sizes, spans, notches and pegs that "
    "carry load are for local code and a licensed engineer."
)
"""What stands at the foot of every page."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Issue:
    """Which project a sheet is of, when it was made, and how old its figures are, in words."""

    project: str
    made: str
    as_of: str

    @property
    def words(self) -> str:
        """The issue in one line, with what to do about it."""
        return (
            f"{self.project}. Sheet made {self.made}; figures as of {self.as_of}: look again if a "
            "size was typed since."
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """One step as a sheet tells it.

    `readings` are its figures, the one to work from first, and `beside` those told with them. Both
    are empty where `withheld` says why they cannot be trusted. `waits_for` is what comes first.
    """

    step: Step
    standing: Standing
    readings: tuple[Reading, ...]
    beside: tuple[Beside, ...]
    withheld: str = ""
    waits_for: str = ""

    @property
    def state(self) -> str:
        """Where the step stands, in a word: a stop first, then a tick, then what it waits for."""
        if self.withheld:
            return "stop"
        if self.standing.state is State.OPEN and self.waits_for:
            return "waits"
        return self.standing.state.value


@dataclass(frozen=True, slots=True, kw_only=True)
class TimberSheet:
    """Everything on one timber's sheet.

    `stops` say what cannot be cut as it is drawn or measured, `looks` what to look at before
    cutting, `used` the measured and as-cut sizes that the figures go
    by, `noted` the notes and blemishes, a line each. `trouble` says why no
    figure of the timber can be trusted.
    """

    issue: Issue
    timber: Timber
    layout: Layout
    tape: Tape
    hand: str
    rule: str
    items: tuple[Item, ...]
    stops: tuple[str, ...] = ()
    looks: tuple[str, ...] = ()
    used: tuple[str, ...] = ()
    noted: tuple[str, ...] = ()
    trouble: str = ""

    @property
    def stopped(self) -> frozenset[str]:
        """The features whose figures are withheld."""
        return frozenset(item.step.feature for item in self.items if item.withheld)

    @property
    def drawn(self) -> bool:
        """Whether the faces can be drawn: not while where the timber ends is withheld."""
        return not self.trouble and ENDS not in self.stopped

    @property
    def done(self) -> int:
        """How many steps are ticked and still true."""
        return sum(item.standing.state is State.TICKED for item in self.items)

    @property
    def crown(self) -> str:
        """Where the crown goes, in words."""
        return crown_goes(self.layout.stick)
