"""What pydantic finds wrong, in our own words."""

import re
from typing import NamedTuple, get_args

from pydantic_core import ErrorDetails

from benchmate.measure.tokens import LengthError
from benchmate.model.record import Record
from benchmate.store.nearest import nearest
from benchmate.store.tables import LISTS
from benchmate.store.toml_lines import Path

UNKNOWN_KEY = "is not a key known here"

_WORDS = {
    "string_type": ("is not text", "write it in quotes"),
    "bool_type": ("is not yes or no", "write true or false"),
    "tuple_type": ("is not a list", 'write a list, as ["post-se", "post-sw"]'),
    "dict_type": ("is not a table", "write a table of keys and values"),
    "model_type": ("is not a table", "write a table of keys and values"),
    "too_short": ("is an empty list", "write one or more in it"),
    "datetime_type": ("is not a date and time", "write one, as 2026-05-01T09:30:00+02:00"),
}
"""The kinds of error whose words are always the same, by pydantic's name for each."""

_OTHER = ("cannot be used here", "look at how a neighbouring entry writes it")

_QUOTED = re.compile(r"'([^']*)'")


class Words(NamedTuple):
    """What is wrong and what to do; the column within the value where it is known."""

    message: str
    remedy: str
    column: int | None = None


def words_for(error: ErrorDetails, record: type[Record] | None) -> Words:
    """What to say of one error; `record` is what was being read, if it has keys."""
    kind, given = error["type"], error["input"]
    if kind == "value_error":
        return _own_words(error["ctx"]["error"])
    if kind == "missing":
        return Words("is missing", f"write {error['loc'][-1]} = ... here")
    if kind == "extra_forbidden":
        keys = keys_at(record, error["loc"]) if record else ()
        return Words(UNKNOWN_KEY, nearest(error["loc"][-1], keys))
    if kind == "literal_error":
        words = _QUOTED.findall(error["ctx"]["expected"])
        return Words("is not one of the words known here", nearest(given, words))
    return Words(*_WORDS.get(kind, _OTHER))


def keys_at(record: type[Record], path: Path) -> tuple[str, ...]:
    """The keys of the table that the last part of a path would stand in."""
    for part in path[:-1]:
        field = record.model_fields.get(str(part))
        inner = _record_in(field.annotation) if field else None
        record = inner or record
    return tuple(file_key(field) for field in record.model_fields)


def file_key(field: object) -> str:
    """The key of the file that a field of a record stands under."""
    return LISTS.get(str(field), str(field))


def _record_in(annotation: object) -> type[Record] | None:
    if isinstance(annotation, type) and issubclass(annotation, Record):
        return annotation
    found = (_record_in(part) for part in get_args(annotation))
    return next((record for record in found if record), None)


def _own_words(error: ValueError) -> Words:
    """Our own readers say what is wrong before the first semicolon, and what to do after it."""
    if isinstance(error, LengthError):
        return Words(error.problem, error.remedy, error.column)
    message, _, remedy = str(error).partition("; ")
    return Words(message, remedy)
