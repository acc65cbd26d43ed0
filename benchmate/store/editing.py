"""Editing the file that a framer wrote: what changes is put in or taken out, the rest stays.

1. An edit is at a path, the way to a value: `("timber", 1, "at", "up")`. It works on a table
   however it is written: under a header, within braces, or with dotted keys.
2. Every other character stays: comments, order, spacing, the kind of quotes and of line ends. A
   table that goes takes the comments along that stand right beside it, and a key the one on its
   line.
3. What comes out is read again and compared: it differs in what was asked for, or nothing comes
   out. Whether it is a sound project is for `reading` to say.
"""

import tomllib
from collections.abc import Mapping, Sequence
from copy import deepcopy
from pathlib import Path as FilePath
from typing import Any

from benchmate.store import toml_lists
from benchmate.store.document import key_text
from benchmate.store.files import PROJECT_FILE
from benchmate.store.problem import KeepError
from benchmate.store.toml_layout import MARK, Layout
from benchmate.store.toml_lines import Pair, Path, last_key
from benchmate.store.toml_tokens import ends_like, entry_text, key_token, value_token

TABLES = ("shop", "lines", "lengths", "levels", "sections", "inner")
"""The tables of the head of a project file, in the order a new one takes its place among them."""

_MISSING = object()


class Draft:
    """A project file as it would be: its text, and what that says. Each edit gives another."""

    added: Path = ()
    """Where the entry stands that the last edit added."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.data = tomllib.loads(text.removeprefix(MARK).replace("\r\n", "\n"))

    @classmethod
    def of(cls, data: bytes) -> "Draft":
        """The draft of a well-formed file as it is."""
        return cls(data.decode())

    def value(self, path: Path) -> Any:  # noqa: ANN401 - whatever TOML holds
        """What stands at a path; None for nothing."""
        found = _at(self.data, path)
        return None if found is _MISSING else found

    def put(self, path: Path, value: object, order: Sequence[str] = ()) -> "Draft":
        """The draft with a value at a path, in place of what is there, or new.

        A new key comes after those that stand before it in `order`, or last in its table. Of a
        table or list only what differs is touched. Raises KeepError where that cannot be.
        """
        old = _at(self.data, path)
        if _same(old, value):
            return self
        if old is _MISSING and len(path) == 1 and isinstance(value, Mapping):
            return self._put_table(path, {}, value, order)
        if isinstance(old, dict) and isinstance(value, Mapping):
            return self._put_table(path, old, value, order)
        text = self._with(path, old, value, order)
        return self._checked(text, path, _put(self.data, path, value))

    def put_all(self, values: Mapping[Path, object]) -> "Draft":
        """The draft with other values for keys that are there. Raises KeepError as `put` does."""
        layout, text, data = Layout(self.text), self.text, deepcopy(self.data)
        for path in sorted(values, key=lambda each: -layout.items.get(each, (0, 0))[0]):
            if path not in layout.items:
                raise by_hand(path)
            start, end = layout.items[path]
            text = text[:start] + value_token(values[path], text[start:end]) + text[end:]
            _at(data, path[:-1])[path[-1]] = values[path]
        return self._checked(text, next(iter(values), ()), data)

    def rename(self, path: Path, key: str) -> "Draft":
        """The draft with another word for a key, in its place. Raises KeepError as `put` does."""
        pair = Layout(self.text).pairs.get(path)
        if pair is None or path[-1] == key:
            raise by_hand(path)
        start, end = last_key(self.text, pair)
        text = self.text[:start] + key_token(key) + self.text[end:]
        data = deepcopy(self.data)
        table = _at(data, path[:-1])
        renamed = {key if each == path[-1] else each: value for each, value in table.items()}
        table.clear()
        table.update(renamed)
        return self._checked(text, path, data)

    def drop(self, path: Path) -> "Draft":
        """The draft without what stands at a path. Raises KeepError where that cannot be."""
        if _at(self.data, path) is _MISSING:
            return self
        return self._checked(_without(self.text, path), path, _drop(self.data, path))

    def add(self, table: str, fields: Mapping[str, Any], after: Path | None) -> "Draft":
        """The draft with another entry in a list of tables, behind the entry at a path, or last.

        Raises KeepError where the list is written in another way.
        """
        layout = Layout(self.text)
        at = len(layout.text.rstrip()) if after is None else layout.entry_finish(after)
        text, start = _insert(self.text, at, entry_text(f"[[{table}]]", fields))
        before = [each for each in layout.headers if each.start < start]
        place = sum(each.path[:1] == (table,) and len(each.path) == 2 for each in before)  # noqa: PLR2004 - a table and a place
        data = deepcopy(self.data)
        data.setdefault(table, []).insert(place, dict(fields))
        draft = self._checked(text, (table, place), data)
        draft.added = (table, place)
        return draft

    def _put_table(
        self, path: Path, old: Mapping[str, Any], new: Mapping[str, Any], order: Sequence[str]
    ) -> "Draft":
        draft = self
        for key in old:
            if key not in new:
                draft = draft.drop((*path, key))
        for key, value in new.items():
            draft = draft.put((*path, key), value, order if path else ())
        return draft

    def _with(self, path: Path, old: object, value: object, order: Sequence[str]) -> str:
        """The text with one value written anew, or a new key."""
        layout = Layout(self.text)
        if old is _MISSING:
            return _added(self.text, layout, path, value, order)
        if path not in layout.items:
            raise by_hand(path)
        start, end = layout.items[path]
        if isinstance(old, list) and isinstance(value, Sequence) and not isinstance(value, str):
            return toml_lists.reworded(self.text, layout, path, old, value)
        token = value_token(value, self.text[start:end])
        return self.text[:start] + ends_like(token, self.text) + self.text[end:]

    def _checked(self, text: str, path: Path, expected: dict[str, Any]) -> "Draft":
        try:
            draft = Draft(text)
        except tomllib.TOMLDecodeError as error:
            raise by_hand(path) from error
        if not _same(_pruned(draft.data), _pruned(expected)):
            raise by_hand(path)
        return draft


def by_hand(path: Path) -> KeepError:
    """What to tell where something is written so that it cannot be edited from here."""
    problem = f"{key_text(path)} is written in a way that cannot be changed from here"
    return KeepError(FilePath(PROJECT_FILE), problem, "change it in your editor")


def _at(data: Any, path: Path) -> Any:  # noqa: ANN401 - whatever TOML holds
    for part in path:
        try:
            data = data[part]
        except (KeyError, IndexError, TypeError):
            return _MISSING
    return data


def _same(one: object, other: object) -> bool:
    """Whether two values are equal and of one type, as 1 and true are not."""
    if isinstance(one, Mapping) and isinstance(other, Mapping):
        return one.keys() == other.keys() and all(_same(one[key], other[key]) for key in one)
    if isinstance(one, list | tuple) and isinstance(other, list | tuple):
        return len(one) == len(other) and all(map(_same, one, other))
    return type(one) is type(other) and one == other


def _put(data: dict[str, Any], path: Path, value: object) -> dict[str, Any]:
    changed = deepcopy(data)
    table: Any = changed
    for part in path[:-1]:
        table = table.setdefault(part, {}) if isinstance(table, dict) else table[part]
    table[path[-1]] = value
    return changed


def _drop(data: dict[str, Any], path: Path) -> dict[str, Any]:
    changed = deepcopy(data)
    del _at(changed, path[:-1])[path[-1]]
    return changed


def _pruned(value: Any) -> Any:  # noqa: ANN401 - whatever TOML holds
    """The value without the tables and lists in it that hold nothing: they say nothing either."""
    if isinstance(value, Mapping):
        inner = {key: _pruned(each) for key, each in value.items()}
        return {key: each for key, each in inner.items() if each not in ({}, [])}
    return [_pruned(each) for each in value] if isinstance(value, list | tuple) else value


def _added(text: str, layout: Layout, path: Path, value: object, order: Sequence[str]) -> str:
    """The text with a new key in a table that is there, or with a new table."""
    base, key = path[:-1], str(path[-1])
    if base in layout.pairs:
        return _within_braces(text, layout, base, f"{key_token(key)} = {value_token(value)}", order)
    pairs = layout.own(base)
    if pairs or layout.header(base) is not None or not base:
        return _on_a_line(text, layout, path, value, order)
    dotted = [pair for pair in layout.pairs.values() if pair.path[: len(base)] == base]
    if dotted:
        last = dotted[-1]
        token = ".".join(key_token(str(part)) for part in path[len(last.base) :])
        return _line_after(text, layout, last, f"{token} = {value_token(value)}")
    if len(base) > 1:
        return _added(text, layout, base, {key: value}, ())
    return _new_table(text, layout, str(base[0]), {key: value})


def _before(pairs: Sequence[Pair], depth: int, key: str, order: Sequence[str]) -> Pair | None:
    """The last of the pairs that a new key is to come after; None to come first."""
    if key not in order:
        return pairs[-1] if pairs else None
    earlier = order[: order.index(key)]
    return next((pair for pair in reversed(pairs) if pair.path[depth] in earlier), None)


def _within_braces(text: str, layout: Layout, base: Path, token: str, order: Sequence[str]) -> str:
    pairs = layout.own(base)
    start, end = layout.items[base]
    if text[start] != "{":
        raise by_hand(base)
    if not pairs:
        return f"{text[:start]}{{ {token} }}{text[end:]}"
    key = token.partition(" = ")[0]
    before = _before(pairs, len(base), key, order)
    if before is None:
        return f"{text[: pairs[0].start]}{token}, {text[pairs[0].start :]}"
    return f"{text[: before.end]}, {token}{text[before.end :]}"


def _on_a_line(text: str, layout: Layout, path: Path, value: object, order: Sequence[str]) -> str:
    base, key = path[:-1], str(path[-1])
    pairs = layout.own(base)
    token = f"{key_token(key)} = {value_token(value)}"
    before = _before(pairs, len(base), key, order)
    if before is not None:
        return _line_after(text, layout, before, token)
    if pairs:
        start = layout.line_start(pairs[0].start)
        return text[:start] + ends_like(f"{token}\n", text) + text[start:]
    header = layout.header(base)
    if header is None:
        start = len(MARK) if text.startswith(MARK) else 0
        return text[:start] + ends_like(f"{token}\n", text) + text[start:]
    return _line_at(text, layout.line_end(header.start), token)


def _line_after(text: str, layout: Layout, pair: Pair, token: str) -> str:
    start = layout.line_start(pair.start)
    indent = text[start : pair.start].removeprefix(MARK)
    return _line_at(text, layout.line_end(pair.end), f"{indent}{token}")


def _line_at(text: str, at: int, line: str) -> str:
    """The text with a line put in where one starts, or behind a last one that does not end."""
    if at == len(text) and text and not text.endswith("\n"):
        return text + ends_like(f"\n{line}", text)
    return text[:at] + ends_like(f"{line}\n", text) + text[at:]


def _insert(text: str, at: int, block: str) -> tuple[str, int]:
    """The text with a table put in behind the line that ends at `at`, and where that starts."""
    if at:
        found = text.find("\n", at - 1)
        at = len(text) if found < 0 else found + 1
    if not text.strip(f"{MARK} \t\r\n"):
        return text + ends_like(f"{block}\n", text), len(text)
    if at == 0:
        return ends_like(f"{block}\n\n", text) + text, 0
    if not text[:at].endswith("\n"):
        return text + ends_like(f"\n\n{block}", text), at
    return text[:at] + ends_like(f"\n{block}\n", text) + text[at:], at


def _new_table(text: str, layout: Layout, table: str, fields: Mapping[str, Any]) -> str:
    """The text with a table of names or of practice put in, behind those that come before it."""
    earlier = TABLES[: TABLES.index(table)] if table in TABLES else TABLES
    before = [each.path for each in layout.headers if each.path[0] in earlier]
    at = layout.finish(before[-1] if before else ())
    return _insert(text, at, entry_text(f"[{key_token(table)}]", fields))[0]


def _without(text: str, path: Path) -> str:
    """The text without any line, or part of one, that says something at a path or below it."""
    layout = Layout(text)
    if path in layout.items and path not in layout.pairs:
        return toml_lists.without(text, layout, path)
    pair = layout.pairs.get(path)
    if pair is not None and pair.base in layout.pairs:
        return _out_of_braces(text, layout, pair)
    spans = [layout.section(each) for each in layout.headers if each.path[: len(path)] == path]
    heads = {each.path for each in layout.headers}
    for each in layout.pairs.values():
        written_here = each.base in heads or not each.base
        below = each.base[: len(path)] == path and bool(each.base)
        if each.path[: len(path)] == path and written_here and not below:
            spans.append((layout.line_start(each.start), layout.line_end(each.end)))
    for start, end in sorted(spans, reverse=True):
        text = _cut(text, start, end)
    return text


def _cut(text: str, start: int, end: int) -> str:
    """The text without some lines; a last line that did not end leaves none that does."""
    if start == 0 and text.startswith(MARK):
        start = len(MARK)
    kept = text[:start]
    if end == len(text) and not text.endswith("\n"):
        kept = kept.removesuffix("\n").removesuffix("\r")
    return kept + text[end:]


def _out_of_braces(text: str, layout: Layout, pair: Pair) -> str:
    beside = layout.own(pair.base)
    place = beside.index(pair)
    if place:
        return text[: beside[place - 1].end] + text[pair.end :]
    if len(beside) > 1:
        return text[: pair.start] + text[beside[1].start :]
    start, end = layout.items[pair.base]
    return f"{text[:start]}{{}}{text[end:]}"
