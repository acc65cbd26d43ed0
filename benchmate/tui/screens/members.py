"""The list of timbers: grouped, sorted, filtered; what no tick can tell is signed here."""

from __future__ import annotations

from time import monotonic
from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.widgets import Input

from benchmate.tui.bindings import bindings_of
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.label import Notice
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.rows import set_row
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.model.progress import SignWord
    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outcome import Outcome

AT_ONCE, BETWEEN, AGAIN = 0.008, 0.001, 0.1
"""Seconds that timbers are taken in at a stretch, that keys have in between, and after which the
rows are looked at again meanwhile."""

NOTHING = "no timber holds all of these words"


class MembersScreen(AskingScreen["str | None"]):
    """The timbers. Gives the one to take up, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        *bindings_of(("undo", "redo"), "members"),
        Binding("g", "group", "Group by the next thing", show=False),
        Binding("s", "sort", "By next best job, or in file order", show=False),
        Binding("slash", "words", "Only those that hold words", show=False),
        Binding("c", "sign('checked')", "Checked by a second person", show=False),
        Binding("f", "sign('fitted')", "Fitted", show=False),
        Binding("a", "sign('assembled')", "Assembled", show=False),
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("q,M", "close", "Back to the bench", show=False),
    ]

    def __init__(self, desk: Desk, glyphs: Glyphs) -> None:
        super().__init__()
        self._desk = desk
        self.listed = desk.member_list()
        self._growing = True
        self._shown = 0.0
        self._header = HeaderLine(glyphs=glyphs, id="members-title")
        self._heads = HeaderLine(glyphs=glyphs, id="members-heads")
        self._words = Input(placeholder="post left, bent 2, cut, waits", compact=True)
        self._words.id = "members-words"
        self._list = LineList(on_move=self._moved, glyphs=glyphs, empty=NOTHING, id="members-list")
        self._about = WordsPane(glyphs=glyphs, opens=False, id="members-about")
        self._notice = Notice(id="members-notice")
        self._footer = FooterLine(id="members-footer")

    def compose(self) -> ComposeResult:
        """What is listed, the words to filter by, the timbers, the one in hand, the keys."""
        with Vertical(id="members"):
            yield self._header
            yield self._words
            yield self._heads
            yield self._list
            yield self._about
            yield self._notice
            yield self._footer

    def on_mount(self) -> None:
        """Start at the timber that was in hand on the bench."""
        self._words.display = self._notice.display = False
        self._list.focus()
        self.set_timer(BETWEEN, self._grow)

    def on_resize(self) -> None:
        """The columns follow the width."""
        self.call_after_refresh(self._show)

    def _grow(self) -> None:
        """Take in hands and waits for a moment, those in sight first, then let keys by."""
        until = monotonic() + AT_ONCE
        near = [each for row in self._list.in_sight if (each := self.listed.at(row))]
        while self._growing and monotonic() < until:
            self._growing = self.listed.members.grow(near)
        if not self._growing or monotonic() > self._shown + AGAIN:
            self._show()
        if self._growing:
            self.set_timer(BETWEEN, self._grow)

    def _show(self) -> None:
        """Show the rows as they are now, with the cursor on the timber in hand."""
        width = self._list.scrollable_content_region.width
        if not width:
            return
        rows = self.listed.rows(width)
        self._list.show(rows, self.listed.place)
        self.listed.timber = self.listed.at(self._list.cursor) or self.listed.timber
        self._shown = monotonic()
        self._header.show((Part(text=f" {self.listed.title} ", strong=True),))
        heads = set_row(self.listed.heads, width, marked=False, glyphs=self._desk.glyphs)
        self._heads.show((Part(text=heads if rows else ""),))
        self._about.show(self.listed.sayings())
        self._show_keys()

    def _show_keys(self) -> None:
        if self._words.has_focus:
            self._footer.show(
                (Hint(key="enter", label="to the list", action="to_list"),),
                (Hint(key="esc", label="all timbers", action="leave"),),
            )
            return
        self._footer.show(
            (
                Hint(key="enter", label="go", action="take"),
                Hint(key="g", label="group", action="group"),
                Hint(key="s", label="sort", action="sort"),
                Hint(key="/", label="find", action="words"),
                Hint(key="c", label="checked", action="sign('checked')"),
                Hint(key="f", label="fitted", action="sign('fitted')"),
                Hint(key="a", label="assembled", action="sign('assembled')"),
                Hint(key="u", label="undo", action="undo"),
            ),
            (Hint(key="esc", label="bench", action="leave"),),
        )

    def _moved(self, row: int) -> None:
        self.listed.timber = self.listed.at(row)
        self._hush()
        self._about.show(self.listed.sayings())

    def _hush(self) -> None:
        self._notice.display = False

    def _tell(self, outcome: Outcome) -> None:
        outcome = self._desk.with_trouble(outcome)
        self._notice.display = bool(outcome.words)
        self._notice.say(outcome.words, warning=outcome.failed)

    def action_group(self) -> None:
        """Group by the next thing; the timber in hand stays in hand."""
        self._hush()
        self.listed.group_on()
        self._show()

    def action_sort(self) -> None:
        """Sort by next best job, or in file order again."""
        self._hush()
        self.listed.sort_on()
        self._show()

    def action_sign(self, what: SignWord) -> None:
        """Sign something of the timber in hand, or take it off."""
        timber = self.listed.at(self._list.cursor)
        if timber:
            self._tell(self._desk.sign(timber, what))
            self.listed.members.stand(timber)
            self._show()

    def action_undo(self) -> None:
        """Take the last action back, and go to its timber."""
        self._turned(self._desk.undo())

    def action_redo(self) -> None:
        """Do again what was taken back."""
        self._turned(self._desk.redo())

    def _turned(self, outcome: Outcome) -> None:
        if self._desk.empty:
            self.dismiss(None)
            return
        self._tell(outcome)
        self.listed.renew((self._desk.timber, self._desk.step.id))
        if not self._growing:
            self._growing = True
            self.set_timer(BETWEEN, self._grow)
        self._show()

    def action_words(self) -> None:
        """Type words that the timbers are to hold."""
        self._hush()
        self._words.display = True
        self._words.focus()
        self._show_keys()

    @on(Input.Changed)
    def _typed(self) -> None:
        self.listed.words = self._words.value
        self._show()

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_to_list()

    def action_to_list(self) -> None:
        """Go from the words to the timbers that hold them."""
        self._words.display = bool(self._words.value)
        self._list.focus()
        self.call_after_refresh(self._show)

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take()

    def action_take(self) -> None:
        """Take up the timber in hand."""
        timber = self.listed.at(self._list.cursor)
        if timber:
            self.dismiss(timber)

    def action_leave(self) -> None:
        """Take the words away, or leave the list where there are none."""
        if self._words.has_focus or self._words.value:
            self._words.value = ""
            self.action_to_list()
        else:
            self.action_close()

    def action_close(self) -> None:
        """Go back to the bench as it was."""
        self.dismiss(None)
