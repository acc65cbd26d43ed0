"""The one-row widgets at the top and the foot of a screen.

They hold what they were last given and repaint only when it differs: the stock footer rebuilds
itself at every change of focus, which is dearer than everything else on the screen.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import accumulate
from typing import TYPE_CHECKING, ClassVar

from rich.cells import cell_len
from rich.segment import Segment
from textual.strip import Strip
from textual.widget import Widget

from benchmate.tui.text import clip, safe

if TYPE_CHECKING:
    from collections.abc import Iterator

    from rich.style import Style
    from textual import events

    from benchmate.tui.glyphs import Glyphs


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A piece of the header; a strong one is bold, a warning stands out without colour too."""

    text: str
    strong: bool = False
    warning: bool = False


def note_of(words: str) -> tuple[Part, ...]:
    """A note for the right of a header; nothing for no words."""
    return (Part(text=f" {words} "),) if words else ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Hint:
    """A key in the footer: how it is written, what it does in a word or two, and its action."""

    key: str
    label: str
    action: str

    @property
    def cells(self) -> int:
        """The width drawn, with a space at either side and one between."""
        return cell_len(safe(self.key)) + cell_len(safe(self.label)) + 3


def that_fit(hints: tuple[Hint, ...], keep: tuple[Hint, ...], width: int) -> tuple[Hint, ...]:
    """As many hints as fit before those to keep, the last dropped first.

    Where not even those to keep fit, the first of them give way.
    """
    kept = keep
    while kept and sum(hint.cells for hint in kept) > width:
        kept = kept[1:]
    room = width - sum(hint.cells for hint in kept)
    ends = accumulate(hint.cells for hint in hints)
    return (*hints[: sum(end <= room for end in ends)], *kept)


class HeaderLine(Widget):
    """Where one is: parts from the left, cut short for the sake of the parts at the right."""

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {"header-line--strong", "header-line--warning"}

    def __init__(self, *, glyphs: Glyphs, id: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(id=id)
        self._glyphs = glyphs
        self._left: tuple[Part, ...] = ()
        self._right: tuple[Part, ...] = ()

    def show(self, left: tuple[Part, ...], right: tuple[Part, ...] = ()) -> None:
        """Draw these parts, if they are not drawn already."""
        if (left, right) != (self._left, self._right):
            self._left, self._right = left, right
            self.refresh()

    def render_line(self, y: int) -> Strip:
        """The line; rows below it, should there be any, are blank."""
        width = self.size.width
        if y:
            return Strip.blank(width, self.rich_style)
        right = self._strip(tuple(_clipped(self._right, width, self._glyphs.cut_off)))
        room = width - right.cell_length
        left = self._strip(tuple(_clipped(self._left, room, self._glyphs.cut_off)))
        return Strip.join([left.extend_cell_length(room, self.rich_style), right])

    def _strip(self, parts: tuple[Part, ...]) -> Strip:
        return Strip([Segment(safe(part.text), self._style_of(part)) for part in parts])

    def _style_of(self, part: Part) -> Style:
        style = self.rich_style
        for name, wanted in (("strong", part.strong), ("warning", part.warning)):
            if wanted:
                style += self.get_component_rich_style(f"header-line--{name}", partial=True)
        return style


def _clipped(parts: tuple[Part, ...], width: int, cut_off: str) -> Iterator[Part]:
    for part in parts:
        text = clip(part.text, width, cut_off)
        yield replace(part, text=text)
        width -= cell_len(text)


class FooterLine(Widget):
    """The keys that do something here; a click on one is as good as the key."""

    ALLOW_SELECT = False
    COMPONENT_CLASSES: ClassVar[set[str]] = {"footer-line--key", "footer-line--label"}

    def __init__(self, *, id: str | None = None) -> None:  # noqa: A002 - Textual's
        super().__init__(id=id)
        self._hints: tuple[Hint, ...] = ()
        self._keep: tuple[Hint, ...] = ()

    def show(self, hints: tuple[Hint, ...], keep: tuple[Hint, ...] = ()) -> None:
        """Draw these keys, if they are not drawn already; `keep` come last and are not dropped."""
        if (hints, keep) != (self._hints, self._keep):
            self._hints, self._keep = hints, keep
            self.refresh()

    def render_line(self, y: int) -> Strip:
        """The line; rows below it, should there be any, are blank."""
        width = self.size.width
        if y:
            return Strip.blank(width, self.rich_style)
        key = self.get_component_rich_style("footer-line--key")
        label = self.get_component_rich_style("footer-line--label")
        segments = [
            segment
            for hint in that_fit(self._hints, self._keep, width)
            for segment in (
                Segment(f" {safe(hint.key)}", key),
                Segment(f" {safe(hint.label)} ", label),
            )
        ]
        return Strip(segments).extend_cell_length(width, self.rich_style)

    async def on_click(self, event: events.Click) -> None:
        """Do what the key that was clicked does."""
        offset = event.get_content_offset(self)
        shown = that_fit(self._hints, self._keep, self.size.width)
        ends = accumulate(hint.cells for hint in shown)
        for hint, end in zip(shown, ends, strict=True):
            if offset is not None and offset.x < end:
                await self.screen.run_action(hint.action)
                return
