"""What the bench screen is made of: the lists, the panes, and how they are kept in step.

1. The screen composes, binds and forwards; what is shown comes from the `Desk`.
2. Every pane is brought up to date inside the key's own handler, so that a key is one frame.
3. The first frame is painted before the project is read; the app then calls `lay` with a desk.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from rich.cells import cell_len
from textual import on
from textual.containers import Horizontal, Vertical
from textual.screen import Screen

from benchmate.tui.bindings import hints
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Part
from benchmate.tui.panes.drawing_pane import DrawingPane
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.panes.key_pane import KeyPane
from benchmate.tui.panes.label import Notice
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.word_lines import Room

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.listing import StepRows

ROOM_FOR_FIGURES = 100
"""Columns from which the step list carries each step's figure."""

ROOM_FOR_KEY = 36
"""Rows from which the key of the frame has a place under the timbers."""


class BenchView(Screen[None]):
    """A desk on the screen: the timbers, the steps and the panes that follow them."""

    HORIZONTAL_BREAKPOINTS = [  # noqa: RUF012 - declared so by Textual
        (0, "-narrow"),
        (ROOM_FOR_FIGURES, "-normal"),
        (140, "-wide"),
    ]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall")]  # noqa: RUF012 - as above

    def __init__(self, glyphs: Glyphs) -> None:
        super().__init__()
        self._glyphs = glyphs
        self.desk: Desk | None = None
        self._step_rows: StepRows | None = None
        self._header = HeaderLine(glyphs=glyphs, id="header")
        self._timbers = LineList(
            on_move=self._timber_moved, glyphs=glyphs, empty="no timbers yet", id="timbers"
        )
        self._key = KeyPane(glyphs=glyphs, id="key")
        self._steps = LineList(on_move=self._step_moved, glyphs=glyphs, empty="", id="steps")
        self._figure = FigurePane(glyphs=glyphs, id="figure")
        self._words = WordsPane(glyphs=glyphs, id="words")
        self._face = DrawingPane(id="face")
        self._end = DrawingPane(id="end")
        self._notice = Notice(id="notice")
        self._footer = FooterLine(id="footer")

    def compose(self) -> ComposeResult:
        """Header, the two lists, the three panes, notice and footer."""
        yield self._header
        with Horizontal(id="body"):
            with Vertical(id="lists"):
                with Vertical(id="frame"):
                    yield self._timbers
                    yield self._key
                yield self._steps
            with Vertical(id="panes"):
                yield self._figure
                yield self._words
                with Horizontal(id="drawings"):
                    yield self._face
                    yield self._end
        yield self._notice
        yield self._footer

    def on_mount(self) -> None:
        """Show the keys at once, before there is anything to read."""
        self._footer.show(*hints())
        self.set_class(self._glyphs.upright.isascii(), "-ascii")
        self._steps.focus()

    def _show_all(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._timbers.show(desk.timber_rows(), desk.timber_place())
        if desk.empty:
            self._show_header()
            self._figure.show(None, "No timbers yet: e adds one.")
            self._steps.show((), 0)
            self._words.show(desk.beginning())
            self.remove_class("-key")
            self._face.show(None)
            self._end.show(None)
            return
        self._show_timber()

    def _show_timber(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._show_key(desk)
        self._step_rows = desk.step_rows(tails=self.size.width >= ROOM_FOR_FIGURES)
        self._steps.show(self._step_rows.rows, self._step_rows.row_of(desk.place))
        self._show_step()

    def _show_key(self, desk: Desk) -> None:
        """Where the timber stands, in a window with room for it and a frame with places."""
        bars = desk.bars if self.size.height >= ROOM_FOR_KEY else ()
        self.set_class(bool(bars), "-key")
        self._key.show_timber(bars, desk.timber)

    def _show_step(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._show_header()
        figure = desk.figure()
        headline = desk.headline()
        self._figure.show(figure, headline, warning=headline == "STOP")
        words = desk.words()
        room = desk.room(words)
        self.set_class(room is Room.NO_DRAWING, "-no-drawing")
        self.set_class(room is Room.ABOVE_LOW_DRAWING, "-roomy")
        self._words.show(words)
        self._face.show(desk.drawing)
        self._end.show(desk.end_drawing)

    def _show_header(self) -> None:
        """Where one is; a narrow window, which hides the timbers, says how to get to them."""
        if self.desk is not None:
            left, right = self.desk.header()
            hint = () if self.size.width >= ROOM_FOR_FIGURES else (Part(text=" tab: timbers "),)
            self._header.show((*left[:1], *hint, *left[1:]), right)

    def _say(self, words: str, *, warning: bool = False) -> None:
        """Show a message in the footer's place until the next move."""
        self._notice.say(words, warning=warning)
        self.add_class("-notice")
        self.set_class(cell_len(words) + 2 > self.size.width, "-notice-long")

    def _hush(self) -> None:
        self.remove_class("-notice", "-notice-long")

    def _timber_moved(self, row: int) -> None:
        desk = self.desk
        if desk is not None:
            self._hush()
            desk.take_timber(desk.bench.timbers[row].id)
            self._show_timber()

    def _step_moved(self, row: int) -> None:
        desk, rows = self.desk, self._step_rows
        place = rows.places[row] if rows else None
        if desk is not None and place is not None:
            self._hush()
            desk.take_step(place)
            self._show_step()

    def on_resize(self) -> None:
        """Rows carry their figures only where there is room for them."""
        if self.desk is not None and not self.desk.empty:
            self._show_timber()

    @on(LineList.Opened, "#timbers")
    def _timber_opened(self) -> None:
        self._show_steps()

    def action_pane(self) -> None:
        """Go between the timbers and the steps."""
        if self._timbers.has_focus:
            self._show_steps()
        else:
            self.add_class("-picking")
            self._timbers.focus()

    def _show_steps(self) -> None:
        self.remove_class("-picking")
        self._steps.focus()
