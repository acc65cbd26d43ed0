"""The project file of an open project: as last read, with one value reworded, or rewritten."""

import contextlib
import errno
import os
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

from benchmate.model.project import Project
from benchmate.store.files import PROJECT_FILE, Found, Stamp, read_file, stamp, trouble
from benchmate.store.problem import KeepError
from benchmate.store.reading import parse_project
from benchmate.store.rewording import reword, tables_of_texts
from benchmate.store.writing import write_atomically


class Rewritten(NamedTuple):
    """The text of the file before and after, byte order mark and ends of lines included."""

    before: str
    after: str


class _Tried(NamedTuple):
    """A file changed: what it was, what it would be, and the project that makes."""

    found: Found
    data: bytes
    project: Project


class KeptProject:
    """A project file as last read or written. Raises ProjectError if it is not sound."""

    def __init__(self, folder: Path, found: Found) -> None:
        self.folder = folder
        self.project = parse_project(found.data)
        self._found = found
        self._seen: Stamp | None = found.stamp

    def written(self) -> dict[str, dict[str, str]]:
        """The texts of the file as they are written, by table and key."""
        return tables_of_texts(self._found.data)

    def try_name(self, table: str, name: str, text: str) -> Project:
        """The project with one value reworded, and with what others wrote meanwhile.

        Nothing is written. Raises ProjectError if the file or what it would become is no sound
        project, and KeepError if it cannot be read, or the value not be reworded.
        """
        found = self._fresh()
        return parse_project(reword(found.data, table, name, text).data)

    def set_name(self, table: str, name: str, text: str) -> str:
        """Reword one value and give the text it had; on disk before this returns.

        Every other byte stays as it was. Raises as `try_name` does, and KeepError if the file
        cannot be written; it is then left as it was.
        """
        found = self._fresh()
        reworded = reword(found.data, table, name, text)
        self._put(_tried(found, reworded.data))
        return reworded.old

    def text(self) -> str:
        """The whole file as last read or written."""
        return self._found.data.decode()

    def text_now(self) -> str:
        """The whole file as it is now. Raises ProjectError, KeepError as `try_name` does."""
        return self._fresh().data.decode()

    def rewrite(self, change: Callable[[str], str]) -> Rewritten:
        """Change the text of the file as it is now; on disk before this returns.

        Raises as `set_name` does, and whatever `change` raises.
        """
        found = self._fresh()
        after = change(found.data.decode())
        self._put(_tried(found, after.encode()))
        return Rewritten(found.data.decode(), after)

    def changed(self) -> bool:
        """Look whether others changed the file, and read it again if they did.

        What cannot be used is told once: by ProjectError or KeepError, and the last stays.
        """
        now = stamp(self.folder, PROJECT_FILE)
        if now == self._seen:
            return False
        self._seen = now
        found = read_file(self.folder, PROJECT_FILE)
        self._seen = found.stamp
        self.project = parse_project(found.data)
        self._found = found
        return True

    def _fresh(self) -> Found:
        """The file as it is now. Raises ProjectError, KeepError as `try_name` does."""
        if stamp(self.folder, PROJECT_FILE) == self._found.stamp:
            return self._found
        found = read_file(self.folder, PROJECT_FILE)
        parse_project(found.data)
        return found

    def _put(self, tried: _Tried) -> None:
        """Go by what was tried, once it is on disk; what changes nothing is not written."""
        if tried.data != tried.found.data:
            tried = tried._replace(found=self._write(tried))
        self._found, self._seen, self.project = tried.found, tried.found.stamp, tried.project

    def _write(self, tried: _Tried) -> Found:
        """Put the changed file in place, as long as nobody has changed it meanwhile."""
        path = Path(os.path.realpath(self.folder / PROJECT_FILE))
        mode = _mode_if_writable(path)
        if stamp(self.folder, PROJECT_FILE) != tried.found.stamp:
            problem = "another program has just changed it"
            raise KeepError(path, problem, "look at what it says now, then try again")
        written = Found(tried.data, write_atomically(path, tried.data))
        with contextlib.suppress(OSError):
            path.chmod(mode)
        return written


def _tried(found: Found, data: bytes) -> _Tried:
    return _Tried(found, data, parse_project(data))


def _mode_if_writable(path: Path) -> int:
    """Who may read and write a file, which is the framer's own choice. Raises KeepError.

    A file put in place of a write-protected one would undo the protection.
    """
    try:
        mode = path.stat().st_mode
        if not os.access(path, os.W_OK):
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
    except OSError as error:
        raise trouble(path, error) from error
    return mode
