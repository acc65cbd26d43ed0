"""Opening a project for work."""

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
    try:
        return Bench(Keeper.open(folder))
    except (ProjectError, KeepError) as error:
        raise CannotOpenError(str(error)) from error


def read_bench(folder: Path) -> Bench:
    """Open a project folder just to read it: no lock is taken and nothing can be kept.

    Raises CannotOpenError.
    """
    try:
        return Bench(Keeper.read(folder))
    except (ProjectError, KeepError) as error:
        raise CannotOpenError(str(error)) from error
