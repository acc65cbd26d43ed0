"""The arithmetic of a line is exact: whatever is typed comes to the very fraction it says."""

from fractions import Fraction
from typing import NamedTuple

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.measure.reading import LengthError, Unit
from benchmate.measure.reckon.total import Total, read_total
from benchmate.measure.sums import read_sum

INCH = Fraction(254, 10) * 10**6
"""Nanometres in an inch, by international definition (ISO: 25.4 mm exactly)."""

SIZES = {"deck": Length.inches(1, 1, 4), "floor top": Length.feet(10), "line x": Length.mm(190)}


def total(text: str, bare: Unit = Unit.INCH) -> Fraction:
    """What a line comes to, in nanometres."""
    return read_total(text, bare=bare, sizes=SIZES).nm


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("12' 6 - 2 x 7-1/2", 135),
        ("2x7", 14),
        ("7-1/2 x 2 + 1", 16),
        ("14' 3 / 2", Fraction(171, 2)),
        ("12 / 2 / 3", 2),
        ("24 / (2 + 2)", 6),
        ("(12' - 15) / 2", Fraction(129, 2)),
        ("2/3 x 12", 8),
        ("12 x 2/3", 8),
        ("1/3 x 14' 3", 57),
        ("half of 14' 3", Fraction(171, 2)),
        ("half of 14' 3 + 6", Fraction(183, 2)),
        ("a third of (10 - 1)", 3),
        ("a quarter of half of 8", 1),
        ("half 8", 4),
        ("-6 + 12'", 138),
        ("-(3 - 5)", 2),
        ("3 - (-5)", 8),
        ("floor top - 2 x deck", Fraction(235, 2)),
        ("deck x 4 / 5", 1),
        ("10 / 3", Fraction(10, 3)),
        ("254 mm + 1", 11),
        ("2 x (3 + 4) x 2", 28),
        ("(2) x (3')", 72),
        ("  12'\t-  1  ", 143),
        ("0", 0),
    ],
)
def test_what_a_line_comes_to(text: str, inches: Fraction) -> None:
    """Products before sums, from left to right, brackets first."""
    assert total(text) == inches * INCH


def test_a_bare_number_is_millimetres_in_a_metric_project() -> None:
    """And an inch among them is an inch."""
    assert total("190 + 1 in", Unit.MM) == 190 * 10**6 + INCH
    assert total("2 x 190 / 4", Unit.MM) == 95 * 10**6


def test_the_names_it_goes_by() -> None:
    """In order, as often as they stand there."""
    read = read_total("deck + floor top - deck", bare=Unit.INCH, sizes=SIZES)
    assert read == Total(Fraction(Length.feet(10).nm), ("deck", "floor top", "deck"))


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("", 0, "a length is missing"),
        ("12' 6 -", 7, "a length is missing"),
        ("12' 6 - 2 x ", 12, "a length is missing"),
        ("()", 1, "a length is missing"),
        ("half of", 7, "a length is missing"),
        ("2' x 3'", 3, "a length times a length is an area"),
        ("deck x deck", 5, "a length times a length is an area"),
        ("12' / 2'", 4, "nothing is divided by a length here"),
        ("12' / deck", 4, "nothing is divided by a length here"),
        ("12' / 0", 4, "nothing divides by 0"),
        ("12' / (3 - 3)", 4, "nothing divides by 0"),
        ("((3)", 4, "a bracket is not closed"),
        ("(3 + 2", 6, "a bracket is not closed"),
        ("3)", 1, "this bracket was never opened"),
        ("12' + 1/3", 8, "1/3 is not a tape fraction"),
        ("1/3", 2, "1/3 is not a tape fraction"),
        ("-1/3", 3, "1/3 is not a tape fraction"),
        ("3 + 7-11", 6, "a fraction belongs here"),
        ("14' 3/2 - 1", 4, "behind feet this could be inches or a division"),
        ("200' x 51", 0, "comes to more than 10000' 0\""),
        ("(" * 13 + "1" + ")" * 13, 12, "more than 12 brackets inside each other"),
    ],
)
def test_what_is_refused(text: str, column: int, problem: str) -> None:
    """Each refusal names its column in the whole line."""
    with pytest.raises(LengthError) as caught:
        total(text)
    assert (caught.value.column, caught.value.problem) == (column, problem)
    assert caught.value.text == text


def test_brackets_beside_each_other_are_not_deep() -> None:
    """Only those inside each other count."""
    assert total(" + ".join(["(1)"] * 20)) == 20 * INCH
    assert total("(" * 12 + "1" + ")" * 12) == INCH


class Said(NamedTuple):
    """A part of a line, what it comes to, and whether it has a unit."""

    text: str
    amount: Fraction
    bare: bool = False


def _feet(feet: int, inches: int, sixtyfourths: int) -> Said:
    text = f"{feet}' {inches}-{sixtyfourths}/64\"" if sixtyfourths else f"{feet}' {inches}"
    return Said(text, (12 * feet + inches + Fraction(sixtyfourths, 64)) * INCH)


def _mm(hundredths: int) -> Said:
    return Said(f"{hundredths // 100}.{hundredths % 100:02} mm", Fraction(hundredths * 10_000))


LENGTHS = st.one_of(
    st.builds(_feet, st.integers(0, 199), st.integers(0, 11), st.integers(0, 63)),
    st.builds(_mm, st.integers(0, 6_000_000)),
    st.builds(lambda name: Said(name, Fraction(SIZES[name].nm)), st.sampled_from(tuple(SIZES))),
)
NUMBERS = st.one_of(
    st.builds(lambda n: Said(str(n), Fraction(n), bare=True), st.integers(1, 12)),
    st.builds(
        lambda n, d: Said(f"{n}/{d}", Fraction(n, d), bare=True),
        st.integers(1, 9),
        st.integers(1, 9),
    ),
)


def _scaled(length: Said, number: Said, how: int) -> Said:
    """A length times or over a number, in one of the ways to write it."""
    if how == 0:
        return Said(f"{length.text} x {number.text}", length.amount * number.amount)
    if how == 1:
        return Said(f"{number.text} x {length.text}", length.amount * number.amount)
    return Said(f"{length.text} / {number.text}", length.amount / number.amount)


def _bracketed(parts: list[tuple[int, Said]]) -> Said:
    said = _joined(parts)
    return Said(f"({said.text})", said.amount)


def _joined(parts: list[tuple[int, Said]]) -> Said:
    """Terms with their signs between them, the first one without."""
    (_, first), *rest = parts
    text = first.text + "".join(f" {'+' if sign > 0 else '-'} {each.text}" for sign, each in rest)
    return Said(text, first.amount + sum(sign * each.amount for sign, each in rest))


def _signed(term: st.SearchStrategy[Said]) -> st.SearchStrategy[list[tuple[int, Said]]]:
    return st.lists(st.tuples(st.sampled_from((1, -1)), term), min_size=1, max_size=4)


TERMS = st.recursive(
    LENGTHS,
    lambda inner: st.one_of(
        st.builds(
            _scaled,
            inner.filter(lambda said: " x " not in said.text and " / " not in said.text),
            NUMBERS,
            st.integers(0, 2),
        ),
        st.builds(_bracketed, _signed(inner)),
    ),
    max_leaves=6,
)


@settings(max_examples=400)
@given(_signed(TERMS), st.sampled_from(Unit))
def test_whatever_is_typed_comes_to_what_it_says(parts: list[tuple[int, Said]], bare: Unit) -> None:
    """Feet, inches, millimetres and names mixed: exactly the sum, whatever the project's unit."""
    said = _joined(parts)
    try:
        assert total(said.text, bare) == said.amount
    except LengthError as error:
        assert "comes to more than" in error.problem  # noqa: PT017 - the one limit there is


@settings(max_examples=500)
@given(_signed(LENGTHS))
def test_a_sum_is_read_as_in_a_project_file(parts: list[tuple[int, Said]]) -> None:
    """What a field takes and what the calculator reads come to the same."""
    text = _joined(parts).text
    assert total(text) == read_sum(text, exact=True).value(SIZES.__getitem__).nm


@settings(max_examples=500)
@given(LENGTHS, st.integers(1, 500))
def test_so_many_of_a_share_are_the_whole(length: Said, count: int) -> None:
    """Dividing and taking it as often again loses nothing, as nothing is rounded between."""
    assert total(f"{length.text} / {count} x {count}") == length.amount


@given(st.text(alphabet="0123456789 '\"/-+x().mdeck½", max_size=40))
def test_any_text_is_reckoned_or_refused_in_its_place(text: str) -> None:
    """Never another error, and always a column in the text."""
    try:
        assert isinstance(total(text), Fraction)
    except LengthError as error:
        assert 0 <= error.column <= len(text)  # noqa: PT017 - either way will do
