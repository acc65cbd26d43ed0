"""The form that sets a frame out: the questions of the engine, and what the answers come to."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from benchmate.model.findings import Severity
from benchmate.outset.answering import fill
from benchmate.outset.own import NOTHING, Own
from benchmate.outset.question import Kind
from benchmate.outset.questions import GROUPS
from benchmate.tui.desk_place import bars_of
from benchmate.tui.fields_form import MAKE, Field, FieldGroup, FieldsForm
from benchmate.tui.words import Saying
from benchmate.workbench.drafting import counts, draft, findings, totals
from benchmate.workbench.new_project import make

if TYPE_CHECKING:
    from pathlib import Path

    from benchmate.model.findings import Finding
    from benchmate.outset.answering import Answer
    from benchmate.tui.drawing.key import Bar
    from benchmate.workbench.drafting import Draft

CAUTION = "Sizes and spans are yours and the engineer's: benchmate checks arithmetic, not strength."

FROM_SETTINGS = "From your settings."


@dataclass(frozen=True, slots=True, kw_only=True)
class Sketch:
    """What some answers make: the timbers to draw, how many, and what the checks find.

    `found` is None until they have been made.
    """

    draft: Draft
    bars: tuple[Bar, ...] = ()
    counts: str = ""
    totals: str = ""
    found: tuple[Finding, ...] | None = None


def sketch(typed: dict[str, str], own: Own = NOTHING) -> Sketch:
    """What the answers make, not checked yet. Safe to work out beside the screen."""
    made = draft(typed, own)
    if made.frame is None:
        return Sketch(draft=made)
    frame = made.frame
    return Sketch(draft=made, bars=bars_of(frame), counts=counts(frame), totals=totals(frame))


def checked(drawn: Sketch) -> Sketch:
    """The same with what the checks find. Safe to work out beside the screen."""
    frame = drawn.draft.frame
    return replace(drawn, found=findings(frame) if frame else ())


class OutsetForm(FieldsForm):
    """A frame being set out; `drawn` is what its answers make, once that has been worked out."""

    title = "New frame"
    last = "Make this frame"

    def __init__(self, place: Path, own: Own = NOTHING) -> None:
        self.drawn: Sketch | None = None
        self.own = own
        super().__init__(place)

    def _read(self) -> None:
        asked = {key: text for key, text in self.typed.items() if key != "folder"}
        self.answered = asked
        self._answers = {each.question.id: each for each in fill(asked, self.own).rows}
        if self.drawn is not None and self.drawn.draft.typed != asked:
            self.drawn = None
        super()._read()

    def groups(self) -> tuple[FieldGroup, ...]:
        """The questions that this frame has a use for."""
        return tuple(
            FieldGroup(
                group.title,
                tuple(
                    _field(self._answers[question.id])
                    for question in group.questions
                    if question.id in self._answers
                ),
            )
            for group in GROUPS
        )

    def name(self) -> str:
        """What the frame is called so far."""
        return self._answers["name"].text

    def may_be_empty(self, field: str) -> bool:
        """Whether nothing typed stands for nothing."""
        answer = self._answers.get(field)
        return answer is not None and answer.question.may_be_empty

    def take(self, drawn: Sketch) -> bool:
        """Take up what answers make, unless others have been typed since."""
        if drawn.draft.typed != self.answered:
            return False
        self.drawn = drawn
        return True

    def settled(self) -> Sketch:
        """What the answers make, drawn and checked, worked out now where it has not been yet."""
        drawn = self.drawn or sketch(self.answered, self.own)
        self.drawn = drawn if drawn.found is not None else checked(drawn)
        return self.drawn

    def words(self, field: Field) -> tuple[Saying, ...]:
        """As on every page, and in short what the checks find."""
        said = super().words(field)
        found = self.drawn.found if self.drawn else None
        if field.id == MAKE or not found:
            return said
        more = f", and {len(found) - 1} more" if len(found) > 1 else ""
        told = f"The checks find {found[0].severity.word}: {found[0].message}{more}."
        return (*said, Saying(label="", text=told, warning=True))

    def final_words(self) -> tuple[Saying, ...]:
        """What making it would make, and everything that the checks find."""
        caution, drawn = Saying(label="", text=CAUTION), self.drawn
        if self.wrong is not None:
            return (caution,)
        if drawn is None or drawn.found is None:
            return (Saying(label="", text="The checks are being made."), caution)
        if drawn.draft.problem:
            return (Saying(label="", text=drawn.draft.problem, warning=True), caution)
        if drawn.found:
            return (*_told(drawn.found), caution)
        told = f"{drawn.counts}; {drawn.totals}. The checks find nothing."
        return (Saying(label="", text=told, strong=True), caution)

    def finish(self) -> Path:
        """Make the project. Raises NotMadeError."""
        return make(self.place, self.folder, self.settled().draft.text)


def _told(found: tuple[Finding, ...]) -> tuple[Saying, ...]:
    stops = sum(each.severity is Severity.STOP for each in found)
    words = f"The checks find {len(found)} to look at{f', {stops} of them stops' if stops else ''}:"
    lines = (f"{each.severity.word}: {each.message}; {each.remedy}." for each in found)
    return (
        Saying(label="", text=words, warning=True),
        *(Saying(label="", text=line) for line in lines),
    )


def _field(answer: Answer) -> Field:
    question, cannot = answer.question, answer.cannot
    return Field(
        id=question.id,
        label=question.label,
        text=answer.text,
        choices=answer.choices if question.kind is Kind.CHOICE else (),
        about=question.about,
        source=FROM_SETTINGS if answer.own else question.source,
        wrong=f"{cannot.problem}; {cannot.remedy}." if cannot else "",
        shows=question.shows,
        typed=answer.typed,
    )
