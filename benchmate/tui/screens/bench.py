"""The bench screen: timbers, steps, the figure, the words and the drawing, kept in step.

1. The screen composes, binds and forwards; what is shown comes from the `Desk`.
2. Every pane is brought up to date inside the key's own handler, so that a key is one frame.
3. The first frame is painted before the project is read; the app then calls `lay` with a desk.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.containers import Horizontal, Vertical
from textual.screen import Screen

from benchmate.tui.bindings import bindings, hints
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Part
from benchmate.tui.panes.drawing_pane import DrawingPane
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.panes.label import Notice
from benchmate.tui.panes.words_pane import WordsPane

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult
    from textual.binding import BindingType

    from benchmate.tui.desk import Desk
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.listing import StepRows
    from benchmate.tui.outcome import Outcome
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.find import Hit

ROOM_FOR_FIGURES = 100
"""Columns from which the step list carries each step's figure."""

LOOK_EVERY = 1.0
"""Seconds between looks at the files for changes made outside."""


class BenchScreen(Screen[None]):
    """One project open at one timber and one step."""

    BINDINGS: ClassVar[list[BindingType]] = [*bindings()]
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
                yield self._timbers
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

    def lay(self, desk: Desk) -> None:
        """Put a project on the screen and keep an eye on its files."""
        self.desk = desk
        self._show_all()
        self.set_interval(LOOK_EVERY, self.look)
        greeting = desk.greeting()
        if greeting:
            self._say(greeting, warning=True)

    def _show_all(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._timbers.show(desk.timber_rows(), desk.timber_place())
        if desk.empty:
            self._show_header()
            self._figure.show(None, "No timbers yet: add a [[timber]] to project.toml.")
            self._steps.show((), 0)
            self._words.show(())
            self._face.show(None)
            self._end.show(None)
            return
        self._show_timber()

    def _show_timber(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._step_rows = desk.step_rows(tails=self.size.width >= ROOM_FOR_FIGURES)
        self._steps.show(self._step_rows.rows, self._step_rows.row_of(desk.place))
        self._show_step()

    def _show_step(self) -> None:
        desk = self.desk
        if desk is None:
            return
        self._show_header()
        figure = desk.figure()
        headline = desk.headline()
        self._figure.show(figure, headline, warning=headline == "STOP")
        self.set_class(desk.wordy, "-no-drawing")
        self._words.show(desk.words())
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

    def _hush(self) -> None:
        self.remove_class("-notice")

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

    @on(LineList.Opened, "#steps")
    def _step_opened(self) -> None:
        desk = self.desk
        if desk is not None and not desk.empty:
            from benchmate.tui.screens.reader import ReaderScreen  # noqa: PLC0415 - paid when opened

            title = desk.walk.timber.name
            self.app.push_screen(ReaderScreen(title, desk.words(whole=True), self._glyphs))

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

    def action_tick(self) -> None:
        """Tick the step and go on to the next open one."""
        self._do(lambda desk: desk.tick())

    def action_untick(self) -> None:
        """Take the step's tick off."""
        self._do(lambda desk: desk.untick())

    def action_undo(self) -> None:
        """Take the last action back."""
        self._do(lambda desk: desk.undo())

    def action_next(self) -> None:
        """Go to the next open step."""
        self._do(lambda desk: desk.next_open())

    def action_back(self) -> None:
        """Go back to where one was before finding something."""
        self._do(lambda desk: desk.back())

    def action_face(self) -> None:
        """Turn the drawing to the step's next face."""
        self._do(lambda desk: desk.turn())

    def action_swap(self) -> None:
        """Swap which reading comes first."""
        self._do(lambda desk: desk.swap())

    def action_take_over(self) -> None:
        """Become the one that keeps this project."""
        self._do(lambda desk: desk.take_over())

    def _do(self, action: Callable[[Desk], Outcome]) -> None:
        """Do something at the desk, show how things stand, and say what there is to say."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        self._hush()
        outcome = action(desk)
        self._show_all()
        if outcome.words:
            self._say(outcome.words, warning=outcome.failed)

    def action_measure(self) -> None:
        """Type what the stick or the tenon really measures."""
        desk = self.desk
        if desk is None or desk.empty:
            return
        from benchmate.tui.screens.sizes import SizesScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(SizesScreen(desk.sizes_form(), self._glyphs), self._sizes_typed)

    def _sizes_typed(self, sizes: Sizes | None) -> None:
        if sizes is not None:
            self._do(lambda desk: desk.set_sizes(sizes))

    def action_find(self) -> None:
        """Look something up."""
        desk = self.desk
        if desk is None:
            return
        from benchmate.tui.screens.find import FindScreen  # noqa: PLC0415 - paid when opened

        self._hush()
        self.app.push_screen(
            FindScreen(desk.index(), desk.bench.project.tape, self._glyphs), self._found
        )

    def _found(self, hit: Hit | None) -> None:
        desk = self.desk
        if desk is not None and hit is not None and hit.timber:
            desk.go_to(hit.timber, hit.step)
            self._show_steps()
            self._show_all()

    def action_help(self) -> None:
        """Show the keys and the words."""
        from benchmate.tui.help_text import help_sayings  # noqa: PLC0415 - paid when opened
        from benchmate.tui.screens.reader import ReaderScreen  # noqa: PLC0415

        self.app.push_screen(ReaderScreen("Help", help_sayings(self._glyphs), self._glyphs))

    def action_quit(self) -> None:
        """Leave; everything is already kept."""
        self.app.exit()

    def look(self) -> None:
        """Notice changes made outside; nothing is painted when there are none."""
        desk = self.desk
        if desk is None or self.app.screen is not self:
            # What is being typed over the bench stays about the timber it was opened on.
            return
        outcome = desk.look()
        if outcome is not None:
            self._show_all()
            self._say(outcome.words, warning=outcome.failed)
