"""Writing the project file anew as one action: previewed, kept, taken back."""

from pathlib import Path

import pytest

from benchmate.store.editing import Draft
from benchmate.workbench.bench import BadProjectError, Bench, NotKeptError, NotUndoneError
from benchmate.workbench.forms.record import change_timber, change_work
from benchmate.workbench.project_edits import path_of


def thicker(bench: Bench) -> str:
    """The file with the SE post's foot tenon 2" thick."""
    path = path_of(bench.project, "se-foot", timber=False)
    return Draft(bench.text).put((*path, "thickness"), "2").text


def test_an_edit_is_tried_kept_and_taken_back(shed: Bench) -> None:
    """It moves nothing before it is kept, and leaves no trace once it is undone."""
    before, text = shed.text, thicker(shed)
    ripple = shed.try_project(text)
    assert ripple.timbers == 2
    assert shed.text == before
    shed.edit_project("se-foot changed", text, timber="post-se", step="end/square")
    assert (shed.folder / "project.toml").read_text() == text
    done = shed.undo()
    assert done is not None
    assert (done.words, done.timber, done.step) == ("se-foot changed", "post-se", "end/square")
    assert (shed.folder / "project.toml").read_text() == before
    assert shed.undo() is None


def test_a_form_never_makes_a_file_that_cannot_be_read(shed: Bench) -> None:
    """Everything wrong is told by table and key, and the file stays."""
    text = shed.text.replace('into = "sill-south"', 'into = "sill-sout"')
    with pytest.raises(BadProjectError) as caught:
        shed.edit_project("spoilt", text)
    assert caught.value.problems[0].key == "joint[1].into"
    with pytest.raises(BadProjectError):
        shed.try_project(text)
    assert shed.undo() is None


def test_a_file_changed_meanwhile_is_neither_written_over_nor_undone(shed: Bench) -> None:
    """Both say so."""
    path, text = shed.folder / "project.toml", thicker(shed)
    path.write_text(shed.text + "# by hand\n")
    with pytest.raises(NotKeptError, match="another program has just changed it"):
        shed.edit_project("se-foot changed", text)
    shed.look()
    shed.edit_project("se-foot changed", thicker(shed))
    path.write_text(path.read_text() + "# again\n")
    with pytest.raises(NotUndoneError, match=r"project.toml is another now, changed outside"):
        shed.undo()
    assert path.read_text().endswith("# again\n")


@pytest.mark.parametrize(
    ("form", "old", "new"),
    [
        (change_timber, "post-sw", "corner-post"),
        (change_timber, "sill-south", "long-sill"),
        (change_work, "sw-foot", "corner-foot"),
        (change_work, "inside-chamfer", "inner-chamfer"),
    ],
)
def test_no_tick_is_lost_by_another_id(shed: Bench, form: object, old: str, new: str) -> None:
    """No mark moves, every tick still tells the truth; and undo brings the old files back."""
    make = change_timber if form is change_timber else change_work
    files = {path: path.read_bytes() for path in sorted((shed.folder / "progress").iterdir())}
    was = {t.id: (shed.walk(t.id).done, shed.walk(t.id).look_again) for t in shed.timbers}
    edited = make(shed, old)
    edit = edited.edit(edited.texts() | {"id": new})
    assert shed.try_project(edit.text, edit.moves, edit.base).moved == ()
    shed.edit_project(edit.words, edit.text, moves=edit.moves)
    now = {t.id: (shed.walk(t.id).done, shed.walk(t.id).look_again) for t in shed.timbers}
    assert now == {new if timber == old else timber: each for timber, each in was.items()}
    assert shed.strays() == ()
    shed.undo()
    assert {path: path.read_bytes() for path in (shed.folder / "progress").iterdir()} == files


def test_a_mark_that_moves_is_told_beside_another_id(shed: Bench) -> None:
    """By what is ticked under the old one; the mortise goes by the tenon as it was cut."""
    form = change_work(shed, "sw-foot")
    edit = form.edit(form.texts() | {"id": "corner-foot", "thickness": "2"})
    ripple = shed.try_project(edit.text, edit.moves, edit.base)
    assert ripple.moved
    assert ripple.ticked
    assert {each.timber for each in ripple.moved} == {"post-sw"}


def test_an_id_whose_progress_is_kept_already_is_refused(shed: Bench) -> None:
    """Nobody's ticks are written over."""
    (shed.folder / "progress/spare.toml").write_text("kept")
    form = change_timber(shed, "post-sw")
    edit = form.edit(form.texts() | {"id": "spare"})
    with pytest.raises(NotKeptError, match="is kept already"):
        shed.edit_project(edit.words, edit.text, moves=edit.moves)
    assert Path(shed.folder / "progress/spare.toml").read_text() == "kept"
    assert (shed.folder / "progress/post-sw.toml").exists()
