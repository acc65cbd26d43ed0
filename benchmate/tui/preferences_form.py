"""The page of a framer's own settings: what is set so far, and what each setting does.

No widget is touched here. Nothing is written before `finish`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.measure.length import Length
from benchmate.model.preference import BY_ID, PREFERENCES, choices_of, fault
from benchmate.model.project import Project
from benchmate.tui.fields_form import Field, FieldGroup, FieldsForm
from benchmate.tui.looks import DARK
from benchmate.tui.rows import Row
from benchmate.tui.words import Saying
from benchmate.workbench.new_project import NotMadeError
from benchmate.workbench.preferences import NotSetError, Preferences, keep_preferences

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from benchmate.measure.printing import Shown
    from benchmate.workbench.preferences import Found

SAMPLE = Length.inches(94, 15, 16)
"""A length whose figure has all there is to show: feet, inches, a fraction."""

NO_PROJECT = Project(name="none")
"""Stands for the project where none lies on the bench yet."""


class PreferencesForm(FieldsForm):
    """The settings as found, and as they would be.

    `project` is the one they are tried on. `fixed` names what settles the colours outside them.
    """

    title = "Settings"

    def __init__(self, found: Found, project: Project = NO_PROJECT, fixed: str = "") -> None:
        self.found = found
        self._project = project
        self._fixed = fixed
        super().__init__(found.path.parent if found.path else _nowhere())
        self.typed = dict(found.preferences.texts)
        self._read()

    def groups(self) -> tuple[FieldGroup, ...]:
        """The settings under their headings."""
        titles = dict.fromkeys(each.group for each in PREFERENCES)
        return tuple(
            FieldGroup(
                title, tuple(self._field(each.id) for each in PREFERENCES if each.group == title)
            )
            for title in titles
        )

    def _lines(self) -> Iterator[tuple[Row, Field | None]]:
        for group in self.groups():
            yield Row(text=group.title, heading=True), None
            for field in group.fields:
                lead = "!" if field.wrong else "*" if field.typed else " "
                tail = field.text or BY_ID[field.id].usual
                row = Row(text=field.label, lead=lead, tail=tail, bold=bool(field.wrong))
                yield row, field

    def _field(self, key: str) -> Field:
        preference, text = BY_ID[key], self.typed.get(key, "")
        choices = choices_of(preference, self.typed.get("units", ""))
        if choices and preference.usual not in choices:
            choices = (preference.usual, *choices)
        wrong = fault(preference, text.strip(), self.typed.get("units", "")) if text else ("", "")
        return Field(
            id=key,
            label=preference.label,
            text=text or (preference.usual if choices else ""),
            choices=choices,
            about=preference.help,
            source="" if choices else f"Empty: {preference.usual}.",
            wrong=f"This {wrong[0]}; {wrong[1]}." if wrong[0] else "",
            typed=bool(text),
        )

    def write(self, field: str, text: str) -> None:
        """Set a setting; an empty text, or the usual choice, sets it no more."""
        preference = BY_ID[field]
        usual = bool(preference.choices) and text == preference.usual
        if usual or not text.strip():
            self.typed.pop(field, None)
        else:
            self.typed[field] = text
        marks = choices_of(BY_ID["graduation"], self.typed.get("units", ""))
        if self.typed.get("graduation") not in marks:
            self.typed.pop("graduation", None)
        self._read()

    def words(self, field: Field) -> tuple[Saying, ...]:
        """What a setting does, what is wrong with it, and what is wrong with the file."""
        said = list(super().words(field))
        if field.id == "colours" and self._fixed:
            told = f"{self._fixed} is set in the environment and goes before this."
            said.insert(0, Saying(label="", text=told, strong=True))
        if self.found.trouble:
            said.append(Saying(label="", text=self.found.trouble, warning=True))
        return tuple(said)

    def name(self) -> str:
        """What the page is called."""
        return self.title

    def final_words(self) -> tuple[Saying, ...]:
        """Nothing: there is no last line to a page of settings."""
        return ()

    @property
    def colours(self) -> str:
        """The colours that are chosen."""
        return self.typed.get("colours", DARK)

    @property
    def digits(self) -> str:
        """The style of the digits that is chosen."""
        return self.typed.get("digits", BY_ID["digits"].usual)

    def figure(self) -> Shown:
        """A length as these settings would show it."""
        return Preferences(self.typed).tape(self._project).show(SAMPLE)

    def finish(self) -> Path:
        """Keep what is set, and give the file. Raises NotMadeError."""
        try:
            self.found = keep_preferences(
                self.found, {key: text.strip() for key, text in self.typed.items()}
            )
        except NotSetError as error:
            raise NotMadeError(str(error)) from error
        return self.place


def _nowhere() -> Path:
    from pathlib import Path  # noqa: PLC0415 - only where there is no home folder

    return Path()
