"""A line is cut where a framer would cut it; what could be read two ways is refused."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.reckon.pieces import Piece, known_name, pieces, share_of
from benchmate.measure.tokens import LengthError

NAMES = ("deck", "line x", "joist depth", "joist", "half deck", "tie-beam depth")


def cut(text: str) -> list[tuple[str, str]]:
    """The pieces of a text, each as its kind and its text, the end left out."""
    return [(each.piece.name.lower(), each.text) for each in pieces(text, NAMES)][:-1]


@pytest.mark.parametrize(
    ("text", "cuts"),
    [
        ("12' 6 - 2 x 7-1/2", ["12' 6", "-", "2", "x", "7-1/2"]),
        ("14' 3 / 2", ["14' 3", "/", "2"]),
        ("14' 3\"/2", ["14' 3\"", "/", "2"]),
        ("30 mm/2", ["30 mm", "/", "2"]),
        ("3/4", ["3/4"]),
        ("2x7", ["2", "x", "7"]),
        ("2*7 × 3 ÷ 4", ["2", "*", "7", "×", "3", "÷", "4"]),
        ("(3 - 1)/2", ["(", "3", "-", "1", ")", "/", "2"]),
        ("3-(1)+2", ["3", "-", "(", "1", ")", "+", "2"]),
        ("-6 + 12'", ["-", "6", "+", "12'"]),
        ("(-6)", ["(", "-", "6", ")"]),
        ("deck/2", ["deck", "/", "2"]),
        ("line x x 2", ["line x", "x", "2"]),
        ("joist depth + joist", ["joist depth", "+", "joist"]),
        ("half of 9", ["half of", "9"]),
        ("a third of(9)", ["a third of", "(", "9", ")"]),
        ("half deck", ["half deck"]),
        ("½/2", ["½", "/", "2"]),
        ("6 \N{MINUS SIGN} 2", ["6", "\N{MINUS SIGN}", "2"]),
    ],
)
def test_where_a_line_is_cut(text: str, cuts: list[str]) -> None:
    """Signs join, lengths keep their own hyphens and bars, and the longest name wins."""
    assert [found for _, found in cut(text)] == cuts


def test_what_a_piece_is() -> None:
    """One of each kind, with its column in the line."""
    found = list(pieces("half of (deck - 3) x 2 / 4 + 1", NAMES))
    assert [each.piece for each in found] == [
        Piece.SHARE,
        Piece.OPEN,
        Piece.NAME,
        Piece.MINUS,
        Piece.NUMBER,
        Piece.CLOSE,
        Piece.TIMES,
        Piece.NUMBER,
        Piece.OVER,
        Piece.NUMBER,
        Piece.PLUS,
        Piece.NUMBER,
        Piece.END,
    ]
    assert [each.column for each in found] == [0, 8, 9, 14, 16, 17, 19, 21, 23, 25, 27, 29, 30]


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("12' 6 -2", 6, "a space stands on one side of the - only"),
        ("12' +3", 4, "a space stands on one side of the + only"),
        ('7-3/16"+ - 3', 7, "the + is joined to the length before it"),
        ("7- 3", 1, "the - is joined to the length before it"),
        ("14' 3 /4", 6, "a space stands on one side of the / only"),
        ("3/ 4", 1, "a space stands on one side of the / only"),
        ("* 3", 0, "a length is missing"),
        ("x 3", 0, "a length is missing"),
        ("2 x x 3", 4, "a length is missing"),
        ("3 - + 2", 4, "a length is missing"),
        ("(3)4", 3, "a sign is missing"),
        ("deck 4", 5, "a sign is missing"),
        ("dekc + 2", 0, "`dekc` is no name or word known here"),
        ("deck-2", 0, "`deck-2` is no name or word known here"),
        ("2 - xylem", 4, "`xylem` is no name or word known here"),
    ],
)
def test_what_could_be_read_two_ways_is_refused(text: str, column: int, problem: str) -> None:
    """Each refusal names the column and what is wrong there."""
    with pytest.raises(LengthError) as caught:
        cut(text)
    assert (caught.value.column, caught.value.problem) == (column, problem)


@pytest.mark.parametrize(
    ("text", "remedy"),
    [
        ("dekc", "did you mean deck?"),
        ("haf of 3", "did you mean half?"),
        ("quartr", "did you mean quarter?"),
        ("diagonl", "did you mean diagonal?"),
        ("zebra", "write a length, as 12' 6"),
    ],
)
def test_an_unknown_word_is_told_its_nearest(text: str, remedy: str) -> None:
    """Among the names, the shares and the words a line begins with."""
    with pytest.raises(LengthError) as caught:
        cut(text)
    assert caught.value.remedy == remedy


def test_a_name_ends_where_its_word_ends() -> None:
    """`deck` does not stand in `decking`, nor at the head of `deck-board`."""
    assert known_name("deck + 1", 0, NAMES) == "deck"
    assert known_name("decking", 0, NAMES) == ""
    assert known_name("deck-board", 0, NAMES) == ""
    assert known_name("deck - 1", 0, NAMES) == "deck"


@pytest.mark.parametrize("word", ["half", "a third of", "quarter of"])
def test_shares_are_what_they_say(word: str) -> None:
    """A half, a third, a quarter."""
    parts = {"half": 2, "a third of": 3, "quarter of": 4}
    assert share_of(word) * parts[word] == 1


@given(st.text(alphabet="0123456789 '\"/-+x().mdeck½", max_size=30))
def test_a_line_is_cut_without_loss_or_refused(text: str) -> None:
    """The pieces are the text less its white space, or one error says where it fails."""
    try:
        found = "".join(each.text for each in pieces(text, NAMES))
    except LengthError as error:
        assert 0 <= error.column <= len(text)  # noqa: PT017 - either way will do
    else:
        assert found.replace(" ", "") == text.replace(" ", "")
