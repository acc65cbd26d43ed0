"""A disk that fails at a chosen call, to see what is left on it."""

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

CALLS = ("open", "write", "fsync", "fstat", "close", "replace", "unlink", "mkdir")
"""The calls of the system that change what is on disk, or tell of it."""


class Crash(BaseException):
    """The program is gone: nothing it would have done afterwards is done."""


class Disk:
    """Counts the calls to the system and fails from, or at, the one chosen.

    `crash` stops the program for good before that call or, with `after`, once it is done;
    `error` makes that one call fail, as a full disk does.
    """

    def __init__(self, at: int, *, after: bool = False, error: OSError | None = None) -> None:
        self.at = at
        self.after = after
        self.error = error
        self.count = 0

    @property
    def reached(self) -> bool:
        """Whether the chosen call was made at all."""
        return self.count > self.at

    def call(self, real: Callable[..., object], *args: object, **named: object) -> object:
        """Make a call of the system, or fail."""
        place, self.count = self.count, self.count + 1
        if self.error is not None:
            if place == self.at:
                raise self.error
            return real(*args, **named)
        if place > self.at or (place == self.at and not self.after):
            raise Crash
        result = real(*args, **named)
        if place == self.at:
            raise Crash
        return result


@contextmanager
def failing(disk: Disk) -> Iterator[None]:
    """Everything inside goes to the failing disk."""
    with pytest.MonkeyPatch.context() as patch:
        for name in CALLS:
            real = getattr(os, name)
            patch.setattr(
                os, name, lambda *args, real=real, **named: disk.call(real, *args, **named)
            )
        yield


def refuse_to_tell(monkeypatch: pytest.MonkeyPatch, number: int) -> None:
    """Make the system refuse to tell anything of a path, as a failing disk does."""

    def refuse(path: Path, *, follow_symlinks: bool = True) -> os.stat_result:
        raise OSError(number, os.strerror(number), str(path), follow_symlinks)

    monkeypatch.setattr(Path, "stat", refuse)
