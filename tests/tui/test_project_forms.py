"""The short forms: an empty project, and a copy."""

from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.outset.own import Own
from benchmate.store.reading import read_project
from benchmate.tui.project_forms import FRAME_ONLY, WITH_PROGRESS, BlankForm, CopyForm
from benchmate.workbench.new_project import NotMadeError


def test_an_empty_project_is_made_as_answered(tmp_path: Path) -> None:
    """Its name, units and rule; no timbers."""
    form = BlankForm(tmp_path)
    form.write("name", "Ash barn")
    form.write("units", "mm")
    form.write("rule", "square")
    project = read_project(form.finish())
    assert (project.name, project.rule, project.timbers) == ("Ash barn", "square", ())
    assert "comments show what belongs where" in form.final_words()[0].text


@pytest.mark.parametrize(("takes", "kept"), [(FRAME_ONLY, False), (WITH_PROGRESS, True)])
def test_a_copy_takes_what_is_asked_for(
    tmp_path: Path, demo: Path, takes: str, *, kept: bool
) -> None:
    """The frame alone, or with all that is done on it; the project itself stays."""
    form = CopyForm(tmp_path, demo)
    assert form.name().endswith(" copy")
    form.write("name", "Second shed")
    form.write("takes", takes)
    made = form.finish()
    assert made == tmp_path / "second-shed"
    assert read_project(made).name == "Second shed"
    assert any((made / "progress").iterdir()) is kept
    assert str(demo) in form.final_words()[0].text


def test_a_copy_is_never_made_over_another(tmp_path: Path, demo: Path) -> None:
    """A folder taken while the form was open is told."""
    form = CopyForm(tmp_path, demo)
    form.write("folder", "second")
    (tmp_path / "second").mkdir()
    with pytest.raises(NotMadeError, match="is there already"):
        form.finish()


def test_an_empty_project_starts_with_his_own_settings(tmp_path: Path) -> None:
    """His tape is chosen first, and his practice is written into the file."""
    own = Own(units="mm", graduation="0.5 mm", lengths={"trim": Length.mm(30)})
    form = BlankForm(tmp_path, own)
    project = read_project(form.finish())
    assert (project.units, project.graduation) == ("mm", "0.5 mm")
    assert project.shop.trim == Length.mm(30)
    assert project.shop.least_wood is None
