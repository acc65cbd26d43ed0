"""Choosing among several projects."""

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
    from pathlib import Path

    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs


class ChooseScreen(AskingScreen["Path | None"]):
    """The projects of a folder. Gives the one chosen, or None to leave."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("q,escape,ctrl+q", "leave", "Quit", show=False)
    ]

    def __init__(self, folders: tuple[Path, ...], glyphs: Glyphs) -> None:
        super().__init__()
        self._folders = folders
        self._header = HeaderLine(glyphs=glyphs, id="choose-title")
        self._list = LineList(
            glyphs=glyphs,
            empty="no projects",
            rows=tuple(Row(text=folder.name) for folder in folders),
            id="choose-projects",
        )
        self._footer = FooterLine(id="choose-footer")

    def compose(self) -> ComposeResult:
        """Title, projects, keys."""
        with Vertical(id="choose"):
            yield self._header
            yield self._list
            yield self._footer

    def on_mount(self) -> None:
        """Ready to choose."""
        self._header.show((Part(text=" Which project? ", strong=True),))
        self._footer.show(
            (Hint(key="enter", label="open", action="take"),),
            (Hint(key="q", label="quit", action="leave"),),
        )
        self._list.focus()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take()

    def action_take(self) -> None:
        """Open the project under the cursor."""
        self.dismiss(self._folders[self._list.cursor or 0])

    def action_leave(self) -> None:
        """Open none."""
        self.dismiss(None)
