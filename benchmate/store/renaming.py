"""Calling something in a project file by another word, everywhere that it is named."""

from collections.abc import Iterator, Mapping

from benchmate.frame.levels import section_names
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum, with_names
from benchmate.model.project import Project, Timber
from benchmate.model.work import Work
from benchmate.store.editing import Draft
from benchmate.store.project_checks import key_path
from benchmate.store.project_parts import SUM_TABLES
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES, table_of
from benchmate.store.toml_lines import Path

_ANY = Section(Length.inches(1), Length.inches(1))


def paths_of(project: Project) -> Iterator[tuple[Path, Timber | Work]]:
    """Every timber and all work of a sound project, each with its path in the file."""
    for place, timber in enumerate(project.timbers):
        yield (TIMBER_TABLE, place), timber
    for table in WORK_TABLES:
        works = (work for work in project.works if table_of(work) == table)
        for place, work in enumerate(works):
            yield (table, place), work


def with_ids(
    draft: Draft, project: Project, timbers: Mapping[str, str], works: Mapping[str, str]
) -> Draft:
    """The draft with other ids for some timbers and joints, wherever they are named.

    Raises KeepError where one is written so that it cannot be reworded.
    """
    values: dict[Path, object] = {}
    for path, record in paths_of(project):
        own = timbers if isinstance(record, Timber) else works
        if record.id in own:
            values[*path, "id"] = own[record.id]
        if isinstance(record, Timber):
            continue
        for key, timber in record.timbers().items():
            if timber in timbers:
                values[(*path, *key_path(key))] = timbers[timber]
        for place, other in enumerate(record.meets):
            if other in works:
                values[*path, "meets", place] = works[other]
    return draft.put_all(values) if values else draft


def with_name(draft: Draft, project: Project, table: str, old: str, new: str) -> Draft:
    """The draft with another word for a line, level, length or section, wherever it is used.

    Raises KeepError where it is written so that it cannot be reworded.
    """
    names = _names_given(table, old, new)
    values: dict[Path, object] = {}
    for path, total in sums_of(project):
        text = draft.value(path)
        if isinstance(text, str) and not set(names).isdisjoint(total.names()):
            values[path] = with_names(text, names)
    if table == "sections":
        values |= {
            (*path, "section"): new
            for path, record in paths_of(project)
            if isinstance(record, Timber) and record.section == old
        }
    draft = draft.put_all(values) if values else draft
    draft = draft.rename((table, old), new)
    inner = table == "sections" and old in project.inner
    return draft.rename(("inner", old), new) if inner else draft


def users_of(project: Project, table: str, name: str) -> tuple[Path, ...]:
    """The paths of everything in a project that uses a name of one of its tables."""
    names = set(_names_given(table, name, name))
    found = [path for path, total in sums_of(project) if not names.isdisjoint(total.names())]
    if table == "sections":
        found += [
            (*path, "section")
            for path, record in paths_of(project)
            if isinstance(record, Timber) and record.section == name
        ]
        found += [("inner", name)] if name in project.inner else []
    if table == "inner":
        found += [
            (*path, "section")
            for path, record in paths_of(project)
            if isinstance(record, Timber)
            and record.section == name
            and record.inner is None
            and record.square_ruled(project.rule)
        ]
    return tuple(found)


def sums_of(project: Project) -> Iterator[tuple[Path, Sum]]:
    """Every sum of a sound project, with its path in the file, those taken as usual included."""
    for table in SUM_TABLES:
        for name, total in getattr(project, table).items():
            yield (table, name), total
    for path, record in paths_of(project):
        for key, total in record.sums().items():
            yield (*path, *key_path(key)), total


def _names_given(table: str, old: str, new: str) -> dict[str, str]:
    """The names for lengths that an entry gives, and those it would give by another word."""
    if table in SUM_TABLES:
        return {old: new}
    ending = " inner" if table == "inner" else ""
    words = [""] if table == "inner" else ["", " inner"]
    pairs = [(f"{old}{ending}{word}", f"{new}{ending}{word}") for word in words]
    return {
        name: other
        for was, now in pairs
        for name, other in zip(section_names({was: _ANY}), section_names({now: _ANY}), strict=True)
    }
