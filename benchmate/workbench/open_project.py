"""An open project: every walk, every name, what others change, and what a change would move."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import NamedTuple

from benchmate.frame.frame import Frame, Real, real_of
from benchmate.layout.step import Step
from benchmate.measure.printing import Tape
from benchmate.measure.reading import Unit
from benchmate.model.findings import Finding, Severity
from benchmate.model.progress import Progress
from benchmate.model.project import Project, Timber
from benchmate.model.stick import ALL_ALONG
from benchmate.model.words import visible
from benchmate.store.files import PROJECT_FILE, progress_name
from benchmate.store.keeper import Changes, Keeper
from benchmate.store.kept_project import Rewritten
from benchmate.store.moving import Move, moved
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import parse_project
from benchmate.workbench.actions import Change, Sizes, sizes_at, with_sizes
from benchmate.workbench.keeping import BadProjectError, told_if_bad, told_if_not_kept
from benchmate.workbench.names import Named, names_of
from benchmate.workbench.preferences import PLAIN, Preferences
from benchmate.workbench.ripple import Ripple, ripple
from benchmate.workbench.walk import Walk
from benchmate.workbench.walks import Walks


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


class Kept(NamedTuple):
    """A timber's progress just before a change and after it."""

    before: Progress
    after: Progress


def parsed(text: str) -> Project:
    """The project that the text of a project file makes. Raises BadProjectError."""
    try:
        return parse_project(text.encode())
    except ProjectError as error:
        raise BadProjectError(error) from error


class OpenProject:
    """One project folder: what stands in it, what trying something would move, what is kept."""

    def __init__(self, keeper: Keeper) -> None:
        self._keeper = keeper
        self._broken: dict[str, str] = {}
        self._real = self._real_sizes(self.project, self._progress)
        self.preferences = PLAIN
        self.frame = Frame(self.project, self._real)
        self._walks = Walks(self.frame, self._progress, self._trouble)

    @property
    def project(self) -> Project:
        """The project as last read."""
        return self._keeper.project

    @property
    def tape(self) -> Tape:
        """How lengths are shown here: by the framer's settings, or as the project says."""
        return self.frame.tape

    @property
    def bare_words(self) -> str:
        """What a typed number without a unit is, where the figures shown are of other units."""
        bare = self.project.bare
        if self.tape.graduation.metric is (bare is Unit.MM):
            return ""
        return f"without a unit: {'mm' if bare is Unit.MM else 'inches'}"

    def prefer(self, preferences: Preferences) -> None:
        """Go by a framer's settings. They move no mark and write no file."""
        self.preferences = preferences
        self.frame = Frame(self.project, self._real, preferences.tape(self.project))
        self._walks.take(self.frame)

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

    def names(self) -> tuple[Named, ...]:
        """The project's lines, levels, lengths and sections, as written and what they come to."""
        return names_of(self.frame, self._keeper.written())

    def try_name(self, table: str, name: str, text: str) -> Ripple:
        """What writing another text for a name would move. Raises BadTextError, NotKeptError."""
        with told_if_bad(table, name):
            project = self._keeper.try_name(table, name, text)
        return self._ripple(project, self._real)

    def project_text(self) -> str:
        """The whole project file as last read or written, to the character."""
        return self._keeper.text()

    def try_project(self, text: str, moves: Sequence[Move] = (), base: str = "") -> Ripple:
        """What another text for the project file would do. Raises BadProjectError.

        Where ids or names change, `moves` takes progress to the new ids, and `base` is the file
        with those words and nothing else changed: it is what the rest is held against.
        """
        project = parsed(text)
        if not base:
            return self._ripple(project, self._real_sizes(project, self._progress))
        progress = self._moved_progress(moves)
        old = parsed(base)
        before = Frame(old, self._real_sizes(project, progress), self.preferences.tape(old))
        real = self._real_sizes(project, progress)
        after = Frame(project, real, self.preferences.tape(project))
        return ripple(before, after, Walks(before, progress, lambda _timber: "").of)

    def _moved_progress(self, moves: Sequence[Move]) -> Callable[[str], Progress]:
        """Gives the progress of a timber by the id that it would have."""
        by_new = {move.new: move for move in moves}

        def progress(timber: str) -> Progress:
            move = by_new.get(timber)
            return moved(self._progress(move.old), move) if move else self._progress(timber)

        return progress

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
        with told_if_not_kept():
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
        frame = Frame(project, real, self.preferences.tape(project))
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

    def _keep(self, timber: str, change: Change) -> Kept:
        """Change what is kept for a timber, on top of what others wrote. Raises NotKeptError."""
        found: list[Progress] = []

        def noted(progress: Progress) -> Progress:
            found.append(progress)
            return change(progress)

        with told_if_not_kept():
            after = self._keeper.keep(timber, noted)
        if real_of(after) != self._real.get(timber):
            self._renew()
        else:
            self._walks.stand(self.frame.neighbours(timber))
        return Kept(found[0], after)

    def _put_name(self, table: str, name: str, text: str) -> str:
        """Write another text for a name, and give the one it had. Raises BadTextError."""
        with told_if_bad(table, name):
            old = self._keeper.set_name(table, name, text)
        self._rewritten()
        return old

    def _rewrite(self, change: Callable[[str], str], moves: Sequence[Move] = ()) -> Rewritten:
        """Change the text of the project file, and take progress to other ids with it.

        Raises BadTextError, NotKeptError; what was written before that counts.
        """
        try:
            with told_if_bad():
                rewritten = self._keeper.rewrite(change, moves)
        finally:
            self._renew()
        self._rewritten()
        return rewritten

    def _rewritten(self) -> None:
        """Go by the project file as it has just been written."""
        self._broken.pop(PROJECT_FILE, None)
        self._renew()
