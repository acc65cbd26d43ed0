"""A timber's marks as a table."""

import csv
import io
from collections.abc import Callable
from pathlib import Path

from benchmate.sheets.csv_sheet import mark_table
from benchmate.sheets.names import MARK_COLUMNS
from benchmate.sheets.sheet import TimberSheet

SheetOf = Callable[[str], TimberSheet]


def rows(sheet: TimberSheet) -> list[dict[str, str]]:
    """The table as a spreadsheet reads it."""
    return list(csv.DictReader(io.StringIO(mark_table(sheet), newline="")))


def test_a_mark_has_its_figure_shown_and_exact(sheet_of: SheetOf) -> None:
    """One record a figure; the other way to measure it is the second."""
    found = rows(sheet_of("post-ne"))
    assert tuple(found[0]) == MARK_COLUMNS
    shoulder = [each for each in found if each["step"] == "head-tenon/shoulder"]
    assert [each["reading"] for each in shoulder] == ["1", "2"]
    assert shoulder[0] == {
        "timber": "post-ne",
        "joint": "ne-head",
        "step": "head-tenon/shoulder",
        "reading": "1",
        "title": "Head tenon: shoulder line",
        "figure": "7' 7-1/2\"",
        "exact mm": "2324.1",
        "hook": "squared foot",
        "way": "towards the head",
        "faces": "North face; East face; South face; West face",
        "waste": "Towards the head.",
        "state": "open",
    }


def test_every_step_is_there_once_with_its_state(sheet_of: SheetOf) -> None:
    """The records with reading 1 are the steps."""
    sheet = sheet_of("sill-south")
    steps = [each for each in rows(sheet) if each["reading"] == "1"]
    assert [each["step"] for each in steps] == [item.step.id for item in sheet.items]
    assert "look again" in {each["state"] for each in steps}


def test_lines_end_as_the_standard_says(sheet_of: SheetOf) -> None:
    """CR and LF, and nothing else breaks a line."""
    made = mark_table(sheet_of("post-se"))
    assert made.count("\n") == made.count("\r\n")


def test_a_withheld_figure_is_in_no_record(sheet_of: SheetOf, spoilt: Path) -> None:
    """The step is told, with what it is: a stop."""
    assert spoilt.is_dir()
    found = [each for each in rows(sheet_of("post-se")) if each["step"].startswith("foot-tenon/")]
    assert found
    assert {each["state"] for each in found} == {"stop"}
    assert {each["figure"] + each["exact mm"] for each in found} == {""}
