"""The form for real sizes: what may be typed at a step, and what it would do.

No widget is touched here: the sizes screen shows what the form says.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import LengthError, read_length
from benchmate.measure.tolerance import LARGEST_SECTION
from benchmate.model.directions import Face
from benchmate.model.feature import Asks
from benchmate.model.progress import AsCut, Measured
from benchmate.tui.ripple_words import ripple_lines
from benchmate.workbench.actions import Sizes

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.layout.step import Step
    from benchmate.workbench.bench import Bench

SECTION = ("first", "second")
"""The fields of the section; every other field is a size as cut."""

FAR_OFF = {True: Length.inches(0, 1, 2), False: Length.inches(0, 1, 8)}
"""A section, or a size as cut, this far from drawn is more often misread than true (a house rule;
a quarter read for three quarters is half an inch)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Blank:
    """One field: its id, what to measure, the size as drawn, and what is kept now."""

    id: str
    label: str
    drawn: Length
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Typed:
    """What a filled-in form comes to: the sizes, or the first thing wrong with it."""

    sizes: Sizes | None
    field: str = ""
    problem: str = ""
    excerpt: str = ""
    changed: bool = False


class SizesForm:
    """The real sizes that can be typed at one step of one timber."""

    def __init__(self, bench: Bench, timber: str, step: Step) -> None:
        self._bench = bench
        self._timber = timber
        self._walk = bench.walk(timber)
        self._feature = self._walk.layout.feature(step.feature)
        self.kept = bench.sizes(timber, step)
        sizes = self._feature.sizes if self._feature else ()
        self.first = sizes[0].name if step.asks is Asks.AS_CUT and sizes else "first"

    @property
    def title(self) -> str:
        """What is measured where."""
        where = self._feature.title if self._feature and self._feature.place else "the whole stick"
        return f"{self._walk.timber.name}, {where}: what it really measures"

    @property
    def bare_words(self) -> str:
        """What a number without a unit is, where the tape on the screen has others."""
        return self._bench.bare_words

    def blanks(self) -> tuple[Blank, ...]:
        """The fields: two depths of the section, and a tenon's three sizes."""
        return (*self._section_blanks(), *self._tenon_blanks())

    def _section_blanks(self) -> tuple[Blank, ...]:
        stick, measured = self._walk.layout.stick, self.kept.measured
        sides = (
            ("first", Face.FIRST, stick.nominal.first, measured.first),
            ("second", Face.SECOND, stick.nominal.second, measured.second),
        )
        return tuple(
            Blank(
                id=name,
                label=f"{stick.pose.words(face)} to {stick.pose.words(face.opposite)}",
                drawn=drawn,
                text=self._text(kept),
            )
            for name, face, drawn, kept in sides
        )

    def _tenon_blanks(self) -> tuple[Blank, ...]:
        if self._feature is None or self.kept.as_cut is None:
            return ()
        return tuple(
            Blank(
                id=size.name,
                label=f"{size.how}, as cut",
                drawn=size.laid_out,
                text=self._text(self.kept.as_cut.get(size.name)),
            )
            for size in self._feature.sizes
        )

    def _text(self, size: Length | None) -> str:
        return "" if size is None else size.exact_text()

    def drawn_text(self, blank: Blank) -> str:
        """A field's size as drawn, on the tape."""
        return self._walk.tape.text(blank.drawn)

    def read(self, texts: dict[str, str]) -> Typed:
        """Read what was typed; an empty field is as drawn."""
        sizes: dict[str, Length | None] = {}
        for blank in self.blanks():
            try:
                sizes[blank.id] = self._size(texts.get(blank.id, ""))
            except LengthError as error:
                problem = f"{blank.label}: {error}"
                return Typed(sizes=None, field=blank.id, problem=problem, excerpt=error.excerpt())
            except ValueError as error:
                return Typed(sizes=None, field=blank.id, problem=f"{blank.label}: {error}")
        return self._typed(sizes)

    def _typed(self, sizes: dict[str, Length | None]) -> Typed:
        measured = Measured(first=sizes["first"], second=sizes["second"])
        as_cut = None
        if self.kept.as_cut is not None:
            as_cut = AsCut(**{name: size for name, size in sizes.items() if name not in SECTION})
        typed = Sizes(place=self.kept.place, measured=measured, as_cut=as_cut)
        return Typed(sizes=typed, changed=typed != self.kept)

    def _size(self, text: str) -> Length | None:
        if not text.strip():
            return None
        bare = self._bench.project.bare
        size = read_length(text, bare=bare, most=LARGEST_SECTION)
        if not size:
            raise ValueError("must be more than nothing; leave it empty to keep the size as drawn")
        return size

    def effect(self, sizes: Sizes) -> tuple[str, ...]:
        """The sizes read back, and what they would do, the most serious first."""
        ripple = self._bench.try_sizes(self._timber, sizes)
        return (*self._read_back(sizes), *ripple_lines(ripple, self._bench.frame))

    def _read_back(self, sizes: Sizes) -> Iterator[str]:
        """Each size that changes: as understood and how far it is off, or that it is taken back."""
        for blank in self.blanks():
            size, kept = (_size_of(each, blank.id) for each in (sizes, self.kept))
            if size is not None and size != kept:
                yield self._understood(blank, size)
            elif size is None and kept is not None:
                yield (
                    f"{blank.label}: {kept.exact_text()} taken back, "
                    f"as drawn again: {self.drawn_text(blank)}."
                )

    def _understood(self, blank: Blank, size: Length) -> str:
        off = size - blank.drawn
        read = f"{blank.label}: {self._exactly(size)}"
        if not off:
            return f"{read}, as drawn."
        far = "CHECK THE TAPE: " if abs(off) >= FAR_OFF[blank.id in SECTION] else ""
        side = "over" if off > ZERO else "under"
        thicker = off > ZERO and blank.id not in SECTION
        then = ": pare it, or what takes it grows." if thicker else "."
        return f"{far}{read}, {abs(off).exact_text()} {side}{then}"

    def _exactly(self, size: Length) -> str:
        """The size as typed, and as the tape shows it where that is less exact."""
        shown = self._walk.tape.show(size)
        exact = size.exact_text()
        return f"{exact} (on your tape {shown.text()})" if shown.remainder else exact


def _size_of(sizes: Sizes, name: str) -> Length | None:
    if name == "first":
        return sizes.measured.first
    if name == "second":
        return sizes.measured.second
    return sizes.as_cut.get(name) if sizes.as_cut else None
