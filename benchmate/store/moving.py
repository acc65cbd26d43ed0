"""Progress that goes along when a timber, or a joint on it, is called by another id.

Nothing of it may be lost, nor be taken for that of another timber, whenever the machine stops: the
old files are put aside under names that no timber has, which are told of like any other stray; then
the project is written; then the files of the new ids; and only then are the old ones taken away.
"""

from collections.abc import Callable, Iterable, Mapping
from pathlib import Path
from typing import NamedTuple

from benchmate.model.progress import Progress, Tick
from benchmate.store.files import PROGRESS_FOLDER, progress_name, stamp, trouble
from benchmate.store.problem import KeepError

ASIDE = "-moving"
"""What stands behind the old id in the name of a file that has been put aside."""


class Move(NamedTuple):
    """A timber's progress going from one id to another, or to the same, and what on it does.

    `features` gives the new id of each joint's part on the timber that is called otherwise.
    """

    old: str
    new: str
    features: Mapping[str, str]

    def back(self) -> "Move":
        """The move that undoes it."""
        return Move(self.new, self.old, {new: old for old, new in self.features.items()})


def moved(progress: Progress, move: Move) -> Progress:
    """A timber's progress under its new id, with every tick, size and note that it had."""
    names = move.features
    ticks = tuple(_ticked(tick, names) for tick in progress.ticks)
    sizes = {
        table: {names.get(place, place): size for place, size in getattr(progress, table).items()}
        for table in ("measured", "as_cut")
    }
    notes = tuple(
        note.model_copy(update={"about": _step(note.about, names)}) for note in progress.notes
    )
    update = {"timber": move.new, "ticks": ticks, "notes": notes, **sizes}
    return progress.model_copy(update=update)


def _ticked(tick: Tick, names: Mapping[str, str]) -> Tick:
    """A tick on its step by the new name, with what it remembers of other joints' lines."""
    marked = {_step(name, names): figure for name, figure in tick.marked.items()}
    return tick.model_copy(update={"step": _step(tick.step, names), "marked": marked})


def _step(step: str, names: Mapping[str, str]) -> str:
    feature, slash, line = step.partition("/")
    return f"{names.get(feature, feature)}{slash}{line}"


def check_room(folder: Path, moves: Iterable[Move]) -> None:
    """Raise KeepError where a file is kept already under an id that progress is to move to."""
    moves = tuple(moves)
    leaving = {move.old for move in moves}
    for move in moves:
        name = progress_name(move.new)
        if move.new not in leaving and stamp(folder, name) is not None:
            problem = "is kept already, for a timber that the project has not"
            raise KeepError(folder / name, problem, "move that file away, or give another id")


def put_aside(folder: Path, timbers: Iterable[str]) -> Callable[[], None]:
    """Put the progress files of some timbers aside; gives what puts them back. Raises KeepError."""
    done: list[tuple[Path, Path]] = []

    def back() -> None:
        for path, aside in reversed(done):
            _rename(aside, path)

    for timber in timbers:
        path = folder / progress_name(timber)
        aside = _aside(folder, timber)
        if stamp(folder, progress_name(timber)) is None:
            continue
        try:
            _rename(path, aside)
        except KeepError:
            back()
            raise
        done.append((path, aside))
    return back


def take_away(folder: Path, timbers: Iterable[str]) -> None:
    """Take away what was put aside, now that it is kept under other ids. Raises KeepError."""
    for timber in timbers:
        aside = _aside(folder, timber)
        try:
            aside.unlink(missing_ok=True)
        except OSError as error:
            raise trouble(aside, error) from error


def _aside(folder: Path, timber: str) -> Path:
    return folder / PROGRESS_FOLDER / f"{timber}{ASIDE}.toml"


def _rename(path: Path, to: Path) -> None:
    try:
        path.rename(to)
    except OSError as error:
        raise trouble(path, error) from error
