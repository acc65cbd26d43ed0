"""What a running app shows, as plain text."""

from typing import Any

from textual.app import App
from textual.pilot import Pilot


def screen_text(app: App[Any]) -> str:
    """The screen row by row, as a terminal would show it."""
    strips = app.screen._compositor.render_strips()
    return "\n".join("".join(segment.text for segment in strip) for strip in strips)


async def settled(pilot: Pilot[Any]) -> str:
    """The screen once it stays as it is: a project is laid out after the first frame.

    On a busy machine one pause can fall between the rows and the layout that makes room for them,
    and a click aimed by such a picture lands on another row.
    """
    shown, before = screen_text(pilot.app), ""
    while shown != before:
        before = shown
        await pilot.pause()
        shown = screen_text(pilot.app)
    return shown
