"""What was done on a timber, row by row."""

from datetime import datetime, timedelta

from benchmate.tui.history_list import HistoryList
from benchmate.workbench.history import Event

NOON = datetime(2026, 3, 2, 12).astimezone()


def event(words: str, days: int = 0, *, undone: bool = False, of_frame: bool = False) -> Event:
    """Something done so many days ago."""
    return Event(
        at=NOON - timedelta(days=days),
        words=words,
        figure='3-1/2"',
        timber="post-se",
        step="a/b",
        undone=undone,
        of_frame=of_frame,
    )


def test_days_are_headings_that_stand_for_nothing() -> None:
    """Each event is its own row, with its time before it and its figure behind."""
    first, second, third = event("tick on A"), event("tick on B"), event("tick on C", 1)
    listed = HistoryList("SE post", (first, second, third), "")
    assert listed.title == "SE post: what was done"
    assert [row.text for row in listed.rows if row.heading] == [
        "2026-03-02 Monday",
        "2026-03-01 Sunday",
    ]
    assert [listed.event(row) for row in range(len(listed.rows))] == [
        None,
        first,
        second,
        None,
        third,
    ]
    assert (listed.rows[1].lead, listed.rows[1].tail) == ("12:00", '3-1/2"')
    assert listed.event(None) is None


def test_what_was_taken_back_and_what_was_done_to_the_frame_say_so() -> None:
    """In words, not by their shade alone."""
    listed = HistoryList("SE post", (event("deck written as 2", undone=True, of_frame=True),), "")
    row = listed.rows[1]
    assert (row.text, row.tail, row.dim) == (
        "frame: deck written as 2",
        'undone  3-1/2"',
        True,
    )
