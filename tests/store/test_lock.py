import errno
import fcntl
import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from benchmate.store.lock import LOCK_FILE, Claim, Claimed
from benchmate.store.problem import KeepError
from tests.store.faults import Disk, failing

HOLD = """
import sys, time
from pathlib import Path
from benchmate.store.lock import Claim
claim = Claim.take(Path(sys.argv[1]))
print("held", flush=True)
time.sleep(600)
"""


def hold(folder: Path) -> subprocess.Popen[str]:
    """Another live program that is a folder's writer."""
    program = subprocess.Popen(
        [sys.executable, "-c", HOLD, str(folder)],
        stdout=subprocess.PIPE,
        text=True,
        cwd=Path(__file__).parents[2],
    )
    assert program.stdout is not None
    assert program.stdout.readline() == "held\n"
    return program


def test_one_program_at_a_time(tmp_path: Path) -> None:
    """The second is told since when, and by which process on which computer."""
    claim = Claim.take(tmp_path)
    assert claim.mine()
    with pytest.raises(Claimed) as caught:
        Claim.take(tmp_path)
    assert caught.value.pid == os.getpid()
    assert caught.value.host == os.uname().nodename
    assert str(caught.value) == (
        f"another benchmate has this project open since {caught.value.since}"
        f" (process {os.getpid()} on {os.uname().nodename})"
    )
    assert claim.mine()
    claim.release()


def test_a_released_project_can_be_taken(tmp_path: Path) -> None:
    """Nothing is left behind, and letting go twice does no harm."""
    claim = Claim.take(tmp_path)
    claim.release()
    claim.release()
    assert not claim.mine()
    assert list(tmp_path.iterdir()) == []
    Claim.take(tmp_path).release()


def test_a_program_that_is_killed_lets_go(tmp_path: Path) -> None:
    """SIGKILL leaves the file, but not the lock."""
    program = hold(tmp_path)
    with pytest.raises(Claimed, match=f"process {program.pid} on"):
        Claim.take(tmp_path)
    program.send_signal(signal.SIGKILL)
    program.communicate()
    assert (tmp_path / LOCK_FILE).exists()
    claim = Claim.take(tmp_path)
    assert claim.mine()
    claim.release()


def test_taking_over_makes_the_former_writer_stop(tmp_path: Path) -> None:
    """The former sees that it is no longer the writer, and its letting go changes nothing."""
    former = Claim.take(tmp_path)
    claim = Claim.take(tmp_path, over=True)
    assert claim.mine()
    assert not former.mine()
    former.release()
    assert claim.mine()
    with pytest.raises(Claimed):
        Claim.take(tmp_path)
    claim.release()
    assert list(tmp_path.iterdir()) == []


def test_a_free_project_can_be_taken_over_too(tmp_path: Path) -> None:
    """There is nobody to take it from."""
    claim = Claim.take(tmp_path, over=True)
    assert claim.mine()
    claim.release()


def test_a_lock_file_that_is_removed_is_lost(tmp_path: Path) -> None:
    """Another program could be writing already."""
    claim = Claim.take(tmp_path)
    (tmp_path / LOCK_FILE).unlink()
    assert not claim.mine()
    claim.release()


@pytest.mark.parametrize("text", [b"", b"\xff", b"= =", b'pid = "x"\nhost = 1\nstarted = 2\n'])
def test_a_lock_file_that_tells_nothing_still_locks(tmp_path: Path, text: bytes) -> None:
    """What it says is left out."""
    claim = Claim.take(tmp_path)
    (tmp_path / LOCK_FILE).write_bytes(text)
    with pytest.raises(Claimed) as caught:
        Claim.take(tmp_path)
    assert str(caught.value) == "another benchmate has this project open"
    claim.release()


def test_what_a_lock_file_says_cannot_act_on_a_terminal() -> None:
    """A host name with control characters is shown as escapes."""
    assert str(Claimed("9\x1b", 7, "a\x07")).endswith("since 9\\u001b (process 7 on a\\u0007)")


def test_a_link_in_its_place_is_not_followed(tmp_path: Path) -> None:
    """Taking a project never writes to a file elsewhere."""
    (tmp_path / "precious").write_text("kept", "utf-8")
    (tmp_path / LOCK_FILE).symlink_to("precious")
    with pytest.raises(KeepError):
        Claim.take(tmp_path)
    assert (tmp_path / "precious").read_text("utf-8") == "kept"


def test_a_folder_that_cannot_be_written_is_told(tmp_path: Path) -> None:
    """As trouble with the disk, not as another program."""
    disk = Disk(0, error=OSError(errno.EROFS, "read-only"))
    with failing(disk), pytest.raises(KeepError, match="the disk is read-only"):
        Claim.take(tmp_path)


@pytest.mark.parametrize("over", [False, True])
def test_a_disk_that_cannot_lock_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, *, over: bool
) -> None:
    """No program may believe itself alone where it cannot know."""

    def refuse(*_: object) -> None:
        raise OSError(errno.ENOLCK, "No locks available")

    monkeypatch.setattr(fcntl, "flock", refuse)
    with pytest.raises(KeepError, match="No locks available"):
        Claim.take(tmp_path, over=over)


@pytest.mark.parametrize("at", [2, 3])
def test_a_take_over_that_fails_leaves_the_writer(tmp_path: Path, at: int) -> None:
    """The former writer stays, and nothing is left beside its file."""
    claim = Claim.take(tmp_path)
    disk = Disk(at, error=OSError(errno.ENOSPC, "full"))
    with failing(disk), pytest.raises(KeepError, match="the disk is full"):
        Claim.take(tmp_path, over=True)
    assert claim.mine()
    assert [path.name for path in tmp_path.iterdir()] == [LOCK_FILE]
    claim.release()


def test_a_file_removed_while_it_is_being_locked_is_left(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the former writer lets go at the same moment, the next file is taken."""
    flock, opened = fcntl.flock, []

    def late(descriptor: int, how: int) -> None:
        flock(descriptor, how)
        opened.append(descriptor)
        if len(opened) == 1:
            (tmp_path / LOCK_FILE).unlink()

    monkeypatch.setattr(fcntl, "flock", late)
    claim = Claim.take(tmp_path)
    assert len(opened) == 2
    assert claim.mine()
    claim.release()


def test_a_lock_file_that_cannot_be_removed_does_no_harm(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Letting go still lets the next program in."""
    claim = Claim.take(tmp_path)

    def refuse(*_: object, **__: object) -> None:
        raise OSError(errno.EROFS, "read-only")

    with monkeypatch.context() as patch:
        patch.setattr(os, "unlink", refuse)
        claim.release()
    assert (tmp_path / LOCK_FILE).exists()
    Claim.take(tmp_path).release()


def test_a_claim_that_could_not_be_signed_is_let_go(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A full disk at the wrong moment must not lock the project to nobody."""

    def full(_descriptor: int, _token: str) -> None:
        raise OSError(errno.ENOSPC, "full")

    with monkeypatch.context() as failing_disk:
        failing_disk.setattr("benchmate.store.lock._sign", full)
        with pytest.raises(KeepError, match="the disk is full"):
            Claim.take(tmp_path)
    Claim.take(tmp_path).release()
