"""One writer for each project.

1. The writer holds the system's own lock on a small file in the project's folder, so a program
   that dies lets go of it by dying.
2. The file carries a random token. Taking a project over puts a new file in its place, and the
   former writer, whose token is gone, must stop writing.
"""

import contextlib
import fcntl
import os
import secrets
import socket
import tomllib
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any, Self

import tomli_w

from benchmate.model.words import visible
from benchmate.store.files import trouble

LOCK_FILE = ".benchmate-lock"

_MOST_BYTES = 2000
"""Bytes read of a lock file: several times what a whole one has."""


class Claimed(Exception):  # noqa: N818 - a state of the project, not a fault
    """Another live program is the project's writer: since when, its process and its computer."""

    def __init__(self, since: str, pid: int, host: str) -> None:
        super().__init__(since, pid, host)
        self.since = since
        self.pid = pid
        self.host = host

    def __str__(self) -> str:
        since = f" since {visible(self.since)}" if self.since else ""
        where = f" (process {self.pid} on {visible(self.host)})" if self.pid else ""
        return f"another benchmate has this project open{since}{where}"


@dataclass(slots=True)
class Claim:
    """The right to write a project, held until released or taken over."""

    path: Path
    token: str
    _descriptor: int | None

    @classmethod
    def take(cls, folder: Path, *, over: bool = False) -> Self:
        """Become a project's writer; with `over`, even while another program is.

        Raises Claimed if another live program is, KeepError if the folder cannot be written.
        """
        path = folder / LOCK_FILE
        try:
            descriptor = _locked(path)
            if descriptor is None and not over:
                raise _claimed(path)
            token = secrets.token_hex(16)
            if descriptor is None:
                descriptor = _put_in_place(path, token)
            else:
                _sign_or_let_go(descriptor, token)
        except OSError as error:
            raise trouble(path, error) from error
        return cls(path, token, descriptor)

    def mine(self) -> bool:
        """Whether this program still is the project's writer."""
        return self._descriptor is not None and _read(self.path).get("token") == self.token

    def release(self) -> None:
        """Let go of the project; again does nothing."""
        if self._descriptor is None:
            return
        # A file that cannot be removed does no harm: without its lock it is simply taken.
        with contextlib.suppress(OSError):
            if self.mine():
                self.path.unlink()
        os.close(self._descriptor)
        self._descriptor = None


def _locked(path: Path) -> int | None:
    """A descriptor of the lock file, locked; None while another program has it locked."""
    while True:
        descriptor = _open(path)
        try:
            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
            if _is_at(descriptor, path):
                return descriptor
        except BlockingIOError:
            os.close(descriptor)
            return None
        except BaseException:
            os.close(descriptor)
            raise
        # Its owner let go of it, and removed it, between the two calls: open the next one.
        os.close(descriptor)


def _open(path: Path, *, fresh: bool = False) -> int:
    flags = os.O_RDWR | os.O_CREAT | os.O_NOFOLLOW | os.O_CLOEXEC
    return os.open(path, flags | os.O_EXCL if fresh else flags, 0o666)


def _is_at(descriptor: int, path: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(descriptor), os.lstat(path))
    except FileNotFoundError:
        return False


def _put_in_place(path: Path, token: str) -> int:
    """A new lock file, locked and signed, where another program's was."""
    beside = path.with_name(f"{path.name}.{token[:8]}")
    descriptor = _open(beside, fresh=True)
    try:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        _sign(descriptor, token)
        beside.replace(path)
    except BaseException:
        os.close(descriptor)
        with contextlib.suppress(OSError):
            beside.unlink()
        raise
    return descriptor


def _sign_or_let_go(descriptor: int, token: str) -> None:
    try:
        _sign(descriptor, token)
    except BaseException:
        os.close(descriptor)
        raise


def _sign(descriptor: int, token: str) -> None:
    signed = {
        "token": token,
        "pid": os.getpid(),
        "host": socket.gethostname(),
        "started": f"{datetime.now().astimezone():%Y-%m-%d %H:%M}",
    }
    os.ftruncate(descriptor, 0)
    os.pwrite(descriptor, tomli_w.dumps(signed).encode(), 0)


def _read(path: Path) -> dict[str, Any]:
    """What a lock file says; nothing if it says nothing that can be read."""
    try:
        with path.open("rb") as file:
            return tomllib.loads(file.read(_MOST_BYTES).decode())
    except (OSError, ValueError):
        return {}


def _claimed(path: Path) -> Claimed:
    signed = _read(path)
    since, pid, host = (signed.get(key) for key in ("started", "pid", "host"))
    return Claimed(
        since if isinstance(since, str) else "",
        pid if isinstance(pid, int) else 0,
        host if isinstance(host, str) else "",
    )
