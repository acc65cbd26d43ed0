"""The short forms at the timber: a note in words, or a knot, a check or wane with its place.

No widget is touched here: the screen shows what a form says. Nothing is filled in beforehand but
the face that is looked at.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import TYPE_CHECKING, NamedTuple

from benchmate.checks.blemishes import blemish_findings
from benchmate.layout.noted import about_words, blemish_words
from benchmate.measure.reading import LengthError, read_length
from benchmate.measure.tolerance import LARGEST_SECTION, LONGEST_TIMBER
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.progress import Blemish
from benchmate.model.words import LONGEST_NOTE, check_text

if TYPE_CHECKING:
    from collections.abc import Mapping

    from benchmate.measure.length import Length
    from benchmate.measure.reading import Unit
    from benchmate.model.progress import BlemishKind
    from benchmate.workbench.walk import Walk

NOT_KEPT_YET = datetime(1970, 1, 1, tzinfo=UTC)
"""The time of a blemish that is only being typed; the bench gives it its own."""

CLEAR = "Nothing that the cuts of a joint count on is met."

SAFE = "What strength a timber with it has is for a licensed engineer; benchmate only measures."


class NewNote(NamedTuple):
    """A note as typed, about a step, a joint or, with nothing, the whole timber."""

    about: str
    text: str


Jot = NewNote | Blemish


@dataclass(frozen=True, slots=True, kw_only=True)
class JotBlank:
    """One field: its key, what to put in, what stands in it at first, faintly or in earnest."""

    key: str
    label: str
    faint: str = ""
    text: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Jotted:
    """What the fields come to: what is to be kept, or the field that is wrong; and what to tell."""

    jot: Jot | None
    field: str = ""
    lines: tuple[str, ...] = ()
    excerpt: str = ""


class NoteForm:
    """A note in words."""

    def __init__(self, walk: Walk, about: str) -> None:
        self._about = about
        self.title = f"{walk.timber.name}: note on {about_words(walk.layout, about)}"
        self.blanks = (JotBlank(key="text", label="Note", faint="in your own words"),)

    def read(self, texts: Mapping[str, str]) -> Jotted:
        """The note, if there is one."""
        text = texts["text"].strip()
        if not text:
            return Jotted(
                jot=None, field="text", lines=("It shows with its step once it is kept.",)
            )
        try:
            check_text(text, longest=LONGEST_NOTE)
        except ValueError as error:
            return Jotted(jot=None, field="text", lines=(f"Note: {error}",))
        return Jotted(jot=NewNote(self._about, text), lines=("Enter keeps it.",))


class BlemishForm:
    """A knot, a check, wane or something else in the wood of a timber."""

    def __init__(self, walk: Walk, kind: BlemishKind, face: Face, bare: Unit) -> None:
        self._walk, self._kind, self._bare = walk, kind, bare
        stick = walk.layout.stick
        words = stick.pose.words
        self._faces = {face: words(face) for face in LONG_FACES}
        what = "a blemish" if kind == "other" else "wane" if kind == "wane" else f"a {kind}"
        self.title = f"{walk.timber.name}: note {what}"
        end = words(Face.REFERENCE_END)
        first, second = (words(face).removesuffix(" face") for face in (Face.FIRST, Face.SECOND))
        start = self._faces.get(face, words(Face.FIRST))
        self.blanks = (
            JotBlank(key="face", label="On which face", faint=self._listed(), text=start),
            JotBlank(key="from_end", label=f"Starts how far from the squared {end}"),
            JotBlank(key="long", label="How long, along the timber"),
            JotBlank(
                key="from_arris",
                label=f"How far in from its {first} or {second} arris",
                faint="0 on that arris",
            ),
            JotBlank(key="wide", label="How wide, across the face"),
            JotBlank(key="deep", label="How deep", faint="not known: as deep as it is wide"),
            JotBlank(key="text", label="In words", faint="loose, sound, still wet: as you like"),
        )

    def _listed(self) -> str:
        return ", ".join(self._faces.values())

    def read(self, texts: Mapping[str, str]) -> Jotted:
        """The blemish read back with the joints it meets, or the first thing wrong with it."""
        found: dict[str, object] = {}
        for blank in self.blanks:
            try:
                found[blank.key] = self._value(blank.key, texts[blank.key].strip())
            except LengthError as error:
                told = (f"{blank.label}: {error}",)
                return Jotted(jot=None, field=blank.key, lines=told, excerpt=error.excerpt())
            except ValueError as error:
                return Jotted(jot=None, field=blank.key, lines=(f"{blank.label}: {error}",))
        words = {"id": f"{self._kind}-1", "kind": self._kind, "at": NOT_KEPT_YET}
        blemish = Blemish.model_validate(words | found)
        return Jotted(jot=blemish, lines=(*told_of(self._walk, blemish), SAFE))

    def _value(self, key: str, text: str) -> object:
        if key == "face":
            return self._face(text).value
        if key == "text":
            return check_text(text, longest=LONGEST_NOTE) if text else ""
        if not text:
            if key == "deep":
                return None
            raise ValueError("still empty")
        return self._length(key, text)

    def _length(self, key: str, text: str) -> Length:
        along = key in ("from_end", "long")
        most = LONGEST_TIMBER if along else LARGEST_SECTION
        length = read_length(text, bare=self._bare, most=most)
        if not length and not key.startswith("from"):
            raise ValueError("must be more than nothing")
        return length

    def _face(self, text: str) -> Face:
        meant = [
            face for face, words in self._faces.items() if words.lower().startswith(text.lower())
        ]
        if len(meant) != 1 or not text:
            raise ValueError(f"write one of {self._listed()}, or how it begins")
        return meant[0]


def told_of(walk: Walk, blemish: Blemish) -> tuple[str, ...]:
    """A blemish in full, and what it does to the joints of its timber."""
    layout, tape = walk.layout, walk.tape
    found = blemish_findings(layout, (blemish,), tape)
    told = tuple(f"LOOK: {each.message}. To mend it: {each.remedy}." for each in found)
    return (f"{blemish_words(layout.stick, blemish, tape)}.", *(told or (CLEAR,)))
