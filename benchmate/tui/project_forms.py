"""The two short forms for a project: one with nothing in it yet, and a copy of another."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.outset.answers import SHOP
from benchmate.outset.blank_text import blank_text
from benchmate.outset.own import NOTHING, Own
from benchmate.outset.written import FEET, MM, written
from benchmate.tui.fields_form import Field, FieldGroup, FieldsForm
from benchmate.tui.words import Saying
from benchmate.workbench.new_project import bad_name, copy, make, name_of

if TYPE_CHECKING:
    from pathlib import Path

GRADUATIONS = {MM: ("1 mm", "0.5 mm")}
"""The finest marks of tapes that are not in inches."""

INCH_GRADUATIONS = ("1/16", "1/8", "1/32", "1/64")
"""The finest marks of tapes in inches, the usual one first."""

FRAME_ONLY = "the frame only"
WITH_PROGRESS = "the frame, ticks and measured sizes"


class BlankForm(FieldsForm):
    """A project with nothing in it: its name, its units and its layout rule."""

    title = "Empty project"
    last = "Make this project"

    def __init__(self, place: Path, own: Own = NOTHING) -> None:
        self._own = own
        super().__init__(place)

    def groups(self) -> tuple[FieldGroup, ...]:
        """The head of its file."""
        units = self._choice("units", _first(self._own.units, (FEET, "inches", MM)))
        marks = _first(self._own.graduation, GRADUATIONS.get(units.text, INCH_GRADUATIONS))
        return (
            FieldGroup(
                "The project",
                (
                    _name_field(self.typed, "New project"),
                    units,
                    self._choice("graduation", marks),
                    self._choice("rule", ("mill", "square")),
                ),
            ),
        )

    def _choice(self, field: str, choices: tuple[str, ...]) -> Field:
        typed = self.typed.get(field)
        text = typed if typed in choices else choices[0]
        label, about = _ABOUT[field]
        return Field(
            id=field, label=label, text=text, choices=choices, about=about, typed=text != choices[0]
        )

    def name(self) -> str:
        """What the project is called so far."""
        return self.typed.get("name", "New project")

    def final_words(self) -> tuple[Saying, ...]:
        """What comes next."""
        told = (
            "The file's own comments show what belongs where. Keep it open in an editor beside the "
            "bench, which reads it anew whenever it is saved."
        )
        return (Saying(label="", text=told),)

    def finish(self) -> Path:
        """Make the project. Raises NotMadeError."""
        fields = {field.id: field.text for field in self.groups()[0].fields}
        units = fields["units"]
        own = {rule: self._own.lengths.get(rule) for rule in SHOP}
        shop = {rule: written(value, units) for rule, value in own.items() if value is not None}
        return make(self.place, self.folder, blank_text(**fields, shop=shop))


class CopyForm(FieldsForm):
    """A copy of a project under another name, with what is done on it or without."""

    title = "Copy of a project"
    last = "Make this copy"

    def __init__(self, place: Path, project: Path) -> None:
        self._project = project
        self._name = f"{name_of(project)} copy"
        super().__init__(place)

    def groups(self) -> tuple[FieldGroup, ...]:
        """The copy's name, and what comes with it."""
        choices = (FRAME_ONLY, WITH_PROGRESS)
        takes = self.typed.get("takes", FRAME_ONLY)
        about = (
            "The frame alone is a new set of timbers to cut; with the rest work goes on in both."
        )
        return (
            FieldGroup(
                f"From {self._project.name}",
                (
                    _name_field(self.typed, self._name),
                    Field(
                        id="takes",
                        label="Copies",
                        text=takes,
                        choices=choices,
                        about=about,
                        typed=takes != FRAME_ONLY,
                    ),
                ),
            ),
        )

    def name(self) -> str:
        """What the copy is called so far."""
        return self.typed.get("name", self._name)

    def final_words(self) -> tuple[Saying, ...]:
        """What is left as it was."""
        return (Saying(label="", text=f"{self._project} stays as it is."),)

    def finish(self) -> Path:
        """Make the copy. Raises NotMadeError."""
        progress = self.typed.get("takes") == WITH_PROGRESS
        return copy(
            self._project, self.place, self.folder, self.name().strip(), with_progress=progress
        )


_ABOUT = {
    "units": ("Units", "How lengths are shown, and what a number without a unit is in the file."),
    "graduation": ("Finest mark on your tape", "Figures are shown to the nearest of these."),
    "rule": ("Layout rule", "Mill rule follows the real sticks, square rule a timber inside them."),
}


def _first(word: str, choices: tuple[str, ...]) -> tuple[str, ...]:
    """The choices with one of them before the others, if it is one."""
    return (word, *(each for each in choices if each != word)) if word in choices else choices


def _name_field(typed: dict[str, str], suggested: str) -> Field:
    text = typed.get("name", suggested)
    wrong = bad_name(text)
    return Field(
        id="name",
        label="Name",
        text=text,
        about="What the project is called, at the head of every screen and sheet.",
        wrong=f"{wrong}." if wrong else "",
        typed=text != suggested,
    )
