"""The length in a field that the calculator takes up, and puts another in the place of."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit, read_length
from benchmate.measure.section import read_section
from benchmate.tui.pad_slot import Slot, slot_of

NINE = Length.inches(9)


def test_a_plain_field_is_taken_up_whole() -> None:
    """Names, x and all."""
    slot = slot_of(" floor top - box ", 3, section=False, bare=Unit.INCH)
    assert slot == Slot(text="floor top - box")
    assert slot.filled(NINE) == '9"'


@pytest.mark.parametrize(
    ("text", "cursor", "taken", "filled"),
    [
        ("7 x 8", 5, "8", '7 in x 9"'),
        ("7 x 8", 0, "7", '9" x 8 in'),
        ("7x8", 1, "7", '9" x 8 in'),
        ('7" x 8', 6, "8", '7" x 9"'),
        ('7 x 8"', 6, '8"', '7" x 9"'),
        ("190 x 140 mm", 12, "140 mm", '190 mm x 9"'),
        ("1' x 8", 0, "1'", '9" x 8"'),
        ("7 x ", 4, "", '7 in x 9"'),
        ("7? x 8", 6, "8", '7? x 9"'),
        ("7", 1, "7", '9"'),
    ],
)
def test_of_a_section_the_side_at_the_cursor_is_taken_up(
    text: str, cursor: int, taken: str, filled: str
) -> None:
    """The other side keeps what it says, with its unit written out."""
    slot = slot_of(text, cursor, section=True, bare=Unit.INCH)
    assert slot.text == taken
    assert slot.filled(NINE) == filled


@given(st.integers(1, 10**9).map(Length), st.sampled_from(Unit), st.booleans())
def test_the_other_side_of_a_section_stays_what_it_is(
    length: Length, bare: Unit, first: bool
) -> None:
    """Though a unit on one side holds for both, and the result may be in the other system."""
    before = read_section("190 x 140", bare=Unit.MM)
    text = "190 x 140" if bare is Unit.MM else "190 x 140 mm"
    filled = slot_of(text, 0 if first else len(text), section=True, bare=bare).filled(length)
    after = read_section(filled, bare=bare, exact=True)
    assert after.first == (length if first else before.first)
    assert after.second == (before.second if first else length)


@given(st.integers(-(10**12), 10**12).map(Length), st.sampled_from(Unit))
def test_a_field_reads_back_the_very_result(length: Length, bare: Unit) -> None:
    """No rounding on the way."""
    filled = slot_of("7", 1, section=False, bare=bare).filled(length)
    assert read_length(filled, bare=bare, exact=True, negative=True, most=None) == length
