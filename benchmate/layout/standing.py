"""How a timber stands: which steps are ticked, and which ticks no longer tell the truth."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum
from typing import NamedTuple

from benchmate.layout.step import LINE, Layout, Step
from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.model.progress import Progress, Tick


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


class Memory(NamedTuple):
    """What a tick remembers of a step: every figure by name, the faces, and the waste side.

    None of it is prose, so a tick does not go out of date when a sentence is put better.
    """

    marked: dict[str, Length]
    on: str
    waste: str


def memory_of(step: Step) -> Memory:
    """What a tick on a step remembers now; a step that does not last is remembered as done only."""
    if not step.lasting:
        return Memory({}, "", "")
    marked = {reading.name: reading.value for reading in (*step.readings, *step.rests)}
    return Memory(marked, ", ".join(step.sides), step.waste_side)


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
    now = memory_of(step)
    hooks = {reading.name: reading.hook for reading in step.readings}
    found = [
        f"marked at {_show(value, now.marked[name], tape)} from the {hooks[name]}"
        for name, value in tick.marked.items()
        if name in hooks and now.marked[name] != value
    ]
    lines = {rest.name: rest for rest in step.rests}
    made = "struck" if step.line else "cut"
    found += [
        f"{made} to the {lines[name].hook} at {_show(value, lines[name].value, tape)} "
        f"{lines[name].way}"
        for name, value in tick.marked.items()
        if name in lines and lines[name].value != value
    ]
    found.append(_elsewhere(_of_marks(tick.marked), hooks))
    if tick.on != now.on:
        found.append(f"marked on {tick.on or 'no face'}, now on {now.on or 'no face'}")
    if tick.waste != now.waste:
        found.append(f"waste was {_towards(tick.waste)}, now {_towards(now.waste)}")
    return "; ".join(filter(None, found))


def _of_marks(marked: Mapping[str, Length]) -> Mapping[str, Length]:
    """What a tick remembers of its own figures, without the lines that a cut was made to."""
    return {name: value for name, value in marked.items() if not name.endswith(LINE)}


def _show(then: Length, now: Length, tape: Tape) -> str:
    shown = tape.text(then), tape.text(now)
    if shown[0] == shown[1]:
        shown = then.exact_text(), now.exact_text()
    return f"{shown[0]}, now {shown[1]}"


def _elsewhere(then: Mapping[str, Length], hooks: Mapping[str, str]) -> str:
    """What a mark was measured from and is no more, or is now and was not."""
    gone = " and ".join(name for name in then if name not in hooks)
    new = " and ".join(hook for name, hook in hooks.items() if name not in then)
    if gone and new:
        return f"marked from the {gone}, now from the {new}"
    if gone:
        return f"no longer measured from the {gone}"
    return f"now measured from the {new} as well" if new else ""


def _towards(side: str) -> str:
    return f"towards the {side}" if side else "on neither side"


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
    return tick is not None and tick.marked == memory_of(layout.step(layout.shoulder)).marked
