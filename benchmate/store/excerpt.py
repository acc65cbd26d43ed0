"""A line of a file as it is shown with a problem."""

import unicodedata

from benchmate.model.words import visible

_MOST_BEFORE = 50
_MOST_AFTER = 20
"""Characters shown before and from the caret on: with both, a line of a small screen."""


def excerpt(line: str, column: int | None = None) -> str:
    """A line as written, shortened, with a caret below a 0-based column if there is one."""
    line = line.replace("\t", " ")
    if column is None:
        line = line.strip()
        cut = "..." if len(line) > _MOST_BEFORE + _MOST_AFTER else ""
        return visible(line[: _MOST_BEFORE + _MOST_AFTER]) + cut
    indent = len(line) - len(line.lstrip())
    start = max(min(indent, column), column - _MOST_BEFORE)
    before = ("..." if start > indent else "") + visible(line[start:column])
    after = visible(line[column : column + _MOST_AFTER])
    cut = "..." if len(line) > column + _MOST_AFTER else ""
    return f"{before}{after}{cut}\n{' ' * _cells(before)}^"


def _cells(text: str) -> int:
    """How many cells of a terminal a text takes."""
    wide = sum(unicodedata.east_asian_width(character) in "WF" for character in text)
    return len(text) + wide - sum(unicodedata.category(each) in ("Mn", "Me") for each in text)
