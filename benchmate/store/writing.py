"""Writing a file so that the disk holds the old one or the new one whole, whatever happens.

A file that only grows keeps what it had: of lines put at its end the last may be torn, no other.
"""

import contextlib
import errno
import os
import secrets
import stat
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


def append_lines(path: Path, data: bytes) -> Stamp:
    """Put whole lines at the end of a file, on disk before this returns; its stamp then.

    The file is made if it is not there. A last line that an earlier program left torn is ended
    first, so that it spoils none of these. Raises KeepError, with the file as it was wherever the
    system still allows it, if they cannot be written.
    """
    try:
        descriptor = os.open(path, _APPENDING, 0o666)
        try:
            size = _plain_size(descriptor)
            torn = size and os.pread(descriptor, 1, size - 1) != b"\n"
            _add(descriptor, (b"\n" if torn else b"") + data, size)
            after = stamp_of(os.fstat(descriptor))
        finally:
            os.close(descriptor)
        if not size:
            _settle(path.parent)
    except OSError as error:
        raise trouble(path, error) from error
    return after


def make_folder(path: Path) -> None:
    """Make one folder if it is not there, on disk before this returns. Raises KeepError."""
    try:
        if path.is_dir():
            return
        path.mkdir()
        _settle(path.parent)
    except OSError as error:
        raise trouble(path, error) from error


_APPENDING = os.O_RDWR | os.O_APPEND | os.O_CREAT | os.O_NONBLOCK | os.O_CLOEXEC
"""A pipe, which nobody may ever read, must not hold the program up."""


def _write_new(path: Path, parts: Iterable[bytes], *, settle: bool) -> Stamp:
    descriptor = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | os.O_CLOEXEC, 0o666)
    try:
        for part in parts:
            _write(descriptor, part)
        if settle:
            os.fsync(descriptor)
        return stamp_of(os.fstat(descriptor))
    finally:
        os.close(descriptor)


def _write(descriptor: int, data: bytes) -> None:
    rest = memoryview(data)
    while rest:
        rest = rest[os.write(descriptor, rest) :]


def _add(descriptor: int, data: bytes, size: int) -> None:
    """Write at the end of a file of so many bytes, or leave it at that size."""
    try:
        _write(descriptor, data)
        os.fsync(descriptor)
    except OSError:
        with contextlib.suppress(OSError):
            os.ftruncate(descriptor, size)
        raise


def _plain_size(descriptor: int) -> int:
    status = os.fstat(descriptor)
    if not stat.S_ISREG(status.st_mode):
        raise OSError(errno.EINVAL, "it is not a plain file")
    return status.st_size


def _settle(folder: Path) -> None:
    """Put a folder's list of names on disk."""
    descriptor = os.open(folder, os.O_RDONLY | os.O_DIRECTORY | os.O_CLOEXEC)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
