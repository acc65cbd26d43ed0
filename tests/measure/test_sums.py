"""Sums join lengths and names, and a spaced sign is the only sign that adds."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import ZERO, Length
from benchmate.measure.reading import LengthError, Unit
from benchmate.measure.sums import Sum, Term, is_name, read_sum, with_names
from benchmate.measure.tolerance import LONGEST_TIMBER

SIZES = {
    "joist depth": Length.inches(6),
    "deck": Length.inches(1, 1, 2),
    "tie-beam depth": Length.inches(10),
    "a": Length.inches(1),
}


def size(name: str) -> Length:
    """The size of a name, among those of these tests."""
    return SIZES[name]


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("4", (4, 0, 1)),
        ("4-3/4", (4, 3, 4)),
        ("4 - 3/4", (3, 1, 4)),
        ("7' 11\" - 11", (84, 0, 1)),
        ("joist depth + deck + 8", (15, 1, 2)),
        ("  joist depth\t+  deck ", (7, 1, 2)),
        ("tie-beam depth - 3", (7, 0, 1)),
        ("-6 + tie-beam depth", (4, 0, 1)),
        ("- a + a", (0, 0, 1)),
        ("deck \N{MINUS SIGN} ½", (1, 0, 1)),
        ("a + a + a", (3, 0, 1)),
    ],
)
def test_what_a_sum_comes_to(text: str, inches: tuple[int, int, int]) -> None:
    """Names take their sizes and signs their turn (the chamfer stop 15-1/2": common practice)."""
    assert read_sum(text).value(size) == Length.inches(*inches)


def test_a_sum_may_come_out_below_zero() -> None:
    """Nothing is clamped: a sum below zero is said, for a check to find."""
    assert read_sum("a - joist depth").value(size) == -Length.inches(5)


def test_the_names_in_a_sum() -> None:
    """Names come in order, as often as they stand there."""
    assert read_sum("deck + 6 - a + deck").names() == ("deck", "a", "deck")


def test_an_unknown_name_is_the_lookup_s_to_refuse() -> None:
    """What the lookup raises passes through untouched."""
    with pytest.raises(KeyError, match="sill top"):
        read_sum("sill top + 6").value(size)


@pytest.mark.parametrize(
    ("text", "normal"),
    [
        ("4 3/4", '4-3/4"'),
        ("-  6  +  deck", '-6" + deck'),
        ("- a - 190 mm", "-a - 190 mm"),
        ("a + 7' 11", 'a + 95"'),
    ],
)
def test_one_spelling(text: str, normal: str) -> None:
    """A sum is written back one way, with every unit marked."""
    assert read_sum(text).text() == normal


def test_a_bare_number_takes_the_unit_of_its_field() -> None:
    """In a metric field every bare number is millimetres."""
    assert read_sum("190 - 40", bare=Unit.MM).value(size) == Length.mm(150)


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("", 0, "a term is missing"),
        ("  ", 2, "a term is missing"),
        ("-", 1, "a term is missing"),
        ("a +", 3, "a term is missing"),
        ("a + + 6", 3, "a term is missing"),
        ("6 -", 3, "a term is missing"),
        ("+ 6", 0, "`+` has no place in a length"),
        ("a + -6", 4, "a length here is not below zero"),
        ("a + 1/3", 6, "1/3 is not a tape fraction"),
        ("deck - 7'11'", 11, "feet are given twice"),
        ("6+3", 1, "`+` has no place in a length"),
        ("6 -3", 2, "in a length the hyphen joins without spaces"),
        ("a + .", 4, "no digit follows the point"),
        ("a + 201'", 4, "more than 200' 0\""),
        *(
            (text, column, "a name has only lower-case words, digits and hyphens inside a word")
            for text, column in (
                ("a+b", 1),
                ("6 + Deck", 4),
                ("a  b", 2),
                ("a -b", 2),
                ("a- b", 1),
                ('floor top-6"', 11),
                ("é", 0),
                ("a_b", 1),
                ("a\x1b", 1),
            )
        ),
        ("a + " * 61, 240, "longer than 240 characters"),
    ],
)
def test_what_is_refused(text: str, column: int, problem: str) -> None:
    """A refusal names its column in the whole text."""
    with pytest.raises(LengthError) as caught:
        read_sum(text)
    assert (caught.value.text, caught.value.column) == (text, column)
    assert caught.value.problem == problem


@pytest.mark.parametrize(
    ("text", "named"),
    [
        ("floor top", True),
        ("line 1", True),
        ("tie-beam", True),
        ("a1", True),
        ("", False),
        ("1 line", False),
        ("a  b", False),
        ("-a", False),
        ("a-", False),
        ("a\n", False),
        ("A", False),
        ("é", False),
    ],
)
def test_names(text: str, named: bool) -> None:
    """A name is lower-case words of letters and digits that starts with a letter."""
    assert is_name(text) is named


@pytest.mark.parametrize(
    ("sign", "name", "length", "problem"),
    [
        (0, "a", None, "sign of a term"),
        (1, None, None, "one of them"),
        (1, "a", ZERO, "one of them"),
        (1, "A", None, "cannot name a size"),
        (1, None, Length(-1), "apart from its length"),
    ],
)
def test_terms_that_cannot_be(
    sign: int, name: str | None, length: Length | None, problem: str
) -> None:
    """A term is a sign with one name or one length, and the sign is nowhere else."""
    with pytest.raises(ValueError, match=problem):
        Term(sign, name, length)


def test_a_sum_of_nothing_cannot_be() -> None:
    """No terms, no sum."""
    with pytest.raises(ValueError, match="at least one term"):
        Sum(())


signs = st.sampled_from([1, -1])
names = st.from_regex(r"[a-z][a-z0-9]{0,5}([ -][a-z0-9]{1,5}){0,2}", fullmatch=True)
lengths = st.integers(0, LONGEST_TIMBER.nm).map(Length)
terms = st.builds(Term, signs, names, st.none()) | st.builds(Term, signs, st.none(), lengths)
sums = st.lists(terms, min_size=1, max_size=6).map(tuple).map(Sum)


@given(sums)
def test_text_reads_back(total: Sum) -> None:
    """Law: read(text(s)) == s for every sum, to the nanometre."""
    assert read_sum(total.text(), exact=True) == total


@given(sums, sums)
def test_values_add(a: Sum, b: Sum) -> None:
    """Law: value(a and b together) == value(a) + value(b)."""

    def by_length(name: str) -> Length:
        return Length(len(name))

    together = Sum(a.terms + b.terms)
    assert together.value(by_length) == a.value(by_length) + b.value(by_length)


@pytest.mark.parametrize(
    ("text", "after"),
    [
        ("deck", "board"),
        (" deck  +  joist depth - 1-1/2", " board  +  joist depth - 1-1/2"),
        ("-deck - deck", "-board - board"),
        ("joist depth + decking", "joist depth + decking"),
    ],
)
def test_a_name_is_changed_where_it_stands_and_nothing_else(text: str, after: str) -> None:
    """Spacing, signs and figures stay as they are written."""
    assert with_names(text, {"deck": "board"}) == after
    assert with_names(after, {"board": "deck"}) == text


def test_names_are_changed_in_a_sum_that_can_be_read_alone() -> None:
    """Any other is refused as it is everywhere."""
    with pytest.raises(LengthError):
        with_names("deck +", {"deck": "board"})
