import pytest

from benchmate.workbench.forms.form import Blank
from benchmate.workbench.forms.picking import MOST, in_hand, picks, taken

PLAIN = Blank(key="a", label="A", help="")
SUM = Blank(key="a", label="A", help="", sum=True)
MANY = Blank(key="a", label="A", help="", many=True)
WORDS = ("post-se", "post-sw", "sill-south")


@pytest.mark.parametrize(
    ("blank", "text", "before", "word"),
    [
        (PLAIN, "line a + b", "", "line a + b"),
        (SUM, "line a + dec", "line a + ", "dec"),
        (SUM, "4-3/4", "", "4-3/4"),
        (MANY, "post-se, si", "post-se, ", "si"),
        (MANY, "", "", ""),
    ],
)
def test_the_word_in_hand_is_the_last_of_its_field(
    blank: Blank, text: str, before: str, word: str
) -> None:
    """After the last sign of a sum, or the last comma."""
    assert in_hand(blank, text) == (before, word)
    assert taken(blank, text, "x") == f"{before}x"


def test_words_that_begin_as_typed_come_first_then_those_near() -> None:
    """A slip of a finger still finds its word."""
    assert picks(PLAIN, "post", WORDS) == ("post-se", "post-sw")
    assert picks(PLAIN, "south", WORDS) == ("sill-south",)
    assert picks(PLAIN, "pst-se", WORDS)[0] == "post-se"
    assert picks(PLAIN, "zzz", WORDS) == ()


def test_a_whole_word_leads_on_to_the_next() -> None:
    """So that tab goes through them all."""
    assert picks(PLAIN, "", WORDS) == WORDS
    assert picks(PLAIN, "post-se", WORDS) == ("post-sw", "sill-south", "post-se")
    assert len(picks(PLAIN, "", tuple(map(str, range(50))))) == MOST
