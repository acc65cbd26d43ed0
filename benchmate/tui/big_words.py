"""Words in capitals as large as their room allows, to be read from two paces.

1. A letter is five pixels high and mostly three wide; every size is a whole multiple of that.
2. A cell holds two pixels, one above the other; in ASCII it holds one.
3. Words are broken only between words. Text with a character that no sheet has is not set at all:
   a word with a hole in it is a wrong word.
"""

from __future__ import annotations

import unicodedata
from functools import cache
from typing import TYPE_CHECKING

from benchmate.tui.figure_fonts import Block, columns, halves, large_cells
from benchmate.tui.letter_sheets import SHEETS, SPACE

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs

HIGH = 5
"""Pixels of a letter from top to foot."""

LARGEST = 8
"""The greatest multiple: letters of forty pixels."""

_ALIKE = {"\u00d7": "X", "\u2019": "'", "\u201d": '"', "\u2013": "-", "\u2014": "-"}


def big_words(text: str, *, width: int, height: int, glyphs: Glyphs, most: int = LARGEST) -> Block:
    """The words in the largest letters that fit, in rows of one width; nothing if none do.

    `most` is the largest multiple to try.
    """
    for times in range(most, 0, -1):
        block = words_of_size(text, times, width=width, glyphs=glyphs)
        if block and len(block) <= height:
            return block
    return ()


def words_of_size(text: str, times: int, *, width: int, glyphs: Glyphs) -> Block:
    """The words in letters of one size, broken to a width, in rows of one width.

    Nothing where a word is wider than that or cannot be set, or where there are no words.
    """
    found = [_picture(word) for word in _plain(text).split()]
    words = [word for word in found if word is not None]
    lines = _lines(words, width // times)
    if not words or len(words) < len(found) or not lines:
        return ()
    wide = max(len(line[0]) for line in lines)
    blank = (" " * (wide * times),) * times
    pixels: list[str] = []
    for line in lines:
        pixels += (*blank, *_grown(line, wide, times)) if pixels else _grown(line, wide, times)
    if halves(glyphs) and len(pixels) % 2:
        pixels.append(" " * (wide * times))
    return large_cells(tuple(pixels), glyphs)


def _plain(text: str) -> str:
    """Capitals without accents."""
    alike = "".join(_ALIKE.get(char, char) for char in text).upper()
    return "".join(
        char for char in unicodedata.normalize("NFKD", alike) if not unicodedata.combining(char)
    )


def _picture(word: str) -> Block | None:
    """A word as pixels; None where no sheet has one of its characters."""
    letters = _letters()
    if any(char not in letters for char in word):
        return None
    return tuple(" ".join(rows) for rows in zip(*(letters[char] for char in word), strict=True))


@cache
def _letters() -> dict[str, Block]:
    """Every character there is, as pixels."""
    return {
        char: picture
        for chars, sheet in SHEETS
        for char, picture in zip(chars, columns(sheet), strict=True)
    }


def _lines(words: list[Block], width: int) -> list[Block]:
    """The words in lines of at most `width` pixels; none where a word is wider."""
    lines: list[Block] = []
    for word in words:
        if len(word[0]) > width:
            return []
        space = " " * (SPACE + 2)
        if lines and len(lines[-1][0]) + len(space) + len(word[0]) <= width:
            lines[-1] = tuple(a + space + b for a, b in zip(lines[-1], word, strict=True))
        else:
            lines.append(word)
    return lines


def _grown(line: Block, wide: int, times: int) -> list[str]:
    """A line of a width in pixels, every pixel so many times as large."""
    return ["".join(char * times for char in row.ljust(wide)) for row in line for _ in range(times)]
