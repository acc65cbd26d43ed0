"""Text typed by people, made safe to draw, and measured by the cells it takes.

Nothing a framer types may reach the terminal as a control code or be read as markup: text goes
through `safe`, and then only into a rich Segment or Text, neither of which parses it.
"""

from __future__ import annotations

import unicodedata

from rich.cells import cell_len, chop_cells, set_cell_size
from rich.text import Text

SHORTEST_END = 8
"""Cells of a text's end that are worth more than as many of its start."""

REPLACEMENT = "\N{REPLACEMENT CHARACTER}"
UNSAFE = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
"""Unicode categories that steer a terminal, turn its text round, or have no agreed width."""
VARIATIONS = dict.fromkeys(range(0xFE00, 0xFE10))
"""Selectors that make a sign wide on some terminals only; dropping them changes no words."""


def safe(text: str) -> str:
    """One line of drawable text: white space becomes a space, control codes are replaced."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(
        " " if char.isspace() else REPLACEMENT if unicodedata.category(char) in UNSAFE else char
        for char in text.translate(VARIATIONS)
    )


def rich_text(text: str, style: str = "") -> Text:
    """The text as a rich Text, never read as markup."""
    return Text(safe(text), style=style)


def clip(text: str, width: int, cut_off: str) -> str:
    """The safe text in at most `width` cells, the last of them `cut_off` where some is left out."""
    text = safe(text)
    if cell_len(text) <= width:
        return text
    return set_cell_size(text, width - 1).rstrip() + cut_off if width > 0 else ""


def clip_inside(text: str, width: int, cut_off: str) -> str:
    """The safe text in at most `width` cells, with some left out before its last words.

    Of names in a list the end tells apart what begins alike: `South end... West side`. Where there
    is no room for both ends, the end is left out.
    """
    text = safe(text)
    start = width * 3 // 5
    end = width - start - cell_len(cut_off)
    if cell_len(text) <= width or end < SHORTEST_END:
        return clip(text, width, cut_off)
    last = chop_cells(text[::-1], end)[0][::-1].lstrip()
    return set_cell_size(text, start).rstrip() + cut_off + last


def fit(text: str, width: int, cut_off: str) -> str:
    """The safe text in exactly `width` cells, clipped or filled up with spaces."""
    return set_cell_size(clip(text, width, cut_off), max(width, 0))


def wrap(text: str, width: int) -> tuple[str, ...]:
    """The safe text in lines of at most `width` cells, broken between words where it can be.

    A newline in the text ends a line. A word wider than a line is broken at its cells; a wide
    character in a line one cell wide is replaced, as it fits in none. Raises ValueError for a
    width below one.
    """
    if width < 1:
        raise ValueError(f"text cannot be wrapped to {width} cells")
    return tuple(line for part in text.splitlines() for line in _lines(safe(part), width))


def _lines(text: str, width: int) -> list[str]:
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if cell_len(longer) <= width:
            lines[-1] = longer
        else:
            pieces = _pieces(word, width)
            lines[-1:] = [lines[-1], *pieces] if lines[-1] else pieces
    return lines


def _pieces(word: str, width: int) -> list[str]:
    if width == 1:
        word = "".join(char if cell_len(char) < 2 else REPLACEMENT for char in word)  # noqa: PLR2004
    return chop_cells(word, width)
