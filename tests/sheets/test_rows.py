"""The rows of a sheet."""

from collections.abc import Callable
from pathlib import Path

from benchmate.sheets.groups import notes
from benchmate.sheets.rows import AS_STRUCK, Row, Section, sections
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]


def found(sheet: TimberSheet) -> dict[str, Section]:
    """The sections of a sheet by title."""
    return {section.title: section for section in sections(sheet, notes(sheet))}


def row(sheet: TimberSheet, step: str) -> Row:
    """One row by its step."""
    rows = (each for section in found(sheet).values() for each in section.rows)
    return next(each for each in rows if each.id == step)


def test_a_mark_says_all_that_keeps_it_right(sheet_of: SheetOf) -> None:
    """Figure, hook, faces, waste, the figure from the other datum, and how it reads back."""
    told = row(sheet_of("post-ne"), "head-tenon/shoulder")
    assert told.figure == "7' 7-1/2\""
    assert (told.name, told.hook, told.on) == ("Shoulder", "from squared foot", "all")
    assert (told.waste, told.also, told.back) == ("head", "7' 4\" shoulder", '4-1/2"')
    assert told.caution


def test_a_struck_shoulder_comes_first_from_then_on(sheet_of: SheetOf) -> None:
    """As on the screen: the SE post's shoulder is struck."""
    told = row(sheet_of("post-se"), "head-tenon/shoulder")
    assert (told.figure, told.hook) == ("7' 4\"", "from foot shoulder")
    assert told.also == "7' 7-1/2\" squared"


def test_sizes_to_measure_have_room_to_be_written_in(sheet_of: SheetOf) -> None:
    """The section by its faces, a finished part by the names of its sizes."""
    sheet = sheet_of("post-ne")
    assert row(sheet, "foot-tenon/section").blanks == ('N 7"', 'E 7"')
    as_cut = next(each for each in found(sheet)["Cut: Foot tenon"].rows if each.blanks)
    assert as_cut.blanks == ('thickness 1-3/4"', 'width 5-1/2"', 'length 3-1/2"')


def test_what_all_rows_share_is_told_once(sheet_of: SheetOf) -> None:
    """The faces of a mortise, and a figure told beside several of its lines."""
    mortise = found(sheet_of("sill-south"))["Mortise for SW post"]
    assert mortise.on == "top"
    assert '1-3/4" mortise width' in mortise.details
    assert not any('1-3/4" mortise width' in each.further for each in mortise.rows)


def test_a_mark_to_look_at_again_says_what_changed(sheet_of: SheetOf) -> None:
    """The SW post's foot tenon came out narrow after its mortise had been marked."""
    rows = [each for section in found(sheet_of("sill-south")).values() for each in section.rows]
    (again,) = (each for each in rows if each.state == "look again")
    assert again.warning.startswith("marked at ")
    assert again.warning.endswith(": look again")


def test_a_stop_is_told_at_its_joint_and_no_number_with_it(sheet_of: SheetOf, spoilt: Path) -> None:
    """Once for the section, and no row of it has a figure."""
    assert spoilt.is_dir()
    tenon = found(sheet_of("post-se"))["Foot tenon"]
    assert tenon.stop.startswith("The far cheek comes")
    for each in tenon.rows:
        assert (each.state, each.figure, each.hook, each.warning) == ("stop", "", "", "")
        told = (*each.further, *each.blanks, each.also, each.back)
        assert not any(told)


def test_marks_gone_over_again_are_not_told_again(sheet_of: SheetOf) -> None:
    """A task of several figures that are all marked already refers to them."""
    assert AS_STRUCK not in {each.hook for each in found(sheet_of("post-se"))["Head tenon"].rows}
