"""The short forms for notes and blemishes, without a terminal."""

from collections.abc import Mapping

import pytest

from benchmate.measure.length import Length
from benchmate.measure.reading import Unit
from benchmate.model.directions import Face
from benchmate.model.progress import Blemish
from benchmate.tui.desk import Desk
from benchmate.tui.jot_form import CLEAR, SAFE, BlemishForm, NewNote, NoteForm

KNOT = {
    "face": "s",
    "from_end": "1",
    "long": "1",
    "from_arris": "2",
    "wide": "1",
    "deep": "",
    "text": "",
}


@pytest.fixture
def form(desk: Desk) -> BlemishForm:
    """The form for a knot in the south-east post, its East face looked at."""
    desk.take_timber("post-se")
    return BlemishForm(desk.walk, "knot", Face.SECOND, Unit.INCH)


def test_a_note_needs_words(desk: Desk) -> None:
    """Blanks are none, and what a terminal could take for a command is refused."""
    form = NoteForm(desk.walk, desk.step.id)
    assert form.title == "SE post: note on Foot tenon: far cheek line"
    assert form.read({"text": "  "}).jot is None
    assert "control character" in form.read({"text": "a\x07b"}).lines[0]
    assert form.read({"text": " Mind it "}).jot == NewNote(desk.step.id, "Mind it")


def test_the_face_looked_at_is_filled_in_and_nothing_else(form: BlemishForm) -> None:
    """Good framers do not let a form guess a measurement."""
    texts = {blank.key: blank.text for blank in form.blanks}
    assert texts.pop("face") == "East face"
    assert set(texts.values()) == {""}


def test_a_knot_is_read_back_with_what_it_meets(form: BlemishForm) -> None:
    """Its depth as it is counted, the joint, the remedy, and whose the strength is."""
    found = form.read(KNOT | {"wide": "2-1/2"})
    assert isinstance(found.jot, Blemish)
    assert found.jot.side is Face.FIRST
    assert found.jot.deep is None
    assert found.lines[0].startswith('Knot on the South face, 1" from the squared foot')
    assert 'depth not known, counted 2-1/2"' in found.lines[0]
    assert found.lines[1].startswith("LOOK: The knot on the South face")
    assert "lies in the foot tenon" in found.lines[1]
    assert found.lines[-1] == SAFE
    assert form.read(KNOT | {"from_end": "4'"}).lines[1:] == (CLEAR, SAFE)


def test_a_bare_figure_takes_the_unit_of_the_project(desk: Desk) -> None:
    """As everywhere else."""
    metric = BlemishForm(desk.walk, "check", Face.FIRST, Unit.MM)
    found = metric.read(KNOT | {"long": "40"})
    assert isinstance(found.jot, Blemish)
    assert found.jot.long == Length.hundredths_mm(4000)


@pytest.mark.parametrize(
    ("typed", "field", "told"),
    [
        ({"face": ""}, "face", "write one of South face, East face, North face, West face"),
        ({"face": "top"}, "face", "write one of South face"),
        ({"from_end": ""}, "from_end", "still empty"),
        ({"from_end": "-1"}, "from_end", "not below zero"),
        ({"long": "0"}, "long", "must be more than nothing"),
        ({"wide": "9'"}, "wide", "more than"),
        ({"deep": "1/9"}, "deep", "not a tape fraction"),
        ({"text": "a\x1b[2J"}, "text", "control character"),
    ],
)
def test_the_first_thing_wrong_is_told_at_its_field(
    form: BlemishForm, typed: Mapping[str, str], field: str, told: str
) -> None:
    """In the words of the field, with a caret under a length that cannot be read."""
    found = form.read(KNOT | dict(typed))
    assert found.jot is None
    assert found.field == field
    assert told in found.lines[0]
    assert bool(found.excerpt) == (told in ("not below zero", "more than", "not a tape fraction"))
