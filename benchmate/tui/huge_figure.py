"""The current figure as large as the room allows, to be read from two paces and more.

How it works
1. The pictures are those of the sheets, in pixels. They are stretched to the height of the room
   and to the greatest width that the whole figure still fits in, strokes and gaps alike.
2. A fraction stands as high as the digits beside it, in the sheet that suits its own height.
3. The mark for what the tape cannot show is as large as a digit: it is part of the figure.
4. Where there is no room for that, the sizes of `bignum` serve.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from benchmate.tui import figure_sheets as sheets
from benchmate.tui import thin_sheets
from benchmate.tui.bignum import big_figure
from benchmate.tui.figure_fonts import BLOCK, THIN, Block, columns, halves, large_cells

if TYPE_CHECKING:
    from collections.abc import Iterator

    from benchmate.measure.printing import Shown
    from benchmate.tui.glyphs import Glyphs

UNIT = 7
"""Columns of a digit on the sheet; widths below are told in such columns."""

TALLEST = (9, 7)
"""The most rows of cells to the columns of a digit."""

WIDEST = (7, 5)
"""The most columns of a digit to its rows of cells."""

_GAP, _WORD_GAP, _FRACTION_GAP = 2, 4, 3


@dataclass(frozen=True, slots=True)
class _Gap:
    """Room between two pictures."""

    wide: int


@dataclass(frozen=True, slots=True)
class _Fraction:
    """Two numbers, one over the other."""

    above: str
    below: str
    style: str

    @property
    def wide(self) -> int:
        """The width of the wider one."""
        return max(_digits_wide(self.above), _digits_wide(self.below))


@dataclass(frozen=True, slots=True)
class _Picture:
    """A digit or a mark from a sheet."""

    pixels: Block

    @property
    def wide(self) -> int:
        """Its width on the sheet."""
        return len(self.pixels[0])


_Piece = _Gap | _Fraction | _Picture


def huge_figure(
    shown: Shown, *, width: int, height: int, glyphs: Glyphs, style: str = BLOCK
) -> Block:
    """Rows of one width, at most `width` by `height` cells, the digits as large as will go in."""
    pieces = tuple(_pieces(shown, style))
    least = 8 if halves(glyphs) else 13  # below these the parts of a fraction are not told apart
    for digit in range(min(width, height * WIDEST[0] // WIDEST[1]), UNIT - 1, -1):
        rows = min(height, digit * TALLEST[0] // TALLEST[1])
        if rows < least:
            break
        if sum(_scaled(piece.wide, digit) for piece in pieces) <= width:
            high = 2 * rows if halves(glyphs) else rows
            parts = [_drawn(piece, digit, high) for piece in pieces]
            return large_cells(tuple(map("".join, zip(*parts, strict=True))), glyphs)
    return big_figure(shown, width=width, height=height, glyphs=glyphs, style=style)


def _pieces(shown: Shown, style: str) -> Iterator[_Piece]:
    """The figure from left to right."""
    foot, inch, minus, _, _, point, millimetres = _sheet(sheets.TALL_MARKS)
    over, under = _sheet(sheets.LOUD_MARKS)
    if shown.negative:
        yield from (minus, _Gap(_GAP))
    if shown.feet is not None:
        yield from (*_number(str(shown.feet), style), _Gap(_GAP), foot, _Gap(_WORD_GAP))
    if shown.whole is not None:
        yield from _number(str(shown.whole), style)
    if shown.decimal:
        yield from (_Gap(_GAP), point, _Gap(_GAP), *_number(shown.decimal, style))
    if shown.numerator:
        if shown.whole is not None:
            yield _Gap(_FRACTION_GAP)
        yield _Fraction(str(shown.numerator), str(shown.denominator), style)
    yield from (_Gap(_GAP), inch if shown.unit == "in" else millimetres)
    if shown.remainder:
        yield from (_Gap(_GAP), over if shown.remainder == "+" else under)


def _number(text: str, style: str) -> Iterator[_Piece]:
    for place, char in enumerate(text):
        if place:
            yield _Gap(_GAP)
        yield _sheet(_DIGITS[style == THIN])[int(char)]


_DIGITS = (sheets.TALL, thin_sheets.TALL)
"""The digits beside a fraction, in block and in thin style."""


@cache
def _sheet(sheet: str) -> tuple[_Picture, ...]:
    return tuple(_Picture(pixels) for pixels in columns(sheet))


def _scaled(wide: int, digit: int) -> int:
    """A width of the sheet where a digit is so many columns wide; a half counts as one more."""
    return (2 * wide * digit + UNIT) // (2 * UNIT)


def _drawn(piece: _Piece, digit: int, high: int) -> Block:
    """A piece in its width and a height in pixels."""
    wide = _scaled(piece.wide, digit)
    if isinstance(piece, _Gap):
        return (" " * wide,) * high
    if isinstance(piece, _Picture):
        return _stretched(piece.pixels, wide, high)
    return _fraction(piece, wide, high)


def _fraction(piece: _Fraction, wide: int, high: int) -> Block:
    """The two numbers with a bar between, and bare rows between bar and numbers."""
    bare, least = max(high // 28, 1), max(high // 12, 2)
    part = (high - least - 2 * bare) // 2
    gap = (" " * wide,) * bare
    bar = ("#" * wide,) * (high - 2 * part - 2 * bare)
    above, below = (_small(text, wide, piece, part) for text in (piece.above, piece.below))
    return (*above, *gap, *bar, *gap, *below)


_SMALL = (
    ((14, sheets.TALL), (10, sheets.MIDDLE), (0, sheets.BOLD)),
    ((14, thin_sheets.TALL), (10, thin_sheets.MIDDLE), (0, sheets.THIN)),
)
"""The digits of a fraction by the least height in pixels that they need, block and thin."""
_SMALL_WIDE, _SMALL_ONE, _SMALL_GAP = 6, 3, 1


def _digits_wide(text: str) -> int:
    """The width of a number in a fraction; a one is half as wide as the other digits."""
    digits = (_SMALL_ONE if char == "1" else _SMALL_WIDE for char in text)
    return sum(digits) + _SMALL_GAP * (len(text) - 1)


def _small(text: str, wide: int, piece: _Fraction, high: int) -> Block:
    """A number of a fraction in the middle of the whole fraction's width in cells."""
    units, sizes = piece.wide, _SMALL[piece.style == THIN]
    sheet = _sheet(next(sheet for least, sheet in sizes if high >= least))
    parts: list[Block] = []
    for place, char in enumerate(text):
        if place:
            parts.append((" " * max(_SMALL_GAP * wide // units, 1),) * high)
        across = _SMALL_ONE if char == "1" else _SMALL_WIDE
        parts.append(_stretched(sheet[int(char)].pixels, across * wide // units, high))
    return tuple("".join(row).center(wide) for row in zip(*parts, strict=True))


def _stretched(pixels: Block, wide: int, high: int) -> Block:
    """A picture at another size: every pixel as many cells as its edges, rounded, are apart."""
    down, across = _places(len(pixels), high), _places(len(pixels[0]), wide)
    rows = tuple("".join(row[place] for place in across) for row in pixels)
    return tuple(rows[place] for place in down)


def _places(count: int, size: int) -> tuple[int, ...]:
    """For each of `size` places, which of `count` pixels stands there."""
    near = [(2 * place * size + count) // (2 * count) for place in range(count + 1)]
    # The far half is the near half turned, so that strokes at both sides are equally thick.
    edges = [
        edge if 2 * place <= count else size - near[count - place]
        for place, edge in enumerate(near)
    ]
    return tuple(place for place in range(count) for _ in range(edges[place], edges[place + 1]))
