"""Records as the text of a file, in one spelling: read it, write it, and it is the same bytes."""

from collections.abc import Mapping
from typing import Any

import tomli_w

from benchmate.model.progress import Progress
from benchmate.model.project import Project
from benchmate.store.tables import LISTS, TIMBER_TABLE, WORK_TABLES, table_of

_PROGRESS_HEADER = (
    "# Ticks and real sizes of one timber. Correct a figure here and benchmate reads it; it\n"
    "# writes the file anew at every tick, without comments.\n"
)


def progress_text(progress: Progress) -> str:
    """The file of one timber's progress."""
    fields = progress.model_dump(exclude_defaults=True)
    listed = [(table, entry) for name, table in LISTS.items() for entry in fields.pop(name, ())]
    head = _PROGRESS_HEADER + tomli_w.dumps({"format": progress.format} | fields)
    return "\n".join((head, *(_entry(table, entry) for table, entry in listed)))


def project_text(project: Project) -> str:
    """The file of a project, without comments and without what is as it would be unsaid.

    Joints and chamfers are grouped by table, as a file that was read has them.
    """
    fields = project.model_dump(exclude_defaults=True)
    timbers, works = fields.pop("timbers", ()), fields.pop("works", ())
    tables = [table_of(work) for work in project.works]
    entries = [(TIMBER_TABLE, timber) for timber in timbers]
    for table in WORK_TABLES:
        pairs = zip(tables, works, strict=True)
        entries += [(table, work) for its_table, work in pairs if its_table == table]
    head = tomli_w.dumps({"format": project.format} | fields)
    return "\n".join((head, *(_entry(table, entry) for table, entry in entries)))


def _entry(table: str, fields: Mapping[str, Any]) -> str:
    """One entry of a list of tables, with its own tables below it.

    Written apart from its neighbours, because a list of short ones would be put on one line.
    """
    return tomli_w.dumps({table: fields}).replace(f"[{table}]", f"[[{table}]]", 1)
