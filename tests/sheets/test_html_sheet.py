"""A timber's sheet as a page."""

from collections.abc import Callable
from pathlib import Path

from benchmate.sheets.html_sheet import timber_body, timber_page
from benchmate.sheets.sheet import CAUTION, TimberSheet

SheetOf = Callable[[str], TimberSheet]


def test_every_step_has_its_box(sheet_of: SheetOf) -> None:
    """One a step; those ticked are crossed."""
    sheet = sheet_of("post-se")
    made = timber_page(sheet)
    assert made.count("<i>") == len(sheet.items)
    assert made.count("<i>x</i>") == sheet.done


def test_the_head_and_the_foot_come_again_on_every_page(sheet_of: SheetOf) -> None:
    """They are a table's, which browsers repeat."""
    made = timber_body(sheet_of("post-se"))
    head, rest = made.split("</thead>")
    assert "SE post" in head
    assert CAUTION in rest.split("</tfoot>")[0]
    assert made.count('class="sheet"') == 1


def test_what_is_to_be_looked_at_again_stands_out(sheet_of: SheetOf) -> None:
    """In a frame, with a mark in its box."""
    made = timber_body(sheet_of("sill-south"))
    assert "<i>!</i>" in made
    assert '<b class="again">marked at ' in made


def test_a_stop_is_told_and_no_figure_of_it(sheet_of: SheetOf, spoilt: Path) -> None:
    """The tenon's set-back and shoulder are nowhere on the page."""
    assert spoilt.is_dir()
    made = timber_body(sheet_of("post-se"))
    assert '<p class="alarm">STOP: The far cheek comes' in made
    section = made.split("<h2>Foot tenon")[1].split("<h2>")[0]
    assert section.count("<i>-</i>") == 4
    assert section.count("<var>") == 2, "those of the stop itself"
    assert 'class="long"' not in made


def test_names_are_escaped(sheet_of: SheetOf, demo: Path) -> None:
    """A timber may be called anything."""
    path = demo / "project.toml"
    path.write_text(path.read_text("utf-8").replace('"SE post"', "\"<i>SE & 'post' (1)\""), "utf-8")
    made = timber_page(sheet_of("post-se"))
    assert "<b>&lt;i&gt;SE &amp; 'post' (1)</b> (post-se)" in made
    assert "<i>SE" not in made
