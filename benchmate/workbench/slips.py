"""Slips of the finger: whether a word was meant, though a letter of it is wrong."""

LEAST_LETTERS = 4
"""Letters a typed word needs before a slip in it is looked past: `nw` is not `ne`."""

LONG_WORD = 8
"""Letters from which two slips in one word are looked past."""


def meant(typed: str, word: str) -> bool:
    """Whether a typed word is another one, or the start of it, but for a slip or two.

    A slip is a letter left out, put in, mistaken, or two neighbours the wrong way round. The first
    letter has to be right: fingers slip least there, and it keeps strangers out.
    """
    if len(typed) < LEAST_LETTERS or typed[:1] != word[:1] or any(map(str.isdigit, typed)):
        return False
    most = 2 if len(typed) >= LONG_WORD else 1
    starts = {word[: len(typed) + more] for more in range(-most, most + 1)}
    return any(slips(typed, start) <= most for start in starts if start)


def slips(one: str, other: str) -> int:
    """The fewest letters to leave out, put in, mistake or swap with a neighbour between two words.

    Known as the optimal string alignment distance.
    """
    before: list[int] = []
    last = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        row = [i]
        for j, wanted in enumerate(other, 1):
            least = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (letter != wanted))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == wanted:
                least = min(least, before[j - 2] + 1)
            row.append(least)
        before, last = last, row
    return last[-1]
