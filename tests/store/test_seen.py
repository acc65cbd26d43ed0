"""What a user has been shown once."""

from pathlib import Path

import pytest

from benchmate.store.seen import note_seen, state_folder, was_seen


@pytest.mark.parametrize(
    ("environ", "folder"),
    [
        ({"XDG_STATE_HOME": "/state", "HOME": "/home/ash"}, "/state/benchmate"),
        ({"XDG_STATE_HOME": "", "HOME": "/home/ash"}, "/home/ash/.local/state/benchmate"),
        ({"XDG_STATE_HOME": "state", "HOME": "/home/ash"}, "/home/ash/.local/state/benchmate"),
    ],
)
def test_it_is_kept_where_the_base_directory_specification_says(
    environ: dict[str, str], folder: str
) -> None:
    """A relative path is to be ignored (XDG Base Directory Specification 0.8)."""
    assert state_folder(environ) == Path(folder)


def test_what_was_noted_is_seen_ever_after(tmp_path: Path) -> None:
    """Each thing for itself."""
    environ = {"XDG_STATE_HOME": str(tmp_path)}
    assert not was_seen("cards", environ)
    assert note_seen("cards", environ)
    assert note_seen("cards", environ), "again is no harm"
    assert was_seen("cards", environ)
    assert not was_seen("others", environ)


def test_a_folder_that_cannot_be_written_counts_as_seen_all_along(tmp_path: Path) -> None:
    """A file where the folder should be: nothing is raised, and nothing shown over and over."""
    (tmp_path / "benchmate").write_text("in the way")
    environ = {"XDG_STATE_HOME": str(tmp_path)}
    assert not note_seen("cards", environ)


def test_a_path_the_system_refuses_is_no_error() -> None:
    """Too long a name."""
    environ = {"XDG_STATE_HOME": "/" + "x" * 5000}
    assert was_seen("cards", environ)
    assert not note_seen("cards", environ)
