"""The table of settings, and what each may be."""

from fractions import Fraction

import pytest

from benchmate.measure.length import Length
from benchmate.model.preference import (
    BY_ID,
    PREFERENCES,
    choices_of,
    fault,
    length_of,
    share_of,
)


def said(key: str, text: str, units: str = "") -> str:
    """What is wrong with a text for a setting, in one line."""
    return "; ".join(filter(None, fault(BY_ID[key], text, units)))


def test_every_setting_has_its_words_and_a_key_of_its_own() -> None:
    """The screen, the file and the README can go by it."""
    assert len(BY_ID) == len(PREFERENCES)
    for each in PREFERENCES:
        assert each.label
        assert each.help.endswith(".")
        assert each.usual


def test_a_length_says_its_unit() -> None:
    """No project tells here what a bare number would be."""
    assert length_of("1-1/2 in") == Length.inches(1, 1, 2)
    assert length_of("38 mm") == Length.mm(38)
    assert length_of("0") == Length(0)
    with pytest.raises(ValueError, match="without a unit; write 1-1/2 in, or 38 mm"):
        length_of("1-1/2")


def test_a_share_is_more_than_nothing_and_at_most_a_half() -> None:
    """A tenon thicker than half its timber is no tenon."""
    assert share_of("1/4") == Fraction(1, 4)
    assert share_of(" 1 / 2 ") == Fraction(1, 2)
    for text in ("0/4", "2/3", "1/0", "a/b", "4", "-1/4", "1/\u0664"):
        with pytest.raises(ValueError, match="no share of a timber up to a half; write one"):
            share_of(text)


def test_what_cannot_be_is_told_with_its_remedy() -> None:
    """In the words of the trade, and with what could be written."""
    assert said("colours", "pink") == (
        'is "pink", which cannot be set here; write one of dark, light, high-contrast, none'
    )
    assert said("peg_size", "0 in") == "is nothing; write a size of more than nothing"
    assert said("trim", "0 in") == ""
    assert "longer than" in said("trim", "1 in" * 40)
    assert said("trim", "1 ells")


def test_the_marks_of_a_tape_are_those_of_its_units() -> None:
    """With units set beside it, a graduation of others cannot be."""
    assert choices_of(BY_ID["graduation"], "mm") == ("1 mm", "0.5 mm")
    assert "write one of 1 mm, 0.5 mm" in said("graduation", "1/16", "mm")
    assert said("graduation", "1/16") == ""
