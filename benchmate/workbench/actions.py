"""What a framer does to a timber's progress: pure changes, each with the change that undoes it."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import TypeVar

from benchmate.layout.standing import memory_of
from benchmate.layout.step import Step
from benchmate.model.progress import AsCut, Measured, Progress, Tick

Change = Callable[[Progress], Progress]
_Kept = TypeVar("_Kept")


@dataclass(frozen=True, slots=True, kw_only=True)
class Sizes:
    """Real sizes for one place on a timber: the section there, and the tenon if it has one."""

    place: str
    measured: Measured
    as_cut: AsCut | None = None


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


def with_sizes(sizes: Sizes) -> Change:
    """The change that sets the real sizes at one place; a size not given is as drawn again."""

    def change(progress: Progress) -> Progress:
        measured = _set(progress.measured, sizes.place, sizes.measured, Measured())
        as_cut = progress.as_cut
        if sizes.as_cut is not None:
            as_cut = _set(as_cut, sizes.place, sizes.as_cut, AsCut())
        return progress.model_copy(update={"measured": measured, "as_cut": as_cut})

    return change


def sizes_at(progress: Progress, place: str, *, tenon: bool) -> Sizes:
    """The real sizes kept for one place."""
    return Sizes(
        place=place,
        measured=progress.measured.get(place, Measured()),
        as_cut=progress.as_cut.get(place, AsCut()) if tenon else None,
    )


def _set(kept: dict[str, _Kept], place: str, value: _Kept, nothing: _Kept) -> dict[str, _Kept]:
    others = {name: found for name, found in kept.items() if name != place}
    return others if value == nothing else {**others, place: value}
