"""What an action at the desk has to tell."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Outcome:
    """What to tell the framer after an action; nothing where the screen already shows it."""

    words: str = ""
    failed: bool = False


DONE = Outcome()
