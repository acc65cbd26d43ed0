"""The journal on disk: kept, torn, full disks, trimmed."""

import errno
import os
from pathlib import Path

import pytest

from benchmate.model.journal import Action, Line, Piece, TextPart
from benchmate.store import journal as module
from benchmate.store.journal import JOURNAL_FILE, Journal
from tests.model.test_journal import AT
from tests.model.test_past import did, left, nexts, redone, undone
from tests.store.faults import Crash, Disk, failing, refuse_to_tell


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder without a journal."""
    return tmp_path


def lines(folder: Path) -> list[str]:
    """What stands in the file."""
    return (folder / JOURNAL_FILE).read_text("utf-8").splitlines()


def noted(folder: Path, *given: Line) -> Journal:
    """A journal with some lines put in."""
    journal = Journal(folder)
    for line in given:
        journal.add(line)
    return journal


def test_what_is_noted_is_there_after_a_restart(folder: Path) -> None:
    """Actions, and what became of them."""
    journal = noted(folder, did(1), did(2), did(3), undone(3), undone(2), redone(2))
    for each in (journal, Journal(folder)):
        assert nexts(each.past()) == ("2", "3")
        assert each.to_tell(writing=True) == ""
    assert len(lines(folder)) == 6


def test_without_a_journal_nothing_was_done_and_nothing_is_written(folder: Path) -> None:
    """An old project opens as before, and reading makes no file."""
    journal = Journal(folder)
    assert len(journal.past()) == 0
    assert journal.to_tell(writing=True) == ""
    assert list(folder.iterdir()) == []


def test_what_another_program_noted_is_read(folder: Path) -> None:
    """A reader follows along, and whoever takes over goes on from there."""
    first, second = Journal(folder), Journal(folder)
    first.add(did(1))
    assert nexts(second.past()) == ("1", None)
    first.add(did(2))
    assert nexts(second.past()) == ("2", None)
    second.add(undone(2))
    assert nexts(first.past()) == ("1", "2")


def test_a_file_that_is_taken_away_or_put_back_is_noticed(folder: Path) -> None:
    """A folder that some other tool keeps in step with an older one is gone by as it is."""
    journal = noted(folder, did(1), did(2))
    assert nexts(journal.past()) == ("2", None)
    path = folder / JOURNAL_FILE
    older = path.read_text("utf-8").splitlines()[0]
    path.write_text(older + "\n", "utf-8")
    assert nexts(journal.past()) == ("1", None)
    path.unlink()
    assert nexts(journal.past()) == (None, None)
    journal.add(did(3))
    assert nexts(journal.past()) == ("3", None)


@pytest.mark.parametrize("cut", [1, 9, 60, -2])
def test_a_torn_line_is_told_once_and_the_rest_is_read(folder: Path, cut: int) -> None:
    """The program died in the middle of a line: the next start tells it, later ones do not."""
    noted(folder, did(1), did(2))
    path = folder / JOURNAL_FILE
    first, second = path.read_bytes().splitlines(keepends=True)
    path.write_bytes(first + second[:cut])
    journal = Journal(folder)
    assert nexts(journal.past()) == ("1", None)
    told = journal.to_tell(writing=True)
    assert told.startswith(f"Line 2 of {JOURNAL_FILE} cannot be read")
    assert journal.to_tell(writing=True) == ""
    journal.add(did(3))
    again = Journal(folder)
    assert nexts(again.past()) == ("3", None)
    assert again.to_tell(writing=True) == ""
    assert second[:cut].strip() in path.read_bytes(), "nothing is taken out of the file"


def test_a_line_that_has_lost_only_its_end_is_read(folder: Path) -> None:
    """What can be read is read."""
    noted(folder, did(1))
    path = folder / JOURNAL_FILE
    path.write_bytes(path.read_bytes().rstrip())
    journal = noted(folder, did(2))
    assert nexts(journal.past()) == ("2", None)
    assert len(journal.past()) == 2


def test_a_reader_leaves_alone_what_may_just_be_being_written(folder: Path) -> None:
    """It tells of torn lines further up, writes nothing, and tells each once."""
    noted(folder, did(1))
    path = folder / JOURNAL_FILE
    path.write_bytes(path.read_bytes() + b'{"did": ')
    before = path.read_bytes()
    reader = Journal(folder)
    assert nexts(reader.past()) == ("1", None)
    assert reader.to_tell(writing=False) == ""
    path.write_bytes(before + b"\nnonsense\n\n")
    reader.past()
    assert "Line 2 of journal.jsonl and 1 more cannot be read" in reader.to_tell(writing=False)
    assert reader.to_tell(writing=False) == ""
    assert path.read_bytes() == before + b"\nnonsense\n\n"


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EIO, errno.EROFS, errno.EACCES])
@pytest.mark.parametrize("at", range(6))
def test_a_full_disk_loses_no_line(folder: Path, at: int, number: int) -> None:
    """It is told once, undone from memory meanwhile, and written when there is room again."""
    journal = noted(folder, did(1))
    journal.past()
    for each in (2, 3):
        with failing(Disk(at, error=OSError(number, os.strerror(number)))):
            journal.add(did(each))
    told = journal.to_tell(writing=True)
    assert told.count("Done, but not noted in journal.jsonl") == 1
    assert "can be undone only until the program is closed" in told
    assert nexts(journal.past()) == ("3", None)
    journal.add(did(4))
    assert nexts(Journal(folder).past()) == ("4", None)
    assert len(Journal(folder).past()) == 4
    assert journal.to_tell(writing=True) == ""


@pytest.mark.parametrize("after", [False, True])
@pytest.mark.parametrize("at", range(6))
def test_a_crash_loses_at_most_the_line_being_written(folder: Path, at: int, after: bool) -> None:
    """Every line before it is there, and work goes on."""
    journal = noted(folder, did(1), did(2))
    with failing(Disk(at, after=after)), pytest.raises(Crash):
        journal.add(did(3))
    again = Journal(folder)
    assert nexts(again.past()) in (("2", None), ("3", None))
    again.add(undone(2))
    assert again.to_tell(writing=True) == ""


def test_a_journal_that_cannot_be_read_stops_nothing(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is told once, and what is done meanwhile can be undone."""
    journal = noted(folder, did(1))
    with monkeypatch.context() as patch:
        refuse_to_tell(patch, errno.EIO)
        assert nexts(journal.past()) == (None, None)
        journal.add(did(2))
        assert nexts(journal.past()) == ("2", None)
        told = journal.to_tell(writing=True)
    assert "What was done cannot be read from journal.jsonl: the disk fails" in told
    assert nexts(journal.past()) == ("2", None)
    assert len(journal.past()) == 2, "what was there before is there again"
    journal.add(did(3))
    assert len(Journal(folder).past()) == 3


def test_a_link_that_leads_out_is_not_followed(folder: Path) -> None:
    """Nothing outside of the project is read or written by its journal."""
    project = folder / "project"
    project.mkdir()
    (folder / "elsewhere").write_text("mine\n")
    (project / JOURNAL_FILE).symlink_to(folder / "elsewhere")
    journal = noted(project, did(1))
    assert "a link that leads out of the project" in journal.to_tell(writing=True)
    assert (folder / "elsewhere").read_text() == "mine\n"


def big(number: int, size: int) -> Line:
    """An edit with so many bytes in it."""
    part = TextPart(what="text", pieces=(Piece(line=1, now=("x" * size,)),))
    action = Action(id=f"{number:012x}", at=AT, words=str(number), parts=(part,))
    return Line(did=action)


def test_a_long_journal_is_trimmed_to_its_newest_actions(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It never passes its bound by more than a line, and what it keeps means what it meant."""
    monkeypatch.setattr(module, "TRIM_AT", 100_000)
    monkeypatch.setattr(module, "TRIM_TO", 50_000)
    monkeypatch.setattr(module, "LEAST_KEPT", 5)
    journal = Journal(folder)
    most = 0
    for number in range(1000):
        journal.add(did(number))
        most = max(most, (folder / JOURNAL_FILE).stat().st_size)
    assert most <= 100_000
    for each in (journal, Journal(folder)):
        assert nexts(each.past()) == ("999", None)
        assert 100 < len(each.past()) < 1000
    for number in (999, 998):
        journal.add(undone(number))
    for _ in range(3000):
        journal.add(redone(998))
        journal.add(undone(998))
    assert (folder / JOURNAL_FILE).stat().st_size <= 100_000
    assert nexts(Journal(folder).past()) == ("997", "998")


def test_the_last_actions_are_kept_however_big(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """At least so many can be undone; the file may be twice what they take."""
    monkeypatch.setattr(module, "TRIM_AT", 10_000)
    monkeypatch.setattr(module, "TRIM_TO", 5_000)
    monkeypatch.setattr(module, "LEAST_KEPT", 20)
    journal = Journal(folder)
    for number in range(100):
        journal.add(big(number, 2_000))
    assert 20 <= len(Journal(folder).past()) <= 45
    assert (folder / JOURNAL_FILE).stat().st_size < 3 * 20 * 2_000


def test_two_hundred_actions_are_kept_as_it_ships(folder: Path) -> None:
    """The promise, with ticks and with edits."""
    assert module.LEAST_KEPT >= 200
    journal = Journal(folder)
    for number in range(250):
        journal.add(big(number, 30_000))
    past = Journal(folder).past()
    assert len(past) >= 200
    assert [deed.action.words for deed in past][-200:] == [str(n) for n in range(50, 250)]


def test_a_journal_that_cannot_be_trimmed_stays(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without room for the new file the old one is gone on with."""
    monkeypatch.setattr(module, "TRIM_AT", 300)
    monkeypatch.setattr(module, "LEAST_KEPT", 1)
    monkeypatch.setattr(module, "TRIM_TO", 1)
    journal = noted(folder, did(1))
    full = OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
    with failing(Disk(9, error=full)):
        journal.add(did(2))
    assert len(Journal(folder).past()) == 2
    assert journal.to_tell(writing=True) == ""
    assert nexts(journal.past()) == ("2", None)


def test_a_change_too_big_to_be_noted_is_told(folder: Path) -> None:
    """It is done and cannot be undone; what was done before it can."""
    journal = noted(folder, did(1))
    journal.add(big(2, module.LONGEST_LINE))
    assert "too big a change to be noted" in journal.to_tell(writing=True)
    assert nexts(journal.past()) == ("1", None)
    assert len(lines(folder)) == 1


def test_a_file_that_is_something_else_is_left(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One bigger than any journal is told and not read."""
    monkeypatch.setattr(module, "_MOST_BYTES", 1_000_000)
    (folder / JOURNAL_FILE).write_bytes(b"x" * 1_000_001)
    journal = Journal(folder)
    assert nexts(journal.past()) == (None, None)
    assert "is bigger than 1 MB" in journal.to_tell(writing=True)


def test_what_was_overtaken_is_kept_so(folder: Path) -> None:
    """It is not tried again after a restart."""
    noted(folder, did(1), did(2), left(2))
    assert nexts(Journal(folder).past()) == ("1", None)
