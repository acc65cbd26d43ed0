"""Writing the project file anew as one action: previewed, kept, taken back."""

from pathlib import Path

import pytest

from benchmate.store.editing import Draft
from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.record import change_timber, change_work
from benchmate.workbench.keeping import BadProjectError, NotKeptError, NotUndoneError
from benchmate.workbench.project_edits import path_of


def thicker(bench: Bench) -> str:
    """The file with the SE post's foot tenon 2" thick."""
    path = path_of(bench.project, "se-foot", timber=False)
    return Draft(bench.project_text()).put((*path, "thickness"), "2").text


def test_an_edit_is_tried_kept_and_taken_back(shed: Bench) -> None:
    """It moves nothing before it is kept, and leaves no trace once it is undone."""
    before, text = shed.project_text(), thicker(shed)
    ripple = shed.try_project(text)
    assert ripple.timbers == 2
    assert shed.project_text() == before
    shed.edit_project("se-foot changed", text, timber="post-se", step="end/square")
    assert (shed.folder / "project.toml").read_text() == text
    done = shed.undo()
    assert done is not None
    assert (done.words, done.timber, done.step) == ("se-foot changed", "post-se", "end/square")
    assert (shed.folder / "project.toml").read_text() == before
    assert shed.undo() is None


def test_a_form_never_makes_a_file_that_cannot_be_read(shed: Bench) -> None:
    """Everything wrong is told by table and key, and the file stays."""
    text = shed.project_text().replace('into = "sill-south"', 'into = "sill-sout"')
    with pytest.raises(BadProjectError) as caught:
        shed.edit_project("spoilt", text)
    assert caught.value.problems[0].key == "joint[1].into"
    with pytest.raises(BadProjectError):
        shed.try_project(text)
    assert shed.undo() is None


def test_a_file_changed_meanwhile_is_not_written_over(shed: Bench) -> None:
    """An edit made from what it was before is refused; undone is no more than what was edited."""
    path, text = shed.folder / "project.toml", thicker(shed)
    path.write_text(shed.project_text() + "# by hand\n")
    with pytest.raises(NotKeptError, match="has just been changed outside"):
        shed.edit_project("se-foot changed", text)
    shed.look()
    before = shed.project_text()
    shed.edit_project("se-foot changed", thicker(shed))
    path.write_text(path.read_text() + "# again\n")
    shed.undo()
    assert path.read_text() == before + "# again\n"


def test_what_was_edited_and_is_another_now_is_not_undone(shed: Bench) -> None:
    """The lines themselves were changed by hand since."""
    path = shed.folder / "project.toml"
    shed.edit_project("se-foot changed", thicker(shed))
    path.write_text("# all new\n" + path.read_text().replace("thickness", "thickness  "))
    with pytest.raises(NotUndoneError, match=r"these lines of project\.toml are others now"):
        shed.undo()
    assert path.read_text().startswith("# all new")


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
    shed.close()
    again = Bench(Keeper.open(shed.folder))
    again.redo()
    assert {
        t.id: (again.walk(t.id).done, again.walk(t.id).look_again) for t in again.timbers
    } == now
    again.undo()
    assert {path: path.read_bytes() for path in (shed.folder / "progress").iterdir()} == files
    again.close()


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
