"""What every recess that a joist drops into has in common."""

import pytest

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist.notch import (
    ENGINEER,
    back_line,
    floor_and_back,
    floor_line,
    notch_tasks,
)
from benchmate.measure.printing import Tape
from benchmate.model.directions import Face
from benchmate.model.feature import Reading, Stage
from benchmate.model.solids import Axis, Plane
from tests.builders import length, lengths, real
from tests.floor import Floor
from tests.joinery.joist.tails import HALF, LOW, dropped, tailed

WIDE = Reading(value=length("4"), hook="start", way="to the finish")
FAR = LOW.with_(near=False)


def test_a_floor_and_a_back() -> None:
    """8" down the beam, 2-1/8" in from the face the joist comes from."""
    pocket = dropped().shapes[1]
    down, back = length("8").nm, length("2-1/8").nm
    assert floor_and_back(pocket) == (
        Plane((0, 1, 0), down, "floor"),
        Plane((0, 0, 1), back, "back"),
    )
    turned = dropped(Floor(lower="1", near=False, from_top=False)).shapes[1]
    assert floor_and_back(turned) == (
        Plane((0, -1, 0), -length("2").nm, "floor"),
        Plane((0, 0, -1), -length("5-7/8").nm, "back"),
    )


@pytest.mark.parametrize("make", [dropped, tailed])
def test_the_same_for_pocket_and_socket(make: type) -> None:
    """Titles, figures and words are of the recess it is."""
    end, notch = make(end_depth="5").shapes
    noun = notch.noun
    floor = floor_line(notch, end, (length("2"), length("5")), Tape())
    assert (floor.title, floor.axis, floor.at) == (
        f"{noun} floor line",
        Axis.FIRST,
        length("6"),
    )
    assert [each.value for each in floor.beside] == list(lengths("5", "4"))
    assert back_line(notch).title == f"{noun} back line"
    titles = [task.title for task in notch_tasks(notch, WIDE, fits="It fits.")]
    assert titles[1:5] == [
        f"Knife the {noun.lower()}, hatch the inside",
        f"Saw the {noun.lower()}'s two sides",
        f"Chop the {noun.lower()} out to its back",
        f"Pare the {noun.lower()}'s sides",
    ]


def test_a_floor_tells_what_bears_on_it() -> None:
    """A 5" joist in a 2" pocket bears on 10 sq in (FF-joist, trade.md 2.4)."""
    end, pocket = dropped(LOW.with_(joist="7 x 5")).shapes
    line = floor_line(pocket, end, (end.recess, end.wide), Tape())
    assert "Joist bears on 10 sq in here" in line.why
    assert line.caution == ENGINEER


def test_a_floor_measured_from_below_tells_its_depth_here() -> None:
    """And whether anybody measured the stick there."""
    turned = Floor(lower="1", from_top=False)
    end, pocket = dropped(turned).shapes
    line = floor_line(pocket, end, (end.recess, end.wide), Tape())
    assert (line.at, line.beside[0].value) == lengths("2", "8")
    assert "Not measured here yet" in line.why
    deep = turned.with_(real={"beam": real({"all": {"first": "10-1/4"}})})
    end, pocket = dropped(deep).shapes
    line = floor_line(pocket, end, (end.recess, end.wide), Tape())
    assert line.beside[0].value == length("8-1/4")
    assert "as the section measured here" in line.why or "section measured here" in line.why


def test_a_back_in_a_far_face_is_held_from_the_reference() -> None:
    """By square rule all joists are as long; by mill rule this one follows the stick."""
    near, far = (back_line(dropped(floor).shapes[1]) for floor in (LOW, FAR))
    square = back_line(dropped(HALF).shapes[1])
    assert (near.at, far.at, square.at) == lengths("2-1/8", "5-7/8", "5-7/8")
    assert (near.caution, far.caution) == ("", "Never measure this from the North face.")
    assert "follows what this stick measures" in far.why
    assert "every joist is as long" in square.why
    assert square.beside[0].value == length("2-5/8")
    assert near.beside[1].value == length("1/8")


def test_what_is_done_in_order_with_its_figures() -> None:
    """One figure to one task, down and in from the faces it is open at."""
    found = notch_tasks(dropped().shapes[1], WIDE, fits="It fits.")
    assert [(task.id, task.stage) for task in found[1:]] == [
        ("knife", Stage.KNIFE),
        ("saw-sides", Stage.CUT),
        ("chop", Stage.CUT),
        ("pare", Stage.PARE),
        ("try-floor", Stage.PARE),
    ]
    figures = {task.id: [each.value for each in task.readings] for task in found[1:]}
    assert figures == {
        "knife": [],
        "saw-sides": [length("8")],
        "chop": [length("2-1/8")],
        "pare": [length("4")],
        "try-floor": [length("8")],
    }
    assert {task.faces for task in found[1:]} == {(Face.FIRST, Face.SECOND)}
    assert found[4].why == "It fits."


def test_a_depth_that_follows_a_stick_nobody_measured_is_told() -> None:
    """By square rule from a far face, and from a top that is not the reference."""
    square = HALF.with_(real={})
    chop = notch_tasks(dropped(square).shapes[1], WIDE, fits="")[3]
    stick = dropped(square).shapes[1].stick
    assert chop.caution == f"{unmeasured(stick, Axis.SECOND, ())}{CHISEL}"
    assert notch_tasks(dropped(FAR).shapes[1], WIDE, fits="")[3].caution == CHISEL
    turned = dropped(Floor(lower="1", from_top=False)).shapes[1]
    saw = notch_tasks(turned, WIDE, fits="")[2]
    assert saw.caution == f"{unmeasured(turned.stick, Axis.FIRST, ())}{SAW}"
