"""Where the timbers stand in the frame, as bars for the key plan and elevations."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.drawing.key import Bar

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.frame.frame import Frame


def bars_of(frame: Frame) -> tuple[Bar, ...]:
    """The timbers that have a place, from end to end, in file order."""
    return tuple(_bars(frame))


def _bars(frame: Frame) -> Iterator[Bar]:
    for timber in frame.project.timbers:
        place = frame.place(timber.id)
        if place is not None:
            stick = frame.stick(timber.id)
            corners = place.corners(stick.section(), stick.start, stick.finish)
            yield Bar(id=timber.id, name=timber.name, corners=corners)
