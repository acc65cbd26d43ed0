"""What differs between two texts, line by line, and putting it back or in again.

1. A piece holds the lines that differ with up to three that stay above and below, so that it is
   found again where others have added or taken lines elsewhere meanwhile.
2. It is found at one place or not at all: where lines like its own stand several times, only the
   place it is expected at will do.
3. A side without lines of its own is known by the lines above and below alone. Where the file
   began or ended there, so that they are few, it still has to.
4. Lines are split behind bare new lines, so that whatever else ends a line comes back as it was.
"""

import re
from collections.abc import Iterator, Sequence
from difflib import SequenceMatcher
from typing import NamedTuple

from benchmate.model.journal import Piece

_CONTEXT = 3
"""Lines kept above and below a piece: as many as make it plain which of several like places."""

_MOST_COMPARED = 4_000
"""Lines of both texts up to which they are compared: the time goes with the square of it."""


def pieces_between(before: str, after: str) -> tuple[Piece, ...]:
    """The pieces in which two texts differ, from the top."""
    old, new = _lines(before), _lines(after)
    return tuple(_piece(old, new, span) for span in _spans(old, new))


def turned_text(text: str, pieces: Sequence[Piece], *, back: bool) -> str | None:
    """The text with every piece put in, or with `back` put back as it was.

    The text itself where all of that is done already, and None where it is neither.
    """
    lines = _lines(text)
    places = _find(lines, pieces, now=back)
    if places is None:
        return text if _find(lines, pieces, now=not back) is not None else None
    for piece, start in zip(reversed(pieces), reversed(places), strict=True):
        lines[start : start + len(_side(piece, now=back))] = _side(piece, now=not back)
    return "".join(lines)


def _lines(text: str) -> list[str]:
    return re.findall(r"[^\n]*\n|[^\n]+", text)


class _Span(NamedTuple):
    """Where a piece lies in the old lines and in the new ones, without the lines that stay."""

    old: slice
    new: slice


def _spans(old: list[str], new: list[str]) -> Iterator[_Span]:
    """The spans that differ; those with few lines between them are one."""
    head = _alike(old, new)
    tail = _alike(old[head:][::-1], new[head:][::-1])
    inner_old, inner_new = old[head : len(old) - tail], new[head : len(new) - tail]
    if len(inner_old) + len(inner_new) > _MOST_COMPARED:
        yield _Span(slice(head, len(old) - tail), slice(head, len(new) - tail))
        return
    matcher = SequenceMatcher(a=inner_old, b=inner_new, autojunk=False)
    for group in matcher.get_grouped_opcodes(_CONTEXT):
        changed = [code for code in group if code[0] != "equal"]
        (_, old_from, _, new_from, _), (_, _, old_to, _, new_to) = changed[0], changed[-1]
        yield _Span(
            slice(head + old_from, head + old_to),
            slice(head + new_from, head + new_to),
        )


def _alike(old: list[str], new: list[str]) -> int:
    """How many lines two texts have in common from their start."""
    pairs = enumerate(zip(old, new, strict=False))
    return next((place for place, (one, other) in pairs if one != other), min(len(old), len(new)))


def _piece(old: list[str], new: list[str], span: _Span) -> Piece:
    return Piece(
        line=span.old.start + 1,
        above=tuple(old[max(span.old.start - _CONTEXT, 0) : span.old.start]),
        was=tuple(old[span.old]),
        now=tuple(new[span.new]),
        below=tuple(old[span.old.stop : span.old.stop + _CONTEXT]),
    )


def _side(piece: Piece, *, now: bool) -> tuple[str, ...]:
    return piece.now if now else piece.was


def _find(lines: list[str], pieces: Sequence[Piece], *, now: bool) -> list[int] | None:
    """Where each piece starts in the lines as they stand on one side of it; None if one does not.

    `drift` is how far the pieces above have been found from where they were.
    """
    found: list[int] = []
    drift = start = 0
    for piece in pieces:
        sought = (*piece.above, *_side(piece, now=now), *piece.below)
        expected = piece.line - 1 - len(piece.above) + drift
        place = _place_of(sought, lines, start, expected)
        if place is None or not (_side(piece, now=now) or _at_ends(piece, lines, place)):
            return None
        found.append(place + len(piece.above))
        start = found[-1] + len(_side(piece, now=now))
        drift += place - expected + len(_side(piece, now=now)) - len(piece.was)
    return found


def _at_ends(piece: Piece, lines: list[str], place: int) -> bool:
    """Whether lines found at a place begin and end the file where a piece did."""
    begins = len(piece.above) == _CONTEXT or place == 0
    end = place + len(piece.above) + len(piece.below)
    return begins and (len(piece.below) == _CONTEXT or end == len(lines))


def _place_of(sought: Sequence[str], lines: list[str], start: int, expected: int) -> int | None:
    """The one place from `start` on where lines stand; of several, the one expected."""
    last = len(lines) - len(sought)
    places = [
        place
        for place in range(start, last + 1)
        if lines[place : place + len(sought)] == list(sought)
    ]
    if len(places) == 1:
        return places[0]
    return expected if expected in places else None
