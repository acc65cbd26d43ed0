"""What a look-up can find."""

from pathlib import Path

import pytest

from benchmate.measure.reading import read_length
from benchmate.store.keeper import Keeper
from benchmate.workbench.bench import Bench
from benchmate.workbench.find import Index
from benchmate.workbench.find_entries import stock_entries, timber_entries, words_in

ORCHARD = Path(__file__).parents[2] / "projects" / "orchard-tool-shed"


@pytest.fixture(scope="module")
def shed() -> Bench:
    """A whole frame."""
    return Bench(Keeper.read(ORCHARD))


def test_words_are_taken_without_capitals_and_a_fraction_is_one() -> None:
    """So that `1/2` is no 1 and no 2."""
    assert words_in("SE post: 3-1/2 deep, EAST") == ("se", "post", "3", "1/2", "deep", "east")


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("west tie overall", "9' 1"),
        ("west tie length shoulder to shoulder", "8' 5"),
        ("west tie mortise length se", None),
        ("se post foot tenon thickness", "1-3/4"),
    ],
)
def test_lengths_and_the_sizes_of_joints_are_found(
    shed: Bench, words: str, value: str | None
) -> None:
    """Overall and shoulder to shoulder are two lengths, and each answers to its own name."""
    hits = Index(shed).find(words)
    if value is None:
        assert hits == ()
    else:
        assert hits[0].value == read_length(value)


def test_a_figure_beside_a_mark_is_an_answer_of_its_own(shed: Bench) -> None:
    """The width of a mortise is asked for as often as where it starts."""
    hit = Index(shed).find("south sill sw post mortise width")[0]
    assert hit.value == read_length("1-3/4")
    assert hit.timber == "sill-south"
    assert shed.walk(hit.timber).layout.step(hit.step).line is not None


def test_every_joint_of_a_timber_is_found_by_its_name(shed: Bench) -> None:
    """And goes to the first of its steps."""
    for timber in shed.timbers:
        walk = shed.walk(timber.id)
        found = {entry.hit.title: entry.hit.step for entry in timber_entries(shed, timber)}
        for feature in (each for each in walk.layout.features if each.joint):
            title = f"{timber.name}: {feature.title[0].lower()}{feature.title[1:]}"
            assert walk.layout.step(found[title]).feature == feature.id


def test_timbers_of_one_section_and_wood_are_one_stock(shed: Bench) -> None:
    """How many there are and how long in all: every timber in one of them and none in two."""
    hits = [entry.hit for entry in stock_entries(shed)]
    lengths = [hit.value for hit in hits if hit.value is not None]
    overall = [shed.frame.stick(timber.id).overall for timber in shed.timbers]
    assert sum(each.nm for each in lengths) == sum(each.nm for each in overall)
    assert sum(hit.detail.count(",") for hit in hits) == len(shed.timbers)
    assert Index(shed).find("stock oak")[0].title.startswith("Stock: ")


def test_no_answer_gives_a_figure_that_is_withheld(tmp_path: Path) -> None:
    """Neither a size, nor a length, nor what stands beside a mark."""
    project = (ORCHARD / "project.toml").read_text("utf-8")
    (tmp_path / "project.toml").write_text(project, "utf-8")
    progress = tmp_path / "progress"
    progress.mkdir()
    (progress / "post-sw.toml").write_text("broken", "utf-8")
    bench = Bench(Keeper.read(tmp_path))
    timber = next(each for each in bench.timbers if each.id == "post-sw")
    assert bench.walk(timber.id).trouble
    assert {entry.hit.value for entry in timber_entries(bench, timber)} == {None}


def test_a_size_that_was_measured_as_cut_is_told_as_cut() -> None:
    """The SW post's foot tenon came out narrow; what it was laid out as is told beside it."""
    bench = Bench(Keeper.read(ORCHARD))
    cut = bench.walk("post-sw").layout.stick.as_cut["foot-tenon"].width
    hit = Index(bench).find("sw post foot tenon width")[0]
    assert hit.value == cut
    assert hit.detail.startswith("as cut; laid out as ")
    other = Index(bench).find("ne post foot tenon width")[0]
    assert other.detail == "as laid out; not measured as cut yet"
