"""Writing a file so that the disk holds the old one or the new one whole, whatever happens."""

import contextlib
import os
import secrets
from collections.abc import Iterable
from pathlib import Path

from benchmate.store.files import Stamp, stamp_of, trouble


def write_atomically(path: Path, data: bytes) -> Stamp:
    """Put a file in place of another, on disk before this returns; the stamp of the new file.

    Raises KeepError, and leaves the old file as it was, if the system will not write it.
    """
    return write_in_parts(path, (data,))


def write_in_parts(path: Path, parts: Iterable[bytes], *, settle: bool = True) -> Stamp:
    """The same for a file that comes part by part, so that it is never held in memory whole.

    The old file also stays as it was if a part cannot be made. Without `settle` the file is whole
    whenever it is seen, but the system puts it on disk in its own time: for what can be made again.
    """
    beside = path.with_name(f".{path.name}.{secrets.token_hex(4)}")
    try:
        try:
            stamp = _write_new(beside, parts, settle=settle)
            beside.replace(path)
        except BaseException:
            # The first failure is the one to tell, not that the leaving could not be removed.
            with contextlib.suppress(OSError):
                beside.unlink()
            raise
        if settle:
            _settle(path.parent)
    except OSError as error:
        raise trouble(path, error) from error
    return stamp


def make_folder(path: Path) -> None:
    """Make one folder if it is not there, on disk before this returns. Raises KeepError."""
    try:
        if path.is_dir():
            return
        path.mkdir()
        _settle(path.parent)
    except OSError as error:
        raise trouble(path, error) from error


def _write_new(path: Path, parts: Iterable[bytes], *, settle: bool) -> Stamp:
    descriptor = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | os.O_CLOEXEC, 0o666)
    try:
        for part in parts:
            rest = memoryview(part)
            while rest:
                rest = rest[os.write(descriptor, rest) :]
        if settle:
            os.fsync(descriptor)
        return stamp_of(os.fstat(descriptor))
    finally:
        os.close(descriptor)


def _settle(folder: Path) -> None:
    """Put a folder's list of names on disk."""
    descriptor = os.open(folder, os.O_RDONLY | os.O_DIRECTORY | os.O_CLOEXEC)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
