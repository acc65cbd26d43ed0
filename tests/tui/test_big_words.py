"""Words in capitals, as large as their room."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.tui.big_words import big_words, words_of_size
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from benchmate.tui.letter_sheets import SHEETS

CHARS = "".join(chars for chars, _ in SHEETS)
glyph_sets = st.sampled_from([UNICODE, ASCII])


def test_every_character_is_its_own_picture() -> None:
    """None of capitals, digits and signs looks like another."""
    for one, other in combinations(CHARS, 2):
        pictures = [words_of_size(char, 1, width=9, glyphs=UNICODE) for char in (one, other)]
        assert all(pictures)
        assert pictures[0] != pictures[1], (one, other)


@given(st.text(st.sampled_from(CHARS + "  "), max_size=30), st.integers(1, 90), st.integers(1, 30))
@pytest.mark.parametrize("glyphs", [UNICODE, ASCII], ids=["unicode", "ascii"])
def test_stays_in_its_room(glyphs: Glyphs, text: str, width: int, height: int) -> None:
    """Rows of one width, inside the room, or nothing at all."""
    rows = big_words(text, width=width, height=height, glyphs=glyphs)
    assert len(rows) <= height
    assert len({len(row) for row in rows}) <= 1
    assert all(len(row) <= width for row in rows)


def test_the_largest_that_fits_is_taken() -> None:
    """STOP fills a screen; in less room it is smaller."""
    large = big_words("stop", width=78, height=20, glyphs=UNICODE)
    small = big_words("stop", width=30, height=20, glyphs=UNICODE)
    assert len(large) > 2 * len(small) > 0


def test_words_break_only_between_words() -> None:
    """A line holds whole words, so no one reads half of one."""
    one = words_of_size("far cheek", 1, width=78, glyphs=UNICODE)
    two = words_of_size("far cheek", 1, width=len(one[0]) - 1, glyphs=UNICODE)
    assert (len(one), len(two)) == (3, 6)
    assert words_of_size("cheek", 1, width=10, glyphs=UNICODE) == ()


def test_accents_go_and_what_no_sheet_has_is_not_set() -> None:
    """A word with a hole in it would be a wrong word."""
    assert words_of_size("\u00e9tai", 1, width=60, glyphs=UNICODE) == words_of_size(
        "ETAI", 1, width=60, glyphs=UNICODE
    )
    assert big_words("post \u6881", width=60, height=20, glyphs=UNICODE) == ()
    assert big_words(" ", width=60, height=20, glyphs=UNICODE) == ()
