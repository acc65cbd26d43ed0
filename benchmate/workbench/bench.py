"""An open project on the bench: every walk, every tick, every typed size, and undo.

The screen and the plain commands both work through a `Bench`. It keeps nothing back: a change is
on disk before the call that made it returns.
"""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from benchmate.frame.frame import Frame, Real, real_of
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Progress
from benchmate.model.project import Project, Timber
from benchmate.model.stick import ALL_ALONG
from benchmate.model.words import visible
from benchmate.store.keeper import Changes, Keeper
from benchmate.store.problem import KeepError, ProjectError
from benchmate.workbench.actions import (
    Change,
    Sizes,
    sizes_at,
    tick_for,
    with_sizes,
    with_tick,
)
from benchmate.workbench.ripple import Ripple, ripple
from benchmate.workbench.walk import Walk, walk_of


class NotKeptError(Exception):
    """An action that could not be kept on disk; nothing was changed."""


@contextmanager
def _told_if_not_kept() -> Iterator[None]:
    """Turn what the store raises into what a framer is told; the folder is known to him."""
    try:
        yield
    except KeepError as error:
        raise NotKeptError(f"{error.problem}; {error.remedy}") from error
    except ProjectError as error:
        raise NotKeptError(str(error)) from error


class Done(NamedTuple):
    """One action that can be undone: what it was, where, and the change that takes it back."""

    words: str
    timber: str
    step: str
    back: Change
    sizes: bool


class _RealSizes(Mapping[str, Real]):
    """The real sizes of every timber, read from its progress when first asked for."""

    def __init__(self, progress: Callable[[str], Progress], timbers: tuple[str, ...]) -> None:
        self._progress = progress
        self._timbers = timbers

    def __getitem__(self, timber: str) -> Real:
        if timber not in self._timbers:
            raise KeyError(timber)
        return real_of(self._progress(timber))

    def __iter__(self) -> Iterator[str]:
        return iter(self._timbers)

    def __len__(self) -> int:
        return len(self._timbers)


def now() -> datetime:
    """The time of a tick, to the second."""
    return datetime.now(UTC).replace(microsecond=0)


class Bench:
    """One project folder open for work, or for reading only."""

    def __init__(self, keeper: Keeper, clock: Callable[[], datetime] = now) -> None:
        self._keeper = keeper
        self._clock = clock
        self._walks: dict[str, Walk] = {}
        self._broken: dict[str, str] = {}
        self._done: list[Done] = []
        self.frame = self._new_frame()

    @property
    def project(self) -> Project:
        """The project as last read."""
        return self._keeper.project

    @property
    def folder(self) -> Path:
        """Where it is kept."""
        return self._keeper.folder

    @property
    def read_only(self) -> str:
        """Why nothing can be kept, or empty."""
        return self._keeper.read_only

    @property
    def broken(self) -> str:
        """A file changed outside that cannot be read, so that what is shown is older; or empty."""
        return next(iter(self._broken.values()), "")

    @property
    def timbers(self) -> tuple[Timber, ...]:
        """The timbers in file order."""
        return self.project.timbers

    def walk(self, timber: str) -> Walk:
        """A timber as it stands. Raises KeyError for an unknown id."""
        found = self._walks.get(timber)
        if found is None:
            found = self._walks[timber] = self._make_walk(timber)
        return found

    def tick(self, timber: str, step: Step) -> None:
        """Tick a step with what it reads now. Raises NotKeptError."""
        old = self.walk(timber).progress.tick(step.id)
        tick = tick_for(step, self._clock())
        self._keep(timber, with_tick(step.id, tick))
        words = f"tick on {step.title}"
        self._done.append(Done(words, timber, step.id, with_tick(step.id, old), sizes=False))

    def untick(self, timber: str, step: Step) -> None:
        """Take a step's tick off. Raises NotKeptError."""
        old = self.walk(timber).progress.tick(step.id)
        if old is None:
            return
        self._keep(timber, with_tick(step.id, None))
        words = f"tick taken off {step.title}"
        self._done.append(Done(words, timber, step.id, with_tick(step.id, old), sizes=False))

    def sizes(self, timber: str, step: Step) -> Sizes:
        """The real sizes kept at a step's place: its joint, or the whole stick."""
        walk = self.walk(timber)
        feature = walk.layout.feature(step.feature)
        own_place = feature is not None and bool(feature.place)
        place = step.feature if own_place else ALL_ALONG
        tenon = feature is not None and bool(feature.sizes)
        return sizes_at(walk.progress, place, tenon=tenon)

    def try_sizes(self, timber: str, sizes: Sizes) -> Ripple:
        """What typing these sizes would move, on this timber and those it meets."""
        changed = with_sizes(sizes)(self.walk(timber).progress)
        after = Frame(self.project, {**self._sizes_near(timber), timber: real_of(changed)})
        timbers = self.frame.neighbours(timber)
        ticked = frozenset(
            (each, t.step) for each in timbers for t in self.walk(each).progress.ticks
        )
        return ripple(self.frame, after, timbers, ticked)

    def _sizes_near(self, timber: str) -> dict[str, Real]:
        """The real sizes of a timber, of those it meets, and of those that they meet."""
        near = self.frame.neighbours(timber)
        wide = {other for each in near for other in self.frame.neighbours(each)}
        return {each: real_of(self._progress(each)) for each in wide}

    def set_sizes(self, timber: str, step: str, sizes: Sizes) -> None:
        """Keep real sizes typed at a step. Raises NotKeptError."""
        tenon = sizes.as_cut is not None
        old = sizes_at(self.walk(timber).progress, sizes.place, tenon=tenon)
        self._keep(timber, with_sizes(sizes), sizes=True)
        words = f"sizes at {sizes.place.replace('-', ' ')}"
        self._done.append(Done(words, timber, step, with_sizes(old), sizes=True))

    def undo(self) -> Done | None:
        """Take the last action back; None if there is none. Raises NotKeptError."""
        if not self._done:
            return None
        last = self._done[-1]
        self._keep(last.timber, last.back, sizes=last.sizes)
        return self._done.pop()

    def strays(self) -> tuple[Finding, ...]:
        """Progress kept for timbers the project does not have: never dropped in silence."""
        return tuple(
            Finding(
                code="progress-without-timber",
                severity=Severity.LOOK,
                timber=stray,
                feature="",
                message=f"progress/{stray}.toml is kept, but the project has no such timber",
                remedy="give the timber the id it had, or rename the file to the id it has now",
            )
            for stray in map(visible, self._keeper.strays())
        )

    def first_place(self) -> tuple[str, int] | None:
        """Where to open: the timber ticked last, at its next open step; None without timbers."""
        if not self.timbers:
            return None
        latest = max(self.timbers, key=lambda timber: self._last_tick(timber.id)).id
        return latest, self.walk(latest).next_open() or 0

    def look(self) -> Changes:
        """Notice what was changed outside, and take it in."""
        changes = self._keeper.changed()
        self._note_broken(changes)
        if changes.project or changes.timbers:
            self._walks.clear()
            self.frame = self._new_frame()
        return changes

    def _note_broken(self, changes: Changes) -> None:
        read = {f"progress/{timber}.toml" for timber in changes.timbers}
        if changes.project:
            read.add("project.toml")
        for file in read:
            self._broken.pop(file, None)
        for problem in reversed(changes.problems):
            self._broken[problem.file] = problem.text().splitlines()[0]

    def take_over(self) -> None:
        """Become the one that keeps this project. Raises NotKeptError."""
        with _told_if_not_kept():
            self._keeper.take_over()
        self.look()

    def close(self) -> None:
        """Let the project go."""
        self._keeper.close()

    def _last_tick(self, timber: str) -> float:
        ticks = self._progress(timber).ticks
        return max((tick.at.timestamp() for tick in ticks), default=0.0)

    def _new_frame(self) -> Frame:
        timbers = tuple(timber.id for timber in self.project.timbers)
        return Frame(self.project, _RealSizes(self._progress, timbers))

    def _progress(self, timber: str) -> Progress:
        try:
            return self._keeper.progress(timber)
        except (ProjectError, KeepError):
            return Progress(timber=timber)

    def _trouble(self, timber: str) -> str:
        """Why a timber's figures cannot be trusted: its own file or that of one it meets."""
        for each in self.frame.neighbours(timber):
            try:
                self._keeper.progress(each)
            except (ProjectError, KeepError) as error:
                return str(error)
        return ""

    def _make_walk(self, timber: str) -> Walk:
        return walk_of(
            self.frame.timber(timber),
            lay_out(self.frame, timber),
            self._progress(timber),
            self.project.tape,
            self._trouble(timber),
        )

    def _keep(self, timber: str, change: Change, *, sizes: bool = False) -> None:
        with _told_if_not_kept():
            progress = self._keeper.keep(timber, change)
        if sizes or real_of(progress) != real_of(self.walk(timber).progress):
            for each in self.frame.neighbours(timber):
                self._walks.pop(each, None)
            self.frame = self._new_frame()
            return
        walk = self.walk(timber)
        self._walks[timber] = walk_of(walk.timber, walk.layout, progress, walk.tape, walk.trouble)
