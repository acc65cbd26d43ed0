"""The journal of a project: one line of JSON for each thing done, in one file that only grows.

1. What was done is on disk before its line is. A program that dies between the two leaves the
   work and loses the undo of that one action; no line ever says what was not done.
2. A journal that cannot be written or read stops no work. What is wrong is told once, and lines
   that could not be written are kept and written with the next.
3. A line that cannot be read is left where it is, and the others are read.
4. A file that has grown past `TRIM_AT`, and past twice what its newest actions take, is written
   anew with those only.
"""

import contextlib
import hashlib
from pathlib import Path
from typing import NamedTuple

from pydantic import ValidationError

from benchmate.model.journal import Line
from benchmate.model.past import Became, Deed, Past, lines_of
from benchmate.store.files import Stamp, check_inside, read_file, stamp
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.writing import append_lines, write_atomically

JOURNAL_FILE = "journal.jsonl"
"""What was done in a project, action by action."""

LEAST_KEPT = 200
"""Actions that are always kept, however long: what can at least be undone."""

TRIM_AT, TRIM_TO = 1_000_000, 500_000
"""Bytes at which the file is trimmed, and to which: some 2,400 and 1,200 ticks, as many as are read
in a tenth of a second."""

LONGEST_LINE = 250_000
"""Bytes in a line: five times a big barn's whole project file, so what passes it is left out."""

_MOST_BYTES = 2 * LEAST_KEPT * LONGEST_LINE
"""Bytes in a journal: more than the longest lines could make, so it is something else."""


class _Unread(NamedTuple):
    """A line that cannot be read: its number, from 1, and its bytes."""

    number: int
    written: bytes

    @property
    def ended(self) -> bool:
        """Whether it was written to its end; the last one may just be being written."""
        return self.written.endswith(b"\n")


class Journal:
    """What was done in one project folder; read when it is first asked for."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._past: Past | None = None
        self._seen: Stamp | None = None
        self._unwritten: list[Line] = []
        self._unread: list[_Unread] = []
        self._told: set[str] = set()
        self._trim_at = TRIM_AT
        self._troubles: list[str] = []
        self._failing = ""

    def past(self) -> Past:
        """What was done, read again if others have changed the file."""
        try:
            now = stamp(self._folder, JOURNAL_FILE)
            if self._past is None or now != self._seen:
                self._past = self._read()
        except (KeepError, ProjectError) as error:
            self._fail(f"What was done cannot be read from {JOURNAL_FILE}: {_told(error)}")
            return Past(self._unwritten) if self._past is None else self._past
        return self._past

    def add(self, line: Line) -> None:
        """Put a line at the end of the file; on disk before this returns, or told why not."""
        if len(_written(line)) > LONGEST_LINE:
            self._troubles.append("This was too big a change to be noted: it cannot be undone.")
            return
        if self._past is not None:
            self._past.take(line)
        self._unwritten.append(line)
        try:
            self._write()
        except (KeepError, ProjectError) as error:
            self._fail(
                f"Done, but not noted in {JOURNAL_FILE}, so it can be undone only until the "
                f"program is closed: {_told(error)}"
            )

    def to_tell(self, *, writing: bool) -> str:
        """What is wrong with the journal and was not told before; empty for nothing.

        Whoever is `writing` it notes what it has told. Others leave alone a last line that may
        just be being written.
        """
        unread = [line for line in self._unread if writing or line.ended]
        token = _token(b"\n".join(line.written.strip() for line in unread))
        if unread and token not in self._told:
            self._told.add(token)
            self._troubles.insert(0, _cannot_be_read(unread))
            if writing:
                self.add(Line(told=token))
        told, self._troubles = self._troubles, []
        return " ".join(told)

    def _fail(self, told: str) -> None:
        """Tell something that goes on being so only once."""
        if told != self._failing:
            self._failing = told
            self._troubles.append(f"{told}.")

    def _write(self) -> None:
        check_inside(self._folder, JOURNAL_FILE)
        path = self._folder / JOURNAL_FILE
        before = stamp(self._folder, JOURNAL_FILE)
        data = b"".join(map(_written, self._unwritten))
        after = append_lines(path, data)
        self._unwritten.clear()
        self._failing = ""
        if before == self._seen:
            self._seen = after
        if after.size > self._trim_at:
            self._trim(path)

    def _trim(self, path: Path) -> None:
        """Write the file anew with its newest actions; one that cannot be stays as it is."""
        with contextlib.suppress(KeepError, ProjectError):
            past = self._read()
            lines = tuple(lines_of(_newest(past)))
            data = b"".join(map(_written, lines))
            self._trim_at = max(TRIM_AT, 2 * len(data))
            self._seen = write_atomically(path, data)
            self._past = Past(lines)

    def _read(self) -> Past:
        """Every line of the file that can be read, and those that could not be written."""
        found = None
        if stamp(self._folder, JOURNAL_FILE) is not None:
            found = read_file(self._folder, JOURNAL_FILE, most=_MOST_BYTES)
        lines = self._lines(found.data if found else b"")
        self._seen = found.stamp if found else None
        return Past((*lines, *self._unwritten))

    def _lines(self, data: bytes) -> list[Line]:
        lines: list[Line] = []
        self._unread = []
        for number, written in enumerate(data.splitlines(keepends=True), start=1):
            try:
                lines.append(Line.model_validate_json(written))
            except ValidationError:
                if written.strip():
                    self._unread.append(_Unread(number, written))
        self._told.update(line.told for line in lines if line.told)
        return lines


def _cannot_be_read(unread: list[_Unread]) -> str:
    first, more = unread[0].number, len(unread) - 1
    lines = (
        f"Line {first} of {JOURNAL_FILE} and {more} more"
        if more
        else (f"Line {first} of {JOURNAL_FILE}")
    )
    return (
        f"{lines} cannot be read: what was done there can no longer be undone from here. No tick "
        "and no size is touched by that."
    )


def _newest(past: Past) -> list[Deed]:
    """The newest actions that fit, and the last `LEAST_KEPT` that can be undone in any case."""
    kept: list[Deed] = []
    size = can_be_undone = 0
    for deed in reversed(tuple(past)):
        size += len(_written(Line(did=deed.action)))
        if size > TRIM_TO and can_be_undone >= LEAST_KEPT:
            break
        kept.append(deed)
        can_be_undone += deed.became is Became.DONE
    return kept[::-1]


def _written(line: Line) -> bytes:
    return line.model_dump_json(exclude_defaults=True).encode() + b"\n"


def _token(written: bytes) -> str:
    return hashlib.sha256(written).hexdigest()[:12]


def _told(error: KeepError | ProjectError) -> str:
    if isinstance(error, KeepError):
        return f"{error.problem}; {error.remedy}"
    return f"{error.problems[0].message}; {error.problems[0].remedy}"
