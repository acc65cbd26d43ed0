"""Sayings set in lines, and how many of them are shown."""

from benchmate.tui.word_lines import (
    BESIDE,
    LABEL,
    WordLine,
    rows_whole,
    set_lines,
    told_whole,
)
from benchmate.tui.words import Saying

WIDTH = 20


def _lines(*texts: str) -> tuple[WordLine, ...]:
    return set_lines(tuple(Saying(label="why", text=text) for text in texts), WIDTH)


def test_labels_have_a_column_of_their_own() -> None:
    """Said once; what follows stands under the words."""
    first, second = _lines("measured from the arris")
    assert (first.label, first.text) == ("why    ", "measured from")
    assert (second.label, second.text) == (" " * LABEL, "the arris")
    assert second.cells == LABEL + len("the arris")


def test_a_title_has_the_whole_width() -> None:
    """It has no label to stand beside."""
    (title,) = set_lines((Saying(label="", text="Shoulder line, foot"),), WIDTH)
    assert (title.label, title.cells) == ("", len("Shoulder line, foot"))


def test_what_fits_is_shown_whole() -> None:
    """No row is taken to say that there is more."""
    assert rows_whole(_lines("one", "two"), WIDTH, 2) == 2
    assert rows_whole((), WIDTH, 0) == 0


def test_the_last_row_says_that_there_is_more_beside_short_words() -> None:
    """Or in their place, if they leave no room for it."""
    short = "x" * (WIDTH - LABEL - BESIDE)
    assert rows_whole(_lines("one", short, "three"), WIDTH, 2) == 2
    assert rows_whole(_lines("one", f"{short}x", "three"), WIDTH, 2) == 1
    assert rows_whole(_lines("one", "two"), WIDTH, 0) == 0


def test_strong_sayings_are_the_ones_that_are_needed() -> None:
    """Whatever comes after the last of them may be folded away."""
    needed = Saying(label="waste", text="Towards the foot, beyond it.", strong=True)
    reason = Saying(label="why", text="Because.")
    assert told_whole((needed, reason, reason), WIDTH, 4)
    assert told_whole((reason, reason), WIDTH, 1), "nothing is needed"
    assert not told_whole((reason, needed, reason), WIDTH, 3)
