"""What a place on a ridge and a seat on a plate say alike."""

from benchmate.frame.marking import Says
from benchmate.joinery.rafter.recess import bears_here, inner_says, lying_side, recess_lines
from benchmate.model.directions import Face
from benchmate.model.feature import Reading
from benchmate.model.findings import look, stop
from benchmate.model.solids import Axis, above, below
from tests.builders import length, line
from tests.joinery.rafter.roofs import Roof, built, seat
from tests.joinery.rafter.test_lying import measured, plate
from tests.joinery.rafter.test_sides import over_plate

FRAME = built(Roof(), seat())
UPSIDE_DOWN = Roof(plate_faces=("down", "in"))


def test_the_floor_is_set_off_and_the_rest_measured_square() -> None:
    """One figure from the real face; a lip lies where its own reading says."""
    deep = Reading(value=length("1-1/4"), hook="top face", way="straight down, to the floor")
    planes = {
        "floor": below(Axis.FIRST, length("1"), "floor"),
        "lip": above(Axis.FIRST, length("5"), "lip"),
    }
    says = {name: Says(title=name, why="") for name in planes}
    found = recess_lines(planes, says, deep)
    assert [(each.id, each.at) for each in found] == [
        ("floor", length("1")),
        ("lip", length("5")),
    ]
    assert (line(found, "floor").readings, line(found, "lip").readings) == ((deep,), ())


def test_the_inner_timber_is_never_measured_from_the_rough_face() -> None:
    """Its line is struck from the reference side."""
    says = inner_says("Inner top line", "top face")
    assert (says.title, says.caution) == (
        "Inner top line",
        "Never measure this from the top face.",
    )


def test_a_floor_from_a_far_face_says_whether_that_was_measured() -> None:
    """From a reference face the depth holds whatever the stick."""
    lying = plate(FRAME)
    assert bears_here("The seat", lying, lying.top_face) == "The seat bears here."
    far = plate(built(UPSIDE_DOWN, seat()))
    assert "Not measured here yet" in bears_here("The seat", far, far.top_face)
    known = measured(UPSIDE_DOWN, "8", "6")
    assert "the section measured here" in bears_here("The seat", known, known.top_face)
    assert known.top_face is Face.FAR_FIRST


def test_the_side_of_the_timber_it_lies_on() -> None:
    """Where the rafter crosses it; it waits for the rafter's width, and hears what stops that."""
    told = (
        stop("a", "rafter", "wall-notch", "", ""),
        look("b", "rafter", "wall-notch", "", ""),
        look("c", "plate", "wall-seat", "", ""),
    )
    found = lying_side(plate(FRAME), over_plate(FRAME), "wall-notch", "Seat", told)
    assert (found.id, found.timber, found.title) == ("wall-seat", "plate", "Seat for Rafter")
    assert (found.at, found.place) == (length("48"), ("wall-seat",))
    assert found.awaits == (("rafter", "wall-notch/section"),)
    assert [(each.code, each.timber) for each in found.findings] == [
        ("a", "plate"),
        ("c", "plate"),
    ]
