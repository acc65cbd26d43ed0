"""The thin digits: another style of every figure, as legible and never half a figure."""

import pytest

from benchmate.measure.length import Length
from benchmate.measure.printing import Tape
from benchmate.tui import figure_sheets, thin_sheets
from benchmate.tui.bignum import big_figure
from benchmate.tui.figure_fonts import columns
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.huge_figure import huge_figure

FIGURE = Tape().show(Length.inches(94, 15, 16))


@pytest.mark.parametrize("sheet", [thin_sheets.TALL, thin_sheets.MIDDLE])
def test_ten_digits_that_differ_and_have_less_ink(sheet: str) -> None:
    """Each stroke is one pixel wide, where the block digits have two."""
    digits = columns(sheet)
    block = columns(figure_sheets.TALL if sheet is thin_sheets.TALL else figure_sheets.MIDDLE)
    assert len(set(digits)) == len(digits) == len(block) == 10
    for thin, heavy in zip(digits, block, strict=True):
        assert len(thin) == len(heavy)
        assert len({len(row) for row in thin}) == 1
        assert "".join(thin).count("#") < "".join(heavy).count("#")


@pytest.mark.parametrize("glyphs", [UNICODE, ASCII])
@pytest.mark.parametrize(("width", "height"), [(48, 7), (48, 5), (78, 18), (120, 30), (20, 1)])
def test_a_thin_figure_fits_the_room_a_block_one_fits(
    glyphs: Glyphs, width: int, height: int
) -> None:
    """At the bench and standing back; where there is room for digits, the two styles differ."""
    for draw in (big_figure, huge_figure):
        block = draw(FIGURE, width=width, height=height, glyphs=glyphs)
        thin = draw(FIGURE, width=width, height=height, glyphs=glyphs, style="thin")
        assert len(thin) <= height
        assert {len(row) for row in thin} == {len(thin[0])}
        assert len(thin[0]) <= width
        assert (thin == block) is (height == 1)
        assert len(thin) >= len(block)


def test_an_unknown_style_is_the_block_one() -> None:
    """A screen never stands empty for a word."""
    plain = big_figure(FIGURE, width=48, height=7, glyphs=UNICODE)
    assert big_figure(FIGURE, width=48, height=7, glyphs=UNICODE, style="odd") == plain
