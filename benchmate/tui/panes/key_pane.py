"""A small key of the frame: where the timber in hand stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.drawing.key import draw_key, draw_keys, views_for
from benchmate.tui.panes.drawing_pane import DrawingPane

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Drawing
    from benchmate.tui.drawing.key import Bar
    from benchmate.tui.glyphs import Glyphs

ROOM_FOR_TWO = 42
"""The columns from which the plan and an elevation stand side by side."""


class KeyPane(DrawingPane):
    """The plan and an elevation, or in a narrow pane one view at a time.

    Blank for a timber that has no place. Works from 20 by 6 cells up.
    """

    def __init__(self, *, glyphs: Glyphs, id: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(id=id)
        self._glyphs = glyphs
        self._subject: tuple[tuple[Bar, ...], str, int] = ((), "", 0)

    def show_timber(self, bars: tuple[Bar, ...], timber: str, turn: int = 0) -> None:
        """Mark a timber in its frame, if it is not marked already.

        Every `turn` more is the next view: of the elevations beside the plan, of all where the pane
        is too narrow for two.
        """
        if (bars, timber, turn) != self._subject:
            self._subject = bars, timber, turn
            self.show(self._drawn)

    def _drawn(self, width: int, height: int) -> Drawing | None:
        bars, timber, turn = self._subject
        views = views_for(bars, timber)
        if not views:
            return None
        if width < ROOM_FOR_TWO:
            view = views[turn % len(views)]
            return draw_key(bars, timber, view, width=width, height=height, glyphs=self._glyphs)
        plan, *elevations = views
        pair = plan, elevations[turn % len(elevations)]
        return draw_keys(bars, timber, pair, width=width, height=height, glyphs=self._glyphs)
