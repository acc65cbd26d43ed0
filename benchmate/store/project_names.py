"""Names for lengths, levels and sections: each sayable, given once, and coming to something."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import partial

from benchmate.frame.levels import LevelError, section_names
from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum, is_name
from benchmate.store.document import Document
from benchmate.store.project_parts import NAME_TABLES, SUM_TABLES, Parts
from benchmate.store.toml_lines import Path

DEEPEST = 40
"""Names that may lead to one another in a chain: no framer follows a longer one by eye."""

_ANY = Section(Length.inches(1), Length.inches(1))
_HOW_TO_NAME = "write lower-case words of letters and digits, such as joist depth"


def check_names(document: Document, parts: Parts) -> None:
    """Note names that cannot be said, are given twice, are unknown or go round in a circle."""
    _sayable(document)
    _given_once(document)
    known = known_names(document)
    leads = _led_to_by(parts)
    for table, sums in parts.sums.items():
        for name, total in sums.items():
            check_sum(document, (table, name), total, known, led=partial(leads, name))
    _inner_sections(document)
    _Chains(document, parts).check()


def names_sound(document: Document) -> bool:
    """Whether every name comes to a length, so that anything can be worked out."""
    return all(document.sound((table,)) for table in NAME_TABLES)


def known_names(document: Document) -> dict[str, Path]:
    """Every name a sum may use, those whose own values are not sound included, and where given."""
    return {name: path for path, name in _names(document)}


def check_sum(
    document: Document,
    path: Path,
    total: Sum,
    known: Mapping[str, Path],
    *,
    led: Callable[[], tuple[str, ...]] = tuple,
) -> None:
    """Note the names in a sum that are not known; `led` gives the names that lead to it."""
    for name in dict.fromkeys(total.names()):
        if name not in known:
            chain = led()
            shown = f" ({' → '.join((*chain, name))})" if chain else ""
            message = f'there is no line, length, level or section size called "{name}"{shown}'
            remedy = document.nearest(name, known, none="give it under [lengths]")
            document.add(path, message, remedy)


def _led_to_by(parts: Parts) -> Callable[[str], tuple[str, ...]]:
    """Gives the names that lead to a name, itself last, and no more than a framer would follow.

    Of several ways it is the first in the file.
    """
    users: dict[str, str] = {}
    for sums in parts.sums.values():
        for user, total in sums.items():
            for name in total.names():
                users.setdefault(name, user)

    def chain(name: str) -> tuple[str, ...]:
        found = [name]
        while len(found) < DEEPEST and (user := users.get(found[0])) not in (None, *found):
            found.insert(0, str(user))
        return tuple(found)

    return chain


def _names(document: Document) -> Iterator[tuple[Path, str]]:
    """Every name a sum may use, with the path of the entry that gives it."""
    for table in NAME_TABLES:
        for entry in document.table(table):
            for name in _names_given(table, entry):
                yield (table, entry), name


def _names_given(table: str, entry: str) -> Iterable[str]:
    if table in SUM_TABLES:
        return (entry,)
    return section_names({entry if table == "sections" else f"{entry} inner": _ANY})


def _inner_sections(document: Document) -> None:
    sections = document.table("sections")
    for name in document.table("inner"):
        if name not in sections:
            remedy = document.nearest(name, sections, none="give it under [sections] first")
            document.add(("inner", name), f'there is no section called "{name}"', remedy)


def _sayable(document: Document) -> None:
    for table in NAME_TABLES:
        for name in document.table(table):
            if not is_name(name):
                document.add((table, name), "is not a name a sum can use", _HOW_TO_NAME)


def _given_once(document: Document) -> None:
    first: dict[str, Path] = {}
    for path, name in _names(document):
        earlier = first.setdefault(name, path)
        if earlier != path:
            line = document.places.line(earlier)
            message = f'gives the name "{name}", which line {line} gives already'
            document.add(path, message, "give one of them another name")


class _Chains:
    """Names that lead to names: none goes round in a circle or leads on too far."""

    def __init__(self, document: Document, parts: Parts) -> None:
        self.document = document
        self.sums = {name: total for sums in parts.sums.values() for name, total in sums.items()}
        self.depths: dict[str, int] = {}

    def check(self) -> None:
        for name in self.sums:
            self.depth(name, ())

    def depth(self, name: str, chain: tuple[str, ...]) -> int:
        """How many names stand in a row from this one on, once they have been checked."""
        if name in self.depths or name not in self.sums:
            return self.depths.get(name, 0)
        if name in chain:
            circle = (*chain[chain.index(name) :], name)
            self.add(name, str(LevelError(name, circle, circular=True)), "give one a figure")
            return 0
        if len(chain) == DEEPEST:
            self.too_deep(chain[0])
            return 0
        inner = self.sums[name].names()
        depth = 1 + max((self.depth(each, (*chain, name)) for each in inner), default=0)
        if depth > DEEPEST:
            self.too_deep(name)
            depth = 0
        self.depths[name] = depth
        return depth

    def too_deep(self, name: str) -> None:
        self.add(name, f"leads through more than {DEEPEST} names", "give a figure on the way")

    def add(self, name: str, message: str, remedy: str) -> None:
        table = next(table for table in SUM_TABLES if name in self.document.table(table))
        self.document.add((table, name), message, remedy)
