"""Undo and redo across restarts, beside other programs, and when the disk or the program fails."""

import errno
import os
import shutil
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import pytest

from benchmate.measure.reading import read_length
from benchmate.model.progress import AsCut, Measured
from benchmate.store.journal import JOURNAL_FILE, Journal
from benchmate.store.keeper import Keeper
from benchmate.workbench.actions import Sizes
from benchmate.workbench.bench import Bench
from benchmate.workbench.keeping import BadProjectError, NotKeptError, NotUndoneError
from tests.store.faults import Crash, Disk, failing

SQUARE = "end/square"
WIDTH = Sizes(
    place="foot-tenon",
    measured=Measured(),
    as_cut=AsCut.model_validate({"width": "5-1/4"}),
)


def tick(bench: Bench, timber: str, step: str) -> None:
    """Tick a step by its id."""
    bench.tick(timber, bench.walk(timber).layout.step(step))


def ticked(bench: Bench, timber: str, step: str) -> bool:
    """Whether a step has a tick."""
    return bench.walk(timber).progress.tick(step) is not None


def again(bench: Bench, clock: Callable[[], datetime]) -> Bench:
    """The same project after the program was closed and started anew."""
    bench.close()
    return Bench(Keeper.open(bench.folder), clock)


def words(bench: Bench, *, back: bool = True) -> str:
    """Undo, or redo, and what that was in words."""
    done = bench.undo() if back else bench.redo()
    assert done is not None
    return done.words


def files(folder: Path) -> dict[str, bytes]:
    """The project file and every progress file, byte for byte."""
    return {path.name: path.read_bytes() for path in folder.rglob("*.toml")}


def test_undo_and_redo_after_a_restart(bench: Bench, clock: Callable[[], datetime]) -> None:
    """Ticks, sizes and names, back to the first and on to the last, each by its words."""
    before = files(bench.folder)
    bench.tick("post-se", bench.walk("post-se").steps[8])
    bench.untick("post-se", bench.walk("post-se").layout.step(SQUARE))
    bench.set_sizes("post-se", "foot-tenon/as-cut", WIDTH)
    bench.set_name("lengths", "deck", "1-1/2", timber="post-sw", step=SQUARE)
    after = files(bench.folder)
    said = [
        "deck written as 1-1/2",
        "SE post, sizes at foot tenon",
        "SE post, tick taken off Ends: square the foot",
        "SE post, tick on Foot tenon: far cheek line",
    ]
    bench = again(bench, clock)
    assert [words(bench) for _ in said] == said
    assert bench.undo() is None
    assert files(bench.folder) == before
    bench = again(bench, clock)
    assert [words(bench, back=False) for _ in said] == said[::-1]
    assert bench.redo() is None
    assert files(bench.folder) == after
    bench.close()


def test_two_hundred_actions_can_be_undone_after_a_restart(
    bench: Bench, clock: Callable[[], datetime]
) -> None:
    """What is promised, and the file is as it was before all of them."""
    tick(bench, "post-se", SQUARE)
    before = files(bench.folder)
    step = bench.walk("post-se").layout.step(SQUARE)
    for _ in range(100):
        bench.untick("post-se", step)
        bench.tick("post-se", step)
    bench = again(bench, clock)
    for _ in range(200):
        assert bench.undo() is not None
    assert files(bench.folder) == before
    bench.close()


def test_something_new_takes_the_place_of_what_could_be_done_again(bench: Bench) -> None:
    """As everywhere else."""
    tick(bench, "post-nw", SQUARE)
    bench.undo()
    tick(bench, "post-ne", SQUARE)
    assert bench.redo() is None
    assert words(bench) == "NE post, tick on Ends: square the foot"


def test_redo_leaves_what_was_changed_outside(bench: Bench, demo: Path) -> None:
    """The refusal says what it is now, and the action after it is next."""
    bench.set_name("lengths", "deck", "1-1/2")
    bench.set_sizes("post-ne", "foot-tenon/as-cut", WIDTH)
    tick(bench, "post-nw", SQUARE)
    for _ in range(3):
        bench.undo()
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('deck = "1-1/4"', 'deck = "1-3/4"'))
    (demo / "progress/post-ne.toml").write_text(
        'format = 1\ntimber = "post-ne"\n\n[as_cut.foot-tenon]\nwidth = "5 in"\n'
    )
    with pytest.raises(NotUndoneError) as caught:
        bench.redo()
    assert str(caught.value) == "deck is 1-3/4 now, changed outside; not done again"
    with pytest.raises(NotUndoneError) as caught:
        bench.redo()
    assert str(caught.value) == (
        "NE post, sizes at foot tenon: these are others now, changed outside; not done again"
    )
    assert words(bench, back=False) == "NW post, tick on Ends: square the foot"
    assert bench.redo() is None
    assert 'deck = "1-3/4"' in path.read_text()


def test_undo_leaves_a_tick_made_anew_outside(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """Another tick on the step is not the one that was made here."""
    tick(bench, "post-nw", SQUARE)
    path = demo / "progress/post-nw.toml"
    path.write_text(path.read_text().replace("2026", "2025"))
    bench = again(bench, clock)
    with pytest.raises(NotUndoneError) as caught:
        bench.undo()
    assert str(caught.value) == (
        "NW post, tick on Ends: square the foot: it is another now, changed outside; not undone"
    )
    assert bench.undo() is None
    assert "2025" in path.read_text()
    bench.close()


def test_what_was_undone_outside_is_said_to_be(bench: Bench, demo: Path) -> None:
    """The files hold already what undoing would put there: nothing is written, and it is said."""
    tick(bench, "post-nw", SQUARE)
    path = demo / "progress/post-nw.toml"
    path.unlink()
    done = bench.undo()
    assert done is not None
    assert done.already
    assert not path.exists()
    assert words(bench, back=False) == "NW post, tick on Ends: square the foot"
    assert ticked(bench, "post-nw", SQUARE)


def test_a_journal_of_another_project_changes_nothing(bench: Bench, demo: Path) -> None:
    """What it tells of is not there; every entry is left, one by one, and the files stay."""
    tick(bench, "post-nw", SQUARE)
    bench.set_name("lengths", "deck", "1-1/2")
    bench.edit_project("note added", bench.project_text() + "# a note\n")
    journal = (demo / JOURNAL_FILE).read_bytes()
    other = demo.parent / "other"
    (other / "progress").mkdir(parents=True)
    (other / "project.toml").write_text('format = 1\nname = "Other"\n')
    (other / JOURNAL_FILE).write_bytes(journal)
    before = files(other)
    opened = Bench(Keeper.open(other))
    for _ in range(2):
        with pytest.raises(NotUndoneError):
            opened.undo()
    done = opened.undo()
    assert done is not None
    assert done.already
    assert opened.undo() is None
    assert files(other) == before
    opened.close()


def test_an_older_state_put_back_is_harmless(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """A tool that keeps folders in step may put old files beside a new journal."""
    old = Path(shutil.copytree(demo, demo.parent / "old"))
    tick(bench, "post-nw", SQUARE)
    bench.set_sizes("post-nw", "foot-tenon/as-cut", WIDTH)
    bench.close()
    shutil.copy(demo / JOURNAL_FILE, old / JOURNAL_FILE)
    before = files(old)
    opened = Bench(Keeper.open(old), clock)
    undone = [opened.undo(), opened.undo(), opened.undo()]
    assert [done and done.already for done in undone] == [True, True, None]
    assert files(old) == before
    opened.close()


def test_only_the_writer_undoes_and_taking_over_goes_on(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """The second program writes nothing; once it has taken over it reads the journal anew."""
    second = Bench(Keeper.open(demo), clock)
    assert second.undo() is None
    tick(bench, "post-nw", SQUARE)
    before = {path.name: path.read_bytes() for path in demo.rglob("*.*")}
    for turn in (second.undo, second.redo):
        if turn == second.redo:
            assert turn() is None
            continue
        with pytest.raises(NotKeptError, match="take the project over"):
            turn()
    assert {path.name: path.read_bytes() for path in demo.rglob("*.*")} == before
    second.take_over()
    tick(bench=second, timber="post-ne", step=SQUARE)
    assert words(second) == "NE post, tick on Ends: square the foot"
    assert words(second) == "NW post, tick on Ends: square the foot"
    assert bench.look().lost
    with pytest.raises(NotKeptError, match="taken this project over"):
        bench.redo()
    second.close()


@pytest.mark.parametrize("at", range(40))
def test_a_crash_at_any_call_keeps_what_was_done(
    demo: Path, clock: Callable[[], datetime], at: int
) -> None:
    """The tick is kept or not made, and whatever the journal says of it is so.

    Between the two writes the tick is there and the journal does not know it: undo takes back what
    was done before it.
    """
    bench = Bench(Keeper.open(demo), clock)
    tick(bench, "post-ne", SQUARE)
    disk = Disk(at, after=True)
    try:
        with failing(disk):
            tick(bench, "post-nw", SQUARE)
    except Crash:
        pass
    opened = Bench(Keeper.open(demo, over=True), clock)
    told = words(opened)
    if told.startswith("NW post"):
        assert not ticked(opened, "post-nw", SQUARE)
        told = words(opened)
    assert told == "NE post, tick on Ends: square the foot"
    assert not ticked(opened, "post-ne", SQUARE)
    assert opened.undo() is None
    assert opened.journal_trouble() == ""
    opened.close()


def test_a_crash_between_the_two_writes(
    bench: Bench, clock: Callable[[], datetime], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The tick is kept; only its undo is lost, and its history is not."""

    def crash(*_: object) -> None:
        raise Crash

    with monkeypatch.context() as patch:
        patch.setattr(Journal, "add", crash)
        with pytest.raises(Crash):
            tick(bench, "post-nw", SQUARE)
    opened = again(bench, clock)
    assert ticked(opened, "post-nw", SQUARE)
    assert opened.undo() is None
    assert [event.words for event in opened.history("post-nw")] == ["tick on Ends: square the foot"]
    opened.close()


def test_a_crash_between_undoing_and_noting_it(
    bench: Bench, clock: Callable[[], datetime], monkeypatch: pytest.MonkeyPatch
) -> None:
    """After the restart undo finds it taken back already, says so, and goes on from there."""
    tick(bench, "post-ne", SQUARE)
    tick(bench, "post-nw", SQUARE)

    def crash(*_: object) -> None:
        raise Crash

    with monkeypatch.context() as patch:
        patch.setattr(Journal, "add", crash)
        with pytest.raises(Crash):
            bench.undo()
    opened = again(bench, clock)
    first, second = opened.undo(), opened.undo()
    assert first is not None
    assert second is not None
    assert (first.timber, first.already) == ("post-nw", True)
    assert (second.timber, second.already) == ("post-ne", False)
    opened.close()


def test_a_full_journal_never_keeps_a_tick_from_being_kept(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """The tick is on disk and can be undone now; what is wrong is told once."""
    path = demo / JOURNAL_FILE
    path.mkdir()
    tick(bench, "post-nw", SQUARE)
    tick(bench, "post-ne", SQUARE)
    assert Keeper.read(demo).progress("post-nw").tick(SQUARE) is not None
    assert bench.journal_trouble() == (
        "Done, but not noted in journal.jsonl, so it can be undone only until the program is "
        "closed: is a folder, where a file belongs; move it away."
    )
    assert bench.journal_trouble() == ""
    path.rmdir()
    assert words(bench) == "NE post, tick on Ends: square the foot"
    bench = again(bench, clock)
    assert words(bench) == "NW post, tick on Ends: square the foot"
    bench.close()


def test_a_full_disk_takes_nothing_back(bench: Bench) -> None:
    """What cannot be written is not undone, and can be once there is room."""
    tick(bench, "post-nw", SQUARE)
    assert bench.redo() is None, "the journal is read before the disk is full"
    full = OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
    with failing(Disk(0, error=full)), pytest.raises(NotKeptError, match="disk is full"):
        bench.undo()
    assert ticked(bench, "post-nw", SQUARE)
    assert words(bench) == "NW post, tick on Ends: square the foot"


GIRT = """
[[timber]]
id = "girt"
name = "Girt"
kind = "girt"
section = "6 x 6"
first_face = "up"
second_face = "south"
reference_end = "west"
length = "8'"
"""


def test_an_edit_of_the_project_is_one_action(
    bench: Bench, demo: Path, clock: Callable[[], datetime]
) -> None:
    """A timber added goes and comes with undo and redo, byte for byte, and is worked on at once."""
    before = (demo / "project.toml").read_bytes()
    bench.edit_project("Girt added", bench.project_text() + GIRT, timber="post-se", step=SQUARE)
    after = (demo / "project.toml").read_bytes()
    assert after == before + GIRT.encode()
    assert bench.walk("girt").timber.name == "Girt"
    assert (demo / JOURNAL_FILE).stat().st_size < 800, "the lines that changed, not the file"
    bench = again(bench, clock)
    done = bench.undo()
    assert done is not None
    assert done == ("Girt added", "post-se", SQUARE, False)
    assert (demo / "project.toml").read_bytes() == before
    assert "girt" not in {timber.id for timber in bench.timbers}
    assert words(bench, back=False) == "Girt added"
    assert (demo / "project.toml").read_bytes() == after
    assert bench.walk("girt").timber.name == "Girt"
    bench.close()


def test_an_edit_is_undone_beside_other_changes_and_left_under_them(
    bench: Bench, demo: Path
) -> None:
    """An editor's lines elsewhere stay; in the very lines they keep the edit from being undone."""
    path = demo / "project.toml"
    before = path.read_text()
    bench.edit_project("Girt added", before + GIRT)
    path.write_text("# mine\n" + path.read_text())
    assert words(bench) == "Girt added"
    assert path.read_text() == "# mine\n" + before
    bench.redo()
    path.write_text(path.read_text().replace('name = "Girt"', 'name = "Long girt"'))
    with pytest.raises(NotUndoneError) as caught:
        bench.undo()
    assert str(caught.value) == (
        "Girt added: these lines of project.toml are others now, changed outside; not undone"
    )
    assert 'name = "Long girt"' in path.read_text()


def test_an_edit_of_an_older_text_is_refused(bench: Bench, demo: Path) -> None:
    """What an editor has written since is never written over."""
    path = demo / "project.toml"
    text = bench.project_text()
    path.write_text(text + "# mine\n")
    with pytest.raises(NotKeptError, match="changed outside"):
        bench.edit_project("Girt added", text + GIRT)
    assert path.read_text() == text + "# mine\n"
    bench.look()
    bench.edit_project("Girt added", bench.project_text() + GIRT)
    assert path.read_text() == text + "# mine\n" + GIRT


def test_an_edit_that_is_no_sound_project_is_refused(bench: Bench, demo: Path) -> None:
    """Where, what and what to do; nothing is written, noted or undone."""
    before = (demo / "project.toml").read_bytes()
    with pytest.raises(BadProjectError) as caught:
        bench.edit_project("Girt added", bench.project_text() + GIRT.replace("6 x 6", "6"))
    (problem,) = caught.value.problems
    assert problem.line is not None
    assert "a section has two sides" in problem.message
    assert (demo / "project.toml").read_bytes() == before
    assert bench.undo() is None


def test_what_an_edit_added_is_undone_before_it(bench: Bench) -> None:
    """A tick on a timber that was added comes off first, then the timber goes."""
    bench.edit_project("Girt added", bench.project_text() + GIRT)
    tick(bench, "girt", SQUARE)
    assert [words(bench), words(bench)] == ["Girt, tick on Ends: square the west end", "Girt added"]
    assert words(bench, back=False) == "Girt added"
    assert words(bench, back=False) == "Girt, tick on Ends: square the west end"
    assert ticked(bench, "girt", SQUARE)


def test_what_changes_nothing_is_no_action(bench: Bench) -> None:
    """The same sizes, the same text, the same file: there is nothing to undo."""
    bench.set_sizes(
        "post-sw",
        "foot-tenon/as-cut",
        bench.sizes("post-sw", bench.walk("post-sw").layout.step("foot-tenon/as-cut")),
    )
    bench.set_name("lengths", "deck", "1-1/4")
    bench.edit_project("nothing", bench.project_text())
    assert bench.undo() is None


def test_old_projects_have_no_journal_until_something_is_done(bench: Bench, demo: Path) -> None:
    """Opening, looking, trying and closing write none."""
    bench.look()
    bench.try_name("lengths", "deck", "2")
    assert bench.undo() is None
    assert bench.redo() is None
    assert not (demo / JOURNAL_FILE).exists()
    assert bench.frame.levels.of("deck") == read_length("1-1/4")
