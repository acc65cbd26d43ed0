"""Sheets written to a folder."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from benchmate.sheets.html_sheet import timber_body
from benchmate.workbench.bench import Bench
from benchmate.workbench.print_out import NotPrintedError, print_frame, print_timber
from benchmate.workbench.sheets import timber_sheet

MADE = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)


def test_the_whole_frame_is_written(bench: Bench, tmp_path: Path) -> None:
    """Three forms of every timber and schedule, and every timber on one page file, in order."""
    done = print_frame(bench, tmp_path / "out", clock=lambda: MADE)
    assert len(done.files) == 3 * (len(bench.timbers) + 2) + 1
    assert sorted(done.files) == sorted(path.name for path in done.folder.iterdir())
    assert done.first == "all_timbers.html"
    whole = (done.folder / done.first).read_text("utf-8")
    bodies = [timber_body(timber_sheet(bench, timber.id, MADE)) for timber in bench.timbers]
    assert "".join(bodies) in whole
    assert whole.count("<html") == whole.count("</html>") == 1


def test_one_timber_is_written(bench: Bench, tmp_path: Path) -> None:
    """Its three forms and nothing else; what was there before of its own is written over."""
    for _ in range(2):
        done = print_timber(bench, "post-se", tmp_path, "letter", lambda: MADE)
    assert done.files == ("post-se.html", "post-se.txt", "post-se.csv")
    assert done.first == "post-se.html"
    assert "size:letter;" in (tmp_path / "post-se.html").read_text("utf-8")


def test_sheets_of_timbers_that_are_gone_are_told(bench: Bench, tmp_path: Path) -> None:
    """They are older than what was just written, and are left where they are."""
    out = tmp_path / "out"
    print_timber(bench, "post-se", out)
    (out / "post-se.txt").rename(out / "post-old.txt")
    done = print_frame(bench, out)
    assert done.older == ("post-old.txt",)
    assert (out / "post-old.txt").exists()


def test_nothing_is_written_where_something_is_in_the_way(bench: Bench, tmp_path: Path) -> None:
    """Not even the sheets that could be."""
    (tmp_path / "sill-south.csv").write_text("timber,price\r\n", "utf-8")
    with pytest.raises(NotPrintedError, match=r"sill-south\.csv"):
        print_frame(bench, tmp_path)
    assert len(list(tmp_path.glob("*.html"))) == 0


def test_the_project_s_own_files_stay_as_they_are(bench: Bench) -> None:
    """Sheets beside a project are no progress and no strays."""
    before = {path: path.read_bytes() for path in bench.folder.rglob("*.toml")}
    print_frame(bench, bench.folder / "sheets")
    assert {path: path.read_bytes() for path in bench.folder.rglob("*.toml")} == before
    assert bench.strays() == ()
    assert not bench.look()
