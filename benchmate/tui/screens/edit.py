"""Editing the project by a form: the fields, what can be picked, and what it would do to marks."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar, NamedTuple

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part, note_of
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.rows import Row
from benchmate.tui.screens.asking import AskingScreen

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult
    from textual.timer import Timer

    from benchmate.tui.edit_form import EditForm, Weighed
    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.outcome import Outcome
    from benchmate.workbench.forms.form import OpenEnd
    from benchmate.workbench.project_edits import Edit

PAUSE = 0.2
"""Seconds without a key before what is typed is weighed: a burst of keys is weighed once."""

AGAIN = "Escape again leaves; what was typed here is then dropped."


class Answer(NamedTuple):
    """What came of a form: what keeping it had to tell, or the edit whose joints come next."""

    outcome: Outcome | None = None
    edit: Edit | None = None
    then: tuple[OpenEnd, ...] = ()


class EditScreen(AskingScreen["Answer | None"]):
    """One form over the bench. Gives what came of it, or None where nothing was kept.

    `keep` keeps an edit; where it fails what was typed stays, to be tried again.
    """

    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (110, "-wide")]  # noqa: RUF012 - declared so by Textual
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall")]  # noqa: RUF012 - as above

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("down", "step(1)", "Next field", show=False),
        Binding("up", "step(-1)", "Field before", show=False),
        Binding("tab", "pick", "Put in", show=False, priority=True),
        Binding("enter", "accept", "Keep", show=False),
        Binding("pageup", "scroll(-1)", "Effects up", show=False),
        Binding("pagedown", "scroll(1)", "Effects down", show=False),
    ]

    def __init__(self, form: EditForm, keep: Callable[[Edit], Outcome], glyphs: Glyphs) -> None:
        super().__init__()
        self._form = form
        self._keep = keep
        self._header = HeaderLine(glyphs=glyphs, id="edit-title")
        self._fields = LineList(
            on_move=self._moved,
            glyphs=glyphs,
            empty="nothing to fill in",
            rows=form.rows(),
            cursor=form.row,
            id="edit-fields",
        )
        self._about = HeaderLine(glyphs=glyphs, id="edit-about")
        self._input = Input(compact=True, id="edit-text")
        self._help = EffectPane(glyphs=glyphs, id="edit-help")
        self._picks = LineList(on_move=self._picked, glyphs=glyphs, empty="", id="edit-picks")
        self._effect = EffectPane(glyphs=glyphs, id="edit-effect")
        self._footer = FooterLine(id="edit-footer")
        self._weighed: Weighed | None = None
        self._wait: Timer | None = None
        self._leaving = False

    def compose(self) -> ComposeResult:
        """Title, fields, the one in hand with its help and words, what it would do, keys."""
        with Vertical(id="edit"):
            yield self._header
            with Horizontal(id="edit-body"):
                yield self._fields
                with Vertical(id="edit-side"):
                    yield self._about
                    yield self._input
                    yield self._help
                    yield self._picks
                    yield self._effect
            yield self._footer

    def on_mount(self) -> None:
        """Start in the field to start in."""
        self._picks.can_focus = self._fields.can_focus = False
        blocked = self._form.form.blocked
        flag = (Part(text=" READ ONLY ", warning=True),) if blocked else ()
        note = note_of(self._form.bare_words)
        self._header.show((Part(text=f" {self._form.title} ", strong=True),), (*note, *flag))
        keys = (
            Hint(key="enter", label="keep", action="accept"),
            Hint(key="arrows", label="fields", action="step(1)"),
            Hint(key="tab", label="put in the first word", action="pick"),
            Hint(key="page down", label="see more", action="scroll(1)"),
        )
        self._footer.show(
            () if blocked else keys, (Hint(key="esc ctrl+g", label="leave", action="leave"),)
        )
        self._input.disabled = bool(blocked) or self._form.blank is None
        if not self._input.disabled:
            self._input.focus()
        self._take_up()
        if blocked:
            self._effect.tell((blocked,))
        else:
            self._weigh()

    def _take_up(self) -> None:
        """Go to the field in hand."""
        form = self._form
        label = form.blank.label if form.blank else ""
        self._about.show((Part(text=f" {label} ", strong=True),) if label else ())
        self._input.value = form.text
        self._input.cursor_position = len(form.text)
        self._beside()

    def _beside(self) -> None:
        """What stands beside the field in hand: help, what is usual, words to pick."""
        form = self._form
        self._input.placeholder = form.faint()
        self._help.tell(form.help())
        self._picks.show(tuple(Row(text=word) for word in form.picks()), 0)

    def _moved(self, row: int) -> None:
        self._form.row = row
        self._take_up()

    def _picked(self, row: int) -> None:
        """A word was clicked."""
        word = self._picks.rows[row].text
        self._put(self._form.pick(word))

    @on(LineList.Opened, "#edit-picks")
    def _opened(self) -> None:
        self._put(self._form.pick(self._picks.rows[self._picks.cursor or 0].text))

    def _put(self, text: str) -> None:
        self._input.value = text
        self._input.cursor_position = len(text)

    @on(Input.Changed)
    def _changed(self, event: Input.Changed) -> None:
        """What was shown is out of date; it is worked out anew once the keys pause."""
        if self._input.disabled or event.value == self._form.text:
            return
        self._form.type(event.value)
        self._leaving = False
        self._show_fields()
        self._beside()
        self._weighed = None
        if self._wait is not None:
            self._wait.stop()
        self._wait = self.set_timer(PAUSE, self._weigh)

    def _show_fields(self) -> None:
        wrong = self._weighed.wrong if self._weighed else ()
        self._fields.show(self._form.rows(wrong), self._form.row)

    def _weigh(self) -> None:
        """Show what the fields would do, unless that is shown already."""
        if self._weighed is None and not self._form.form.blocked:
            self._weighed = self._form.weigh()
            self._effect.tell(self._weighed.lines, self._weighed.excerpt)
            self._show_fields()

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_accept()

    def action_step(self, lines: int) -> None:
        """Go to another field."""
        self._fields.action_step(lines)

    def action_pick(self) -> None:
        """Put the first word to be picked in the field."""
        if not self._input.disabled:
            self._put(self._form.pick())

    def action_accept(self) -> None:
        """Keep what was typed, if its effect has been shown."""
        weighed = self._weighed
        if weighed is None:
            self._weigh()
        elif weighed.same:
            self.dismiss(None)
        elif weighed.then:
            self.dismiss(Answer(edit=weighed.edit, then=weighed.then))
        elif weighed.edit is not None:
            self._accept(weighed.edit)
        else:
            self._to_wrong(weighed)

    def _to_wrong(self, weighed: Weighed) -> None:
        """Go to the first field that is wrong or must be filled."""
        row = self._form.row_of(weighed.wrong)
        if row is not None and row != self._form.row:
            self._fields.cursor = row
            self._moved(row)

    def _accept(self, edit: Edit) -> None:
        """Keep the edit and leave; one that could not be kept stays, and says why."""
        outcome = self._keep(edit)
        if outcome.failed:
            self._weighed = None
            self._effect.tell((outcome.words,))
        else:
            self.dismiss(Answer(outcome=outcome))

    def action_leave(self) -> None:
        """Leave; what was typed is dropped only when that was said."""
        if self._form.changed and not self._leaving:
            self._leaving = True
            self._effect.tell((AGAIN, *(self._weighed.lines if self._weighed else ())))
        else:
            self.dismiss(None)

    def action_scroll(self, pages: int) -> None:
        """Page through the effect without leaving the field."""
        self._effect.action_page(pages)
