"""Typing a note or a blemish: the fields, and what they come to, before anything is kept."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.panes.label import PlainLabel
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.screens.pad_field import PAD_HINT, PAD_KEY, open_pad

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.jot_form import Jot, Jotted
    from benchmate.tui.notes_list import JotForm
    from benchmate.tui.outcome import Outcome
    from benchmate.tui.pad import Pad

AGAIN = "CHECK: nothing is kept yet. Escape again leaves; what was typed here is then dropped."


class JotScreen(AskingScreen["Outcome | None"]):
    """One short form. Gives what keeping it had to tell, or None for nothing.

    Where `keep` fails what was typed stays, to be tried again.
    """

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
        Binding("down", "app.focus_next", "Next field", show=False),
        Binding("up", "app.focus_previous", "Field before", show=False),
        Binding("pageup", "scroll(-1)", "Up", show=False),
        Binding("pagedown", "scroll(1)", "Down", show=False),
        PAD_KEY,
    ]

    def __init__(
        self,
        form: JotForm,
        keep: Callable[[Jot], Outcome],
        pad: Callable[[], Pad],
        glyphs: Glyphs,
    ) -> None:
        super().__init__()
        self._form = form
        self._keep = keep
        self._pad = pad
        self._glyphs = glyphs
        self._header = HeaderLine(glyphs=glyphs, id="jot-title")
        self._effect = EffectPane(glyphs=glyphs, id="jot-effect")
        self._footer = FooterLine(id="jot-footer")
        self._leaving = False

    def compose(self) -> ComposeResult:
        """Title, fields, what they come to, keys."""
        with Vertical(id="jot"):
            yield self._header
            for blank in self._form.blanks:
                with Horizontal(classes="field"):
                    yield PlainLabel(blank.label, classes="field-label")
                    yield Input(
                        value=blank.text,
                        placeholder=blank.faint,
                        compact=True,
                        name=blank.label,
                        id=f"jot-{blank.key}",
                    )
            yield self._effect
            yield self._footer

    def on_mount(self) -> None:
        """Start in the first field that is empty."""
        self._header.show((Part(text=f" {self._form.title} ", strong=True),))
        self._footer.show(
            (
                Hint(key="enter", label="keep", action="accept"),
                Hint(key="tab", label="next field", action="app.focus_next"),
                PAD_HINT,
            ),
            (Hint(key="esc ctrl+g", label="leave", action="leave"),),
        )
        first = next(blank.key for blank in self._form.blanks if not blank.text)
        self._field(first).focus()
        self._weigh()

    def _field(self, key: str) -> Input:
        return self.query_one(f"#jot-{key}", Input)

    def _texts(self) -> dict[str, str]:
        return {blank.key: self._field(blank.key).value for blank in self._form.blanks}

    def _weigh(self) -> Jotted:
        """Show what the fields come to so far."""
        read = self._form.read(self._texts())
        self._effect.tell(read.lines, read.excerpt)
        return read

    @on(Input.Changed)
    def _changed(self) -> None:
        self._leaving = False
        self._weigh()

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_accept()

    def action_accept(self) -> None:
        """Keep what was typed; go to the first field that is wrong or empty where there is one."""
        read = self._weigh()
        if read.jot is None:
            self._field(read.field).focus()
            return
        outcome = self._keep(read.jot)
        if outcome.failed:
            self._effect.tell((f"CHECK: {outcome.words}", *read.lines))
        else:
            self.dismiss(outcome)

    def action_leave(self) -> None:
        """Leave; what was typed is dropped only when that was said."""
        typed = any(self._field(each.key).value != each.text for each in self._form.blanks)
        if typed and not self._leaving:
            self._leaving = True
            self._effect.tell((AGAIN,))
        else:
            self.dismiss(None)

    def action_scroll(self, pages: int) -> None:
        """Page through what is told without leaving the field."""
        self._effect.action_page(pages)

    def action_pad(self) -> None:
        """Reckon with what is in the field, if that is a length."""
        field = self.focused
        if isinstance(field, Input) and field.id not in ("jot-text", "jot-face"):
            open_pad(self._pad(), field, field.name or "", self._glyphs)
