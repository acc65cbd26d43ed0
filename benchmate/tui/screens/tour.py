"""The cards of the first start, one at a time."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.tour_cards import CARDS
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs


class TourScreen(AskingScreen[None]):
    """Five short cards. The last one's next closes them, and so does leaving at any."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("enter,space,right,down,j,n", "turn(1)", "Next", show=False),
        Binding("left,up,k,b,backspace", "turn(-1)", "Back", show=False),
        Binding("escape,q,ctrl+g", "leave", "Close", show=False),
    ]

    def __init__(self, glyphs: Glyphs) -> None:
        super().__init__()
        self._place = 0
        self._title = HeaderLine(glyphs=glyphs, id="tour-title")
        self._words = WordsPane(glyphs=glyphs, opens=False, id="tour-words")
        self._footer = FooterLine(id="tour-footer")

    def compose(self) -> ComposeResult:
        """The card and the keys."""
        with Vertical(id="tour"):
            yield self._title
            yield self._words
            yield self._footer

    def on_mount(self) -> None:
        """Show the first card."""
        self._show()

    def _show(self) -> None:
        card, last = CARDS[self._place], self._place == len(CARDS) - 1
        count = f" {self._place + 1} of {len(CARDS)} "
        self._title.show((Part(text=f" {card.title} ", strong=True),), (Part(text=count),))
        blank = Saying(label="", text=" ")
        lead, more = (Saying(label="", text=text) for text in (card.lead, card.more))
        self._words.show((blank, lead, blank, more))
        onward = Hint(key="enter", label="begin" if last else "next", action="turn(1)")
        back = Hint(key="b", label="back", action="turn(-1)")
        self._footer.show((onward, back), (Hint(key="q", label="close", action="leave"),))

    def action_turn(self, cards: int) -> None:
        """Go on or back by so many cards; past the last one they are done."""
        place = max(self._place + cards, 0)
        if place == len(CARDS):
            self.action_leave()
            return
        self._place = place
        self._show()

    def action_leave(self) -> None:
        """Done with them."""
        self.dismiss()
