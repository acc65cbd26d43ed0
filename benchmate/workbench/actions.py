"""What a framer does to a timber's progress: pure changes."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from typing import TypeVar

from benchmate.layout.standing import memory_of
from benchmate.layout.step import Step
from benchmate.measure.length import Length
from benchmate.model.feature import Asks, Size
from benchmate.model.progress import (
    AsCut,
    Blemish,
    Measured,
    Progress,
    Signed,
    SignWord,
    Tick,
    WrittenNote,
)

SECTION = ("first", "second")
"""The depths of a measured section, in the order a measuring step shows them."""

Change = Callable[[Progress], Progress]
_Kept = TypeVar("_Kept")


@dataclass(frozen=True, slots=True, kw_only=True)
class Sizes:
    """Real sizes for one place on a timber: the section there, and the tenon if it has one."""

    place: str
    measured: Measured
    as_cut: AsCut | None = None


class OvertakenError(Exception):
    """What is to be undone or done again is not as it was left: somebody changed it outside."""


def tick_for(step: Step, at: datetime) -> Tick:
    """A tick that remembers what the step reads now."""
    memory = memory_of(step)
    return Tick(step=step.id, marked=memory.marked, on=memory.on, waste=memory.waste, at=at)


def with_tick(step: str, tick: Tick | None) -> Change:
    """The change that puts a tick on a step, or takes it off."""

    def change(progress: Progress) -> Progress:
        others = tuple(found for found in progress.ticks if found.step != step)
        return progress.model_copy(update={"ticks": others if tick is None else (*others, tick)})

    return change


def with_sign(what: SignWord, signed: Signed | None) -> Change:
    """The change that signs something of the whole timber, or takes that off."""

    def change(progress: Progress) -> Progress:
        others = tuple(found for found in progress.signed if found.what != what)
        update = {"signed": others if signed is None else (*others, signed)}
        return progress.model_copy(update=update)

    return change


def with_sizes(sizes: Sizes) -> Change:
    """The change that sets the real sizes at one place; a size not given is as drawn again."""

    def change(progress: Progress) -> Progress:
        measured = _set(progress.measured, sizes.place, sizes.measured, Measured())
        as_cut = progress.as_cut
        if sizes.as_cut is not None:
            as_cut = _set(as_cut, sizes.place, sizes.as_cut, AsCut())
        return progress.model_copy(update={"measured": measured, "as_cut": as_cut})

    return change


def with_note(note: WrittenNote) -> Change:
    """The change that adds a note."""
    return lambda progress: progress.model_copy(update={"notes": (*progress.notes, note)})


def with_blemish(blemish: Blemish) -> Change:
    """The change that adds a blemish."""
    return lambda progress: progress.model_copy(
        update={"blemishes": (*progress.blemishes, blemish)}
    )


def without_noted(noted: WrittenNote | Blemish) -> Change:
    """The change that takes out a note, or a blemish."""
    table = "blemishes" if isinstance(noted, Blemish) else "notes"

    def change(progress: Progress) -> Progress:
        listed: tuple[WrittenNote | Blemish, ...] = getattr(progress, table)
        left = tuple(each for each in listed if each.id != noted.id)
        return progress.model_copy(update={table: left})

    return change


def next_id(kind: str, taken: Iterable[str]) -> str:
    """The next free id of a kind, counted up past all that are there: `knot-3`."""
    ends = (each.removeprefix(f"{kind}-") for each in taken if each.startswith(f"{kind}-"))
    return f"{kind}-{max((int(end) for end in ends if end.isdecimal()), default=0) + 1}"


def both(first: Change, second: Change) -> Change:
    """Two changes as one: both are kept, or neither."""
    return lambda progress: second(first(progress))


def measured_by(step: Step, parts: tuple[Size, ...], kept: Sizes) -> Sizes:
    """The sizes at a measuring step's place once it is ticked: what is not typed is as it shows.

    `parts` are the sizes of the finished part there. Any other step measures nothing.
    """
    shown = tuple(reading.value for reading in step.readings)
    if step.asks is Asks.SECTION:
        found = dict(zip(SECTION, shown, strict=True))
        return replace(kept, measured=Measured(**(found | _typed(kept.measured))))
    if step.asks is Asks.AS_CUT:
        found = dict(zip((part.name for part in parts), shown, strict=True))
        return replace(kept, as_cut=AsCut(**(found | _typed(kept.as_cut or AsCut()))))
    return kept


def with_shown(step: Step, parts: tuple[Size, ...], place: Sizes) -> Change:
    """The change that keeps what a measuring step shows where nothing is typed, then and there."""

    def change(progress: Progress) -> Progress:
        kept = sizes_at(progress, place.place, tenon=place.as_cut is not None)
        return with_sizes(measured_by(step, parts, kept))(progress)

    return change


def _typed(sizes: Measured | AsCut) -> dict[str, Length]:
    return {name: size for name, size in sizes if size is not None}


def sizes_at(progress: Progress, place: str, *, tenon: bool) -> Sizes:
    """The real sizes kept for one place."""
    return Sizes(
        place=place,
        measured=progress.measured.get(place, Measured()),
        as_cut=progress.as_cut.get(place, AsCut()) if tenon else None,
    )


def _set(kept: dict[str, _Kept], place: str, value: _Kept, nothing: _Kept) -> dict[str, _Kept]:
    if value != nothing:
        return {**kept, place: value}
    return {name: found for name, found in kept.items() if name != place}
