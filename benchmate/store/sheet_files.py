"""A folder that sheets are written into: only benchmate's own files there are ever written over."""

import os
from collections.abc import Callable, Iterable
from pathlib import Path

from benchmate.store.files import trouble
from benchmate.store.problem import KeepError
from benchmate.store.shelf import is_folder
from benchmate.store.writing import make_folder, write_in_parts

_START = 400
"""Bytes looked at to know a file by how it starts."""


class SheetFolder:
    """A folder for sheets, made when it is not there. Raises KeepError if it cannot be.

    `is_ours` tells by a file's name and how it starts whether benchmate wrote it.
    """

    def __init__(self, folder: Path, is_ours: Callable[[str, bytes], bool]) -> None:
        if os.path.lexists(folder) and not is_folder(folder):
            raise KeepError(folder, "is not a folder", "name a folder, or one that is to be made")
        make_folder(folder)
        self.folder = folder
        self._is_ours = is_ours

    def check(self, names: Iterable[str]) -> None:
        """Raise KeepError if any of these files is there and is not one of benchmate's sheets."""
        for name in names:
            path = self.folder / name
            if os.path.lexists(path) and not self._ours(path):
                raise KeepError(
                    path,
                    "is there and is no sheet of benchmate's, so it is not written over",
                    "move it away, or name another folder",
                )

    def write(self, name: str, parts: Iterable[str]) -> None:
        """Write one file, part by part. Raises KeepError, and the old file stays as it was.

        Nothing waits for the disk: a sheet that a power cut takes is written again.
        """
        write_in_parts(self.folder / name, (part.encode() for part in parts), settle=False)

    def others(self, names: Iterable[str]) -> tuple[str, ...]:
        """The sheets found here besides these files: of timbers that have another id now."""
        known = set(names)
        try:
            found = sorted(path for path in self.folder.iterdir() if path.name not in known)
        except OSError as error:
            raise trouble(self.folder, error) from error
        return tuple(path.name for path in found if path.is_file() and self._ours(path))

    def _ours(self, path: Path) -> bool:
        if path.is_symlink() or not path.is_file():
            return False
        try:
            with path.open("rb") as file:
                return self._is_ours(path.name, file.read(_START))
        except OSError as error:
            raise trouble(path, error) from error
