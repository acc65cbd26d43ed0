"""Notes and blemishes in words, and on their faces."""

from datetime import UTC, datetime

from benchmate.layout.noted import (
    about_words,
    arris_of,
    blemish_outline,
    blemish_words,
    notes_at,
    notes_on_stick,
    off_the_stick,
    one_line,
)
from benchmate.layout.walk import lay_out
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.progress import Blemish, Progress, WrittenNote
from tests.builders import frame, length, tenon, timber

AT = datetime(2026, 3, 2, 8, tzinfo=UTC)
LAYOUT = lay_out(frame(timber("post"), tenon()), "post")


def blemish(**words: object) -> Blemish:
    """Wane on the far arris of the post's first face."""
    return Blemish.model_validate(
        {
            "id": "wane-1",
            "kind": "wane",
            "face": "first",
            "from_end": "2'",
            "long": "18",
            "from_arris": "5",
            "wide": "1",
            "at": AT,
        }
        | words
    )


def test_a_blemish_is_told_with_its_face_and_all_its_sizes() -> None:
    """From the squared end, and from the arris that its face shares with a reference face."""
    assert blemish_words(LAYOUT.stick, blemish(), Tape()) == (
        'Wane on the South face, 2\' 0" from the squared foot, 1\' 6" long; 5" in from the '
        'South-West arris, 1" wide; depth not known, counted 1"'
    )
    told = blemish_words(
        LAYOUT.stick, blemish(kind="other", deep="1/2", text="bark\nstill on"), Tape()
    )
    assert told.startswith("Blemish on the South face")
    assert told.endswith('1/2" deep: bark still on')


def test_every_face_has_its_own_arris_to_measure_from() -> None:
    """That with the reference face beside it, on the far faces too."""
    stick = LAYOUT.stick
    assert arris_of(stick, Face.FIRST) == "South-West arris"
    assert arris_of(stick, Face.SECOND) == "West-South arris"
    assert arris_of(stick, Face.FAR_FIRST) == "North-West arris"
    assert arris_of(stick, Face.FAR_SECOND) == "East-South arris"


def test_its_outline_counts_from_the_reference_shoulder_as_every_drawing_does() -> None:
    """The post's tenon is 5" long, so 2' from its end is 19" above the shoulder."""
    points = blemish_outline(LAYOUT.stick, blemish()).points
    assert points[0] == (length("19").nm, length("5").nm)
    assert points[2] == (length("37").nm, length("6").nm)


def test_it_runs_off_the_stick_only_past_its_last_wood() -> None:
    """To the arris is on it, and over it is not."""
    stick = LAYOUT.stick
    assert off_the_stick(stick, stick.section(), blemish()) is None
    assert off_the_stick(stick, stick.section(), blemish(wide="1-1/8")) == (
        "over the arris across the face",
        length("1/8"),
    )


def test_a_note_is_about_a_step_a_joint_or_the_timber() -> None:
    """In words, and found again at its step; what is not there any more is told as it stands."""
    step = LAYOUT.step("foot-tenon/shoulder")
    assert about_words(LAYOUT, step.id) == step.title
    assert about_words(LAYOUT, "foot-tenon") == "Foot tenon"
    assert about_words(LAYOUT, "") == "the whole timber"
    assert about_words(LAYOUT, "gone") == '"gone"'
    notes = tuple(
        WrittenNote(id=f"note-{place}", about=about, text="Mind\nthis", at=AT)
        for place, about in enumerate((step.id, "foot-tenon", "", "foot-tenon/near-cheek"))
    )
    kept = Progress(timber="post", notes=notes)
    assert notes_at(kept, step.feature, step.id) == notes[:2]
    assert notes_on_stick(kept) == notes[2:3]
    assert one_line(notes[0].text) == "Mind this"
