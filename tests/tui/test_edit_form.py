"""A form for the project as the screen shows it."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.store.keeper import Keeper
from benchmate.tui.edit_form import NEEDED, NOTHING, WRONG, EditForm
from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import OpenEnd
from benchmate.workbench.forms.names import DropName
from benchmate.workbench.forms.record import NewTimber, change_timber, change_work

SHED = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"


@pytest.fixture
def shed(tmp_path: Path) -> Iterator[Bench]:
    """The tool shed open for work."""
    bench = Bench(Keeper.open(Path(shutil.copytree(SHED, tmp_path / "shed"))))
    yield bench
    bench.close()


def at(form: EditForm, key: str, text: str | None = None) -> EditForm:
    """The form at a field, with a text put in."""
    row = form.row_of((key,))
    assert row is not None
    form.row = row
    if text is not None:
        form.type(text)
    return form


def test_rows_stand_under_their_headings(shed: Bench) -> None:
    """With what stands in them; what must be filled is marked."""
    form = EditForm(shed, NewTimber(shed))
    rows = form.rows(("section",))
    assert [row.text for row in rows if row.heading] == [
        "Its place",
        "A timber that rakes, in place of its place",
        "A level timber in a roof",
    ]
    marks = {row.text: row.lead for row in rows}
    assert (marks["Id"], marks["Section"], marks["Species"]) == (NEEDED, WRONG, " ")
    at(form, "species", "white oak")
    assert "Species: white oak" in [row.text for row in form.rows()]


def test_help_says_what_is_usual_and_who_says_so(shed: Bench) -> None:
    """And it stands faintly in the empty field."""
    form = at(EditForm(shed, change_work(shed, "se-foot")), "thickness", "")
    assert form.help() == (
        "Needed. The tenon, from cheek to cheek.",
        "Usual, 1-3/4: a quarter of the timber (published, trade notes TFG-offset).",
    )
    assert form.faint() == "1-3/4?"
    assert form.picks() == ("1-3/4",)
    assert form.pick() == "1-3/4"
    assert at(form, "id").faint() == ""


def test_words_are_put_in_where_one_is_typed(shed: Bench) -> None:
    """The first, or the one that was clicked."""
    form = at(EditForm(shed, change_timber(shed, "tie-west")), "at.up", "tie top - ti")
    assert form.pick() == "tie top - tie top"
    assert form.pick("deck") == "tie top - deck"
    assert at(form, "at.north", "zzz").pick() == "zzz"


def test_nothing_changed_is_nothing_to_keep(shed: Bench) -> None:
    """Whatever was typed and taken back."""
    form = EditForm(shed, change_work(shed, "se-foot"))
    weighed = form.weigh()
    assert (weighed.lines, weighed.edit, weighed.same) == ((NOTHING,), None, True)
    assert not form.changed
    at(form, "thickness", "2")
    assert form.changed
    weighed = form.weigh()
    assert weighed.edit is not None
    assert weighed.lines[0].startswith("Moves 10 figures in 7 steps on 2 timbers")


def test_errors_are_told_that_of_the_field_in_hand_first(shed: Bench) -> None:
    """With a caret where it is known, and what is still missing in one line."""
    form = EditForm(shed, change_work(shed, "se-foot"))
    at(form, "thickness", "2x")
    at(form, "length", "3y")
    at(form, "set_back", "")
    weighed = at(form, "length").weigh()
    assert weighed.lines[0].startswith("Length: `y` is not a unit")
    assert "Still to give: Set-back." in weighed.lines
    line, caret = weighed.excerpt.splitlines()
    assert line[caret.index("^")] == "y"
    assert set(weighed.wrong) == {"thickness", "length", "set_back"}
    assert weighed.edit is None
    assert at(form, "thickness").weigh().lines[0].startswith("Thickness: `x`")


def test_what_is_wrong_elsewhere_is_told_by_table_and_key(shed: Bench) -> None:
    """As where a timber that others stand on goes another way."""
    form = at(EditForm(shed, change_timber(shed, "sill-south")), "at.north", "")
    weighed = at(form, "at.east", "0").weigh()
    assert weighed.edit is None
    assert any(line.startswith("Place, ") for line in weighed.lines)


def test_a_form_s_own_errors_are_told_at_their_field(shed: Bench) -> None:
    """By its label."""
    form = at(EditForm(shed, DropName(shed)), "name", "bay")
    assert form.weigh().lines[0].startswith("Name: is used by line 2")
    assert form.weigh().wrong == ("name",)


def test_open_ends_lead_on_to_their_joints(shed: Bench) -> None:
    """The edit is there to go on with, and cannot be kept."""
    form = EditForm(shed, NewTimber(shed))
    texts = {"id": "g", "name": "G", "kind": "girt", "section": "6 x 4", "at.north": "line a"}
    looks = {"first_face": "south", "second_face": "up", "reference_end": "west", "at.up": "3'"}
    for key, text in (texts | looks).items():
        at(form, key, text)
    weighed = form.weigh()
    assert weighed.then == (OpenEnd("g", "west"), OpenEnd("g", "east"))
    assert "the west end of g and the east end of g" in weighed.lines[0]


def test_an_edited_name_moves_no_mark(shed: Bench) -> None:
    """What is called otherwise is where it was."""
    form = at(EditForm(shed, change_timber(shed, "sill-south")), "name", "Long sill")
    assert form.weigh().lines == ("No mark moves.",)
