"""Rewording a list of a framer's own file item by item, so that the comments within it stay."""

from collections.abc import Sequence

from benchmate.store.toml_layout import Layout
from benchmate.store.toml_lines import Path
from benchmate.store.toml_tokens import ends_like, value_token

_Span = tuple[int, int]


def reworded(
    text: str, layout: Layout, path: Path, old: Sequence[object], new: Sequence[object]
) -> str:
    """The text with another list at a path: only the items that differ are touched."""
    start, end = layout.items[path]
    if not new or not old:
        return text[:start] + value_token(list(new)) + text[end:]
    same = _alike(old, new)
    behind = _alike(old[same:][::-1], new[same:][::-1])
    was, now = old[same : len(old) - behind], new[same : len(new) - behind]
    spans = [layout.items[*path, place] for place in range(len(old))]
    kept = min(len(was), len(now))
    text = _cut(text, spans, same + kept, same + len(was))
    text = _more(text, layout, spans, same + kept, now[kept:])
    for place in reversed(range(same, same + kept)):
        first, last = spans[place]
        text = text[:first] + value_token(new[place], text[first:last]) + text[last:]
    return text


def without(text: str, layout: Layout, path: Path) -> str:
    """The text without one item of a list."""
    *lead, place = path
    spans, at = [], 0
    while (*lead, at) in layout.items:
        spans.append(layout.items[*lead, at])
        at += 1
    return _cut(text, spans, int(place), int(place) + 1)


def _alike(one: Sequence[object], other: Sequence[object]) -> int:
    """How many items two lists begin with alike."""
    pairs = zip(one, other, strict=False)
    return next((place for place, (a, b) in enumerate(pairs) if a != b), min(len(one), len(other)))


def _more(
    text: str, layout: Layout, spans: Sequence[_Span], place: int, items: Sequence[object]
) -> str:
    """The text with items put in at a place; on lines of their own where their neighbours are."""
    if not items:
        return text
    tokens = [value_token(item) for item in items]
    beside = spans[max(place - 1, 0)]
    line = layout.line_start(beside[0])
    alone = not text[line : beside[0]].strip()
    gap = ends_like(f",\n{text[line : beside[0]]}", text) if alone else ", "
    if place:
        return text[: beside[1]] + "".join(f"{gap}{each}" for each in tokens) + text[beside[1] :]
    return text[: beside[0]] + "".join(f"{each}{gap}" for each in tokens) + text[beside[0] :]


def _cut(text: str, spans: Sequence[_Span], first: int, stop: int) -> str:
    """The text without a run of items and one comma beside it; a comment before it stays."""
    if first == stop:
        return text
    start, end = spans[first][0], spans[stop - 1][1]
    if first and "#" not in text[spans[first - 1][1] : start]:
        return text[: spans[first - 1][1]] + text[end:]
    if stop < len(spans) and "#" not in text[end : spans[stop][0]]:
        return text[:start] + text[spans[stop][0] :]
    comma = text.find(",", end)
    only_blanks = comma >= 0 and not text[end:comma].strip()
    return text[:start] + text[comma + 1 if only_blanks else end :]
