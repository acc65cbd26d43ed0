"""The notes of a timber as rows, and what can be added."""

from benchmate.measure.reading import Unit
from benchmate.model.directions import Face
from benchmate.model.progress import Blemish
from benchmate.tui.desk import Desk
from benchmate.tui.jot_form import BlemishForm, NewNote
from benchmate.tui.notes_list import HOW, NotesList, additions
from tests.tui.test_jot_form import KNOT


def knot(desk: Desk) -> Blemish:
    """A knot in the timber in hand, as its form gives it."""
    found = BlemishForm(desk.walk, "knot", Face.FIRST, Unit.INCH).read(KNOT | {"deep": "3"})
    assert isinstance(found.jot, Blemish)
    return found.jot


def test_the_newest_stands_first_and_is_told_in_full(desk: Desk) -> None:
    """A blemish with the joints it meets, a note with what it is about."""
    assert desk.notes().rows == ()
    assert desk.notes().whole(None) == (HOW,)
    desk.jot(NewNote("foot-tenon", "First\nSecond"))
    desk.jot(knot(desk))
    progress = desk.walk.progress
    assert len(progress.notes) == len(progress.blemishes) == 1
    found = NotesList(desk.walk)
    texts = [row.text for row in found.rows]
    assert min(texts) == "Foot tenon: First Second"
    note = texts.index("Foot tenon: First Second")
    assert found.whole(note) == ("On Foot tenon:", "First", "Second")
    whole = found.whole(1 - note)
    assert whole[0].startswith("Knot on the South face")
    assert "lies in the foot tenon" in whole[1]
    assert found.noted(2) is None


def test_taken_out_it_is_undone(desk: Desk) -> None:
    """At the desk as at the bench."""
    desk.jot(knot(desk))
    before = desk.walk.progress
    assert "u puts it back" in desk.take_out(before.blemishes[0]).words
    assert desk.walk.progress.blemishes == ()
    assert "Undone: SE post, taken out: knot on the South face" in desk.undo().words
    assert desk.walk.progress == before


def test_what_can_be_added_depends_on_the_step(desk: Desk) -> None:
    """A step of the whole stick has no joint to note something on."""
    titles = [each.text for each in additions(desk.walk, desk.place, Face.FIRST, Unit.INCH)]
    assert titles[:3] == ["A note on this step", "A note on this joint", "A note on this timber"]
    assert len(titles) == 7
    at_first = [each.text for each in additions(desk.walk, 0, Face.FIRST, Unit.INCH)]
    assert "A note on this joint" not in at_first
    forms = [each.form() for each in desk.additions()]
    assert forms[0].title == "SE post: note on Foot tenon: far cheek line"
    assert forms[-1].title == "SE post: note a blemish"


def test_a_note_stands_with_its_step_and_a_blemish_on_its_face(desk: Desk) -> None:
    """After the caution in the words, and by a sign of its own in the drawing."""
    desk.jot(NewNote(desk.step.id, "Fuzzy grain"))
    labels = [(each.label, each.text) for each in desk.words()]
    assert ("note", "Fuzzy grain") in labels
    sign = desk.glyphs.blemish
    wide = {"from_end": "3", "long": "3", "from_arris": "1", "wide": "3"}
    found = BlemishForm(desk.walk, "wane", desk.face(), Unit.INCH).read(
        KNOT | wide | {"face": desk.walk.layout.stick.pose.words(desk.face())}
    )
    assert isinstance(found.jot, Blemish)
    plain = desk.drawing(60, 12)
    desk.jot(found.jot)
    marked = desk.drawing(60, 12)
    assert plain is not None
    assert marked is not None
    assert not any(sign in text for row in plain.rows for text, _ in row)
    assert any(sign in text for row in marked.rows for text, _ in row)
    desk.take_step(0)
    assert any(each.label == "wood" for each in desk.words(whole=True))
