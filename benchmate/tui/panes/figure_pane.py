"""The current figure in digits that can be read from two paces."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from rich.segment import Segment
from textual.strip import Strip
from textual.widget import Widget

from benchmate.tui.bignum import big_figure
from benchmate.tui.looks import style_of
from benchmate.tui.text import fit, wrap

if TYPE_CHECKING:
    from textual import events

    from benchmate.measure.printing import Shown
    from benchmate.tui.glyphs import Glyphs


class FigurePane(Widget):
    """A big figure, or a headline where the step has none."""

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {"figure-pane--figure", "figure-pane--warning"}

    def __init__(self, *, glyphs: Glyphs, id: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(id=id)
        self._glyphs = glyphs
        self._content: tuple[Shown | None, str, bool] = (None, "", False)
        self._lines: tuple[str, ...] = ()

    def show(self, figure: Shown | None, headline: str, *, warning: bool = False) -> None:
        """Show a figure, or the headline if it is None; a warning stands out without colour."""
        if self._content != (figure, headline, warning):
            self._content = (figure, headline, warning)
            self._set()

    def restyle(self) -> None:
        """Set the figure anew in the digits that the framer has just chosen."""
        self._set()

    def on_resize(self, _event: events.Resize) -> None:
        """Set the figure anew in the largest digits that now fit."""
        self._set()

    def _set(self) -> None:
        figure, headline, _ = self._content
        width, height = self.content_size
        if not width or not height:
            return
        if figure is not None:
            self._lines = big_figure(
                figure, width=width, height=height, glyphs=self._glyphs, style=style_of(self.app)
            )
        else:
            self._lines = wrap(headline, width)[:height] if headline else ()
        self.refresh()

    def render_line(self, y: int) -> Strip:
        """One row, the content centred from top to bottom."""
        width, height = self.content_size
        top = (height - len(self._lines)) // 2
        text = self._lines[y - top] if 0 <= y - top < len(self._lines) else ""
        name = "figure-pane--warning" if self._content[2] else "figure-pane--figure"
        style = self.get_component_rich_style(name) if text else self.rich_style
        return Strip([Segment(fit(text, width, self._glyphs.cut_off), style)], width)
