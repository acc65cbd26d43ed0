"""The notes and blemishes of a timber as rows, newest first, and what can be added to them."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from benchmate.layout.noted import about_words, blemish_name, one_line
from benchmate.model.progress import Blemish
from benchmate.model.stick import STICK
from benchmate.tui.jot_form import BlemishForm, NoteForm, told_of
from benchmate.tui.rows import Row

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from benchmate.measure.reading import Unit
    from benchmate.model.directions import Face
    from benchmate.model.progress import BlemishKind, WrittenNote
    from benchmate.workbench.walk import Walk

    Noted = WrittenNote | Blemish
    JotForm = NoteForm | BlemishForm

KINDS: tuple[tuple[BlemishKind, str], ...] = (
    ("knot", "A knot"),
    ("check", "A check, or a shake"),
    ("wane", "Wane: bark, or an arris that is missing"),
    ("other", "Something else in the wood"),
)

HOW = "Nothing noted yet. a adds a note, or a knot, a check or wane with its place."


class Addition(NamedTuple):
    """Something that can be added, with a word beside it, and the form for it."""

    text: str
    beside: str
    form: Callable[[], JotForm]


class NotesList:
    """What was noted of one timber, newest first, and what each row stands for."""

    def __init__(self, walk: Walk) -> None:
        self._walk = walk
        self.title = f"{walk.timber.name}: notes"
        both: list[Noted] = [*walk.progress.notes, *walk.progress.blemishes]
        self._noted = sorted(both, key=lambda each: each.at)[::-1]
        self.rows = tuple(map(self._row, self._noted))

    def noted(self, row: int | None) -> Noted | None:
        """What a row stands for; None where there is none."""
        return self._noted[row] if row is not None and row < len(self._noted) else None

    def whole(self, row: int | None) -> tuple[str, ...]:
        """All there is to tell of a row."""
        noted = self.noted(row)
        if noted is None:
            return (HOW,)
        if isinstance(noted, Blemish):
            return told_of(self._walk, noted)
        about = about_words(self._walk.layout, noted.about)
        return (f"On {about}:", *noted.text.splitlines())

    def _row(self, noted: Noted) -> Row:
        layout, tape = self._walk.layout, self._walk.tape
        tail = f"{noted.at.astimezone():%Y-%m-%d %H:%M}"
        if isinstance(noted, Blemish):
            name = blemish_name(layout.stick, noted, tape)
            return Row(text=f"{name[:1].upper()}{name[1:]}", tail=tail)
        return Row(text=f"{about_words(layout, noted.about)}: {one_line(noted.text)}", tail=tail)


def additions(walk: Walk, place: int, face: Face, bare: Unit) -> tuple[Addition, ...]:
    """What can be added with a step in hand and a face looked at."""
    return (*_notes(walk, place), *_blemishes(walk, face, bare))


def _notes(walk: Walk, place: int) -> Iterator[Addition]:
    step = walk.steps[place]
    yield Addition("A note on this step", step.title, lambda: NoteForm(walk, step.id))
    feature = walk.layout.feature(step.feature)
    if feature is not None and step.feature != STICK:
        title = feature.title
        yield Addition("A note on this joint", title, lambda: NoteForm(walk, step.feature))
    yield Addition("A note on this timber", walk.timber.name, lambda: NoteForm(walk, ""))


def _blemishes(walk: Walk, face: Face, bare: Unit) -> Iterator[Addition]:
    words = walk.layout.stick.pose.words(face)
    for kind, text in KINDS:
        yield Addition(text, words, _form(walk, kind, face, bare))


def _form(walk: Walk, kind: BlemishKind, face: Face, bare: Unit) -> Callable[[], JotForm]:
    return lambda: BlemishForm(walk, kind, face, bare)
