"""Where a timber stands in the frame: the plan and an elevation, as large as the window."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual.binding import Binding, BindingType
from textual.containers import Vertical

from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.key_pane import KeyPane
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.words import Saying

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.drawing.key import Bar
    from benchmate.tui.glyphs import Glyphs


class WhereScreen(AskingScreen["str | None"]):
    """Goes through the frame timber by timber. Gives the one to take up, or None.

    `timbers` are the ids to go through in their order, `current` the one to begin at. `about` tells
    of a timber: a line of its name and what it is, then its place in words. A timber without a bar
    is told of and not drawn.
    """

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q,ctrl+g", "leave", "Close", show=False),
        Binding("enter", "take", "Take it up", show=False),
        Binding("v", "turn", "Next side", show=False),
        Binding("down,j,right_square_bracket", "step(1)", "Next timber", show=False),
        Binding("up,k,left_square_bracket", "step(-1)", "Timber before", show=False),
        Binding("home,g", "go(0)", "First timber", show=False),
        Binding("end,G", "go(-1)", "Last timber", show=False),
    ]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall")]  # noqa: RUF012 - declared so by Textual

    def __init__(
        self,
        bars: tuple[Bar, ...],
        timbers: tuple[str, ...],
        current: str,
        about: Callable[[str], tuple[str, ...]],
        glyphs: Glyphs,
    ) -> None:
        super().__init__()
        self._bars = bars
        self._timbers = timbers
        self._place = timbers.index(current)
        self._turn = 0
        self._tell = about
        self._header = HeaderLine(glyphs=glyphs, id="where-title")
        self._about = WordsPane(glyphs=glyphs, opens=False, id="where-about")
        self._key = KeyPane(glyphs=glyphs, id="where-key")
        self._footer = FooterLine(id="where-footer")

    def compose(self) -> ComposeResult:
        """The timber, its place in words, its place in the frame, the keys."""
        with Vertical(id="where"):
            yield self._header
            yield self._about
            yield self._key
            yield self._footer

    def on_mount(self) -> None:
        """Begin at the timber in hand."""
        self._footer.show(
            (
                Hint(key="enter", label="take it up", action="take"),
                Hint(key="arrows", label="next timber", action="step(1)"),
                Hint(key="v", label="next side", action="turn"),
            ),
            (Hint(key="q", label="close", action="leave"),),
        )
        self._show()

    def _show(self) -> None:
        timber = self._timbers[self._place]
        title, *place = self._tell(timber)
        count = f" {self._place + 1} of {len(self._timbers)} "
        self._header.show((Part(text=f" {title} ", strong=True),), (Part(text=count),))
        stops = [line.startswith("STOP") for line in place]
        self.set_class(any(stops), "-stopped")
        self._about.show(
            tuple(
                Saying(label="", text=line, warning=stop)
                for line, stop in zip(place, stops, strict=True)
            )
        )
        self._key.show_timber(self._bars, timber, self._turn)

    def action_step(self, timbers: int) -> None:
        """Go on by so many timbers, not past an end; the best side of each comes first."""
        self._go(min(max(self._place + timbers, 0), len(self._timbers) - 1))

    def action_go(self, place: int) -> None:
        """Go to the first timber or, with -1, to the last."""
        self._go(place % len(self._timbers))

    def _go(self, place: int) -> None:
        if place != self._place:
            self._place, self._turn = place, 0
            self._show()

    def action_turn(self) -> None:
        """Look from the next side."""
        self._turn += 1
        self._show()

    def action_take(self) -> None:
        """Take the timber up."""
        self.dismiss(self._timbers[self._place])

    def action_leave(self) -> None:
        """Leave the timber in hand as it was."""
        self.dismiss(None)
