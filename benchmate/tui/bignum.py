"""The current figure in big digits, to be read from two paces.

A figure is set in the largest of a few sizes that fits the room it is given. The sizes differ in
the face of the whole part and in the way a fraction is set; the last of them is plain text.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from benchmate.tui.figure_fonts import BLOCK, Block, Digits, Face, Fonts, fonts

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from benchmate.measure.printing import Shown
    from benchmate.tui.glyphs import Glyphs

WORD_GAP = 2
"""Cells between feet and inches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """One way to set a figure: a face, and a setting of its fraction."""

    face: Face
    fraction: Callable[[str, str], Block]
    space: int = 2
    """Cells between the whole part and the fraction."""


def big_figure(
    shown: Shown, *, width: int, height: int, glyphs: Glyphs, style: str = BLOCK
) -> Block:
    """Rows of one width, at most `width` by `height` cells, in the largest size that fits.

    Where not even the plain text fits, a lone cut-off mark: half a figure is a wrong figure.
    """
    if width < 1 or height < 1:
        return ()
    for size in _sizes(glyphs, style):
        block = _set(shown, size)
        if len(block) <= height and len(block[0]) <= width:
            return block
    text = shown.text()
    return (text,) if len(text) <= width else (glyphs.cut_off,)


def _sizes(glyphs: Glyphs, style: str) -> tuple[Size, ...]:
    """The sizes, the one that reads from farthest away first."""
    drawn = fonts(glyphs, style)

    def stacked(digits: Digits) -> Callable[[str, str], Block]:
        return lambda above, below: _stacked(
            _number(above, digits), _number(below, digits), glyphs.heavy_across
        )

    return (
        Size(face=drawn.tall, fraction=stacked(drawn.bold)),
        Size(face=drawn.middle, fraction=stacked(drawn.bold), space=1),
        Size(face=drawn.middle, fraction=lambda above, below: _slanted(above, below, drawn)),
        Size(face=drawn.low, fraction=stacked(drawn.thin)),
        # Level with the whole part, a fraction needs more room or 10 15/16 reads as 1015/16.
        Size(face=drawn.low, fraction=lambda above, below: _level(above, below, drawn), space=4),
        Size(face=drawn.low, fraction=lambda a, b: _stacked((a,), (b,), glyphs.across), space=1),
    )


def _set(shown: Shown, size: Size) -> Block:
    parts = tuple(_parts(shown, size))
    height = max(len(part) for part in parts)
    rows = zip(*(_middled(part, height) for part in parts), strict=True)
    return tuple("".join(row) for row in rows)


def _parts(shown: Shown, size: Size) -> Iterator[Block]:
    """The figure from left to right, each part as high as it likes."""
    face = size.face
    if shown.negative:
        yield from (face.minus, _gap(1))
    if shown.feet is not None:
        yield from (_number(str(shown.feet), face.digits), _gap(1), face.foot, _gap(WORD_GAP))
    if shown.whole is not None:
        yield _number(str(shown.whole), face.digits)
    if shown.decimal:
        yield from (_gap(1), face.point, _gap(1), _number(shown.decimal, face.digits))
    if shown.numerator:
        yield from _fraction(shown, size)
    yield from (_gap(1), face.inch if shown.unit == "in" else face.millimetres)
    if shown.remainder:
        yield from (_gap(1), face.over if shown.remainder == "+" else face.under)


def _fraction(shown: Shown, size: Size) -> Iterator[Block]:
    if shown.whole is not None:
        yield _gap(size.space)
    yield size.fraction(str(shown.numerator), str(shown.denominator))


def _number(text: str, digits: Digits) -> Block:
    pictures = (digits.pictures[int(digit)] for digit in text)
    return tuple((" " * digits.gap).join(row) for row in zip(*pictures, strict=True))


def _stacked(above: Block, below: Block, line: str) -> Block:
    """Numerator over denominator with a bar between."""
    width = max(len(above[0]), len(below[0]))
    return (*_centred(above, width), line * width, *_centred(below, width))


def _level(above: str, below: str, drawn: Fonts) -> Block:
    """Both parts on one line with a slash between, three rows high."""
    parts = _number(above, drawn.thin), drawn.slash, _number(below, drawn.thin)
    return tuple(" ".join(row) for row in zip(*parts, strict=True))


def _slanted(above: str, below: str, drawn: Fonts) -> Block:
    """Numerator raised, denominator lowered, five rows high.

    The slash reaches over the numerator's last column and under the denominator's first.
    """
    left, slash, right = _number(above, drawn.thin), drawn.long_slash, _number(below, drawn.thin)
    width = len(left[0]) + len(slash[0]) - 2 + len(right[0])
    layers = (
        (*(row.ljust(width) for row in left), *_blank(2, width)),
        (row.rjust(len(left[0]) - 1 + len(row)).ljust(width) for row in slash),
        (*_blank(2, width), *(row.rjust(width) for row in right)),
    )
    # A space is the least of the characters drawn, so the greatest is what stands in a cell.
    return tuple("".join(map(max, *rows)) for rows in zip(*layers, strict=True))


def _blank(rows: int, width: int) -> Block:
    return (" " * width,) * rows


def _gap(cells: int) -> Block:
    return _blank(1, cells)


def _centred(block: Block, width: int) -> Block:
    return tuple(row.center(width) for row in block)


def _middled(block: Block, height: int) -> Block:
    """The block with blank rows added above and below alike."""
    width, spare = len(block[0]), height - len(block)
    return (*_blank(spare // 2, width), *block, *_blank(spare - spare // 2, width))
