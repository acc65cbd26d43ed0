"""Entries of a document as records: each read alone, so that a bad one hides no other."""

from typing import Any, TypeVar

from pydantic import TypeAdapter, ValidationError

from benchmate.measure.reading import Unit
from benchmate.model.record import Record
from benchmate.store.document import Document
from benchmate.store.toml_lines import Path
from benchmate.store.wording import file_key, words_for

R = TypeVar("R", bound=Record)


def read_record(
    document: Document, path: Path, value: dict[str, Any], record: type[R], bare: Unit
) -> R | None:
    """The record that stands at a path, its problems noted; None if they leave none.

    Unknown keys leave one, so that what else is wrong with it can be found.
    """
    try:
        return record.model_validate(value, context={"bare": bare})
    except ValidationError as error:
        note_errors(document, path, error, record)
        unknown = {each["loc"] for each in error.errors() if each["type"] == "extra_forbidden"}
        known = {key: each for key, each in value.items() if (key,) not in unknown}
        if len(value) - len(known) < error.error_count():
            return None
        return read_record(document, path, known, record, bare)


def read_values(
    document: Document, table: str, reader: TypeAdapter[Any], bare: Unit
) -> dict[str, Any]:
    """The sound values of a table of names, by name, with the problems of the others noted."""
    values = document.data.get(table, {})
    if not isinstance(values, dict):
        document.add((table,), "is not a table", f"write it as [{table}], with a name a line")
        return {}
    found: dict[str, Any] = {}
    for name, value in values.items():
        try:
            found[name] = reader.validate_python(value, context={"bare": bare})
        except ValidationError as error:
            note_errors(document, (table, name), error, None)
    return found


def entries(document: Document, table: str) -> tuple[tuple[Path, dict[str, Any]], ...]:
    """The entries of a list of tables with the path of each; anything else is noted, once."""
    listed = document.data.get(table, [])
    if not isinstance(listed, list) or not all(isinstance(each, dict) for each in listed):
        if document.sound((table,)):
            document.add((table,), "is not a list of tables", f"head each entry with [[{table}]]")
        return ()
    return tuple(((table, place), entry) for place, entry in enumerate(listed))


def note_errors(
    document: Document, path: Path, error: ValidationError, record: type[Record] | None
) -> None:
    """Note everything pydantic found wrong with what stands at a path."""
    for each in error.errors(include_url=False):
        if each["type"] == "too_short" and each["input"]:
            continue  # The list is empty only after its bad items, noted too, were left out.
        words = words_for(each, record)
        where = (part if isinstance(part, int) else file_key(part) for part in each["loc"])
        document.add((*path, *where), words.message, words.remedy, words.column)
