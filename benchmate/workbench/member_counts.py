"""Counts of timbers in words: `4 posts`, `2 right, 2 left`, `1 cut, 2 begun`."""

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Protocol

from benchmate.layout.likeness import LEFT, NEITHER, RIGHT
from benchmate.model.project import Timber
from benchmate.workbench.timber_state import Check, Made, TimberState

HANDS = {RIGHT: "right", LEFT: "left", NEITHER: "no hand"}
"""A hand in the fewest words."""

_HISSING = ("s", "x", "z", "ch", "sh")


class Counted(Protocol):
    """What is counted of a timber; its hand is empty while it is not known."""

    @property
    def timber(self) -> Timber:
        """Its record."""

    @property
    def state(self) -> TimberState:
        """How far it is."""

    @property
    def hand(self) -> str:
        """Its hand."""


def counted(count: int, kind: str) -> str:
    """A count of a kind: `1 post`, `4 posts`, `2 sashes`, `3 bodies`."""
    if count == 1:
        return f"1 {kind}"
    if kind.endswith("y") and kind[-2:-1] not in tuple("aeiou"):
        return f"{count} {kind[:-1]}ies"
    return f"{count} {kind}{'es' if kind.endswith(_HISSING) else 's'}"


def kinds(members: Iterable[Counted]) -> str:
    """How many of each kind: `2 posts, 1 tie`."""
    found = Counter(each.timber.kind for each in members)
    return ", ".join(counted(count, kind) for kind, count in found.items())


def tally(members: Sequence[Counted], *, states: bool) -> str:
    """How many of each hand, once all are known, and with `states` how many are how far."""
    told = (hands(members), progress(members) if states else "")
    return "; ".join(filter(None, told))


def hands(members: Sequence[Counted]) -> str:
    """How many of each hand: `2 right, 2 left`; empty while any is not known."""
    found = Counter(each.hand for each in members)
    if found[""]:
        return ""
    return ", ".join(f"{found[hand]} {words}" for hand, words in HANDS.items() if found[hand])


def progress(members: Iterable[Counted]) -> str:
    """How many are begun, laid out and so on, the furthest first; those not begun are the rest.

    A second check that is to be made anew is counted beside.
    """
    states = [each.state for each in members]
    found = Counter(state.made for state in states)
    order = sorted(set(found) - {Made.NOT_STARTED}, reverse=True)
    told = [f"{found[made]} {made.words}" for made in order]
    again = sum(state.check is Check.AGAIN for state in states)
    return ", ".join([*told, f"{again} to check again"] if again else told)
