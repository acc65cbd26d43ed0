"""Choosing among projects, and making another: a new frame, an empty one, a copy."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.message import Message

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.rows import Row
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from pathlib import Path

    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.shop import Shop


class ChooseScreen(AskingScreen["Path | None"]):
    """The projects to choose from. Gives the one chosen or made, or None to leave.

    `leave` is what leaving does: `quit` at the start, `back` over the bench.
    """

    class Settings(Message):
        """The framer's own settings are to be seen."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("q,escape,ctrl+q,ctrl+g", "leave", "Leave", show=False),
        Binding("n,N", "new", "New frame", show=False),
        Binding("e", "empty", "Empty project", show=False),
        Binding("c", "copy", "Copy", show=False),
        Binding("comma", "settings", "Settings", show=False),
    ]

    def __init__(
        self, folders: tuple[Path, ...], shop: Shop, glyphs: Glyphs, *, leave: str = "quit"
    ) -> None:
        super().__init__()
        self._folders = folders
        self._shop = shop
        self._glyphs = glyphs
        self._leave = leave
        self._header = HeaderLine(glyphs=glyphs, id="choose-title")
        self._list = LineList(
            glyphs=glyphs,
            empty="no projects",
            rows=tuple(Row(text=each.name, tail=shop.place_of(each)) for each in folders),
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
            (
                Hint(key="enter", label="open", action="take"),
                Hint(key="n", label="new frame", action="new"),
                Hint(key="e", label="empty project", action="empty"),
                Hint(key="c", label="copy this one", action="copy"),
                Hint(key=",", label="settings", action="settings"),
            ),
            (Hint(key="q", label=self._leave, action="leave"),),
        )
        self._list.focus()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take()

    @property
    def _folder(self) -> Path | None:
        return self._folders[self._list.cursor] if self._list.cursor is not None else None

    def action_take(self) -> None:
        """Open the project under the cursor."""
        if self._folder is not None:
            self.dismiss(self._folder)

    def action_new(self) -> None:
        """Set a new frame out."""
        from benchmate.tui.outset_form import OutsetForm  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.outset import OutsetScreen  # noqa: PLC0415

        self.app.push_screen(
            OutsetScreen(OutsetForm(self._shop.home, self._shop.own), self._glyphs), self._made
        )

    def action_empty(self) -> None:
        """Make a project with nothing in it."""
        from benchmate.tui.project_forms import BlankForm  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.fields import FieldsScreen  # noqa: PLC0415

        self.app.push_screen(
            FieldsScreen(BlankForm(self._shop.home, self._shop.own), self._glyphs), self._made
        )

    def action_copy(self) -> None:
        """Copy the project under the cursor."""
        if self._folder is None:
            return
        from benchmate.tui.project_forms import CopyForm  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.fields import FieldsScreen  # noqa: PLC0415

        form = CopyForm(self._shop.home, self._folder)
        self.app.push_screen(FieldsScreen(form, self._glyphs), self._made)

    def _made(self, folder: Path | None) -> None:
        """Open what was made; where nothing was, go on choosing."""
        if folder is not None:
            self.dismiss(folder)

    def action_settings(self) -> None:
        """Look at one's own settings."""
        self.post_message(self.Settings())

    def action_leave(self) -> None:
        """Open none."""
        self.dismiss(None)
