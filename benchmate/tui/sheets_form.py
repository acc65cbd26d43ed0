"""Writing sheets: which ones, and where to."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from benchmate.tui.outcome import Outcome
from benchmate.tui.rows import Row
from benchmate.workbench.print_out import SHEETS, NotPrintedError, print_frame, print_timber

if TYPE_CHECKING:
    from benchmate.workbench.bench import Bench

TITLE = "Sheets to take along"


class SheetsForm:
    """The sheets of an open project: the timber in hand, or the whole frame."""

    def __init__(self, bench: Bench, timber: str) -> None:
        self._bench = bench
        self._timber = timber

    @property
    def rows(self) -> tuple[Row, ...]:
        """What can be written, one row each."""
        name = self._bench.walk(self._timber).timber.name
        count = len(self._bench.timbers)
        return (
            Row(text=f"{name} only"),
            Row(text=f"The whole frame: {count} timbers, all on one page file, and the schedules"),
        )

    @property
    def folder(self) -> str:
        """Where they go unless another folder is typed: beside the project's own files."""
        return str(self._bench.folder / SHEETS)

    def write(self, row: int, folder: str) -> Outcome:
        """Write what a row stands for into a folder, and say where it is."""
        if not folder.strip():
            return Outcome("Name a folder to write into.", failed=True)
        place = self._bench.folder / Path(folder.strip()).expanduser()
        try:
            if row == 0:
                done = print_timber(self._bench.by_project(), self._timber, place)
            else:
                done = print_frame(self._bench.by_project(), place)
        except NotPrintedError as error:
            return Outcome(f"Not written: {error}", failed=True)
        first = f" Open {done.first} in a browser and print it." if done.first else ""
        return Outcome(f"{len(done.files)} files written into {done.folder}.{first}")
