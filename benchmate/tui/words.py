"""A step in words: what to hook on, where it goes, which side is waste, and why."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.layout.noted import blemish_words, notes_at, notes_on_stick, one_line
from benchmate.layout.standing import State
from benchmate.measure.section import section_text
from benchmate.model.stick import STICK

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.layout.step import Step
    from benchmate.model.feature import Beside, Reading
    from benchmate.workbench.walk import Walk


MEASURES = "press m to type what it measures; ticked without, these figures are kept as measured"
"""What a measuring step is for, and what its tick does."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Saying:
    """One labelled sentence. A warning stands out without colour too."""

    label: str
    text: str
    strong: bool = False
    warning: bool = False


def sayings(
    walk: Walk,
    place: int,
    *,
    swapped: bool,
    withheld: str,
    waits_for: str = "",
    whole: bool = False,
) -> tuple[Saying, ...]:
    """What to say about a step, the most needed first, so that a short pane cuts the least.

    `waits_for` is what comes before it, in words. `whole` is for a page on its
    own, which has no big figure beside it.
    """
    found = [*_state(walk, place)]
    further: tuple[Saying, ...] = ()
    if withheld:
        found.append(Saying(label="stop", text=withheld, warning=True))
    else:
        if waits_for:
            found.append(Saying(label="waits", text=f"for {waits_for}", strong=True))
        listed = whole or _listed(walk, place)
        found += _figures(
            walk, place, swapped=swapped, listed=listed, short=bool(waits_for) and not whole
        )
        further = tuple(_further(walk, place, swapped=swapped, listed=listed))
    return (*found, *_noted(walk, place), *further, *_rest(walk, place))


def _state(walk: Walk, place: int) -> Iterator[Saying]:
    step, standing = walk.steps[place], walk.standings[place]
    yield Saying(label="", text=step.title, strong=True)
    if standing.state is State.LOOK_AGAIN:
        yield Saying(label="again", text=f"{standing.changed}: look again", warning=True)


def _listed(walk: Walk, place: int) -> bool:
    """Whether a step works to several figures, which are all told in words."""
    step = walk.steps[place]
    return step.line is None and len(step.readings) > 1


def _figures(
    walk: Walk, place: int, *, swapped: bool, listed: bool, short: bool
) -> Iterator[Saying]:
    """What makes the mark and keeps it off the wrong side, and what can hurt.

    Where the room is `short`, and on a slant, the faces come after what they can be told from.
    """
    step = walk.steps[place]
    readings = walk.readings(step, swapped=swapped)
    if listed:
        yield from _all_of(walk, step, readings)
    elif readings:
        yield Saying(label="from", text=readings[0].words.removeprefix("from "), strong=True)
    if step.leads_on:
        yield Saying(label="to", text=_beside_text(walk, step.beside[0]), strong=True)
    on = (Saying(label="on", text=step.on),) if step.on else ()
    waste = (Saying(label="waste", text=step.waste, strong=True),) if step.waste else ()
    square = tuple(_square(walk, step))
    faces_last = short or step.setting or step.leads_on
    yield from (*waste, *square, *on) if faces_last else (*on, *waste)
    if step.caution:
        yield Saying(label="care", text=step.caution, warning=True)


def _square(walk: Walk, step: Step) -> Iterator[Saying]:
    """How a square is set, and a saw or a bevel with it."""
    if step.setting is not None:
        yield Saying(label="square", text=step.setting.words(walk.tape), strong=True)


def _noted(walk: Walk, place: int) -> Iterator[Saying]:
    """What was written at the step, and at its joint."""
    step = walk.steps[place]
    for note in notes_at(walk.progress, step.feature, step.id):
        yield Saying(label="note", text=one_line(note.text))


def _further(walk: Walk, place: int, *, swapped: bool, listed: bool) -> Iterator[Saying]:
    """The other ways to measure the mark, the figures beside it, and the stick as measured."""
    step = walk.steps[place]
    others = () if listed else walk.readings(step, swapped=swapped)[1:]
    told = [_reading_text(walk, reading) for reading in others]
    told += [_beside_text(walk, each) for each in step.beside[step.leads_on :]]
    if told:
        yield Saying(label="also", text="; ".join(told))
    yield from _measured(walk, step)


def _all_of(walk: Walk, step: Step, readings: tuple[Reading, ...]) -> Iterator[Saying]:
    """Every figure of a step: for a mark one way or the other, for a task all of them."""
    for place, reading in enumerate(readings):
        label = ("or" if step.line else "and") if place else "set"
        yield Saying(label=label, text=_reading_text(walk, reading), strong=True)


def _beside_text(walk: Walk, beside: Beside) -> str:
    return f"{walk.tape.text(beside.value)} {beside.words}"


def _reading_text(walk: Walk, reading: Reading) -> str:
    return f"{walk.tape.text(reading.value)} {reading.words}"


def _measured(walk: Walk, step: Step) -> Iterator[Saying]:
    """What the stick measures here, where that is not what was drawn."""
    feature = walk.layout.feature(step.feature)
    stick, tape = walk.layout.stick, walk.tape
    real = stick.section(*(feature.place if feature else ()))
    if real == stick.nominal:
        return
    shown, drawn = (
        f"{tape.text(section.first)} by {tape.text(section.second)}"
        for section in (real, stick.nominal)
    )
    yield Saying(
        label="stick",
        text=(
            f"measured {shown} here, drawn {drawn}; the lines still come from the reference faces"
        ),
    )


def _notes(walk: Walk) -> Iterator[Saying]:
    """What was written down about the timber, shown with the steps of the whole stick."""
    timber = walk.timber
    yield Saying(
        label="what", text=f"{timber.what}, {section_text(walk.layout.stick.nominal, walk.tape)}"
    )
    if timber.note:
        yield Saying(label="note", text=timber.note)
    for note in notes_on_stick(walk.progress):
        yield Saying(label="note", text=one_line(note.text))
    for blemish in walk.progress.blemishes:
        text = blemish_words(walk.layout.stick, blemish, walk.tape)
        yield Saying(label="wood", text=text)


def _rest(walk: Walk, place: int) -> Iterator[Saying]:
    step, standing = walk.steps[place], walk.standings[place]
    for finding in walk.findings_at(step):
        text = f"{finding.message}. To mend it: {finding.remedy}."
        yield Saying(label="look", text=text, warning=True)
    if step.asks:
        yield Saying(label="type", text=MEASURES)
    yield Saying(label="why", text=step.why)
    if step.feature == STICK:
        yield from _notes(walk)
    if standing.tick is not None:
        at = standing.tick.at.astimezone()
        yield Saying(label="ticked", text=f"{at:%Y-%m-%d %H:%M}")
