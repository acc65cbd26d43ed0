"""The lines of a framer's own file: which belong to a table, its comments included.

1. Offsets are into the text as it is, whatever its lines end in and with or without a byte order
   mark: `plain` puts blanks in place of both, one for one, so that `written` can walk through it.
2. Comment lines right above a header are its own. Those right below the last key of a table are
   that table's, unless they run on to the next header. What a blank line sets apart belongs to
   neither, and stays when a table goes.
"""

from functools import cached_property

from benchmate.store.toml_lines import Header, Pair, Path, written

MARK = "\ufeff"
"""The byte order mark that some editors put at the head of a file."""


def plain(text: str) -> str:
    """The text with blanks for a byte order mark and for what else than a new line ends a line."""
    return text.replace("\r\n", " \n").replace(MARK, " ", 1 if text.startswith(MARK) else 0)


class Layout:
    """Where the tables of one well-formed text stand."""

    def __init__(self, text: str) -> None:
        self.text = plain(text)
        self._written = written(self.text)
        self.headers = self._written.headers
        self.items = self._written.items

    @cached_property
    def pairs(self) -> dict[Path, Pair]:
        """Every key with a value, in order, by its path."""
        in_order = sorted(self._written.pairs, key=lambda pair: pair.start)
        return {pair.path: pair for pair in in_order}

    def header(self, path: Path) -> Header | None:
        """The header of a table; None for one that is written otherwise, or not at all."""
        return next((each for each in self.headers if each.path == path), None)

    def own(self, base: Path) -> tuple[Pair, ...]:
        """The pairs written straight under a header (or at the head), dotted keys included."""
        return tuple(pair for pair in self.pairs.values() if pair.base == base)

    def line_start(self, offset: int) -> int:
        """Where the line of an offset starts."""
        return self.text.rfind("\n", 0, offset) + 1

    def line_end(self, offset: int) -> int:
        """Past the new line that ends the line of an offset; the end of the text without one."""
        end = self.text.find("\n", offset)
        return len(self.text) if end < 0 else end + 1

    def lead(self, header: Header) -> int:
        """Where the comment lines right above a header start."""
        start = self.line_start(header.start)
        while start and self._line(self.line_start(start - 1)).startswith("#"):
            start = self.line_start(start - 1)
        return start

    def finish(self, base: Path) -> int:
        """Past the last line of a table: of its last key, and of the comments right below that.

        The table is one with a header, or the head of the file, whose path is ().
        """
        header, pairs = self.header(base), self.own(base)
        last = max((pair.end for pair in pairs), default=header.start if header else 0)
        end = self.line_end(last) if pairs or header else 0
        after = end
        while self._line(after).startswith("#"):
            after = self.line_end(after)
        runs_on = after > end and self._line(after).startswith("[")
        return end if runs_on else after

    def section(self, header: Header) -> tuple[int, int]:
        """The lines of a table with its own comments, and the blank ones before it."""
        start = self.lead(header)
        while start and not self._line(self.line_start(start - 1)):
            start = self.line_start(start - 1)
        return start, self.finish(header.path)

    def entry_finish(self, path: Path) -> int:
        """Past the last line of an entry, the tables within it included."""
        within = [each.path for each in self.headers if each.path[: len(path)] == path]
        return max(map(self.finish, within), default=0)

    def _line(self, start: int) -> str:
        return self.text[start : self.line_end(start)].strip()
