from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.model.progress import AsCut, Measured, Progress, Tick
from benchmate.store.moving import ASIDE, Move, check_room, moved, put_aside, take_away
from benchmate.store.problem import KeepError
from tests.store.samples import AT

SIZE = Length.inches(7)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A project folder with the progress of two timbers."""
    (tmp_path / "progress").mkdir()
    for timber in ("a", "b"):
        (tmp_path / f"progress/{timber}.toml").write_text(timber)
    return tmp_path


def test_every_tick_and_size_goes_along() -> None:
    """Under the new id, and under what the parts of joints are called then."""
    progress = Progress(
        timber="sill",
        ticks=(Tick(step="se-foot-mortise/start", at=AT), Tick(step="end/square", at=AT)),
        measured={"se-foot-mortise": Measured(first=SIZE), "middle": Measured(second=SIZE)},
        as_cut={"se-foot-mortise": AsCut(width=SIZE)},
    )
    move = Move("sill", "sill-1", {"se-foot-mortise": "foot-mortise"})
    after = moved(progress, move)
    assert after.timber == "sill-1"
    assert [tick.step for tick in after.ticks] == ["foot-mortise/start", "end/square"]
    assert set(after.measured) == {"foot-mortise", "middle"}
    assert after.as_cut == {"foot-mortise": AsCut(width=SIZE)}
    assert moved(after, move.back()) == progress


def test_a_file_that_is_kept_already_is_not_written_over(folder: Path) -> None:
    """Unless it is one of those that move."""
    check_room(folder, [Move("a", "b", {}), Move("b", "a", {})])
    with pytest.raises(KeepError, match="is kept already, for a timber that the project has not"):
        check_room(folder, [Move("a", "b", {})])


def test_what_is_put_aside_can_be_put_back_or_taken_away(folder: Path) -> None:
    """In between it lies under a name that no timber has."""
    back = put_aside(folder, ["a", "c"])
    assert not (folder / "progress/a.toml").exists()
    assert (folder / f"progress/a{ASIDE}.toml").read_text() == "a"
    back()
    assert (folder / "progress/a.toml").read_text() == "a"
    put_aside(folder, ["a"])
    take_away(folder, ["a", "c"])
    assert sorted(path.name for path in (folder / "progress").iterdir()) == ["b.toml"]


def test_one_that_cannot_be_put_aside_leaves_all_as_they_were(folder: Path) -> None:
    """Nothing is half moved."""
    (folder / f"progress/b{ASIDE}.toml").mkdir()
    (folder / f"progress/b{ASIDE}.toml/x").touch()
    with pytest.raises(KeepError):
        put_aside(folder, ["a", "b"])
    assert (folder / "progress/a.toml").read_text() == "a"
    with pytest.raises(KeepError):
        take_away(folder, ["b"])
