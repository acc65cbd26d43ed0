"""What sheets are called, and how benchmate knows its own."""

import pytest

from benchmate.sheets.exact import record
from benchmate.sheets.names import (
    ALL,
    FRAME,
    FRAME_COLUMNS,
    JOINTS,
    MARK,
    MARK_COLUMNS,
    Form,
    file_name,
    heads,
    is_ours,
    page_start,
)


def test_a_timber_s_files_go_by_its_id() -> None:
    """One name and three ends."""
    assert [file_name("post-se", form) for form in Form] == [
        "post-se.html",
        "post-se.txt",
        "post-se.csv",
    ]


@pytest.mark.parametrize("name", ["../post", "a/b", "", ".hidden", "Post", "con"])
def test_no_name_leads_out_of_the_folder(name: str) -> None:
    """Only ids and the frame's own sheets name files."""
    with pytest.raises(ValueError, match=r"id"):
        file_name(name, Form.PAGE)


@pytest.mark.parametrize("name", [FRAME, JOINTS, ALL])
def test_no_timber_can_take_a_schedule_s_name(name: str) -> None:
    """An id has no underscore."""
    assert "_" in name
    assert file_name(name, Form.TEXT) == f"{name}.txt"


@pytest.mark.parametrize(
    ("name", "start", "ours"),
    [
        ("a.html", page_start().encode(), True),
        ("a.html", b"<!DOCTYPE html>\n<p>mine", False),
        ("a.txt", f"{MARK}: A".encode(), True),
        ("a.txt", b"a letter", False),
        ("a.csv", heads(MARK_COLUMNS).encode(), True),
        ("a.csv", heads(FRAME_COLUMNS).encode(), True),
        ("a.csv", b"timber,price\r\n", False),
        ("a.csv", b"", True),
    ],
)
def test_benchmate_knows_its_own_sheets(name: str, start: bytes, ours: bool) -> None:
    """By the first line of each form; an empty file has nothing in it to lose."""
    assert is_ours(name, start) is ours


def test_the_heads_of_a_table_are_a_record() -> None:
    """The first record is as a table file writes it."""
    assert heads(MARK_COLUMNS) == record(MARK_COLUMNS)
