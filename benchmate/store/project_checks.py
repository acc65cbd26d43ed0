"""What the entries of a project file say of one another: ids, references, faults."""

import re
from collections.abc import Iterable, Iterator, Mapping

from benchmate.frame import settling
from benchmate.frame.levels import Levels
from benchmate.frame.rake import rake
from benchmate.measure.sums import Sum
from benchmate.model.directions import end_words
from benchmate.model.place import coordinate_along
from benchmate.model.project import Timber
from benchmate.model.work import Fault, Work
from benchmate.store.document import Document
from benchmate.store.entries import entries
from benchmate.store.project_names import check_sum, known_names
from benchmate.store.project_parts import Parts
from benchmate.store.tables import TIMBER_TABLE, WORK_TABLES, families_in
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
        for key, total in timber.sums().items():
            check_sum(document, (*path, *key_path(key)), total, known)
            _check_way(document, (*path, *key_path(key)), _coordinate(timber, key), total)


def _coordinate(timber: Timber, key: str) -> str:
    """The coordinate that a figure of a timber says, or the last part of its key."""
    if key in ("reference_end_at", "far_end_at") and timber.incline is None:
        return coordinate_along(timber.reference_end)
    return str(key_path(key)[-1])


def _check_way(document: Document, path: Path, name: str, total: Sum) -> None:
    """Note a plan line that is to say how high, and a level that is to say where on the plan."""
    tables = {"up": ("lines", "a plan line, which says nothing of height", "name a level")}
    level = ("levels", "a level, which says nothing of where on the plan", "name a line")
    tables |= {"east": level, "north": level}
    if name not in tables:
        return
    table, what, remedy = tables[name]
    for each in total.names():
        if each in document.table(table):
            document.add(path, f'"{each}" is {what}', remedy)


def check_places(document: Document, parts: Parts) -> None:
    """Note timbers whose place, ends or rule are said twice, or not enough to settle them."""
    rule = parts.head.rule if parts.head is not None else "mill"
    classes = tuple(document.table("inner"))
    ends = {(each.timber, each.end) for _, work in parts.works for each in work.settled()}
    unread = _with_unread_work(document, parts)
    _ends_once(document, parts)
    for path, timber in parts.timbers:
        bears = frozenset(end for each, end in ends if each == timber.id)
        if timber.id not in unread:
            _add(document, path, settling.faults(timber, bears))
        _add(document, path, settling.rule_faults(timber, rule, classes))


def _ends_once(document: Document, parts: Parts) -> None:
    """Note an end that two joints settle: they could put its shoulder in two places."""
    first: dict[tuple[str, str], Path] = {}
    for path, work in parts.works:
        for each in work.settled():
            earlier = first.setdefault((each.timber, each.end.word), path)
            if earlier != path:
                line = document.places.line(earlier)
                whose = f"is {each.timber}, whose {end_words(each.end)}"
                what = "is the end that" if each.key == "end" else whose
                message = f"{what} the joint on line {line} has already"
                remedy = "take one of them away, or give it another end"
                document.add((*path, each.key), message, remedy)


def _with_unread_work(document: Document, parts: Parts) -> set[str]:
    """Timbers in entries that could not be read: what those would settle is not open."""
    read = {path for path, _ in parts.works}
    return {
        timber
        for table in WORK_TABLES
        for path, entry in entries(document, table)
        if path not in read
        for key in _settling(table, entry)
        if isinstance(timber := entry.get(key), str)
    }


def _settling(table: str, entry: Mapping[str, object]) -> tuple[str, ...]:
    """The keys of an entry that name timbers whose ends it may settle, whatever its family."""
    records = (each.record for each in families_in(table) if each.name == entry.get("family"))
    record = next(records, None)
    if record is None or not issubclass(record, Work):
        return ("timber", "into")
    return record.settling


def check_rakes(document: Document, parts: Parts) -> None:
    """Note raking timbers whose head does not lie where it is said to. All names must be sound."""
    levels = Levels(*parts.names())
    for path, timber in parts.timbers:
        if timber.incline is not None and document.sound(path):
            _add(document, path, settling.plane_faults(timber, rake(timber.incline, levels.value)))
        if timber.roll is not None and document.sound(path):
            slope = (levels.value(each) for each in (timber.roll.run, timber.roll.rise))
            _add(document, path, settling.roll_faults(*slope))
    _rakes_cross(document, parts, levels)


def _rakes_cross(document: Document, parts: Parts, levels: Levels) -> None:
    """Note a raking timber that is to enter another one which rakes just as it does."""
    known = {timber.id: (path, timber) for path, timber in parts.timbers}
    for path, work in parts.works:
        for bearing in work.bearings():
            pair = [known[each] for each in (bearing.timber, bearing.into) if each in known]
            raking = [
                (timber, rake(timber.incline, levels.value))
                for where, timber in pair
                if timber.incline is not None and document.sound(where)
            ]
            if len(raking) == 2 and document.sound(path):  # noqa: PLR2004 - the two of a pair
                _add(document, path, settling.alike_faults(*raking[0], *raking[1]))


def check_works(document: Document, parts: Parts) -> None:
    """Note timbers and levels that work names and the project has not, and what cannot be."""
    known = known_names(document)
    ids = dict.fromkeys(id_ for _, id_ in _given(document, TIMBER_TABLE, "id"))
    shared = parts.shared_ids()
    timbers = {timber.id: timber for _, timber in parts.timbers if timber.id not in shared}
    for path, work in parts.works:
        for key, timber in work.timbers().items():
            if timber not in ids:
                message = f'there is no timber called "{timber}"'
                document.add((*path, *key_path(key)), message, document.nearest(timber, ids))
        for key, total in work.sums().items():
            check_sum(document, (*path, *key_path(key)), total, known)
        for way, total in {coordinate_along(e.end): e.at for e in work.abutments()}.items():
            _check_way(document, (*path, "at"), way, total)
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
    _add(document, path, work.faults(timbers))


def _add(document: Document, path: Path, faults: Iterable[Fault]) -> None:
    for fault in faults:
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
