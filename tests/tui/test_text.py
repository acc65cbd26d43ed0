"""User text: no control codes, no markup, measured in cells."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from benchmate.tui.text import REPLACEMENT, clip, fit, rich_text, safe, wrap
from tests.tui.nasty import NASTY

CUT = "…"
any_text = st.one_of(st.text(), st.sampled_from(NASTY))


@given(any_text)
def test_safe_text_holds_no_control_codes(text: str) -> None:
    """No character that steers a terminal or turns text round survives."""
    assert {unicodedata.category(char) for char in safe(text)}.isdisjoint(
        {"Cc", "Cf", "Cs", "Zl", "Zp"}
    )


@given(any_text)
def test_safe_is_settled(text: str) -> None:
    """Making safe text safe again changes nothing."""
    assert safe(safe(text)) == safe(text)


@pytest.mark.parametrize("text", ["4-3/4 [/] off", "Zapfen für Säule", "梁", "¾", "e\u0301", "\\["])
def test_ordinary_text_is_left_alone(text: str) -> None:
    """Letters, marks, fractions and brackets are drawn as typed."""
    assert safe(text) == text


@pytest.mark.parametrize(
    ("text", "drawn"),
    [
        ("a\x1b[31mb", f"a{REPLACEMENT}[31mb"),
        ("a\tb\nc", "a b c"),
        ("\u202eabc", f"{REPLACEMENT}abc"),
        ("\u26a0\ufe0f", "\u26a0"),
        ("a\u00a0b", "a b"),
    ],
)
def test_what_is_replaced(text: str, drawn: str) -> None:
    """A control code leaves a visible mark in its place; white space is a space."""
    assert safe(text) == drawn


@pytest.mark.parametrize("text", NASTY)
def test_rich_text_reads_no_markup(text: str) -> None:
    """A rich Text holds the words and no style but the one asked for."""
    drawn = rich_text(text, "bold")
    assert drawn.plain == safe(text)
    assert drawn.spans == []


@given(any_text, st.integers(-3, 40))
def test_clip_never_exceeds_its_width(text: str, width: int) -> None:
    """Clipped text takes at most its cells."""
    assert cell_len(clip(text, width, CUT)) <= max(width, 0)


@given(any_text, st.integers(-3, 40))
def test_fit_takes_exactly_its_width(text: str, width: int) -> None:
    """Fitted text takes exactly its cells, wide and combining characters counted."""
    assert cell_len(fit(text, width, CUT)) == max(width, 0)


@pytest.mark.parametrize(
    ("text", "width", "clipped"),
    [
        ("shoulder", 8, "shoulder"),
        ("shoulder", 7, "should…"),
        ("tenon cheek", 7, "tenon…"),
        ("shoulder", 1, "…"),
        ("shoulder", 0, ""),
        ("梁と柱", 5, "梁と…"),
        ("梁と柱", 4, "梁…"),
        ("e\u0301e\u0301e\u0301", 2, "e\u0301…"),
    ],
)
def test_clip_marks_what_is_left_out(text: str, width: int, clipped: str) -> None:
    """What does not fit gives way to one mark; a wide character is never halved."""
    assert clip(text, width, CUT) == clipped


@given(any_text, st.integers(1, 40))
def test_wrapped_lines_fit(text: str, width: int) -> None:
    """No line is wider than the pane."""
    assert all(cell_len(line) <= width for line in wrap(text, width))


@given(any_text, st.integers(2, 40))
def test_wrapping_loses_no_words(text: str, width: int) -> None:
    """Every character but white space is still there, in order."""
    assert "".join("".join(wrap(text, width)).split()) == "".join(safe(text).split())


@pytest.mark.parametrize(
    ("text", "width", "lines"),
    [
        ("", 10, ()),
        ("hook from the arris", 10, ("hook from", "the arris")),
        ("first\nsecond", 20, ("first", "second")),
        ("a\n\nb", 20, ("a", "", "b")),
        ("a    b", 20, ("a b",)),
        ("shoulder at", 5, ("shoul", "der", "at")),
        ("see shoulder", 5, ("see", "shoul", "der")),
        ("梁と柱 x", 5, ("梁と", "柱 x")),
        ("梁x", 1, (REPLACEMENT, "x")),
    ],
)
def test_wrap_breaks_between_words(text: str, width: int, lines: tuple[str, ...]) -> None:
    """Words stay whole where a line can hold them; newlines are kept."""
    assert wrap(text, width) == lines


def test_wrap_refuses_no_width() -> None:
    """A pane without columns cannot hold words."""
    with pytest.raises(ValueError, match="0 cells"):
        wrap("tenon", 0)
