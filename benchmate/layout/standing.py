"""How a timber stands: which steps are ticked, and which ticks no longer tell the truth."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum

from benchmate.layout.step import Layout, Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.progress import Progress, Tick
from benchmate.model.words import lower_first


class State(Enum):
    """Where a step stands."""

    OPEN = "open"
    TICKED = "ticked"
    LOOK_AGAIN = "look again"


@dataclass(frozen=True, slots=True)
class Standing:
    """One step's state; `changed` says what is no longer as ticked."""

    state: State
    tick: Tick | None = None
    changed: str = ""


def marked_now(step: Step) -> dict[str, Length]:
    """What a tick on a step remembers: every reading by what it is measured from."""
    if not step.lasting:
        return {}
    return {reading.hook: reading.value for reading in step.readings}


def standing(step: Step, tick: Tick | None, tape: Tape) -> Standing:
    """A step's state, given its tick."""
    if tick is None:
        return Standing(State.OPEN)
    changed = what_changed(step, tick, tape)
    return Standing(State.LOOK_AGAIN if changed else State.TICKED, tick, changed)


def what_changed(step: Step, tick: Tick, tape: Tape) -> str:
    """What a ticked step read then and reads now, in words; empty where nothing changed.

    Only exact changes count: a coarser tape does not put a tick out of date.
    """
    if not step.lasting:
        return ""
    then, now = tick.marked, marked_now(step)
    found = [
        f"marked at {_show(value, now[hook], tape)} from the {hook}"
        for hook, value in then.items()
        if hook in now and now[hook] != value
    ]
    found.append(_elsewhere(then, now))
    if tick.on != step.on:
        found.append(f"marked on {tick.on or 'no face'}, now on {step.on or 'no face'}")
    if tick.waste != step.waste:
        found.append(f"waste was {_side(tick.waste)}, now {_side(step.waste)}")
    return "; ".join(filter(None, found))


def _show(then: Length, now: Length, tape: Tape) -> str:
    shown = tape.text(then), tape.text(now)
    if shown[0] == shown[1]:
        shown = then.exact_text(), now.exact_text()
    return f"{shown[0]}, now {shown[1]}"


def _elsewhere(then: Mapping[str, Length], now: Mapping[str, Length]) -> str:
    """What a mark was measured from and is no more, or is now and was not."""
    gone = " and ".join(hook for hook in then if hook not in now)
    new = " and ".join(hook for hook in now if hook not in then)
    if gone and new:
        return f"marked from the {gone}, now from the {new}"
    if gone:
        return f"no longer measured from the {gone}"
    return f"now measured from the {new} as well" if new else ""


def _side(waste: str) -> str:
    return lower_first(waste).rstrip(".") or "nothing"


def standings(layout: Layout, progress: Progress, tape: Tape) -> tuple[Standing, ...]:
    """The state of every step of a walk, in the same order."""
    ticks = {tick.step: tick for tick in progress.ticks}
    return tuple(standing(step, ticks.get(step.id), tape) for step in layout.steps)


def orphaned(layout: Layout, progress: Progress) -> tuple[Tick, ...]:
    """Ticks on steps the timber no longer has: kept, and shown, never dropped."""
    known = {step.id for step in layout.steps}
    return tuple(tick for tick in progress.ticks if tick.step not in known)


def shoulder_struck(layout: Layout, progress: Progress) -> bool:
    """Whether marks along the timber may be measured from its reference shoulder.

    A shoulder that was struck somewhere else than it now lies is not struck.
    """
    if layout.shoulder is None:
        return True
    tick = progress.tick(layout.shoulder)
    return tick is not None and tick.marked == marked_now(layout.step(layout.shoulder))
