import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.model.words import bad_character
from benchmate.store.toml_tokens import (
    ends_like,
    entry_text,
    key_token,
    text_token,
    value_token,
)

TEXTS = st.text().filter(lambda text: bad_character(text, lines=True) is None)
VALUES = st.recursive(
    TEXTS | st.booleans() | st.integers(-5, 5),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(TEXTS.filter(bool), inner, max_size=3)
    ),
    max_leaves=6,
)


@given(VALUES)
def test_every_value_reads_back(value: object) -> None:
    """What is written is what is read."""
    assert tomllib.loads(f"key = {value_token(value)}")["key"] == value


@given(TEXTS.filter(lambda text: "\n" not in text))
def test_every_key_reads_back(key: str) -> None:
    """Bare or in quotes."""
    assert tomllib.loads(f"{key_token(key)} = 1") == {key: 1}


@pytest.mark.parametrize(
    ("text", "old", "token"),
    [
        ("4-3/4", '"5"', '"4-3/4"'),
        ("4-3/4", "'5'", "'4-3/4'"),
        ("7' 11", "'5'", '"7\' 11"'),
        ('7 1/2"', '"5"', '"7 1/2\\""'),
        ("two\nlines", '"one"', '"""\ntwo\nlines"""'),
    ],
)
def test_a_text_keeps_its_quotes_if_they_can_hold_it(text: str, old: str, token: str) -> None:
    """So that a file goes on looking as its framer writes."""
    assert text_token(text, old) == token


def test_an_entry_is_a_key_a_line() -> None:
    """Tables within it stand in braces."""
    fields = {"id": "a", "at": {"north": "line a", "up": "0"}, "through": True}
    assert entry_text("[[timber]]", fields) == (
        '[[timber]]\nid = "a"\nat = { north = "line a", up = "0" }\nthrough = true'
    )


def test_lines_end_as_those_of_the_file() -> None:
    """A file from another system stays one."""
    assert ends_like("a\nb\n", "x = 1\r\ny = 2\r\n") == "a\r\nb\r\n"
    assert ends_like("a\n", "x = 1\n") == "a\n"
    assert ends_like("a\n", "") == "a\n"
