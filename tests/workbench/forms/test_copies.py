import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.copies import Copies, placed_at, spread
from benchmate.workbench.forms.form import FormError
from benchmate.workbench.open_project import parsed


def test_joists_every_so_much_so_many_times(shed: Bench) -> None:
    """Each with both its pockets, ids and names counted on, as one action."""
    form = Copies(shed, "joist-w1")
    texts = form.texts() | {"along": "north", "every": "8", "times": "2"}
    edit = form.edit(texts)
    project = parsed(edit.text)
    added = [timber for timber in project.timbers if timber.id in ("joist-w4", "joist-w5")]
    assert [timber.name for timber in added] == ["West joist 4", "West joist 5"]
    assert [str(t.at and t.at.north and t.at.north.text()) for t in added] == [
        'line a + joist spacing + 8"',
        'line a + joist spacing + 16"',
    ]
    mates = {work.id: work.timbers()["into"] for work in project.works if "joist-w5" in work.id}
    assert mates == {"joist-w5-west": "sill-west", "joist-w5-east": "girder"}
    before = shed.project_text()
    shed.edit_project(edit.words, edit.text)
    shed.undo()
    assert shed.project_text() == before
    assert edit.timber == "joist-w4"


def test_names_are_added_one_by_one(shed: Bench) -> None:
    """And a minus goes back."""
    form = Copies(shed, "post-sm")
    edit = form.edit(form.texts() | {"along": "east", "every": "overhang", "times": "2"})
    assert '"line 2 + overhang + overhang"' in edit.text
    edit = form.edit(form.texts() | {"along": "east", "every": "-overhang"})
    assert '"line 2 - overhang"' in edit.text


def test_places_are_listed(shed: Bench) -> None:
    """The chamfers go along; a joint without a mate there is told."""
    form = Copies(shed, "post-sw")
    edit = form.edit(form.texts() | {"along": "east", "at": "line 1 + 2', line 1 + 4'"})
    project = parsed(edit.text)
    assert len(project.timbers) == 24
    assert project.works[-1].timbers()["on[3]"] == "post-sw-3"
    far = Copies(shed, "tie-middle")
    told = far.edit(far.texts() | {"along": "east", "at": "line 2 + 3'"}).told
    assert "tie-middle-south is left out: no post lies where South middle post does" in told[0]


@pytest.mark.parametrize(
    ("texts", "key"),
    [
        ({"along": "down"}, "along"),
        ({}, "at"),
        ({"at": "line 1", "every": "2'"}, "at"),
        ({"at": "line 2"}, "at"),
        ({"at": "line 9"}, "at"),
        ({"at": ", ".join(["0"] * 61)}, "at"),
        ({"every": "2x"}, "every"),
        ({"every": "0"}, "every"),
        ({"every": "2'", "times": "many"}, "times"),
        ({"every": "2'", "times": "999"}, "times"),
    ],
)
def test_what_cannot_be_is_told_at_its_field(shed: Bench, texts: dict[str, str], key: str) -> None:
    """Where a timber lies already, what is no place, and too many."""
    form = Copies(shed, "post-sw")
    with pytest.raises(FormError) as caught:
        form.edit(form.texts() | {"along": "east"} | texts)
    assert caught.value.key == key


def test_a_timber_is_spread_by_what_its_place_says(shed: Bench) -> None:
    """A raking one aside; one without a place cannot be."""
    assert tuple(spread(shed.frame.timber("joist-w1"))) == ("north", "up")
    form = Copies(shed, "joist-w1")
    assert form.choices("along", {}) == ("north", "up")
    assert form.choices("at", {"along": "up"})[0] == "sill top"
    assert "bay" in form.choices("every", {})
    assert form.choices("id", {}) == ()
    assert form.blocked == ""
    rafter = {"incline": {"foot": {"east": "0"}, "head": {"east": "0"}}}
    assert placed_at(rafter, "east", "1")["incline"]["head"] == {"east": "1"}
