"""The look-up: words in any order over all of a project, forgiving of slips.

How it works
1. What can be found is taken in timber by timber, so that a screen can answer at once with what it
   has and take in the rest between keys.
2. Every word of an entry leads back to it. A typed word is held against each different word once,
   not against each entry, and what it found is kept while the next word is typed.
3. An answer holds every typed word: as it is, as a start, inside a word, or, where no entry holds
   it so, but for a slip.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from heapq import nlargest
from itertools import pairwise
from typing import NamedTuple

from benchmate.workbench.bench import Bench
from benchmate.workbench.find_entries import (
    Entry,
    Hit,
    name_entries,
    stock_entries,
    timber_entries,
    words_in,
)
from benchmate.workbench.slips import meant

EXACT, START, INSIDE, SLIP = 8, 4, 2, 1
"""What a typed word scores against a whole word, the start of one, the inside, one with a slip."""

LEAST_INSIDE = 3
"""Letters a typed word needs to count inside another: `ne` is a corner, not part of `line`."""

TITLE_WEIGHT = 2
"""A word found in what an entry is called counts this many times one found beside it."""

MOST = 50
"""Answers that are given."""

_Scores = dict[int, int]
"""The entries that hold a word, by their place, and what it scores there."""


class _Posts(NamedTuple):
    """The entries that have a word in their titles, and those that have it beside."""

    titles: list[int]
    others: list[int]


class Index:
    """What of a project can be looked up, as it stands now.

    Made with `whole`, it holds everything; otherwise the names and the timbers `first`, and `grow`
    takes in the others, one a call.
    """

    def __init__(self, bench: Bench, *, whole: bool = True, first: Iterable[str] = ()) -> None:
        self._entries: list[Entry] = []
        self._posts: defaultdict[str, _Posts] = defaultdict(lambda: _Posts([], []))
        self._scores: dict[str, _Scores] = {}
        self._ahead = _batches(bench, tuple(first))
        for _ in range(1 + len(set(first))):
            self.grow()
        while whole and self.grow():
            pass

    def grow(self) -> bool:
        """Take in the next timber; False once there is none."""
        batch = next(self._ahead, None)
        if batch is None:
            return False
        for entry in batch:
            self._take(entry)
        self._scores.clear()
        return True

    def find(self, words: str, most: int = MOST) -> tuple[Hit, ...]:
        """The answers that hold every word, best first; nothing for no words.

        Of equal ones that which has more typed neighbours side by side comes first, then that
        which is called by the words in the order typed, so that one joint is not taken for its
        mirror image, then the shorter title, then the order of the file.
        """
        typed = words_in(words)
        if not typed:
            return ()
        scores = self._held(typed)
        least = min(nlargest(most, scores.values()), default=0)
        ranked = sorted(
            (-score, *_standing(self._entries[place], typed), place)
            for place, score in scores.items()
            if score >= least
        )
        return tuple(self._entries[place].hit for *_, place in ranked[:most])

    def again(self, hit: Hit) -> Hit | None:
        """An answer of before as it stands now; None where it is there no more."""
        same = (hit.title, hit.timber, hit.step)
        return next(
            (
                each.hit
                for each in self._entries
                if (each.hit.title, each.hit.timber, each.hit.step) == same
            ),
            None,
        )

    def _take(self, entry: Entry) -> None:
        place = len(self._entries)
        self._entries.append(entry)
        for word in dict.fromkeys(entry.title_words):
            self._posts[word].titles.append(place)
        for word in dict.fromkeys(entry.other_words):
            self._posts[word].others.append(place)

    def _held(self, typed: tuple[str, ...]) -> _Scores:
        """The entries that hold every typed word, with what they score in all."""
        first, *rest = sorted(map(self._scored, typed), key=len)
        return {
            place: score + sum(other[place] for other in rest)
            for place, score in first.items()
            if all(place in other for other in rest)
        }

    def _scored(self, word: str) -> _Scores:
        if word not in self._scores:
            matches = [(score, each) for each in self._posts if (score := match(word, each))]
            if not matches:
                matches = [(SLIP, each) for each in self._posts if meant(word, each)]
            self._scores[word] = self._posted(matches)
        return self._scores[word]

    def _posted(self, matches: list[tuple[int, str]]) -> _Scores:
        """The entries that have one of some words: each with the best that it scores."""
        found: _Scores = {}
        for score, word in matches:
            titles, others = self._posts[word]
            for worth, places in ((TITLE_WEIGHT * score, titles), (score, others)):
                for place in places:
                    if found.get(place, 0) < worth:
                        found[place] = worth
        return found


def _batches(bench: Bench, first: tuple[str, ...]) -> Iterator[list[Entry]]:
    """The names, then timber by timber, those asked for first, then the stock they come of."""
    yield list(name_entries(bench))
    timbers = {timber.id: timber for timber in bench.timbers}
    order = dict.fromkeys((*(each for each in first if each in timbers), *timbers))
    for timber in order:
        yield list(timber_entries(bench, timbers[timber]))
    yield list(stock_entries(bench))


def _standing(entry: Entry, typed: tuple[str, ...]) -> tuple[int, bool, int, int]:
    """Which of two answers that score the same comes first."""
    title = entry.title_words
    return (-_side_by_side(typed, title), not _in_order(typed, title), len(title), entry.rank)


def _side_by_side(typed: tuple[str, ...], title: tuple[str, ...]) -> int:
    """How many typed neighbours are neighbours in a title too: `lap line` is no shoulder line."""
    pairs = tuple(pairwise(title))
    return sum(
        any(match(one, a) and match(other, b) for a, b in pairs) for one, other in pairwise(typed)
    )


def _in_order(typed: tuple[str, ...], title: tuple[str, ...]) -> bool:
    """Whether a title holds the typed words one after the other, whatever lies between them."""
    onward = iter(title)
    return all(any(match(word, found) for found in onward) for word in typed)


def match(word: str, found: str) -> int:
    """What a typed word scores against another; 0 where that does not hold it."""
    if word == found:
        return EXACT
    if found.startswith(word):
        return START
    return INSIDE if len(word) >= LEAST_INSIDE and word in found else 0
