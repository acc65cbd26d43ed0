"""Taking back what was done, where others have worked on the same files meanwhile."""

from pathlib import Path

import pytest

from benchmate.measure.reading import read_length
from benchmate.model.progress import AsCut, Measured
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.keeping import NotUndoneError


def as_cut(**sizes: str) -> Sizes:
    """A foot tenon's sizes as cut."""
    return Sizes(place="foot-tenon", measured=Measured(), as_cut=AsCut.model_validate(sizes))


def test_undo_leaves_a_name_changed_outside(bench: Bench, demo: Path) -> None:
    """An editor's text stays, the refusal says what it is, and the action before it is next."""
    bench.tick("post-nw", bench.walk("post-nw").layout.step("end/square"))
    bench.set_name("lengths", "deck", "1-1/2")
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('deck = "1-1/2"', 'deck = "1-3/4"'))
    with pytest.raises(NotUndoneError) as caught:
        bench.undo()
    assert str(caught.value) == "deck is 1-3/4 now, changed outside; not undone"
    assert 'deck = "1-3/4"' in path.read_text()
    assert bench.frame.levels.of("deck") == read_length("1-3/4")
    before = bench.undo()
    assert before is not None
    assert before.step == "end/square"


def test_undo_leaves_a_name_that_is_gone(bench: Bench, demo: Path) -> None:
    """A name that an editor has taken out is not put back."""
    bench.set_name("lengths", "bench top", "3' 3")
    path = demo / "project.toml"
    rest = (line for line in path.read_text().splitlines() if not line.startswith('"bench top"'))
    path.write_text("\n".join(rest).replace('= "bench top"', '= "3\' 3"') + "\n")
    with pytest.raises(NotUndoneError, match="bench top is gone, changed outside; not undone"):
        bench.undo()
    assert "bench top" not in path.read_text()


def test_undo_takes_a_name_back_beside_other_changes(bench: Bench, demo: Path) -> None:
    """What was changed outside elsewhere in the file does not stand in the way, and stays."""
    bench.set_name("lengths", "deck", "1-1/2")
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('reveal = "7"', 'reveal = "8"'))
    bench.undo()
    assert 'deck = "1-1/4"' in path.read_text()
    assert 'reveal = "8"' in path.read_text()


def test_undo_leaves_sizes_changed_outside(bench: Bench, demo: Path) -> None:
    """Sizes at that place that are no longer those that were set are left, and said."""
    bench.set_sizes("post-ne", "foot-tenon/as-cut", as_cut(width="5-1/4"))
    path = demo / "progress" / "post-ne.toml"
    path.write_text(path.read_text().replace("5-1/4", "5-3/8"))
    with pytest.raises(NotUndoneError) as caught:
        bench.undo()
    assert str(caught.value) == (
        "NE post, sizes at foot tenon: these are others now, changed outside; not undone"
    )
    bench.look()
    assert bench.walk("post-ne").progress.as_cut["foot-tenon"].width == read_length("5-3/8")
    assert bench.undo() is None


def test_what_was_done_names_its_timber(bench: Bench) -> None:
    """An undo may lead to another timber, so it says on which it was."""
    bench.tick("post-nw", bench.walk("post-nw").layout.step("end/square"))
    bench.set_sizes("post-se", "foot-tenon/as-cut", as_cut(width="5-1/4"))
    done = [bench.undo(), bench.undo()]
    assert [each.words for each in done if each] == [
        "SE post, sizes at foot tenon",
        "NW post, tick on Ends: square the foot",
    ]
