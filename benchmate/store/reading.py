"""Reading a project: strictly, and telling everything that is wrong at once."""

from collections.abc import Iterable, Iterator
from pathlib import Path

from benchmate.measure.reading import Unit
from benchmate.model.progress import Progress
from benchmate.model.project import FORMAT, Project
from benchmate.model.words import check_id
from benchmate.store.document import Document
from benchmate.store.entries import entries, read_record
from benchmate.store.files import (
    PROGRESS_FOLDER,
    PROJECT_FILE,
    Found,
    check_inside,
    progress_name,
    read_file,
    stamp,
    trouble,
)
from benchmate.store.project_checks import (
    check_ids,
    check_places,
    check_rakes,
    check_timbers,
    check_works,
)
from benchmate.store.project_features import check_features
from benchmate.store.project_meets import check_meets
from benchmate.store.project_names import check_names, names_sound
from benchmate.store.project_parts import read_parts
from benchmate.store.syntax import read_document
from benchmate.store.tables import LISTS
from benchmate.store.wording import UNKNOWN_KEY


def read_project(folder: Path) -> Project:
    """The project in a folder. Raises ProjectError, or KeepError if it cannot be read at all."""
    return parse_project(read_file(folder, PROJECT_FILE).data)


def read_progress(folder: Path, timber: str, bare: Unit) -> Progress:
    """What is kept for a timber: nothing yet if there is no file. Raises as `read_project`."""
    found = find_progress(folder, timber)
    return Progress(timber=timber) if found is None else parse_progress(found.data, timber, bare)


def progress_files(folder: Path) -> tuple[str, ...]:
    """The ids of the timbers that have a progress file, in order. Raises KeepError."""
    try:
        names = [path.stem for path in (folder / PROGRESS_FOLDER).glob("*.toml")]
    except OSError as error:
        raise trouble(folder / PROGRESS_FOLDER, error) from error
    return tuple(sorted(filter(_is_id, names)))


def find_progress(folder: Path, timber: str) -> Found | None:
    """A timber's progress file, if it has one. Raises as `read_project`."""
    name = progress_name(timber)
    check_inside(folder, name)
    return read_file(folder, name) if stamp(folder, name) else None


def parse_project(data: bytes) -> Project:
    """The project that the bytes of a project file make. Raises ProjectError."""
    document = _document(PROJECT_FILE, data)
    parts = read_parts(document)
    check_ids(document)
    check_names(document, parts)
    check_timbers(document, parts)
    check_works(document, parts)
    check_meets(document, parts)
    check_places(document, parts)
    if names_sound(document):
        check_rakes(document, parts)
        check_features(document, parts)
    return document.finish(parts.project())


def parse_progress(data: bytes, timber: str, bare: Unit) -> Progress:
    """The progress of a timber that the bytes of its file make. Raises ProjectError."""
    document = _document(progress_name(timber), data)
    fields = {key: value for key, value in document.data.items() if key not in LISTS.values()}
    for name, table in LISTS.items():
        if name != table and name in document.data:
            document.add((name,), UNKNOWN_KEY, f"head each {table} with [[{table}]]")
        fields[name] = tuple(entry for _, entry in entries(document, table))
    progress = read_record(document, (), fields, Progress, bare)
    if progress is not None:
        _check_progress(document, progress, timber)
    return document.finish(progress)


def _document(file: str, data: bytes) -> Document:
    """A document of a format this program reads. Raises ProjectError for a newer one at once."""
    document = read_document(file, data)
    given = document.data.get("format")
    if given is None:
        document.add(("format",), "is missing", f"write format = {FORMAT} at the top")
    elif type(given) is not int or given < 1:
        document.add(("format",), "is not the number of a format", f"write {FORMAT}")
    elif given > FORMAT:
        message = f"is {given}, which a newer benchmate wrote; this one reads up to {FORMAT}"
        document.add(("format",), message, "open it with the newer one")
        document.finish(None)
    document.data["format"] = FORMAT
    return document


def _check_progress(document: Document, progress: Progress, timber: str) -> None:
    if progress.timber != timber:
        message = f'is "{progress.timber}", but the name of the file says "{timber}"'
        document.add(("timber",), message, "correct the one that is wrong")
    for place, earlier in _again(tick.step for tick in progress.ticks):
        line = document.places.line(("tick", earlier))
        step = progress.ticks[place].step
        message = f'is a second tick on "{step}", ticked on line {line} already'
        document.add(("tick", place, "step"), message, "keep one of them")
    for table, listed in (("note", progress.notes), ("blemish", progress.blemishes)):
        for place, earlier in _again(each.id for each in listed):
            line = document.places.line((table, earlier))
            message = f"is the id of another {table}, on line {line}"
            document.add((table, place, "id"), message, "give one of them another id")
    for place, earlier in _again(signed.what for signed in progress.signed):
        line = document.places.line(("signed", earlier))
        message = f'is "{progress.signed[place].what}", as line {line} says already'
        document.add(("signed", place, "what"), message, "keep one of them")


def _again(keys: Iterable[str]) -> Iterator[tuple[int, int]]:
    """The places of keys that were there before, each with the first place it was at."""
    first: dict[str, int] = {}
    for place, key in enumerate(keys):
        earlier = first.setdefault(key, place)
        if earlier != place:
            yield place, earlier


def _is_id(name: str) -> bool:
    try:
        return check_id(name) == name
    except ValueError:
        return False
