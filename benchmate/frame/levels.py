"""Levels and named lengths: what a name, or a sum of names, comes to.

A name is a level, a length, or the `depth` or `width` of a named section: `joist depth` is the
depth of section `joist` in from the first reference face, `joist width` in from the second.
"""

from collections.abc import Mapping

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


class Levels:
    """The values of all names of a project, each worked out when first asked for."""

    def __init__(self, sums: Mapping[str, Sum], sections: Mapping[str, Section]) -> None:
        self._sums = sums
        self._known = section_names(sections)

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
