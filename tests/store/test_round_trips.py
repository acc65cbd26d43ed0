"""Every file that ships reads, and reads back as it was written."""

import pytest

from benchmate.store.progress_file import progress_text, project_text
from benchmate.store.reading import parse_project, progress_files, read_progress, read_project
from tests.store.samples import HEAD, PLATES, PROJECTS, SCARF

FOLDERS = sorted(path.parent.name for path in PROJECTS.glob("*/project.toml"))
FILES = [(name, timber) for name in FOLDERS for timber in progress_files(PROJECTS / name)]


def test_projects_ship() -> None:
    """There is something to read, partly ticked."""
    assert FOLDERS
    assert FILES


@pytest.mark.parametrize("name", FOLDERS)
def test_a_project_survives_being_written(name: str) -> None:
    """Every project reads back equal from the program's own spelling."""
    project = read_project(PROJECTS / name)
    assert parse_project(project_text(project).encode()) == project


def test_a_scarf_survives_being_written() -> None:
    """A long length and the keys of one kind, none of the others."""
    text = HEAD + PLATES + SCARF
    project = parse_project(text.encode())
    assert parse_project(project_text(project).encode()) == project


@pytest.mark.parametrize(("name", "timber"), FILES)
def test_progress_is_written_as_it_was_read(name: str, timber: str) -> None:
    """Every progress file is, to the byte, what the program would write."""
    folder = PROJECTS / name
    progress = read_progress(folder, timber, read_project(folder).bare)
    assert progress_text(progress).encode() == (folder / f"progress/{timber}.toml").read_bytes()


@pytest.mark.parametrize(("name", "timber"), FILES)
def test_progress_belongs_to_a_timber(name: str, timber: str) -> None:
    """No file is left over from a timber that is no longer in the frame."""
    assert timber in [each.id for each in read_project(PROJECTS / name).timbers]
