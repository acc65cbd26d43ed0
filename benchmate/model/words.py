"""What user text may hold, so that no name or note can reach a terminal as a command."""

import unicodedata

LAYOUT_ONLY = (
    "Layout only: sizes, notches and pegs that carry load are for local code and a licensed "
    "engineer."
)
"""The caution every printed form carries."""

LONGEST_NAME = 60
"""Characters in a name: one line of the narrowest pane, with room to spare."""

LONGEST_HOOK = 200
"""Characters in what a figure is measured from: a name or two and the words round them."""

LONGEST_NOTE = 2000
"""Characters in a note: about a page."""

_TURNS_TEXT_ROUND = frozenset("\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
_REFUSED = frozenset({"Cc", "Cs", "Zl", "Zp"})
_RESERVED_BY_SYSTEMS = frozenset(
    {"con", "prn", "aux", "nul"} | {f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10)}
)
_ID_CHARACTERS = frozenset("abcdefghijklmnopqrstuvwxyz0123456789-")


def bad_character(text: str, *, lines: bool = False) -> int | None:
    """The place of the first control, surrogate or direction-turning character, if any.

    With `lines`, new lines and tabs are allowed.
    """
    for place, character in enumerate(text):
        if lines and character in "\n\t":
            continue
        if character in _TURNS_TEXT_ROUND or unicodedata.category(character) in _REFUSED:
            return place
    return None


def lower_first(text: str) -> str:
    """The text ready to stand inside a sentence; names further on keep their capitals."""
    return text[:1].lower() + text[1:]


def visible(text: str) -> str:
    """The text with every character that could act on a terminal shown as an escape."""
    return "".join(
        character if bad_character(character) is None else f"\\u{ord(character):04x}"
        for character in text
    )


def check_text(text: str, *, longest: int, lines: bool = False) -> str:
    """The text itself; ValueError if it is empty, too long or holds control characters."""
    if not text.strip():
        raise ValueError("is empty; write a word or two")
    if len(text) > longest:
        raise ValueError(f"has {len(text)} characters; at most {longest} fit")
    place = bad_character(text, lines=lines)
    if place is not None:
        raise ValueError(
            f"has the control character U+{ord(text[place]):04X} at place {place + 1}; remove it"
        )
    return text


def check_id(text: str) -> str:
    """The id itself; ValueError unless it is safe as a file name on every system.

    Ids are lower-case letters, digits and single hyphens, starting with a letter.
    """
    rule = "write lower-case letters, digits and single hyphens, starting with a letter"
    if len(text) > LONGEST_NAME:
        raise ValueError(f"has {len(text)} characters; at most {LONGEST_NAME} make an id")
    if not text or not set(text) <= _ID_CHARACTERS:
        raise ValueError(f"is not a usable id; {rule}")
    if not text[0].isalpha() or text.endswith("-") or "--" in text:
        raise ValueError(f"is not a usable id; {rule}")
    if text in _RESERVED_BY_SYSTEMS:
        raise ValueError("is a name some systems reserve for devices; choose another id")
    return text
