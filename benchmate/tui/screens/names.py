"""Changing a name of the project: pick it, type what it is to be, see what moves, accept."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.widgets import Input

from benchmate.measure.section import Section
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part, note_of
from benchmate.tui.names_form import TITLE
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.screens.pad_field import PAD_HINT, PAD_KEY, open_pad

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.names_form import NamesForm, Weighed
    from benchmate.tui.outcome import Outcome
    from benchmate.tui.pad import Pad
    from benchmate.workbench.names import Named, NewText

HOW = "Enter changes the name under the cursor; what that would move shows before it is accepted."


class NamesScreen(AskingScreen["Outcome | None"]):
    """The names of a project. Gives what keeping a change had to tell, or None for no change.

    `keep` writes a name otherwise; where it fails the text stays in its field, to be tried again.
    """

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("q", "close", "Close", show=False),
        Binding("pageup", "scroll(-1)", "Effects up", show=False),
        Binding("pagedown", "scroll(1)", "Effects down", show=False),
        PAD_KEY,
    ]

    def __init__(
        self,
        form: NamesForm,
        keep: Callable[[NewText], Outcome],
        pad: Callable[[], Pad],
        glyphs: Glyphs,
    ) -> None:
        super().__init__()
        self._form = form
        self._keep = keep
        self._pad = pad
        self._glyphs = glyphs
        self._header = HeaderLine(glyphs=glyphs, id="names-title")
        self._list = LineList(
            on_move=self._moved,
            glyphs=glyphs,
            empty="no names yet: leave with q, and e gives some under the project",
            rows=form.rows,
            id="names-list",
        )
        self._about = HeaderLine(glyphs=glyphs, id="names-about")
        self._input = Input(compact=True, id="names-text")
        self._effect = EffectPane(glyphs=glyphs, id="names-effect")
        self._footer = FooterLine(id="names-footer")
        self._typing: Named | None = None
        self._weighed: Weighed | None = None

    def compose(self) -> ComposeResult:
        """Title, names, the field, what it would do, keys."""
        with Vertical(id="names"):
            yield self._header
            yield self._list
            yield self._about
            yield self._input
            yield self._effect
            yield self._footer

    def on_mount(self) -> None:
        """Start among the names."""
        flag = (Part(text=" READ ONLY ", warning=True),) if self._form.blocked else ()
        note = note_of(self._form.bare_words)
        self._header.show((Part(text=f" {TITLE} ", strong=True),), (*note, *flag))
        self._choose()

    def _choose(self) -> None:
        """Go among the names."""
        self._typing, self._weighed = None, None
        self._input.disabled = True
        self._input.value = ""
        self._about.show(())
        self._effect.tell((self._form.blocked or HOW,))
        change = () if self._form.blocked else (Hint(key="enter", label="change", action="type"),)
        self._footer.show(
            (*change, Hint(key="arrows", label="move", action="app.focused.step(1)")),
            (Hint(key="q", label="close", action="close"),),
        )
        self._list.focus()

    def _type(self, named: Named) -> None:
        """Go to the field of one name."""
        self._typing, self._weighed = named, None
        self._about.show((Part(text=f" {self._form.about(named)} ", strong=True),))
        self._input.disabled = False
        self._input.value = named.written
        self._footer.show(
            (
                Hint(key="enter", label="accept", action="accept"),
                PAD_HINT,
                Hint(key="page down", label="see more", action="scroll(1)"),
            ),
            (Hint(key="esc ctrl+g", label="leave as it was", action="leave"),),
        )
        self._input.focus()
        self._weigh()

    def _moved(self, _row: int) -> None:
        """Another row was clicked while one was being typed."""
        if self._typing is not None:
            self._choose()

    @on(LineList.Opened, "#names-list")
    def _opened(self) -> None:
        self.action_type()

    @on(Input.Changed)
    def _changed(self) -> None:
        """What was shown is out of date; the key is painted before the effect is worked out."""
        self._weighed = None
        self.call_after_refresh(self._weigh)

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_accept()

    def _weigh(self) -> None:
        """Show what the text would do, unless that is shown already."""
        if self._typing is not None and self._weighed is None:
            self._weighed = self._form.weigh(self._typing, self._input.value)
            self._effect.tell(self._weighed.lines, self._weighed.excerpt)

    def action_type(self) -> None:
        """Change the name under the cursor."""
        named = self._form.named(self._list.cursor)
        if named is not None and not self._form.blocked:
            self._type(named)

    def action_accept(self) -> None:
        """Accept the text, if its effect has been shown; with nothing changed, just go back."""
        if self._weighed is None:
            self._weigh()
        elif self._weighed.new is not None:
            if self._weighed.changed:
                self._accept(self._weighed.new)
            else:
                self._choose()

    def _accept(self, new: NewText) -> None:
        """Keep the text and leave; one that could not be kept stays, and says why."""
        outcome = self._keep(new)
        if outcome.failed:
            self._weighed = None
            self._effect.tell((outcome.words,))
        else:
            self.dismiss(outcome)

    def action_pad(self) -> None:
        """Reckon with what is in the field, if one is being typed."""
        named = self._typing
        if named is not None:
            pad, section = self._pad(), isinstance(named.worth, Section)
            open_pad(pad, self._input, named.name, self._glyphs, section=section)

    def action_leave(self) -> None:
        """Leave the field as it was; from among the names, leave the screen."""
        if self._typing is None:
            self.dismiss(None)
        else:
            self._choose()

    def action_close(self) -> None:
        """Change nothing."""
        self.dismiss(None)

    def action_scroll(self, pages: int) -> None:
        """Page through the effect without leaving the field."""
        self._effect.action_page(pages)
