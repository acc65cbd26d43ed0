"""The form for the project's names: what each comes to, and what another text for it would do.

No widget is touched here: the names screen shows what the form says.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.tui.ripple_words import names_line, ripple_lines, worth_text
from benchmate.tui.rows import Row
from benchmate.workbench.frame_form import largest_safe
from benchmate.workbench.keeping import BadTextError, NotKeptError
from benchmate.workbench.names import NewText

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.workbench.bench import Bench
    from benchmate.workbench.names import Named
    from benchmate.workbench.ripple import Ripple

TITLE = "Lines, levels and sizes"


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """What a typed text comes to: the lines to show, and the new text if it may be accepted."""

    lines: tuple[str, ...]
    excerpt: str = ""
    new: NewText | None = None
    changed: bool = False


class NamesForm:
    """Every name of a project, and what writing it otherwise would do."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._tape = bench.tape
        self._lines = tuple(_lines(bench.names()))
        self.rows = tuple(self._row(line) for line in self._lines)

    @property
    def bare_words(self) -> str:
        """What a number without a unit is, where the tape on the screen has others."""
        return self._bench.bare_words

    @property
    def blocked(self) -> str:
        """Why nothing can be typed here, or empty."""
        if self._bench.read_only:
            return f"READ ONLY: {self._bench.read_only}. Names can be looked at, not changed."
        if self._bench.broken:
            return f"READ ONLY for now: put right first {self._bench.broken}."
        return ""

    def named(self, row: int | None) -> Named | None:
        """The name that a row stands for; None for a heading, or no row."""
        line = None if row is None else self._lines[row]
        return None if line is None or isinstance(line, str) else line

    def _row(self, line: Named | str) -> Row:
        if isinstance(line, str):
            return Row(text=line, heading=True)
        return Row(text=f"{line.name} = {line.written}", tail=worth_text(line.worth, self._tape))

    def about(self, named: Named) -> str:
        """What is being changed, as it is now."""
        worth = worth_text(named.worth, self._tape)
        comes_to = "" if worth in (named.written, f'{named.written}"') else f", which is {worth}"
        return f"{named.name}, now {named.written}{comes_to}{self._at_most(named)}"

    def _at_most(self, named: Named) -> str:
        """For an inner section: the largest one that every measured stick of its class allows."""
        if named.table.table != "inner":
            return ""
        most = largest_safe(self._bench.frame, named.name)
        return f"; every stick measured allows {worth_text(most, self._tape)}" if most else ""

    def weigh(self, named: Named, text: str) -> Weighed:
        """What writing a text for a name would do; nothing is kept."""
        new = NewText(named.table.table, named.name, text.strip())
        if new.text == named.written.strip():
            told = "Type what it is to be; what that moves shows here before it is accepted."
            return Weighed(lines=(told,), new=new)
        try:
            ripple = self._bench.try_name(*new)
        except BadTextError as error:
            return Weighed(lines=(str(error),), excerpt=error.excerpt)
        except NotKeptError as error:
            return Weighed(lines=(str(error),))
        return Weighed(lines=self._effect(named, ripple), new=new, changed=True)

    def _effect(self, named: Named, ripple: Ripple) -> tuple[str, ...]:
        its_own = (named.table.table, named.name)
        own = tuple(each for each in ripple.names if (each.table, each.name) == its_own)
        others = tuple(each for each in ripple.names if (each.table, each.name) != its_own)
        worth = worth_text(named.worth, self._tape)
        lines = [names_line(own, self._tape) if own else f"{named.name} stays {worth}"]
        lines += [f"With it {names_line(others, self._tape)}"] if others else []
        return (*(f"{line}." for line in lines), *ripple_lines(ripple, self._bench.frame))


def _lines(names: tuple[Named, ...]) -> Iterator[Named | str]:
    """The names under the headings of their tables."""
    heading = ""
    for named in names:
        if named.table.title != heading:
            heading = named.table.title
            yield heading
        yield named
