"""The look-up."""

from dataclasses import replace
from pathlib import Path

import pytest

from benchmate.measure.reading import read_length
from benchmate.store.keeper import Keeper
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


ORCHARD = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"


@pytest.fixture(scope="module")
def orchard() -> Index:
    """Everything of a whole frame, in which many joints are called by the same words."""
    return Index(Bench(Keeper.read(ORCHARD)))


@pytest.mark.parametrize("name", ["girder", "east joist 3", "West joist 1"])
def test_a_timber_typed_by_its_whole_name_comes_first(orchard: Index, name: str) -> None:
    """Before its own steps, and before the timbers that it meets."""
    first = orchard.find(name)[0]
    assert first.title.casefold() == name.casefold()
    assert first.step == ""


def test_words_in_the_order_of_the_title_come_before_its_mirror_image(orchard: Index) -> None:
    """East joist 3's west end and West joist 3's east end hold the same words."""
    east = orchard.find("east joist 3 west bearing")
    assert east[0].title.startswith("East joist 3: west end bearing")
    west = orchard.find("west joist 3 east bearing")
    assert west[0].title.startswith("West joist 3: east end bearing")


def test_of_equal_answers_the_shorter_title_comes_first(orchard: Index) -> None:
    """A title that says little else is more likely the one meant."""
    words = [len(hit.title.split()) for hit in orchard.find("girder")]
    assert words[0] == 1
    assert words[0] < words[1]


def test_equal_titles_stay_in_the_order_of_the_file(orchard: Index) -> None:
    """Like timbers are given as the project lists them."""
    posts = [hit.title for hit in orchard.find("post", most=300) if not hit.step and hit.timber]
    assert posts[:2] == ["SW post", "SE post"]


def test_an_index_grows_timber_by_timber(bench: Bench) -> None:
    """What is asked for first is in at once, and in the end all that a whole one holds."""
    growing = Index(bench, whole=False, first=["post-ne"])
    assert growing.find("ne post foot shoulder")[0].timber == "post-ne"
    assert all(hit.timber in ("post-ne", "") for hit in growing.find("shoulder"))
    steps = 0
    while growing.grow():
        steps += 1
    assert steps == len(bench.timbers)
    whole = Index(bench)
    for words in ("se post", "depth", "stock", "sill south ne"):
        assert set(growing.find(words, most=1000)) == set(whole.find(words, most=1000))


def test_an_answer_of_before_is_given_as_it_stands_now(bench: Bench) -> None:
    """And none for what is gone."""
    index = Index(bench)
    hit = index.find("se post relief")[0]
    assert index.again(replace(hit, value=None, detail="as it was")) == hit
    assert index.again(replace(hit, title="what is gone")) is None
