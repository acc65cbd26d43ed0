"""A framer's own settings: how his screen shows lengths, and what is suggested to him.

1. They are read once, when a screen opens; what cannot be used is told and the default counts.
2. No mark, tick or file of a project follows from them, nor what is printed.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from benchmate.measure.printing import Tape
from benchmate.model.preference import length_of, share_of
from benchmate.model.project import GRADUATIONS, STYLES, Project, fitting_marks, tape_of
from benchmate.outset.answers import SHOP
from benchmate.outset.own import LENGTHS, Own
from benchmate.store.preference_file import Preferred, read_preferences, write_preferences
from benchmate.store.preference_place import preference_path
from benchmate.store.problem import KeepError, Problem, ProjectError


class NotSetError(Exception):
    """Settings that could not be kept: why, and what to do. The file is as it was."""


@dataclass(frozen=True, slots=True)
class Preferences:
    """The settings that are set, by their keys, every one of them sound."""

    texts: Mapping[str, str] = field(default_factory=dict)

    def word(self, key: str) -> str:
        """What is set for a key; empty for nothing."""
        return self.texts.get(key, "")

    def tape(self, project: Project) -> Tape:
        """How lengths of a project are shown on this screen.

        A graduation counts where it is one of the units shown; without one, the project's own
        where it is, else the usual.
        """
        units = self.word("units") or project.units
        marks = fitting_marks(units)
        wanted = (self.word("graduation"), project.graduation)
        return tape_of(units, next((mark for mark in wanted if mark in marks), None))

    @property
    def own(self) -> Own:
        """What is suggested to new projects and new joints."""
        keys = (*SHOP, *LENGTHS.values())
        lengths = {key: length_of(self.texts[key]) for key in keys if key in self.texts}
        share = self.word("tenon_share")
        return Own(
            lengths=lengths,
            share=share_of(share) if share else None,
            units=self.word("units"),
            graduation=self.word("graduation"),
        )


PLAIN = Preferences()
"""Nothing set: everything as the project and the trade have it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """The settings of a user, where their file is, and what is wrong with it, in a sentence."""

    preferences: Preferences
    path: Path | None = None
    trouble: str = ""


def find_preferences(environ: Mapping[str, str]) -> Found:
    """What a user has set."""
    try:
        path = preference_path(environ)
    except RuntimeError:
        return Found(preferences=PLAIN)
    read: Preferred = read_preferences(path)
    return Found(preferences=Preferences(read.texts), path=path, trouble=_told(read.problems))


def keep_preferences(found: Found, texts: Mapping[str, str]) -> Found:
    """Write the settings that differ from those found, and nothing else. Raises NotSetError."""
    if found.path is None:
        raise NotSetError("there is no home folder to keep them in; set XDG_CONFIG_HOME to one")
    old = found.preferences.texts
    changes = {key: texts.get(key) for key in (*old, *texts) if old.get(key) != texts.get(key)}
    try:
        write_preferences(found.path, changes)
    except ProjectError as error:
        raise NotSetError(_line(error.problems[0])) from error
    except KeepError as error:
        raise NotSetError(str(error)) from error
    read = read_preferences(found.path)
    return Found(preferences=Preferences(read.texts), path=found.path, trouble=_told(read.problems))


def reckon_tape(preferences: Preferences, units: str, graduation: str) -> tuple[str, str]:
    """The units and the graduation of the calculator where the command line leaves them open."""
    said = units or preferences.word("units") or next(iter(STYLES))
    own = preferences.word("graduation")
    fits = own in fitting_marks(said) and own in GRADUATIONS
    return said, graduation or (own if fits else "")


def _told(problems: tuple[Problem, ...]) -> str:
    """What is wrong, in a sentence or two; empty for nothing."""
    if not problems:
        return ""
    more = f" There are {len(problems) - 1} more." if len(problems) > 1 else ""
    return f"{_line(problems[0])}. The default counts meanwhile.{more}"


def _line(problem: Problem) -> str:
    """A problem in one line: file, line, key, what is wrong, what to do."""
    head = problem.text().splitlines()[0]
    return f"{head}; {problem.remedy}"
