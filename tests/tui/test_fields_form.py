"""A page of fields."""

from pathlib import Path

from benchmate.tui.fields_form import FOLDER, MAKE
from benchmate.tui.project_forms import BlankForm


def test_the_folder_follows_the_name_until_it_is_typed(tmp_path: Path) -> None:
    """One that is taken gets a number; an emptied field takes the suggestion up again."""
    (tmp_path / "barn").mkdir()
    form = BlankForm(tmp_path)
    form.write("name", "Barn")
    assert form.folder == "barn-2"
    form.write(FOLDER, "Bad Folder")
    wrong = form.wrong
    assert wrong is not None
    assert wrong.id == FOLDER
    assert "is not a usable id" in form.words(wrong)[0].text
    assert form.words(form.field(None))[0].text.startswith("Folder: ")
    form.write(FOLDER, "")
    assert (form.folder, form.wrong) == ("barn-2", None)


def test_rows_are_the_fields_under_their_headings(tmp_path: Path) -> None:
    """The last one makes it; what was typed is marked, what cannot be flagged."""
    form = BlankForm(tmp_path)
    assert [row.text for row in form.rows if row.heading] == ["The project", "Where it goes"]
    assert form.field(len(form.rows) - 1).id == MAKE
    assert form.row_of("nonsense") == len(form.rows) - 1
    form.write("name", "Barn")
    assert form.rows[form.row_of("name")].lead == "*"
    form.write("name", "x" * 99)
    assert form.rows[form.row_of("name")].lead == "!"


def test_groups_are_gone_through_by_their_first_rows(tmp_path: Path) -> None:
    """Back goes to the head of the group first."""
    form = BlankForm(tmp_path)
    folder = form.row_of(FOLDER)
    assert form.group_from(1, 1) == folder
    assert form.group_from(folder, 1) == folder
    assert form.group_from(3, -1) == 1
    assert form.group_from(folder, -1) == 1


def test_choices_go_round(tmp_path: Path) -> None:
    """Forward and back; the marks of a tape go with its units."""
    form = BlankForm(tmp_path)
    form.choose(form.field(form.row_of("units")), -1)
    assert form.field(form.row_of("units")).text == "mm"
    assert form.field(form.row_of("graduation")).choices == ("1 mm", "0.5 mm")
    form.choose(form.field(form.row_of("units")), 1)
    assert form.field(form.row_of("graduation")).text == "1/16"
