"""One timber as it stands: its walk, what is ticked, and where to go next."""

from collections.abc import Collection
from dataclasses import dataclass

from benchmate.checks.design import TICK_OUT_OF_DATE, findings_on
from benchmate.layout.standing import Standing, State, shoulder_struck, standings
from benchmate.layout.step import Layout, Step, shown_readings
from benchmate.measure.printing import Tape
from benchmate.model.feature import Reading
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Progress
from benchmate.model.project import Timber
from benchmate.model.stick import ENDS, STICK


@dataclass(frozen=True, slots=True, kw_only=True)
class Walk:
    """A timber's steps with their states. `trouble` says why its figures cannot be trusted."""

    timber: Timber
    layout: Layout
    progress: Progress
    standings: tuple[Standing, ...]
    findings: tuple[Finding, ...]
    tape: Tape
    trouble: str = ""

    @property
    def steps(self) -> tuple[Step, ...]:
        """The steps in order."""
        return self.layout.steps

    @property
    def done(self) -> int:
        """How many steps are ticked and still true."""
        return sum(found.state is State.TICKED for found in self.standings)

    @property
    def look_again(self) -> int:
        """How many ticked steps no longer read as they did."""
        return sum(found.state is State.LOOK_AGAIN for found in self.standings)

    @property
    def stops(self) -> tuple[Finding, ...]:
        """What keeps joints of the timber from being cut as they are drawn or measured."""
        return tuple(found for found in self.findings if found.severity is Severity.STOP)

    @property
    def stopped(self) -> bool:
        """Whether a joint of the timber cannot be cut as it is drawn or measured."""
        return bool(self.stops)

    @property
    def struck(self) -> bool:
        """Whether marks along the timber may be measured from its reference shoulder."""
        return shoulder_struck(self.layout, self.progress)

    def place(self, step: str) -> int:
        """Where a step stands in the order; 0 for an unknown one."""
        for place, found in enumerate(self.steps):
            if found.id == step:
                return place
        return 0

    def standing(self, step: str) -> Standing:
        """The state of a step by id. Raises KeyError for an unknown one."""
        for found, standing in zip(self.steps, self.standings, strict=True):
            if found.id == step:
                return standing
        raise KeyError(step)

    def next_open(self, after: int = -1, passing: Collection[str] = ()) -> int | None:
        """The next step to do after a place, from the top again if need be; None when all done.

        Steps whose ids are in `passing` are passed over.
        """
        count = len(self.steps)
        for ahead in range(1, count + 1):
            place = (after + ahead) % count
            done = self.standings[place].state is State.TICKED
            if not done and self.steps[place].id not in passing:
                return place
        return None

    def readings(self, step: Step, *, swapped: bool = False) -> tuple[Reading, ...]:
        """A step's readings, the one to work from first."""
        return shown_readings(step, shoulder_struck=self.struck, swapped=swapped)

    def findings_at(self, step: Step) -> tuple[Finding, ...]:
        """What to look at in a step's joint; a tick out of date is told by its own step."""
        return tuple(
            finding
            for finding in self.findings
            if finding.severity is not Severity.STOP
            and step.feature in (finding.feature, finding.also)
            and finding.code != TICK_OUT_OF_DATE
        )

    def withheld(self, step: Step) -> str:
        """Why a step's figures are not to be shown, and what to do; empty where they may be."""
        if self.trouble:
            return self.trouble
        stop = self.stop(step)
        return f"{stop.message}. To mend it: {stop.remedy}." if stop else ""

    def stop(self, step: Step) -> Finding | None:
        """The finding that makes a step's figures unfit to cut to, if there is one."""
        own = step.feature == STICK and step.readings
        return next((f for f in self.stops if own or f.feature in (step.feature, ENDS)), None)


def walk_of(
    timber: Timber, layout: Layout, progress: Progress, tape: Tape, trouble: str = ""
) -> Walk:
    """A timber's walk with every step's state worked out."""
    return Walk(
        timber=timber,
        layout=layout,
        progress=progress,
        standings=standings(layout, progress, tape),
        findings=findings_on(layout, progress, tape),
        tape=tape,
        trouble=trouble,
    )
