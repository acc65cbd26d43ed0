import os
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.measure.sums import read_sum
from benchmate.model.project import Project
from benchmate.store.files import PROJECT_FILE, read_file, stamp
from benchmate.store.kept_project import KeptProject
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import parse_project
from tests.store.samples import STORE, put

NAMES = """
[lengths]
deck = "1-1/4"   # planed

[levels]
"floor top" = "6 + deck"
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A project with two names, one of which follows from the other."""
    return put(tmp_path / "store", STORE + NAMES)


@pytest.fixture
def kept(folder: Path) -> KeptProject:
    """Its file as read."""
    return KeptProject(folder, read_file(folder, PROJECT_FILE))


def write(folder: Path, text: str) -> None:
    """Change the file as an editor would, so that its stamp cannot stay the same."""
    path = folder / PROJECT_FILE
    path.write_text(text, "utf-8")
    moment = path.stat().st_mtime_ns + 1_000_000_000
    os.utime(path, ns=(moment, moment))


def test_a_name_is_reworded_on_disk(kept: KeptProject, folder: Path) -> None:
    """The file changes in that value only, the project with it, and the old text comes back."""
    assert kept.written()["lengths"] == {"deck": "1-1/4"}
    assert kept.set_name("lengths", "deck", "1-1/2") == "1-1/4"
    expected = (STORE + NAMES).replace('deck = "1-1/4"', 'deck = "1-1/2"')
    assert (folder / PROJECT_FILE).read_text("utf-8") == expected
    assert kept.project.lengths["deck"] == read_sum("1-1/2")
    assert kept.written()["lengths"] == {"deck": "1-1/2"}
    assert not kept.changed(), "its own writing is no change by others"


def test_trying_writes_nothing(kept: KeptProject, folder: Path) -> None:
    """The project as it would be comes back, and the one that is stays."""
    before = stamp(folder, PROJECT_FILE)
    assert kept.try_name("lengths", "deck", "2").lengths["deck"] == read_sum("2")
    assert kept.project.lengths["deck"] == read_sum("1-1/4")
    assert stamp(folder, PROJECT_FILE) == before


def test_the_same_text_writes_nothing(kept: KeptProject, folder: Path) -> None:
    """A name set to what it is leaves the file as it is."""
    before = stamp(folder, PROJECT_FILE)
    assert kept.set_name("lengths", "deck", "1-1/4") == "1-1/4"
    assert stamp(folder, PROJECT_FILE) == before


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("floor top + 1", "goes round in a circle: deck → floor top → deck"),
        ("planks", 'called "planks"'),
        ("1/x", "not a unit"),
        ("", "term is missing"),
    ],
)
def test_what_is_no_sound_project_is_not_written(
    kept: KeptProject, folder: Path, text: str, told: str
) -> None:
    """A circle, an unknown name or a bad length is told, and the file and the project stay."""
    before = (folder / PROJECT_FILE).read_bytes()
    for change in (kept.try_name, kept.set_name):
        with pytest.raises(ProjectError) as caught:
            change("lengths", "deck", text)
        assert told in str(caught.value)
    assert (folder / PROJECT_FILE).read_bytes() == before
    assert kept.project.lengths["deck"] == read_sum("1-1/4")


def test_what_others_wrote_is_kept_too(kept: KeptProject, folder: Path) -> None:
    """The new text goes on top of what the file holds now, looked at or not."""
    write(folder, (STORE + NAMES).replace("Apple store", "Pear store"))
    assert kept.try_name("lengths", "deck", "2").name == "Pear store"
    assert kept.project.name == "Apple store"
    kept.set_name("lengths", "deck", "2")
    assert kept.project.name == "Pear store"
    assert "Pear store" in (folder / PROJECT_FILE).read_text("utf-8")


def test_a_file_broken_by_others_is_never_written_over(kept: KeptProject, folder: Path) -> None:
    """It is told as it would be when it is opened."""
    write(folder, STORE + NAMES + "broken")
    with pytest.raises(ProjectError, match=rf"{PROJECT_FILE}:"):
        kept.set_name("lengths", "deck", "2")
    assert (folder / PROJECT_FILE).read_text("utf-8").endswith("broken")
    assert kept.project.lengths["deck"] == read_sum("1-1/4")


def test_a_file_changed_at_that_very_moment_is_not_written_over(
    kept: KeptProject, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What an editor saves while the new text is being read is not lost."""
    others = (STORE + NAMES).replace("Apple store", "Pear store")

    def slowly(data: bytes) -> Project:
        write(folder, others)
        return parse_project(data)

    monkeypatch.setattr("benchmate.store.kept_project.parse_project", slowly)
    with pytest.raises(KeepError, match="has just changed it"):
        kept.set_name("lengths", "deck", "2")
    assert (folder / PROJECT_FILE).read_text("utf-8") == others


def test_a_write_protected_file_is_left_alone(
    kept: KeptProject, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Protecting it was the framer's choice, which putting a new file in its place would undo."""
    monkeypatch.setattr(os, "access", lambda *_: False)
    before = (folder / PROJECT_FILE).read_bytes()
    with pytest.raises(KeepError, match="no permission"):
        kept.set_name("lengths", "deck", "2")
    assert (folder / PROJECT_FILE).read_bytes() == before


def test_a_file_that_goes_missing_is_told(
    kept: KeptProject, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Before and while it is written."""
    monkeypatch.setattr(os.path, "realpath", lambda path: f"{path}.gone")
    with pytest.raises(KeepError, match="is not there"):
        kept.set_name("lengths", "deck", "2")
    monkeypatch.undo()
    (folder / PROJECT_FILE).unlink()
    with pytest.raises(KeepError, match="is not there"):
        kept.set_name("lengths", "deck", "2")


def test_who_may_read_and_write_it_stays(kept: KeptProject, folder: Path) -> None:
    """A file shared with a workmate stays shared."""
    path = folder / PROJECT_FILE
    path.chmod(0o664)
    kept.set_name("lengths", "deck", "2")
    assert path.stat().st_mode & 0o777 == 0o664


def test_a_link_stays_a_link(folder: Path) -> None:
    """The file it leads to, inside the project, is the one that is written."""
    path, real = folder / PROJECT_FILE, folder / "frame.toml"
    path.rename(real)
    path.symlink_to(real.name)
    kept = KeptProject(folder, read_file(folder, PROJECT_FILE))
    kept.set_name("lengths", "deck", "2")
    assert path.is_symlink()
    assert 'deck = "2"' in real.read_text("utf-8")
    assert not kept.changed()


def test_changes_by_others_are_told_once(kept: KeptProject, folder: Path) -> None:
    """What can be used is read again; what cannot is raised once, and the last stays."""
    assert not kept.changed()
    write(folder, (STORE + NAMES).replace("1-1/4", "1"))
    assert kept.changed()
    assert kept.written()["lengths"] == {"deck": "1"}
    write(folder, "broken")
    with pytest.raises(ProjectError):
        kept.changed()
    assert not kept.changed()
    assert kept.project.lengths["deck"].value(lambda _: Length(0)) == Length.inches(1)


def test_a_rewritten_file_is_gone_by(kept: KeptProject, folder: Path) -> None:
    """The whole text as it is now is changed, written, and read."""
    assert kept.text() == STORE + NAMES
    rewritten = kept.rewrite(lambda text: text.replace("Apple store", "Pear store"))
    assert rewritten.before == STORE + NAMES
    assert kept.project.name == "Pear store"
    assert (folder / PROJECT_FILE).read_text("utf-8") == rewritten.after == kept.text()
    assert not kept.changed(), "its own writing is no change by others"


def test_a_rewriting_that_is_no_sound_project_is_not_written(
    kept: KeptProject, folder: Path
) -> None:
    """All that is wrong with it is told, and the file and the project stay."""
    with pytest.raises(ProjectError, match="section"):
        kept.rewrite(lambda text: text.replace('section = "8 x 8"', 'section = "8"'))
    assert (folder / PROJECT_FILE).read_text("utf-8") == STORE + NAMES
    assert kept.project.name == "Apple store"


def test_a_rewriting_goes_on_top_of_what_others_wrote(kept: KeptProject, folder: Path) -> None:
    """And one that changes nothing writes nothing."""
    write(folder, (STORE + NAMES).replace("Apple store", "Pear store"))
    before = stamp(folder, PROJECT_FILE)
    kept.rewrite(lambda text: text)
    assert kept.project.name == "Pear store"
    assert stamp(folder, PROJECT_FILE) == before


def test_every_byte_of_a_rewritten_file_is_its_own(tmp_path: Path) -> None:
    """Ends of lines and a byte order mark are part of the text."""
    folder = put(tmp_path / "store")
    data = b"\xef\xbb\xbf" + (STORE + NAMES).replace("\n", "\r\n").encode()
    (folder / PROJECT_FILE).write_bytes(data)
    kept = KeptProject(folder, read_file(folder, PROJECT_FILE))
    kept.rewrite(lambda text: text + "# end\r\n")
    assert (folder / PROJECT_FILE).read_bytes() == data + b"# end\r\n"
