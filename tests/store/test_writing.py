import errno
import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.store.files import stamp
from benchmate.store.problem import KeepError
from benchmate.store.writing import append_lines, make_folder, write_atomically, write_in_parts
from tests.store.faults import Crash, Disk, failing

OLD, NEW = b"old " * 500, b"new! " * 700

STEPS = 9
"""Calls to the system that one write makes."""

ERRORS = (errno.ENOSPC, errno.EIO, errno.EROFS, errno.EACCES, errno.EDQUOT, errno.ENOENT)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A file with old contents."""
    path = tmp_path / "post-se.toml"
    path.write_bytes(OLD)
    return path


def test_a_file_is_replaced_whole(path: Path) -> None:
    """The new contents are there, nothing else is left, and the stamp is the new file's."""
    assert write_atomically(path, NEW) == stamp(path.parent, path.name)
    assert path.read_bytes() == NEW
    assert list(path.parent.iterdir()) == [path]


def test_a_file_that_was_not_there_is_made(tmp_path: Path) -> None:
    """The first write of a file is as safe as the next."""
    write_atomically(tmp_path / "post-sw.toml", b"")
    assert (tmp_path / "post-sw.toml").read_bytes() == b""


def test_a_write_makes_as_many_calls_as_are_tried_below(path: Path) -> None:
    """The tests below fail every call there is."""
    disk = Disk(1000)
    with failing(disk):
        write_atomically(path, NEW)
    assert disk.count == STEPS


@pytest.mark.parametrize("number", ERRORS)
@pytest.mark.parametrize("at", range(STEPS))
def test_a_failing_disk_leaves_the_old_file_or_the_new(path: Path, at: int, number: int) -> None:
    """Whichever call fails and however, a file is whole, nothing is left beside it, one is told."""
    disk = Disk(at, error=OSError(number, os.strerror(number)))
    with failing(disk), pytest.raises(KeepError) as caught:
        write_atomically(path, NEW)
    assert disk.reached
    assert caught.value.path == path
    assert path.read_bytes() in (OLD, NEW)
    assert list(path.parent.iterdir()) == [path]


@pytest.mark.parametrize("after", [False, True])
@pytest.mark.parametrize("at", range(STEPS))
def test_a_crash_leaves_the_old_file_or_the_new(path: Path, at: int, *, after: bool) -> None:
    """Whenever the program is killed, the file is whole."""
    disk = Disk(at, after=after)
    with failing(disk), pytest.raises(Crash):
        write_atomically(path, NEW)
    assert disk.reached
    assert path.read_bytes() in (OLD, NEW)


def test_a_disk_that_takes_a_little_at_a_time_gets_it_all(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A short write is carried on, not taken for the whole."""
    write = os.write
    monkeypatch.setattr(os, "write", lambda descriptor, data: write(descriptor, data[:7]))
    write_atomically(path, NEW)
    assert path.read_bytes() == NEW


def test_a_leaving_that_cannot_be_removed_is_not_the_news(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """When even tidying up fails, the first failure is told."""

    def refuse(*_: object, **__: object) -> None:
        raise OSError(errno.EIO, "later")

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "first")

    monkeypatch.setattr(os, "fsync", full)
    monkeypatch.setattr(os, "unlink", refuse)
    with pytest.raises(KeepError, match="the disk is full"):
        write_atomically(path, NEW)
    assert path.read_bytes() == OLD


def test_a_folder_is_made_once(tmp_path: Path) -> None:
    """A folder that is there already is left alone."""
    make_folder(tmp_path / "progress")
    (tmp_path / "progress/post.toml").touch()
    make_folder(tmp_path / "progress")
    assert (tmp_path / "progress/post.toml").exists()


def test_a_folder_that_cannot_be_made_is_told(tmp_path: Path) -> None:
    """A file in its place is told in plain words."""
    (tmp_path / "progress").touch()
    with pytest.raises(KeepError, match="progress: "):
        make_folder(tmp_path / "progress")


LINES = b"first line\nsecond line\n"
MORE = b"third line\n"

APPENDING = 6
"""Calls to the system that lines put at the end of a file make."""


@pytest.fixture
def grown(tmp_path: Path) -> Path:
    """A file of two lines."""
    path = tmp_path / "journal.jsonl"
    path.write_bytes(LINES)
    return path


def test_lines_are_put_at_the_end(grown: Path) -> None:
    """What was there stays, and the stamp is the file's own."""
    assert append_lines(grown, MORE) == stamp(grown.parent, grown.name)
    assert grown.read_bytes() == LINES + MORE


def test_a_file_of_lines_is_made(tmp_path: Path) -> None:
    """The first line makes the file."""
    append_lines(tmp_path / "journal.jsonl", MORE)
    assert (tmp_path / "journal.jsonl").read_bytes() == MORE


@pytest.mark.parametrize("cut", range(len(MORE)))
def test_a_torn_line_spoils_no_other(grown: Path, cut: int) -> None:
    """Wherever a dying program tore its line, the next stands on a line of its own."""
    grown.write_bytes(LINES + MORE[:cut])
    append_lines(grown, b"fourth line\n")
    lines = grown.read_bytes().split(b"\n")
    assert lines[:2] == LINES.split(b"\n")[:2]
    assert lines[-2:] == [b"fourth line", b""]


def test_an_append_makes_as_many_calls_as_are_tried_below(grown: Path) -> None:
    """The tests below fail every call there is."""
    disk = Disk(1000)
    with failing(disk):
        append_lines(grown, MORE)
    assert disk.count == APPENDING


@pytest.mark.parametrize("number", ERRORS)
@pytest.mark.parametrize("at", range(APPENDING))
def test_a_failing_disk_tears_no_line(grown: Path, at: int, number: int) -> None:
    """Whichever call fails, the file holds whole lines only, and one is told."""
    disk = Disk(at, error=OSError(number, os.strerror(number)))
    with failing(disk), pytest.raises(KeepError) as caught:
        append_lines(grown, MORE)
    assert disk.reached
    assert caught.value.path == grown
    assert grown.read_bytes() in (LINES, LINES + MORE)


@pytest.mark.parametrize("after", [False, True])
@pytest.mark.parametrize("at", range(APPENDING))
def test_a_crash_keeps_the_lines_there_were(grown: Path, at: int, after: bool) -> None:
    """Before and after every call."""
    with failing(Disk(at, after=after)), pytest.raises(Crash):
        append_lines(grown, MORE)
    assert grown.read_bytes() in (LINES, LINES + MORE)


def test_lines_go_to_plain_files_only(tmp_path: Path) -> None:
    """A pipe and a folder in its place are told, and hold nobody up."""
    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "folder").mkdir()
    for name, told in (("pipe", "not a plain file"), ("folder", "is a folder")):
        with pytest.raises(KeepError, match=told):
            append_lines(tmp_path / name, MORE)


@pytest.mark.parametrize("settle", [True, False])
def test_a_file_may_come_part_by_part(path: Path, settle: bool) -> None:
    """It is there whole, whether or not the disk is waited for."""
    write_in_parts(path, (part for part in (b"new ", b"", b"and more")), settle=settle)
    assert path.read_bytes() == b"new and more"
    assert list(path.parent.iterdir()) == [path]


def test_a_part_that_cannot_be_made_leaves_the_old_file(path: Path) -> None:
    """Whatever goes wrong on the way, nothing is left lying about."""

    def parts() -> Iterator[bytes]:
        yield b"new"
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        write_in_parts(path, parts(), settle=False)
    assert path.read_bytes() == OLD
    assert list(path.parent.iterdir()) == [path]
