"""What was done, as plain text for a terminal or a pipe, and as plain data for `--json`."""

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from benchmate.workbench.history import Event


def day_of(event: Event) -> str:
    """The day of an event, here where it is read: `2026-03-02 Monday`."""
    return f"{event.at.astimezone():%Y-%m-%d %A}"


def time_of(event: Event) -> str:
    """The time of day of an event, here where it is read."""
    return f"{event.at.astimezone():%H:%M}"


def history_lines(events: Iterable[Event], names: Mapping[str, str]) -> Iterator[str]:
    """Every event under its day; `names` are those of the timbers by their ids."""
    day = ""
    for event in events:
        if day_of(event) != day:
            day = day_of(event)
            yield day
        whose = "frame" if event.of_frame else names[event.timber]
        told = f"  {time_of(event)}  {whose}: {event.words}"
        told += f"  ({event.figure})" if event.figure else ""
        yield f"{told}  undone" if event.undone else told


def event_data(event: Event) -> dict[str, Any]:
    """One event; its time is the one written down, with its zone."""
    return {
        "at": event.at.isoformat(),
        "timber": event.timber,
        "step": event.step,
        "words": event.words,
        "figure": event.figure,
        "undone": event.undone,
        "of_frame": event.of_frame,
    }
