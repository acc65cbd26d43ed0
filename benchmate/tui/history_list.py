"""What was done on a timber as rows: a day, and under it each thing done with its time."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.rows import Row
from benchmate.workbench.history_form import day_of, time_of

if TYPE_CHECKING:
    from benchmate.workbench.history import Event

UNDONE = "undone"
"""What stands before the figure of an action that was taken back."""


class HistoryList:
    """The events of one timber, newest first, and which of them each row stands for."""

    def __init__(self, title: str, events: tuple[Event, ...], trouble: str) -> None:
        self.title = f"{title}: what was done"
        self.trouble = trouble
        rows: list[Row] = []
        self._events: list[Event | None] = []
        day = ""
        for event in events:
            if day_of(event) != day:
                day = day_of(event)
                rows.append(Row(text=day, heading=True))
                self._events.append(None)
            rows.append(_row(event))
            self._events.append(event)
        self.rows = tuple(rows)

    def event(self, row: int | None) -> Event | None:
        """What a row stands for; None for a heading or no row."""
        return None if row is None else self._events[row]


def _row(event: Event) -> Row:
    lead = "frame: " if event.of_frame else ""
    return Row(
        text=f"{lead}{event.words}",
        lead=time_of(event),
        tail="  ".join(filter(None, (UNDONE * event.undone, event.figure))),
        dim=event.undone,
    )
