"""The ridge's side of a rafter's head."""

from benchmate.joinery.rafter.ridge.housing import housing_cuts, housing_lines, housing_tasks
from benchmate.model.directions import Face
from tests.builders import length, line, real
from tests.joinery.rafter.ridge.test_shape import ROOF, SQUARE, shape
from tests.joinery.rafter.roofs import Roof


def test_a_plain_butt_takes_nothing_off_the_ridge() -> None:
    """Two lines on the side that looks down the slope say where it comes."""
    found = shape()
    assert housing_cuts(found) == ()
    lines = housing_lines(found)
    assert [(each.id, each.at) for each in lines] == [
        ("start", length("48")),
        ("finish", length("52")),
    ]
    assert lines[0].faces == (Face.FAR_SECOND,)
    assert [task.id for task in housing_tasks(found)] == ["section"]


def lowered() -> Roof:
    """A ridge whose top stands 3" over the rafter's."""
    return Roof(rise="9", own={"ridge": {"at": {"east": "8' 1", "up": "14' 7-1/4"}}})


def test_a_rafter_that_comes_below_the_top_has_its_top_edge_marked() -> None:
    """Its edge comes 72" - 3/4" + 101" high at the face, and the ridge's top at 14' 7-1/4"."""
    found = shape(lowered())
    top = line(housing_lines(found), "top")
    assert top.at == length("3")
    assert top.beside[0].value == length("3")


def test_a_housing_open_above() -> None:
    """3/4" deep, 1" - 9/16" under the top at least, with a level bottom the seat stands on."""
    found = shape(let_in="3/4")
    (cut,) = housing_cuts(found)
    assert [plane.line for plane in cut.planes] == ["start", "finish", "floor", "seat"]
    lines = housing_lines(found)
    assert line(lines, "floor").readings[0].value == length("3/4")
    assert line(lines, "floor").at == length("1-1/4"), "from the reference face across"
    seat = line(lines, "seat")
    assert seat.at == length("7-1/2") - length("1") - length("9/16")


def test_a_housing_closed_above() -> None:
    """Where the ridge stands higher it ends level with the rafter's top edge inside."""
    found = shape(lowered(), let_in="3/4")
    lines = housing_lines(found)
    assert line(lines, "top").at == length("3") - length("9/16")
    assert line(lines, "floor").faces == (Face.FAR_SECOND,)


def test_by_square_rule_the_excess_comes_off() -> None:
    """1/2" in front of the inner face, as far down as the rafter passes."""
    sticks = {"ridge": real({"top-housing": {"first": "10", "second": "2-1/2"}})}
    found = shape(Roof(rise="9", own=SQUARE), sticks=sticks)
    lines = housing_lines(found)
    assert line(lines, "face").at == length("2"), "from the reference face, as on every stick"
    assert line(lines, "lip").at == length("7-1/2") - length("1") + length("3/8")
    (cut,) = housing_cuts(found)
    assert [plane.line for plane in cut.planes] == ["start", "finish", "face", "lip"]
    assert "measure first" not in housing_tasks(found)[2].caution


def test_the_order_of_work_at_a_housing() -> None:
    """Measure, knife, cut, pare: one figure each, the depth from the real face."""
    tasks = housing_tasks(shape(ROOF, let_in="3/4"))
    assert [task.id for task in tasks] == ["section", "knife", "cut-housing", "try-floor"]
    assert [task.readings[0].value for task in tasks[2:]] == [length("3/4")] * 2
    stages = [task.stage for task in tasks]
    assert stages == sorted(stages)
