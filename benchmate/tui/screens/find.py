"""The look-up: typed words, the best answer in big digits, the others under it."""

from __future__ import annotations

from time import monotonic
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
    from benchmate.workbench.find import Index
    from benchmate.workbench.find_entries import Hit

AT_ONCE, BETWEEN, AGAIN = 0.008, 0.001, 0.1
"""Seconds that timbers are taken in at a stretch, that keys have in between, and after which the
answers are looked at again meanwhile."""

STILL = "Still going through the timbers."
NOTHING = "Nothing holds all of these words; try fewer of them, or the start of one."
BEFORE = "Type what you look for. These were looked up before:"


class FindScreen(AskingScreen["Hit | None"]):
    """Looks words up as they are typed. Gives the answer to go to, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("down", "step(1)", "Down", show=False, priority=True),
        Binding("up", "step(-1)", "Up", show=False, priority=True),
        Binding("pagedown", "page(1)", "Page down", show=False, priority=True),
        Binding("pageup", "page(-1)", "Page up", show=False, priority=True),
    ]

    def __init__(
        self, index: Index, tape: Tape, glyphs: Glyphs, *, recent: tuple[Hit, ...] = ()
    ) -> None:
        super().__init__()
        self._index = index
        self._tape = tape
        self._recent = recent
        self._growing = True
        self._looked = 0.0
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
        self._look()
        self.set_timer(BETWEEN, self._grow)

    def _grow(self) -> None:
        """Take in more timbers for a moment, then let keys by; answers follow what is in."""
        until = monotonic() + AT_ONCE
        while self._growing and monotonic() < until:
            self._growing = self._index.grow()
        if self._words.value and (not self._growing or monotonic() > self._looked + AGAIN):
            self._look()
        if self._growing:
            self.set_timer(BETWEEN, self._grow)

    @on(Input.Changed)
    def _typed(self) -> None:
        self._look(afresh=True)

    def _look(self, *, afresh: bool = False) -> None:
        """Show the answers to the words; the one in hand stays in hand unless words were typed."""
        row = self._list.cursor
        before = self._hits[row] if self._hits and row is not None and not afresh else None
        self._hits = self._answers()
        self._looked = monotonic()
        rows = tuple(
            Row(
                text=hit.title,
                tail=self._tape.text(hit.value) if hit.value is not None else "",
            )
            for hit in self._hits
        )
        place = self._hits.index(before) if row and before in self._hits else 0
        self._list.show(rows, place)
        self._moved(place)

    def _answers(self) -> tuple[Hit, ...]:
        """What the words find; with none typed, what was gone to before."""
        if self._words.value:
            return self._index.find(self._words.value)
        return tuple(hit for each in self._recent if (hit := self._index.again(each)))

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
            told = STILL if self._growing else NOTHING
            self._about.show((Saying(label="", text=told),) if self._words.value else ())
            return
        hit = self._hits[row]
        figure = self._tape.show(hit.value) if hit.value is not None else None
        self._figure.show(figure, hit.title)
        before = () if self._words.value else (Saying(label="", text=BEFORE),)
        self._about.show(
            (
                *before,
                Saying(label="", text=hit.title, strong=True),
                Saying(label="", text=hit.detail),
            )
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
