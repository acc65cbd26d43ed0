"""The tables of a project file that hold entries, as the catalogue of families has them."""

from benchmate.frame.family import Family
from benchmate.joinery import FAMILIES, family_of
from benchmate.model.project import Timber
from benchmate.model.work import Work

TIMBER_TABLE = "timber"
"""The table of the timbers themselves."""

TICK_TABLE = "tick"
"""The table of ticks in a progress file."""

SIGNED_TABLE = "signed"
"""The table of what is signed for a whole timber in a progress file."""

NOTE_TABLE = "note"
"""The table of notes in words in a progress file."""

BLEMISH_TABLE = "blemish"
"""The table of knots, checks and wane in a progress file."""

LISTS = {
    "ticks": TICK_TABLE,
    "signed": SIGNED_TABLE,
    "notes": NOTE_TABLE,
    "blemishes": BLEMISH_TABLE,
}
"""What a progress record holds many of, and the table that each of them is headed with."""

WORK_FAMILIES = tuple(family for family in FAMILIES if family.record is not Timber)
"""The families whose records stand in the project beside the timbers."""

WORK_TABLES = tuple(dict.fromkeys(family.table for family in WORK_FAMILIES))
"""The tables of joints and other work, in the order the program writes them."""


def families_in(table: str) -> tuple[Family, ...]:
    """The families whose records stand in a table."""
    return tuple(family for family in WORK_FAMILIES if family.table == table)


def table_of(work: Work) -> str:
    """The table that a joint or other work stands in."""
    return family_of(work).table
