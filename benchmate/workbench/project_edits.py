"""What a framer does to a project, as another text for its file: pure, nothing is kept here.

Each gives an `Edit`, which a bench can try and then keep as one action. Raises BadProjectError
where what would be named has to be sound first, and KeepError where the file is written in a way
that cannot be edited from here.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from benchmate.frame.frame import Frame
from benchmate.joinery import family_of
from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.place import coordinate_along
from benchmate.model.project import Project, Timber
from benchmate.model.record import Record
from benchmate.model.work import Work
from benchmate.store.editing import Draft
from benchmate.store.moving import Move
from benchmate.store.project_checks import key_path
from benchmate.store.renaming import paths_of, with_ids
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES
from benchmate.store.toml_layout import Layout
from benchmate.store.toml_lines import Path
from benchmate.workbench.open_project import parsed
from benchmate.workbench.record_fields import order_of

ENDS_AT = ("reference_end_at", "far_end_at")
"""The keys that say where an end with nothing to meet comes, the reference end's first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Edit:
    """Another text for a project file, and the progress that moves to other ids with it.

    `words` say what was done, `told` what comes with it unasked; `timber` is the one to take up
    then, if it is another, and `path` where what was edited stands. Where ids or names change,
    `base` is the file with those words and nothing else changed.
    """

    words: str
    text: str
    moves: tuple[Move, ...] = ()
    base: str = ""
    timber: str = ""
    told: tuple[str, ...] = ()
    path: Path = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Loose:
    """An end that nothing settles any more: the key that can, and where the end is now."""

    timber: Timber
    end: Direction
    key: str
    text: str = field(default="")


def path_of(project: Project, id_: str, *, timber: bool) -> Path:
    """Where a timber, or a joint or chamfer, stands in the file. Raises KeyError."""
    for path, record in paths_of(project):
        if record.id == id_ and isinstance(record, Timber) is timber:
            return path
    raise KeyError(id_)


def renamed(
    draft: Draft, project: Project, timbers: Mapping[str, str], works: Mapping[str, str]
) -> tuple[Draft, tuple[Move, ...]]:
    """The draft with other ids, and the progress that moves with them."""
    after = with_ids(draft, project, timbers, works)
    parts = _parts_renamed(project, parsed(after.text), works)
    moves = (
        Move(timber.id, timbers.get(timber.id, timber.id), parts.get(timber.id, {}))
        for timber in project.timbers
        if timber.id in timbers or timber.id in parts
    )
    return after, tuple(moves)


def _parts_renamed(
    project: Project, after: Project, works: Mapping[str, str]
) -> dict[str, dict[str, str]]:
    """The parts of joints that are called otherwise, on each timber by the id it had."""
    found: dict[str, dict[str, str]] = {}
    frames = Frame(project, {}), Frame(after, {})
    for old, new in works.items():
        was, now = (_features(frame, id_) for frame, id_ in zip(frames, (old, new), strict=True))
        for (timber, feature), (_, other) in zip(was, now, strict=True):
            if feature != other:
                found.setdefault(timber, {})[feature] = other
    return found


def _features(frame: Frame, work: str) -> tuple[tuple[str, str], ...]:
    """What a joint makes on each timber: the timber's id and the part's."""
    stored = next(each for each in frame.project.works if each.id == work)
    first = next(iter(stored.timbers().values()))
    made = next(each for each in frame.works_on(first) if each.id == work)
    return tuple((each.timber, each.id) for each in family_of(made).features(made, frame))


def changed(
    draft: Draft, project: Project, path: Path, record: type[Record], stored: Mapping[str, Any]
) -> Edit:
    """The draft with another record at a path; a new id is carried to all that names it."""
    base, id_ = draft, str(stored.get("id", ""))
    moves: tuple[Move, ...] = ()
    before = dict(paths_of(project))[path]
    if id_ and id_ != before.id:
        ids = {before.id: id_}
        pair = (ids, {}) if isinstance(before, Timber) else ({}, ids)
        base, moves = renamed(draft, project, *pair)
    kept = {"family": draft.value((*path, "family"))} if "family" in record.model_fields else {}
    if isinstance(before, Timber) and stored.get("name"):
        base = base.put((*path, "name"), stored["name"])
    after = base.put(path, kept | dict(stored), order_of(record))
    name = before.name if isinstance(before, Timber) else before.id
    timber = id_ if isinstance(before, Timber) else ""
    return Edit(
        words=f"{name} changed",
        text=after.text,
        moves=moves,
        base="" if base is draft else base.text,
        timber=timber,
        path=path,
    )


def with_head(draft: Draft, record: type[Record], stored: Mapping[str, Any]) -> Edit:
    """The draft with other words at the head of the file, and another practice of the shop."""
    order = order_of(record)
    for key in record.model_fields:
        if key in stored and key not in ("timbers", "works"):
            draft = draft.put((key,), stored[key], order)
        elif key in ("demo", "note", "units", "graduation", "rule", "shop"):
            draft = draft.drop((key,))
    return Edit(words="the project changed", text=draft.text)


def with_timber(draft: Draft, stored: Mapping[str, Any]) -> Edit:
    """The draft with another timber, behind the last of its kind and that one's joints."""
    id_ = str(stored.get("id", ""))
    after = draft.add(TIMBER_TABLE, stored, _behind_kind(draft, stored.get("kind")))
    words = f"{stored.get('name', id_)} added"
    return Edit(words=words, text=after.text, timber=id_, path=after.added)


def entries_of(draft: Draft) -> list[Path]:
    """The timbers and joints in the order of the file."""
    tables = (TIMBER_TABLE, *WORK_TABLES)
    headers = (each.path for each in Layout(draft.text).headers)
    return [path for path in headers if len(path) == 2 and path[0] in tables]  # noqa: PLR2004 - a table and a place


def _behind_kind(draft: Draft, kind: object) -> Path | None:
    entries = entries_of(draft)
    timbers = [path for path in entries if path[0] == TIMBER_TABLE]
    if not timbers:
        return None
    like = [path for path in timbers if draft.value((*path, "kind")) == kind] or timbers
    last = like[-1]
    id_ = draft.value((*last, "id"))
    for path in entries[entries.index(last) + 1 :]:
        if path[0] == TIMBER_TABLE or draft.value((*path, "timber")) != id_:
            break
        last = path
    return last


def with_work(draft: Draft, table: str, stored: Mapping[str, Any]) -> Edit:
    """The draft with another joint behind the others of its timber, or another chamfer.

    What the timber says of an end that the joint now settles is taken out, and told.
    """
    id_ = str(stored.get("id", ""))
    after = draft.add(table, stored, _behind_timber(draft, table, stored.get("timber")))
    return Edit(words=f"{id_} added", text=after.text, path=after.added)


def _behind_timber(draft: Draft, table: str, timber: object) -> Path | None:
    entries = entries_of(draft)
    own = [path for path in entries if path[0] == table]
    like = [path for path in own if timber and draft.value((*path, "timber")) == timber]
    if like:
        return like[-1]
    timbers = [place for place, path in enumerate(entries) if path[0] == TIMBER_TABLE]
    mixed = timbers and any(path[0] == table for path in entries[: timbers[-1]])
    if mixed and timber:
        mine = [path for path in entries if draft.value((*path, "id")) == timber]
        return mine[0] if mine else own[-1]
    return own[-1] if own else None


def settled_by(edit: Edit, timber: Timber, ends: Iterable[Direction]) -> Edit:
    """The edit with what a timber says of ends taken out, as a joint settles them now."""
    draft, told = Draft(edit.text), list(edit.told)
    entries = draft.data.get(TIMBER_TABLE, [])
    place = next(at for at, each in enumerate(entries) if each.get("id") == timber.id)
    both = dict(zip(ENDS_AT, (timber.reference_end, timber.reference_end.opposite), strict=True))
    for key, end in both.items():
        path = (TIMBER_TABLE, place, key)
        if end in tuple(ends) and draft.value(path) is not None:
            told.append(
                f"{timber.name} says where its {_end(timber, end)} comes ({draft.value(path)}); "
                "the joint settles that now, so it is taken out."
            )
            draft = draft.drop(path)
    return replace(edit, text=draft.text, told=tuple(told))


def _end(timber: Timber, end: Direction) -> str:
    return timber.pose.words(timber.pose.end(end))


def without(
    draft: Draft, project: Project, works: Iterable[str], timber: str = ""
) -> tuple[Draft, tuple[str, ...]]:
    """The draft without some joints, and without a timber with all that names it.

    Gives the ids of the joints and chamfers that went. A chamfer on other timbers too stays there.
    """
    gone = set(works)
    shared: list[Path] = []
    for path, record in paths_of(project):
        if isinstance(record, Timber) or timber not in record.timbers().values():
            continue
        keys = [key for key, named in record.timbers().items() if named == timber]
        if record.joins() or len(record.timbers()) == 1:
            gone.add(record.id)
        else:
            shared += [(*path, *key_path(key)) for key in keys]
    for path in shared:
        draft = draft.drop(path)
    draft = _unmet(draft, project, gone)
    for path, record in reversed(tuple(paths_of(project))):
        if record.id == timber if isinstance(record, Timber) else record.id in gone:
            draft = draft.drop(path)
    return draft, tuple(work.id for work in project.works if work.id in gone)


def _unmet(draft: Draft, project: Project, gone: set[str]) -> Draft:
    """The draft with joints that go taken out of what others say they meet."""
    for path, record in paths_of(project):
        if isinstance(record, Timber) or record.id in gone or gone.isdisjoint(record.meets):
            continue
        rest = [other for other in record.meets if other not in gone]
        draft = draft.put((*path, "meets"), rest) if rest else draft.drop((*path, "meets"))
    return draft


def loosened(frame: Frame, gone: Iterable[str], timber: str = "") -> tuple[Loose, ...]:
    """The ends of other timbers that nothing settles once some joints are gone."""
    dropped = set(gone)
    ends = (
        (each.timber, each.end)
        for work in frame.project.works
        if work.id in dropped
        for each in work.settled()
        if each.timber != timber
    )
    found = (_loose(frame, id_, end) for id_, end in dict.fromkeys(ends))
    return tuple(each for each in found if each is not None)


def _loose(frame: Frame, timber: str, end: Direction) -> Loose | None:
    record, place = frame.timber(timber), frame.place(timber)
    if record.at is None or record.length is not None or place is None:
        return None
    near = end is record.reference_end
    point = place.point(ZERO if near else frame.stick(timber).body, ZERO, ZERO)
    name = coordinate_along(record.reference_end)
    axis = ("east", "north", "up").index(name)
    return Loose(
        timber=record,
        end=end,
        key=ENDS_AT[0 if near else 1],
        text=coordinate_text(frame, point[axis], name),
    )


def coordinate_text(frame: Frame, nanometres: int, way: str) -> str:
    """A coordinate as a framer would write it: a line or level that lies there, or a figure."""
    return lines_at(frame, way).get(nanometres) or figure_text(nanometres)


def lines_at(frame: Frame, way: str) -> dict[int, str]:
    """The levels, or the lines, by where they lie; of two, one that a place says that way."""
    project = frame.project
    said = {
        name
        for timber in project.timbers
        for key, total in timber.sums().items()
        if key.endswith(way)
        for name in total.names()
    }
    table = project.levels if way == "up" else project.lines
    ordered = sorted(table, key=lambda name: name in said)
    return {frame.value(table[name]).nm: name for name in ordered}


def figure_text(nanometres: int) -> str:
    """An exact figure as it may stand in quotes in the file."""
    text = type(ZERO)(abs(nanometres)).exact_text().replace('"', " in")
    return f"-{text}" if nanometres < 0 else text


def works_of(project: Project, timber: str) -> Iterator[Work]:
    """The joints and chamfers that name a timber, in file order."""
    return (work for work in project.works if timber in work.timbers().values())
