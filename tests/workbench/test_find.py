"""The look-up."""

import pytest

from benchmate.measure.reading import read_length
from benchmate.workbench.bench import Bench
from benchmate.workbench.find import Index


@pytest.mark.parametrize(
    ("words", "timber", "step"),
    [
        ("se post relief", "post-se", "foot-tenon/reference-edge"),
        ("relief se", "post-se", "foot-tenon/reference-edge"),
        ("se head shoulder", "post-se", "head-tenon/shoulder"),
        ("south sill", "sill-south", ""),
        ("north sill depth ne", "sill-north", "ne-foot-mortise/depth"),
        ("NW POST", "post-nw", ""),
    ],
)
def test_words_in_any_order_find_the_mark(bench: Bench, words: str, timber: str, step: str) -> None:
    """The first answer is the one meant."""
    hit = Index(bench).find(words)[0]
    assert (hit.timber, hit.step) == (timber, step)


@pytest.mark.parametrize(
    ("words", "value"),
    [("floor top", "4-3/4"), ("joist depth", "5-1/2"), ("overhang", "1' 2")],
)
def test_levels_lengths_and_sections_are_found(bench: Bench, words: str, value: str) -> None:
    """Names of the project answer with what they come to."""
    assert Index(bench).find(words)[0].value == read_length(value)


def test_every_word_counts(bench: Bench) -> None:
    """An entry that lacks one of the words is no answer, and no words find nothing."""
    index = Index(bench)
    assert index.find("se post zebra") == ()
    assert index.find("  ,. ") == ()


def test_a_figure_not_fit_to_cut_to_is_not_given(bench: Bench) -> None:
    """A look-up withholds what the screen withholds."""
    (bench.folder / "progress" / "post-sw.toml").write_text("broken")
    bench.look()
    hits = [hit for hit in Index(bench).find("sw shoulder") if hit.step]
    assert hits
    assert all(hit.value is None for hit in hits if hit.timber == "post-sw")
