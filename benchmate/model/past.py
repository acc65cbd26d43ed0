"""What was done, in order, and what became of it: what can be undone, and what done again."""

from collections.abc import Iterable, Iterator
from enum import Enum
from typing import Final, Literal, NamedTuple

from benchmate.model.journal import Action, Line


class Became(Enum):
    """What became of an action."""

    DONE = "done"
    UNDONE = "undone"
    SPENT = "spent"
    LEFT = "left"

    @property
    def holds(self) -> bool:
        """Whether it was not taken back."""
        return self in (Became.DONE, Became.LEFT)


_KEPT: Final[dict[Became, Literal["spent", "left"]]] = {
    Became.SPENT: "spent",
    Became.LEFT: "left",
}
"""What no later line can change, and so is written with the action itself."""


class Deed(NamedTuple):
    """An action and what became of it.

    Undone it can be done again, until something else is done: then it is spent. It is left where
    what it changed was changed outside since, so that it is not to be undone.
    """

    action: Action
    became: Became


def lines_of(deeds: Iterable[Deed]) -> Iterator[Line]:
    """The fewest lines that make these deeds what they are."""
    undone: list[str] = []
    for action, became in deeds:
        yield Line(did=action, became=_KEPT.get(became, ""))
        if became is Became.UNDONE:
            undone.append(action.id)
    for token in reversed(undone):
        yield Line(undone=token)


class Past:
    """The actions of a journal, oldest first.

    What is done now comes after everything that can be undone and takes the place of what could be
    done again, so what comes next either way follows from the order and the states alone.
    """

    def __init__(self, lines: Iterable[Line] = ()) -> None:
        self._deeds: dict[str, Deed] = {}
        self._undone: set[str] = set()
        for line in lines:
            self.take(line)

    def __iter__(self) -> Iterator[Deed]:
        return iter(self._deeds.values())

    def __len__(self) -> int:
        return len(self._deeds)

    @property
    def to_undo(self) -> Action | None:
        """What is undone next."""
        backwards = reversed(self._deeds.values())
        return next((deed.action for deed in backwards if deed.became is Became.DONE), None)

    @property
    def to_redo(self) -> Action | None:
        """What is done again next."""
        return next((deed.action for deed in self if deed.became is Became.UNDONE), None)

    def take(self, line: Line) -> None:
        """Take the next line of a journal; one about an action that is not here says nothing."""
        if line.did is not None:
            self._do(line.did, Became(line.became) if line.became else Became.DONE)
        self._turn(line.undone, {Became.DONE: Became.UNDONE})
        self._turn(line.redone, {Became.UNDONE: Became.DONE})
        self._turn(line.left, {Became.DONE: Became.LEFT, Became.UNDONE: Became.SPENT})

    def _do(self, action: Action, became: Became) -> None:
        # A line that stands twice, as in files put together by hand, is one action.
        if action.id in self._deeds:
            return
        if became is Became.DONE:
            for token in self._undone:
                self._deeds[token] = self._deeds[token]._replace(became=Became.SPENT)
            self._undone.clear()
        self._deeds[action.id] = Deed(action, became)

    def _turn(self, token: str, states: dict[Became, Became]) -> None:
        deed = self._deeds.get(token)
        if deed is None or deed.became not in states:
            return
        self._deeds[token] = deed._replace(became=states[deed.became])
        if states[deed.became] is Became.UNDONE:
            self._undone.add(token)
        else:
            self._undone.discard(token)
