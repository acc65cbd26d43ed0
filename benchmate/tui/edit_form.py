"""A form for the project as the screen shows it: its rows, its help, and what it would do.

No widget is touched here: the edit screen shows what this says.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.tui.ripple_words import ripple_lines
from benchmate.tui.rows import Row
from benchmate.workbench.forms.form import FormError, OpenEnd, open_ends
from benchmate.workbench.forms.picking import picks, taken
from benchmate.workbench.keeping import BadProjectError, NotKeptError

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.workbench.bench import Bench
    from benchmate.workbench.forms.form import Blank, Form
    from benchmate.workbench.project_edits import Edit

WRONG, NEEDED = "!", "*"
"""What stands before a field that is wrong, and before one that must be filled."""

NOTHING = "Nothing is changed yet. What a change moves shows here before it is kept."

MISSING = "is missing"
"""What the reader of files says of a key that a record cannot be without."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """What the fields of a form come to: lines to show, and the edit if it may be kept.

    `wrong` are the fields with something wrong in them. `then` are ends whose joints come next,
    where the edit cannot be kept before they are given, and `same` that nothing is changed.
    """

    lines: tuple[str, ...]
    excerpt: str = ""
    wrong: tuple[str, ...] = ()
    edit: Edit | None = None
    then: tuple[OpenEnd, ...] = ()
    same: bool = False


class EditForm:
    """A form with what is typed in it so far, and the field in hand."""

    def __init__(self, bench: Bench, form: Form) -> None:
        self._bench = bench
        self.form = form
        self.texts = form.texts()
        self._keys = [None if isinstance(line, str) else line.key for line in self._lines()]
        self._blanks = {blank.key: blank for blank in form.blanks}
        first = form.first or next(iter(self._blanks), "")
        self.row = self._keys.index(first) if first in self._blanks else 0

    @property
    def title(self) -> str:
        """What the form is for."""
        return self.form.title

    @property
    def bare_words(self) -> str:
        """What a number without a unit is, where the tape on the screen has others."""
        return self._bench.bare_words

    @property
    def blank(self) -> Blank | None:
        """The field in hand; None where the form has none."""
        key = self._keys[self.row] if self._keys else None
        return None if key is None else self._blanks[key]

    @property
    def text(self) -> str:
        """What stands in the field in hand."""
        return self.texts[self.blank.key] if self.blank else ""

    @property
    def changed(self) -> bool:
        """Whether anything was typed."""
        return self.texts != self.form.texts()

    def type(self, text: str) -> None:
        """Put a text in the field in hand."""
        if self.blank is not None:
            self.texts[self.blank.key] = text

    def _lines(self) -> Iterator[Blank | str]:
        for blank in self.form.blanks:
            if blank.heading:
                yield blank.heading
            yield blank

    def rows(self, wrong: tuple[str, ...] = ()) -> tuple[Row, ...]:
        """One row a field: marked where it is wrong or must be filled, with what stands in it."""
        return tuple(self._row(line, wrong) for line in self._lines())

    def _row(self, line: Blank | str, wrong: tuple[str, ...]) -> Row:
        if isinstance(line, str):
            return Row(text=line, heading=True)
        text = self.texts[line.key]
        lead = WRONG if line.key in wrong else NEEDED if line.required and not text else " "
        return Row(text=f"{line.label}: {text}" if text else line.label, lead=lead, dim=not text)

    def help(self) -> tuple[str, ...]:
        """What the field in hand is for, and what is usual for it and who says so."""
        if self.blank is None:
            return ()
        usual = self.form.usual(self.blank.key, self.texts)
        told = f"Usual, {usual.words()}." if usual else ""
        needed = "Needed. " if self.blank.required else ""
        return tuple(filter(None, (f"{needed}{self.blank.help}", told)))

    def faint(self) -> str:
        """What is usual for the field in hand, to stand faintly in it while it is empty."""
        usual = self.form.usual(self.blank.key, self.texts) if self.blank else None
        return f"{usual.text}?" if usual else ""

    def picks(self) -> tuple[str, ...]:
        """The words that can be picked for the field in hand, what is usual first."""
        if self.blank is None:
            return ()
        usual = self.form.usual(self.blank.key, self.texts)
        found = picks(self.blank, self.text, self.form.choices(self.blank.key, self.texts))
        offered = (usual.text,) if usual and not self.text.strip() else ()
        return tuple(dict.fromkeys((*offered, *found)))

    def pick(self, word: str = "") -> str:
        """The text of the field in hand with a word put in, the first to be picked if none."""
        words = (word,) if word else self.picks()
        return taken(self.blank, self.text, words[0]) if self.blank and words else self.text

    def row_of(self, keys: tuple[str, ...]) -> int | None:
        """The row of the first field among some; None where there is none."""
        return next((row for row, key in enumerate(self._keys) if key and key in keys), None)

    def weigh(self) -> Weighed:
        """What the fields would do; nothing is kept."""
        try:
            edit = self.form.edit(self.texts)
        except FormError as error:
            message, _, excerpt = str(error).partition("\n")
            words = self._told(error.key, message)
            return Weighed(lines=(words,), excerpt=excerpt, wrong=(error.key,))
        except BadProjectError as error:
            return self._bad(error, None)
        except NotKeptError as error:
            return Weighed(lines=(str(error),))
        if edit.text == self._bench.project_text():
            return Weighed(lines=(NOTHING,), same=True)
        says = (*self.form.says(self.texts), *edit.told)
        try:
            ripple = self._bench.try_project(edit.text, edit.moves, edit.base)
        except BadProjectError as error:
            return self._bad(error, edit)
        return Weighed(lines=(*says, *ripple_lines(ripple, self._bench.frame)), edit=edit)

    def _bad(self, error: BadProjectError, edit: Edit | None) -> Weighed:
        """What is wrong, that of the field in hand first; or which joints come next."""
        ends = open_ends(edit, error.problems) if edit and self.form.joints_follow else ()
        if edit and ends:
            return Weighed(lines=(*edit.told, *_still_open(ends)), edit=edit, then=ends)
        path = edit.path if edit else getattr(self.form, "path", ())
        fields = {each: self.form.field_of(each, path) for each in error.problems}
        missing = [field for each, field in fields.items() if field and each.message == MISSING]
        own = self.blank.key if self.blank else ""
        order = sorted(
            (each for each in error.problems if fields[each] not in missing),
            key=lambda each: (fields[each] != own, not fields[each]),
        )
        words = ((fields[each], each.key, f"{each.message}; {each.remedy}") for each in order)
        lines = tuple(
            dict.fromkeys(
                self._told(field, told) if field else f"{key}: {told}" for field, key, told in words
            )
        )
        needed = (f"Still to give: {self._listed(missing)}.",) if missing else ()
        shown = order[0].excerpt if order and fields[order[0]] else ""
        wrong = tuple(dict.fromkeys(field for field in fields.values() if field))
        also = edit.told if edit else ()
        carets = shown if "^" in shown else ""
        return Weighed(lines=(*lines, *needed, *also), excerpt=carets, wrong=wrong)

    def _told(self, key: str, message: str) -> str:
        blank = self._blanks.get(key)
        return f"{blank.label}: {message}" if blank else message

    def _listed(self, keys: list[str]) -> str:
        return ", ".join(self._blanks[key].label for key in dict.fromkeys(keys))


def _still_open(ends: tuple[OpenEnd, ...]) -> Iterator[str]:
    words = " and ".join(f"the {end.words} of {end.timber}" for end in ends)
    yield (
        f"Nothing says yet where {words} comes. Enter goes on to the joint there, and nothing is "
        "kept before that; or say where it comes in its own field."
    )
