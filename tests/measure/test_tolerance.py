"""Every limit has the size it is said to have."""

from fractions import Fraction

import pytest

from benchmate.measure import tolerance
from benchmate.measure.length import Length
from benchmate.measure.printing import Graduation


def test_ratios_between_units_are_exact() -> None:
    """The inch is 25.4 mm exactly (the international definition); all else follows from it."""
    assert tolerance.NM_PER_INCH * 10 == tolerance.NM_PER_MM * 254
    assert tolerance.NM_PER_FOOT == 304_800_000
    assert tolerance.NM_PER_SIXTYFOURTH == 396_875
    assert tolerance.NM_PER_SIXTYFOURTH * 64 == tolerance.NM_PER_INCH
    assert tolerance.NM_PER_HUNDREDTH_MM == 10_000


def test_limits_on_typed_sizes() -> None:
    """A timber may be 200 ft and a side of a section 4 ft."""
    assert Length.inches(2400) == tolerance.LONGEST_TIMBER
    assert Length.inches(48) == tolerance.LARGEST_SECTION


def test_limits_on_the_calculator() -> None:
    """Fifty of the longest timbers end to end, and the longest in spaces of a foot."""
    assert 50 * tolerance.LONGEST_TIMBER == tolerance.LARGEST_RECKONED
    assert tolerance.MOST_SPACES * Length.feet(1) == tolerance.LONGEST_TIMBER
    assert tolerance.DEEPEST_BRACKETS == 12


def test_tape_fractions_all_come_out_at_a_sixtyfourth() -> None:
    """Every denominator a tape carries divides 64."""
    assert all(64 % den == 0 for den in tolerance.TAPE_DENOMINATORS)


def test_the_hidden_share_of_the_agreed_check_value_is_marked() -> None:
    """42.6 ft hides a fifth of a sixteenth behind 42' 7-3/16", which must be marked."""
    sixteenths = Fraction(426 * tolerance.NM_PER_FOOT, 10 * Graduation.SIXTEENTH.nm)
    assert sixteenths % 1 == Fraction(1, 5)
    assert Fraction(1, 8) == tolerance.REMAINDER_SHARE < sixteenths % 1


@pytest.mark.parametrize("name", tolerance.__all__)
def test_every_limit_is_offered(name: str) -> None:
    """Each name the module offers is there, and above zero."""
    value = getattr(tolerance, name)
    assert min(value) > 1 if isinstance(value, tuple) else bool(value)
