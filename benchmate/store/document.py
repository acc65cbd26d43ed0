"""One file of a project as text: its data, where each piece stands, and what is wrong with it."""

import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any, TypeVar

from benchmate.store.excerpt import excerpt
from benchmate.store.nearest import NONE, nearest
from benchmate.store.problem import MOST_SHOWN, Problem, ProjectError
from benchmate.store.toml_lines import Path, Places

Read = TypeVar("Read")

_MOST_LOOKED_UP = 4 * MOST_SHOWN
"""Problems up to which the nearest word is looked for: it takes long, and few are ever shown."""

PLAIN_KEY = re.compile(r"[A-Za-z0-9_-]+")
"""A key that needs no quotes."""


def key_text(path: Path) -> str:
    """A path in words: `timber[2].length`, counted from 1."""
    text = ""
    for part in path:
        if isinstance(part, int):
            text += f"[{part + 1}]"
        else:
            name = part if PLAIN_KEY.fullmatch(part) else f'"{part}"'
            text += f".{name}" if text else name
    return text


@dataclass(slots=True)
class Document:
    """A well-formed file, and the problems found in it so far."""

    file: str
    data: dict[str, Any]
    places: Places
    problems: list[Problem] = field(default_factory=list)
    _unsound: set[Path] = field(default_factory=set)

    def add(self, path: Path, message: str, remedy: str, column: int | None = None) -> None:
        """Note a problem with what stands at a path; `column` is one inside its text."""
        self._unsound.update(path[:length] for length in range(len(path) + 1))
        place = None if column is None else self.places.inside(path, column)
        line, at = place or (self.places.line(path), None)
        self.problems.append(
            Problem(
                file=self.file,
                line=line,
                key=key_text(path),
                excerpt=excerpt(self.places.line_text(line), at),
                message=message,
                remedy=remedy,
            )
        )

    def table(self, name: str) -> dict[str, Any]:
        """A table at the top of the file; empty if there is none, or it is something else."""
        found = self.data.get(name)
        return found if isinstance(found, dict) else {}

    def nearest(self, word: object, known: Iterable[str], *, none: str = NONE) -> str:
        """The remedy for an unknown word; the nearest is looked for while problems are few."""
        return nearest(word if len(self.problems) < _MOST_LOOKED_UP else None, known, none=none)

    def sound(self, path: Path) -> bool:
        """Whether no problem has been found at a path or in what stands below it."""
        return path not in self._unsound

    def finish(self, read: Read | None) -> Read:
        """What was read, if all is well. Raises ProjectError, in the order of the lines."""
        if self.problems or read is None:
            raise ProjectError(tuple(sorted(self.problems, key=lambda one: one.line or 0)))
        return read
