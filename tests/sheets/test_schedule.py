"""The frame's schedules."""

import csv
import io
from pathlib import Path

import pytest

from benchmate.sheets.names import FRAME_COLUMNS, JOINT_COLUMNS, is_ours
from benchmate.sheets.schedule import Schedule, schedule_page, schedule_table, schedule_text
from benchmate.sheets.sheet import CAUTION
from benchmate.workbench.bench import Bench
from benchmate.workbench.opening import read_bench
from benchmate.workbench.sheets import frame_schedule, joint_schedule
from tests.sheets.conftest import MADE


@pytest.fixture(params=[frame_schedule, joint_schedule])
def schedule(request: pytest.FixtureRequest, bench: Bench) -> Schedule:
    """Either of the two."""
    made: Schedule = request.param(bench, MADE)
    return made


def test_every_form_says_what_it_is_of(schedule: Schedule) -> None:
    """And is known again as benchmate's own, with the caution on what is read by people."""
    page, text, table = (
        "".join(form(schedule)) for form in (schedule_page, schedule_text, schedule_table)
    )
    for name, made in (("a.html", page), ("a.txt", text), ("a.csv", table)):
        assert is_ours(name, made.encode()[:400])
    assert schedule.title in page
    assert CAUTION in page
    assert CAUTION in " ".join(text.split())
    assert max(map(len, text.splitlines())) <= 80


def test_the_frame_is_told_timber_by_timber(bench: Bench) -> None:
    """Both lengths by their names, what meets it where, and counts of like members."""
    text = "".join(schedule_text(frame_schedule(bench, MADE)))
    assert '[ ] SE post (post-se): post, white pine, 7" x 7", right hand' in text
    assert "    shoulder to shoulder 7' 4\", overall 8' 0\"" in text
    assert "    foot bears in South sill" in text
    assert "LIKE MEMBERS" in text
    (row, *_) = csv.DictReader(
        io.StringIO("".join(schedule_table(frame_schedule(bench, MADE))), newline="")
    )
    assert tuple(row) == FRAME_COLUMNS
    assert row["shoulder to shoulder exact mm"] == "2235.2"


def test_joints_are_told_with_places_and_sizes(bench: Bench) -> None:
    """As cut where that was typed."""
    text = "".join(schedule_text(joint_schedule(bench, MADE)))
    assert "[ ] sw-foot: tenon, SW post and South sill" in text
    assert 'South sill, mortise for SW post: 1-1/2" from the squared west end' in text
    assert 'width 5-7/16" as cut' in text
    (row, *_) = csv.DictReader(
        io.StringIO("".join(schedule_table(joint_schedule(bench, MADE))), newline="")
    )
    assert tuple(row) == JOINT_COLUMNS


def test_nothing_is_told_of_what_is_stopped(spoilt: Path) -> None:
    """Neither the timber's lengths nor the joint's places and sizes."""
    bench = read_bench(spoilt)
    frame = {row.id: row for row in frame_schedule(bench, MADE).frame}
    assert (frame["post-se"].body, frame["post-se"].overall) == (None, None)
    assert frame["post-se"].lengths(bench.project.tape) == ""
    assert frame["post-se"].stops
    joints = {row.id: row for row in joint_schedule(bench, MADE).joints}
    assert (joints["se-foot"].where, joints["se-foot"].sizes) == ((), ())
    assert joints["se-foot"].stops
    assert joints["sw-foot"].where
