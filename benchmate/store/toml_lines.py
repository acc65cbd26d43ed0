r"""Where each key and value of a well-formed TOML document stands, which `tomllib` does not tell.

1. The text has been read by `tomllib` before, so nothing here checks it: it only finds places.
2. A path is the way to a value: `("timber", 1, "length")` is `length` in the second `[[timber]]`.
3. A place is an offset into the text; a path that is not written has the place of the nearest
   part of the way that is.
4. A column inside a text value is carried through its escapes, so `\"` counts as one character.
"""

import re
import tomllib
from bisect import bisect_right
from itertools import islice
from typing import NamedTuple

Path = tuple[str | int, ...]

_KEY = re.compile(r"""[A-Za-z0-9_-]+|"(?:\\.|[^"\\])*"|'[^']*'""")
_DOT = re.compile(r"[ \t]*\.[ \t]*")
_GAP = re.compile(r"(?:[ \t\n]|#[^\n]*)*")
_STRING = re.compile(
    r'"""(?:\\.|[^\\])*?"""(?!")|' + r"'''.*?'''(?!')|" + r'"(?:\\.|[^"\\])*"|' + r"'[^']*'",
    re.DOTALL,
)
_PLAIN = re.compile(r"[^,\]}\n#]*")
_UNIT = re.compile(r"\\u.{4}|\\U.{8}|\\.|.")


class Header(NamedTuple):
    """A `[table]` or `[[table]]`: the path that the keys below belong to, and where it starts."""

    path: Path
    start: int


class Pair(NamedTuple):
    """A key and its value: its path, that of the table it is written in, where both stand.

    `start` is where the key starts, `value` and `end` are where the value does and where it ends.
    """

    path: Path
    base: Path
    start: int
    value: int
    end: int


class Written(NamedTuple):
    """Every header, every pair and every item of a list of a document, each in its order."""

    headers: tuple[Header, ...]
    pairs: tuple[Pair, ...]
    items: dict[Path, tuple[int, int]]


def written(text: str) -> Written:
    """Where everything stands in a well-formed document, whose lines end in a bare new line."""
    scanner = _Scanner(text)
    scanner.document()
    items = {path: (start, scanner.ends[path]) for path, start in scanner.values.items()}
    return Written(tuple(scanner.headers), tuple(scanner.pairs), items)


def last_key(text: str, pair: Pair) -> tuple[int, int]:
    """Where the last part of a pair's key stands: `trim` in `shop.trim = "1"`."""
    found = _KEY.match(text, pair.start)
    while found is not None:
        span, dot = found.span(), _DOT.match(text, found.end())
        found = _KEY.match(text, dot.end()) if dot else None
    return span


class Places:
    """The places of all keys and values of one document, whose lines end in a bare new line."""

    def __init__(self, text: str) -> None:
        self._text = text
        self._starts = [0, *(end.end() for end in re.finditer("\n", text))]
        scanner = _Scanner(text)
        scanner.document()
        self._keys = scanner.keys
        self._values = scanner.values

    def line(self, path: Path) -> int:
        """The line, from 1, of the key or table at a path, or of what it would stand in."""
        return self.line_at(self._place(path))

    def line_at(self, offset: int) -> int:
        """The line, from 1, that an offset lies in."""
        return bisect_right(self._starts, offset)

    def line_text(self, line: int) -> str:
        """A line as written, without its end."""
        start = self._starts[line - 1]
        end = self._starts[line] - 1 if line < len(self._starts) else len(self._text)
        return self._text[start:end]

    def inside(self, path: Path, column: int) -> tuple[int, int] | None:
        """The line and 0-based column of a character of a one-line text value."""
        start = self._values.get(path)
        if start is None or self._text[start] not in "\"'" or self._many_lines(start):
            return None
        offset = start + 1 + self._written(start + 1, column)
        line = self.line_at(offset)
        return line, offset - self._starts[line - 1]

    def _many_lines(self, start: int) -> bool:
        return self._text[start : start + 3] in ('"""', "'''")

    def _written(self, start: int, column: int) -> int:
        """How many characters the first `column` characters of a text value are written with."""
        if self._text[start - 1] == "'":
            return column
        units = _UNIT.finditer(self._text, start)
        return sum(len(unit[0]) for unit in islice(units, column))

    def _place(self, path: Path) -> int:
        for length in range(len(path), 0, -1):
            place = self._keys.get(path[:length])
            if place is not None:
                return place
        return 0


class _Scanner:
    """Walks once through a document, noting where keys and values start."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.at = 0
        self.keys: dict[Path, int] = {}
        self.values: dict[Path, int] = {}
        self.ends: dict[Path, int] = {}
        self.headers: list[Header] = []
        self.pairs: list[Pair] = []
        self.counts: dict[Path, int] = {}

    def document(self) -> None:
        base: Path = ()
        self.skip(_GAP)
        while self.at < len(self.text):
            if self.text[self.at] == "[":
                base = self.header()
            else:
                self.pair(base)
            self.skip(_GAP)

    def skip(self, pattern: re.Pattern[str]) -> str:
        found = pattern.match(self.text, self.at)
        if found is None:
            return ""
        self.at = found.end()
        return found[0]

    def header(self) -> Path:
        """The path that the keys below a `[table]` or `[[table]]` belong to."""
        start, many = self.at, self.text.startswith("[[", self.at)
        self.at += 2 if many else 1
        *lead, last = self.key()
        path = (*self.latest(lead), last)
        if many:
            count = self.counts[path] = self.counts.get(path, 0) + 1
            self.keys.setdefault(path, start)
            path = (*path, count - 1)
        self.note(path, start)
        self.headers.append(Header(path, start))
        self.at = self.text.index("]", self.at) + (2 if many else 1)
        return path

    def latest(self, names: list[str]) -> Path:
        """The path of named tables, in the last entry of each that is a list of tables."""
        path: Path = ()
        for name in names:
            path = (*path, name)
            if path in self.counts:
                path = (*path, self.counts[path] - 1)
        return path

    def note(self, path: Path, start: int) -> None:
        for length in range(1, len(path) + 1):
            self.keys.setdefault(path[:length], start)

    def pair(self, base: Path) -> None:
        start = self.at
        path = (*base, *self.key())
        self.note(path, start)
        self.at = self.text.index("=", self.at) + 1
        self.value(path)
        self.pairs.append(Pair(path, base, start, self.values[path], self.ends[path]))

    def key(self) -> list[str]:
        """The parts of a dotted key."""
        self.skip(_GAP)
        parts = [_plain_key(self.skip(_KEY))]
        while self.skip(_DOT):
            parts.append(_plain_key(self.skip(_KEY)))
        return parts

    def value(self, path: Path) -> None:
        self.skip(_GAP)
        start = self.values[path] = self.at
        self.keys.setdefault(path, start)
        opening = self.text[start]
        if opening == "[":
            self.array(path)
        elif opening == "{":
            self.table(path)
        else:
            self.skip(_STRING if opening in "\"'" else _PLAIN)
        self.ends[path] = start + len(self.text[start : self.at].rstrip())

    def array(self, path: Path) -> None:
        place = 0
        while self.more("]"):
            self.value((*path, place))
            place += 1

    def table(self, path: Path) -> None:
        while self.more("}"):
            self.pair(path)

    def more(self, closing: str) -> bool:
        """Step over the opening bracket or comma before an item; False at the closing one."""
        self.skip(_GAP)
        if self.text[self.at] in "[{,":
            self.at += 1
            self.skip(_GAP)
        if self.text[self.at] != closing:
            return True
        self.at += 1
        return False


def _plain_key(written: str) -> str:
    if "\\" in written:
        return next(iter(tomllib.loads(f"{written} = 0")))
    return written[1:-1] if written[:1] in ("'", '"') else written
