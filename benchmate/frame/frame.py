"""A project with its real sticks: what the joint families and the layout work from."""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass, field

from benchmate.frame.levels import Levels
from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction
from benchmate.model.progress import AsCut, Measured, Progress
from benchmate.model.project import Project, Timber
from benchmate.model.stick import Stick
from benchmate.model.work import Work


@dataclass(frozen=True, slots=True)
class Real:
    """The real sizes typed for one timber."""

    measured: Mapping[str, Measured] = field(default_factory=dict)
    as_cut: Mapping[str, AsCut] = field(default_factory=dict)


def real_of(progress: Progress) -> Real:
    """The real sizes kept in a timber's progress."""
    return Real(progress.measured, progress.as_cut)


class Frame:
    """One project with one set of real sizes; make a new one when either changes.

    A stick is worked out when first asked for, so asking for one timber costs that timber and
    the ones it meets.
    """

    def __init__(self, project: Project, real: Mapping[str, Real]) -> None:
        self.project = project
        self.levels = Levels({**project.lengths, **project.levels}, project.sections)
        self._real = real
        self._timbers = {timber.id: timber for timber in project.timbers}
        self._sticks: dict[str, Stick] = {}
        self._works: defaultdict[str, list[Work]] = defaultdict(list)
        for work in project.works:
            for timber in dict.fromkeys(work.timbers().values()):
                self._works[timber].append(work)

    def timber(self, timber: str) -> Timber:
        """A timber's stored record. Raises KeyError for an unknown id."""
        return self._timbers[timber]

    def works_on(self, timber: str) -> tuple[Work, ...]:
        """The joints and chamfers that touch a timber, in file order."""
        return tuple(self._works.get(timber, ()))

    def value(self, total: Sum) -> Length:
        """What a sum of names and lengths comes to. Raises LevelError."""
        return self.levels.value(total)

    def stick(self, timber: str) -> Stick:
        """A timber with its real sizes. Raises KeyError for an unknown id."""
        found = self._sticks.get(timber)
        if found is None:
            found = self._sticks[timber] = self._make_stick(self._timbers[timber])
        return found

    def neighbours(self, timber: str) -> tuple[str, ...]:
        """The timbers that share a joint with this one, itself first."""
        found = [timber]
        for work in self.works_on(timber):
            if work.joins():
                found.extend(work.timbers().values())
        return tuple(dict.fromkeys(found))

    def inputs(self, timber: str) -> tuple[object, ...]:
        """Everything a timber's marks follow from: while it is equal, so are they."""
        works = self.works_on(timber)
        totals = (total for work in works for total in work.sums().values())
        return (
            self.timber(timber),
            works,
            tuple(map(self.value, totals)),
            tuple(map(self.stick, self.neighbours(timber))),
            self.project.practice,
            self.project.tape,
        )

    def _make_stick(self, timber: Timber) -> Stick:
        near = self._beyond(timber, timber.reference_end)
        far = self._beyond(timber, timber.reference_end.opposite)
        length = self.value(timber.length)
        real = self._real.get(timber.id, Real())
        return Stick(
            id=timber.id,
            name=timber.name,
            pose=timber.pose,
            nominal=self.nominal(timber),
            body=length - near - far if timber.length_is == "overall" else length,
            near=near,
            far=far,
            trim=self.project.practice.trim,
            measured=real.measured,
            as_cut=real.as_cut,
        )

    def nominal(self, timber: Timber) -> Section:
        """The section a timber is drawn with. Raises KeyError for an unknown section name."""
        if isinstance(timber.section, Section):
            return timber.section
        return self.project.sections[timber.section]

    def _beyond(self, timber: Timber, end: Direction) -> Length:
        beyond = ZERO
        for work in self.works_on(timber.id):
            for extension in work.extensions():
                if extension.timber == timber.id and extension.end is end:
                    beyond = max(beyond, extension.length)
        return beyond
