"""Writing sheets from the screen: which ones, and where to."""

from pathlib import Path

import pytest

from benchmate.tui.desk import Desk


def test_this_timber_or_the_whole_frame(desk: Desk) -> None:
    """Two rows, and a folder beside the project's own files."""
    desk.go_to("post-se", "")
    form = desk.sheets_form()
    assert [row.text for row in form.rows] == [
        "SE post only",
        "The whole frame: 8 timbers, all on one page file, and the schedules",
    ]
    assert form.folder == str(desk.bench.folder / "sheets")


@pytest.mark.parametrize(
    ("row", "files", "first"), [(0, 3, "post-se.html"), (1, 31, "all_timbers")]
)
def test_it_says_where_they_are(row: int, files: int, first: str, desk: Desk) -> None:
    """How many, which folder, and what to print."""
    desk.go_to("post-se", "")
    form = desk.sheets_form()
    outcome = form.write(row, form.folder)
    assert not outcome.failed
    assert outcome.words.startswith(f"{files} files written into {form.folder}. Open {first}")
    assert len(list(Path(form.folder).iterdir())) == files


def test_a_folder_named_short_lies_in_the_project(desk: Desk) -> None:
    """And none at all is refused."""
    form = desk.sheets_form()
    assert not form.write(0, " paper ").failed
    assert (desk.bench.folder / "paper").is_dir()
    assert form.write(0, "  ").failed


def test_what_is_in_the_way_is_told(desk: Desk) -> None:
    """In one sentence, with what to do."""
    folder = desk.bench.folder
    (folder / "paper").write_text("mine", "utf-8")
    outcome = desk.sheets_form().write(0, "paper")
    assert outcome.failed
    assert outcome.words.startswith("Not written: ")
    assert "is not a folder; name a folder" in outcome.words
