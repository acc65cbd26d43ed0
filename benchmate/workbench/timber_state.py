"""How far a whole timber is: read off its ticks, and what is signed where no tick can tell.

1. Not started, begun, laid out and cut follow from ticks that are still true.
2. Checked by a second person, fitted and assembled are signed by the framer, each with its time.
3. A second check holds for the marks as they were at that time: one that was struck or ticked
   since, or that no longer reads as it did, makes it void.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, IntEnum
from typing import Any

from benchmate.layout.standing import State
from benchmate.model.feature import Stage
from benchmate.model.progress import SIGN_WORDS, SignWord
from benchmate.workbench.walk import Walk

SIGNED_AS: dict[SignWord, str] = {
    "checked": "checked by a second person",
    "fitted": "fitted",
    "assembled": "assembled",
}
"""What is signed, in words."""

MARKS = (Stage.END, Stage.MARK, Stage.CHAMFER)
"""The stages whose steps put marks on the wood, which a second person checks."""

MAKING = (Stage.CUT, Stage.PARE)
"""The stages whose steps take wood away."""


class Made(IntEnum):
    """How far a timber is, in the order of the work."""

    NOT_STARTED = 0
    BEGUN = 1
    LAID_OUT = 2
    CHECKED = 3
    CUT = 4
    FITTED = 5
    ASSEMBLED = 6

    @property
    def words(self) -> str:
        """In words: `laid out`."""
        return self.name.lower().replace("_", " ")


class Check(Enum):
    """What a second person's check is worth."""

    NONE = "none"
    HOLDS = "holds"
    AGAIN = "look again"


@dataclass(frozen=True, slots=True, kw_only=True)
class TimberState:
    """Everything that is known of how far a timber is."""

    begun: bool
    laid_out: bool
    cut: bool
    check: Check
    fitted: bool
    assembled: bool

    @property
    def made(self) -> Made:
        """The furthest it is."""
        reached = (
            (Made.ASSEMBLED, self.assembled),
            (Made.FITTED, self.fitted),
            (Made.CUT, self.cut),
            (Made.CHECKED, self.check is Check.HOLDS),
            (Made.LAID_OUT, self.laid_out),
            (Made.BEGUN, self.begun),
        )
        return next((made for made, holds in reached if holds), Made.NOT_STARTED)

    @property
    def missing(self) -> tuple[str, ...]:
        """What should have come before the furthest that is signed and did not."""
        before = (
            ("fitted", self.assembled and not self.fitted),
            ("cut", (self.fitted or self.assembled) and not self.cut),
            ("laid out", self.made is Made.CHECKED and not self.laid_out),
        )
        return tuple(words for words, lacks in before if lacks)

    @property
    def words(self) -> str:
        """In words: `cut, checked`, `laid out, check again`, `assembled, not fitted`."""
        return ", ".join(self._parts())

    def _parts(self) -> Iterator[str]:
        yield self.made.words
        yield from (f"not {words}" for words in self.missing)
        if self.check is Check.AGAIN:
            yield "check again"
        elif self.check is Check.HOLDS and self.made is not Made.CHECKED:
            yield "checked"

    @property
    def sign(self) -> str:
        """Five letters that read without colour: `L2CFA`, one for each thing done.

        L laid out (a small one for begun), 2 checked by a second person (! where that is to be done
        again), C cut, F fitted, A assembled.
        """
        check = {Check.NONE: "-", Check.HOLDS: "2", Check.AGAIN: "!"}[self.check]
        layout = "L" if self.laid_out else "l" if self.begun else "-"
        rest = (("C", self.cut), ("F", self.fitted), ("A", self.assembled))
        return layout + check + "".join(letter if holds else "-" for letter, holds in rest)


def state_of(walk: Walk) -> TimberState:
    """How far a timber is."""
    progress = walk.progress
    return TimberState(
        begun=any(standing.tick is not None for standing in walk.standings),
        laid_out=_all_true(walk, tuple(stage for stage in Stage if stage < Stage.CUT)),
        cut=_all_true(walk, MAKING),
        check=_check(walk),
        fitted=progress.sign("fitted") is not None,
        assembled=progress.sign("assembled") is not None,
    )


def _all_true(walk: Walk, stages: tuple[Stage, ...]) -> bool:
    """Whether every step of some stages is ticked and still true; False where there is none."""
    states = [
        standing.state
        for step, standing in zip(walk.steps, walk.standings, strict=True)
        if step.stage in stages
    ]
    return bool(states) and all(state is State.TICKED for state in states)


def _check(walk: Walk) -> Check:
    signed = walk.progress.sign("checked")
    if signed is None:
        return Check.NONE
    for step, standing in zip(walk.steps, walk.standings, strict=True):
        tick = standing.tick if step.stage in MARKS else None
        since = tick is not None and tick.at > signed.at
        if since or (tick is not None and standing.state is State.LOOK_AGAIN):
            return Check.AGAIN
    return Check.HOLDS


def told_of(state: TimberState, what: SignWord) -> str:
    """What is to be told of a timber that something was just signed of; empty where all is well."""
    lacks = {
        "checked": (("laid out", state.laid_out),),
        "fitted": (("cut", state.cut),),
        "assembled": (("fitted", state.fitted), ("cut", state.cut)),
    }[what]
    missing = [words for words, holds in lacks if not holds]
    told = [f"It is {_neither(missing)} yet."] if missing else []
    if what == "checked" and state.check is Check.AGAIN:
        told.append("A mark no longer reads as ticked: put that right, then check again.")
    return " ".join(told)


def _neither(words: list[str]) -> str:
    """`not cut`, `neither fitted nor cut`."""
    return f"neither {' nor '.join(words)}" if len(words) > 1 else f"not {words[0]}"


def state_line(walk: Walk) -> str:
    """How far a timber is, in one line: `laid out, checked; 31 of 49 steps done`."""
    return f"{state_of(walk).words}; {walk.done} of {len(walk.steps)} steps done"


def signs_data(walk: Walk) -> dict[str, Any]:
    """How far a timber is, as plain data."""
    state, progress = state_of(walk), walk.progress
    signed = ((word, progress.sign(word)) for word in SIGN_WORDS)
    return {
        "state": state.made.words,
        "laid_out": state.laid_out,
        "cut": state.cut,
        "check": state.check.value,
        "signed": {word: found.at.isoformat() for word, found in signed if found},
        "done": walk.done,
        "steps": len(walk.steps),
    }
