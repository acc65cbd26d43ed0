"""What a sheet holds, and what it withholds."""

from collections.abc import Callable
from pathlib import Path

from benchmate.sheets.sheet import CAUTION, TimberSheet

SheetOf = Callable[[str], TimberSheet]


def test_the_issue_says_how_old_the_figures_are(sheet_of: SheetOf) -> None:
    """Made when, as of when, and what to do about it."""
    assert sheet_of("post-se").issue.words == (
        "Orchard tool shed. Sheet made 2026-03-02 17:30; figures as of 2026-03-02 08:15: look "
        "again if a size was typed since."
    )


def test_the_caution_is_told_whole() -> None:
    """The words that the work calls for."""
    assert CAUTION == (
        "benchmate checks arithmetic and sequence, not strength. Sizes, spans, notches and pegs "
        "that carry load are for local code and a licensed engineer."
    )


def test_a_step_s_state_is_one_word(sheet_of: SheetOf) -> None:
    """Ticked, open, waiting, and to be looked at again."""
    states = {item.state for each in ("post-sw", "sill-south") for item in sheet_of(each).items}
    assert {"open", "ticked", "waits", "look again"} <= states
    sheet = sheet_of("post-se")
    assert sheet.done == sum(item.state == "ticked" for item in sheet.items)
    assert sheet.crown == "outwards, butt of the tree down"


def test_a_stopped_joint_has_no_figure(sheet_of: SheetOf, spoilt: Path) -> None:
    """Its steps are told without a number; the rest of the timber is drawn all the same."""
    assert spoilt.is_dir()
    sheet = sheet_of("post-se")
    stopped = [item for item in sheet.items if item.withheld]
    assert {"foot-tenon", "stick"} == sheet.stopped
    assert stopped
    assert all(not item.readings and not item.beside for item in stopped)
    assert all(item.state == "stop" for item in stopped)
    assert sheet.drawn


def test_nothing_is_drawn_of_a_timber_whose_file_cannot_be_read(
    sheet_of: SheetOf, demo: Path
) -> None:
    """Every figure of it may be wrong."""
    (demo / "progress" / "post-se.toml").write_text("format = ", "utf-8")
    sheet = sheet_of("post-se")
    assert sheet.trouble
    assert not sheet.drawn
    assert all(item.withheld for item in sheet.items)
