"""What is wrong with a file or a disk, in words a framer can act on."""

from dataclasses import dataclass
from pathlib import Path

from benchmate.model.words import visible

MOST_SHOWN = 50
"""Problems shown at once: about two screens, and more than anybody mends in one go."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Problem:
    """One thing wrong in one file.

    `line` counts from 1, and is None where the whole file is meant. `key` is the way to the entry,
    counted from 1 (`timber[2].length`), or empty. `excerpt` is the line as written, with a second
    line that has a caret where the place in the line is known, or empty.
    """

    file: str
    line: int | None
    key: str
    excerpt: str
    message: str
    remedy: str

    def text(self) -> str:
        """Where, what is wrong, the line it stands in, and what to do; safe for a terminal."""
        where = self.file if self.line is None else f"{self.file}:{self.line}"
        head = ": ".join(part for part in (where, self.key, self.message) if part)
        below = (*self.excerpt.splitlines(), self.remedy)
        return "\n".join((visible(head), *(f"  {visible(line)}" for line in below if line)))


class ProjectError(Exception):
    """A file of a project that cannot be used as it stands: all that is wrong with it at once."""

    def __init__(self, problems: tuple[Problem, ...]) -> None:
        super().__init__(problems)
        self.problems = problems

    def __str__(self) -> str:
        shown = [problem.text() for problem in self.problems[:MOST_SHOWN]]
        more = len(self.problems) - len(shown)
        return "\n\n".join((*shown, f"and {more} more") if more else shown)


class KeepError(Exception):
    """A file or folder that the system will not read or write: which, why, and what to do."""

    def __init__(self, path: Path, problem: str, remedy: str) -> None:
        super().__init__(path, problem, remedy)
        self.path = path
        self.problem = visible(problem)
        self.remedy = visible(remedy)

    def __str__(self) -> str:
        return f"{visible(str(self.path))}: {self.problem}; {self.remedy}"
