"""A text is cut where a framer would cut it, and a bad character is found and shown safely."""

import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.tokens import Kind, LengthError, Mark, mark_of, tokens


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("", [(Kind.END, "", 0, False)]),
        ("  ", [(Kind.END, "", 0, False)]),
        ("95.5", [(Kind.NUMBER, "95.5", 0, False), (Kind.END, "", 4, False)]),
        (
            " 7' -¾ ",
            [
                (Kind.NUMBER, "7", 1, True),
                (Kind.UNIT, "'", 2, False),
                (Kind.HYPHEN, "-", 4, True),
                (Kind.FRACTION, "¾", 5, False),
                (Kind.END, "", 6, False),
            ],
        ),
        (
            "3/4in",
            [
                (Kind.NUMBER, "3", 0, False),
                (Kind.SLASH, "/", 1, False),
                (Kind.NUMBER, "4", 2, False),
                (Kind.UNIT, "in", 3, False),
                (Kind.END, "", 5, False),
            ],
        ),
    ],
)
def test_tokens_and_their_columns(text: str, expected: list[tuple[Kind, str, int, bool]]) -> None:
    """Each token knows what it is, where it stands and whether a space goes before it."""
    assert [(t.kind, t.text, t.column, t.spaced) for t in tokens(text)] == expected


@pytest.mark.parametrize(
    ("text", "mark"),
    [
        *(
            (text, Mark.FOOT)
            for text in ("'", "\N{PRIME}", "\N{RIGHT SINGLE QUOTATION MARK}", "ft", "FEET")
        ),
        *((text, Mark.INCH) for text in ('"', "″", "“", "”", "in", "inch", "inches")),
        ("mm", Mark.MM),
        ("cm", Mark.CM),
        ("m", Mark.M),
    ],
)
def test_units_however_they_are_written(text: str, mark: Mark) -> None:
    """Marks, primes, curly quotes and words all name their unit."""
    assert mark_of(next(tokens(text))) is mark


def test_units_are_worth_their_nanometres() -> None:
    """A foot is 304.8 mm and a metre a thousand; the metric ones say so."""
    assert [mark.value for mark in Mark] == [
        304_800_000,
        25_400_000,
        1_000_000,
        10_000_000,
        1_000_000_000,
    ]
    assert [mark for mark in Mark if mark.metric] == [Mark.MM, Mark.CM, Mark.M]


@pytest.mark.parametrize(
    ("text", "column", "problem"),
    [
        ("6 yd", 2, "`yd` is not a unit"),
        ("12.", 2, "no digit follows the point"),
        ("4*3", 1, "`*` has no place in a length"),
        ("\N{ARABIC-INDIC DIGIT THREE}", 0, "`\N{ARABIC-INDIC DIGIT THREE}` has no place in a"),
        ("4\x1b[2J", 1, "`\\x1b` has no place in a length"),
    ],
)
def test_a_bad_character_is_named_with_its_column(text: str, column: int, problem: str) -> None:
    """The first character that cannot belong to a length is the one refused."""
    with pytest.raises(LengthError) as caught:
        list(tokens(text))
    assert caught.value.column == column
    assert caught.value.problem.startswith(problem)


@pytest.mark.parametrize(
    ("text", "column", "excerpt"),
    [
        ("3/0", 2, "3/0\n  ^"),
        ("", 0, "\n^"),
        ("7\t'x", 3, "7\\t'x\n    ^"),
        ("\x1b[31m4", 1, "\\x1b[31m4\n    ^"),
        ("\u202e4", 1, "\\u202e4\n      ^"),
        ("e\u03014", 2, "e\\u03014\n       ^"),
        ("木4", 1, "\\u67284\n      ^"),
        ("\u05d04", 1, "\\u05d04\n      ^"),
        ("1" * 30, 0, "1" * 20 + "...\n^"),
        ("¾ é", 2, "¾ é\n  ^"),
    ],
)
def test_the_caret_stands_under_the_character(text: str, column: int, excerpt: str) -> None:
    """What could move a cursor is written out, so the caret is right and nothing acts."""
    assert LengthError(text, column, "wrong", "mend it").excerpt() == excerpt


@given(st.text(max_size=80), st.integers(0, 80))
def test_no_excerpt_reaches_the_terminal(text: str, column: int) -> None:
    """Every error prints as one line, its excerpt as two, with printable characters only."""
    error = LengthError(text, min(column, len(text)), f"`{text}` is wrong", f"not {text}")
    shown, caret = error.excerpt().split("\n")
    assert (shown + caret + str(error)).isprintable()
    assert len(caret) - 1 <= len(shown)


def test_an_error_moves_into_a_longer_text() -> None:
    """Found in a part, told in the whole; a column past the end is held at the end."""
    error = LengthError("3/0", 2, "wrong", "mend it")
    assert error.within("6 x 3/0", 4).excerpt() == "6 x 3/0\n      ^"
    assert error.within("3/", 0).column == 2
    assert error.within("3", 0).column == 1


def test_an_error_says_what_and_what_to_do() -> None:
    """An error reads as one line, and survives pickling with all its parts."""
    error = LengthError("3/0", 2, "nothing divides by 0", "write 3/4")
    copy = pickle.loads(pickle.dumps(error))  # noqa: S301 - our own bytes
    assert str(copy) == "nothing divides by 0; write 3/4"
    assert (copy.text, copy.column) == ("3/0", 2)
