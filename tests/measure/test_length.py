"""Lengths are exact, and keep to themselves."""

import operator
import pickle
from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import ZERO, Length

lengths = st.integers(-(10**15), 10**15).map(Length)


@pytest.mark.parametrize(
    ("length", "nm"),
    [
        (Length.inches(1), 25_400_000),
        (Length.inches(0, 1, 64), 396_875),
        (Length.inches(4, 3, 4), 120_650_000),
        (Length.inches(0, 5, 16), 7_937_500),
        (Length.inches(-3), -76_200_000),
        (Length.inches(0, 1, 127), 200_000),
        (Length.feet(1), 304_800_000),
        (Length.feet(7, 11), 2_413_000_000),
        (Length.feet(7, 11, 1, 2), 2_425_700_000),
        (Length.feet(-2), -609_600_000),
        (Length.mm(190), 190_000_000),
        (Length.mm(-1), -1_000_000),
        (Length.hundredths_mm(1), 10_000),
        (ZERO, 0),
    ],
)
def test_units_convert_exactly(length: Length, nm: int) -> None:
    """Every constructor gives the exact nanometres (1 inch = 25.4 mm, by definition)."""
    assert length.nm == nm


@pytest.mark.parametrize("value", [1.0, True, "1", None, Decimal(1), Fraction(1)])
def test_only_a_whole_number_is_a_length(value: object) -> None:
    """A float, a truth value or a text is never taken for nanometres."""
    with pytest.raises(TypeError, match="whole number of nanometres"):
        Length(value)  # type: ignore[arg-type]


@pytest.mark.parametrize("build", [Length.mm, Length.hundredths_mm, Length.inches, Length.feet])
def test_no_constructor_takes_a_float(build: Callable[[float], Length]) -> None:
    """A float is refused however it comes in."""
    with pytest.raises(TypeError):
        build(1.5)


@pytest.mark.parametrize(
    ("build", "parts"),
    [
        (Length.inches, (0, 1, 3)),
        (Length.inches, (1, -1, 2)),
        (Length.inches, (1, 1, 0)),
        (Length.inches, (1, 1, -2)),
        (Length.inches, (-4, 3, 4)),
        (Length.feet, (-7, 11)),
        (Length.feet, (-7, 0, 1, 2)),
        (Length.feet, (7, -1)),
    ],
)
def test_unclear_parts_are_refused(build: Callable[..., Length], parts: tuple[int, ...]) -> None:
    """Thirds of an inch and mixed signs are refused, not guessed at."""
    with pytest.raises(ValueError, match=r"above zero|whole number of nanometres"):
        build(*parts)


@given(lengths, lengths, lengths)
def test_addition_is_a_commutative_group(a: Length, b: Length, c: Length) -> None:
    """Law: a + b == b + a; (a + b) + c == a + (b + c); a + 0 == a; a - a == 0."""
    assert a + b == b + a
    assert (a + b) + c == a + (b + c)
    assert a + ZERO == a
    assert a - a == ZERO
    assert a - b == a + -b


@given(lengths, lengths, st.integers(-1000, 1000))
def test_whole_multiples_distribute(a: Length, b: Length, n: int) -> None:
    """n(a + b) == na + nb, from either side."""
    assert n * (a + b) == n * a + b * n


@given(lengths)
def test_size_and_truth(a: Length) -> None:
    """|a| == |-a| >= 0, and only nothing is false."""
    assert abs(a) == abs(-a)
    assert abs(a) >= ZERO
    assert bool(a) is (a.nm != 0)


@given(lengths, lengths)
def test_order_equality_and_hash_agree(a: Length, b: Length) -> None:
    """Exactly one of a < b, a == b, a > b; equal lengths have equal hashes."""
    assert [a < b, a == b, a > b].count(True) == 1
    assert hash(a) == hash(Length(a.nm))


@given(lengths)
def test_repr_pastes_back(a: Length) -> None:
    """eval(repr(a)) == a, and a length survives pickling."""
    assert eval(repr(a)) == a  # noqa: S307 - the repr is ours
    assert pickle.loads(pickle.dumps(a)) == a  # noqa: S301 - as above


@pytest.mark.parametrize("act", [operator.add, operator.sub, operator.lt, operator.ge])
@pytest.mark.parametrize("stranger", [1, 1.0, "1"])
def test_strangers_do_not_mix(act: Callable[[object, object], object], stranger: object) -> None:
    """A length is not added to, taken from or compared with a bare number."""
    with pytest.raises(TypeError):
        act(Length(1), stranger)
    with pytest.raises(TypeError):
        act(stranger, Length(1))
    assert Length(1) != stranger


@pytest.mark.parametrize("times", [1.5, True, "2", Length(2), Fraction(1, 2)])
def test_only_whole_multiples(times: object) -> None:
    """A length times a float, a fraction or a length is no length."""
    with pytest.raises(TypeError):
        operator.mul(Length(2), times)
    with pytest.raises(TypeError):
        operator.mul(times, Length(2))


def test_a_length_cannot_be_changed() -> None:
    """A length is frozen."""
    with pytest.raises(AttributeError):
        ZERO.nm = 1  # type: ignore[misc]


@pytest.mark.parametrize(
    ("length", "text"),
    [
        (ZERO, '0"'),
        (Length.inches(95), '95"'),
        (Length.inches(4, 3, 4), '4-3/4"'),
        (Length.inches(0, 48, 64), '3/4"'),
        (-Length.inches(0, 1, 64), '-1/64"'),
        (-Length.inches(4, 3, 4), '-4-3/4"'),
        (Length.mm(127), '5"'),
        (Length.mm(190), "190 mm"),
        (Length.hundredths_mm(19_025), "190.25 mm"),
        (Length(1), "0.000001 mm"),
        (Length(-100_000_010), "-100.00001 mm"),
    ],
)
def test_exact_text_is_short_and_marked(length: Length, text: str) -> None:
    """Lowest tape terms on a sixty-fourth, millimetres off it, a unit always."""
    assert length.exact_text() == text


def test_planing_each_face() -> None:
    """An 8 x 8 planed 1/4" on each face is 7-1/2" (trade.md 7.5 row 37, TFHQ-rules)."""
    planed = Length.inches(8) - 2 * Length.inches(0, 1, 4)
    assert planed == Length.inches(7, 1, 2)


@pytest.mark.parametrize(
    ("actual", "reduction"),
    [
        (Length.inches(7, 7, 8), Length.inches(0, 3, 8)),
        (Length.inches(8, 1, 4), Length.inches(0, 3, 4)),
    ],
)
def test_reduction_is_actual_less_inner(actual: Length, reduction: Length) -> None:
    """Inner 7-1/2": 3/8" off 7-7/8", 3/4" off 8-1/4" (trade.md 7.5 rows 34-35, TFDIY-notation)."""
    assert actual - Length.inches(7, 1, 2) == reduction


def test_reduction_signs_are_not_those_of_the_printed_slip() -> None:
    """Trade.md 7.6 row 1: TFDIY-notation prints nominal - actual - housing; that is below zero."""
    nominal, actual, housing = Length.inches(8), Length.inches(7, 7, 8), Length.inches(0, 1, 2)
    assert actual - (nominal - housing) == Length.inches(0, 3, 8)
    assert nominal - actual - housing == -Length.inches(0, 3, 8)
