"""User text never reaches a terminal as a command, and ids are safe as file names."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.model.words import (
    LONGEST_NAME,
    LONGEST_NOTE,
    bad_character,
    check_id,
    check_text,
    lower_first,
    visible,
)

BAD = ["\x00", "\x1b", "\x07", "\x7f", "\x9b", "\r", "\u202e", "\u2066", "\u2028", "\ud800"]


@pytest.mark.parametrize("character", BAD)
def test_control_characters_are_found_where_they_stand(character: str) -> None:
    """Escapes, bells, direction turns and stray surrogates, in names and notes alike."""
    for lines in (False, True):
        assert bad_character(f"Post{character}", lines=lines) == 4
    with pytest.raises(ValueError, match=f"U\\+{ord(character):04X} at place 5"):
        check_text(f"Post{character}", longest=LONGEST_NAME)


@pytest.mark.parametrize("character", ["\n", "\t"])
def test_new_lines_and_tabs_belong_in_notes_only(character: str) -> None:
    """A name is one line; a note may run over several."""
    assert bad_character(f"a{character}b") == 1
    assert bad_character(f"a{character}b", lines=True) is None


@pytest.mark.parametrize("text", ["Nordöstlicher Pfosten", "柱", "Post [b]1[/b]", "🪵", "e\u0301"])
def test_any_language_is_fine(text: str) -> None:
    """Only what acts on a terminal is refused."""
    assert check_text(text, longest=LONGEST_NAME) == text
    assert visible(text) == text


@given(st.text())
def test_what_is_shown_cannot_act(text: str) -> None:
    """Whatever was in the file, what reaches the screen holds no control character."""
    shown = visible(text)
    assert bad_character(shown) is None
    assert shown == text or bad_character(text) is not None


@pytest.mark.parametrize(
    ("text", "inside"),
    [("Saw the West side", "saw the West side"), ("x", "x"), ("", "")],
)
def test_a_title_inside_a_sentence(text: str, inside: str) -> None:
    """Only its first letter loses its capital."""
    assert lower_first(text) == inside


def test_hidden_characters_are_shown_as_escapes() -> None:
    """The framer sees that something is there."""
    assert visible("a\x1b[31mb") == "a\\u001b[31mb"


@pytest.mark.parametrize("text", ["", " ", "\u3000"])
def test_text_without_a_word_is_refused(text: str) -> None:
    """White space is no name."""
    with pytest.raises(ValueError, match="empty"):
        check_text(text, longest=LONGEST_NAME)


@pytest.mark.parametrize("longest", [LONGEST_NAME, LONGEST_NOTE])
def test_text_has_a_longest(longest: int) -> None:
    """One more character than fits is refused with both numbers."""
    assert check_text("x" * longest, longest=longest)
    with pytest.raises(ValueError, match=f"{longest + 1} characters; at most {longest}"):
        check_text("x" * (longest + 1), longest=longest)


@pytest.mark.parametrize("text", ["a", "post-se", "p1", "con-1", "com10", "x" * LONGEST_NAME])
def test_usable_ids(text: str) -> None:
    """Lower-case words, digits and single hyphens."""
    assert check_id(text) == text


@pytest.mark.parametrize(
    "text",
    [
        "",
        "1st",
        "-a",
        "a-",
        "a--b",
        "Post",
        "a b",
        "a_b",
        "a.b",
        "../a",
        "ä",
        "a/b",
        "con",
        "nul",
        "com1",
        "lpt9",
        "x" * (LONGEST_NAME + 1),
    ],
)
def test_unusable_ids(text: str) -> None:
    """Anything that could leave its folder, clash by case or name a device."""
    with pytest.raises(ValueError, match=r"id"):
        check_id(text)
