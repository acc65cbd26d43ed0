import pytest

from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import FormError, OpenEnd, open_ends
from benchmate.workbench.forms.record import NewTimber, change_work
from benchmate.workbench.keeping import BadProjectError


def test_a_problem_is_told_at_its_field(shed: Bench) -> None:
    """Within the record, its parts and its lists; none for what stands elsewhere."""
    form = change_work(shed, "se-foot")
    edit = form.edit(form.texts() | {"length": "x", "pegs.count": "9", "meets": "nobody"})
    with pytest.raises(BadProjectError) as caught:
        shed.try_project(edit.text)
    found = {form.field_of(problem, edit.path) for problem in caught.value.problems}
    assert {"length", "pegs.count", "pegs.size"} <= found
    assert form.field_of(caught.value.problems[0], ("joint", 0)) == ""


def test_open_ends_are_told_if_nothing_else_is_wrong(shed: Bench) -> None:
    """By timber and end."""
    form = NewTimber(shed, "post-se")
    texts = {
        "id": "girt",
        "name": "Girt",
        "kind": "girt",
        "section": "6 x 4",
        "first_face": "south",
        "second_face": "up",
        "reference_end": "west",
        "at.north": "line a",
        "at.up": "3'",
    }
    edit = form.edit(texts)
    with pytest.raises(BadProjectError) as caught:
        shed.try_project(edit.text)
    assert open_ends(edit, caught.value.problems) == (
        OpenEnd("girt", "west"),
        OpenEnd("girt", "east"),
    )
    worse = form.edit(texts | {"section": "nothing"})
    with pytest.raises(BadProjectError) as caught:
        shed.try_project(worse.text)
    assert open_ends(worse, caught.value.problems) == ()
    assert OpenEnd("girt", "west").words == "west end"
    assert OpenEnd("post", "foot").words == "foot"


def test_a_form_says_why_nothing_can_be_typed(shed: Bench) -> None:
    """To a reader, and over a file that cannot be read."""
    reader = Bench(Keeper.open(shed.folder))
    assert change_work(reader, "se-foot").blocked.startswith("READ ONLY: another benchmate")
    form = change_work(shed, "se-foot")
    assert form.blocked == ""
    (shed.folder / "project.toml").write_text("broken")
    shed.look()
    assert form.blocked.startswith("READ ONLY for now: put right first project.toml:1")
    assert FormError("a", "b").key == "a"
