"""Levels and named lengths: what a name, or a sum of names, comes to.

A name is a level, a length, or the `depth` or `width` of a named section: `joist depth` is the
depth of section `joist` in from the first reference face, `joist width` in from the second. Under
square rule `joist inner depth` and `joist inner width` are those of the perfect timber inside.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping

from benchmate.measure.length import Length
from benchmate.measure.section import Section
from benchmate.measure.sums import Sum


class LevelError(ValueError):
    """A name that comes to nothing: unknown, or defined by way of itself.

    `name` is the one that fails and `chain` the names that led to it, itself last.
    """

    def __init__(self, name: str, chain: tuple[str, ...], *, circular: bool) -> None:
        self.name = name
        self.chain = chain
        self.circular = circular
        shown = " → ".join(chain)
        super().__init__(
            f"goes round in a circle: {shown}" if circular else f'knows no "{name}" ({shown})'
        )


def section_names(sections: Mapping[str, Section]) -> dict[str, Length]:
    """The lengths that named sections give: `<name> depth` and `<name> width`."""
    found: dict[str, Length] = {}
    for name, section in sections.items():
        found[f"{name} depth"] = section.first
        found[f"{name} width"] = section.second
    return found


def section_table(
    sections: Mapping[str, Section], inner: Mapping[str, Section]
) -> dict[str, Section]:
    """Every named section by the words a sum uses: `post`, and `post inner` where that is given."""
    return {**sections, **{f"{name} inner": section for name, section in inner.items()}}


class Levels:
    """The values of all names of a project, each worked out when first asked for."""

    def __init__(self, sums: Mapping[str, Sum], sections: Mapping[str, Section]) -> None:
        self._sums = sums
        self._given = section_names(sections)
        self._known = dict(self._given)

    def of(self, name: str) -> Length:
        """What a name comes to. Raises LevelError if it is unknown or circular."""
        waiting = [] if name in self._known else [name]
        while waiting:
            total = self._sums.get(waiting[-1])
            if total is None:
                raise LevelError(waiting[-1], tuple(waiting), circular=False)
            unknown = next((inner for inner in total.names() if inner not in self._known), None)
            if unknown is None:
                self._known[waiting.pop()] = total.value(self._known.__getitem__)
            elif unknown in waiting:
                raise LevelError(unknown, (*waiting, unknown), circular=True)
            else:
                waiting.append(unknown)
        return self._known[name]

    def value(self, total: Sum) -> Length:
        """What a sum comes to. Raises LevelError as `of` does."""
        return total.value(self.of)

    def carry_over(self, before: "Levels") -> None:
        """Take over what others worked out for names that must come to the same here.

        Those are the names that are defined as they were, and so is all that they follow from.
        """
        new = self._new_since(before)
        old = {name: value for name, value in before.known().items() if name not in new}
        self._known = {**old, **self._known}

    def known(self) -> Mapping[str, Length]:
        """The names worked out so far, sections' own included, and what they come to."""
        return self._known

    def definitions(self) -> Mapping[str, Sum | Length]:
        """Every name with the sum it stands for, or the side of a section."""
        return {**self._sums, **self._given}

    def _new_since(self, before: "Levels") -> set[str]:
        """The names that are defined otherwise than before, and all that follow from them."""
        followers: defaultdict[str, list[str]] = defaultdict(list)
        for name, total in self._sums.items():
            for inner in total.names():
                followers[inner].append(name)
        waiting = list(_differing(before.definitions(), self.definitions()))
        new: set[str] = set()
        while waiting:
            name = waiting.pop()
            if name not in new:
                new.add(name)
                waiting += followers[name]
        return new


def _differing(one: Mapping[str, object], other: Mapping[str, object]) -> Iterator[str]:
    """The keys that two mappings do not both have with the same value."""
    return (key for key in {**one, **other} if one.get(key) != other.get(key))
