"""The tables of a project file as text, in the form a framer writes them by hand."""

import re
from collections.abc import Iterable, Iterator, Mapping

Inline = Mapping[str, "str | int | Inline | None"]
"""A table in one line; what is None is left out."""

Cell = str | int | Inline
"""What a key may be: a text, a number, a table in one line."""

_BARE = re.compile(r"[A-Za-z0-9_-]+")
_COLUMN = 47
"""Where a comment behind a value starts, if the value is no longer."""


def quoted(text: str) -> str:
    """A text in quotes, for one line of a file."""
    escaped = text.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'


def key(name: str) -> str:
    """A key, in quotes only if it needs them."""
    return name if _BARE.fullmatch(name) else quoted(name)


def cell(value: Cell) -> str:
    """The text of one value."""
    if isinstance(value, int):
        return str(value)
    if isinstance(value, str):
        return quoted(value)
    pairs = (f"{key(name)} = {cell(each)}" for name, each in value.items() if each is not None)
    return f"{{ {', '.join(pairs)} }}"


def shop_table(rules: Mapping[str, str]) -> Iterator[str]:
    """The table of the shop's practice and a blank line."""
    yield "[shop]"
    yield from (f"{rule} = {cell(text)}" for rule, text in rules.items())
    yield ""


def entry(heading: str, cells: Mapping[str, Cell | None]) -> Iterator[str]:
    """One entry of a list of tables and a blank line; what is None is left out."""
    yield f"[[{heading}]]"
    for name, value in cells.items():
        if value is not None:
            yield f"{name} = {cell(value)}"
    yield ""


def timber(
    id_: str,
    name: str,
    kind: str,
    *,
    species: str = "",
    section: str = "",
    faces: tuple[str, str],
    end: str,
    **place: Cell | None,
) -> Iterator[str]:
    """One timber and where it lies; without a section it has that of its kind."""
    yield from entry(
        "timber",
        {
            "id": id_,
            "name": name,
            "kind": kind,
            "species": species or None,
            "section": section or kind,
            "first_face": faces[0],
            "second_face": faces[1],
            "reference_end": end,
            **place,
        },
    )


def joint(id_: str, family: str, **cells: Cell | None) -> Iterator[str]:
    """One joint."""
    yield from entry("joint", {"id": id_, "family": family, **cells})


def names(heading: str, lines: Iterable[tuple[str, str, str]]) -> Iterator[str]:
    """A table of names: each with its text and what it is, in a column of comments."""
    yield f"[{heading}]"
    for name, text, comment in lines:
        line = f"{key(name)} = {quoted(text)}"
        yield f"{line.ljust(_COLUMN)}  # {comment}" if comment else line
    yield ""


def comment(*lines: str) -> Iterator[str]:
    """Lines of comment, and a blank line."""
    yield from (f"# {line}".rstrip() for line in lines)
    yield ""
