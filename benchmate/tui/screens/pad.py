"""The calculator: a line to type in, the result in big digits, the tape of the last results."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.widgets import Input

from benchmate.measure.length import Length
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.pad import Worked
from benchmate.tui.panes.figure_pane import FigurePane
from benchmate.tui.panes.told_pane import ToldPane
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.pad import Pad


class PadScreen(AskingScreen[Length | None]):
    """Works a line out as it is typed. Gives the result for the field it was opened from, or None.

    `start` is what the line begins with; `field` is what that field is for, empty over the bench,
    where enter puts the result on the tape instead.
    """

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("down", "step(1)", "Down the tape", show=False, priority=True),
        Binding("up", "step(-1)", "Up the tape", show=False, priority=True),
        # Ahead of the line, whose own message could come after the keys of the next line.
        Binding("enter", "accept", "Accept", show=False, priority=True),
        Binding("tab", "take_up", "Take up", show=False, priority=True),
        Binding("pagedown", "page(1)", "Page down", show=False, priority=True),
        Binding("pageup", "page(-1)", "Page up", show=False, priority=True),
    ]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall")]  # noqa: RUF012 - declared so by Textual

    def __init__(self, pad: Pad, glyphs: Glyphs, *, start: str = "", field: str = "") -> None:
        super().__init__()
        self._pad = pad
        self._field = field
        self._start = start
        self._worked = Worked()
        self._header = HeaderLine(glyphs=glyphs, id="pad-title")
        self._line = Input(
            value=start,
            placeholder="a sum of lengths, spaces, a diagonal, run and rise",
            compact=True,
            select_on_focus=False,
            id="pad-line",
        )
        self._figure = FigurePane(glyphs=glyphs, id="pad-figure")
        self._told = ToldPane(glyphs=glyphs, id="pad-told")
        self._tape = LineList(
            glyphs=glyphs, empty="no results kept yet", rows=pad.rows(), id="pad-tape"
        )
        self._footer = FooterLine(id="pad-footer")

    def compose(self) -> ComposeResult:
        """Title, the line, its result, what is told of it, the tape, keys."""
        with Vertical(id="pad"):
            yield self._header
            yield self._line
            yield self._figure
            yield self._told
            yield self._tape
            yield self._footer

    def on_mount(self) -> None:
        """Ready to type."""
        title = f" Calculator, for {self._field} " if self._field else " Calculator "
        self._header.show((Part(text=title, strong=True),), (Part(text=f" {self._pad.about} "),))
        enter = "give it" if self._field else "keep it"
        self._footer.show(
            (
                Hint(key="enter", label=enter, action="accept"),
                Hint(key="arrows", label="tape", action="step(1)"),
                Hint(key="tab", label="take up", action="take_up"),
                Hint(key="page down", label="see more", action="page(1)"),
            ),
            (Hint(key="esc ctrl+g", label="close", action="leave"),),
        )
        # A click on the tape must not take the keys from the line.
        self._tape.can_focus = False
        self._line.cursor_position = len(self._line.value)
        self._line.focus()
        self._work()

    @on(Input.Changed)
    def _changed(self) -> None:
        self._work()

    @on(LineList.Opened)
    def _opened(self) -> None:
        self.action_take_up()

    def _work(self) -> None:
        """Work the line out and show what comes of it."""
        self._worked = worked = self._pad.work(self._line.value)
        answer = worked.answer
        self._figure.show(self._pad.tape.show(answer.result.length) if answer else None, "")
        self.set_class(answer is None, "-no-figure")
        sayings = self._pad.sayings(worked, self._field, same=self._same)
        self._told.tell(sayings, worked.excerpt)

    @property
    def _same(self) -> bool:
        """Whether the line is what the field says already."""
        return bool(self._field) and self._line.value.strip() == self._start

    def action_accept(self) -> None:
        """Give the result to the field, if it is new; over the bench keep it and begin anew."""
        answer = self._worked.answer
        if answer is None:
            return
        self._keep()
        if self._field:
            self.dismiss(None if self._same else self._pad.given(answer))
        else:
            self._line.action_select_all()

    def _keep(self) -> None:
        """Put the result on the tape, if there is one."""
        if self._worked.answer is not None:
            self._pad.keep(self._line.value, self._worked.answer)
            self._tape.show(self._pad.rows(), 0)

    def action_step(self, lines: int) -> None:
        """Choose on the tape without leaving the line."""
        self._tape.action_step(lines)

    def action_page(self, pages: int) -> None:
        """Page through what is told."""
        self._told.action_page(pages)

    def action_take_up(self) -> None:
        """Put the chosen result where the cursor stands, in place of what is selected."""
        row = self._tape.cursor
        if row is not None:
            line = self._line
            line.replace(self._pad.taken_up(row), *sorted(line.selection))

    def action_leave(self) -> None:
        """Close; over the bench the result in sight stays on the tape."""
        if not self._field:
            self._keep()
        self.dismiss(None)
