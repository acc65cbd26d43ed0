"""What a running app shows, as plain text."""

from typing import Any

from textual.app import App


def screen_text(app: App[Any]) -> str:
    """The screen row by row, as a terminal would show it."""
    strips = app.screen._compositor.render_strips()
    return "\n".join("".join(segment.text for segment in strip) for strip in strips)
