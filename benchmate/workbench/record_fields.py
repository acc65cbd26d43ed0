r"""The fields of a stored record, one a line, as a form asks for them: read off the record itself.

A field is known by its dotted key: `at.north`, `pegs.size`. Its text is what a framer types: a list
has commas, a flag is yes or no, and a new line within a note is written `\n`.
"""

import types
from collections.abc import Iterator, Mapping
from enum import Enum, auto
from functools import cache
from typing import Annotated, Any, Literal, NamedTuple, Union, get_args, get_origin

from pydantic.fields import FieldInfo

from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum
from benchmate.model.directions import Direction
from benchmate.model.fields import EndDirection, Id, Note
from benchmate.model.record import Record

YES, NO = "yes", "no"
"""What a flag is typed as."""

NOT_ASKED = ("family", "format", "timbers", "works")
"""Fields that say what a record is, and the lists of the project, which have forms of their own."""

LAST = "meets"
"""The field of all joints that is asked for last, as it stands first in none of their tables."""


class Kind(Enum):
    """What a field holds, which says what can be picked for it."""

    ID = auto()
    WORDS = auto()
    NOTE = auto()
    SIZE = auto()
    POSITION = auto()
    SECTION = auto()
    SECTION_OR_NAME = auto()
    FACE = auto()
    END = auto()
    CHOICE = auto()
    CHOICES = auto()
    FLAG = auto()
    COUNT = auto()
    TIMBER = auto()
    TIMBERS = auto()
    JOINTS = auto()


MANY = (Kind.CHOICES, Kind.TIMBERS, Kind.JOINTS)
"""The kinds that hold several words with commas between."""


class Field(NamedTuple):
    """One field of a record: its dotted key, what it holds, the words to choose from.

    `required` tells that the record, or the part of it that the field is in, cannot be without it.
    """

    key: str
    kind: Kind
    words: tuple[str, ...] = ()
    required: bool = False

    @property
    def group(self) -> str:
        """The part of the record that it is in: `at` of `at.north`; empty for the record itself."""
        return self.key.rpartition(".")[0]


@cache
def fields_of(record: type[Record]) -> tuple[Field, ...]:
    """The fields of a record in their order, those of the tables within it included."""
    return tuple(sorted(_fields(record, ""), key=lambda field: field.key == LAST))


def _fields(record: type[Record], lead: str) -> Iterator[Field]:
    for name, info in record.model_fields.items():
        inner = _record_in(info.annotation)
        if name in NOT_ASKED or get_origin(info.annotation) is dict:
            continue
        if inner is not None:
            yield from _fields(inner, f"{lead}{name}.")
        else:
            yield _field(f"{lead}{name}", name, info)


def _record_in(annotation: object) -> type[Record] | None:
    found = (each for each in (annotation, *get_args(annotation)))
    return next((e for e in found if isinstance(e, type) and issubclass(e, Record)), None)


def _field(key: str, name: str, info: FieldInfo) -> Field:
    annotation, metadata = _without_none(info.annotation, tuple(info.metadata))
    kind, words = _kind(name, annotation, metadata)
    return Field(key, kind, words, info.is_required())


def _without_none(
    annotation: Any,  # noqa: ANN401 - a type as it was written
    metadata: tuple[object, ...],
) -> tuple[Any, tuple[object, ...]]:
    """A type that may be left out as the type itself, with what it is read and written by."""
    if get_origin(annotation) in (Union, types.UnionType) and type(None) in get_args(annotation):
        annotation = next(each for each in get_args(annotation) if each is not type(None))
    if get_origin(annotation) is Annotated:
        inner, *metadata_ = get_args(annotation)
        return inner, tuple(metadata_)
    return annotation, metadata


_BY_TYPE = {
    bool: Kind.FLAG,
    int: Kind.COUNT,
    Length: Kind.SIZE,
    Sum: Kind.POSITION,
    Section: Kind.SECTION,
    Section | str: Kind.SECTION_OR_NAME,
}


def _kind(name: str, annotation: Any, metadata: tuple[object, ...]) -> tuple[Kind, tuple[str, ...]]:  # noqa: ANN401 - as above
    if get_origin(annotation) is Literal:
        return Kind.CHOICE, get_args(annotation)
    if get_origin(annotation) is tuple:
        words = get_args(get_args(annotation)[0])
        if name == "meets":
            return Kind.JOINTS, ()
        return (Kind.CHOICES, words) if name != "on" else (Kind.TIMBERS, ())
    if annotation is Direction:
        end = metadata[:1] == _reader(EndDirection)
        return (Kind.END if end else Kind.FACE), ()
    if annotation is str:
        return _text_kind(name, metadata), ()
    return _BY_TYPE[annotation], ()


def _text_kind(name: str, metadata: tuple[object, ...]) -> Kind:
    if metadata[:1] == _reader(Id):
        return Kind.ID if name == "id" else Kind.TIMBER
    return Kind.NOTE if metadata[:1] == _reader(Note) else Kind.WORDS


def _reader(kind: object) -> tuple[object, ...]:
    return get_args(kind)[1:2]


def order_of(record: type[Record]) -> tuple[str, ...]:
    """The keys of a record and of the tables within it, in the order that they are written."""
    parts = (part for field in fields_of(record) for part in field.key.split("."))
    return tuple(dict.fromkeys(("id", "family", *parts)))


def texts_of(record: type[Record], stored: Mapping[str, Any]) -> dict[str, str]:
    """What stands in the file for each field of a record, as text; empty for nothing."""
    return {field.key: _text(_at(stored, field.key)) for field in fields_of(record)}


def _at(stored: Mapping[str, Any], key: str) -> object:
    found: Any = stored
    for part in key.split("."):
        found = found.get(part) if isinstance(found, Mapping) else None
    return found


def _text(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return YES if value else NO
    if isinstance(value, list):
        return ", ".join(map(str, value))
    return str(value).replace("\n", "\\n")


def stored_from(record: type[Record], texts: Mapping[str, str]) -> dict[str, Any]:
    """What the file is to say for the texts of a record's fields; an empty one says nothing."""
    stored: dict[str, Any] = {}
    for field in fields_of(record):
        text = texts.get(field.key, "").strip()
        if not text:
            continue
        *groups, last = field.key.split(".")
        table = stored
        for group in groups:
            table = table.setdefault(group, {})
        table[last] = _value(field.kind, text)
    return stored


def _value(kind: Kind, text: str) -> object:
    if kind in MANY:
        return [word for part in text.split(",") if (word := part.strip())]
    if kind is Kind.FLAG:
        return {YES: True, NO: False}.get(text.lower(), text)
    if kind is Kind.COUNT and text.isascii() and text.isdecimal():
        return int(text)
    return text.replace("\\n", "\n") if kind is Kind.NOTE else text
