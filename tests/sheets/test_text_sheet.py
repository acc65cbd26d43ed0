"""A timber's sheet as plain text."""

from collections.abc import Callable
from pathlib import Path

import pytest

from benchmate.sheets.names import MARK
from benchmate.sheets.sheet import CAUTION, TimberSheet
from benchmate.sheets.text_sheet import BOXES, COLUMNS, timber_text, wrapped

SheetOf = Callable[[str], TimberSheet]


@pytest.mark.parametrize("timber", ["post-se", "post-ne", "sill-south", "plate-north"])
def test_no_line_is_longer_than_80_columns(timber: str, sheet_of: SheetOf) -> None:
    """And every step has a line with its box."""
    sheet = sheet_of(timber)
    made = timber_text(sheet).splitlines()
    assert max(map(len, made)) <= COLUMNS
    boxes = [line for line in made if line[:3] in BOXES.values()]
    assert len(boxes) == len(sheet.items)
    assert made[0].startswith(f"{MARK}: ")


def test_running_figures_stand_face_by_face(sheet_of: SheetOf) -> None:
    """From one place, none of them chained."""
    made = timber_text(sheet_of("post-ne"))
    assert "RUNNING FIGURES FACE BY FACE, from the squared foot" in made
    assert '\nNorth face    3-1/2", 7\' 7-1/2", 7\' 11-1/2", 8\' 0"\n' in made


def test_the_caution_and_the_age_of_the_figures_are_told(sheet_of: SheetOf) -> None:
    """At its foot."""
    made = " ".join(timber_text(sheet_of("post-se")).split())
    assert made.endswith(CAUTION)
    assert "figures as of 2026-03-02 08:15" in made


def test_a_figure_is_never_broken() -> None:
    """Not at its space and not at its hyphen."""
    lines = wrapped(", ".join(["7' 11-1/2\""] * 30), "at ")
    assert len(lines) > 3
    assert all(line.count("'") == line.count('"') for line in lines)


def test_a_stop_and_an_unreadable_file_are_told(sheet_of: SheetOf, spoilt: Path) -> None:
    """With no running figures where none can be trusted."""
    assert "    STOP: The far cheek comes" in timber_text(sheet_of("post-se"))
    (spoilt / "progress" / "post-se.toml").write_text("format = ", "utf-8")
    made = timber_text(sheet_of("post-se"))
    assert "FIGURES WITHHELD:" in made
    assert "RUNNING FIGURES" not in made
