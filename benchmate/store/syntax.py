"""Bytes to a document, or the one thing that keeps them from being TOML at all."""

import re
import tomllib

from benchmate.store.document import Document
from benchmate.store.excerpt import excerpt
from benchmate.store.problem import Problem, ProjectError
from benchmate.store.toml_lines import Places

_AT = re.compile(r" \(at line (\d+), column (\d+)\)$")

_QUOTES = 'write lengths and words in quotes, as "4-3/4", and an inch mark inside them as \\"'

_SYNTAX = (
    ("Expected '='", "a key without a value", 'write key = value, as length = "8"'),
    ("Unterminated string", "a text that does not end", "close its quotes"),
    ('Expected "\'"', "a text that does not end", "close its quotes"),
    ("Unclosed array", "a list that does not end", "close it with ]"),
    ("Unclosed inline table", "a table that does not end", "close it with }"),
    ("Cannot overwrite", "a key that is given twice", "keep one of them"),
    ("Duplicate inline", "a key that is given twice", "keep one of them"),
    ("Cannot declare", "a table that is given twice", "keep one, or write [[name]] for a list"),
    ("Cannot mutate", "a table that is given twice", "keep one of them"),
    ("Cannot redefine", "a table that is given twice", "keep one of them"),
    ("Expected newline", "something after the end of a value", _QUOTES),
    ("Invalid value", "a value that cannot be read", _QUOTES),
    ("Unescaped '\\'", "a backslash that stands for nothing", "write two of them, or none"),
    ("Illegal character '\\n'", "a text that does not end", "close its quotes on the same line"),
    ("Illegal character", "a character that may not stand here", "remove it"),
    ("Expected ']", "a heading that does not end", "write [name] or [[name]]"),
    ("Invalid hex", "a backslash that stands for nothing", "write two of them, or none"),
    ("Escaped character", "a backslash that stands for nothing", "write two of them, or none"),
    ("Found invalid", "a character that may not stand here", "remove it"),
    ("Invalid date", "a day or time that is not in the calendar", "correct it"),
    ("Invalid initial character", "a key without a name", "write key = value"),
)
"""How `tomllib` begins what it says, what that means, and what to do."""


_OTHER = ("", "something that is not TOML", "write key = value, [name] or [[name]]")


def read_document(file: str, data: bytes) -> Document:
    """The document that a file's bytes make; ProjectError if they are not well-formed TOML."""
    text = _decoded(file, data).replace("\r\n", "\n")
    try:
        return Document(file, tomllib.loads(text), Places(text))
    except tomllib.TOMLDecodeError as error:
        raise _malformed(file, text, str(error)) from None
    except RecursionError:
        raise _whole(file, "holds lists within lists, too deep to be read") from None
    except ValueError:
        raise _whole(file, "holds a number too long to be read") from None


def _decoded(file: str, data: bytes) -> str:
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        before = data[: error.start].decode("utf-8-sig", "replace")
        line = before.rpartition("\n")[2] + "\N{REPLACEMENT CHARACTER}"
        problem = Problem(
            file=file,
            line=before.count("\n") + 1,
            key="",
            excerpt=excerpt(line, len(line) - 1),
            message="is not UTF-8 text from here on",
            remedy="save it as UTF-8 in your editor",
        )
        raise ProjectError((problem,)) from None


def _malformed(file: str, text: str, said: str) -> ProjectError:
    lines = text.split("\n")
    found = _AT.search(said)
    line, column = (int(found[1]), int(found[2]) - 1) if found else _end(lines)
    known = (entry for entry in _SYNTAX if said.startswith(entry[0]))
    _, message, remedy = next(known, _OTHER)
    problem = Problem(
        file=file,
        line=line,
        key="",
        excerpt=excerpt(lines[line - 1], column),
        message=message,
        remedy=remedy,
    )
    return ProjectError((problem,))


def _end(lines: list[str]) -> tuple[int, int]:
    """The line and column after the last thing written."""
    last = max((line for line, text in enumerate(lines, 1) if text.strip()), default=1)
    return last, len(lines[last - 1].rstrip())


def _whole(file: str, message: str) -> ProjectError:
    problem = Problem(
        file=file, line=None, key="", excerpt="", message=message, remedy="take it out"
    )
    return ProjectError((problem,))
