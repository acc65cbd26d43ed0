"""A rectangle's diagonals, from triples and printed brace tables; a racked one from its corners."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.measure.length import NM_PER_INCH, Length
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.measure.reckon.rectangle import Racked, Rectangle
from benchmate.measure.reckon.rounding import root

INCHES = Tape(style=Style.INCHES, graduation=Graduation.SIXTEENTH)
TRIPLES = ((3, 4, 5), (5, 12, 13), (8, 15, 17), (7, 24, 25), (20, 21, 29), (12, 35, 37))


def sides(one: Fraction | int, other: Fraction | int) -> Rectangle:
    """A rectangle with sides in inches."""
    return Rectangle(one=Fraction(one) * NM_PER_INCH, other=Fraction(other) * NM_PER_INCH)


@settings(max_examples=500)
@given(st.sampled_from(TRIPLES), st.integers(1, 10**9))
def test_pythagorean_triples(triple: tuple[int, int, int], scale: int) -> None:
    """3, 4, 5 and their kin at any scale, to the nanometre (Euclid I.47)."""
    one, other, diagonal = (Fraction(scale * part) for part in triple)
    found = Rectangle(one=one, other=other).diagonal
    assert found.whole
    assert found.length.nm == diagonal


@pytest.mark.parametrize(
    ("leg", "length"),
    [
        *((12, "17"), (15, "21-3/16"), (18, "25-7/16"), (21, "29-11/16"), (24, "33-15/16")),
        *((27, "38-3/16"), (30, "42-7/16"), (33, "46-11/16"), (36, "50-15/16"), (39, "55-1/8")),
        *((42, "59-3/8"), (45, "63-5/8"), (48, "67-7/8"), (51, "72-1/8"), (54, "76-3/8")),
        *((57, "80-5/8"), (60, "84-7/8")),
    ],
)
def test_the_brace_table(leg: int, length: str) -> None:
    """Braces of equal legs to the nearest 1/16 (trade.md 7.1: CALC; 24, 27, 30 in NAV-60)."""
    shown = INCHES.text(sides(leg, leg).diagonal.length)
    assert shown.rstrip('+-"') == length


@pytest.mark.parametrize(
    ("one", "other", "hundredths"),
    [
        (24, 24, 3394),  # US Navy Builder manual, NAV-60
        (27, 27, 3818),  # NAV-60
        (30, 30, 4243),  # NAV-60
        (8, 8, 1131),  # NAV-60
        (40, 40, 5657),  # NAV-61
        (18, 24, 3000),  # NAV-61
        (36, 36, 5091),  # Hodgson, ABC of the Steel Square, Hodgson-11
        (9, 12, 1500),  # Hodgson-21
        (36, 48, 6000),  # Hodgson-21
    ],
)
def test_printed_braces(one: int, other: int, hundredths: int) -> None:
    """Published brace lengths in hundredths of an inch (trade.md 7.5, rows 1 to 11)."""
    nm = sides(one, other).diagonal.length.nm
    assert round(Fraction(100 * nm, NM_PER_INCH)) == hundredths


def test_a_long_brace_of_the_old_books() -> None:
    """8' 3" legs make 11' 8" (Hodgson-21; trade.md 7.5 row 9, 140.007 exact)."""
    assert Tape().text(sides(99, 99).diagonal.length) == "11' 8\""


@given(st.integers(1, 10**11), st.integers(1, 10**11))
def test_a_diagonal_lies_between_the_longer_side_and_both(one: int, other: int) -> None:
    """The triangle closes, whichever side is named first."""
    found = Rectangle(one=Fraction(one), other=Fraction(other))
    turned = Rectangle(one=Fraction(other), other=Fraction(one))
    assert found.diagonal == turned.diagonal
    assert max(one, other) <= found.diagonal.length.nm <= one + other
    assert found.longer == max(one, other)


LEAN = st.integers(0, 10**7)
RISE = st.integers(10**9, 10**10)


@settings(max_examples=500)
@given(LEAN, RISE, st.integers(0, 10**10))
def test_a_racked_frame_is_pushed_by_as_much_as_it_leans(lean: int, rise: int, more: int) -> None:
    """Four corners drawn out of square by a known slide; its diagonals alone tell the slide.

    The side lies from (0, 0), the side opposite is slid by `lean` and stands `rise` off.
    """
    short = root(Fraction(lean**2 + rise**2)).length.nm
    long = short + more
    first = root(Fraction((long + lean) ** 2 + rise**2)).length.nm
    second = root(Fraction((long - lean) ** 2 + rise**2)).length.nm
    frame = Rectangle(one=Fraction(short), other=Fraction(long))
    racked = Racked(sides=frame, first=Fraction(first), second=Fraction(second))
    assert abs(racked.push.length.nm - lean) <= 3
    assert racked.longer_first is (first > second)
    assert abs(racked.if_pushed.nm - frame.diagonal.length.nm) <= 3


def test_sides_that_are_not_what_they_are_said_to_be_show_up() -> None:
    """Diagonals alike but too long: nothing to push, and still no rectangle of these sides."""
    five = Fraction(61 * NM_PER_INCH)
    racked = Racked(sides=sides(36, 48), first=five, second=five)
    assert racked.push.length == Length(0)
    assert racked.if_pushed == Length.inches(61)
    assert racked.sides.diagonal.length == Length.inches(60)


@pytest.mark.parametrize("diagonal", [12, 11, 84, 85])
def test_no_triangle_closes_with_such_a_diagonal(diagonal: int) -> None:
    """Shorter than the difference of the sides, or longer than both."""
    good, bad = (Fraction(each * NM_PER_INCH) for each in (60, diagonal))
    for first, second in ((good, bad), (bad, good)):
        with pytest.raises(ValueError, match="no triangle closes"):
            Racked(sides=sides(36, 48), first=first, second=second)


@pytest.mark.parametrize(("one", "other"), [(0, 1), (1, 0), (-1, 1)])
def test_sides_are_above_zero(one: int, other: int) -> None:
    """Nothing is clamped."""
    with pytest.raises(ValueError, match="above zero"):
        sides(one, other)
