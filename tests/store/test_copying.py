"""Copying a project."""

from pathlib import Path

import pytest

from benchmate.store.copying import copy_project, renamed
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import read_project
from tests.store.samples import HEAD, PROJECTS, STORE, put


def test_a_copy_has_another_name_and_nothing_else_is_changed() -> None:
    """Every other byte stays."""
    data = STORE.replace('name = "Apple store"', 'name = "Apple store" # ours').encode()
    copy = renamed(data, 'Pear "store"')
    assert copy == data.replace(b'"Apple store" # ours', b'"Pear \\"store\\"" # ours')


def test_a_copy_of_a_demo_is_no_demo() -> None:
    """It is opened itself, and not as a working copy."""
    data = STORE.replace(HEAD, HEAD + "demo = true # to try\n").encode()
    assert b"demo" not in renamed(data, "Pear store")


@pytest.mark.parametrize("with_progress", [False, True])
def test_progress_comes_along_if_asked_for(tmp_path: Path, *, with_progress: bool) -> None:
    """The frame alone, or with its ticks and sizes."""
    demo = PROJECTS / "orchard-tool-shed"
    copy_project(demo, tmp_path / "north", "North shed", with_progress=with_progress)
    project = read_project(tmp_path / "north")
    assert (project.name, project.demo) == ("North shed", False)
    assert project.timbers == read_project(demo).timbers
    kept = {each.name for each in (tmp_path / "north" / "progress").iterdir()}
    assert kept == (
        {each.name for each in (demo / "progress").iterdir()} if with_progress else set()
    )


def test_a_copy_over_something_is_refused(tmp_path: Path) -> None:
    """And the project itself is left alone."""
    put(tmp_path / "apple")
    with pytest.raises(KeepError, match="is there already"):
        copy_project(tmp_path / "apple", tmp_path / "apple", "Pear", with_progress=True)
    assert read_project(tmp_path / "apple").name == "Apple store"


def test_what_is_not_sound_is_not_copied(tmp_path: Path) -> None:
    """It says what is wrong, and makes no folder."""
    put(tmp_path / "apple", STORE.replace("section", "sektion", 1))
    with pytest.raises(ProjectError):
        copy_project(tmp_path / "apple", tmp_path / "pear", "Pear", with_progress=False)
    assert not (tmp_path / "pear").exists()


def test_a_name_that_cannot_be_reworded_is_told() -> None:
    """One over several lines is left to the framer's editor."""
    data = STORE.replace('"Apple store"', '"""Apple store"""').encode()
    with pytest.raises(KeepError, match="in your editor"):
        renamed(data, "Pear")
    spread = STORE.replace(HEAD, HEAD + "demo   =\\\n  true\n").encode()
    with pytest.raises((KeepError, ProjectError)):
        renamed(spread, "Pear")
