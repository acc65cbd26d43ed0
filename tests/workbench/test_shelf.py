"""Which project a framer means."""

import shutil
from pathlib import Path

import pytest

from benchmate.workbench.shelf import (
    NoProjectError,
    choices,
    every_project,
    is_own,
    locate,
    place_of,
    to_open,
    to_read,
)


def project(folder: Path, name: str) -> Path:
    """A project folder with next to nothing in it."""
    (folder / name).mkdir(parents=True)
    (folder / name / "project.toml").write_text(f'format = 1\nname = "{name}"\n')
    return folder / name


def environ(tmp_path: Path) -> dict[str, str]:
    """An environment with a data folder of its own."""
    return {"XDG_DATA_HOME": str(tmp_path / "data")}


def test_the_folder_named_comes_first(tmp_path: Path) -> None:
    """A project folder, its project.toml, a folder of projects, or a bare name all do."""
    barn = project(tmp_path / "projects", "barn")
    env = environ(tmp_path)
    for named in (str(barn), str(barn / "project.toml"), str(tmp_path / "projects"), "barn"):
        assert choices(named, tmp_path, env) == (barn,)


def test_then_projects_here_then_the_framers_own(tmp_path: Path) -> None:
    """Without a name ./projects is looked in, and then the data folder."""
    own = project(tmp_path / "data" / "benchmate" / "projects", "own")
    env = environ(tmp_path)
    assert choices("", tmp_path, env) == (own,)
    here = project(tmp_path / "projects", "here")
    assert choices("", tmp_path, env) == (here,)
    assert locate("own", tmp_path, env) == own


def test_with_nothing_else_the_demos_open_as_working_copies(tmp_path: Path) -> None:
    """A first start shows the demos and leaves what shipped alone."""
    own = tmp_path / "data" / "benchmate" / "projects"
    copies = choices("", tmp_path, environ(tmp_path))
    names = ("hillside-wood-store", "meadow-cart-house", "orchard-tool-shed")
    assert copies == tuple(own / name for name in names)
    assert (copies[-1] / "progress" / "post-se.toml").is_file()


def test_a_demo_opens_by_its_name_from_anywhere(tmp_path: Path) -> None:
    """The README's command works for an installed program too; again, it is a working copy."""
    (copy,) = choices("orchard-tool-shed", tmp_path, environ(tmp_path))
    assert copy == tmp_path / "data" / "benchmate" / "projects" / "orchard-tool-shed"
    assert choices("orchard-tool-shed", tmp_path, environ(tmp_path)) == (copy,)


def test_a_clone_opens_its_demo_as_a_working_copy(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Trying the program never dirties a clone."""
    demo = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"
    shutil.copytree(demo, tmp_path / "clone" / "projects" / demo.name)
    monkeypatch.chdir(tmp_path / "clone")
    (opened,) = choices("", tmp_path / "clone", environ(tmp_path))
    assert (tmp_path / "data") in opened.parents


def test_a_broken_project_is_still_a_choice(tmp_path: Path) -> None:
    """It says what is wrong when it is opened, not before."""
    barn = project(tmp_path / "projects", "barn")
    (barn / "project.toml").write_text("format =")
    assert choices("", tmp_path, environ(tmp_path)) == (barn,)


def test_nothing_there_is_one_clear_error(tmp_path: Path) -> None:
    """A name that leads nowhere, and a folder without projects."""
    (tmp_path / "empty").mkdir()
    with pytest.raises(NoProjectError, match="there is no project barn"):
        choices("barn", tmp_path, environ(tmp_path))
    with pytest.raises(NoProjectError, match="holds no project"):
        choices("empty", tmp_path, environ(tmp_path))


def test_the_plain_commands_read_the_copy_that_the_screen_works_on(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The demo itself until there is a copy, which reading never makes."""
    demo = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"
    clone = tmp_path / "clone"
    shipped = Path(shutil.copytree(demo, clone / "projects" / demo.name))
    monkeypatch.chdir(clone)
    env = environ(tmp_path)
    for named in (demo.name, f"projects/{demo.name}"):
        assert to_read(named, clone, env) == shipped
    assert not (tmp_path / "data").exists()
    (copy,) = choices("", clone, env)
    for named in (demo.name, f"projects/{demo.name}", str(copy)):
        assert to_read(named, clone, env) == copy
    assert is_own(copy, env)
    assert not is_own(shipped, env)


def test_a_broken_demo_is_read_where_it_lies(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whether it is a demo cannot be told, so its own errors are."""
    broken = project(tmp_path / "projects", "barn")
    (broken / "project.toml").write_text("format =")
    project(tmp_path / "data" / "benchmate" / "projects", "barn")
    monkeypatch.chdir(tmp_path)
    assert to_read("barn", tmp_path, environ(tmp_path)) == broken


def test_every_project_there_is_can_be_chosen(tmp_path: Path) -> None:
    """Here, the framer's own, and the demos that he has no copy of, each with where it lies."""
    here = project(tmp_path / "projects", "here")
    own = project(tmp_path / "data" / "benchmate" / "projects", "own")
    env = environ(tmp_path)
    found = every_project(tmp_path, env)
    assert found[:2] == (here, own)
    assert {each.name for each in found[2:]} >= {"orchard-tool-shed", "meadow-cart-house"}
    places = [
        place_of(each, tmp_path, env) for each in (here, own, found[-1], tmp_path / "x" / "y")
    ]
    assert places == ["./projects", "your own", "demo", str(tmp_path / "x")]
    copy = to_open(found[-1], env)
    assert copy.parent == own.parent
    again = every_project(tmp_path, env)
    assert copy in again
    assert len(again) == len(found)
