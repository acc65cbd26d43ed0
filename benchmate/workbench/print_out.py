"""Sheets written to a folder: one timber at a time, so that a big frame is never held whole."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from benchmate.sheets.csv_sheet import mark_table
from benchmate.sheets.html_sheet import timber_body
from benchmate.sheets.names import ALL, FRAME, JOINTS, Form, file_name, is_ours
from benchmate.sheets.page import PAGE_TAIL, page, page_head
from benchmate.sheets.schedule import Schedule, schedule_page, schedule_table, schedule_text
from benchmate.sheets.text_sheet import timber_text
from benchmate.store.problem import KeepError
from benchmate.store.sheet_files import SheetFolder
from benchmate.workbench.bench import Bench, now
from benchmate.workbench.sheets import frame_schedule, joint_schedule, timber_sheet

SHEETS = "sheets"
"""The folder beside a project's files that the screen writes sheets into."""


class NotPrintedError(Exception):
    """Sheets that could not be written: where, why, and what to do."""


@contextmanager
def _told_if_not_printed() -> Iterator[None]:
    """Turn what the store raises into what both front ends tell."""
    try:
        yield
    except KeepError as error:
        raise NotPrintedError(str(error)) from error


@dataclass(frozen=True, slots=True, kw_only=True)
class Printed:
    """What was written, in order, into which folder; `older` are sheets found there besides."""

    folder: Path
    files: tuple[str, ...]
    older: tuple[str, ...]

    @property
    def first(self) -> str:
        """The page to print: of one timber, or of all of them."""
        pages = [name for name in self.files if name.endswith(Form.PAGE.value)]
        whole = file_name(ALL, Form.PAGE)
        return whole if whole in pages else pages[0]


def print_timber(
    bench: Bench,
    timber: str,
    folder: Path,
    paper: str = "",
    clock: Callable[[], datetime] = now,
) -> Printed:
    """Write one timber's sheet in its three forms. Raises NotPrintedError, KeyError."""
    names = _names(timber)
    with _told_if_not_printed():
        place = SheetFolder(folder, is_ours)
        place.check(names)
        _write_timber(bench, timber, place, paper, clock())
    return Printed(folder=folder, files=names, older=())


def print_frame(
    bench: Bench, folder: Path, paper: str = "", clock: Callable[[], datetime] = now
) -> Printed:
    """Write every timber's sheet, all of them as one page to print, and the frame's schedules.

    Nothing is written if any file in the way is not benchmate's own. Raises NotPrintedError.
    """
    made = clock()
    schedules = ((FRAME, frame_schedule(bench, made)), (JOINTS, joint_schedule(bench, made)))
    whole = file_name(ALL, Form.PAGE)
    names = (
        *(name for schedule, _ in schedules for name in _names(schedule)),
        whole,
        *(name for timber in bench.timbers for name in _names(timber.id)),
    )
    with _told_if_not_printed():
        place = SheetFolder(folder, is_ours)
        place.check(names)
        for name, schedule in schedules:
            _write_schedule(name, schedule, place, paper)
        place.write(whole, _all(bench, place, paper, made))
        return Printed(folder=folder, files=names, older=place.others(names))


def _names(sheet: str) -> tuple[str, ...]:
    return tuple(file_name(sheet, form) for form in Form)


def _all(bench: Bench, place: SheetFolder, paper: str, made: datetime) -> Iterator[str]:
    """The page of all timbers, part by part; each one's own files are written on the way."""
    yield page_head(bench.project.name, paper)
    for timber in bench.timbers:
        yield _write_timber(bench, timber.id, place, paper, made)
    yield PAGE_TAIL


def _write_timber(bench: Bench, timber: str, place: SheetFolder, paper: str, made: datetime) -> str:
    """Write a timber's three files, and give its part of a page."""
    sheet = timber_sheet(bench, timber, made)
    body = timber_body(sheet)
    whole = page(f"{sheet.timber.name}, {sheet.issue.project}", body, paper)
    place.write(file_name(timber, Form.PAGE), (whole,))
    place.write(file_name(timber, Form.TEXT), (timber_text(sheet),))
    place.write(file_name(timber, Form.TABLE), (mark_table(sheet),))
    return body


def _write_schedule(name: str, schedule: Schedule, place: SheetFolder, paper: str) -> None:
    place.write(file_name(name, Form.PAGE), schedule_page(schedule, paper))
    place.write(file_name(name, Form.TEXT), schedule_text(schedule))
    place.write(file_name(name, Form.TABLE), schedule_table(schedule))
