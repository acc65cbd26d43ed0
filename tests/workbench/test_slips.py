"""Slips of the finger."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.workbench.slips import meant, slips

LETTERS = st.text("abcdef", max_size=7)


@pytest.mark.parametrize(
    ("typed", "word"),
    [
        ("releif", "relief"),
        ("shouder", "shoulder"),
        ("mortice", "mortise"),
        ("girdder", "girder"),
        ("tenom", "tenon"),
        ("rele", "relief"),
        ("plaet", "plate"),
        ("overrhang", "overhang"),
        ("shuoldre", "shoulder"),
    ],
)
def test_a_slip_is_looked_past(typed: str, word: str) -> None:
    """A letter left out, put in, mistaken or swapped; two in a long word; in a start too."""
    assert meant(typed, word)


@pytest.mark.parametrize(
    ("typed", "word"),
    [
        ("ne", "nw"),
        ("pst", "post"),
        ("sill", "girt"),
        ("fost", "post"),
        ("tenons", "tongue"),
        ("girt3", "girt2"),
        ("shldr", "shoulder"),
        ("brace", "bent"),
    ],
)
def test_another_word_is_not_taken_for_it(typed: str, word: str) -> None:
    """Short words, numbers, another first letter, or too much amiss."""
    assert not meant(typed, word)


@given(LETTERS, LETTERS)
def test_slips_count_the_same_both_ways(one: str, other: str) -> None:
    """None between a word and itself, and no more than the letters of the longer."""
    assert slips(one, other) == slips(other, one) <= max(len(one), len(other))
    assert (slips(one, other) == 0) is (one == other)


@given(LETTERS, st.integers(0, 6), st.sampled_from("abcdef"))
def test_one_letter_put_in_is_one_slip(word: str, place: int, letter: str) -> None:
    """Wherever it comes."""
    assert slips(word[:place] + letter + word[place:], word) == 1


@given(st.text("abcdef", min_size=2, max_size=7), st.integers(0, 5))
def test_two_neighbours_swapped_are_one_slip(word: str, place: int) -> None:
    """Not two, as letters one by one would be."""
    at = min(place, len(word) - 2)
    swapped = word[:at] + word[at + 1] + word[at] + word[at + 2 :]
    assert slips(swapped, word) == (0 if swapped == word else 1)
