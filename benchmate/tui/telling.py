"""What must not be overlooked: flags, the greeting, marks spoilt elsewhere, what waits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from benchmate.model.feature import Asks
from benchmate.tui.lines import Part
from benchmate.tui.words import Saying
from benchmate.workbench.jobs import all_waits, waits_in_words

PROJECT_FILE = "project.toml"

if TYPE_CHECKING:
    from benchmate.layout.step import Step
    from benchmate.measure.printing import Tape
    from benchmate.workbench.actions import Sizes
    from benchmate.workbench.bench import Bench
    from benchmate.workbench.jobs import Wait, Waits
    from benchmate.workbench.walk import Walk

Parts = tuple[Part, ...]


def header(bench: Bench, walk: Walk | None) -> tuple[Parts, Parts]:
    """The header's left and right parts; the right ones are flags and progress."""
    name = Part(text=f" {bench.project.name} ")
    flags = tuple(Part(text=f" {flag} ", warning=True) for flag in _flags(bench, walk))
    if walk is None:
        return (name,), flags
    done = Part(text=f" {walk.done} of {len(walk.steps)} done ")
    return (Part(text=f" {walk.timber.name} ", strong=True), name), (*flags, done)


def _flags(bench: Bench, walk: Walk | None) -> tuple[str, ...]:
    again = walk.look_again if walk else 0
    flags = (
        ("STOP", bool(walk and walk.stopped)),
        ("OLD FIGURES: FILE BROKEN", bool(bench.broken)),
        ("READ ONLY", bool(bench.read_only)),
        (f"{again} to look at again", bool(again)),
    )
    return tuple(flag for flag, holds in flags if holds)


def greeting(bench: Bench) -> str:
    """What to tell when a project is laid on the desk; empty where all is well."""
    strays = [f"{stray.message}: {stray.remedy}." for stray in bench.strays()]
    read_only = [f"Read only: {bench.read_only}."] if bench.read_only else []
    return " ".join((*read_only, *strays))


def opened(bench: Bench) -> str:
    """What lies on the bench now, where its files are, and how to begin."""
    count = len(bench.timbers)
    if not count:
        return f"{bench.project.name}, in {bench.folder}: no timbers yet."
    timbers = "1 timber" if count == 1 else f"{count} timbers"
    return f"{bench.project.name}, {timbers}, in {bench.folder}. Press g for the first job."


def beginning(bench: Bench) -> tuple[Saying, ...]:
    """What to do next in a project that has no timbers yet."""
    file = bench.folder / PROJECT_FILE
    return (
        Saying(label="next", text="Press e to add the first timber, then its joints."),
        Saying(label="or", text="Press N to set a whole frame out from its driving dimensions."),
        Saying(label="or", text="Press P to open or copy another project."),
        Saying(
            label="or",
            text=f"Write in {file}, in any editor. It is read anew whenever it is saved, and what "
            "is wrong with it is told here.",
        ),
    )


def elsewhere(bench: Bench, timber: str) -> str:
    """The other timbers that are stopped or have marks to look at again; empty for none."""
    others = [bench.walk(other.id) for other in bench.timbers if other.id != timber]
    stopped = [walk.timber.name for walk in others if walk.stopped]
    again = [f"{walk.timber.name} {walk.look_again}" for walk in others if walk.look_again]
    told = (("Stopped", stopped), ("To look at again", again))
    return " ".join(f"{words}: {', '.join(names)}." for words, names in told if names)


def all_done(bench: Bench, walk: Walk) -> str:
    """That a timber has no open step, and where else there is something to look at."""
    others = elsewhere(bench, walk.timber.id)
    return f"Every step of {walk.timber.name} is ticked. {others}".rstrip()


def only_waiting(walk: Walk, waits: Waits) -> str:
    """That everything open on a timber waits, and for what."""
    return (
        f"All that is open on {walk.timber.name} waits for {waits_in_words(all_waits(waits))}. "
        "Press g for the next best job."
    )


def not_ticked(waits: tuple[Wait, ...]) -> str:
    """That a step waits, for what, and the keys to go on with."""
    more = f"; and {len(waits) - 1} more" if len(waits) > 1 else ""
    return (
        f"Not ticked: this waits for {waits[0].words}{more}. "
        "Press o to tick it all the same, g for the next best job."
    )


def out_of_order(waits: tuple[Wait, ...]) -> str:
    """That a step was ticked before what it waits for, and what comes of it."""
    return (
        f"Ticked out of order, before {waits_in_words(waits)}. "
        "Should that change this figure, the step will say: look again."
    )


def measured(step: Step, sizes: Sizes, tape: Tape) -> str:
    """That a measuring step keeps the sizes it showed, and which: `Kept as measured: 7" x 7".`."""
    section = step.asks is Asks.SECTION
    kept = sizes.measured if section else sizes.as_cut
    shown = " x ".join(tape.text(size) for _, size in kept or () if size is not None)
    return f"Kept as {'measured' if section else 'cut'}: {shown}."
