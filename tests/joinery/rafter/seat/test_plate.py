"""The plate's side of a seat."""

from benchmate.joinery.rafter.seat.plate import plate_cuts, plate_lines, plate_tasks
from benchmate.measure.length import NM_PER_INCH
from benchmate.model.directions import Face
from benchmate.model.feature import Stage
from tests.builders import length, line, real
from tests.joinery.rafter.roofs import Roof
from tests.joinery.rafter.seat.test_shape import shape


def test_a_birdsmouth_takes_nothing_off_its_plate() -> None:
    """Two lines say where the rafter stands, on the top and the outside."""
    found = shape(Roof())
    assert plate_cuts(found) == ()
    lines = plate_lines(found)
    assert [(each.id, each.at) for each in lines] == [
        ("start", length("48")),
        ("finish", length("52")),
    ]
    assert lines[0].faces == (Face.FIRST, Face.SECOND)
    assert [task.id for task in plate_tasks(found)] == ["section", "name"]


def test_a_seat_let_in_is_a_recess() -> None:
    """1" deep from the top, open outside, and ended where the rafter rises out of it."""
    found = shape(Roof(), let_in="1")
    (cut,) = plate_cuts(found)
    assert [plane.line for plane in cut.planes] == ["start", "finish", "floor", "end"]
    floor = line(plate_lines(found), "floor")
    assert (floor.at, floor.readings[0].value) == (length("1"), length("1"))
    end = line(plate_lines(found), "end")
    assert abs(end.at.nm / NM_PER_INCH - (6 * 2**0.5 - 5)) < 1e-6


def test_a_step_is_left_standing() -> None:
    """The recess begins 1-1/2" in from the outside, and its floor is a depth, closed all round."""
    found = shape(Roof(over="6", rafter="8 x 4"), let_in="1", step="1-1/2")
    lines = plate_lines(found)
    assert line(lines, "step").at == length("1-1/2")
    assert line(lines, "floor").faces == (Face.FIRST,)


def test_by_square_rule_the_excess_comes_off() -> None:
    """Over the top and the outside of the inner timber, as far down as the rafter passes."""
    own = {"plate": {"rule": "square", "inner": "8 x 6"}}
    sticks = {"plate": real({"wall-seat": {"first": "8-1/4", "second": "6-3/8"}})}
    found = shape(Roof(plate_faces=("down", "in"), own=own), sticks=sticks)
    lines = plate_lines(found)
    assert line(lines, "floor").at == length("8"), "from the underside, as on every stick"
    assert line(lines, "floor").readings[0].value == length("1/4")
    assert line(lines, "face").at == length("6")
    down = (8 + 5 - 6 * 2**0.5) - 0.375
    assert abs(line(lines, "lip").at.nm / NM_PER_INCH - down) < 1e-6


def test_the_order_of_work_at_a_recess() -> None:
    """Measure, knife, cut, pare: one figure each."""
    tasks = plate_tasks(shape(Roof(), let_in="1"))
    assert [task.id for task in tasks] == ["section", "knife", "cut-floor", "try-floor"]
    stages = [task.stage for task in tasks]
    assert stages == sorted(stages)
    assert stages[0] is Stage.MEASURE
    assert [task.readings[0].value for task in tasks[2:]] == [length("1")] * 2


def test_the_face_is_cut_down_by_square_rule() -> None:
    """3/8" on this stick, straight in."""
    own = {"plate": {"rule": "square", "inner": "8 x 6"}}
    sticks = {"plate": real({"wall-seat": {"first": "8", "second": "6-3/8"}})}
    found = shape(Roof(plate_faces=("up", "in"), own=own), sticks=sticks)
    tasks = {task.id: task for task in plate_tasks(found)}
    assert list(tasks) == ["section", "knife", "cut-face"]
    assert tasks["cut-face"].readings[0].value == length("3/8")
