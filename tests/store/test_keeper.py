import errno
import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.model.progress import Measured, Progress
from benchmate.store.files import stamp
from benchmate.store.journal import JOURNAL_FILE
from benchmate.store.keeper import ONLY_READ, TAKEN_OVER, Changes, Keeper
from benchmate.store.lock import LOCK_FILE
from benchmate.store.problem import KeepError, ProjectError
from benchmate.store.reading import read_progress
from tests.model.test_past import did, nexts, undone
from tests.store.faults import Crash, Disk, failing, refuse_to_tell
from tests.store.samples import STORE, put, ticked

POST = "progress/post-sw.toml"

ERRORS = (errno.ENOSPC, errno.EIO, errno.EROFS, errno.EACCES)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A project folder nobody has worked in."""
    return put(tmp_path / "store")


@pytest.fixture
def keeper(folder: Path) -> Iterator[Keeper]:
    """The project, open to be written."""
    keeper = Keeper.open(folder)
    yield keeper
    keeper.close()


def on_disk(folder: Path) -> Progress:
    """What a program started now would find kept for the post."""
    return read_progress(folder, "post-sw", Unit.INCH)


def tick_foot(progress: Progress) -> Progress:
    """The foot of the post is squared."""
    return ticked(progress, "end/square")


def tick_label(progress: Progress) -> Progress:
    """The post is labelled."""
    return ticked(progress, "stick/label")


def steps(progress: Progress) -> list[str]:
    """The steps ticked, in order."""
    return [tick.step for tick in progress.ticks]


def write(folder: Path, name: str, text: str) -> None:
    """Change a file as another program would, so that its stamp cannot stay the same."""
    path = folder / name
    path.parent.mkdir(exist_ok=True)
    path.write_text(text, "utf-8")
    moment = path.stat().st_mtime_ns + 1_000_000_000
    os.utime(path, ns=(moment, moment))


def test_what_is_kept_is_on_disk(keeper: Keeper, folder: Path) -> None:
    """A tick is in the file as soon as it is kept, and the next comes after it."""
    assert keeper.project.name == "Apple store"
    assert keeper.read_only == ""
    assert keeper.progress("post-sw") == Progress(timber="post-sw")
    assert steps(keeper.keep("post-sw", tick_foot)) == ["end/square"]
    assert steps(on_disk(folder)) == ["end/square"]
    keeper.keep("post-sw", tick_label)
    assert keeper.progress("post-sw") == on_disk(folder)
    assert steps(on_disk(folder)) == ["end/square", "stick/label"]


def test_keeping_what_is_kept_writes_nothing(keeper: Keeper, folder: Path) -> None:
    """A change that changes nothing leaves no file, and leaves a file as it is."""
    keeper.keep("post-sw", lambda progress: progress)
    assert not (folder / "progress").exists()
    keeper.keep("post-sw", tick_foot)
    before = stamp(folder, POST)
    keeper.keep("post-sw", lambda progress: progress)
    assert stamp(folder, POST) == before


def test_each_timber_is_read_when_it_is_asked_for(folder: Path) -> None:
    """A broken file of one timber does not stop the work on another."""
    write(folder, "progress/south-sill.toml", "broken")
    keeper = Keeper.open(folder)
    keeper.keep("post-sw", tick_foot)
    with pytest.raises(ProjectError, match=r"progress/south-sill\.toml:1"):
        keeper.progress("south-sill")
    keeper.close()


def test_what_others_wrote_is_kept_too(keeper: Keeper, folder: Path) -> None:
    """A tick goes on top of what the file holds now, looked at or not."""
    keeper.keep("post-sw", tick_foot)
    text = (folder / POST).read_text("utf-8")
    write(folder, POST, text + '\n[measured.all]\nfirst = "7-1/8"\n')
    keeper.keep("post-sw", tick_label)
    assert steps(on_disk(folder)) == ["end/square", "stick/label"]
    assert on_disk(folder).measured == {"all": Measured(first=Length.inches(7, 1, 8))}


def test_a_file_that_others_removed_is_made_anew(keeper: Keeper, folder: Path) -> None:
    """Its ticks went with it."""
    keeper.keep("post-sw", tick_foot)
    (folder / POST).unlink()
    assert steps(keeper.keep("post-sw", tick_label)) == ["stick/label"]


def test_a_broken_file_is_never_written_over(keeper: Keeper, folder: Path) -> None:
    """Neither at once nor after it was noticed; once it is mended, work goes on."""
    keeper.keep("post-sw", tick_foot)
    sound = (folder / POST).read_text("utf-8")
    write(folder, POST, sound + "broken")
    with pytest.raises(ProjectError):
        keeper.keep("post-sw", tick_label)
    assert keeper.changed().problems
    with pytest.raises(ProjectError):
        keeper.keep("post-sw", tick_label)
    assert (folder / POST).read_text("utf-8") == sound + "broken"
    assert steps(keeper.progress("post-sw")) == ["end/square"]
    write(folder, POST, sound + "\n")
    assert steps(keeper.keep("post-sw", tick_label)) == ["end/square", "stick/label"]


@pytest.mark.parametrize(
    "changes",
    [
        {"timber": "south-sill"},
        {"measured": {"all": Measured.model_construct(first=Length(1), second=None)}},
    ],
)
def test_what_could_not_be_read_again_is_not_written(
    keeper: Keeper, folder: Path, changes: dict[str, object]
) -> None:
    """A slip of the program's own does not cost the framer the file."""
    keeper.keep("post-sw", tick_foot)
    before = (folder / POST).read_bytes()
    with pytest.raises(ProjectError):
        keeper.keep("post-sw", lambda progress: progress.model_copy(update=changes))
    assert (folder / POST).read_bytes() == before
    assert steps(keeper.progress("post-sw")) == ["end/square"]


def test_nothing_changed_is_nothing_to_tell(keeper: Keeper) -> None:
    """Neither at first nor after the program's own writing."""
    assert not keeper.changed()
    keeper.keep("post-sw", tick_foot)
    assert keeper.changed() == Changes()


def test_changes_by_others_are_told_once(keeper: Keeper, folder: Path) -> None:
    """The project and the timbers are read again, and the next look finds nothing new."""
    write(folder, "project.toml", STORE.replace("Apple store", "Pear store"))
    write(folder, POST, 'format = 1\ntimber = "post-sw"\n[measured.all]\nfirst = "7"\n')
    changes = keeper.changed()
    assert changes == Changes(project=True, timbers=("post-sw",))
    assert keeper.project.name == "Pear store"
    assert keeper.progress("post-sw").measured == {"all": Measured(first=Length.inches(7))}
    assert not keeper.changed()


def test_a_timber_that_others_added_is_known(keeper: Keeper, folder: Path) -> None:
    """Its progress can be kept at once."""
    extra = STORE[STORE.index("\n[[timber]]") : STORE.index('\n[[timber]]\nid = "post-sw"')]
    write(
        folder,
        "project.toml",
        STORE + extra.replace("south-sill", "north-sill").replace("South sill", "North sill"),
    )
    assert keeper.changed().project
    assert keeper.keep("north-sill", tick_foot).timber == "north-sill"


def test_what_others_broke_is_told_once_and_not_taken(keeper: Keeper, folder: Path) -> None:
    """The last good project and progress stay, each problem is told, and mending is noticed."""
    keeper.keep("post-sw", tick_foot)
    sound = (folder / POST).read_text("utf-8")
    write(folder, "project.toml", STORE + "broken")
    write(folder, POST, sound + "broken")
    changes = keeper.changed()
    assert [problem.file for problem in changes.problems] == ["project.toml", POST]
    assert not changes.project
    assert changes.timbers == ()
    assert keeper.project.name == "Apple store"
    assert steps(keeper.progress("post-sw")) == ["end/square"]
    assert not keeper.changed()
    write(folder, "project.toml", STORE)
    write(folder, POST, sound)
    assert keeper.changed() == Changes(project=True, timbers=("post-sw",))


def test_a_project_that_goes_missing_is_told(keeper: Keeper, folder: Path) -> None:
    """The last good one stays, and it is noticed when the file is back."""
    (folder / "project.toml").unlink()
    (problem,) = keeper.changed().problems
    assert problem.text() == (
        "project.toml: is not there\n  check the name, and that its disk is plugged in"
    )
    assert keeper.project.name == "Apple store"
    write(folder, "project.toml", STORE)
    assert keeper.changed().project


def test_the_second_program_reads_only(keeper: Keeper, folder: Path) -> None:
    """It says why, sees what the first keeps, and keeps nothing."""
    second = Keeper.open(folder)
    assert second.read_only.startswith("another benchmate has this project open since")
    with pytest.raises(KeepError, match="another benchmate has this project open"):
        second.keep("post-sw", tick_label)
    keeper.keep("post-sw", tick_foot)
    assert second.changed().timbers == ("post-sw",)
    assert steps(second.progress("post-sw")) == ["end/square"]
    second.close()
    keeper.keep("post-sw", tick_label)


def test_a_project_can_be_opened_only_to_be_read(keeper: Keeper, folder: Path) -> None:
    """It takes nothing from the program that writes, and can ask to write later."""
    reader = Keeper.read(folder)
    assert reader.read_only == ONLY_READ
    with pytest.raises(KeepError, match="opened only to be read"):
        reader.keep("post-sw", tick_foot)
    reader.claim()
    assert reader.read_only.startswith("another benchmate has this project open")
    keeper.keep("post-sw", tick_label)
    keeper.close()
    reader.claim()
    reader.claim()
    assert reader.read_only == ""
    assert steps(reader.keep("post-sw", tick_foot)) == ["stick/label", "end/square"]
    reader.close()


def test_a_project_can_be_taken_over(keeper: Keeper, folder: Path) -> None:
    """The former program is told once, keeps nothing any more, and can take it back."""
    second = Keeper.open(folder)
    second.take_over()
    assert second.read_only == ""
    second.keep("post-sw", tick_foot)
    assert keeper.changed() == Changes(timbers=("post-sw",), lost=True)
    assert not keeper.changed()
    assert keeper.read_only == TAKEN_OVER
    with pytest.raises(KeepError, match="taken this project over"):
        keeper.keep("post-sw", tick_label)
    keeper.take_over()
    assert steps(keeper.keep("post-sw", tick_label)) == ["end/square", "stick/label"]
    with pytest.raises(KeepError, match="taken this project over"):
        second.keep("post-sw", tick_foot)
    second.close()


def test_a_project_can_be_opened_over_another_program(keeper: Keeper, folder: Path) -> None:
    """The former finds out at its next tick, not only when it looks."""
    second = Keeper.open(folder, over=True)
    with pytest.raises(KeepError, match="taken this project over"):
        keeper.keep("post-sw", tick_foot)
    assert not (folder / POST).exists()
    second.close()


def test_closing_lets_the_next_program_in(folder: Path) -> None:
    """Closing twice does no harm, and a closed project keeps nothing."""
    keeper = Keeper.open(folder)
    keeper.close()
    keeper.close()
    with pytest.raises(KeepError, match="this project is closed"):
        keeper.keep("post-sw", tick_foot)
    second = Keeper.open(folder)
    assert second.read_only == ""
    second.close()


def test_a_folder_that_cannot_be_written_opens_read_only(folder: Path) -> None:
    """A project on a read-only disk can still be looked at."""
    (folder / LOCK_FILE).mkdir()
    keeper = Keeper.open(folder)
    assert keeper.read_only.startswith("nothing can be written here: ")
    assert keeper.progress("post-sw") == Progress(timber="post-sw")
    with pytest.raises(KeepError):
        keeper.take_over()
    assert keeper.read_only.startswith("nothing can be written here: ")
    keeper.close()


def test_a_broken_project_is_not_taken(folder: Path) -> None:
    """It raises, and leaves no lock behind."""
    put(folder, "broken")
    with pytest.raises(ProjectError):
        Keeper.open(folder)
    assert not (folder / LOCK_FILE).exists()


@pytest.mark.parametrize("number", ERRORS)
@pytest.mark.parametrize("at", range(14))
def test_a_failing_disk_loses_no_tick(keeper: Keeper, folder: Path, at: int, number: int) -> None:
    """Whichever call fails, the file holds all ticks before or all with the new one."""
    keeper.keep("post-sw", tick_foot)
    disk = Disk(at, error=OSError(number, os.strerror(number)))
    with failing(disk):
        try:
            keeper.keep("post-sw", tick_label)
        except KeepError:
            kept = [["end/square"], ["end/square", "stick/label"]]
        else:
            kept = [["end/square", "stick/label"]]
    assert steps(on_disk(folder)) in kept
    assert list((folder / "progress").iterdir()) == [folder / POST]
    keeper.take_over()
    expected = [*steps(on_disk(folder)), "stick/crown"]
    assert steps(keeper.keep("post-sw", lambda now: ticked(now, "stick/crown"))) == expected


@pytest.mark.parametrize("after", [False, True])
@pytest.mark.parametrize("at", range(14))
def test_a_crash_loses_no_tick(folder: Path, at: int, *, after: bool) -> None:
    """Whenever the program is killed, the next finds the ticks before or all with the new one."""
    keeper = Keeper.open(folder)
    keeper.keep("post-sw", tick_foot)
    with failing(Disk(at, after=after)):
        try:
            keeper.keep("post-sw", tick_label)
        except Crash:
            kept = [["end/square"], ["end/square", "stick/label"]]
        else:
            kept = [["end/square", "stick/label"]]
    assert steps(on_disk(folder)) in kept
    keeper.close()


def test_a_look_is_cheap(keeper: Keeper, monkeypatch: pytest.MonkeyPatch) -> None:
    """Looking for changes reads nothing but the lock file while nothing has changed."""
    keeper.keep("post-sw", tick_foot)

    def refuse(*_: object) -> None:
        pytest.fail("a file was read")

    monkeypatch.setattr("benchmate.store.kept_project.read_file", refuse)
    monkeypatch.setattr("benchmate.store.keeper.find_progress", refuse)
    assert not keeper.changed()


@pytest.mark.parametrize("number", [errno.EIO, errno.EACCES])
def test_a_hidden_progress_file_is_never_written_over(
    keeper: Keeper, folder: Path, monkeypatch: pytest.MonkeyPatch, number: int
) -> None:
    """A file the system will not show counts as unreadable, told once, and its ticks stay."""
    keeper.keep("post-sw", tick_foot)
    with monkeypatch.context() as hidden:
        refuse_to_tell(hidden, number)
        told = [problem.file for problem in keeper.changed().problems]
        assert POST in told
        assert not keeper.changed().problems
        with pytest.raises(KeepError):
            keeper.keep("post-sw", tick_label)
        with pytest.raises(KeepError):
            Keeper.read(folder).progress("post-sw")
    keeper.changed()
    keeper.keep("post-sw", tick_label)
    assert steps(on_disk(folder)) == ["end/square", "stick/label"]


def test_files_without_a_timber_are_strays_whatever_their_name(
    keeper: Keeper, folder: Path
) -> None:
    """A copy that a sync program put beside a file is told, and so is a renamed timber's."""
    keeper.keep("post-sw", tick_foot)
    (folder / "progress" / "post-sw (conflict).toml").write_text("format = 1\n")
    (folder / "progress" / "post-nn.toml").write_text("format = 1\n")
    assert keeper.strays() == ("post-nn", "post-sw (conflict)")


def test_a_file_in_place_of_the_progress_folder_is_told(keeper: Keeper, folder: Path) -> None:
    """No tick could ever be kept there."""
    (folder / "progress").write_text("")
    with pytest.raises(KeepError, match="is not a folder"):
        keeper.strays()


NAMED = STORE + '\n[lengths]\ndeck = "1-1/4" # planed\n'


@pytest.fixture
def named(folder: Path) -> Iterator[Keeper]:
    """A project with a named length, open to be written."""
    put(folder, NAMED)
    keeper = Keeper.open(folder)
    yield keeper
    keeper.close()


def deck(folder: Path) -> str:
    """What a program started now would find written for the deck."""
    return Keeper.read(folder).written()["lengths"]["deck"]


def test_a_name_is_kept_like_a_tick(named: Keeper, folder: Path) -> None:
    """On disk at once, the project goes by it, and there is nothing new to look at."""
    assert named.try_name("lengths", "deck", "2").lengths["deck"].text() == '2"'
    assert deck(folder) == "1-1/4"
    assert named.set_name("lengths", "deck", "2") == "1-1/4"
    assert deck(folder) == "2"
    assert named.project.lengths["deck"].text() == '2"'
    assert not named.changed()


def test_a_name_is_not_kept_without_the_right_to(named: Keeper, folder: Path) -> None:
    """Neither by a reader nor by a program that has lost the project; trying is free to both."""
    reader = Keeper.read(folder)
    with pytest.raises(KeepError, match="opened only to be read"):
        reader.set_name("lengths", "deck", "2")
    second = Keeper.open(folder, over=True)
    with pytest.raises(KeepError, match="taken this project over"):
        named.set_name("lengths", "deck", "2")
    assert named.try_name("lengths", "deck", "2").lengths["deck"].text() == '2"'
    assert deck(folder) == "1-1/4"
    second.close()


def test_a_broken_file_put_right_is_told_anew_when_it_breaks_again(
    named: Keeper, folder: Path
) -> None:
    """Setting a name counts as reading the file, so that a later slip is told again."""
    write(folder, "project.toml", NAMED + "broken")
    assert named.changed().problems
    (folder / "project.toml").write_text(NAMED)
    named.set_name("lengths", "deck", "2")
    write(folder, "project.toml", NAMED + "broken")
    assert named.changed().problems


@pytest.mark.parametrize("number", ERRORS)
@pytest.mark.parametrize("at", range(9))
def test_a_failing_disk_leaves_the_project_whole(
    named: Keeper, folder: Path, at: int, number: int
) -> None:
    """Whichever call fails, the file holds the old text or the new, and nothing lies beside it."""
    disk = Disk(at, error=OSError(number, os.strerror(number)))
    with failing(disk):
        try:
            named.set_name("lengths", "deck", "2")
        except KeepError:
            kept = [NAMED, NAMED.replace("1-1/4", "2")]
        else:
            kept = [NAMED.replace("1-1/4", "2")]
    assert (folder / "project.toml").read_text() in kept
    assert {path.name for path in folder.iterdir()} <= {"project.toml", LOCK_FILE}
    named.take_over()
    named.set_name("lengths", "deck", "3")
    assert deck(folder) == "3"


@pytest.mark.parametrize("after", [False, True])
@pytest.mark.parametrize("at", range(9))
def test_a_crash_leaves_the_project_whole(folder: Path, at: int, *, after: bool) -> None:
    """Whenever the program is killed, the file holds the old text or the new one whole."""
    put(folder, NAMED)
    keeper = Keeper.open(folder)
    with failing(Disk(at, after=after)):
        try:
            keeper.set_name("lengths", "deck", "2")
        except Crash:
            kept = [NAMED, NAMED.replace("1-1/4", "2")]
        else:
            kept = [NAMED.replace("1-1/4", "2")]
    assert (folder / "project.toml").read_text() in kept
    keeper.close()


def test_the_writer_notes_and_a_reader_does_not(keeper: Keeper, folder: Path) -> None:
    """One program writes the journal, the other follows it; after taking over it goes on there."""
    second = Keeper.open(folder)
    keeper.note(did(1))
    second.note(did(7))
    assert nexts(second.past()) == ("1", None)
    second.take_over()
    second.note(undone(1))
    assert keeper.changed().lost
    keeper.note(did(8))
    assert nexts(keeper.past()) == nexts(Keeper.read(folder).past()) == (None, "1")
    second.close()


def test_a_torn_journal_does_not_keep_a_project_shut(folder: Path) -> None:
    """It is told when it is asked for, and only by the one that may note having told it."""
    write(folder, JOURNAL_FILE, '{"did": {"id": "00')
    reader, keeper = Keeper.read(folder), Keeper.open(folder)
    assert len(reader.past()) == len(keeper.past()) == 0
    assert reader.journal_trouble() == ""
    assert keeper.journal_trouble().startswith("Line 1 of journal.jsonl cannot be read")
    assert keeper.journal_trouble() == ""
    keeper.close()


def test_the_project_file_is_rewritten_by_its_writer_only(keeper: Keeper, folder: Path) -> None:
    """As every other file of it."""
    second = Keeper.open(folder)
    with pytest.raises(KeepError, match="another benchmate"):
        second.rewrite(lambda text: text + "# end\n")
    before, after = keeper.rewrite(lambda text: text + "# end\n")
    assert keeper.text() == after == before + "# end\n"
