import pytest

from benchmate.workbench.bench import Bench
from benchmate.workbench.forms.form import FormError
from benchmate.workbench.forms.names import DropName, NewName, RenameName, labels, user_words
from benchmate.workbench.keeping import BadProjectError
from benchmate.workbench.open_project import parsed


def test_a_name_is_given(shed: Bench) -> None:
    """Behind the others of its table."""
    form = NewName(shed)
    edit = form.edit({"table": "lines", "name": "line 4", "text": "line 3 + bay"})
    assert '"line b" = "line a + span"\n"line 4" = "line 3 + bay"\n' in edit.text
    assert "line 4" in parsed(edit.text).lines
    assert form.choices("table", {})[:2] == ("lines", "levels")
    assert "post" in form.choices("name", {"table": "inner"})
    assert "bay" in form.choices("text", {})


@pytest.mark.parametrize(
    ("texts", "key", "words"),
    [
        ({}, "table", "is not one of lines, levels"),
        ({"table": "lines"}, "name", "is missing"),
        ({"table": "lines", "name": "line 1"}, "name", "is given already"),
    ],
)
def test_what_is_missing_is_told(shed: Bench, texts: dict[str, str], key: str, words: str) -> None:
    """At its field."""
    with pytest.raises(FormError, match=words) as caught:
        NewName(shed).edit(texts)
    assert caught.value.key == key


@pytest.mark.parametrize(
    ("name", "text", "field"), [("Line 4", "0", "name"), ("line 4", "line 9", "text")]
)
def test_a_bad_name_and_a_bad_text_are_told_apart(
    shed: Bench, name: str, text: str, field: str
) -> None:
    """Each at its field."""
    form = NewName(shed)
    edit = form.edit({"table": "lines", "name": name, "text": text})
    with pytest.raises(BadProjectError) as caught:
        shed.try_project(edit.text)
    assert form.field_of(caught.value.problems[0], edit.path) == field


def test_a_name_is_called_otherwise_wherever_it_is_used(shed: Bench) -> None:
    """And how many follow is told."""
    form = RenameName(shed)
    texts = {"name": "bay", "to": "bent spacing"}
    assert form.says(texts) == ("2 places that use it follow.",)
    assert form.says({}) == ()
    project = parsed(form.edit(texts).text)
    assert project.lines["line 2"].text() == "line 1 + bent spacing"
    for bad in ({"name": "nothing"}, {"name": "bay"}, {"name": "bay", "to": "bay"}):
        with pytest.raises(FormError):
            form.edit(bad)
    assert "bay" in form.choices("name", {})


def test_one_that_is_used_stays_and_says_by_what(shed: Bench) -> None:
    """One that nothing uses goes."""
    form = DropName(shed)
    with pytest.raises(FormError, match=r"is used by door-chamfer \(near_stop.distance\)"):
        form.edit({"name": "bench top"})
    with pytest.raises(FormError, match=r"is used by line 3, SW post \(section\), .* 1 more"):
        form.edit({"name": "post"})
    added = NewName(shed).edit({"table": "lengths", "name": "spare", "text": "1"}).text
    shed.edit_project("added", added)
    text = DropName(shed).edit({"name": "spare"}).text
    assert "spare" not in text
    assert labels(shed.project)["spare"] == ("lengths", "spare")
    assert user_words(shed.project, ("levels", "floor top")) == "floor top"
