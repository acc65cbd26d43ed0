from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.model.progress import Measured, Progress
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import (
    parse_progress,
    parse_project,
    progress_files,
    read_progress,
    read_project,
)
from tests.store.samples import HEAD, POST, STORE, put

PROGRESS = 'format = 1\ntimber = "post-sw"\n'


def said_of_progress(text: str) -> str:
    """What is said of a progress file with this text below its head."""
    with pytest.raises(ProjectError) as caught:
        parse_progress((PROGRESS + text).encode(), "post-sw", Unit.INCH)
    return str(caught.value)


def test_a_project_is_read_from_its_folder(tmp_path: Path) -> None:
    """Every part of it, as written."""
    project = read_project(put(tmp_path))
    assert project.name == "Apple store"
    assert [timber.id for timber in project.timbers] == ["south-sill", "post-sw"]
    assert [work.id for work in project.works] == ["sw-foot", "inside-chamfer"]


def test_a_missing_project_is_told(tmp_path: Path) -> None:
    """A folder without a project file."""
    with pytest.raises(KeepError, match=r"project\.toml: is not there"):
        read_project(tmp_path)


def test_a_newer_format_is_all_that_is_told() -> None:
    """What this program would take for mistakes may be right in a newer one."""
    text = "[[timber]]\nodd = 1\n" + STORE
    with pytest.raises(ProjectError) as caught:
        parse_project(("format = 2\n" + text.replace("format = 1", "")).encode())
    assert [problem.key for problem in caught.value.problems] == ["format"]


@pytest.mark.parametrize("written", ["0", "true", "1.0", '"1"', "[]"])
def test_a_format_is_a_whole_number(written: str) -> None:
    """Anything else is told, beside whatever else is wrong."""
    text = HEAD.replace("format = 1", f"format = {written}") + "odd = 1\n"
    with pytest.raises(ProjectError) as caught:
        parse_project(text.encode())
    assert [problem.key for problem in caught.value.problems] == ["format", "odd"]


def test_problems_of_all_kinds_are_told_at_once() -> None:
    """Names, ids, references and features, whatever else is wrong."""
    text = STORE + POST + "[[chamfer]]\n[levels]\n" + 'floor = "flor"\n'
    with pytest.raises(ProjectError) as caught:
        parse_project(text.encode())
    assert {"timber[3].id", "chamfer[2].id", "levels.floor"} <= {
        problem.key for problem in caught.value.problems
    }


def test_without_a_file_nothing_is_kept_yet(tmp_path: Path) -> None:
    """A timber nobody has touched."""
    assert read_progress(tmp_path, "post-sw", Unit.INCH) == Progress(timber="post-sw")


def test_progress_is_read_in_the_unit_of_the_project(tmp_path: Path) -> None:
    """A bare figure corrected by hand means what it means in the project."""
    (tmp_path / "progress").mkdir()
    text = PROGRESS + '[measured.foot-tenon]\nfirst = "180"\n'
    (tmp_path / "progress/post-sw.toml").write_text(text, "utf-8")
    progress = read_progress(tmp_path, "post-sw", Unit.MM)
    assert progress.measured == {"foot-tenon": Measured(first=Length.mm(180))}


def test_progress_behind_a_link_is_refused(tmp_path: Path) -> None:
    """Even before there is a file: it would be written outside the project."""
    (tmp_path / "shed").mkdir()
    (tmp_path / "elsewhere").mkdir()
    (tmp_path / "shed/progress").symlink_to("../elsewhere")
    with pytest.raises(ProjectError, match="leads out of the project"):
        read_progress(tmp_path / "shed", "post-sw", Unit.INCH)


def test_progress_of_another_timber_is_refused() -> None:
    """A file copied from one post to the other tells whose it is."""
    with pytest.raises(ProjectError, match='is "post-sw", but the name of the file says "post-se"'):
        parse_progress(PROGRESS.encode(), "post-se", Unit.INCH)


def test_a_step_is_ticked_once() -> None:
    """A second tick on one step is told with the line of the first."""
    ticks = "".join(f'[[tick]]\nstep = "{step}"\nat = 2026-05-04T09:30:00Z\n' for step in "aba")
    assert said_of_progress(ticks).startswith(
        'progress/post-sw.toml:10: tick[3].step: is a second tick on "a", ticked on line 3 already'
    )


def test_ticks_have_one_key() -> None:
    """The name of their list in the program is none in the file."""
    assert "[[tick]]" in said_of_progress("ticks = []\n")


def test_timbers_with_progress_are_listed(tmp_path: Path) -> None:
    """By id, in order; other files in the folder are none of them."""
    assert progress_files(tmp_path) == ()
    (tmp_path / "progress").mkdir()
    for name in ("post-sw.toml", "post-se.toml", "Post.toml", ".post.toml.1f", "note.txt"):
        (tmp_path / "progress" / name).touch()
    assert progress_files(tmp_path) == ("post-se", "post-sw")


def test_a_folder_that_cannot_be_listed_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A failing disk is told in plain words."""

    def refuse(*_: object) -> None:
        raise OSError(5, "Input/output error")

    monkeypatch.setattr(Path, "glob", refuse)
    with pytest.raises(KeepError, match="the disk fails to read or write"):
        progress_files(tmp_path)
