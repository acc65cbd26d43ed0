"""The names of a project: the tables they stand in, how each is written and what it comes to."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from benchmate.frame.frame import Frame
from benchmate.measure.length import Length
from benchmate.measure.section import Section

Worth = Length | Section
"""What a name comes to."""

Reader = Callable[[Frame, str], Mapping[str, Worth]]
"""Gives what every name of one table comes to."""


def _sums(frame: Frame, table: str) -> Mapping[str, Worth]:
    return {name: frame.value(total) for name, total in getattr(frame.project, table).items()}


def _sections(frame: Frame, table: str) -> Mapping[str, Worth]:
    sections: Mapping[str, Section] = getattr(frame.project, table)
    return sections


class NameTable(NamedTuple):
    """A table of the project file, and of the project, that gives names; `title` is its heading."""

    table: str
    title: str
    read: Reader


NAME_TABLES = (
    NameTable("lines", "Lines", _sums),
    NameTable("levels", "Levels", _sums),
    NameTable("lengths", "Lengths", _sums),
    NameTable("sections", "Sections", _sections),
    NameTable("inner", "Inner sections, by square rule", _sections),
)
"""Every table of names, in the order a framer looks for them."""


class NewText(NamedTuple):
    """What a name of the project is to be written as from now on."""

    table: str
    name: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Named:
    """One name of the project: the table it stands in, how it is written, what it comes to."""

    table: NameTable
    name: str
    written: str
    worth: Worth


@dataclass(frozen=True, slots=True, kw_only=True)
class NameMoved:
    """A name that comes to something else than before."""

    table: str
    name: str
    before: Worth
    after: Worth


def names_of(frame: Frame, written: Mapping[str, Mapping[str, str]]) -> tuple[Named, ...]:
    """The names of a frame's project, table by table; `written` holds the texts of its file."""
    return tuple(
        Named(table=table, name=name, written=written[table.table][name], worth=worth)
        for table in NAME_TABLES
        for name, worth in table.read(frame, table.table).items()
    )


def names_moved(before: Frame, after: Frame) -> tuple[NameMoved, ...]:
    """The names of both frames that come to something else in the second."""
    if before.project is after.project:
        return ()
    return tuple(_moved(before, after))


def _moved(before: Frame, after: Frame) -> Iterator[NameMoved]:
    for table in NAME_TABLES:
        was = table.read(before, table.table)
        for name, worth in table.read(after, table.table).items():
            if name in was and was[name] != worth:
                yield NameMoved(table=table.table, name=name, before=was[name], after=worth)
