"""Opening a project for work."""

from collections.abc import Callable
from pathlib import Path

from benchmate.store.keeper import Keeper
from benchmate.store.problem import KeepError, ProjectError
from benchmate.workbench.bench import Bench


class CannotOpenError(Exception):
    """A project that cannot be read; says where, what is wrong and what to do."""


def open_bench(folder: Path) -> Bench:
    """Open a project folder, read-only if another program works on it.

    Raises CannotOpenError.
    """
    return _bench(Keeper.open, folder)


def read_bench(folder: Path) -> Bench:
    """Open a project folder just to read it: no lock is taken and nothing can be kept.

    Raises CannotOpenError.
    """
    return _bench(Keeper.read, folder)


def _bench(opened: Callable[[Path], Keeper], folder: Path) -> Bench:
    try:
        return Bench(opened(folder))
    except (ProjectError, KeepError) as error:
        raise CannotOpenError(str(error)) from error
