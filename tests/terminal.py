"""A program in a real pseudo-terminal, with what it shows as text."""

import fcntl
import os
import pty
import select
import signal
import struct
import sys
import termios
import time
from collections.abc import Mapping
from pathlib import Path
from types import TracebackType
from typing import Self

import pyte

from benchmate.store.seen import TOUR, note_seen

PATIENCE = 20.0
"""Seconds a program may take to show something before a test gives up."""

LEFT_ALTERNATE_SCREEN = b"\x1b[?1049l"


class Terminal:
    """One run of benchmate in a terminal of a given size."""

    def __init__(self, *arguments: str, environ: Mapping[str, str], size: tuple[int, int]) -> None:
        self._screen = pyte.Screen(*size)
        self._stream = pyte.ByteStream(self._screen)
        self.written = b""
        self.status: int | None = None
        self.pid, self._end = pty.fork()
        if self.pid == 0:  # pragma: no cover - another process
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", size[1], size[0], 0, 0))
            command = [sys.executable, "-m", "benchmate", *arguments]
            os.execvpe(command[0], command, {"TERM": "xterm-256color", **environ})  # noqa: S606

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if self.status is None:
            self.kill(signal.SIGKILL)
        os.close(self._end)

    @property
    def text(self) -> str:
        """What the terminal shows."""
        return "\n".join(self._screen.display)

    def wait_for(self, words: str) -> None:
        """Read until the words are on the screen. Raises AssertionError when patience ends."""
        until = time.monotonic() + PATIENCE
        while words not in self.text:
            assert time.monotonic() < until, f"{words!r} never came:\n{self.text}"
            self._read(0.05)

    def type(self, keys: str) -> None:
        """Type keys, as bytes of a terminal."""
        os.write(self._end, keys.encode())

    def kill(self, number: signal.Signals) -> None:
        """Send a signal and wait for the end."""
        os.kill(self.pid, number)
        self.finish()

    def finish(self) -> int:
        """Wait for the program to end, and give its exit status, or minus the signal."""
        until = time.monotonic() + PATIENCE
        while self.status is None:
            assert time.monotonic() < until, f"never ended:\n{self.text}"
            self._read(0.05)
            pid, status = os.waitpid(self.pid, os.WNOHANG)
            if pid:
                self.status = os.waitstatus_to_exitcode(status)
        self._read(0.05)
        return self.status

    def _read(self, seconds: float) -> None:
        ready, _, _ = select.select([self._end], [], [], seconds)
        if not ready:
            return
        try:
            data = os.read(self._end, 65536)
        except OSError:
            # Linux reports the other end's going as an error.
            return
        self.written += data
        self._stream.feed(data)


def plain_environ(home: Path) -> dict[str, str]:
    """An environment with folders of its own, of a user who has seen the cards."""
    kept = {name: os.environ[name] for name in ("PATH", "LANG", "LC_ALL") if name in os.environ}
    environ = {
        **kept,
        "HOME": str(home),
        "XDG_DATA_HOME": str(home / "data"),
        "XDG_STATE_HOME": str(home / "state"),
        "XDG_CONFIG_HOME": str(home / "config"),
        "PYTHONIOENCODING": "utf-8",
        "PYTHONPATH": str(Path(__file__).parents[1]),
    }
    note_seen(TOUR, environ)
    return environ
