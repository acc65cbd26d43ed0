"""Ids and names for what is added: after a name, counted on, or for the other side."""

import re
from collections.abc import Collection

_NUMBER = re.compile(r"(\d+)(?!.*\d)")

_SIDES = (
    ("north", "south"),
    ("south", "north"),
    ("east", "west"),
    ("west", "east"),
    ("n", "s"),
    ("s", "n"),
    ("e", "w"),
    ("w", "e"),
)


def slug(name: str) -> str:
    """An id that says a name: `West joist 1` gives `west-joist-1`."""
    words = re.findall(r"[a-z0-9]+", name.lower())
    return "-".join(words) if words and words[0][0].isalpha() else ""


def unused(id_: str, taken: Collection[str]) -> str:
    """The id itself, or with the next number behind it that is not taken."""
    number, found = 1, id_
    while found in taken:
        number += 1
        found = f"{id_}-{number}"
    return found


def counted_on(name: str, taken: Collection[str]) -> str:
    """The next name or id after one: its last number counted on till it is not taken.

    One without a number gets a 2 behind it.
    """
    joint = "-" if name == name.lower() and " " not in name else " "
    found = name
    while found in taken:
        number = _NUMBER.search(found)
        if number is None:
            found = f"{found}{joint}2"
        else:
            figure = f"{int(number[1]) + 1:0{len(number[1])}d}"
            found = f"{found[: number.start(1)]}{figure}{found[number.end(1) :]}"
    return found


def other_side(name: str, words: Collection[str]) -> str:
    """A name with compass words turned over: those of `words`, `east` and `west` or the others.

    In an id and in short names the letters count: `post-se`, `SE post`, `joist-w1`.
    """
    turned = {one: other for one, other in _SIDES if {one[0], other[0]} <= {w[0] for w in words}}
    return re.sub(r"[A-Za-z]+", lambda part: _turned(part[0], turned), name)


def _turned(word: str, turned: dict[str, str]) -> str:
    low = word.lower()
    if low in turned:
        return _cased(turned[low], word)
    corner = len(low) == 2 and low[0] in "ns" and low[1] in "ewm"  # noqa: PLR2004 - se, nw, sm
    if corner:
        return "".join(_cased(turned.get(letter.lower(), letter), letter) for letter in word)
    return word


def _cased(word: str, like: str) -> str:
    if like.isupper():
        return word.upper()
    return word.capitalize() if like[:1].isupper() else word
