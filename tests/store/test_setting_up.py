"""A new project folder, there whole or not at all."""

from pathlib import Path

import pytest

from benchmate.store import setting_up
from benchmate.store.problem import KeepError
from benchmate.store.setting_up import is_taken, put_whole
from tests.store.samples import STORE

FILES = {"project.toml": STORE.encode(), "progress/post-sw.toml": b"format = 1\n"}


def test_a_folder_is_made_with_everything_in_it(tmp_path: Path) -> None:
    """And nothing beside it; folders on the way are made too."""
    put_whole(tmp_path / "projects" / "shed", FILES)
    for name, data in FILES.items():
        assert (tmp_path / "projects" / "shed" / name).read_bytes() == data
    assert [each.name for each in (tmp_path / "projects").iterdir()] == ["shed"]


@pytest.mark.parametrize("kind", ["folder", "empty folder", "file", "link that leads nowhere"])
def test_nothing_is_ever_written_over(tmp_path: Path, kind: str) -> None:
    """Whatever lies there already."""
    place = tmp_path / "shed"
    if "folder" in kind:
        place.mkdir()
    if kind == "folder":
        (place / "mine.txt").write_text("mine")
    if kind == "file":
        place.write_text("mine")
    if kind.startswith("link"):
        place.symlink_to(tmp_path / "nowhere")
    before = sorted(tmp_path.rglob("*"))
    assert is_taken(place)
    with pytest.raises(KeepError, match="is there already; take another name"):
        put_whole(place, FILES)
    assert sorted(tmp_path.rglob("*")) == before


def test_a_failure_half_way_leaves_nothing_behind(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Not the folder, nor what was made beside it."""

    def full(path: Path, _data: bytes) -> None:
        raise KeepError(path, "the disk is full", "make room on it")

    monkeypatch.setattr(setting_up, "write_atomically", full)
    with pytest.raises(KeepError, match="the disk is full"):
        put_whole(tmp_path / "shed", FILES)
    assert list(tmp_path.iterdir()) == []


def test_a_place_that_cannot_be_is_told(tmp_path: Path) -> None:
    """A file where a folder is to be."""
    (tmp_path / "projects").write_text("a file")
    with pytest.raises(KeepError):
        put_whole(tmp_path / "projects" / "shed", FILES)


def test_two_at_one_moment_do_not_mix(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One that came meanwhile stays as it is, and the other is told."""

    def late(_folder: Path) -> bool:
        (tmp_path / "shed").mkdir(exist_ok=True)
        (tmp_path / "shed" / "theirs").touch()
        return False

    monkeypatch.setattr(setting_up, "is_taken", late)
    with pytest.raises(KeepError):
        put_whole(tmp_path / "shed", FILES)
    assert [each.name for each in (tmp_path / "shed").iterdir()] == ["theirs"]
    assert [each.name for each in tmp_path.iterdir()] == ["shed"]
