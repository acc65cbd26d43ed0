"""One open project: what is kept on disk, and what others change there meanwhile."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Self

from benchmate.model.journal import Line
from benchmate.model.past import Past
from benchmate.model.progress import Progress
from benchmate.model.project import Project
from benchmate.store.files import (
    PROGRESS_FOLDER,
    PROJECT_FILE,
    Found,
    Stamp,
    progress_name,
    read_file,
    stamp,
    trouble,
)
from benchmate.store.journal import Journal
from benchmate.store.kept_project import KeptProject, Rewritten
from benchmate.store.lock import Claim, Claimed
from benchmate.store.moving import Move, check_room, moved, put_aside, take_away
from benchmate.store.problem import KeepError, Problem, ProjectError
from benchmate.store.progress_file import progress_text
from benchmate.store.reading import find_progress, parse_progress
from benchmate.store.writing import make_folder, write_atomically

TAKEN_OVER = "another benchmate has taken this project over, or its lock file was removed"
"""Why a keeper that could write no longer may."""

ONLY_READ = "this project was opened only to be read"
"""Why a keeper that never asked to write may not."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Changes:
    """What others changed since last looked: what was read again, and what cannot be read."""

    project: bool = False
    timbers: tuple[str, ...] = ()
    problems: tuple[Problem, ...] = ()
    lost: bool = False
    """Whether the right to write was lost."""

    def __bool__(self) -> bool:
        return self != Changes()


@dataclass(slots=True)
class _Kept:
    """A timber's progress as last read or written, and the stamp of the file it was."""

    stamp: Stamp | None
    progress: Progress | None = None
    sound: bool = True


class Keeper:
    """A project folder that is open, to be written by one program at a time.

    `read_only` is empty, or says plainly why nothing can be kept.
    """

    def __init__(self, folder: Path, found: Found) -> None:
        self.folder = folder
        self._file = KeptProject(folder, found)
        self._journal = Journal(folder)
        self.read_only = ONLY_READ
        self._claim: Claim | None = None
        self._told: dict[str, tuple[Problem, ...]] = {}
        self._kept = {timber.id: self._unread(timber.id) for timber in self.project.timbers}

    @property
    def project(self) -> Project:
        """The project as last read or written."""
        return self._file.project

    @classmethod
    def read(cls, folder: Path) -> Self:
        """Open a project folder only to read it; another program may go on writing it.

        Raises ProjectError or KeepError if the project cannot be read.
        """
        return cls(folder, read_file(folder, PROJECT_FILE))

    @classmethod
    def open(cls, folder: Path, *, over: bool = False) -> Self:
        """Open a project folder, read-only if another program writes it or none can.

        Raises ProjectError or KeepError if the project cannot be read.
        """
        keeper = cls.read(folder)
        keeper.claim(over=over)
        return keeper

    def claim(self, *, over: bool = False) -> None:
        """Become the writer, or say in `read_only` why not; a writer stays one."""
        if self._claim is not None:
            return
        try:
            self._claim = Claim.take(self.folder, over=over)
        except Claimed as claimed:
            self.read_only = str(claimed)
        except KeepError as error:
            self.read_only = f"nothing can be written here: {error.problem}"
        else:
            self.read_only = ""

    def strays(self) -> tuple[str, ...]:
        """The progress files of timbers the project does not have. Raises KeepError."""
        kept_in = self.folder / PROGRESS_FOLDER
        if kept_in.exists() and not kept_in.is_dir():
            remedy = "move it away, so that ticks can be kept in a folder of that name"
            raise KeepError(kept_in, "is not a folder", remedy)
        known = {timber.id for timber in self.project.timbers}
        try:
            names = sorted(path.stem for path in kept_in.glob("*.toml"))
        except OSError as error:
            raise trouble(kept_in, error) from error
        return tuple(name for name in names if name not in known)

    def progress(self, timber: str) -> Progress:
        """What is kept for a timber, read when first asked for. Raises ProjectError, KeepError."""
        kept = self._of(timber)
        if kept.progress is None:
            return self._read(timber)
        return kept.progress

    def keep(self, timber: str, change: Callable[[Progress], Progress]) -> Progress:
        """Change what is kept for a timber; on disk before this returns.

        What others wrote meanwhile is read first and the change made on top of it. Raises
        KeepError if it cannot be written, and ProjectError, leaving the file, if that is broken
        or what it would become could not be read again.
        """
        self.check_writing()
        before = self._fresh(timber)
        after = change(before)
        if after != before:
            self._put(timber, after)
        return after

    def _put(self, timber: str, progress: Progress) -> None:
        data = progress_text(progress).encode()
        parse_progress(data, timber, self.project.bare)
        path = self.folder / progress_name(timber)
        make_folder(path.parent)
        self._kept[timber] = _Kept(write_atomically(path, data), progress)

    def written(self) -> dict[str, dict[str, str]]:
        """The texts of the project file as they are written, by table and key."""
        return self._file.written()

    def try_name(self, table: str, name: str, text: str) -> Project:
        """The project as it would be with one value of its file reworded; nothing is written.

        Raises ProjectError, KeepError as `set_name` does.
        """
        return self._file.try_name(table, name, text)

    def set_name(self, table: str, name: str, text: str) -> str:
        """Reword one value of the project file and give the text it had.

        It is on disk before this returns. What others wrote meanwhile is read first, and every
        other byte stays as it is. Raises KeepError if it cannot be written, or not be reworded,
        and ProjectError, leaving the file, if that is broken or what it would become is.
        """
        self.check_writing()
        old = self._file.set_name(table, name, text)
        self._told.pop(PROJECT_FILE, None)
        return old

    def text(self) -> str:
        """The whole project file as last read or written."""
        return self._file.text()

    def rewrite(self, change: Callable[[str], str], moves: Sequence[Move] = ()) -> Rewritten:
        """Change the text of the project file as it is now; on disk before this returns.

        What it would become is read first. Progress moves to other ids with it; nothing moves where
        the text stays as it is. Raises as `set_name` does, whatever `change` raises, and KeepError
        if a file is kept already under one of the ids.
        """
        self.check_writing()
        before = self._file.text_now()
        if change(before) == before:
            return Rewritten(before, before)
        check_room(self.folder, moves)
        news = {move.new: moved(self._fresh(move.old), move) for move in moves}
        kept = {move.new for move in moves if self._of(move.old).stamp is not None}
        leaving = [move.old for move in moves if move.old != move.new]
        back = put_aside(self.folder, leaving)
        try:
            rewritten = self._file.rewrite(change)
        except BaseException:
            back()
            raise
        self._told.pop(PROJECT_FILE, None)
        for timber in leaving:
            self._kept.pop(timber, None)
        for timber in kept:
            self._put(timber, news[timber])
        take_away(self.folder, leaving)
        return rewritten

    def check_writing(self) -> None:
        """Raise KeepError unless this is the one that may write the project."""
        self._lost()
        if self.read_only:
            raise KeepError(self.folder, self.read_only, "take the project over, or copy it")

    def past(self) -> Past:
        """What was done in the project, as far as its journal can be read."""
        return self._journal.past()

    def note(self, line: Line) -> None:
        """Put a line into the journal, after what it tells of is on disk.

        A journal that cannot be written undoes nothing and raises nothing: see `journal_trouble`.
        """
        if not self.read_only:
            self._journal.add(line)

    def journal_trouble(self) -> str:
        """What is wrong with the journal and was not told before; empty for nothing."""
        return self._journal.to_tell(writing=not self.read_only)

    def changed(self) -> Changes:
        """Look for what others changed, and read it again; what cannot be read stays as it was."""
        lost = self._lost()
        problems: list[Problem] = []
        project = self._look_at_project(problems)
        timbers = tuple(
            timber.id for timber in self.project.timbers if self._look_at(timber.id, problems)
        )
        return Changes(project=project, timbers=timbers, problems=tuple(problems), lost=lost)

    def take_over(self) -> None:
        """Become the writer even while another program is. Raises KeepError."""
        claim = Claim.take(self.folder, over=True)
        self.close()
        self._claim = claim
        self.read_only = ""

    def close(self) -> None:
        """Let another program write; again does nothing."""
        if self._claim is not None:
            self._claim.release()
            self._claim = None
            self.read_only = "this project is closed"

    def _lost(self) -> bool:
        if self._claim is None or self._claim.mine():
            return False
        self.close()
        self.read_only = TAKEN_OVER
        return True

    def _of(self, timber: str) -> _Kept:
        if timber not in self._kept:
            self._kept[timber] = self._unread(timber)
        return self._kept[timber]

    def _unread(self, timber: str) -> _Kept:
        try:
            return _Kept(stamp(self.folder, progress_name(timber)))
        except KeepError:
            # Told when it is asked for, so that one file does not keep the others shut.
            return _Kept(None)

    def _fresh(self, timber: str) -> Progress:
        kept = self._of(timber)
        current = kept.stamp == stamp(self.folder, progress_name(timber))
        if kept.progress is not None and kept.sound and current:
            return kept.progress
        return self._read(timber)

    def _read(self, timber: str) -> Progress:
        found = find_progress(self.folder, timber)
        seen, progress = None, Progress(timber=timber)
        if found is not None:
            seen = found.stamp
            progress = parse_progress(found.data, timber, self.project.bare)
        self._kept[timber] = _Kept(seen, progress)
        return progress

    def _look_at_project(self, problems: list[Problem]) -> bool:
        try:
            if not self._file.changed():
                return False
        except (ProjectError, KeepError) as error:
            self._tell(_problems(error, PROJECT_FILE), problems)
            return False
        self._told.pop(PROJECT_FILE, None)
        return True

    def _tell(self, found: tuple[Problem, ...], problems: list[Problem]) -> None:
        """Add what has not been told already, as a look is taken every second."""
        if self._told.get(found[0].file) != found:
            self._told[found[0].file] = found
            problems.extend(found)

    def _look_at(self, timber: str, problems: list[Problem]) -> bool:
        kept, name = self._of(timber), progress_name(timber)
        now = None
        try:
            now = stamp(self.folder, name)
            if now == kept.stamp:
                return False
            self._read(timber)
        except (ProjectError, KeepError) as error:
            self._kept[timber] = _Kept(now, kept.progress, sound=False)
            self._tell(_problems(error, name), problems)
            return False
        self._told.pop(name, None)
        return True


def _problems(error: ProjectError | KeepError, name: str) -> tuple[Problem, ...]:
    if isinstance(error, ProjectError):
        return error.problems
    return (
        Problem(
            file=name, line=None, key="", excerpt="", message=error.problem, remedy=error.remedy
        ),
    )
