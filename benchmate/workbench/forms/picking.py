"""Picking a word while typing: which of those there are come near, and putting one in."""

import re
from collections.abc import Iterator
from difflib import get_close_matches

from benchmate.workbench.forms.form import Blank

MOST = 8
"""Words that are told at once."""

_SIGN = re.compile(r"\s[+\N{MINUS SIGN}-]\s+")


def in_hand(blank: Blank, text: str) -> tuple[str, str]:
    """What stands before the word that is being typed in a field, and that word."""
    at = 0
    if blank.many:
        at = text.rfind(",") + 1
    elif blank.sum:
        at = max((sign.end() for sign in _SIGN.finditer(text)), default=0)
    at += len(text[at:]) - len(text[at:].lstrip())
    return text[:at], text[at:].strip()


def picks(blank: Blank, text: str, words: tuple[str, ...]) -> tuple[str, ...]:
    """The words to offer, those that begin as typed first, then those that hold it, then the near.

    All of them, the next one first, where nothing or a whole word is typed.
    """
    _, typed = in_hand(blank, text)
    if not typed or typed in words:
        at = words.index(typed) + 1 if typed in words else 0
        return (*words[at:], *words[:at])[:MOST]
    return tuple(dict.fromkeys(_near(typed, words)))[:MOST]


def _near(typed: str, words: tuple[str, ...]) -> Iterator[str]:
    yield from (word for word in words if word.startswith(typed))
    yield from (word for word in words if typed in word)
    yield from get_close_matches(typed, words, n=MOST)


def taken(blank: Blank, text: str, word: str) -> str:
    """The text with a word in place of the one that is being typed."""
    return f"{in_hand(blank, text)[0]}{word}"
