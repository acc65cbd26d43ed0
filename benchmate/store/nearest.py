"""The remedy for a word that is not known: the nearest one that is."""

from collections.abc import Iterable
from difflib import get_close_matches
from itertools import islice

from benchmate.model.words import LONGEST_NAME

NONE = "there are none yet"

_MOST_LISTED = 12
"""Words listed where none is near: as many as a timber has keys."""


_MOST_COMPARED = 500
"""Words looked through: more than any frame has, and few enough to be quick."""


def nearest(word: object, known: Iterable[str], *, none: str = NONE) -> str:
    """`did you mean "joist depth"?`, or the words there are, or what to say without any."""
    words = tuple(dict.fromkeys(islice(known, _MOST_COMPARED)))
    if isinstance(word, str):
        # A name cannot be longer, and comparing a long text with every name is slow.
        for match in get_close_matches(word[:LONGEST_NAME], words, n=1):
            return f'did you mean "{match}"?'
    if not words:
        return none
    listed = ", ".join(f'"{each}"' for each in words[:_MOST_LISTED])
    return f"write one of {listed}{', ...' if len(words) > _MOST_LISTED else ''}"
