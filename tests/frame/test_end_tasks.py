"""What is done at every worked end."""

from benchmate.frame.end_tasks import (
    FOR_THE_MORTISE,
    knife_only,
    knife_shoulder,
    measure_finished,
)
from benchmate.frame.practice import AS_CUT
from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Asks, Reading, Stage
from tests.builders import length
from tests.frame.test_stick_end import tip


def test_a_shoulder_is_knifed_and_its_waste_hatched() -> None:
    """The end is hatched with the faces it is knifed on; the waste lies towards it."""
    task = knife_shoulder(tip(), LONG_FACES, caution="Only here.")
    assert (task.id, task.stage) == ("knife", Stage.KNIFE)
    assert task.faces == (*LONG_FACES, Face.REFERENCE_END)
    assert task.waste == "Towards the foot, outside the tenon's own lines."
    assert (task.draws, task.caution) == ("", "Only here.")
    head = tip(Face.FAR_END)
    tail = knife_shoulder(head, (), draws="shoulder", outside="the tail's lines", caution="")
    assert tail.waste == "Towards the head, outside the tail's lines."
    assert (tail.draws, tail.faces) == ("shoulder", (Face.FAR_END,))


def test_a_flush_face_is_knifed_only_outside() -> None:
    """Which face, and outside of what."""
    assert knife_only("East face", "outside the cheek lines") == (
        "Knife the East face only outside the cheek lines: the tenon runs out to it there."
    )


def test_a_finished_end_is_measured_for_what_is_cut_to_it() -> None:
    """It asks for sizes, and its tick never goes out of date."""
    reading = Reading(value=length("2"), hook="near cheek", way="to the far cheek")
    task = measure_finished("the tenon", (Face.FAR_END,), (reading,))
    assert (task.id, task.stage, task.title) == (AS_CUT, Stage.AS_CUT, "Measure the tenon as cut")
    assert (task.faces, task.readings) == ((Face.FAR_END,), (reading,))
    assert (task.asks, task.lasting) == (Asks.AS_CUT, False)
    assert (task.why, task.caution) == (FOR_THE_MORTISE, "")
    other = measure_finished("the tail", (), (), why="For the socket.", caution="Mind the flank.")
    assert (other.why, other.caution) == ("For the socket.", "Mind the flank.")
