"""An open project on the bench: every walk, every tick, every typed size, and undo.

The screen and the plain commands both work through a `Bench`. It keeps nothing back: a change is
on disk before the call that made it returns.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import NamedTuple

from benchmate.frame.frame import Frame, Real, real_of
from benchmate.layout.step import Step
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Progress
from benchmate.model.project import Project, Timber
from benchmate.model.stick import ALL_ALONG
from benchmate.model.words import visible
from benchmate.store.document import key_text
from benchmate.store.files import PROJECT_FILE, progress_name
from benchmate.store.keeper import Changes, Keeper
from benchmate.store.moving import Move, moved
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import parse_project
from benchmate.workbench.actions import (
    Change,
    OvertakenError,
    Sizes,
    both,
    measured_by,
    sizes_at,
    sizes_back,
    tick_for,
    with_shown,
    with_sizes,
    with_tick,
)
from benchmate.workbench.names import Named, NewText, names_of
from benchmate.workbench.ripple import Ripple, ripple
from benchmate.workbench.walk import Walk
from benchmate.workbench.walks import Walks


class NotKeptError(Exception):
    """An action that could not be kept on disk; nothing was changed."""


class NotUndoneError(NotKeptError):
    """An action that is not taken back, as somebody has changed the same thing outside since."""


@contextmanager
def _told_if_not_kept() -> Iterator[None]:
    """Turn what the store raises into what a framer is told; the folder is known to him."""
    try:
        yield
    except KeepError as error:
        raise NotKeptError(f"{error.problem}; {error.remedy}") from error
    except ProjectError as error:
        raise NotKeptError(str(error)) from error


class BadTextError(NotKeptError):
    """A text typed for a name that cannot stand: where, what is wrong with it, and what to do.

    `excerpt` is the line it would make in the project file, with a caret where that is known.
    """

    def __init__(self, where: str, problem: str, remedy: str, excerpt: str) -> None:
        super().__init__(f"{where}: {problem}; {remedy}")
        self.where = where
        self.problem = problem
        self.remedy = remedy
        self.excerpt = excerpt


class BadProjectError(NotKeptError):
    """A text for the whole project file that makes no sound project: everything wrong with it."""

    def __init__(self, error: ProjectError) -> None:
        super().__init__(str(error))
        self.problems = error.problems


@contextmanager
def _told_if_bad(table: str, name: str) -> Iterator[None]:
    """Turn the first thing the store finds wrong with a new text into what a framer is told."""
    try:
        yield
    except KeepError as error:
        raise NotKeptError(f"{error.problem}; {error.remedy}") from error
    except ProjectError as error:
        first = error.problems[0]
        place = first.file if first.line is None else f"{first.file}:{first.line}"
        own = first.file == PROJECT_FILE and first.key == key_text((table, name))
        where = name if own else ": ".join(filter(None, (place, first.key)))
        raise BadTextError(where, first.message, first.remedy, first.excerpt) from error


class Done(NamedTuple):
    """One action that can be undone: what it was, where the framer stood, and what undoes it."""

    words: str
    timber: str
    step: str
    back: Callable[[], object]


class _RealSizes(Mapping[str, Real]):
    """The real sizes of every timber, each read from its progress once, when first asked for."""

    def __init__(self, progress: Callable[[str], Progress], timbers: tuple[str, ...]) -> None:
        self._progress = progress
        self._timbers = dict.fromkeys(timbers)
        self._read: dict[str, Real] = {}

    def __getitem__(self, timber: str) -> Real:
        if timber not in self._timbers:
            raise KeyError(timber)
        if timber not in self._read:
            self._read[timber] = real_of(self._progress(timber))
        return self._read[timber]

    def __iter__(self) -> Iterator[str]:
        return iter(self._timbers)

    def __len__(self) -> int:
        return len(self._timbers)


def parsed(text: str) -> Project:
    """The project that the text of a project file makes. Raises BadProjectError."""
    try:
        return parse_project(text.encode())
    except ProjectError as error:
        raise BadProjectError(error) from error


def now() -> datetime:
    """The time of a tick, to the second."""
    return datetime.now(UTC).replace(microsecond=0)


class Bench:
    """One project folder open for work, or for reading only."""

    def __init__(self, keeper: Keeper, clock: Callable[[], datetime] = now) -> None:
        self._keeper = keeper
        self._clock = clock
        self._broken: dict[str, str] = {}
        self._done: list[Done] = []
        self._real = self._real_sizes(self.project, self._progress)
        self.frame = Frame(self.project, self._real)
        self._walks = Walks(self.frame, self._progress, self._trouble)

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
        """A file changed outside that cannot be read, so that what is shown is older; or empty.

        The file of a timber that the project has no more spoils nothing that is shown.
        """
        files = {PROJECT_FILE, *(progress_name(timber.id) for timber in self.timbers)}
        return next((told for file, told in self._broken.items() if file in files), "")

    @property
    def timbers(self) -> tuple[Timber, ...]:
        """The timbers in file order."""
        return self.project.timbers

    def walk(self, timber: str) -> Walk:
        """A timber as it stands. Raises KeyError for an unknown id.

        It stays the same object until something it follows from changes.
        """
        return self._walks.of(timber)

    def tick(self, timber: str, step: Step) -> Sizes | None:
        """Tick a step with what it reads now. Raises NotKeptError.

        A measuring step measures: the sizes it shows are kept with the tick where none were typed.
        Gives what is kept at its place then, or None where the tick brings no size.
        """
        old, before = self.walk(timber).progress.tick(step.id), self.sizes(timber, step)
        feature = self.walk(timber).layout.feature(step.feature)
        parts = feature.sizes if feature else ()
        sizes = measured_by(step, parts, before)
        ticked, back = with_tick(step.id, tick_for(step, self._clock())), with_tick(step.id, old)
        if sizes != before:
            back = both(back, sizes_back(sizes, before))
        self._keep(timber, both(ticked, with_shown(step, parts, before)))
        self._note(f"tick on {step.title}", timber, step.id, back)
        return None if sizes == before else sizes

    def untick(self, timber: str, step: Step) -> None:
        """Take a step's tick off. Raises NotKeptError."""
        old = self.walk(timber).progress.tick(step.id)
        if old is None:
            return
        self._keep(timber, with_tick(step.id, None))
        self._note(f"tick taken off {step.title}", timber, step.id, with_tick(step.id, old))

    def sizes(self, timber: str, step: Step) -> Sizes:
        """The real sizes kept at a step's place: its joint, or the whole stick."""
        walk = self.walk(timber)
        feature = walk.layout.feature(step.feature)
        place = feature.place[0] if feature and feature.place else ALL_ALONG
        tenon = feature is not None and bool(feature.sizes)
        return sizes_at(walk.progress, place, tenon=tenon)

    def try_sizes(self, timber: str, sizes: Sizes) -> Ripple:
        """What typing these sizes would move, on every timber they reach."""
        changed = with_sizes(sizes)(self.walk(timber).progress)
        return self._ripple(self.project, {**self._real, timber: real_of(changed)})

    def set_sizes(self, timber: str, step: str, sizes: Sizes) -> None:
        """Keep real sizes typed at a step. Raises NotKeptError."""
        tenon = sizes.as_cut is not None
        old = sizes_at(self.walk(timber).progress, sizes.place, tenon=tenon)
        self._keep(timber, with_sizes(sizes))
        words = f"sizes at {sizes.place.replace('-', ' ')}"
        self._note(words, timber, step, sizes_back(sizes, old))

    def names(self) -> tuple[Named, ...]:
        """The project's lines, levels, lengths and sections, as written and what they come to."""
        return names_of(self.frame, self._keeper.written())

    def try_name(self, table: str, name: str, text: str) -> Ripple:
        """What writing another text for a name would move. Raises BadTextError, NotKeptError."""
        with _told_if_bad(table, name):
            project = self._keeper.try_name(table, name, text)
        return self._ripple(project, self._real)

    def set_name(
        self, table: str, name: str, text: str, *, timber: str = "", step: str = ""
    ) -> None:
        """Write another text for a name of the project. Raises BadTextError, NotKeptError.

        `timber` and `step` are where the framer stands, so that undoing brings him back there.
        """
        old = self._put_name(table, name, text)
        wrote = self._keeper.written()[table][name]
        if old != wrote:
            back = partial(self._name_back, NewText(table, name, wrote), old)
            self._done.append(Done(f"{name} written as {text}", timber, step, back))

    @property
    def text(self) -> str:
        """The project file as last read, to the character."""
        return self._keeper.text

    def try_project(self, text: str, moves: Sequence[Move] = (), base: str = "") -> Ripple:
        """What another text for the project file would do. Raises BadProjectError.

        Where ids or names change, `moves` takes progress to the new ids, and `base` is the file
        with those words and nothing else changed: it is what the rest is held against.
        """
        project = parsed(text)
        if not base:
            return self._ripple(project, self._real_sizes(project, self._progress))
        progress = self._moved_progress(moves)
        before = Frame(parsed(base), self._real_sizes(project, progress))
        after = Frame(project, self._real_sizes(project, progress))
        return ripple(before, after, Walks(before, progress, lambda _timber: "").of)

    def _moved_progress(self, moves: Sequence[Move]) -> Callable[[str], Progress]:
        """Gives the progress of a timber by the id that it would have."""
        by_new = {move.new: move for move in moves}

        def progress(timber: str) -> Progress:
            move = by_new.get(timber)
            return moved(self._progress(move.old), move) if move else self._progress(timber)

        return progress

    def edit_project(
        self,
        words: str,
        text: str,
        *,
        timber: str = "",
        step: str = "",
        moves: Sequence[Move] = (),
    ) -> None:
        """Write another text for the project file, as one action that can be undone.

        `words` say what was done, `timber` and `step` are where the framer stands, and `moves`
        take progress to other ids. Raises BadProjectError, and NotKeptError if the file was
        changed since it was last read, or cannot be written.
        """
        old = self.text
        self._put_project(text, moves)
        if text != old:
            back = partial(self._project_back, text, old, tuple(move.back() for move in moves))
            self._done.append(Done(words, timber, step, back))

    def _put_project(self, text: str, moves: Sequence[Move]) -> None:
        try:
            with _told_if_not_kept():
                parsed(text)
                self._keeper.set_text(text, moves)
        finally:
            self._renew()
        self._broken.pop(PROJECT_FILE, None)

    def _project_back(self, wrote: str, old: str, moves: Sequence[Move]) -> None:
        """Write the text that the file had before, unless somebody has changed it since."""
        self.look()
        if self.text != wrote:
            raise OvertakenError(f"{PROJECT_FILE} is another now")
        self._put_project(old, moves)

    def undo(self) -> Done | None:
        """Take the last action back; None if there is none. Raises NotKeptError.

        What somebody has changed outside since is left as it is, and that action can no longer be
        taken back: NotUndoneError.
        """
        if not self._done:
            return None
        try:
            self._done[-1].back()
        except OvertakenError as error:
            last = self._done.pop()
            told = str(error) or f"{last.words}: these are others now"
            raise NotUndoneError(f"{told}, changed outside; not undone") from error
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
            self._renew()
        return changes

    def _note_broken(self, changes: Changes) -> None:
        read = {progress_name(timber) for timber in changes.timbers}
        if changes.project:
            read.add(PROJECT_FILE)
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

    @staticmethod
    def _real_sizes(project: Project, progress: Callable[[str], Progress]) -> Mapping[str, Real]:
        return _RealSizes(progress, tuple(timber.id for timber in project.timbers))

    def _frame_of(self, project: Project, real: Mapping[str, Real]) -> Frame:
        """A frame that works out only what can have changed."""
        frame = Frame(project, real)
        frame.carry_over(self.frame)
        return frame

    def _renew(self) -> None:
        """Go by the project and the real sizes as they are now; walks they leave alone stay."""
        self._real = self._real_sizes(self.project, self._progress)
        self.frame = self._frame_of(self.project, self._real)
        self._walks.take(self.frame)

    def _ripple(self, project: Project, real: Mapping[str, Real]) -> Ripple:
        return ripple(self.frame, self._frame_of(project, real), self.walk)

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

    def _note(self, words: str, timber: str, step: str, back: Change) -> None:
        """Remember an action on a timber, so that it can be undone."""
        told = f"{self.frame.timber(timber).name}, {words}"
        self._done.append(Done(told, timber, step, partial(self._keep, timber, back)))

    def _keep(self, timber: str, change: Change) -> None:
        with _told_if_not_kept():
            progress = self._keeper.keep(timber, change)
        if real_of(progress) != self._real.get(timber):
            self._renew()
        else:
            self._walks.stand(self.frame.neighbours(timber))

    def _put_name(self, table: str, name: str, text: str) -> str:
        """Write another text for a name, and give the one it had."""
        with _told_if_bad(table, name):
            old = self._keeper.set_name(table, name, text)
        self._broken.pop(PROJECT_FILE, None)
        self._renew()
        return old

    def _name_back(self, done: NewText, old: str) -> None:
        """Write the text a name had before, unless somebody has written another since."""
        self.look()
        now_ = self._keeper.written().get(done.table, {}).get(done.name)
        if now_ is None:
            raise OvertakenError(f"{done.name} is gone")
        if now_ != done.text:
            raise OvertakenError(f"{done.name} is {now_} now")
        self._put_name(done.table, done.name, old)
