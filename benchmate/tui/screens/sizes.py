"""Typing real sizes: the fields, and what they would move, before anything is accepted."""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part, note_of
from benchmate.tui.panes.effect_pane import EffectPane
from benchmate.tui.panes.label import PlainLabel
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.screens.pad_field import PAD_HINT, PAD_KEY, open_pad
from benchmate.workbench.actions import Sizes

if TYPE_CHECKING:
    from collections.abc import Callable

    from textual.app import ComposeResult

    from benchmate.tui.glyphs import Glyphs
    from benchmate.tui.pad import Pad
    from benchmate.tui.sizes_form import SizesForm, Typed


class SizesScreen(AskingScreen[Sizes | None]):
    """The real sizes at one place. Gives the sizes typed, or None if nothing is to change."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave as it was", show=False),
        Binding("down", "app.focus_next", "Next field", show=False),
        Binding("up", "app.focus_previous", "Field before", show=False),
        Binding("pageup", "scroll(-1)", "Effects up", show=False),
        Binding("pagedown", "scroll(1)", "Effects down", show=False),
        PAD_KEY,
    ]

    def __init__(self, form: SizesForm, pad: Callable[[], Pad], glyphs: Glyphs) -> None:
        super().__init__()
        self._form = form
        self._pad = pad
        self._glyphs = glyphs
        self._header = HeaderLine(glyphs=glyphs, id="sizes-title")
        self._effect = EffectPane(glyphs=glyphs, id="sizes-effect")
        self._footer = FooterLine(id="sizes-footer")
        self._typed: Typed | None = None

    def compose(self) -> ComposeResult:
        """Title, fields, effect, keys."""
        with Vertical(id="sizes"):
            yield self._header
            for blank in self._form.blanks():
                drawn = self._form.drawn_text(blank)
                with Horizontal(classes="field"):
                    yield PlainLabel(f"{blank.label}, drawn {drawn}", classes="field-label")
                    yield Input(
                        value=blank.text,
                        placeholder="as drawn",
                        compact=True,
                        name=blank.label,
                        id=f"size-{blank.id}",
                    )
            yield self._effect
            yield self._footer

    def on_mount(self) -> None:
        """Start in the field the step asks for."""
        self._header.show(
            (Part(text=f" {self._form.title} ", strong=True),), note_of(self._form.bare_words)
        )
        self._footer.show(
            (
                Hint(key="enter", label="accept", action="accept"),
                Hint(key="tab", label="next field", action="app.focus_next"),
                PAD_HINT,
            ),
            (Hint(key="esc ctrl+g", label="leave as it was", action="leave"),),
        )
        self.query_one(f"#size-{self._form.first}", Input).focus()
        self._weigh()

    @on(Input.Changed)
    def _changed(self) -> None:
        self._weigh()

    @on(Input.Submitted)
    def _submitted(self) -> None:
        self.action_accept()

    def action_accept(self) -> None:
        """Keep the sizes, if they can be read; with nothing changed, just leave."""
        typed = self._read()
        if typed.sizes is None:
            self.query_one(f"#size-{typed.field}", Input).focus()
            return
        self.dismiss(typed.sizes if typed.changed else None)

    def action_leave(self) -> None:
        """Change nothing."""
        self.dismiss(None)

    def action_scroll(self, pages: int) -> None:
        """Page through the effect without leaving the field."""
        self._effect.action_page(pages)

    def action_pad(self) -> None:
        """Reckon with what is in the field."""
        field = self.focused
        if isinstance(field, Input):
            open_pad(self._pad(), field, field.name or "", self._glyphs)

    def _read(self) -> Typed:
        fields = self.query(Input)
        return self._form.read(
            {(field.id or "").removeprefix("size-"): field.value for field in fields}
        )

    def _weigh(self) -> None:
        """Show what the sizes typed so far would do."""
        typed = self._read()
        if typed != self._typed:
            self._typed = typed
            self._effect.tell(self._effect_of(typed), typed.excerpt)

    def _effect_of(self, typed: Typed) -> tuple[str, ...]:
        if typed.sizes is None:
            return (typed.problem,)
        if not typed.changed:
            return ("Type a size; what it moves shows here before it is accepted.",)
        return self._form.effect(typed.sizes)
