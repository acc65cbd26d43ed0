"""What was done on a timber, newest first: when, and what in words. Who is not recorded."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime

from benchmate.layout.noted import one_line
from benchmate.measure.printing import Tape
from benchmate.model.journal import (
    AsCutPart,
    MeasuredPart,
    NamePart,
    NotePart,
    Part,
    SignedPart,
    TickPart,
)
from benchmate.model.past import Deed, Past
from benchmate.model.progress import AsCut, Measured, Tick
from benchmate.workbench.timber_state import SIGNED_AS
from benchmate.workbench.walk import Walk

BRIEF = 40
"""Characters of a note that its line in the history has room for."""

AS_DRAWN = "as drawn"
"""A size that was typed and taken out again."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """One thing done: when, what, its figure in brief, and where the framer stood.

    `undone` says that it was taken back; `of_frame` that it was done to the whole frame.
    """

    at: datetime
    words: str
    figure: str
    timber: str
    step: str
    undone: bool = False
    of_frame: bool = False


def history_of(walk: Walk, past: Past) -> tuple[Event, ...]:
    """What was done on a timber, newest first.

    Beside what the journal tells there are the ticks and signs it does not know, which carry their
    own time: those made before there was a journal, and those it could not take or keeps no more.
    """
    events = (*_noted(walk, past), *_ticks(walk, past), *_signs(walk, past))
    return tuple(sorted(events, key=lambda event: event.at)[::-1])


def _noted(walk: Walk, past: Past) -> Iterator[Event]:
    for action, became in past:
        if action.of_frame or action.timber == walk.timber.id:
            yield Event(
                at=action.at,
                words=action.words,
                figure=_figures(action.parts, walk.tape),
                timber=action.timber,
                step=action.step,
                undone=not became.holds,
                of_frame=action.of_frame,
            )


def _ticks(walk: Walk, past: Past) -> Iterator[Event]:
    """The ticks of the timber that no action made."""
    made = {_key(tick) for deed in past for tick in _made(deed, walk.timber.id)}
    titles = {step.id: step.title for step in walk.steps}
    for tick in walk.progress.ticks:
        if _key(tick) not in made:
            yield Event(
                at=tick.at,
                words=f"tick on {titles.get(tick.step, tick.step)}",
                figure=_marked(tick, walk.tape),
                timber=walk.timber.id,
                step=tick.step,
            )


def _signs(walk: Walk, past: Past) -> Iterator[Event]:
    """What is signed of the timber by no action."""
    made = {
        part.now
        for deed in past
        if deed.action.timber == walk.timber.id and deed.became.holds
        for part in deed.action.parts
        if isinstance(part, SignedPart)
    }
    for signed in walk.progress.signed:
        if signed not in made:
            yield Event(
                at=signed.at,
                words=SIGNED_AS[signed.what],
                figure="",
                timber=walk.timber.id,
                step="",
            )


def _key(tick: Tick) -> tuple[str, datetime]:
    return tick.step, tick.at


def _made(deed: Deed, timber: str) -> Iterator[Tick]:
    if deed.action.timber == timber and deed.became.holds:
        for part in deed.action.parts:
            if isinstance(part, TickPart) and part.now is not None:
                yield part.now


def _figures(parts: Sequence[Part], tape: Tape) -> str:
    """What an action came to in brief: the figure of a tick alone, as that shows its sizes too."""
    told = parts[:1] if isinstance(parts[0], TickPart) else parts
    return " / ".join(filter(None, (_figure(part, tape) for part in told)))


def _figure(part: Part, tape: Tape) -> str:
    """What a change came to, as short as it can be said; empty where the words say it all."""
    match part:
        case TickPart():
            return _marked(part.now, tape) if part.now else ""
        case NotePart():
            return _brief(part.now.text) if part.now else ""
        case NamePart():
            return f"was {part.was}"
        case MeasuredPart() | AsCutPart():
            return _sizes(part.now, tape)
        case _:
            return ""


def _marked(tick: Tick, tape: Tape) -> str:
    """The figure that a tick was made at, the first of several."""
    return next(map(tape.text, tick.marked.values()), "")


def _brief(text: str) -> str:
    """The beginning of a note, on one line."""
    told = one_line(text)
    return told if len(told) <= BRIEF else f"{told[: BRIEF - 3].rstrip()}..."


def _sizes(sizes: Measured | AsCut | None, tape: Tape) -> str:
    """The sizes typed: a whole section as `7 x 7`, others each by its name."""
    typed = {name: size for name, size in sizes or () if size is not None}
    if isinstance(sizes, Measured) and len(typed) > 1:
        return " x ".join(map(tape.text, typed.values()))
    return ", ".join(f"{name} {tape.text(size)}" for name, size in typed.items()) or AS_DRAWN
