"""Writing another text for the whole project file, with progress that moves to other ids."""

from collections.abc import Callable
from pathlib import Path

import pytest

from benchmate.model.progress import Progress, Tick
from benchmate.store.keeper import Keeper
from benchmate.store.moving import Move
from benchmate.store.problem import KeepError, ProjectError
from tests.store.samples import AT, HEAD, JOINT, POST, SILL

Change = Callable[[Progress], Progress]

TEXT = HEAD + SILL + POST + JOINT


@pytest.fixture
def keeper(tmp_path: Path) -> Keeper:
    """A small project open for work, its post ticked once."""
    (tmp_path / "project.toml").write_text(TEXT)
    found = Keeper.open(tmp_path)
    found.keep("post-sw", ticked("foot-tenon/shoulder"))
    found.keep("south-sill", ticked("sw-foot-mortise/start"))
    return found


def ticked(step: str) -> Change:
    """The change that ticks one step."""

    def change(progress: Progress) -> Progress:
        return progress.model_copy(update={"ticks": (*progress.ticks, Tick(step=step, at=AT))})

    return change


def test_another_text_is_on_disk_at_once(keeper: Keeper) -> None:
    """And is the project from then on."""
    text = keeper.text().replace('"4"', '"3"')
    keeper.rewrite(lambda _: text)
    assert (keeper.folder / "project.toml").read_text() == keeper.text() == text
    assert not keeper.changed()


def test_a_text_that_is_no_sound_project_is_refused(keeper: Keeper) -> None:
    """All that is wrong with it is told, and the file stays."""
    with pytest.raises(ProjectError, match="south-sil"):
        keeper.rewrite(lambda text: text.replace('into = "south-sill"', 'into = "south-sil"'))
    assert (keeper.folder / "project.toml").read_text() == TEXT


def test_what_another_wrote_meanwhile_is_what_is_changed(keeper: Keeper) -> None:
    """Nothing moves where it is refused for that, nor where nothing changes."""
    path = keeper.folder / "project.toml"
    path.write_text(TEXT + "# by hand\n")
    moves = (Move("post-sw", "post", {}),)

    def refused(text: str) -> str:
        assert text.endswith("# by hand\n")
        raise KeepError(path, "it is another now", "look at it")

    with pytest.raises(KeepError, match="it is another now"):
        keeper.rewrite(refused, moves)
    keeper.rewrite(lambda text: text, moves)
    assert path.read_text() == TEXT + "# by hand\n"
    assert (keeper.folder / "progress/post-sw.toml").exists()


def test_progress_moves_with_the_ids(keeper: Keeper) -> None:
    """Every tick is there under the new ones, and nothing is left under the old."""
    text = TEXT.replace("post-sw", "post").replace("sw-foot", "foot")
    keeper.rewrite(
        lambda _: text,
        (
            Move("post-sw", "post", {}),
            Move("south-sill", "south-sill", {"sw-foot-mortise": "foot-mortise"}),
        ),
    )
    assert keeper.strays() == ()
    assert keeper.progress("post").tick("foot-tenon/shoulder")
    assert keeper.progress("south-sill").tick("foot-mortise/start")
    again = Keeper.read(keeper.folder)
    assert again.progress("post") == keeper.progress("post")


def test_two_that_change_places_keep_their_own(keeper: Keeper) -> None:
    """Neither is written over the other."""
    halfway = TEXT.replace("post-sw", "x").replace("south-sill", "post-sw")
    swapped = halfway.replace('"x"', '"south-sill"')
    keeper.rewrite(
        lambda _: swapped, (Move("post-sw", "south-sill", {}), Move("south-sill", "post-sw", {}))
    )
    assert keeper.progress("south-sill").tick("foot-tenon/shoulder")
    assert keeper.progress("post-sw").tick("sw-foot-mortise/start")
    names = sorted(path.name for path in (keeper.folder / "progress").iterdir())
    assert names == ["post-sw.toml", "south-sill.toml"]


def test_a_reader_writes_nothing(tmp_path: Path) -> None:
    """It says why."""
    (tmp_path / "project.toml").write_text(TEXT)
    reader = Keeper.read(tmp_path)
    with pytest.raises(KeepError, match="opened only to be read"):
        reader.rewrite(lambda text: text.replace('"4"', '"3"'))
    assert (tmp_path / "project.toml").read_text() == TEXT
