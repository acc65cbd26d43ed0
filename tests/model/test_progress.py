"""What is kept for one timber."""

from datetime import UTC, datetime

import pytest
from pydantic import ValidationError

from benchmate.measure.length import Length
from benchmate.model.progress import AsCut, Measured, Progress, Tick
from tests.builders import length

NOON = datetime(2024, 5, 1, 12, 0, tzinfo=UTC)
TICK = Tick(step="foot-tenon/shoulder", marked={"squared foot": length("5")}, at=NOON)
KEPT = Progress(
    timber="post",
    measured={"foot-tenon": Measured(first=length("6-1/16"))},
    as_cut={"foot-tenon": AsCut(width=length("4-11/16"))},
    ticks=(TICK,),
)


def test_what_is_written_reads_back() -> None:
    """Law 6: a tick keeps every figure exactly, in the file as in memory."""
    assert Progress.model_validate(KEPT.model_dump(exclude_none=True)) == KEPT
    dumped = KEPT.model_dump(exclude_none=True)
    assert dumped["ticks"][0]["marked"] == {"squared foot": "5 in"}
    assert dumped["as_cut"] == {"foot-tenon": {"width": "4-11/16 in"}}


def test_a_tick_longer_than_any_typed_length_reads_back() -> None:
    """A stick with its tenons may be longer than 200 ft is to type; its tick is not lost."""
    tick = TICK.model_copy(update={"marked": {"squared foot": Length.feet(200, 9)}})
    assert Tick.model_validate(tick.model_dump()) == tick


def test_a_tick_is_found_by_its_step() -> None:
    """A step without a tick has none."""
    assert KEPT.tick("foot-tenon/shoulder") is TICK
    assert KEPT.tick("foot-tenon/near-cheek") is None


def test_a_size_as_cut_is_found_by_its_name() -> None:
    """A size not typed is None, and a size nobody knows is a misuse."""
    cut = AsCut(width=length("4"))
    assert (cut.get("width"), cut.get("thickness"), cut.get("length")) == (length("4"), None, None)
    with pytest.raises(KeyError):
        cut.get("depth")


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ({"format": 2}, "format"),
        ({"timber": "Post"}, "usable id"),
        ({"measured": {"foot": {"first": "0"}}}, "more than nothing"),
        ({"measured": {"foot": {"third": "6"}}}, "Extra inputs"),
        ({"as_cut": {"foot-tenon": {"width": "-4"}}}, "not below zero"),
        ({"as_cut": {"foot-tenon": {"width": 4}}}, "not text"),
        ({"ticks": [{"step": "a/b"}]}, "Field required"),
        ({"ticks": [{"step": "a/b", "at": "noon"}]}, "datetime"),
        ({"ticks": [{"step": "a/b", "at": NOON, "by": "me"}]}, "Extra inputs"),
        ({"ticks": [{"step": "a/b", "at": NOON, "marked": {"foot": "1/3"}}]}, "tape fraction"),
        ({"ticks": [{"step": "a\x1b", "at": NOON}]}, "U\\+001B"),
        ({"done": True}, "Extra inputs"),
    ],
)
def test_what_is_refused(words: dict[str, object], says: str) -> None:
    """A progress file that was damaged or mistyped is not half read."""
    with pytest.raises(ValidationError, match=says):
        Progress.model_validate({"timber": "post"} | words)
