"""The parts of a project file, each read on its own: what is sound, and what else is named."""

from collections import Counter
from dataclasses import dataclass
from typing import Any, cast

from pydantic import TypeAdapter

from benchmate.frame.levels import section_table
from benchmate.measure.reading import Unit
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum
from benchmate.model.fields import Position, SectionSize
from benchmate.model.project import Project, Timber, bare_unit
from benchmate.model.record import Record
from benchmate.model.work import Work
from benchmate.store.document import Document
from benchmate.store.entries import entries, read_record, read_values
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES, families_in
from benchmate.store.toml_lines import Path
from benchmate.store.wording import UNKNOWN_KEY

SUM_TABLES = ("lines", "lengths", "levels")
"""The tables of names for sums of lengths."""

SECTION_TABLES = ("sections", "inner")
"""The tables of names for sections: as drawn, and inside by square rule."""

NAME_TABLES = (*SUM_TABLES, *SECTION_TABLES)
"""The tables of names."""

_HEAD = tuple(key for key in Project.model_fields if key not in (*NAME_TABLES, "timbers", "works"))
_TABLES = (*NAME_TABLES, TIMBER_TABLE, *WORK_TABLES)
_POSITION: TypeAdapter[Sum] = TypeAdapter(Position)
_SECTION: TypeAdapter[Section] = TypeAdapter(SectionSize)


@dataclass(frozen=True, slots=True, kw_only=True)
class Parts:
    """The sound parts of a project file, names by table.

    `head` is the project without them, if that is sound.
    """

    head: Project | None
    sums: dict[str, dict[str, Sum]]
    sections: dict[str, dict[str, Section]]
    timbers: tuple[tuple[Path, Timber], ...]
    works: tuple[tuple[Path, Work], ...]

    def names(self) -> tuple[dict[str, Sum], dict[str, Section]]:
        """What sums and sections are called, as `Levels` takes them."""
        sums = {name: total for table in self.sums.values() for name, total in table.items()}
        return sums, section_table(self.sections["sections"], self.sections["inner"])

    def shared_ids(self) -> frozenset[str]:
        """The ids that two timbers or more have, so that nobody can tell which one is meant."""
        count = Counter(timber.id for _, timber in self.timbers)
        return frozenset(id_ for id_, times in count.items() if times > 1)

    def project(self) -> Project | None:
        """The project they make, if its head is sound."""
        if self.head is None:
            return None
        return self.head.model_copy(
            update={
                **self.sums,
                **self.sections,
                "timbers": tuple(timber for _, timber in self.timbers),
                "works": tuple(work for _, work in self.works),
            }
        )


def read_parts(document: Document) -> Parts:
    """Every part of a project file, the problems of those that are not sound noted."""
    units = document.data.get("units")
    bare = bare_unit(units if isinstance(units, str) else "")
    _unknown_keys(document)
    return Parts(
        head=_head(document, bare),
        sums={table: read_values(document, table, _POSITION, bare) for table in SUM_TABLES},
        sections={table: read_values(document, table, _SECTION, bare) for table in SECTION_TABLES},
        timbers=_timbers(document, bare),
        works=_works(document, bare),
    )


def _head(document: Document, bare: Unit) -> Project | None:
    """The project without its tables, if it is sound."""
    given = {key: document.data[key] for key in _HEAD if key in document.data}
    return read_record(document, (), given, Project, bare)


def _unknown_keys(document: Document) -> None:
    for key in document.data:
        if key not in _HEAD and key not in _TABLES:
            document.add((key,), UNKNOWN_KEY, document.nearest(key, (*_HEAD, *_TABLES)))


def _timbers(document: Document, bare: Unit) -> tuple[tuple[Path, Timber], ...]:
    read = (
        (path, read_record(document, path, entry, Timber, bare))
        for path, entry in entries(document, TIMBER_TABLE)
    )
    return tuple((path, timber) for path, timber in read if timber is not None)


def _works(document: Document, bare: Unit) -> tuple[tuple[Path, Work], ...]:
    found: list[tuple[Path, Work]] = []
    for table in WORK_TABLES:
        for path, entry in entries(document, table):
            record = _record_for(document, path, entry, table)
            work = record and read_record(document, path, entry, record, bare)
            if work is not None:
                found.append((path, cast("Work", work)))
    return tuple(found)


def _record_for(
    document: Document, path: Path, entry: dict[str, Any], table: str
) -> type[Record] | None:
    """What an entry is to be read as: the table's one family, or the one it names."""
    families = families_in(table)
    if not any("family" in family.record.model_fields for family in families):
        return families[0].record
    named = entry.get("family")
    for family in families:
        if family.name == named:
            return family.record
    known = document.nearest(named, (family.name for family in families))
    if named is None:
        document.add((*path, "family"), "is missing, so what it is stays open", known)
    else:
        document.add((*path, "family"), "is not a family of joints known here", known)
    return None
