"""The gallery of errors: each folder holds a project that cannot be used, and what is said of it.

A folder with a `project.toml` and an `expected.txt` is a test; nothing else needs to be added.
"""

from pathlib import Path

import pytest

from benchmate.store.problem import ProjectError
from benchmate.store.reading import progress_files, read_progress, read_project

GALLERY = Path(__file__).parent
CASES = sorted(path.name for path in GALLERY.iterdir() if (path / "project.toml").is_file())


def what_is_said(folder: Path) -> str:
    """Everything a framer is told about a project that cannot be used."""
    with pytest.raises(ProjectError) as caught:
        read_all(folder)
    return f"{caught.value}\n"


def read_all(folder: Path) -> None:
    """Read a project and the progress of each of its timbers."""
    project = read_project(folder)
    for timber in progress_files(folder):
        read_progress(folder, timber, project.bare)


@pytest.mark.parametrize("case", CASES)
def test_the_framer_is_told_this(case: str) -> None:
    """Every problem is told at once: where, the line, what is wrong and what to do."""
    expected = (GALLERY / case / "expected.txt").read_text("utf-8")
    assert what_is_said(GALLERY / case) == expected


@pytest.mark.parametrize("case", CASES)
def test_nothing_acts_on_the_terminal(case: str) -> None:
    """Whatever stands in the file, what is said of it is plain printable lines."""
    assert all(line.isprintable() for line in what_is_said(GALLERY / case).split("\n"))


def test_the_gallery_is_full() -> None:
    """The cases were found where they lie, so that the tests above have something to test."""
    assert {"broken-toml", "several-at-once", "broken-progress"} <= set(CASES)
