"""How a key or a value is written in TOML, in the quotes it stood in where those can hold it."""

from collections.abc import Mapping, Sequence
from typing import Any

from benchmate.store.document import PLAIN_KEY

_ESCAPES = str.maketrans({"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t"})
_TALL_ESCAPES = str.maketrans({"\\": "\\\\", '"': '\\"'})

_TALL = '"""'


def key_token(key: str) -> str:
    """A key as it is written: bare where it can be."""
    return key if PLAIN_KEY.fullmatch(key) else _quoted(key)


def text_token(text: str, old: str = "") -> str:
    """A text in the quotes of `old` if they can hold it, else in those that can hold any.

    A text of several lines is written as such.
    """
    if "\n" in text:
        return f"{_TALL}\n{text.translate(_TALL_ESCAPES)}{_TALL}"
    if old[:1] == "'" and "'" not in text and "\t" not in text:
        return f"'{text}'"
    return _quoted(text)


def value_token(value: object, old: str = "") -> str:
    """A text, a number, true or false, a list or a table, on one line but for a tall text."""
    if isinstance(value, str):
        return text_token(value, old)
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, Mapping):
        pairs = (f"{key_token(key)} = {value_token(each)}" for key, each in value.items())
        return f"{{ {', '.join(pairs)} }}" if value else "{}"
    if isinstance(value, Sequence):
        return f"[{', '.join(value_token(each) for each in value)}]"
    return str(value)


def entry_text(table: str, fields: Mapping[str, Any]) -> str:
    """One entry of a list of tables, or with `[table]` that table, a key a line."""
    lines = (f"{key_token(key)} = {value_token(value)}" for key, value in fields.items())
    return "\n".join((table, *lines))


def ends_like(block: str, text: str) -> str:
    """A block whose lines end in a bare new line, with its lines ending as those of a text do."""
    first = text.find("\n")
    return block.replace("\n", "\r\n") if first > 0 and text[first - 1] == "\r" else block


def _quoted(text: str) -> str:
    return f'"{text.translate(_ESCAPES)}"'
