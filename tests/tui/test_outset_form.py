"""The form that sets a frame out."""

from pathlib import Path

import pytest

from benchmate.store.reading import read_project
from benchmate.tui.fields_form import MAKE, Field
from benchmate.tui.outset_form import CAUTION, OutsetForm, Sketch, checked, sketch

SMALL = {"bays": "1", "length": "10'", "roof": "none", "braces": "none"}


def typed(form: OutsetForm, answers: dict[str, str]) -> OutsetForm:
    """The form with these answers typed in."""
    for question, text in answers.items():
        form.write(question, text)
    return form


@pytest.fixture
def form(tmp_path: Path) -> OutsetForm:
    """A small frame."""
    return typed(OutsetForm(tmp_path), SMALL)


def said(form: OutsetForm, field: Field) -> str:
    """What is said at a field."""
    return " ".join(saying.text for saying in form.words(field))


def test_every_line_says_what_it_is_and_where_its_default_comes_from(form: OutsetForm) -> None:
    """Published, or common practice without a source."""
    assert 'A 2" stub: published' in said(form, form.field(form.row_of("foot")))
    assert "Common practice, no source." in said(form, form.field(form.row_of("relief")))


def test_what_is_made_is_drawn_counted_and_checked(form: OutsetForm) -> None:
    """The last line says so, with the caution."""
    last = Field(id=MAKE, label="")
    assert "being made" in said(form, last)
    drawn = sketch(form.answered)
    assert drawn.totals == "12 timbers, 16 joints"
    assert len(drawn.bars) == 12
    assert form.take(drawn)
    assert "being made" in said(form, last)
    assert form.take(checked(drawn))
    told = said(form, last)
    assert "4 sills, 4 posts, 2 plates, 2 ties; 12 timbers, 16 joints" in told
    assert "The checks find nothing." in told
    assert CAUTION in told


def test_a_drawing_of_other_answers_is_not_taken(form: OutsetForm) -> None:
    """Nor kept when something is typed."""
    drawn = sketch(form.answered)
    form.write("width", "12'")
    assert not form.take(drawn)
    assert form.take(sketch(form.answered))
    form.write("width", "13'")
    assert form.drawn is None


def test_what_the_checks_find_is_said_on_every_line(form: OutsetForm) -> None:
    """In short, and whole at the last."""
    typed(form, {"roof": "butted at the peak", "rafter height": "4-1/2"})
    drawn = form.settled()
    assert drawn.found
    assert "The checks find look: The notch takes" in said(form, form.field(1))
    told = said(form, Field(id=MAKE, label=""))
    assert f"The checks find {len(drawn.found)} to look at:" in told


def test_an_answer_that_cannot_be_is_told_everywhere(form: OutsetForm) -> None:
    """And nothing is drawn."""
    form.write("bays", "0")
    assert "Bays: 0 bays cannot be; write 1 to 12." in said(form, form.field(1))
    assert sketch(form.answered).bars == ()
    assert CAUTION in said(form, Field(id=MAKE, label=""))


def test_a_text_the_reader_refuses_is_told_at_the_last_line(form: OutsetForm) -> None:
    """A fault of the program's own."""
    form.drawn = Sketch(draft=form.settled().draft.__class__(typed=form.answered, problem="bad"))
    form.drawn = checked(form.drawn)
    assert "bad" in said(form, Field(id=MAKE, label=""))


def test_the_project_is_made_whole(form: OutsetForm) -> None:
    """In the folder suggested."""
    form.write("name", "Ash barn")
    made = form.finish()
    assert made == form.place / "ash-barn"
    assert len(read_project(made).timbers) == 12


def test_an_emptied_answer_takes_up_its_suggestion(form: OutsetForm) -> None:
    """But where empty stands for none."""
    form.write("width", "12'")
    form.write("width", " ")
    assert form.field(form.row_of("width")).text == "14'"
    form.write("longest", "")
    assert form.field(form.row_of("longest")).text == ""
