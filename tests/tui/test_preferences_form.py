"""The page of settings: what it shows, what typing does, what is kept."""

import os
from pathlib import Path

import pytest

from benchmate.model.preference import PREFERENCES
from benchmate.store.preference_place import preference_path
from benchmate.tui.preferences_form import PreferencesForm
from benchmate.workbench.new_project import NotMadeError
from benchmate.workbench.preferences import find_preferences


def form(text: str = "", fixed: str = "") -> PreferencesForm:
    """The page on a settings file with this text."""
    path = preference_path(os.environ)
    if text:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, "utf-8")
    return PreferencesForm(find_preferences(os.environ), fixed=fixed)


def file_text() -> str:
    """The settings file."""
    return preference_path(os.environ).read_text("utf-8")


def said(page: PreferencesForm, key: str) -> str:
    """All that is said at a setting."""
    return " ".join(each.text for each in page.words(page.field(page.row_of(key))))


def test_every_setting_has_a_line_with_what_counts() -> None:
    """Under its heading; nothing is starred while nothing is set."""
    page = form()
    rows = {row.text: row for row in page.rows}
    for each in PREFERENCES:
        assert rows[each.label].tail == each.usual
        assert rows[each.label].lead == " "
        assert each.help in said(page, each.id)
    assert {row.text for row in page.rows if row.heading} == {each.group for each in PREFERENCES}


def test_a_choice_goes_round_and_the_usual_one_sets_nothing() -> None:
    """The figure shows what is chosen."""
    page = form()
    assert page.figure().text() == "7' 10-15/16\""
    units = ["feet and inches", "inches", "mm", "as the project says"]
    for word in units:
        page.choose(page.field(page.row_of("units")), 1)
        assert page.field(page.row_of("units")).text == word
        if word == "mm":
            assert page.figure().text() == "2411 mm+"
    assert page.typed == {}


def test_a_mark_of_other_units_goes_with_them() -> None:
    """No page can be kept that its own reader would refuse."""
    page = form('graduation = "1/32"\n')
    page.write("units", "mm")
    assert page.typed == {"units": "mm"}
    assert page.field(page.row_of("graduation")).choices == (
        "as the project says",
        "1 mm",
        "0.5 mm",
    )


def test_what_cannot_be_is_told_at_its_line() -> None:
    """With the remedy, and the line is marked."""
    page = form()
    page.write("housing", "3/4")
    assert page.wrong is not None
    assert "This is a number without a unit; write 1-1/2 in, or 38 mm." in said(page, "housing")
    assert page.rows[page.row_of("housing")].lead == "!"
    page.write("housing", "3/4 in")
    assert page.wrong is None
    page.write("housing", " ")
    assert page.typed == {}


def test_finishing_writes_what_was_changed() -> None:
    """And the form then knows what is in the file."""
    page = form('# mine\ntrim = "1 in"\n')
    page.write("colours", "light")
    page.write("trim", "")
    page.finish()
    assert file_text() == '# mine\ncolours = "light"\n'
    assert page.found.preferences.texts == {"colours": "light"}
    assert (page.colours, page.digits) == ("light", "block")


def test_a_bad_file_is_told_and_left_alone() -> None:
    """Its other lines stay; one that is no TOML at all is not written to."""
    page = form('colours = "pink"\n')
    assert 'colours: is "pink"' in said(page, "units")
    page.write("digits", "thin")
    page.finish()
    assert file_text() == 'colours = "pink"\ndigits = "thin"\n'
    page = form("colours = pink\n")
    page.write("digits", "thin")
    with pytest.raises(NotMadeError, match=r"settings\.toml:1: "):
        page.finish()
    assert file_text() == "colours = pink\n"


def test_what_goes_before_the_colours_is_told() -> None:
    """By its name."""
    assert "NO_COLOR is set in the environment" in said(form(fixed="NO_COLOR"), "colours")
    assert "NO_COLOR" not in said(form(fixed="NO_COLOR"), "digits")


def test_without_a_home_nothing_can_be_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    """The page says so when it is to be kept."""

    def homeless() -> Path:
        raise RuntimeError("no home")

    monkeypatch.setattr(Path, "home", homeless)
    page = PreferencesForm(find_preferences({}))
    page.write("digits", "thin")
    with pytest.raises(NotMadeError, match="no home folder"):
        page.finish()
