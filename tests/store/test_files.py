import errno
import os
from pathlib import Path

import pytest

from benchmate.store import files
from benchmate.store.files import progress_name, read_file, stamp, trouble
from benchmate.store.problem import KeepError, ProjectError
from tests.store.faults import refuse_to_tell


def test_a_file_is_read_whole_with_its_stamp(tmp_path: Path) -> None:
    """The bytes are as on disk, and the stamp is the file's until it is changed."""
    path = tmp_path / "project.toml"
    path.write_bytes(b"format = 1\r\n")
    found = read_file(tmp_path, "project.toml")
    assert found.data == b"format = 1\r\n"
    assert found.stamp == stamp(tmp_path, "project.toml")
    path.write_bytes(b"format = 2\n")
    assert found.stamp != stamp(tmp_path, "project.toml")


def test_a_file_that_is_not_there_has_no_stamp(tmp_path: Path) -> None:
    """No file, no stamp; nor one below a file in place of a folder."""
    assert stamp(tmp_path, "project.toml") is None
    (tmp_path / "progress").write_text("not a folder")
    assert stamp(tmp_path, "progress/post-sw.toml") is None


@pytest.mark.parametrize("number", [errno.EIO, errno.EACCES])
def test_a_file_that_cannot_be_seen_is_not_one_that_is_not_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int
) -> None:
    """A failing disk or a shut folder is told, never taken for nothing done yet."""
    refuse_to_tell(monkeypatch, number)
    with pytest.raises(KeepError):
        stamp(tmp_path, "project.toml")


@pytest.mark.parametrize("timber", ["../post", "progress/post", "", ".", "nul", "Post"])
def test_an_id_cannot_lead_out_of_the_folder(timber: str) -> None:
    """A timber's file has a name only for an id that is safe as one."""
    assert progress_name("post-se") == "progress/post-se.toml"
    with pytest.raises(ValueError, match=r"id|devices"):
        progress_name(timber)


def test_a_missing_file_is_told_plainly(tmp_path: Path) -> None:
    """Which file, that it is not there, and what to check."""
    with pytest.raises(KeepError, match=r"project\.toml: is not there; check the name"):
        read_file(tmp_path, "project.toml")


def test_a_pipe_is_refused_without_waiting(tmp_path: Path) -> None:
    """A pipe nobody writes to does not hold the program up."""
    os.mkfifo(tmp_path / "project.toml")
    with pytest.raises(ProjectError, match=r"project\.toml: is not a plain file"):
        read_file(tmp_path, "project.toml")


def test_a_folder_is_refused(tmp_path: Path) -> None:
    """A folder under the name of a file is told as such."""
    (tmp_path / "project.toml").mkdir()
    with pytest.raises(KeepError, match="is a folder, where a file belongs"):
        read_file(tmp_path, "project.toml")


def test_a_link_out_of_the_project_is_refused(tmp_path: Path) -> None:
    """A project passed on by somebody else cannot show a file from elsewhere on the disk."""
    (tmp_path / "secret.toml").write_text("format = 1", "utf-8")
    (tmp_path / "shed").mkdir()
    (tmp_path / "shed/project.toml").symlink_to("../secret.toml")
    with pytest.raises(ProjectError, match="is a link that leads out of the project"):
        read_file(tmp_path / "shed", "project.toml")


def test_a_link_within_the_project_is_followed(tmp_path: Path) -> None:
    """A link to another file of the same project is that file."""
    (tmp_path / "old.toml").write_text("format = 1", "utf-8")
    (tmp_path / "project.toml").symlink_to("old.toml")
    assert read_file(tmp_path, "project.toml").data == b"format = 1"


def test_a_file_too_big_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One byte more than any project needs is something else; the most is still read."""
    monkeypatch.setattr(files, "LARGEST_FILE", 1_000_000)
    (tmp_path / "project.toml").write_bytes(b"#" * 1_000_000)
    assert len(read_file(tmp_path, "project.toml").data) == 1_000_000
    (tmp_path / "project.toml").write_bytes(b"#" * 1_000_001)
    with pytest.raises(ProjectError, match="is bigger than 1 MB"):
        read_file(tmp_path, "project.toml")


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (errno.ENOSPC, "the disk is full"),
        (errno.EDQUOT, "your share of the disk is full"),
        (errno.EROFS, "the disk is read-only"),
        (errno.EACCES, "you have no permission"),
        (errno.EIO, "the disk fails to read or write"),
        (errno.ENOENT, "is not there"),
        (errno.EMFILE, "the system refuses: Too many open files"),
    ],
)
def test_what_the_system_says_becomes_plain_words(number: int, words: str) -> None:
    """Each kind of trouble has its own words and a remedy."""
    told = trouble(Path("post.toml"), OSError(number, os.strerror(number)))
    assert told.problem == words
    assert told.remedy


def test_trouble_without_a_number_is_told_too() -> None:
    """An error that carries words alone is passed on."""
    assert trouble(Path("post.toml"), OSError("odd")).problem == "the system refuses: odd"
