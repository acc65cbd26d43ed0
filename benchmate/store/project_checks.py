"""What the entries of a project file say of one another: ids, references, faults."""

import re
from collections.abc import Iterator

from benchmate.model.project import Timber
from benchmate.model.work import Work
from benchmate.store.document import Document
from benchmate.store.entries import entries
from benchmate.store.project_names import check_sum, known_names
from benchmate.store.project_parts import Parts
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES
from benchmate.store.toml_lines import Path

_PLACE = re.compile(r"(\w+)\[(\d+)\]")


def check_ids(document: Document) -> None:
    """Note timbers that share an id or a name, and joints and other work that share an id."""
    _once(document, (TIMBER_TABLE,), "id")
    _once(document, (TIMBER_TABLE,), "name")
    _once(document, WORK_TABLES, "id")


def check_timbers(document: Document, parts: Parts) -> None:
    """Note sections and levels that timbers name and the project has not."""
    known, sections = known_names(document), document.table("sections")
    for path, timber in parts.timbers:
        if isinstance(timber.section, str) and timber.section not in sections:
            message = f'there is no section called "{timber.section}"'
            remedy = 'write the section itself, as "7 x 7", or give it under [sections]'
            document.add(
                (*path, "section"),
                message,
                document.nearest(timber.section, sections, none=remedy),
            )
        check_sum(document, (*path, "length"), timber.length, known)
        if timber.shoulder_level is not None:
            check_sum(document, (*path, "shoulder_level"), timber.shoulder_level, known)


def check_works(document: Document, parts: Parts) -> None:
    """Note timbers and levels that work names and the project has not, and what cannot be."""
    known = known_names(document)
    ids = dict.fromkeys(id_ for _, id_ in _given(document, TIMBER_TABLE, "id"))
    timbers = {timber.id: timber for _, timber in parts.timbers}
    for path, work in parts.works:
        for key, timber in work.timbers().items():
            if timber not in ids:
                message = f'there is no timber called "{timber}"'
                document.add((*path, *key_path(key)), message, document.nearest(timber, ids))
        for key, total in work.sums().items():
            check_sum(document, (*path, *key_path(key)), total, known)
        _faults(document, path, work, timbers)


def key_path(key: str) -> Path:
    """The path within an entry that a record's own key means: `near_stop.level`, `on[0]`."""
    path: Path = ()
    for part in key.split("."):
        placed = _PLACE.fullmatch(part)
        path += (placed[1], int(placed[2])) if placed else (part,)
    return path


def _faults(document: Document, path: Path, work: Work, timbers: dict[str, Timber]) -> None:
    if not all(timber in timbers for timber in work.timbers().values()):
        return
    for fault in work.faults(timbers):
        document.add((*path, *key_path(fault.key)), fault.problem, fault.remedy)


def _given(document: Document, table: str, key: str) -> Iterator[tuple[Path, str]]:
    """Every id or name given in a table, in entries that are not otherwise sound too."""
    for path, entry in entries(document, table):
        given = entry.get(key)
        if isinstance(given, str):
            yield path, given


def _once(document: Document, tables: tuple[str, ...], key: str) -> None:
    first: dict[str, Path] = {}
    for table in tables:
        for path, given in _given(document, table, key):
            earlier = first.setdefault(given.casefold(), path)
            if earlier != path:
                line = document.places.line((*earlier, key))
                message = f"is the {key} of the {earlier[0]} on line {line} already"
                document.add((*path, key), message, f"give one of them another {key}")
