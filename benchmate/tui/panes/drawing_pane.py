"""A drawing of a face or an end, drawn to whatever room the pane has."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from rich.segment import Segment
from textual.strip import Strip
from textual.widget import Widget

from benchmate.tui.drawing.canvas import Role

if TYPE_CHECKING:
    from collections.abc import Callable

    from rich.style import Style
    from textual import events

    from benchmate.tui.drawing.canvas import Drawing


def _class_of(role: Role) -> str:
    return f"drawing-pane--{role.value.replace(' ', '-')}"


class DrawingPane(Widget):
    """Asks for a drawing of its own size whenever it is given a new subject or a new size."""

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {_class_of(role) for role in Role}

    def __init__(self, *, id: str | None = None) -> None:  # noqa: A002 - Textual's own name
        super().__init__(id=id)
        self._draw: Callable[[int, int], Drawing | None] | None = None
        self._drawing: Drawing | None = None

    def show(self, draw: Callable[[int, int], Drawing | None] | None) -> None:
        """Draw this: `draw` is given the width and the height in cells, and may draw nothing."""
        self._draw = draw
        self._set()

    def on_resize(self, _event: events.Resize) -> None:
        """Draw to the new size."""
        self._set()

    def _set(self) -> None:
        width, height = self.content_size
        drawing = self._draw(width, height) if self._draw and width and height else None
        if drawing != self._drawing:
            self._drawing = drawing
            self.refresh()

    def render_line(self, y: int) -> Strip:
        """One row of the drawing."""
        width = self.content_size.width
        if self._drawing is None or y >= len(self._drawing.rows):
            return Strip.blank(width, self.rich_style)
        row = self._drawing.rows[y]
        strip = Strip([Segment(text, self._style(role)) for text, role in row])
        return strip.adjust_cell_length(width, self.rich_style)

    def _style(self, role: Role) -> Style:
        return self.get_component_rich_style(_class_of(role))
