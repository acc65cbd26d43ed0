"""The look-up: words in any order over timbers, steps, lines, levels, lengths and sections."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from benchmate.frame.levels import section_names, section_table
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.measure.section import section_text
from benchmate.model.project import Timber
from benchmate.model.words import lower_first
from benchmate.workbench.bench import Bench
from benchmate.workbench.walk import Walk

_WORD = re.compile(r"[^\W_]+(?:/[^\W_]+)?")

EXACT, START, INSIDE = 4, 2, 1
"""What a typed word scores against a whole word, the start of one, and the inside of one."""

LEAST_INSIDE = 3
"""Letters a typed word needs to count inside another: `ne` is a corner, not part of `line`."""

TITLE_WEIGHT = 2
"""A word found in what an entry is called counts this many times one found beside it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Hit:
    """One answer: what it is called, its figure if it has one, and where it lies."""

    title: str
    detail: str
    value: Length | None = None
    timber: str = ""
    step: str = ""


@dataclass(frozen=True, slots=True)
class _Entry:
    hit: Hit
    title_words: tuple[str, ...]
    other_words: tuple[str, ...]


class Index:
    """Everything of a project that can be looked up, as it stands now."""

    def __init__(self, bench: Bench) -> None:
        self._entries = tuple(_entries(bench))

    def find(self, words: str, most: int = 50) -> tuple[Hit, ...]:
        """The answers that hold every word, best first; nothing for no words.

        Of equal ones that which is called by the words in the order typed comes first, so that one
        joint is not taken for its mirror image, then the shorter title, then the order of the file.
        """
        typed = _words(words)
        if not typed:
            return ()
        scored = [
            (-score, not _in_order(typed, entry.title_words), len(entry.title_words), entry.hit)
            for entry in self._entries
            if (score := _score(entry, typed))
        ]
        scored.sort(key=lambda found: found[:3])
        return tuple(hit for *_, hit in scored[:most])


def _words(text: str) -> tuple[str, ...]:
    return tuple(_WORD.findall(text.casefold()))


def _score(entry: _Entry, typed: tuple[str, ...]) -> int:
    total = 0
    for word in typed:
        best = max(TITLE_WEIGHT * _best(word, entry.title_words), _best(word, entry.other_words))
        if not best:
            return 0
        total += best
    return total


def _in_order(typed: tuple[str, ...], title: tuple[str, ...]) -> bool:
    """Whether a title holds the typed words one after the other, whatever lies between them."""
    onward = iter(title)
    return all(any(_match(word, found) for found in onward) for word in typed)


def _best(word: str, among: tuple[str, ...]) -> int:
    return max((_match(word, found) for found in among), default=0)


def _match(word: str, found: str) -> int:
    if word == found:
        return EXACT
    if found.startswith(word):
        return START
    return INSIDE if len(word) >= LEAST_INSIDE and word in found else 0


def _entry(hit: Hit, other: str) -> _Entry:
    return _Entry(hit, _words(hit.title), _words(other))


def _entries(bench: Bench) -> Iterator[_Entry]:
    for timber in bench.timbers:
        walk = bench.walk(timber.id)
        yield _timber_entry(timber, walk)
        for step in walk.steps:
            yield _step_entry(timber, walk, step)
    yield from _name_entries(bench)


def _timber_entry(timber: Timber, walk: Walk) -> _Entry:
    stick, tape = walk.layout.stick, walk.tape
    detail = (
        f"{timber.kind}, {section_text(stick.nominal, tape)}, "
        f"shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}"
    )
    hit = Hit(title=timber.name, detail=detail, value=stick.body, timber=timber.id)
    return _entry(hit, f"{timber.id} {timber.kind} {timber.species} length {detail}")


def _step_entry(timber: Timber, walk: Walk, step: Step) -> _Entry:
    readings = walk.readings(step)
    stop = walk.withheld(step)
    value = readings[0].value if readings and not stop else None
    how = readings[0].words if value is not None else step.on
    hit = Hit(
        title=f"{timber.name}: {lower_first(step.title)}",
        detail="stop: this figure is not fit to cut to" if stop else how,
        value=value,
        timber=timber.id,
        step=step.id,
    )
    return _entry(hit, f"{timber.id} {timber.kind} {step.id} {step.on} {how}")


def _name_entries(bench: Bench) -> Iterator[_Entry]:
    project, tape = bench.project, bench.project.tape
    named = (("line", project.lines), ("level", project.levels), ("length", project.lengths))
    for kind, names in named:
        for name, total in names.items():
            hit = Hit(title=name, detail=f"{kind}: {total.text()}", value=bench.frame.value(total))
            yield _entry(hit, kind)
    sections = section_table(project.sections, project.inner)
    for name, value in section_names(sections).items():
        section = sections[name.rsplit(" ", 1)[0]]
        yield _entry(Hit(title=name, detail=section_text(section, tape), value=value), "section")
