"""Making a project."""

from pathlib import Path

import pytest

from benchmate.outset.blank_text import blank_text
from benchmate.store import setting_up
from benchmate.store.problem import KeepError
from benchmate.store.reading import read_project
from benchmate.workbench.new_project import (
    NotMadeError,
    bad_name,
    copy,
    free_folder,
    home,
    make,
    name_of,
    why_not,
)
from tests.store.samples import STORE, put

BLANK = blank_text("Shed", "mm", "1 mm", "mill")


def test_new_projects_go_beside_the_others(tmp_path: Path) -> None:
    """Into ./projects if there is one, else among the framer's own."""
    environ = {"XDG_DATA_HOME": str(tmp_path / "data")}
    assert home(tmp_path, environ) == tmp_path / "data" / "benchmate" / "projects"
    (tmp_path / "projects").mkdir()
    assert home(tmp_path, environ) == tmp_path / "projects"


def test_a_free_folder_is_found(tmp_path: Path) -> None:
    """After the name, with a number where that is taken."""
    assert free_folder(tmp_path, "North shed") == "north-shed"
    (tmp_path / "north-shed").mkdir()
    (tmp_path / "north-shed-2").touch()
    assert free_folder(tmp_path, "North shed") == "north-shed-3"
    assert why_not(tmp_path, free_folder(tmp_path, "x" * 80)) == ""


@pytest.mark.parametrize("folder", ["../out", "Shed", "", "con", "a/b", "x" * 61])
def test_a_folder_that_leads_elsewhere_is_refused(tmp_path: Path, folder: str) -> None:
    """Only what is safe as a name on every system."""
    assert why_not(tmp_path, folder).startswith("the folder's name")
    with pytest.raises(NotMadeError, match="the folder's name"):
        make(tmp_path, folder, BLANK)
    assert list(tmp_path.iterdir()) == []


def test_a_project_is_made_and_never_over_another(tmp_path: Path) -> None:
    """The second is told, and the first stays."""
    assert make(tmp_path, "shed", BLANK) == tmp_path / "shed"
    assert read_project(tmp_path / "shed").name == "Shed"
    with pytest.raises(NotMadeError, match="shed is there already; take another name"):
        make(tmp_path, "shed", BLANK.replace("Shed", "Barn"))
    assert read_project(tmp_path / "shed").name == "Shed"


def test_a_full_disk_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """And nothing is left behind."""

    def full(path: Path, _data: bytes) -> None:
        raise KeepError(path, "the disk is full", "make room on it")

    monkeypatch.setattr(setting_up, "write_atomically", full)
    with pytest.raises(NotMadeError, match="the disk is full; make room on it"):
        make(tmp_path, "shed", BLANK)
    assert list(tmp_path.iterdir()) == []


def test_a_project_is_copied_under_another_name(tmp_path: Path) -> None:
    """One that is not sound is not, nor under a name that is none."""
    put(tmp_path / "apple")
    assert name_of(tmp_path / "apple") == "Apple store"
    made = copy(tmp_path / "apple", tmp_path, "pear", "Pear store", with_progress=True)
    assert read_project(made).name == "Pear store"
    assert bad_name(" ") == "the name is empty; write a word or two"
    with pytest.raises(NotMadeError, match="the name is empty"):
        copy(tmp_path / "apple", tmp_path, "plum", " ", with_progress=True)
    put(tmp_path / "rotten", STORE.replace("section", "sektion", 1))
    assert name_of(tmp_path / "rotten") == "rotten"
    with pytest.raises(NotMadeError, match="sektion"):
        copy(tmp_path / "rotten", tmp_path, "plum", "Plum", with_progress=True)
