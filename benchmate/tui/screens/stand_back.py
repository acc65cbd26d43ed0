"""The step in hand as large as the window, to be read from two paces."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.distant import distant
from benchmate.tui.distant_page import distant_page
from benchmate.tui.lines import Hint
from benchmate.tui.looks import style_of
from benchmate.tui.panes.drawing_pane import DrawingPane
from benchmate.tui.screens.step_screen import StepScreen, step_bindings

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.desk import Desk
    from benchmate.tui.drawing.canvas import Drawing
    from benchmate.tui.glyphs import Glyphs

HINTS = (
    Hint(key="space", label="tick", action="tick"),
    Hint(key="n", label="next", action="next"),
    Hint(key="arrows", label="move", action="step(1)"),
    Hint(key="u", label="undo", action="undo"),
    Hint(key="g", label="job", action="best_job"),
    Hint(key="s", label="from", action="swap"),
    Hint(key="enter", label="all of it", action="read"),
)


class StandBackScreen(StepScreen):
    """Ticks and moves without leaving; `v` or escape goes back to the bench."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *step_bindings("stand-back"),
        Binding("v", "leave", "Back to the bench", show=False),
    ]

    def __init__(self, desk: Desk, glyphs: Glyphs) -> None:
        super().__init__(desk, glyphs)
        self._page = DrawingPane(id="stand-back-page")

    def compose(self) -> ComposeResult:
        """The timber, the page, the keys."""
        with Vertical(id="stand-back"):
            yield self._header
            yield self._page
            yield self._notice
            yield self._footer

    def _show(self) -> None:
        super()._show()
        self._footer.show(HINTS, (Hint(key="v", label="bench", action="leave"),))
        self._page.show(self._drawn)

    def _drawn(self, width: int, height: int) -> Drawing | None:
        if self.desk.empty:
            return None
        return distant_page(distant(self.desk), width, height, self._glyphs, style_of(self.app))
