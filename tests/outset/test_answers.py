"""What follows from the answers alone."""

from fractions import Fraction

from benchmate.measure.length import Length
from tests.outset.frames import JOISTED, LAPPED, METRIC, SQUARE, answers


def test_bents_have_lines_keys_and_sides() -> None:
    """The end bents look outwards, the others west."""
    west, middle, east = answers().bents
    assert [bent.line for bent in (west, middle, east)] == ["line 1", "line 2", "line 3"]
    assert [bent.side for bent in (west, middle, east)] == ["west", "west", "east"]
    assert [bent.key("south") for bent in (west, middle, east)] == ["sw", "s2", "se"]
    assert (west.inward("bay"), east.inward("bay")) == ("line 1 + bay", "line 3 - bay")


def test_bays_are_equal_to_the_finest_mark() -> None:
    """The last takes what is over, so that the length typed holds."""
    three = answers(length="20'", bays="3", leg="24")
    assert three.bay == Length.inches(77, 5, 16)
    assert three.line_at(4) == Length.feet(20)
    assert three.start_of(4) == Length.feet(20) - Length.inches(8)
    assert three.clear == Length.inches(69, 5, 16)
    assert three.across == Length.feet(14) - Length.inches(16)


def test_a_row_fills_a_bay_evenly() -> None:
    """No further apart than asked: four gaps of 29 inches in 116, three timbers."""
    assert answers().spacing("rafter spacing") == (Length.inches(29), 3)


def test_square_rule_counts_on_the_timber_inside() -> None:
    """And names it; by mill rule the stick itself."""
    inner = answers(SQUARE).within("post")
    assert inner.first == Length.inches(7, 1, 2)
    assert answers(SQUARE).name("post", "width") == "post inner width"
    assert answers().name("post", "width") == "post width"


def test_only_sections_in_use_are_named() -> None:
    """No joists, no joist section."""
    assert "joist" not in answers().used
    assert "joist" in answers(JOISTED).used
    assert answers(roof="none", braces="none").used == ("sill", "post", "plate", "tie")
    assert answers(LAPPED).lapped


def test_sizes_are_round_in_the_units_of_the_tape() -> None:
    """Half inches, or 5 mm; the finest mark is the tape's."""
    assert answers().grid == Length.inches(0, 1, 2)
    assert answers(METRIC).grid == Length.mm(5)
    assert answers(graduation="1/32").graduation == Length.inches(0, 1, 32)
    assert answers(METRIC, graduation="0.5 mm").graduation == Length.hundredths_mm(50)
    assert answers().size(Fraction(5, 4), 30) == Length.inches(1, 1, 4)
    assert answers().say_up(Length(1)) == "1/16"
    assert answers().say_down(Length(-1)) == "0"
    assert answers(rafter="7 x 5").third("rafter") == "1-1/2"
