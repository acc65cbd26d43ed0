"""Which joints are said to meet: each of them another joint on one of the same timbers."""

from collections.abc import Mapping

from benchmate.model.work import Work
from benchmate.store.document import Document
from benchmate.store.entries import entries
from benchmate.store.project_parts import Parts
from benchmate.store.tables import WORK_TABLES
from benchmate.store.toml_lines import Path


def check_meets(document: Document, parts: Parts) -> None:
    """Note what a joint is meant to meet and cannot: itself, no joint, or one on other timbers.

    A joint that cannot be read may be named all the same: what is wrong with it is told already.
    """
    read = {work.id: work for _, work in parts.works}
    joints = {id_: read.get(id_) for id_ in _ids(document) if id_ not in read or read[id_].joins()}
    for path, work in parts.works:
        if work.meets and not work.joins():
            document.add((*path, "meets"), "is said of joints alone", "take it out")
            continue
        for place, other in enumerate(work.meets):
            _check(document, (*path, "meets", place), work, other, joints)


def _check(
    document: Document, path: Path, work: Work, other: str, joints: Mapping[str, Work | None]
) -> None:
    if other == work.id:
        document.add(path, "is this joint itself", "name the other one, or take it out")
        return
    if other not in joints:
        others = (each for each in joints if each != work.id)
        remedy = document.nearest(other, others)
        document.add(path, f'there is no joint called "{other}"', remedy)
        return
    met = joints[other]
    if met is not None and not set(work.timbers().values()) & set(met.timbers().values()):
        message = f'"{other}" is on none of the timbers of this joint, so the two cannot meet'
        document.add(path, message, "name a joint that is, or take it out")


def _ids(document: Document) -> list[str]:
    """The id of every entry that has one, of those that are not otherwise sound too."""
    given = (entry.get("id") for table in WORK_TABLES for _, entry in entries(document, table))
    return [id_ for id_ in given if isinstance(id_, str)]
