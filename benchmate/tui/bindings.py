"""Key bindings and footer hints, made from the table of keys."""

from __future__ import annotations

from textual.binding import Binding

from benchmate.tui.keys import KEYS
from benchmate.tui.lines import Hint

KEPT_IN_FOOTER = ("help", "quit")
"""The hints that are never dropped from a narrow footer."""


def action_name(key: str) -> str:
    """The name of the action a key's id stands for."""
    return key.replace("-", "_")


def bindings(*without: str) -> list[Binding]:
    """A binding for every key of the table that the screen answers to itself."""
    return [
        Binding(",".join(key.keys), action_name(key.id), key.help, show=False, id=f"bench.{key.id}")
        for key in KEYS
        if key.keys and key.id not in without
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
