"""The project file of an open project: as last read, with one value reworded, or edited."""

import contextlib
import errno
import os
from pathlib import Path
from typing import NamedTuple

from benchmate.model.project import Project
from benchmate.store.files import PROJECT_FILE, Found, Stamp, read_file, stamp, trouble
from benchmate.store.problem import KeepError
from benchmate.store.reading import parse_project
from benchmate.store.rewording import Reworded, reword, tables_of_texts
from benchmate.store.writing import write_atomically


class _Tried(NamedTuple):
    """A file with one value reworded: what it was, what it would be, and the project that makes."""

    found: Found
    reworded: Reworded
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
        return self._try(table, name, text).project

    def set_name(self, table: str, name: str, text: str) -> str:
        """Reword one value and give the text it had; on disk before this returns.

        Every other byte stays as it was. Raises as `try_name` does, and KeepError if the file
        cannot be written; it is then left as it was.
        """
        tried = self._try(table, name, text)
        if tried.reworded.data != tried.found.data:
            found = self._write(tried.reworded.data, tried.found.stamp)
            tried = tried._replace(found=found)
        self._found, self._seen, self.project = tried.found, tried.found.stamp, tried.project
        return tried.reworded.old

    @property
    def text(self) -> str:
        """The file as last read or written, to the character."""
        return self._found.data.decode()

    def set_text(self, text: str) -> None:
        """Write another text for the whole file; on disk before this returns.

        Raises ProjectError if it is no sound project, and KeepError if the file was changed since
        it was last read, or cannot be written; it is then left as it was.
        """
        data = text.encode()
        project = parse_project(data)
        if data != self._found.data:
            self._found = self._write(data, self._found.stamp)
        self._seen, self.project = self._found.stamp, project

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

    def _try(self, table: str, name: str, text: str) -> _Tried:
        found = self._found
        if stamp(self.folder, PROJECT_FILE) != found.stamp:
            found = read_file(self.folder, PROJECT_FILE)
            parse_project(found.data)
        reworded = reword(found.data, table, name, text)
        return _Tried(found, reworded, parse_project(reworded.data))

    def _write(self, data: bytes, since: Stamp) -> Found:
        """Put another file in place, as long as nobody has changed it since."""
        path = Path(os.path.realpath(self.folder / PROJECT_FILE))
        mode = _mode_if_writable(path)
        if stamp(self.folder, PROJECT_FILE) != since:
            problem = "another program has just changed it"
            raise KeepError(path, problem, "look at what it says now, then try again")
        written = Found(data, write_atomically(path, data))
        with contextlib.suppress(OSError):
            path.chmod(mode)
        return written


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
