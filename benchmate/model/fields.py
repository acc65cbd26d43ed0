"""How the words of a project file become lengths, sections, directions and names.

A bare number takes the project's own unit, handed to the readers as the validation context
`{"bare": Unit}`; without one it is in inches.
"""

from collections.abc import Callable
from typing import Annotated, Any

from pydantic import PlainSerializer, PlainValidator, ValidationInfo

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit, read_length
from benchmate.measure.section import Section, read_section
from benchmate.measure.sums import Sum, read_sum
from benchmate.measure.tolerance import LARGEST_SECTION
from benchmate.model.directions import Direction
from benchmate.model.words import LONGEST_HOOK, LONGEST_NAME, LONGEST_NOTE, check_id, check_text


def _bare(info: ValidationInfo) -> Unit:
    context: dict[str, Unit] = info.context or {}
    return context.get("bare", Unit.INCH)


def _text(value: object, *, example: str) -> str:
    if not isinstance(value, str):
        quoted = f'"{value}"' if type(value) in (int, float) else example
        raise ValueError(f"is not text; write it in quotes, as {quoted}")  # noqa: TRY004 - pydantic
    return value


def _size(value: object, info: ValidationInfo) -> Length:
    if isinstance(value, Length):
        return value
    text = _text(value, example='"4-3/4"')
    return read_length(text, bare=_bare(info), most=LARGEST_SECTION)


def _positive_size(value: object, info: ValidationInfo) -> Length:
    size = _size(value, info)
    if not size:
        raise ValueError("is nothing; write a size of more than nothing")
    return size


def _run(value: object, info: ValidationInfo) -> Length:
    if isinstance(value, Length):
        return value
    run = read_length(_text(value, example='"3 ft"'), bare=_bare(info))
    if not run:
        raise ValueError("is nothing; write a length of more than nothing")
    return run


def _distance(value: object, info: ValidationInfo) -> Length:
    if isinstance(value, Length):
        return value
    return read_length(_text(value, example='"3 ft"'), bare=_bare(info))


def _exact(value: object) -> Length:
    if isinstance(value, Length):
        return value
    text = _text(value, example='"4-3/4"')
    return read_length(text, exact=True, negative=True, most=None)


def _sum(value: object, info: ValidationInfo) -> Sum:
    if isinstance(value, Sum):
        return value
    text = _text(value, example='"floor top + 8"')
    return read_sum(text, bare=_bare(info))


def _section(value: object, info: ValidationInfo) -> Section:
    if isinstance(value, Section):
        return value
    return read_section(_text(value, example='"7 x 7"'), bare=_bare(info))


def _section_or_name(value: object, info: ValidationInfo) -> Section | str:
    if isinstance(value, str) and value[:1].isalpha():
        return check_text(value, longest=LONGEST_NAME)
    return _section(value, info)


def _words_for(directions: dict[str, Direction], what: str) -> Callable[[object], Direction]:
    known = ", ".join(directions)

    def read(value: object) -> Direction:
        if isinstance(value, Direction):
            return value
        if isinstance(value, str) and value in directions:
            return directions[value]
        raise ValueError(f"is not {what}; write one of {known}")

    return read


FACES = {direction.word: direction for direction in Direction}
"""The words a project file uses for where a face looks."""

ENDS = {"foot": Direction.DOWN, "head": Direction.UP} | {
    word: direction
    for word, direction in FACES.items()
    if direction not in (Direction.UP, Direction.DOWN)
}
"""The words a project file uses for an end of a timber."""

_END_WORDS = {direction: word for word, direction in ENDS.items()}


def _unquoted(text: str) -> str:
    """Lengths with `in` for the inch mark, which a TOML string would have to escape."""
    return text.replace('"', " in")


def _exact_text(value: Length | Section) -> str:
    return _unquoted(value.exact_text())


def _section_text(value: Section | str) -> str:
    return value if isinstance(value, str) else _exact_text(value)


def _face_word(value: Direction) -> str:
    return value.word


def _end_word(value: Direction) -> str:
    return _END_WORDS[value]


def _sum_text(value: Sum) -> str:
    return _unquoted(value.text())


def _name(value: object) -> str:
    return check_text(_text(value, example='"Orchard shed"'), longest=LONGEST_NAME)


def _hook(value: object) -> str:
    return check_text(_text(value, example='"South face"'), longest=LONGEST_HOOK)


def _note(value: object) -> str:
    text = _text(value, example='"Knot on the north face"')
    return check_text(text, longest=LONGEST_NOTE, lines=True) if text else text


def _words(value: object) -> str:
    text = _text(value, example='"Fuzzy grain: chisel from the head"')
    return check_text(text, longest=LONGEST_NOTE, lines=True)


def _id(value: object) -> str:
    return check_id(_text(value, example='"post-se"'))


def _field(read: Callable[..., Any], write: Callable[[Any], str]) -> tuple[object, object]:
    return PlainValidator(read), PlainSerializer(write, return_type=str)


Size = Annotated[Length, *_field(_size, _exact_text)]
"""A size across a timber: nothing or more, at most the largest section."""

PositiveSize = Annotated[Length, *_field(_positive_size, _exact_text)]
"""A size across a timber that must be more than nothing."""

PositiveRun = Annotated[Length, *_field(_run, _exact_text)]
"""A length along a timber that must be more than nothing, and holds no names."""

Distance = Annotated[Length, *_field(_distance, _exact_text)]
"""How far along a timber, nothing or more, without names."""

ExactLength = Annotated[Length, *_field(_exact, _exact_text)]
"""A length as the program stores it: any nanometre, either sign, however long."""

Position = Annotated[Sum, *_field(_sum, _sum_text)]
"""A position or a long length, which may be a sum of named ones."""

SectionSize = Annotated[Section, *_field(_section, _exact_text)]
"""A section: depth in from the first reference face by depth in from the second."""

SectionOrName = Annotated[Section | str, *_field(_section_or_name, _section_text)]
"""A section, or the name of one of the project's sections."""

FaceDirection = Annotated[Direction, *_field(_words_for(FACES, "where a face looks"), _face_word)]
"""Where a face looks."""

EndDirection = Annotated[Direction, *_field(_words_for(ENDS, "an end of a timber"), _end_word)]
"""An end of a timber: `foot`, `head` or a compass word."""

Name = Annotated[str, PlainValidator(_name)]
"""A name people read: any language, one line."""

Hook = Annotated[str, PlainValidator(_hook)]
"""What a figure is measured from: words that may hold a name or an id, one line."""

Note = Annotated[str, PlainValidator(_note)]
"""A note people read: any language, several lines, or empty."""

Words = Annotated[str, PlainValidator(_words)]
"""A note that says something: any language, several lines."""

Id = Annotated[str, PlainValidator(_id)]
"""A name files and other records point to."""
