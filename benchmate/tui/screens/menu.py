"""Choosing what is to be changed, from one small list."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.rows import Row
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.workbench.edit_choices import Choices


class MenuScreen(AskingScreen["int | None"]):
    """A list to choose from. Gives the place of the one chosen, or None to leave."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("q,e,escape,ctrl+g", "leave", "Leave", show=False)
    ]

    def __init__(self, listed: Choices, glyphs: Glyphs) -> None:
        super().__init__()
        self._title = listed.title
        self._header = HeaderLine(glyphs=glyphs, id="menu-title")
        self._list = LineList(
            glyphs=glyphs,
            empty="nothing to choose",
            rows=tuple(Row(text=each.text, tail=each.beside) for each in listed.choices),
            id="menu-choices",
        )
        self._footer = FooterLine(id="menu-footer")

    def compose(self) -> ComposeResult:
        """Title, choices, keys."""
        with Vertical(id="menu"):
            yield self._header
            yield self._list
            yield self._footer

    def on_mount(self) -> None:
        """Ready to choose."""
        self._header.show((Part(text=f" {self._title} ", strong=True),))
        self._footer.show(
            (
                Hint(key="enter", label="choose", action="take"),
                Hint(key="arrows", label="move", action="app.focused.step(1)"),
            ),
            (Hint(key="e", label="leave", action="leave"),),
        )
        self._list.focus()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take()

    def action_take(self) -> None:
        """Choose the one under the cursor."""
        self.dismiss(self._list.cursor)

    def action_leave(self) -> None:
        """Choose none."""
        self.dismiss(None)
