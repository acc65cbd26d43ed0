"""What a change would do, line by line, below the field it is typed in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.tui.panes.told_pane import WrappedPane
from benchmate.tui.ripple_words import STRONG
from benchmate.tui.rows import Row
from benchmate.tui.text import wrap

if TYPE_CHECKING:
    from collections.abc import Iterable

MARGIN = 4
"""Cells left free: the cursor's, the indent of a line that goes on, and one at the right."""


class EffectPane(WrappedPane[str]):
    """Lines of which those not to be overlooked are bold."""

    def wrapped(self, told: tuple[str, ...], width: int) -> Iterable[Row]:
        """One row a line, indented where one goes on."""
        return (
            Row(text=f"  {text}" if place else text, bold=line.startswith(STRONG))
            for line in told
            for place, text in enumerate(wrap(line, width - MARGIN))
        )
