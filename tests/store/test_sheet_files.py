"""A folder that sheets are written into."""

from pathlib import Path

import pytest

from benchmate.store.problem import KeepError
from benchmate.store.sheet_files import SheetFolder


def ours(name: str, start: bytes) -> bool:
    """What benchmate wrote starts with a word of its own."""
    return start.startswith(b"sheet") and not name.endswith(".md")


@pytest.fixture
def folder(tmp_path: Path) -> SheetFolder:
    """A folder that was not there before."""
    return SheetFolder(tmp_path / "out", ours)


def test_the_folder_is_made_and_files_are_written_whole(folder: SheetFolder) -> None:
    """Part by part, again over the sheet that was there, and nothing else beside it."""
    for text in ("one", "two"):
        folder.check(["a.txt"])
        folder.write("a.txt", ("sheet ", text))
    assert [path.name for path in folder.folder.iterdir()] == ["a.txt"]
    assert (folder.folder / "a.txt").read_text("utf-8") == "sheet two"


def test_what_is_not_ours_is_left_alone(folder: SheetFolder) -> None:
    """A file, a folder or a link of that name is told, with what to do."""
    (folder.folder / "file.txt").write_text("mine", "utf-8")
    (folder.folder / "folder.txt").mkdir()
    (folder.folder / "link.txt").symlink_to("/etc/hostname")
    (folder.folder / "loop.txt").symlink_to("loop.txt")
    for name in ("file.txt", "folder.txt", "link.txt", "loop.txt"):
        with pytest.raises(KeepError, match=r"is no sheet of benchmate's.*move it away"):
            folder.check(["new.txt", name])


def test_older_sheets_are_found(folder: SheetFolder) -> None:
    """Those of a timber that has another id now; the framer's own files are not among them."""
    for name in ("old.txt", "now.txt"):
        folder.write(name, ("sheet",))
    (folder.folder / "mine.txt").write_text("mine", "utf-8")
    assert folder.others(["now.txt"]) == ("old.txt",)


def test_a_file_in_the_folder_s_place_is_told(tmp_path: Path) -> None:
    """Before anything is written."""
    (tmp_path / "out").write_text("x", "utf-8")
    with pytest.raises(KeepError, match="is not a folder"):
        SheetFolder(tmp_path / "out", ours)


def test_a_folder_that_cannot_be_made_is_told(tmp_path: Path) -> None:
    """Only the last folder of a path is made, so that a slip of the pen makes no tree."""
    with pytest.raises(KeepError, match="is not there"):
        SheetFolder(tmp_path / "no" / "out", ours)
    with pytest.raises(KeepError, match="too long a name"):
        SheetFolder(tmp_path / ("x" * 300), ours)
