"""No two joints or chamfers make the same feature of a timber: ticks and sizes go by its id."""

from collections.abc import Collection, Iterator
from dataclasses import replace

from benchmate.frame import settling
from benchmate.frame.frame import Frame
from benchmate.joinery import family_of
from benchmate.model.directions import Direction
from benchmate.model.feature import Feature
from benchmate.model.project import Timber
from benchmate.model.stick import ALL_ALONG, MIDDLE, STICK, end_place
from benchmate.store.document import Document
from benchmate.store.project_parts import Parts
from benchmate.store.toml_lines import Path

RESERVED = frozenset({STICK, ALL_ALONG, MIDDLE, *map(end_place, Direction)})
"""Ids that mean the whole stick or a place on it, so no joint or chamfer may have them."""


def check_features(document: Document, parts: Parts) -> None:
    """Note work that makes a feature a timber already has. All names must be sound."""
    taken: dict[tuple[str, str], Path] = {}
    for path, feature in _features(document, parts):
        key = (feature.timber, feature.id)
        earlier = taken.setdefault(key, path)
        if feature.id in RESERVED:
            message = f'"{feature.id}" means the whole stick or a place on it'
            document.add((*path, "id"), message, "give it another id")
        elif earlier != path:
            line = document.places.line(earlier)
            whose = f"the {earlier[0]} on line {line} already makes on {feature.timber}"
            document.add(
                path,
                f'makes "{feature.id}", which {whose}',
                "take one of them away, or give it another end or another id",
            )


def _features(document: Document, parts: Parts) -> Iterator[tuple[Path, Feature]]:
    """The features of everything that is sound by itself and in what it names."""
    sound = _sound(document, parts)
    project = sound.project()
    if project is None:
        return
    frame = Frame(project, {})
    for path, record in (*sound.timbers, *sound.works):
        for feature in family_of(record).features(record, frame):
            yield path, feature


def _sound(document: Document, parts: Parts) -> Parts:
    """What is sound by itself, in what it names and in what settles where it stands.

    Leaving out a timber leaves out its joints, and so the ends that they settle. Timbers that share
    an id are left out too: a joint may mean any of them.
    """
    shared = parts.shared_ids()
    timbers = tuple(
        (path, timber)
        for path, timber in parts.timbers
        if document.sound(path) and timber.id not in shared
    )
    while True:
        known = {timber.id for _, timber in timbers}
        works = tuple(
            (path, work)
            for path, work in parts.works
            if document.sound(path) and known.issuperset(work.timbers().values())
        )
        ends = {(each.timber, each.end) for _, work in works for each in work.settled()}
        settled = tuple((path, timber) for path, timber in timbers if _settled(timber, ends))
        if settled == timbers:
            return replace(parts, timbers=timbers, works=works)
        timbers = settled


def _settled(timber: Timber, ends: Collection[tuple[str, Direction]]) -> bool:
    bears = frozenset(end for each, end in ends if each == timber.id)
    return not any(settling.faults(timber, bears))
