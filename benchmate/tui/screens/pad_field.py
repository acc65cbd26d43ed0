"""From a field being typed to the calculator and back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.binding import Binding

from benchmate.tui.lines import Hint

if TYPE_CHECKING:
    from textual.widgets import Input

    from benchmate.measure.length import Length
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.pad import Pad

# Ahead of the field, which would delete to its end by that key.
PAD_KEY = Binding("ctrl+k", "pad", "Reckon", show=False, priority=True)
PAD_HINT = Hint(key="ctrl+k", label="reckon", action="pad")


def open_pad(pad: Pad, field: Input, what: str, glyphs: Glyphs, *, section: bool = False) -> None:
    """Open the calculator on what is in a field; a result goes back into it.

    `what` is what the field is for. Of a `section`, the side that the cursor stands in is meant.
    """
    from benchmate.tui.pad_slot import slot_of  # noqa: PLC0415 - paid when opened
    from benchmate.tui.screens.pad import PadScreen  # noqa: PLC0415

    slot = slot_of(field.value, field.cursor_position, section=section, bare=pad.bare)

    def fill(length: Length | None) -> None:
        if length is not None:
            field.value = slot.filled(length)
            field.cursor_position = len(field.value)

    field.app.push_screen(PadScreen(pad, glyphs, start=slot.text, field=what), fill)
