"""Sizes of joints that cannot be."""

import pytest

from tests.outset.frames import LAPPED, PEGGED, told


@pytest.mark.parametrize(
    ("question", "typed", "words"),
    [
        ("thickness", {"thickness": "8"}, "a tenon 8 thick do not fit in a sill of 8"),
        ("set back", {"set back": "6"}, "8 together, do not fit"),
        ("relief", {"relief": "4"}, "is half of the post or more"),
        ("foot", {"foot": "8"}, "does not end in 8 of sill"),
        ("foot", {"foot": "3-1/2", "corners": "half-lapped"}, "does not end in 4 of sill"),
        ("head", {"head": "9"}, "does not end in 8 of plate"),
        ("corner", {"corner": "8"}, "does not end in 8 of sill"),
        ("tie tenon", {"tie tenon": "8"}, "does not end in 8 of post"),
        ("tie housing", {"tie housing": "3"}, "more than a quarter of the post"),
        ("brace housing", {"brace housing": "3"}, "write at most 2"),
        ("brace thickness", {"brace thickness": "5"}, "a brace 4 wide has no tenon so thick"),
        ("brace set back", {"brace set back": "3"}, "do not fit in a 4 brace"),
        ("brace tenon", {"brace tenon": "8"}, "does not end in 8 of post"),
        ("peg", PEGGED | {"peg": "3"}, "no peg is that thick"),
        ("brace peg", PEGGED | {"brace peg": "3"}, "no peg is that thick"),
        ("peg shoulder", PEGGED | {"peg shoulder": "3"}, "a 1 hole there breaks out"),
        ("peg shoulder", PEGGED | LAPPED | {"peg shoulder": "1/2"}, "breaks out of a tenon 4 long"),
        ("brace peg shoulder", PEGGED | {"brace peg shoulder": "3"}, "a 3/4 hole there"),
        ("draw", PEGGED | {"draw": "1/2"}, "more than half the hole"),
    ],
)
def test_each_is_told_at_its_question(question: str, typed: dict[str, str], words: str) -> None:
    """What is wrong there, and what to do about it."""
    found = told(question, typed)
    assert words in found
    assert "; " in found


def test_a_barefaced_brace_may_be() -> None:
    """Set-back and tenon may take the whole of it (trade notes 2.3, TFG-bare)."""
    assert told("brace set back", brace="5 x 3") == ""
