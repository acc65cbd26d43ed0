"""Undo, redo and the history at the desk."""

from pathlib import Path

from benchmate.layout.standing import State
from benchmate.store.keeper import Keeper
from benchmate.tui.desk import NO_MORE, Desk
from benchmate.tui.glyphs import UNICODE
from benchmate.workbench.bench import Bench

CHEEK = "SE post, tick on Foot tenon: far cheek line"


def anew(desk: Desk) -> Desk:
    """The same project after a restart."""
    desk.bench.close()
    return Desk(Bench(Keeper.open(desk.bench.folder)), UNICODE)


def test_redo_goes_to_where_it_is_done(desk: Desk) -> None:
    """And says what, on whatever timber; then there is nothing more to do again."""
    desk.tick()
    desk.undo()
    desk.take_timber("plate-north")
    assert desk.redo().words == f"Done again: {CHEEK}."
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
    assert desk.standing.state is State.TICKED
    assert desk.redo().words == "Nothing to do again."


def test_after_a_restart_there_is_still_something_to_undo(desk: Desk) -> None:
    """It leads to the step, whatever is in hand then."""
    desk.tick()
    desk = anew(desk)
    desk.take_timber("plate-north")
    assert desk.undo().words == f"Undone: {CHEEK}."
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
    assert desk.undo().words == "Nothing to undo."
    desk.bench.close()


def test_what_is_so_already_is_said_to_be(desk: Desk, demo: Path) -> None:
    """Nothing was changed, and the framer knows why."""
    path = demo / "progress/post-se.toml"
    before = path.read_bytes()
    desk.tick()
    path.write_bytes(before)
    told = f"Undone: {CHEEK}. It was so already, and nothing was changed."
    assert desk.undo().words == told


def test_undoing_on_a_step_that_has_gone_stands_at_its_timber(desk: Desk, demo: Path) -> None:
    """The joint was taken out in an editor: one stands at the timber's next open step."""
    desk.tick()
    path = demo / "project.toml"
    path.write_text(path.read_text().replace('id = "se-foot"', 'id = "se-foot"\nscribed = true'))
    desk = anew(desk)
    desk.take_timber("plate-north")
    assert desk.undo().words.startswith("Undone: SE post, tick on Foot tenon")
    assert desk.timber == "post-se"
    desk.bench.close()


def test_an_edit_that_leaves_no_timber_can_be_taken_back(desk: Desk, demo: Path) -> None:
    """On an empty bench undo and redo still work."""
    text = (demo / "project.toml").read_text()
    head = text[: text.index("[[timber]]")]
    desk.bench.edit_project("all taken out", head)
    desk = anew(desk)
    assert desk.empty
    assert desk.undo().words == "Undone: all taken out."
    assert not desk.empty
    assert (demo / "project.toml").read_text() == text
    assert desk.redo().words == "Done again: all taken out."
    assert desk.empty
    desk.bench.close()


def test_the_history_is_that_of_the_timber_in_hand(desk: Desk) -> None:
    """And what is chosen there is gone to, or said to be no more."""
    desk.tick()
    history = desk.history()
    assert history.title == "SE post: what was done"
    assert history.trouble == ""
    event = history.event(1)
    assert event is not None
    assert event.words == "tick on Foot tenon: far cheek line"
    desk.take_timber("plate-north")
    assert desk.revisit(event).words == ""
    assert (desk.timber, desk.step.id) == ("post-se", "foot-tenon/far-cheek")
    desk.bench.edit_project("renamed", desk.bench.project_text().replace('"post-se"', '"post-xx"'))
    assert desk.revisit(event).words == NO_MORE


def test_a_torn_journal_is_told_beside_what_was_done(desk: Desk, demo: Path) -> None:
    """Once, and not in the place of it."""
    desk.tick()
    path = demo / "journal.jsonl"
    path.write_bytes(path.read_bytes() + b"torn")
    done = desk.with_trouble(desk.undo())
    assert done.words.startswith(f"Undone: {CHEEK}. Line 2 of journal.jsonl cannot be read")
    assert done.failed
    assert desk.with_trouble(desk.redo()).words == f"Done again: {CHEEK}."


def test_nothing_to_undo_is_not_said_of_a_journal_that_cannot_be_read(
    desk: Desk, demo: Path
) -> None:
    """What is wrong is told in its place."""
    (demo / "journal.jsonl").mkdir()
    outcome = desk.undo()
    assert outcome.failed
    assert outcome.words.startswith("What was done cannot be read from journal.jsonl: ")
