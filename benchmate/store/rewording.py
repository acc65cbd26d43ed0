"""Rewording one value of a TOML file that a framer wrote: every other byte stays as it is.

1. Only a text on one line is reworded, in the kind of quotes it stands in wherever those can hold
   the new words. Anything else is left for the framer's own editor.
2. What comes out is read again and compared: it differs in that one value, or nothing comes out.
"""

import re
import tomllib
from pathlib import Path
from typing import Any, NamedTuple

from benchmate.model.words import bad_character
from benchmate.store.document import key_text
from benchmate.store.files import PROJECT_FILE
from benchmate.store.problem import KeepError
from benchmate.store.toml_lines import Places

_MARK = "\ufeff"
"""The byte order mark that some editors put at the head of a file."""

_STRING = re.compile(r""""(?:\\.|[^"\\])*"|'[^']*'""")


class Reworded(NamedTuple):
    """A file's bytes with one value reworded, and the text that stood there."""

    data: bytes
    old: str


def tables_of_texts(data: bytes) -> dict[str, dict[str, str]]:
    """The texts of a well-formed file as they are written, by table and key."""
    found = tomllib.loads(_plain(_read(data)))
    return {
        table: {key: value for key, value in keys.items() if isinstance(value, str)}
        for table, keys in found.items()
        if isinstance(keys, dict)
    }


def reword(data: bytes, table: str, key: str, new: str) -> Reworded:
    """A well-formed file with another text for one key of one table.

    Raises KeepError if the key is not there, or its value stands in a way that cannot be reworded
    without touching anything else.
    """
    text = _read(data)
    before = tomllib.loads(_plain(text))
    old = _text_of(before, table, key)
    if bad_character(new) is not None:
        raise _refused(table, key, "cannot hold a control character", "type it without")
    after = _put(text, (table, key), new)
    if tomllib.loads(_plain(after)) != _with(before, table, key, new):
        raise _by_hand((table, key))
    return Reworded((_mark(data) + after).encode(), old)


def reword_head(data: bytes, key: str, new: str) -> bytes:
    """A well-formed file with another text for one key of its head, above every table.

    Raises KeepError as `reword` does.
    """
    text = _read(data)
    before = tomllib.loads(_plain(text))
    if bad_character(new) is not None:
        problem = f"{key} cannot hold a control character"
        raise KeepError(Path(PROJECT_FILE), problem, "type it without")
    after = _put(text, (key,), new)
    if tomllib.loads(_plain(after)) != {**before, key: new}:
        raise _by_hand((key,))
    return (_mark(data) + after).encode()


def _read(data: bytes) -> str:
    return data.decode("utf-8-sig")


def _mark(data: bytes) -> str:
    return _MARK if data.startswith(_MARK.encode()) else ""


def _plain(text: str) -> str:
    """The text with bare new lines, as `Places` counts them."""
    return text.replace("\r\n", "\n")


def _text_of(read: dict[str, Any], table: str, key: str) -> str:
    keys = read.get(table)
    if not isinstance(keys, dict) or key not in keys:
        raise _refused(table, key, "is not there", f"give it under [{table}] in your editor")
    value = keys[key]
    if not isinstance(value, str):
        raise _by_hand((table, key))
    return value


def _put(text: str, path: tuple[str, ...], new: str) -> str:
    """The text with only the token of one value replaced."""
    first = Places(_plain(text)).inside(path, 0)
    if first is None:
        raise _by_hand(path)
    place, start = first[0] - 1, first[1] - 1
    lines = text.split("\n")
    written = lines[place]
    found = _STRING.match(written, start)
    if found is None:
        raise _by_hand(path)
    lines[place] = written[:start] + _token(new, found[0][0]) + written[found.end() :]
    return "\n".join(lines)


def _token(text: str, quote: str) -> str:
    """A text in the quotes given if they can hold it, else in those that can hold any."""
    if quote == "'" and "'" not in text:
        return f"'{text}'"
    escaped = text.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{escaped}"'


def _with(read: dict[str, Any], table: str, key: str, new: str) -> dict[str, Any]:
    return {**read, table: {**read[table], key: new}}


def _by_hand(path: tuple[str, ...]) -> KeepError:
    problem = "is not written as one text in quotes on one line, so it cannot be changed from here"
    return KeepError(Path(PROJECT_FILE), f"{key_text(path)} {problem}", "change it in your editor")


def _refused(table: str, key: str, problem: str, remedy: str) -> KeepError:
    return KeepError(Path(PROJECT_FILE), f"{key_text((table, key))} {problem}", remedy)
