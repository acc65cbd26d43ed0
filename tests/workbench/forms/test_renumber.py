import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import FormError
from benchmate.workbench.forms.renumber import Renumber


def test_posts_are_numbered_along_a_line_with_their_ticks(shed: Bench) -> None:
    """Ids, names, joints called after them, and progress; no mark moves, and u takes it back."""
    before = {path.name: path.read_bytes() for path in (shed.folder / "progress").iterdir()}
    text = shed.project_text()
    done = {timber.name: shed.walk(timber.id).done for timber in shed.timbers}
    form = Renumber(shed, "tie-west")
    edit = form.edit(form.texts() | {"order": "east to west"})
    assert edit.told[0] == "East tie becomes Tie 1 (tie-1)."
    assert shed.try_project(edit.text, edit.moves, edit.base).moved == ()
    shed.edit_project(edit.words, edit.text, moves=edit.moves)
    assert [timber.id for timber in shed.timbers if timber.kind == "tie"] == [
        "tie-3",
        "tie-2",
        "tie-1",
    ]
    assert shed.walk("tie-3").done == done["West tie"]
    assert {work.id for work in shed.frame.works_on("tie-1")} == {"tie-1-south", "tie-1-north"}
    assert shed.strays() == ()
    shed.undo()
    assert shed.project_text() == text
    after = {path.name: path.read_bytes() for path in (shed.folder / "progress").iterdir()}
    assert after == before


def test_those_abreast_are_counted_the_other_way(shed: Bench) -> None:
    """West to east, and of one bay from the south."""
    form = Renumber(shed, "joist-w2")
    assert form.texts()["order"] == "west to east"
    told = form.edit(form.texts()).told
    assert [each.partition(" becomes")[0] for each in told] == [
        "West joist 1",
        "West joist 2",
        "West joist 3",
        "East joist 1",
        "East joist 2",
        "East joist 3",
    ]
    assert form.choices("order", {})[0] == "west to east"


@pytest.mark.parametrize(
    ("texts", "key"),
    [
        ({"order": "round"}, "order"),
        ({"start": "one"}, "start"),
        ({"timbers": "girder"}, "timbers"),
        ({"timbers": ""}, "timbers"),
    ],
)
def test_what_cannot_be_is_told_at_its_field(shed: Bench, texts: dict[str, str], key: str) -> None:
    """And nothing is half numbered."""
    form = Renumber(shed, "joist-w2")
    with pytest.raises(FormError) as caught:
        form.edit(form.texts() | texts)
    assert caught.value.key == key
