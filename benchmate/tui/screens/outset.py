"""Setting a frame out: a page of fields with the trade's defaults, the frame drawn beside it.

What is typed is read within the key. The frame is drawn and checked beside the screen, a moment
after the last key, and shown when that is done, unless something else has been typed meanwhile.
"""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType

from benchmate.tui.fields_form import MAKE
from benchmate.tui.lines import Hint, Part
from benchmate.tui.outset_form import checked, sketch
from benchmate.tui.panes.key_pane import KeyPane
from benchmate.tui.screens.fields import FieldsScreen

if TYPE_CHECKING:
    from textual.timer import Timer
    from textual.widget import Widget

    from benchmate.model.findings import Finding
    from benchmate.tui.fields_form import Field
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outset_form import OutsetForm, Sketch

AFTER = 0.15
"""Seconds after the last key before the frame is drawn: typing a figure draws it once."""

ROOM_FOR_TOTALS = 100
"""Columns from which the title counts timbers and joints as well as kinds."""


class OutsetScreen(FieldsScreen):
    """A new frame from its driving dimensions. Gives the project's folder, or None for none."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+t", "turn", "Look from the next side", show=False, priority=True),
    ]

    def __init__(self, form: OutsetForm, glyphs: Glyphs) -> None:
        super().__init__(form, glyphs)
        self._outset = form
        self._turn = 0
        self._last_drawn: Sketch | None = None
        self._timer: Timer | None = None
        self._warned: tuple[Finding, ...] = ()
        self._key = KeyPane(glyphs=glyphs, id="outset-key")

    def beside(self) -> tuple[Widget, ...]:
        """The frame as drawn."""
        return (self._key,)

    def on_mount(self) -> None:
        """Draw what is suggested."""
        self._draw_later()

    def _flags(self) -> tuple[Part, ...]:
        """The members by kind, or that what is drawn is not what is typed."""
        if self._outset.wrong is not None:
            return (Part(text=" not drawn: see ! ", warning=True),)
        drawn = self._last_drawn
        if drawn is None:
            return ()
        wide = self.size.width >= ROOM_FOR_TOTALS
        return (Part(text=f" {drawn.counts}{f'; {drawn.totals}' if wide else ''} "),)

    def _show(self) -> None:
        super()._show()
        found = self._outset.drawn.found if self._outset.drawn else None
        self.set_class(self._field.id == MAKE and bool(found), "-found")
        drawn = self._last_drawn
        if drawn is not None:
            ids = [bar.id for bar in drawn.bars]
            stem = self._field.shows
            near = [each for each in ids if stem and each.startswith(stem)]
            self._key.show_timber(drawn.bars, (near or ids)[0], self._turn)

    def _renewed(self) -> None:
        super()._renewed()
        self._draw_later()

    def _draw_later(self) -> None:
        if self._timer is not None:
            self._timer.stop()
        self._timer = self.set_timer(AFTER, self._draw)

    def _draw(self) -> None:
        """Draw and check what is typed now, beside the screen."""
        if self._outset.drawn is None:
            work = partial(self._drawing, self._outset.answered)
            self.run_worker(work, thread=True, exclusive=True)

    def _drawing(self, typed: dict[str, str]) -> None:
        """Work a frame out and hand it over, first drawn and then checked."""
        drawn = sketch(typed, self._outset.own)
        self._hand_over(drawn)
        if drawn.draft.frame is not None and typed == self._outset.answered:
            self._hand_over(checked(drawn))

    def _hand_over(self, drawn: Sketch) -> None:
        if self.app.is_running:
            self.app.call_from_thread(self._show_drawn, drawn)

    def _show_drawn(self, drawn: Sketch) -> None:
        """Show a frame, unless something else has been typed since."""
        if self._outset.take(drawn) and self.is_attached:
            if drawn.bars:
                self._last_drawn = drawn
            self._show()

    def ready(self) -> bool:
        """Whether what the checks find has been seen, and the project can be read at all."""
        drawn = self._outset.settled()
        found = drawn.found or ()
        if drawn.draft.problem or (found and self._warned != found):
            self._warned = found
            self._say(
                "Not made: this is a fault of the program's; try other answers."
                if drawn.draft.problem
                else "Not made yet. Enter once more makes it all the same."
            )
            return False
        return True

    def action_turn(self) -> None:
        """Look from the next side."""
        self._turn += 1
        self._show()

    def _hints(self, field: Field) -> tuple[Hint, ...]:
        return (*super()._hints(field), Hint(key="ctrl+t", label="turn", action="turn"))
