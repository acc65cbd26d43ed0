"""The faces the current figure is set in, made from the pixel sheets for a set of glyphs."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING

from benchmate.tui import figure_sheets as sheets
from benchmate.tui import thin_sheets

if TYPE_CHECKING:
    from benchmate.tui.glyphs import Glyphs

BLOCK, THIN = "block", "thin"
"""The two styles of the digits: heavy strokes, and strokes half as wide."""

Block = tuple[str, ...]
"""Rows of one width, in cells."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Digits:
    """The ten digits in one size and weight; `gap` is the space between two, in cells."""

    pictures: tuple[Block, ...]
    gap: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """Digits for the whole part of a figure, and the marks beside them, all of one height."""

    digits: Digits
    foot: Block
    inch: Block
    minus: Block
    over: Block
    under: Block
    point: Block
    millimetres: Block


@dataclass(frozen=True, slots=True, kw_only=True)
class Fonts:
    """All there is to set figures with; `bold` and `thin` are for the parts of a fraction."""

    tall: Face
    middle: Face
    low: Face
    bold: Digits
    thin: Digits
    slash: Block
    long_slash: Block


@cache
def fonts(glyphs: Glyphs, style: str = BLOCK) -> Fonts:
    """The faces of a style as this set of glyphs draws them; an unknown style is the block one."""

    def drawn(sheet: str) -> tuple[Block, ...]:
        return tuple(cells(block, glyphs) for block in columns(sheet))

    def small(pixels: str, strokes: str) -> tuple[Block, ...]:
        return drawn(pixels) if halves(glyphs) else columns(strokes)

    thin = Digits(pictures=small(sheets.THIN, sheets.STROKES), gap=1)
    (slash,) = small(sheets.SLASH, sheets.STROKE_SLASH)
    (long_slash,) = small(sheets.LONG_SLASH, sheets.LONG_STROKE_SLASH)
    light = style == THIN
    tall = Digits(pictures=drawn(thin_sheets.TALL if light else sheets.TALL), gap=2)
    middle = Digits(pictures=drawn(thin_sheets.MIDDLE if light else sheets.MIDDLE), gap=1)
    heavy = Digits(pictures=small(sheets.BOLD, sheets.STROKES), gap=1)
    return Fonts(
        tall=_face(tall, drawn(sheets.TALL_MARKS)),
        middle=_face(middle, drawn(sheets.MIDDLE_MARKS)),
        low=_face(thin, small(sheets.THIN_MARKS, sheets.STROKE_MARKS)),
        bold=thin if light else heavy,
        thin=thin,
        slash=slash,
        long_slash=long_slash,
    )


def _face(digits: Digits, marks: tuple[Block, ...]) -> Face:
    foot, inch, minus, over, under, point, millimetres = marks
    return Face(
        digits=digits,
        foot=foot,
        inch=inch,
        minus=minus,
        over=over,
        under=under,
        point=point,
        millimetres=millimetres,
    )


def columns(sheet: str) -> tuple[Block, ...]:
    """The pictures of a sheet, in its own characters."""
    pictures = zip(*(line.split() for line in sheet.strip().splitlines()), strict=True)
    return tuple(tuple(row.replace(".", " ") for row in picture) for picture in pictures)


def halves(glyphs: Glyphs) -> bool:
    """Whether a cell can be half full, so that it holds two pixels."""
    return glyphs.block_top != glyphs.block


def large_cells(pixels: Block, glyphs: Glyphs) -> Block:
    """Pixel rows of a large picture as rows of cells: two to a row, or one where none is half."""
    if halves(glyphs):
        return cells(pixels, glyphs)
    return tuple(row.replace("#", glyphs.block) for row in pixels)


def cells(pixels: Block, glyphs: Glyphs) -> Block:
    """Pairs of pixel rows as rows of cells."""
    cell = {
        ("#", "#"): glyphs.block,
        ("#", " "): glyphs.block_top,
        (" ", "#"): glyphs.block_bottom,
        (" ", " "): " ",
    }
    return tuple(
        "".join(cell[pair] for pair in zip(upper, lower, strict=True))
        for upper, lower in zip(pixels[::2], pixels[1::2], strict=True)
    )
