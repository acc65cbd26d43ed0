"""A page of fields: one line is typed in at a time, the list shows them all.

1. Text is typed in the field under the list; left, right and space turn a choice.
2. Nothing is written before the last line is entered, and not while an answer cannot be.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from benchmate.tui.fields_form import FOLDER, MAKE
from benchmate.tui.line_input import LineInput
from benchmate.tui.line_list import LineList
from benchmate.tui.lines import FooterLine, HeaderLine, Hint, Part
from benchmate.tui.panes.words_pane import WordsPane
from benchmate.tui.rows import onward
from benchmate.tui.screens.asking import AskingScreen
from benchmate.tui.words import Saying
from benchmate.workbench.new_project import NotMadeError

if TYPE_CHECKING:
    from pathlib import Path

    from textual.app import ComposeResult
    from textual.widget import Widget

    from benchmate.tui.fields_form import Field, FieldsForm
    from benchmate.tui.glyphs import Glyphs

AGAIN = "Nothing is made yet, and what you typed would be lost. Esc once more leaves all the same."


KEYS: dict[str, tuple[str, *tuple[int, ...]]] = {
    "down": ("step", 1),
    "tab": ("step", 1),
    "up": ("step", -1),
    "shift+tab": ("step", -1),
    "pagedown": ("group", 1),
    "pageup": ("group", -1),
    "enter": ("enter",),
    "ctrl+s": ("to_make",),
}
"""What each key does on any line."""

TURNS: dict[str, tuple[str, *tuple[int, ...]]] = {
    "right": ("choose", 1),
    "space": ("choose", 1),
    "left": ("choose", -1),
}
"""What each key does on a choice."""


class _Lines(LineList, can_focus=False):
    """The lines; the keys are the field's."""


class FieldsScreen(AskingScreen["Path | None"]):
    """A project from a page of fields. Gives its folder, or None for none."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,ctrl+g", "leave", "Leave", show=False),
    ]
    HORIZONTAL_BREAKPOINTS = [  # noqa: RUF012 - declared so by Textual
        (0, "-narrow"),
        (100, "-normal"),
        (140, "-wide"),
    ]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (30, "-tall")]  # noqa: RUF012 - as above

    def __init__(self, form: FieldsForm, glyphs: Glyphs) -> None:
        super().__init__()
        self._form = form
        self._leaving = False
        self._said: tuple[Saying, ...] = ()
        self._header = HeaderLine(glyphs=glyphs, id="fields-title")
        self._editing = form.field(1).id
        self._list = _Lines(
            on_move=self._moved, glyphs=glyphs, empty="", rows=form.rows, cursor=1, id="fields-list"
        )
        self._label = HeaderLine(glyphs=glyphs, id="fields-label")
        self._input = LineInput(self._offered, id="fields-text")
        self._words = WordsPane(glyphs=glyphs, opens=False, id="fields-words")
        self._footer = FooterLine(id="fields-footer")

    def compose(self) -> ComposeResult:
        """Title, the lines and what is beside them, the line in hand, its words, keys."""
        with Vertical(id="fields"):
            yield self._header
            with Horizontal(id="fields-body"):
                yield self._list
                yield from self.beside()
            yield self._label
            yield self._input
            yield self._words
            yield self._footer

    def beside(self) -> tuple[Widget, ...]:
        """What stands beside the lines."""
        return ()

    def on_mount(self) -> None:
        """Start at the first line."""
        self._take()

    @property
    def _field(self) -> Field:
        return self._form.field(self._list.cursor)

    def _offered(self, key: str) -> bool:
        """Do what a key does on this page; left, right and space are for a text where one is."""
        action = KEYS.get(key) or (TURNS.get(key) if self._field.choices else None)
        if action is None:
            return False
        name, *steps = action
        getattr(self, f"action_{name}")(*steps)
        return True

    def _flush(self) -> None:
        """Take in what stands in the field: its own message may come later than the next key."""
        field = self._form.field(self._form.row_of(self._editing))
        if self._input.typing and self._input.value != field.text:
            self._form.write(field.id, self._input.value)
            self._renewed()

    def _moved(self, row: int) -> None:
        """A click, or a step, on another line."""
        self._go(row)

    def _go(self, row: int) -> None:
        """Take up a line, once the one in hand is taken in."""
        held = self._form.field(row).id
        self._flush()
        self._list.cursor = self._form.row_of(held)
        self._take()

    def _take(self) -> None:
        """Take up the line under the cursor."""
        field = self._field
        typing = not field.choices and field.id != MAKE
        self._leaving, self._said, self._editing = False, (), field.id
        self._input.take(field.text if typing else "", typing=typing)
        self._input.focus()
        self._show()

    def _show(self) -> None:
        """Show how things stand; what has just been said stands before the rest."""
        field = self._field
        self._header.show((Part(text=f" {self._form.title} ", strong=True),), self._flags())
        self._label.show((Part(text=f" {_label(field)} ", strong=True),))
        self._words.show((*self._said, *self._form.words(field)))
        self._footer.show(self._hints(field), (Hint(key="esc", label="leave", action="leave"),))

    def _flags(self) -> tuple[Part, ...]:
        """What stands at the right of the title."""
        return ()

    def _say(self, words: str) -> None:
        """Say something that stands until the next line or letter."""
        self._said = (Saying(label="", text=words, warning=True),)
        self._show()

    @on(Input.Changed)
    def _changed(self) -> None:
        self._flush()

    def _renewed(self) -> None:
        """What is typed has changed: the lines are shown anew, the one in hand held on to."""
        self._list.show(self._form.rows, self._form.row_of(self._editing))
        self._leaving, self._said = False, ()
        self._show()

    @on(LineList.Opened, "#fields-list")
    def _opened(self) -> None:
        self.action_enter()

    def action_step(self, lines: int) -> None:
        """Go on by so many lines."""
        self._go(onward(self._form.rows, self._list.cursor or 0, lines))

    def action_group(self, groups: int) -> None:
        """Go on to another group."""
        self._go(self._form.group_from(self._list.cursor or 0, groups))

    def action_to_make(self) -> None:
        """Go to the last line."""
        self._go(self._form.row_of(MAKE))

    def action_choose(self, step: int) -> None:
        """Turn the choice in hand."""
        self._form.choose(self._field, step)
        self._renewed()

    def action_enter(self) -> None:
        """Go on to the next line; from the last one make the project."""
        wrong = self._form.wrong
        if self._field.id != MAKE:
            self.action_step(1)
        elif wrong is not None:
            self._go(self._form.row_of(wrong.id))
        elif self.ready():
            self._make()

    def ready(self) -> bool:
        """Whether it may be made now; where not, it has been said why."""
        return True

    def _make(self) -> None:
        try:
            folder: Path = self._form.finish()
        except NotMadeError as error:
            self._go(self._form.row_of(FOLDER))
            self._say(f"Not made: {error}")
            return
        self.dismiss(folder)

    def action_leave(self) -> None:
        """Make nothing; asked for twice where something is typed."""
        self._flush()
        if self._form.typed and not self._leaving:
            self._say(AGAIN)
            self._leaving = True
            return
        self.dismiss(None)

    def _hints(self, field: Field) -> tuple[Hint, ...]:
        """The keys of the line in hand."""
        enter = "make it" if field.id == MAKE else "next line"
        choose = Hint(key="left right", label="choose", action="choose(1)")
        return (
            Hint(key="enter", label=enter, action="enter"),
            *((choose,) if field.choices else ()),
            Hint(key="page down", label="next group", action="group(1)"),
            Hint(key="ctrl+s", label="to the end", action="to_make"),
        )


def _label(field: Field) -> str:
    if not field.choices:
        return field.label
    place = field.choices.index(field.text) + 1
    return f"{field.label}: {field.text}   ({place} of {len(field.choices)}: left, right)"
