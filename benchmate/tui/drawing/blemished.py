"""A side of a timber with the knots, checks and wane that were noted on it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from benchmate.layout.noted import blemish_outline

if TYPE_CHECKING:
    from collections.abc import Iterable

    from benchmate.model.progress import Blemish
    from benchmate.tui.drawing.scene import Scene


def blemished(drawn: Scene, blemishes: Iterable[Blemish]) -> Scene:
    """The side with those of a stick's blemishes that lie on it."""
    found = (blemish_outline(drawn.stick, each) for each in blemishes if each.side is drawn.face)
    return replace(drawn, blemishes=tuple(found))
