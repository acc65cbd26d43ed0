"""What is done at the mortise, in order, and the wedge's own sizes."""

import pytest

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.practice import CHISEL, DRILL, SAW
from benchmate.joinery.half_dovetail.boring import DRIVE, ENGINEER, mortise_tasks
from benchmate.model.directions import Face
from benchmate.model.feature import Stage, Task
from tests.builders import length, real, set_in_words, task
from tests.joinery.half_dovetail.bents import SQUARE, Word, bent, mortise_of


def _tasks(**words: Word) -> tuple[Task, ...]:
    return mortise_tasks(mortise_of(bent(**words)))


def test_the_wedge_comes_last() -> None:
    """Bored from both faces, pared side and slope, then the wedge made and driven."""
    assert [each.id for each in _tasks()] == [
        "section",
        "knife",
        "bore",
        "bore-far",
        "pare-sides",
        "pare-tail-end",
        "pare-wedge-end",
        "make-wedge",
        "drive-wedge",
    ]
    assert [each.id for each in _tasks(housing="1/2")][2:4] == ["cut-housing", "strike-floor"]
    stages = [each.stage for each in _tasks()]
    assert stages == sorted(stages)
    assert stages[-2:] == [Stage.FIT, Stage.FINISH]


@pytest.mark.parametrize(
    ("housing", "first", "rest", "hook"),
    [("0", "4", "4", "East face"), ("1/2", "3-3/4", "3-3/4", "housing floor")],
)
def test_half_is_bored_from_each_face(housing: str, first: str, rest: str, hook: str) -> None:
    """All the wood the tenon passes, in two halves that meet."""
    tasks = _tasks(housing=housing)
    near, far = task(tasks, "bore"), task(tasks, "bore-far")
    assert [(each.value, each.hook) for each in near.readings] == [(length(first), hook)]
    assert [(each.value, each.hook) for each in far.readings] == [(length(rest), "West face")]
    assert (near.faces, far.faces) == ((Face.FAR_FIRST,), (Face.FIRST,))
    assert near.caution == far.caution == f"{FROM_BOTH} {DRILL}"


def test_the_far_face_is_bored_well_inside_its_lines() -> None:
    """Square in from its own lines the bit would go through the slope that the tail bears on."""
    far = task(_tasks(), "bore-far")
    assert [(each.value, each.words) for each in far.beside] == [
        (length("1"), "to keep inside the tail end line"),
        (length("1"), "to keep inside the wedge end line"),
    ]
    assert "no further along than the mortise is on the East face" in far.why


def test_the_sides_are_pared_to_the_tenon_as_cut() -> None:
    """As thick as it was drawn, or as it came out."""
    cut = {"tie": real(as_cut={"west-end-tenon": {"thickness": "1-15/16"}})}
    for words, wide in (({}, "2"), ({"real": cut}, "1-15/16")):
        (side,) = task(_tasks(**words), "pare-sides").readings
        assert side.value == length(wide)


def test_the_slopes_are_pared_out_from_square() -> None:
    """By as much as each runs out in the post, the tail's by the tail as it was cut."""
    cut = {"tie": real(as_cut={"west-end-tenon": {"length": "7-15/16"}})}
    tasks = _tasks(real=cut)
    tail, wedge = task(tasks, "pare-tail-end"), task(tasks, "pare-wedge-end")
    assert [each.value for each in (*tail.readings, *wedge.readings)] == [
        length("15/16"),
        length("1"),
    ]
    assert (tail.draws, wedge.draws) == ("tail-end", "wedge-end")
    assert (set_in_words(tail.setting), set_in_words(wedge.setting)) == (
        "bevel 6.7° off square to the face",
        "bevel 7.1° off square to the face",
    )


def test_the_wedge_is_made_by_four_figures() -> None:
    """Its thick end leads; thin end, length and width stand beside it."""
    made = task(_tasks(), "make-wedge")
    assert [each.value for each in made.readings] == [length("2-1/8")]
    assert [each.value for each in made.beside] == [length("1-1/8"), length("8"), length("2")]
    assert "longer at both ends" in made.why


def test_it_is_driven_from_the_far_face() -> None:
    """Thin end first, once the tie is in from the other."""
    drive = task(_tasks(), "drive-wedge")
    assert drive.title == "Drive the wedge from the West face"
    assert drive.faces == (Face.FIRST,)
    assert "in from the East face: thin end first" in drive.why
    assert task(_tasks(heading="east"), "drive-wedge").title.endswith("from the East face")


def test_a_housing_takes_the_lines_away() -> None:
    """Struck anew on its floor, where the slopes pass it: at 91" and 99-1/8"."""
    anew = task(_tasks(housing="1/2"), "strike-floor")
    assert [each.value for each in anew.readings] == [
        length(each) for each in ("91", "99-1/8", "2", "4")
    ]
    assert len({each.name for each in anew.readings}) == 4
    assert anew.readings[0].hook == "squared foot"


def test_what_hurts_carries_its_caution() -> None:
    """Saw, drill, chisel and mallet; and what the engineer decides, before anything is cut."""
    found = {each.id: each.caution for each in _tasks(housing="1/2")}
    assert found["cut-housing"] == f"{SAW} {CHISEL}"
    assert found["knife"] == ENGINEER
    assert found["drive-wedge"] == DRIVE
    assert found["make-wedge"] == SAW
    for name in ("pare-sides", "pare-tail-end", "pare-wedge-end"):
        assert found[name] == CHISEL


def test_a_recess_that_follows_the_stick_is_measured_first() -> None:
    """By square rule in a far face its depth is what the stick has over."""
    assert "measure first" in task(_tasks(own=SQUARE), "cut-housing").caution
    measured = {"post": real({"tie-post-mortise": {"first": "8-1/8"}})}
    cut = task(_tasks(own=SQUARE, real=measured), "cut-housing")
    assert cut.caution == f"{SAW} {CHISEL}"
    assert [each.value for each in cut.readings] == [length("5/8")]
