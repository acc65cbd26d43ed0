"""What was done, in print and as data."""

from datetime import UTC, datetime, timedelta

from benchmate.workbench.history import Event
from benchmate.workbench.history_form import day_of, event_data, history_lines, time_of

NOON = datetime(2026, 3, 2, 12).astimezone()
TICK = Event(at=NOON, words="tick on Knife", figure='3-1/2"', timber="post-se", step="a/knife")
NAME = Event(
    at=NOON - timedelta(days=1),
    words="deck written as 2",
    figure="was 1-1/4",
    timber="post-sw",
    step="a/b",
    undone=True,
    of_frame=True,
)
BARE = Event(at=NOON, words="tick taken off Knife", figure="", timber="post-se", step="a/knife")


def test_days_are_headings_and_each_thing_has_its_time() -> None:
    """In the time of the place where it is read."""
    names = {"post-se": "SE post"}
    assert list(history_lines((BARE, TICK, NAME), names)) == [
        "2026-03-02 Monday",
        "  12:00  SE post: tick taken off Knife",
        '  12:00  SE post: tick on Knife  (3-1/2")',
        "2026-03-01 Sunday",
        "  12:00  frame: deck written as 2  (was 1-1/4)  undone",
    ]


def test_a_time_is_read_where_one_is() -> None:
    """An event written down in another zone is told by the clock here."""
    utc = Event(at=NOON.astimezone(UTC), words="x", figure="", timber="", step="")
    assert (day_of(utc), time_of(utc)) == ("2026-03-02 Monday", "12:00")


def test_an_event_as_data() -> None:
    """Every field, and the time as it was written down."""
    assert event_data(NAME) == {
        "at": NAME.at.isoformat(),
        "timber": "post-sw",
        "step": "a/b",
        "words": "deck written as 2",
        "figure": "was 1-1/4",
        "undone": True,
        "of_frame": True,
    }
