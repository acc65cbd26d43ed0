"""Key bindings and footer hints, made from the table of keys."""

from __future__ import annotations

from textual.binding import Binding

from benchmate.tui.keys import KEYS
from benchmate.tui.lines import Hint

KEPT_IN_FOOTER = ("help", "quit")
"""The hints that are never dropped from a narrow footer."""


OVER_LISTS = ("best-job",)
"""The keys of the table that go before what a list would do with them."""

LIST_ACTIONS = {"open": "focused.open", "move": "focused.step(1)"}
"""The keys that the list in hand answers to, and what a click on one of them does."""


def action_name(key: str) -> str:
    """The action a key's id stands for."""
    return LIST_ACTIONS.get(key, key.replace("-", "_"))


def bindings() -> list[Binding]:
    """A binding for every key of the table that the bench answers to itself."""
    return bindings_of(tuple(key.id for key in KEYS if key.id not in LIST_ACTIONS), "bench")


def bindings_of(keys: tuple[str, ...], screen: str) -> list[Binding]:
    """Bindings of some keys of the table, by their ids, for the screen that begins their own ids.

    So a key does the same on every screen that answers to it.
    """
    return [
        Binding(
            ",".join(key.keys),
            action_name(key.id),
            key.help,
            show=False,
            priority=screen == "bench" and key.id in OVER_LISTS,
            id=f"{screen}.{key.id}",
        )
        for key in KEYS
        if key.id in keys
    ]


def hints() -> tuple[tuple[Hint, ...], tuple[Hint, ...]]:
    """The footer's hints, and those of them to keep."""
    shown = {
        key.id: Hint(key=key.shown, label=key.label, action=action_name(key.id))
        for key in KEYS
        if key.label
    }
    kept = tuple(shown.pop(name) for name in KEPT_IN_FOOTER)
    return tuple(shown.values()), kept
