"""The look-up: typed words, the best answer in big digits, the others under it."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.widgets import Input

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, Hint
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.rows import Row
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.measure.printing import Tape
    from benchmate.tui.glyphs import Glyphs
    from benchmate.workbench.find import Hit, Index


class FindScreen(AskingScreen["Hit | None"]):
    """Looks words up as they are typed. Gives the answer to go to, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("down", "step(1)", "Down", show=False, priority=True),
        Binding("up", "step(-1)", "Up", show=False, priority=True),
        Binding("pagedown", "page(1)", "Page down", show=False, priority=True),
        Binding("pageup", "page(-1)", "Page up", show=False, priority=True),
    ]

    def __init__(self, index: Index, tape: Tape, glyphs: Glyphs) -> None:
        super().__init__()
        self._index = index
        self._tape = tape
        self._hits: tuple[Hit, ...] = ()
        self._words = Input(
            placeholder="words in any order: se post relief, floor top",
            compact=True,
            id="find-words",
        )
        self._figure = FigurePane(glyphs=glyphs, id="find-figure")
        self._about = WordsPane(glyphs=glyphs, opens=False, id="find-about")
        self._list = LineList(
            on_move=self._moved, glyphs=glyphs, empty="nothing found yet", id="find-hits"
        )
        self._footer = FooterLine(id="find-footer")

    def compose(self) -> ComposeResult:
        """The words, the best answer, the others, the keys."""
        with Vertical(id="find"):
            yield self._words
            yield self._figure
            yield self._about
            yield self._list
            yield self._footer

    def on_mount(self) -> None:
        """Ready to type."""
        self._footer.show(
            (
                Hint(key="enter", label="go there", action="go"),
                Hint(key="arrows", label="choose", action="step(1)"),
            ),
            (Hint(key="esc ctrl+g", label="leave", action="leave"),),
        )
        self._words.focus()

    @on(Input.Changed)
    def _typed(self, event: Input.Changed) -> None:
        self._hits = self._index.find(event.value)
        rows = tuple(
            Row(
                text=hit.title,
                tail=self._tape.text(hit.value) if hit.value is not None else "",
            )
            for hit in self._hits
        )
        self._list.show(rows, 0)
        self._moved(0)

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_go()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_go()

    def _moved(self, row: int) -> None:
        """Show the answer under the cursor in full."""
        if not self._hits:
            self._figure.show(None, "")
            self._about.show(())
            return
        hit = self._hits[row]
        figure = self._tape.show(hit.value) if hit.value is not None else None
        self._figure.show(figure, hit.title)
        self._about.show(
            (Saying(label="", text=hit.title, strong=True), Saying(label="", text=hit.detail))
        )

    def action_step(self, lines: int) -> None:
        """Choose among the answers without leaving the words."""
        self._list.action_step(lines)

    def action_page(self, pages: int) -> None:
        """Choose a page on."""
        self._list.action_page(pages)

    def action_go(self) -> None:
        """Go to the answer under the cursor."""
        row = self._list.cursor
        self.dismiss(self._hits[row] if self._hits and row is not None else None)

    def action_leave(self) -> None:
        """Stay where one was."""
        self.dismiss(None)
