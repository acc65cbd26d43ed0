"""A line for the calculator, read: arithmetic, equal spaces, a diagonal, or a run and a rise.

    12' 6 - 2 x 7-1/2
    14' 3 in 5 spaces
    14' 3 at most 16
    14' 3 in 5 spaces with 5-1/2 between
    diagonal 14' 3 by 22'
    diagonal 14' 3 by 22', 26' 2-1/2 and 26' 3
    run 12' rise 8'
    run 12' pitch 8 in 12

How it works: known names are painted over, so that no word is found inside a name; a pattern finds
the words; what stands between them is arithmetic, and its errors keep their columns in the line.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.measure.reckon.pieces import LEADS, known_name
from benchmate.measure.reckon.rectangle import Racked, Rectangle
from benchmate.measure.reckon.slope import Slope
from benchmate.measure.reckon.spaces import Spaces, no_wider
from benchmate.measure.reckon.total import Total, read_total
from benchmate.measure.tokens import LengthError
from benchmate.measure.tolerance import LONGEST_SUM_TEXT, MOST_SPACES

Asked = Total | Spaces | Rectangle | Racked | Slope
"""What a line asks for."""

_PAINT = "\0"
_WITH = r"(?:\s+with\s+(?P<between>.+?)\s+between)?\s*"
_COUNTED = re.compile(
    rf"(?P<total>.+?)\s+in(?:to)?\s+(?P<count>[0-9]+)\s+(?:equal\s+)?spaces?{_WITH}"
)
_AT_MOST = re.compile(
    r"(?P<total>.+?)(?:\s+in(?:to)?\s+(?:equal\s+)?spaces)?(?:\s+of)?\s+at\s+most\s+"
    rf"(?P<most>.+?){_WITH}"
)
_UNCOUNTED = re.compile(r".+?\s(?P<word>in(?:to)?)\s+[0-9]+\s*")
_DIAGONAL = re.compile(
    r"diagonals?\s+(?P<one>.+?)\s+by\s+(?P<other>.+?)"
    r"(?:(?:\s*,|\s+measured)\s+(?P<first>.+?)\s+and\s+(?P<second>.+?))?\s*"
)
_CLAUSE = re.compile(
    r"(?P<word>run|rise|pitch)(?=\s|$)\s*(?P<said>.*?),?\s*(?=\b(?:run|rise|pitch)\b|$)"
)
_PITCH = re.compile(r"(?P<rise>.+?)\s+in\s+(?P<run>.+)")
_SAYS = re.compile(r"\s+(?![xX][\s\d(])[\w.(]")
"""Figures behind a word: `rise 8'`, so that a project may have a length called rise as well."""

_LEAD = re.compile(rf"\s*(?P<word>{'|'.join(LEADS)})s?(?=\s|$)")


def read_line(text: str, *, bare: Unit, sizes: Mapping[str, Length]) -> Asked:
    """What a line asks for; LengthError with its column for anything that cannot be reckoned.

    `bare` is the unit of a number without one, `sizes` what the names that may stand in it measure.
    """
    if len(text) > LONGEST_SUM_TEXT:
        problem = f"longer than {LONGEST_SUM_TEXT} characters"
        raise LengthError(text, LONGEST_SUM_TEXT, problem, "work part of it out first")
    line = _Line(text, _painted(text, sizes), bare, sizes)
    lead = _LEAD.match(line.words)
    if lead:
        return line.diagonal() if lead["word"] == "diagonal" else line.slope(lead.start("word"))
    return line.spaces() or read_total(text, bare=bare, sizes=sizes)


def _painted(text: str, sizes: Mapping[str, Length]) -> str:
    """The text with every known name painted over, and its words in small letters."""
    painted, at = "", 0
    while at < len(text):
        inside = at and (text[at - 1].isalnum() or text[at - 1] == "-")
        name = "" if inside else known_name(text, at, sizes)
        if name in LEADS and _SAYS.match(text, at + len(name)):
            name = ""
        small = text[at].lower() if text[at].isascii() else text[at]
        painted += _PAINT * len(name) or small
        at += len(name) or 1
    return painted


@dataclass(frozen=True, slots=True, kw_only=True)
class _Part:
    """A stretch of the line that was reckoned, and its column."""

    nm: Fraction
    names: tuple[str, ...]
    column: int


@dataclass(frozen=True, slots=True)
class _Line:
    """The text, the text with names painted over, and what its figures mean."""

    text: str
    words: str
    bare: Unit
    sizes: Mapping[str, Length]

    def refuse(self, column: int, problem: str, remedy: str) -> LengthError:
        return LengthError(self.text, column, problem, remedy)

    def part(self, span: tuple[int, int]) -> _Part:
        """What stands between two columns, above zero."""
        start, end = span
        start += len(self.text[start:end]) - len(self.text[start:end].lstrip())
        try:
            total = read_total(self.text[start:end], bare=self.bare, sizes=self.sizes)
        except LengthError as error:
            raise error.within(self.text, start) from None
        if total.nm <= 0:
            raise self.refuse(start, "this must be above zero", "check the figure")
        return _Part(nm=total.nm, names=total.names, column=start)

    def spaces(self) -> Spaces | None:
        """Equal spaces, counted or at most so wide; None for a line that asks for none."""
        found = _COUNTED.fullmatch(self.words) or _AT_MOST.fullmatch(self.words)
        if found is None:
            uncounted = _UNCOUNTED.fullmatch(self.words)
            if uncounted:
                raise self.refuse(uncounted.start("word"), "in how many what", "write in 5 spaces")
            return None
        total = self.part(found.span("total"))
        between = self.part(found.span("between")) if found["between"] else None
        width = between.nm if between else Fraction(0)
        count, column, names = self._count(found, total.nm, width)
        if not 1 <= count <= MOST_SPACES:
            raise self.refuse(column, f"makes {count} spaces", f"ask for 1 to {MOST_SPACES}")
        names = (*total.names, *names, *(between.names if between else ()))
        try:
            return Spaces(total=total.nm, count=count, between=width, names=names)
        except ValueError:
            column = between.column if between else total.column
            problem = "what stands between leaves nothing for the spaces"
            raise self.refuse(column, problem, "ask for fewer spaces") from None

    def _count(
        self, found: re.Match[str], total: Fraction, width: Fraction
    ) -> tuple[int, int, tuple[str, ...]]:
        """How many spaces are asked for, the column that says so, and the names it goes by."""
        if "count" in found.groupdict():
            return int(found["count"]), found.start("count"), ()
        most = self.part(found.span("most"))
        return no_wider(total, most.nm, width), most.column, most.names

    def diagonal(self) -> Rectangle | Racked:
        """The diagonal of a rectangle, or what to do about two that were measured."""
        found = _DIAGONAL.fullmatch(self.words)
        if found is None:
            remedy = "write it as diagonal 14' 3 by 22'"
            raise self.refuse(len(self.text.rstrip()), "a rectangle has two sides", remedy)
        one, other = self.part(found.span("one")), self._other(found)
        sides = Rectangle(one=one.nm, other=other.nm, names=(*one.names, *other.names))
        if not found["first"]:
            return sides
        first, second = self.part(found.span("first")), self.part(found.span("second"))
        for each in (first, second):
            if not abs(one.nm - other.nm) < each.nm < one.nm + other.nm:
                problem = "with these sides no diagonal measures that"
                raise self.refuse(each.column, problem, "measure it, and the sides, again")
        return Racked(sides=sides, first=first.nm, second=second.nm)

    def _other(self, found: re.Match[str]) -> _Part:
        """The second side; one diagonal alone behind it is refused."""
        comma = found["other"].find(",")
        if comma >= 0:
            remedy = "write both, as 26' 2-1/2 and 26' 3"
            column = found.start("other") + comma
            raise self.refuse(column, "two diagonals are measured, or none", remedy)
        return self.part(found.span("other"))

    def slope(self, start: int) -> Slope:
        """A run and a rise, either of them and a pitch, or a pitch alone."""
        said: dict[str, _Part] = {}
        for clause in _CLAUSE.finditer(self.words, start):
            for word, part in self._clause(clause):
                if word in said:
                    problem = f"the {word.removeprefix('pitch ')} is said twice"
                    raise self.refuse(clause.start("word"), problem, "leave one of them out")
                said[word] = part
        return self._slope(said)

    def _clause(self, clause: re.Match[str]) -> tuple[tuple[str, _Part], ...]:
        """What one word and the figures behind it say; a rise in a run is a pitch."""
        word, span = clause["word"], clause.span("said")
        ratio = _PITCH.fullmatch(self.words, *span) if word != "run" else None
        if ratio:
            rise, run = self.part(ratio.span("rise")), self.part(ratio.span("run"))
            return ("pitch rise", rise), ("pitch run", run)
        if word == "pitch":
            problem, remedy = "a pitch is so much in so much", "write it as pitch 8 in 12"
            raise self.refuse(span[1], problem, remedy)
        return ((word, self.part(span)),)

    def _slope(self, said: dict[str, _Part]) -> Slope:
        """The slope that what was said settles."""
        names = tuple(name for part in said.values() for name in part.names)
        nm = {word: part.nm for word, part in said.items()}
        if "pitch run" in nm:
            rise, run = nm.pop("pitch rise"), nm.pop("pitch run")
            if len(nm) > 1:
                problem = "run and rise leave nothing for the pitch to say"
                raise self.refuse(len(self.text.rstrip()), problem, "leave one of them out")
            if "rise" in nm:
                return Slope(run=nm["rise"] * run / rise, rise=nm["rise"], names=names)
            run, rise = nm.get("run", run), nm["run"] * rise / run if "run" in nm else rise
            return Slope(run=run, rise=rise, names=names)
        if len(nm) == 1:
            (word,) = nm
            other = "rise" if word == "run" else "run"
            problem, remedy = f"the {other} is missing", f"write {other} 8', or pitch 8 in 12"
            raise self.refuse(len(self.text.rstrip()), problem, remedy)
        return Slope(run=nm["run"], rise=nm["rise"], names=names)
