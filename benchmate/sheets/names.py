"""What the files are called, and how benchmate knows its own when it finds them again.

A timber's files go by its id. The other files have an underscore in their names, which no id has,
so no timber can take their place.
"""

from enum import Enum

from benchmate.model.words import check_id
from benchmate.sheets.exact import LINE_END, cell

MARK = "benchmate sheet"
"""What the first line of a page and of a text starts with."""

FRAME, JOINTS, ALL = "frame_schedule", "joint_schedule", "all_timbers"
"""The names of what belongs to the whole frame."""

MARK_COLUMNS = (
    "timber",
    "joint",
    "step",
    "reading",
    "title",
    "figure",
    "exact mm",
    "hook",
    "way",
    "faces",
    "waste",
    "state",
)
FRAME_COLUMNS = (
    "timber",
    "name",
    "kind",
    "section",
    "species",
    "hand",
    "shoulder to shoulder",
    "shoulder to shoulder exact mm",
    "overall",
    "overall exact mm",
    "faces",
    "place",
    "meets",
    "stops",
)
JOINT_COLUMNS = ("joint", "family", "timbers", "where", "sizes", "pegs", "stops")


class Form(Enum):
    """The three forms of a sheet; the value is the end of the file's name."""

    PAGE = "html"
    TEXT = "txt"
    TABLE = "csv"


def file_name(sheet: str, form: Form) -> str:
    """The file of a sheet in one of its forms. Raises ValueError for a name that could lead out."""
    known = sheet if sheet in (FRAME, JOINTS, ALL) else check_id(sheet)
    return f"{known}.{form.value}"


def is_ours(name: str, start: bytes) -> bool:
    """Whether a file found under a sheet's name is one that benchmate wrote, by how it starts.

    An empty one may be written over: there is nothing in it to lose.
    """
    if not start:
        return True
    if name.endswith(Form.TABLE.value):
        columns = (MARK_COLUMNS, FRAME_COLUMNS, JOINT_COLUMNS)
        return any(start.startswith(heads(each).encode()) for each in columns)
    return start.startswith((page_start().encode(), MARK.encode()))


def page_start() -> str:
    """The first line of every page: what it is, and that it is benchmate's own."""
    return f"<!DOCTYPE html><!-- {MARK} -->\n"


def heads(columns: tuple[str, ...]) -> str:
    """The first record of a table: the names of its columns."""
    return ",".join(map(cell, columns)) + LINE_END
