"""Where a place along the timber comes on the sheet: a scale that is broken where nothing is.

How it works
1. The places that matter cut the timber into stretches. Each stretch has a least width, so that
   figures beside its ends can be read; wood with nothing on it has a least width of its own.
2. What room is left is shared out in proportion to the true lengths, up to a true scale.
3. A bare stretch that comes out shorter than the scale across would have it carries a break mark.
   One that had to be drawn longer is stretched; the figures are what counts.
"""

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise

ROUNDS = 40
"""Halvings in the search for a share: far finer than a printer's dot."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """Places along the timber in nanometres, and where each comes, in millimetres of paper."""

    places: tuple[int, ...]
    papers: tuple[float, ...]
    breaks: tuple[float, ...]

    def at(self, along: int) -> float:
        """Where a place comes; one beyond either end comes at that end."""
        if along <= self.places[0]:
            return self.papers[0]
        if along >= self.places[-1]:
            return self.papers[-1]
        index = bisect_right(self.places, along) - 1
        low, high = self.places[index : index + 2]
        start, finish = self.papers[index : index + 2]
        return start + (finish - start) * (along - low) / (high - low)


def fitted(
    places: tuple[int, ...],
    least: tuple[float, ...],
    bare: tuple[bool, ...],
    *,
    true: float,
    left: float,
    width: float,
) -> Scale:
    """The scale of some places, in order, in a given width from `left`.

    `least` gives each stretch's least width, `bare` tells which have nothing on them, and `true` is
    the millimetres of paper to a nanometre. Where the least widths alone are too wide, all of them
    are narrowed alike.
    """
    lengths = [high - low for low, high in pairwise(places)]
    needed = sum(least)
    if needed >= width:
        widths = [each * width / needed for each in least]
    else:
        share = _share(lengths, least, true, width)
        widths = [max(low, length * share) for low, length in zip(least, lengths, strict=True)]
    papers = [left]
    for each in widths:
        papers.append(papers[-1] + each)
    return Scale(
        places=places,
        papers=tuple(papers),
        breaks=tuple(
            (start + finish) / 2
            for (start, finish), length, plain in zip(pairwise(papers), lengths, bare, strict=True)
            if plain and _LEAST_BREAK < finish - start < _SHORT * length * true
        ),
    )


_SHORT = 0.85
"""How much of its true width a stretch keeps before it is shown as broken."""

_LEAST_BREAK = 4.0
"""Millimetres that a stretch needs for a break mark to be seen in it."""


def _share(lengths: list[int], least: tuple[float, ...], true: float, width: float) -> float:
    """The largest millimetres to a nanometre, at most the true ones, that fit in a width."""
    low, high = 0.0, true

    def taken(share: float) -> float:
        pairs = zip(least, lengths, strict=True)
        return sum(max(each, length * share) for each, length in pairs)

    if taken(high) <= width:
        return high
    for _ in range(ROUNDS):
        middle = (low + high) / 2
        low, high = (middle, high) if taken(middle) <= width else (low, middle)
    return low


def spread(wished: tuple[float, ...], pitch: float, low: float, high: float) -> tuple[float, ...]:
    """Places at least a pitch apart, in the order wished and as near to the wishes as that leaves.

    They stay between two limits where these have room for all of them.
    """
    if not wished:
        return ()
    pitch = min(pitch, (high - low) / max(len(wished) - 1, 1))
    blocks: list[tuple[float, int]] = []
    for place, wish in enumerate(wished):
        total, count = wish - place * pitch, 1
        while blocks and blocks[-1][0] / blocks[-1][1] > total / count:
            before, held = blocks.pop()
            total, count = total + before, count + held
        blocks.append((total, count))
    even = [total / count for total, count in blocks for _ in range(count)]
    most = high - (len(wished) - 1) * pitch
    return tuple(min(max(each, low), most) + place * pitch for place, each in enumerate(even))
