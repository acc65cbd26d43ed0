"""A timber carried to another place in the frame, with its joints to the mates that are there."""

from collections.abc import Callable, Iterator, Mapping
from copy import deepcopy
from dataclasses import dataclass
from typing import Any

from benchmate.frame.frame import Frame
from benchmate.model.project import Timber
from benchmate.model.work import Work
from benchmate.store.editing import Draft
from benchmate.store.project_checks import key_path
from benchmate.store.renaming import paths_of
from benchmate.store.tables import TIMBER_TABLE, table_of
from benchmate.store.toml_lines import Path
from benchmate.workbench.project_edits import entries_of, works_of
from benchmate.workbench.touching import CLOSE, Box, box_of, touch

Turn = Callable[[dict[str, Any]], dict[str, Any]]
"""Gives what the file says of a joint, as it is to be said of the one at the other place."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """Where a timber goes: what the file says of it there, and how its surroundings are carried.

    `moved` carries a box of the building, `turned` what the file says of a joint, and `joint` gives
    the id of one there.
    """

    stored: dict[str, Any]
    moved: Callable[[Box], Box]
    turned: Turn
    joint: Callable[[str], str]


def carried(
    draft: Draft, frame: Frame, timber: str, goes: Carried, like: str
) -> tuple[Draft, tuple[str, ...]]:
    """The draft with the timber at its other place, its joints and its chamfers.

    They come behind the timber `like` and its joints, as that has them: right behind it, or apart.
    Gives what is to be told: joints without a mate there.
    """
    stored = {
        record.id: draft.value(path)
        for path, record in paths_of(frame.project)
        if isinstance(record, Work)
    }
    at, joints = _behind(draft, like)
    draft, told = draft.add(TIMBER_TABLE, goes.stored, at), []
    last = joints if joints is not None and joints != at else draft.added
    own = [work for work in works_of(frame.project, timber) if _first(work) == timber]
    ids = {work.id: goes.joint(work.id) for work in own}
    for work in own:
        entry = _entry(frame, work, goes, deepcopy(stored[work.id]), ids)
        if isinstance(entry, str):
            told.append(entry)
            continue
        draft = draft.add(table_of(work), entry, last)
        last = draft.added
    return _chamfered(draft, frame, timber, goes.stored["id"]), tuple(told)


def _behind(draft: Draft, like: str) -> tuple[Path, Path | None]:
    """Behind which entry a timber's like comes, and behind which the joints of that."""
    entries = entries_of(draft)
    own = [path for path in entries if draft.value((*path, "timber")) == like]
    timber = next(
        path for path in entries if path[0] == TIMBER_TABLE and draft.value((*path, "id")) == like
    )
    following = entries[entries.index(timber) + 1 :][: len(own)]
    if own and own == following:
        return own[-1], own[-1]
    return timber, own[-1] if own else None


def _first(work: Work) -> str:
    """The timber that a joint is cut on first; none for what is no joint."""
    return work.timbers().get("timber", "")


def _entry(
    frame: Frame, work: Work, goes: Carried, stored: dict[str, Any], ids: Mapping[str, str]
) -> dict[str, Any] | str:
    """What the file is to say of a joint at the other place, or why it has none there."""
    timber, entry = _first(work), goes.turned(stored)
    for key, mate in work.timbers().items():
        if mate == timber:
            entry[key] = goes.stored["id"]
            continue
        found = mate_at(frame, timber, mate, goes.moved)
        if found is None:
            kind = frame.timber(mate).kind
            return (
                f"{work.id} is left out: no {kind} lies where {frame.timber(mate).name} does here."
            )
        entry[key] = found
    entry["id"] = ids[work.id]
    met = [ids[other] for other in stored.get("meets", ()) if other in ids]
    entry.pop("meets", None)
    return entry | ({"meets": met} if met else {})


def mate_at(frame: Frame, timber: str, mate: str, moved: Callable[[Box], Box]) -> str | None:
    """The timber that lies at the other place where a mate does here: that one itself, or its like.

    They are told by the box in which the two meet. None where no timber of its kind lies there.
    """
    here, there = box_of(frame, timber), box_of(frame, mate)
    if here is None or there is None:
        return None
    met = moved(_met(here, there))
    like = frame.timber(mate)
    others = (
        each.id
        for each in frame.project.timbers
        if each.kind == like.kind and not each.reference_end.square_to(like.reference_end)
    )
    for other in (mate, *others):
        box = box_of(frame, other)
        if other != timber and box is not None and touch(met, box):
            return other
    return None


def _met(here: Box, there: Box) -> Box:
    """The box in which two timbers meet, or that between them."""
    spans = []
    for (a, b), (c, d) in zip(here, there, strict=True):
        low, high = max(a, c), min(b, d)
        spans.append((min(low, high), max(low, high)))
    return spans[0], spans[1], spans[2]


def _chamfered(draft: Draft, frame: Frame, timber: str, new: str) -> Draft:
    """The draft with the new timber named by the chamfers of the other."""
    for path, record in paths_of(frame.project):
        if isinstance(record, Work) and not record.joins() and timber in record.timbers().values():
            on, *_ = key_path(next(iter(record.timbers())))
            draft = draft.put((*path, on), [*draft.value((*path, on)), new])
    return draft


def stands_at(frame: Frame, timber: str, moved: Callable[[Box], Box]) -> Timber | None:
    """Another timber that fills the very place that one would be carried to; None for none."""
    box = box_of(frame, timber)
    if box is None:
        return None
    goal = moved(box)
    return next((frame.timber(each) for each, other in _boxes(frame) if _same(goal, other)), None)


def _boxes(frame: Frame) -> Iterator[tuple[str, Box]]:
    for timber in frame.project.timbers:
        box = box_of(frame, timber.id)
        if box is not None:
            yield timber.id, box


def _same(one: Box, other: Box) -> bool:
    pairs = zip(one, other, strict=True)
    return all(abs(a[side] - b[side]) <= CLOSE for a, b in pairs for side in (0, 1))
