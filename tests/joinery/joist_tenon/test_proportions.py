"""The published proportions of a tusk tenon (Rivington-tusk, trade.md 2.4)."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.joinery.joist_tenon.proportions import (
    SIXTH,
    Tusk,
    penetration,
    plumb_depth,
    published,
)
from benchmate.measure.reading import Unit
from tests.builders import length, lengths
from tests.floor import Floor, over


def usual(made: Frame, bare: Unit = Unit.INCH) -> Tusk:
    """What is published for the joist and the beam of a frame."""
    return published(made.wood("joist"), made.wood("beam"), bare)


def test_a_nine_inch_joist_in_a_nine_inch_beam() -> None:
    """Tenon 1-1/2", tusk let in 1-1/2" (trade.md 7.5, more check values [CALC])."""
    found = usual(Floor(beam="9 x 8", joist="9 x 4").frame())
    assert found == Tusk(*lengths("1-1/2", "3", "1-1/2"))


@pytest.mark.parametrize(
    ("beam", "joist", "thickness", "tusk"),
    [
        ("12 x 8", "9 x 4", "2", "1-1/2"),
        ("10 x 8", "7 x 4", "1-11/16", "1-3/16"),
        ("6 x 6", "6 x 3", "1", "1"),
    ],
)
def test_a_sixth_of_each_to_a_sixteenth(beam: str, joist: str, thickness: str, tusk: str) -> None:
    """About a sixth: 10" / 6 = 1.667" is 1-11/16", and 7" / 6 = 1.167" is 1-3/16"."""
    found = usual(Floor(beam=beam, joist=joist).frame())
    assert (found.thickness, found.tusk) == lengths(thickness, tusk)
    assert found.length == penetration(length(thickness)) == length(thickness) * 2


def test_on_a_metric_tape_it_is_whole_millimetres() -> None:
    """250 mm / 6 = 41.7 mm is 42 mm."""
    made = Floor(beam="250 mm x 200 mm", joist="175 mm x 100 mm", lower="0 mm").frame()
    assert usual(made, Unit.MM) == Tusk(*lengths("42 mm", "84 mm", "29 mm"))


def test_a_proportion_does_not_follow_one_stick() -> None:
    """It goes by the depth as drawn, or by the inner timber, whatever was measured."""
    for rule in ("mill", "square"):
        made = over(Floor(), (32, 32, 32, 32), rule).frame()
        assert plumb_depth(made.wood("beam")) == length("10")
        assert usual(made) == usual(Floor().frame())
    turned = Floor(first=False).frame()
    assert plumb_depth(turned.wood("joist")) == length("7")
    assert SIXTH == 6
