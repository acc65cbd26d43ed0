"""A page of fields to fill in: its rows, what is typed in them, what to say of each.

No widget is touched here: the fields screen shows what the form says.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

from benchmate.tui.rows import Row
from benchmate.tui.words import Saying
from benchmate.workbench.new_project import free_folder, why_not

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

FOLDER = "folder"
"""The field that asks for the project's folder."""

MAKE = "make"
"""The last line, which makes the project."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Field:
    """One line to answer: its label, its text, its choices if it has any, and what is wrong.

    `shows` is the timber to look at meanwhile. `typed` says that it is no longer as suggested.
    """

    id: str
    label: str
    text: str = ""
    choices: tuple[str, ...] = ()
    about: str = ""
    source: str = ""
    wrong: str = ""
    shows: str = ""
    typed: bool = False


class FieldGroup(NamedTuple):
    """Fields under one heading."""

    title: str
    fields: tuple[Field, ...]


class FieldsForm(ABC):
    """What is typed so far, on a page that ends in a project made in a folder of `place`.

    A form gives its `groups`, its `name` and how it is finished; the folder's field and the last
    line are the same on every page.
    """

    title = ""
    last = ""

    def __init__(self, place: Path) -> None:
        self.place = place
        self.typed: dict[str, str] = {}
        self._read()

    @abstractmethod
    def groups(self) -> tuple[FieldGroup, ...]:
        """The fields as they stand, but for the folder."""

    @abstractmethod
    def name(self) -> str:
        """What the project is called so far."""

    @abstractmethod
    def finish(self) -> Path:
        """Make the project and give its folder. Raises NotMadeError."""

    @abstractmethod
    def final_words(self) -> tuple[Saying, ...]:
        """What to say at the last line."""

    @property
    def folder(self) -> str:
        """The folder's name: as typed, or after the project's."""
        return self.typed.get(FOLDER) or free_folder(self.place, self.name())

    def _read(self) -> None:
        """Take in what is typed."""
        self.lines = tuple(self._lines())
        self.rows = tuple(row for row, _ in self.lines)

    def _lines(self) -> Iterator[tuple[Row, Field | None]]:
        """Every row and the field it stands for; None for a heading."""
        for group in (*self.groups(), FieldGroup("Where it goes", (self._folder_field(),))):
            yield Row(text=group.title, heading=True), None
            yield from ((_row(field), field) for field in group.fields)
        yield Row(text=self.last, bold=True), Field(id=MAKE, label=self.last)

    def _folder_field(self) -> Field:
        return Field(
            id=FOLDER,
            label="Folder",
            text=self.folder,
            about=f"Made in {self.place}.",
            wrong=_ended(why_not(self.place, self.folder)),
            typed=FOLDER in self.typed,
        )

    def field(self, row: int | None) -> Field:
        """The field of a row; the last line for none."""
        found = None if row is None or row >= len(self.lines) else self.lines[row][1]
        return found or Field(id=MAKE, label=self.last)

    def row_of(self, field: str) -> int:
        """The row of a field by its id; the last one for a field that is not asked now."""
        places = (at for at, (_, each) in enumerate(self.lines) if each and each.id == field)
        return next(places, len(self.lines) - 1)

    def group_from(self, row: int, groups: int) -> int:
        """The first row of a group so many further on; back, of the row's own group first."""
        heads = [at for at, (_, field) in enumerate(self.lines) if field is None]
        here = max((at for at, place in enumerate(heads) if place < row), default=0)
        back = 0 if groups > 0 or row == heads[here] + 1 else 1
        return heads[min(max(here + groups + back, 0), len(heads) - 1)] + 1

    def may_be_empty(self, field: str) -> bool:  # noqa: ARG002 - which fields is each form's own
        """Whether nothing typed stands for nothing, and not for the suggestion."""
        return False

    def write(self, field: str, text: str) -> None:
        """Type a text; an empty one takes up the suggestion again, where one is needed."""
        if text.strip() or self.may_be_empty(field):
            self.typed[field] = text
        else:
            self.typed.pop(field, None)
        self._read()

    def choose(self, field: Field, step: int) -> None:
        """Take the next of a field's choices, round and round."""
        place = field.choices.index(field.text) + step
        self.write(field.id, field.choices[place % len(field.choices)])

    @property
    def wrong(self) -> Field | None:
        """The first field whose answer cannot be."""
        return next((each for _, each in self.lines if each and each.wrong), None)

    def words(self, field: Field) -> tuple[Saying, ...]:
        """What to say at a field: what is wrong first, then what it is and where it comes from."""
        said = [Saying(label="", text=field.wrong, warning=True)] if field.wrong else []
        wrong = self.wrong
        if wrong is not None and wrong.id != field.id:
            told = f"{wrong.label}: {wrong.wrong}"
            said.append(Saying(label="", text=told, warning=True))
        if field.id == MAKE:
            return (*said, *self.final_words())
        texts = filter(None, (field.about, field.source))
        return (*said, *(Saying(label="", text=text) for text in texts))


def _row(field: Field) -> Row:
    lead = "!" if field.wrong else "*" if field.typed else " "
    return Row(text=field.label, lead=lead, tail=field.text, bold=bool(field.wrong))


def _ended(text: str) -> str:
    return f"{text}." if text else ""
