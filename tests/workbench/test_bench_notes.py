"""Notes and blemishes at the bench: kept at once, in the history, undone and done again."""

import json
from datetime import UTC, datetime
from pathlib import Path

import pytest

from benchmate.measure.length import ZERO, Length
from benchmate.model.progress import Blemish
from benchmate.store.files import progress_name
from benchmate.store.keeper import Keeper
from benchmate.store.moving import Move, moved
from benchmate.workbench import commands
from benchmate.workbench.actions import next_id
from benchmate.workbench.bench import Bench
from benchmate.workbench.sheets import timber_sheet

POST = "post-se"
SHOULDER = "foot-tenon/shoulder"


@pytest.fixture
def knot() -> Blemish:
    """A knot 2-1/2" deep in the foot tenon of the post, as the form gives it."""
    return Blemish(
        id="knot-1",
        kind="knot",
        face="first",
        from_end=Length.inches(1),
        long=Length.inches(1),
        from_arris=Length.inches(2),
        wide=Length.inches(1),
        deep=Length.inches(2, 1, 2),
        at=datetime(1970, 1, 1, tzinfo=UTC),
    )


def test_what_is_noted_is_on_disk_and_undone_byte_for_byte(bench: Bench, knot: Blemish) -> None:
    """Three notes and a knot, all back in reverse, and done again across a restart."""
    file = bench.folder / progress_name(POST)
    states = [file.read_bytes()]
    for about in (SHOULDER, "foot-tenon", ""):
        bench.add_note(POST, SHOULDER, about, "Mind the fuzzy grain")
        states.append(file.read_bytes())
    bench.add_blemish(POST, SHOULDER, knot)
    states.append(file.read_bytes())
    progress = bench.walk(POST).progress
    assert [note.id for note in progress.notes] == ["note-1", "note-2", "note-3"]
    assert progress.blemishes[0].at.year == 2026
    for state in states[-2::-1]:
        done = bench.undo()
        assert done is not None
        assert (done.timber, done.step) == (POST, SHOULDER)
        assert file.read_bytes() == state
    folder = bench.folder
    bench.close()
    again = Bench(Keeper.open(folder))
    for state in states[1:]:
        assert again.redo() is not None
        assert file.read_bytes() == state
    again.close()


def test_one_taken_out_comes_back_to_its_place(bench: Bench, knot: Blemish) -> None:
    """Between its neighbours, with the id and the time it had."""
    for _ in range(3):
        bench.add_blemish(POST, SHOULDER, knot)
        bench.add_note(POST, SHOULDER, "", "Sound")
    before = bench.walk(POST).progress
    bench.take_out(POST, SHOULDER, before.blemishes[1])
    bench.take_out(POST, SHOULDER, before.notes[1])
    left = bench.walk(POST).progress
    assert [each.id for each in left.blemishes] == ["knot-1", "knot-3"]
    assert [each.id for each in left.notes] == ["note-1", "note-3"]
    bench.undo()
    bench.undo()
    assert bench.walk(POST).progress == before


def test_the_history_tells_what_was_noted(bench: Bench, knot: Blemish) -> None:
    """A note with how it begins, a blemish with where it lies."""
    bench.add_note(POST, SHOULDER, "foot-tenon", "Chisel from the head:\n" + "grain " * 20)
    bench.add_blemish(POST, SHOULDER, knot)
    newest, note = (event for event in bench.history(POST) if "note" in event.words)
    assert newest.words == 'noted: knot on the South face, 1" from the squared foot'
    assert note.words == "note on Foot tenon"
    assert note.figure.startswith("Chisel from the head: grain")
    assert note.figure.endswith("...")


def test_the_commands_and_the_sheet_tell_them_too(bench: Bench, knot: Blemish) -> None:
    """`marks` at the step and the timber, `validate` what the knot meets, JSON, and the sheet."""
    bench.add_note(POST, SHOULDER, SHOULDER, "Strike it twice")
    bench.add_note(POST, SHOULDER, "", "From the wet stack")
    bench.add_blemish(POST, SHOULDER, knot)
    text = commands.marks(bench.folder, POST).text
    assert "  note: From the wet stack" in text
    assert "  wood: Knot on the South face" in text
    assert "  ! look: The knot on the South face" in text
    shoulder = text.split("Foot tenon: shoulder line")[1].split("  [ ]")[0]
    assert "note: Strike it twice" in shoulder
    assert "look blemish-in-tenon post-se/foot-tenon" in commands.validate(bench.folder).text
    data = json.loads(commands.marks(bench.folder, POST, as_json=True).text)["timbers"][0]
    assert [note["about"] for note in data["notes"]] == [SHOULDER, ""]
    assert data["blemishes"][0]["face"] == "South face"
    assert data["blemishes"][0]["deep"]["shown"] == '2-1/2"'
    sheet = timber_sheet(bench, POST, datetime(2026, 3, 2, tzinfo=UTC))
    assert sheet.noted[:2] == ("Foot tenon: shoulder line: Strike it twice", "From the wet stack")
    assert any("lies in the foot tenon" in each for each in sheet.looks)


def test_a_note_goes_along_with_a_joint_that_is_renamed(bench: Bench) -> None:
    """Under the joint's new id, and so still at its steps."""
    bench.add_note(POST, SHOULDER, SHOULDER, "Strike it twice")
    move = Move(POST, "corner", {"foot-tenon": "sole-tenon"})
    progress = bench.walk(POST).progress
    found = moved(progress, move)
    assert found.notes[-1].about == "sole-tenon/shoulder"
    assert moved(found, move.back()) == progress


def test_a_reader_keeps_nothing(demo: Path, knot: Blemish) -> None:
    """Ids count up past what is there, however they were taken out."""
    assert next_id("knot", ("knot-2", "knot-x", "note-9", "knot-7")) == "knot-8"
    assert next_id("note", ()) == "note-1"
    assert knot.depth == Length.inches(2, 1, 2)
    assert knot.model_copy(update={"deep": None}).depth > ZERO
    assert commands.marks(demo, POST).text.count("wood:") == 0
