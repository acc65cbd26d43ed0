"""What a framer is told of an action that cannot be kept, taken back or done again."""

from collections.abc import Iterator
from contextlib import contextmanager

from benchmate.store.document import key_text
from benchmate.store.files import PROJECT_FILE
from benchmate.store.problem import KeepError, ProjectError


class NotKeptError(Exception):
    """An action that could not be kept on disk; nothing was changed."""


class NotUndoneError(NotKeptError):
    """An action that is not taken back or not done again, as others have changed the same since."""


class BadTextError(NotKeptError):
    """A text typed for a name that cannot stand: where, what is wrong with it, and what to do.

    `excerpt` is the line it would make in the project file, with a caret where that is known.
    """

    def __init__(self, where: str, problem: str, remedy: str, excerpt: str) -> None:
        super().__init__(f"{where}: {problem}; {remedy}")
        self.where = where
        self.problem = problem
        self.remedy = remedy
        self.excerpt = excerpt


class BadProjectError(NotKeptError):
    """A text for the whole project file that makes no sound project: everything wrong with it."""

    def __init__(self, error: ProjectError) -> None:
        super().__init__(str(error))
        self.problems = error.problems


@contextmanager
def told_if_not_kept() -> Iterator[None]:
    """Turn what the store raises into what a framer is told; the folder is known to him."""
    try:
        yield
    except KeepError as error:
        raise NotKeptError(f"{error.problem}; {error.remedy}") from error
    except ProjectError as error:
        raise NotKeptError(str(error)) from error


@contextmanager
def told_if_bad(table: str = "", name: str = "") -> Iterator[None]:
    """Turn the first thing the store finds wrong with a new text into what a framer is told.

    The text is that of a name, or of the whole project file where none is given.
    """
    try:
        yield
    except KeepError as error:
        raise NotKeptError(f"{error.problem}; {error.remedy}") from error
    except ProjectError as error:
        first = error.problems[0]
        place = first.file if first.line is None else f"{first.file}:{first.line}"
        own = bool(table) and first.file == PROJECT_FILE and first.key == key_text((table, name))
        where = name if own else ": ".join(filter(None, (place, first.key)))
        raise BadTextError(where, first.message, first.remedy, first.excerpt) from error
