"""What a look-up can find: timbers, joints, marks, dimensions, names and the stock they come of."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from benchmate.frame.levels import section_names, section_table
from benchmate.layout.step import Step
from benchmate.measure.length import ZERO, Length
from benchmate.measure.section import section_text
from benchmate.model.feature import Feature, Size
from benchmate.model.progress import AsCut
from benchmate.model.project import Timber
from benchmate.model.words import lower_first
from benchmate.workbench.bench import Bench
from benchmate.workbench.walk import Walk

NOT_FIT = "stop: this figure is not fit to cut to"

_NAME, _STOCK = 1, 2
"""The ranks of what lies on no timber."""

_WORD = re.compile(r"[^\W_]+(?:/[^\W_]+)?")


@dataclass(frozen=True, slots=True, kw_only=True)
class Hit:
    """One answer: what it is called, its figure if it has one, and where it lies."""

    title: str
    detail: str
    value: Length | None = None
    timber: str = ""
    step: str = ""


@dataclass(frozen=True, slots=True)
class Entry:
    """An answer and the words it is found by: those of its title, and others.

    Of answers that are equal in all else the one of the lesser `rank` comes first: what lies on a
    timber before names, and those before stock.
    """

    hit: Hit
    title_words: tuple[str, ...]
    other_words: tuple[str, ...]
    rank: int = 0


def words_in(text: str) -> tuple[str, ...]:
    """The words of a text, in its order and without capitals; a fraction is one word."""
    return tuple(_WORD.findall(text.casefold()))


def _entry(hit: Hit, other: str, rank: int = 0, *, called: str = "") -> Entry:
    """An answer that is `called` by its title, or by less than all of it."""
    beside = hit.title.removeprefix(called) if called else ""
    return Entry(hit, words_in(called or hit.title), words_in(f"{other} {beside}"), rank)


def timber_entries(bench: Bench, timber: Timber) -> Iterator[Entry]:
    """A timber, its two lengths, its joints and all its marks with the figures beside them."""
    walk = bench.walk(timber.id)
    yield from _lengths(timber, walk)
    for feature in walk.layout.features:
        yield from _joint(timber, walk, feature)
    for step in walk.steps:
        yield from _marks(timber, walk, step)


def _lengths(timber: Timber, walk: Walk) -> Iterator[Entry]:
    stick, tape = walk.layout.stick, walk.tape
    detail = (
        f"{timber.kind}, {section_text(stick.nominal, tape)}, "
        f"shoulder to shoulder {tape.text(stick.body)}, overall {tape.text(stick.overall)}"
    )
    stopped = "" if not walk.trouble else walk.trouble
    other = f"{timber.id} {timber.kind} {timber.species} {detail}"
    lengths = (
        ("", stick.body, f"length {other}"),
        (": length shoulder to shoulder", stick.body, other),
        (": length overall", stick.overall, other),
    )
    for name, value, found_by in lengths:
        hit = Hit(
            title=f"{timber.name}{name}",
            detail=NOT_FIT if stopped else detail,
            value=None if stopped else value,
            timber=timber.id,
        )
        yield _entry(hit, found_by)


def _joint(timber: Timber, walk: Walk, feature: Feature) -> Iterator[Entry]:
    """A side of a joint: where on the timber it starts, and the sizes of what is made there."""
    first = next((step for step in walk.steps if step.feature == feature.id), None)
    if not feature.joint or first is None:
        return
    cut = walk.layout.stick.as_cut.get(feature.id, AsCut())
    made = {size.name: cut.get(size.name) or size.laid_out for size in feature.sizes}
    sizes = "; ".join(f"{name} {walk.tape.text(value)}" for name, value in made.items())
    withheld = bool(walk.withheld(first))
    title = f"{timber.name}: {lower_first(feature.title)}"
    found_by = f"{timber.id} {timber.kind} {feature.joint} joint"
    yield _entry(
        Hit(
            title=title,
            detail="stop: its figures are not fit to cut to" if withheld else sizes or "joint",
            timber=timber.id,
            step=first.id,
        ),
        found_by,
    )
    for size in feature.sizes:
        hit = Hit(
            title=f"{title}: {size.name}",
            detail=_how_made(size, cut, walk) if not withheld else NOT_FIT,
            value=None if withheld else made[size.name],
            timber=timber.id,
            step=first.id,
        )
        yield _entry(hit, found_by)


def _how_made(size: Size, cut: AsCut, walk: Walk) -> str:
    """Whether a size is as it was laid out, or as it came out."""
    if cut.get(size.name) is None:
        return "as laid out; not measured as cut yet"
    return f"as cut; laid out as {walk.tape.text(size.laid_out)}"


def _marks(timber: Timber, walk: Walk, step: Step) -> Iterator[Entry]:
    readings = walk.readings(step)
    withheld = walk.withheld(step)
    value = readings[0].value if readings and not withheld else None
    how = readings[0].words if value is not None else step.on
    title = f"{timber.name}: {lower_first(step.title)}"
    found_by = f"{timber.id} {timber.kind} {step.id}"
    detail = NOT_FIT if withheld else how
    own = Hit(title=title, detail=detail, value=value, timber=timber.id, step=step.id)
    yield _entry(own, f"{found_by} {step.on} {how}")
    if withheld or step.line is None:
        return
    for beside in step.beside:
        hit = Hit(
            title=f"{title}: {beside.words}",
            detail=f"beside the {lower_first(step.short)}",
            value=beside.value,
            timber=timber.id,
            step=step.id,
        )
        yield _entry(hit, found_by, called=title)


def name_entries(bench: Bench) -> Iterator[Entry]:
    """Lines, levels, lengths and sections, with what they come to."""
    project, tape = bench.project, bench.tape
    named = (("line", project.lines), ("level", project.levels), ("length", project.lengths))
    for kind, names in named:
        for name, total in names.items():
            hit = Hit(title=name, detail=f"{kind}: {total.text()}", value=bench.frame.value(total))
            yield _entry(hit, kind, _NAME)
    sections = section_table(project.sections, project.inner)
    for name, value in section_names(sections).items():
        section = sections[name.rsplit(" ", 1)[0]]
        detail = section_text(section, tape)
        yield _entry(Hit(title=name, detail=detail, value=value), "section", _NAME)


def stock_entries(bench: Bench) -> Iterator[Entry]:
    """The timbers of one section and kind of wood together: how many, and how long in all.

    Their lengths are overall, without trim. One timber's is found at the timber itself.
    """
    found: defaultdict[tuple[str, str], list[Timber]] = defaultdict(list)
    for timber in bench.timbers:
        nominal = bench.frame.wood(timber.id).nominal
        found[section_text(nominal, bench.tape), timber.species].append(timber)
    for (section, species), timbers in found.items():
        lengths = [bench.frame.stick(timber.id).overall for timber in timbers]
        names = ", ".join(timber.name for timber in timbers)
        what = f"{section} {species}".strip()
        kinds = " ".join(dict.fromkeys(timber.kind for timber in timbers))
        hit = Hit(
            title=f"Stock: {what}",
            detail=f"overall, of {len(timbers)} in all: {names}",
            value=sum(lengths, ZERO),
            timber=timbers[0].id,
        )
        yield _entry(hit, f"section species wood length {kinds}", _STOCK)
