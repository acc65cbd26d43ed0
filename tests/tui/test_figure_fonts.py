"""The faces: every digit is its own picture, and every picture stands straight."""

from itertools import combinations

import pytest

from benchmate.tui.figure_fonts import Block, Digits, Face, fonts
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs

BOTH = pytest.mark.parametrize("glyphs", [UNICODE, ASCII], ids=["unicode", "ascii"])


def all_digits(glyphs: Glyphs) -> tuple[Digits, ...]:
    """The digits of every face, fractions included."""
    drawn = fonts(glyphs)
    return (drawn.tall.digits, drawn.middle.digits, drawn.low.digits, drawn.bold, drawn.thin)


def marks(face: Face) -> tuple[Block, ...]:
    """The marks of a face."""
    return (
        face.foot,
        face.inch,
        face.minus,
        face.over,
        face.under,
        face.point,
        face.millimetres,
    )


@BOTH
def test_ten_digits_all_different(glyphs: Glyphs) -> None:
    """No face has two digits that look alike."""
    for digits in all_digits(glyphs):
        assert len(digits.pictures) == 10
        assert len(set(digits.pictures)) == 10


def ink(block: Block) -> set[tuple[int, int]]:
    """The pixels of a picture in half and full blocks."""
    halves = {"█": (0, 1), "▀": (0,), "▄": (1,), " ": ()}
    return {
        (2 * y + half, x)
        for y, row in enumerate(block)
        for x, cell in enumerate(row)
        for half in halves[cell]
    }


@pytest.mark.parametrize("pair", list(combinations(range(10), 2)))
def test_digits_differ_by_more_than_a_speck(pair: tuple[int, int]) -> None:
    """In the tall face any two digits differ by at least eight pixels, to be seen from afar."""
    one, other = (ink(fonts(UNICODE).tall.digits.pictures[digit]) for digit in pair)
    assert len(one ^ other) >= 8


@BOTH
def test_pictures_are_rectangles_of_one_height(glyphs: Glyphs) -> None:
    """Digits and marks of a face line up when they stand side by side."""
    drawn = fonts(glyphs)
    for face, height in ((drawn.tall, 7), (drawn.middle, 5), (drawn.low, 3)):
        for picture in (*face.digits.pictures, *marks(face)):
            assert len(picture) == height
            assert len({len(row) for row in picture}) == 1


@BOTH
def test_marks_differ(glyphs: Glyphs) -> None:
    """A foot mark is not an inch mark, a leading minus is not the mark for a little under."""
    drawn = fonts(glyphs)
    for face in (drawn.tall, drawn.middle, drawn.low):
        assert len(set(marks(face))) == len(marks(face))


def test_ascii_faces_are_ascii() -> None:
    """In ASCII no picture holds a block character."""
    pictures = [picture for digits in all_digits(ASCII) for picture in digits.pictures]
    assert all(row.isascii() for picture in pictures for row in picture)
