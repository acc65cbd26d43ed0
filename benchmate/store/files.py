"""The files of a project: their names, and reading one whole, with a stamp that tells its state."""

import errno
import os
import stat
from pathlib import Path
from typing import NamedTuple

from benchmate.model.words import check_id
from benchmate.store.problem import KeepError, Problem, ProjectError

PROJECT_FILE = "project.toml"
"""The frame itself."""

PROGRESS_FOLDER = "progress"
"""What is done and measured: one file for each timber."""

LARGEST_FILE = 5_000_000
"""Bytes in a file: a hundred times a big barn, so a file that passes it is something else."""


class Stamp(NamedTuple):
    """Tells whether a file has been changed: when it was last written, its size, which file."""

    mtime_ns: int
    size: int
    inode: int


class Found(NamedTuple):
    """A file's bytes and its stamp when they were read."""

    data: bytes
    stamp: Stamp


def progress_name(timber: str) -> str:
    """A timber's file within the project; ValueError for an id that could lead elsewhere."""
    return f"{PROGRESS_FOLDER}/{check_id(timber)}.toml"


def stamp_of(status: os.stat_result) -> Stamp:
    """The stamp that a file's status makes."""
    return Stamp(status.st_mtime_ns, status.st_size, status.st_ino)


def stamp(folder: Path, name: str) -> Stamp | None:
    """A file's stamp now; None if there is no such file.

    Raises KeepError if the system will not tell: a file that cannot be seen is not one that is
    not there, and must never be written over as if it were.
    """
    path = folder / name
    try:
        return stamp_of(path.stat())
    except (FileNotFoundError, NotADirectoryError):
        return None
    except OSError as error:
        raise trouble(path, error) from error


def check_inside(folder: Path, name: str) -> None:
    """Raise ProjectError if a file of a project is reached by a link that leads out of it."""
    if not Path(os.path.realpath(folder / name)).is_relative_to(os.path.realpath(folder)):
        raise _refused(name, "is a link that leads out of the project", "put the file itself here")


def read_file(folder: Path, name: str, *, most: int = 0) -> Found:
    """The whole of one file of a project, of at most `most` bytes, or else `LARGEST_FILE`.

    Raises KeepError if the system will not read it, ProjectError if it is too big, is no plain
    file, or is a link that leads out of the project.
    """
    check_inside(folder, name)
    path, most = folder / name, most or LARGEST_FILE
    try:
        with open(path, "rb", opener=_without_waiting) as file:
            status = os.fstat(file.fileno())
            if not stat.S_ISREG(status.st_mode):
                raise _refused(name, "is not a plain file", "put a text file here")
            data = file.read(most + 1)
    except OSError as error:
        raise trouble(path, error) from error
    if len(data) > most:
        megabytes = most // 1_000_000
        raise _refused(name, f"is bigger than {megabytes} MB", "check that it is the right file")
    return Found(data, stamp_of(status))


def _without_waiting(path: str, flags: int) -> int:
    """Open a file; a pipe, which nobody may ever write to, must not hold the program up."""
    return os.open(path, flags | os.O_NONBLOCK)


def _refused(name: str, message: str, remedy: str) -> ProjectError:
    problem = Problem(file=name, line=None, key="", excerpt="", message=message, remedy=remedy)
    return ProjectError((problem,))


_TROUBLES = {
    errno.ENOSPC: ("the disk is full", "make room on it, then try again"),
    errno.EDQUOT: ("your share of the disk is full", "make room on it, then try again"),
    errno.EROFS: ("the disk is read-only", "copy the project to a disk that can be written"),
    errno.EACCES: ("you have no permission", "ask for it, or copy the project to your own folder"),
    errno.EPERM: ("the system forbids it", "copy the project to your own folder"),
    errno.EIO: ("the disk fails to read or write", "copy the project to a sound disk at once"),
    errno.ENOENT: ("is not there", "check the name, and that its disk is plugged in"),
    errno.ENOTDIR: ("is not in a folder", "check the name"),
    errno.EISDIR: ("is a folder, where a file belongs", "move it away"),
    errno.ELOOP: ("is a link that leads nowhere", "put the file itself here"),
    errno.ENAMETOOLONG: ("has too long a name", "move the project nearer the top of the disk"),
}


def trouble(path: Path, error: OSError) -> KeepError:
    """What the system said about a file, in plain words."""
    other = (f"the system refuses: {error.strerror or error}", "put that right, then try again")
    problem, remedy = _TROUBLES.get(error.errno or 0, other)
    return KeepError(path, problem, remedy)
