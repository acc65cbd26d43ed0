"""A user's own settings on disk: read leniently, every fault told, and written gently.

1. What is wrong with a setting is told, and it counts as not set; the others hold.
2. Writing changes the keys that were changed and no other character; a file that is no TOML is
   left as it is.
3. A link is followed: settings are often kept elsewhere and linked to.
"""

import os
from collections.abc import Mapping
from pathlib import Path
from typing import NamedTuple

from benchmate.model.preference import BY_ID, PREFERENCES, choices_of, fault
from benchmate.store.document import Document
from benchmate.store.editing import Draft
from benchmate.store.files import read_file, trouble
from benchmate.store.problem import KeepError, Problem, ProjectError
from benchmate.store.syntax import read_document
from benchmate.store.writing import write_atomically


class Preferred(NamedTuple):
    """The settings that can be used, as written, and what is wrong with the others."""

    texts: Mapping[str, str]
    problems: tuple[Problem, ...]


def read_preferences(path: Path) -> Preferred:
    """The settings in a file; none where there is no file."""
    try:
        data = _data(path)
        document = read_document(str(path), data)
    except ProjectError as error:
        problems = (each for each in error.problems)
        return Preferred({}, tuple(_of(path, each) for each in problems))
    except KeepError as error:
        problem = Problem(
            file=str(path),
            line=None,
            key="",
            excerpt="",
            message=error.problem,
            remedy=error.remedy,
        )
        return Preferred({}, (problem,))
    texts = _checked(document)
    return Preferred(texts, tuple(sorted(document.problems, key=lambda one: one.line or 0)))


def write_preferences(path: Path, changes: Mapping[str, str | None]) -> None:
    """Change settings in a file; None takes one out. Raises KeepError, ProjectError."""
    data = _data(path)
    read_document(str(path), data)
    draft = Draft.of(data)
    # What goes is taken out last: a new line then has one to come after, below a heading comment.
    for key, text in sorted(changes.items(), key=lambda change: change[1] is None):
        draft = draft.drop((key,)) if text is None else draft.put((key,), text)
    wanted = draft.text.encode()
    if wanted == data:
        return
    real = Path(os.path.realpath(path))
    try:
        real.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise trouble(real.parent, error) from error
    write_atomically(real, wanted)


def _data(path: Path) -> bytes:
    """The file's bytes; nothing for a file that is not there. Raises KeepError, ProjectError."""
    real = Path(os.path.realpath(path))
    try:
        there = real.exists()
    except OSError as error:
        raise trouble(path, error) from error
    return read_file(real.parent, real.name).data if there else b""


def _of(path: Path, problem: Problem) -> Problem:
    """The problem with the file named as the user knows it."""
    return Problem(
        file=str(path),
        line=problem.line,
        key=problem.key,
        excerpt=problem.excerpt,
        message=problem.message,
        remedy=problem.remedy,
    )


def _checked(document: Document) -> dict[str, str]:
    """The settings of a file that are sound; the others are noted in the document."""
    found: dict[str, str] = {}
    for key in document.data:
        if key not in BY_ID:
            document.add((key,), "is no setting", document.nearest(key, BY_ID))
    for preference in PREFERENCES:
        key = preference.id
        if key not in document.data:
            continue
        text, units = document.data[key], found.get("units", "")
        if not isinstance(text, str):
            choices = choices_of(preference, units)
            example = choices[0] if choices else "1/4" if key == "tenon_share" else "1-1/2 in"
            document.add((key,), "is not text", f'write it in quotes, as "{example}"')
            continue
        message, remedy = fault(preference, text.strip(), units)
        if message:
            document.add((key,), message, remedy)
        else:
            found[key] = text.strip()
    return found
