import errno
import shutil
from pathlib import Path

import pytest

import benchmate
from benchmate.store import shelf
from benchmate.store.journal import JOURNAL_FILE
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.shelf import (
    copy_made,
    data_folder,
    own_projects,
    projects_in,
    shipped_demos,
    working_copy,
)
from tests.store.samples import HEAD, STORE, put

DEMO = STORE.replace(HEAD, HEAD + "demo = true\n")


@pytest.fixture
def shipped(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of shipped demos with one in it, partly ticked."""
    shipped = tmp_path / "shipped"
    demo = put(shipped / "apple-store", DEMO)
    (demo / "progress").mkdir()
    (demo / "progress/post-sw.toml").write_text('format = 1\ntimber = "post-sw"\n', "utf-8")
    monkeypatch.setattr(shelf, "shipped_demos", lambda: shipped)
    return shipped


def test_projects_are_found_by_their_file(tmp_path: Path) -> None:
    """In the order of their names; other folders and files are none."""
    for name in ("pear-store", "apple-store"):
        put(tmp_path / name)
    (tmp_path / "timber-yard").mkdir()
    (tmp_path / "note.txt").touch()
    assert projects_in(tmp_path) == (tmp_path / "apple-store", tmp_path / "pear-store")


def test_a_project_folder_is_itself_the_project(tmp_path: Path) -> None:
    """Whatever lies in it."""
    put(put(tmp_path) / "inner")
    assert projects_in(tmp_path) == (tmp_path,)


def test_a_folder_that_cannot_be_looked_into_is_told(tmp_path: Path) -> None:
    """A name that leads nowhere."""
    with pytest.raises(KeepError, match="is not there"):
        projects_in(tmp_path / "nowhere")


@pytest.mark.parametrize(
    ("environ", "folder"),
    [
        ({"XDG_DATA_HOME": "/data", "HOME": "/home/ash"}, "/data/benchmate"),
        ({"HOME": "/home/ash"}, "/home/ash/.local/share/benchmate"),
        ({"XDG_DATA_HOME": "", "HOME": "/home/ash"}, "/home/ash/.local/share/benchmate"),
        ({"XDG_DATA_HOME": "data", "HOME": "/home/ash"}, "/home/ash/.local/share/benchmate"),
    ],
)
def test_the_user_s_own_folder_follows_the_specification(
    environ: dict[str, str], folder: str
) -> None:
    """The XDG base directory specification 0.8: a path that is not absolute is ignored."""
    assert data_folder(environ) == Path(folder)


def test_without_a_home_in_the_environment_the_system_knows_it() -> None:
    """A bare environment still has a folder for the user's own data."""
    assert data_folder({}) == Path.home() / ".local/share/benchmate"


def test_demos_lie_beside_the_program(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In the source tree under `projects`, installed under the package."""
    root = Path(__file__).parents[2]
    assert shipped_demos() == root / "projects"
    monkeypatch.setattr(benchmate, "__file__", str(tmp_path / "benchmate/__init__.py"))
    (tmp_path / "benchmate/demo").mkdir(parents=True)
    assert shipped_demos() == tmp_path / "benchmate/demo"


def test_a_shipped_demo_is_copied_once(shipped: Path, tmp_path: Path) -> None:
    """Its project and its progress; the copy is the user's own and never written over."""
    environ = {"XDG_DATA_HOME": str(tmp_path / "data")}
    copy = working_copy(shipped / "apple-store", environ)
    assert copy == tmp_path / "data/benchmate/projects/apple-store"
    assert (copy / "project.toml").read_text("utf-8") == DEMO
    assert (copy / "progress/post-sw.toml").is_file()
    assert [path.name for path in copy.parent.iterdir()] == ["apple-store"]
    (copy / "project.toml").write_text(DEMO + "# mine\n", "utf-8")
    assert working_copy(shipped / "apple-store", environ) == copy
    assert (copy / "project.toml").read_text("utf-8") == DEMO + "# mine\n"


def test_a_copy_is_opened_as_it_is(shipped: Path, tmp_path: Path) -> None:
    """Opening the user's own copy makes no copy of the copy."""
    environ = {"XDG_DATA_HOME": str(tmp_path / "data")}
    copy = working_copy(shipped / "apple-store", environ)
    assert working_copy(copy, environ) == copy


def test_reading_makes_no_copy_and_takes_one_that_was_made(shipped: Path, tmp_path: Path) -> None:
    """Until the demo is opened for work it is read where it ships."""
    environ = {"XDG_DATA_HOME": str(tmp_path / "data")}
    demo = shipped / "apple-store"
    assert copy_made(demo, environ) == demo
    assert not (tmp_path / "data").exists()
    copy = working_copy(demo, environ)
    assert copy_made(demo, environ) == copy
    assert copy.parent == own_projects(environ)


def test_a_project_of_the_same_name_elsewhere_is_no_demo(shipped: Path, tmp_path: Path) -> None:
    """Only what ships is read in its copy's place."""
    environ = {"XDG_DATA_HOME": str(tmp_path / "data")}
    working_copy(shipped / "apple-store", environ)
    elsewhere = Path(shutil.copytree(shipped / "apple-store", tmp_path / "elsewhere/apple-store"))
    assert copy_made(elsewhere, environ) == elsewhere


@pytest.mark.parametrize(
    ("name", "text"), [("shipped/own", STORE), ("elsewhere/apple-store", DEMO)]
)
def test_other_projects_are_opened_where_they_lie(
    shipped: Path, tmp_path: Path, name: str, text: str
) -> None:
    """What is no demo, and what does not ship."""
    assert shipped.is_dir()
    project = put(tmp_path / name, text)
    assert working_copy(project, {"XDG_DATA_HOME": str(tmp_path / "data")}) == project
    assert not (tmp_path / "data").exists()


def test_the_demos_of_a_clone_are_copied_by_an_installed_program(
    shipped: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Trying the program in a clone does not change the clone."""
    assert shipped.is_dir()
    put(tmp_path / "clone/projects/pear-store", DEMO)
    monkeypatch.chdir(tmp_path / "clone")
    copy = working_copy(Path("projects/pear-store"), {"XDG_DATA_HOME": str(tmp_path / "data")})
    assert copy == tmp_path / "data/benchmate/projects/pear-store"


def test_links_are_not_followed_out_of_a_demo(shipped: Path, tmp_path: Path) -> None:
    """A demo cannot bring files from elsewhere along, and no half of a copy is left."""
    (tmp_path / "secret.toml").write_text("secret", "utf-8")
    (shipped / "apple-store/progress/south-sill.toml").symlink_to(tmp_path / "secret.toml")
    with pytest.raises(ProjectError, match="leads out of the project"):
        working_copy(shipped / "apple-store", {"XDG_DATA_HOME": str(tmp_path / "data")})
    assert not (tmp_path / "data").exists()


def test_a_copy_that_cannot_be_made_is_told(
    shipped: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A full disk leaves no half of a copy."""

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "full")

    monkeypatch.setattr(Path, "rename", full)
    with pytest.raises(KeepError, match="the disk is full"):
        working_copy(shipped / "apple-store", {"XDG_DATA_HOME": str(tmp_path / "data")})
    assert list((tmp_path / "data/benchmate/projects").iterdir()) == []


def test_a_copy_made_at_the_same_moment_is_taken(
    shipped: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Two programs started together share one copy."""
    rename = Path.rename

    def late(beside: Path, copy: Path) -> Path:
        put(copy, DEMO + "# theirs\n")
        return rename(beside, copy)

    monkeypatch.setattr(Path, "rename", late)
    copy = working_copy(shipped / "apple-store", {"XDG_DATA_HOME": str(tmp_path / "data")})
    assert (copy / "project.toml").read_text("utf-8") == DEMO + "# theirs\n"
    assert list(copy.parent.iterdir()) == [copy]


def test_a_user_s_folder_that_cannot_be_made_is_told(shipped: Path, tmp_path: Path) -> None:
    """A file in its place."""
    (tmp_path / "data").touch()
    with pytest.raises(KeepError, match="data"):
        working_copy(shipped / "apple-store", {"XDG_DATA_HOME": str(tmp_path / "data")})


def test_a_working_copy_starts_with_an_empty_journal(shipped: Path, tmp_path: Path) -> None:
    """What was done to a demo elsewhere is not the framer's to undo."""
    (shipped / "apple-store" / JOURNAL_FILE).write_text("{}\n", "utf-8")
    copy = working_copy(shipped / "apple-store", {"XDG_DATA_HOME": str(tmp_path / "data")})
    assert not (copy / JOURNAL_FILE).exists()
