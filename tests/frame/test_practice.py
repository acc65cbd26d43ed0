"""The tasks and cautions every family shares."""

import pytest

from benchmate.frame import practice
from benchmate.frame.practice import awaits_measuring, unsure
from benchmate.layout.waiting import awaited
from benchmate.layout.walk import lay_out
from benchmate.measure.printing import Graduation, Style, Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Stage
from tests.builders import corners, frame, girt_between, length, real, timber
from tests.joinery.tenon.girts import girt_through


@pytest.mark.parametrize(
    ("tape", "area"),
    [(Tape(), "10 sq in"), (Tape(style=Style.MM, graduation=Graduation.MM), "64.5 sq cm")],
)
def test_a_bearing_is_told_by_its_area(tape: Tape, area: str) -> None:
    """A 5" joist in a 2" pocket bears on 10 sq in (FF-joist, trade.md 2.4); no law is made."""
    said = practice.bears_on("Joist", length("5"), length("2"), tape)
    assert said == f"Joist bears on {area} here; whether that carries its load is for the engineer."


def test_measuring_a_stick_reads_both_ways_across_it() -> None:
    """Each reading hooks on a reference face and goes to the face across."""
    task = practice.measure_task(corners().stick("post-se"), "foot-tenon")
    assert [reading.hook for reading in task.readings] == ["South face", "East face"]
    assert ["North face" in task.readings[0].way, "West face" in task.readings[1].way] == [True] * 2
    assert [reading.value for reading in task.readings] == [length("6")] * 2
    assert (task.stage, task.asks, task.lasting) == (Stage.MEASURE, Asks.SECTION, False)


def test_measuring_shows_what_was_measured_at_the_nearest_place() -> None:
    """The real section at the joint, then at the end, then of the whole stick."""
    typed = real({"foot": {"first": "6-1/8", "second": "6-1/8"}, "foot-tenon": {"first": "6-1/16"}})
    stick = corners({"post-se": typed}).stick("post-se")
    task = practice.measure_task(stick, "foot-tenon", "foot")
    assert [reading.value for reading in task.readings] == [length("6-1/16"), length("6-1/8")]


@pytest.mark.parametrize("name", ["SAW", "CHAINSAW", "CHISEL", "DRILL", "LIFT"])
def test_cautions_are_one_short_line(name: str) -> None:
    """A caution that cannot be read at a glance is not read."""
    caution = getattr(practice, name)
    assert caution.endswith(".")
    assert "\n" not in caution
    assert len(caution) <= 120


def test_a_length_that_follows_an_unmeasured_face_says_so() -> None:
    """By mill rule a girt is as long as its posts leave it: measure them before it is cut."""
    made = girt_between()
    said = unsure(made.stick("girt"))
    assert "Measure West's East face at the joint first" in said
    assert "East's" not in said, "a reference face lies where the frame has it"
    steps = lay_out(made, "girt")
    for step in ("end/overall", "end/saw", "east-end-tenon/shoulder"):
        assert said in steps.step(step).caution
    (waits,) = awaits_measuring(made.stick("girt"))
    assert (waits.timber, waits.step) == ("west", "girt-west-mortise/section")
    assert lay_out(made, "west").step(waits.step).asks is Asks.SECTION


def test_once_measured_there_is_nothing_to_wait_for() -> None:
    """At that joint, or for the whole stick; a post that stands alone waits for nothing."""
    for place in ("girt-west-mortise", "all"):
        made = girt_between(west=real({place: {"second": "6-1/8"}}))
        assert unsure(made.stick("girt")) == ""
        assert awaits_measuring(made.stick("girt")) == ()
    assert unsure(frame(timber("post")).stick("post")) == ""


def test_one_end_s_own_tenon_can_be_asked_after_alone() -> None:
    """What it follows is told with the whole stick as well, and each face once."""
    both = girt_through().stick("girt")
    (waits,) = awaits_measuring(both)
    assert awaits_measuring(both, beyond=Face.FAR_END) == (waits,)
    assert awaits_measuring(both, beyond=Face.REFERENCE_END) == ()
    assert unsure(both) == unsure(both, beyond=Face.FAR_END) != ""
    assert unsure(both, beyond=Face.REFERENCE_END) == ""
    shoulder_alone = girt_between().stick("girt")
    assert unsure(shoulder_alone) != ""
    assert unsure(shoulder_alone, beyond=Face.REFERENCE_END) == ""


def test_the_length_waits_and_squaring_the_end_does_not() -> None:
    """Nor does the reference shoulder, which is struck from its own end in any case."""
    layout = lay_out(girt_between(), "girt")
    waiting = {step.id for step in layout.steps if awaited(layout, step)}
    assert {"end/overall", "end/saw", "east-end-tenon/shoulder", "stick/back-check"} <= waiting
    assert not waiting & {"end/square", "west-end-tenon/shoulder", "east-end-tenon/section"}


def test_faces_to_measure_are_named_in_one_sentence() -> None:
    """A length or a mark that follows two faces names both; one that follows none says nothing."""
    words = practice.unsure_of(("Plate's West face", "Plate's top face"), "mark")
    assert words == (
        "Measure Plate's West face and Plate's top face at the joint first: this mark still goes "
        "by the size as drawn."
    )
    assert practice.unsure_of((), "mark") == ""
