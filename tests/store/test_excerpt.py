import pytest

from benchmate.store.excerpt import excerpt


@pytest.mark.parametrize(
    ("line", "column", "shown"),
    [
        ('length = "4-3/7"', 13, 'length = "4-3/7"\n             ^'),
        ('    deck = "x"', 12, 'deck = "x"\n        ^'),
        ("\tdeck\t= 'x'", 6, "deck = 'x'\n     ^"),
        ("deck", 4, "deck\n    ^"),
        ("  deck", 1, " deck\n^"),
        ("é日 x", 3, "é日 x\n    ^"),
        ("e\N{COMBINING ACUTE ACCENT} x", 3, "e\N{COMBINING ACUTE ACCENT} x\n  ^"),
        ("\x1b[2J", 1, "\\u001b[2J\n      ^"),
    ],
)
def test_the_caret_stands_under_its_character(line: str, column: int, shown: str) -> None:
    """Indented, tabbed, wide, combining or escaped: the caret is in the right cell."""
    assert excerpt(line, column) == shown


def test_without_a_column_the_line_stands_alone() -> None:
    """The line is shown without the white space round it, and without a caret."""
    assert excerpt('  deck = "1"  ') == 'deck = "1"'


def test_a_long_line_is_shortened_round_the_caret() -> None:
    """Both ends are cut and marked so, and the caret still fits."""
    first, second = excerpt("a" * 100 + "B" + "c" * 100, 100).split("\n")
    assert first == "..." + "a" * 50 + "B" + "c" * 19 + "..."
    assert first[second.index("^")] == "B"


def test_a_long_line_without_a_caret_is_cut() -> None:
    """The start of the line is enough to know it by; a line that just fits is whole."""
    assert excerpt("a" * 71) == "a" * 70 + "..."
    assert excerpt("a" * 70) == "a" * 70
