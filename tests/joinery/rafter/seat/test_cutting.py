"""What to do at a notch, one figure to one task."""

from benchmate.joinery.rafter.seat.cutting import notch_tasks
from benchmate.joinery.rafter.seat.shape import SeatShape
from benchmate.measure.printing import Style, Tape
from benchmate.model.feature import Stage, Task
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, tail
from tests.joinery.rafter.seat.test_notch import ROOF
from tests.joinery.rafter.seat.test_shape import shape

TAPE = Tape(style=Style.INCHES)
STEP_OFF = Task(id="step-off", stage=Stage.MARK, title="Step off", why="")


def tasks(found: SeatShape) -> dict[str, Task]:
    """The tasks by id, in order."""
    return {task.id: task for task in notch_tasks(found, TAPE, STEP_OFF)}


def test_the_order_of_work() -> None:
    """Measure, check by steps, knife, saw the heel, saw the seat, pare."""
    found = tasks(shape(ROOF))
    assert list(found) == ["section", "step-off", "knife", "saw-heel", "saw-seat", "pare"]
    stages = [task.stage for task in found.values()]
    assert stages == sorted(stages)


def test_one_figure_to_one_task() -> None:
    """How far each kerf goes: 2-1/4" of heel, 3" of seat; 5-1/4" over it when pared (table 7.4)."""
    found = tasks(shape(ROOF))
    assert [found[each].readings[0].value for each in ("saw-heel", "saw-seat", "pare")] == [
        length("2-1/4"),
        length("3"),
        length("5-1/4"),
    ]
    assert all(len(found[each].readings) <= 1 for each in ("knife", "saw-heel", "saw-seat", "pare"))


def test_an_overcut_is_cautioned_against() -> None:
    """Both kerfs stop where the lines cross."""
    found = tasks(shape(ROOF))
    assert all("overcut" in found[each].caution for each in ("saw-heel", "saw-seat"))


def test_a_kerf_that_follows_the_stick_waits_to_be_measured() -> None:
    """The heel is as high as the rafter is deep there; said until that was measured."""
    assert "measure first" in tasks(shape(ROOF))["saw-heel"].caution
    sticks = {"rafter": real({"wall-notch": {"first": "6"}})}
    assert "measure first" not in tasks(shape(ROOF, sticks=sticks))["saw-heel"].caution


def test_a_step_seat_has_two_more_kerfs() -> None:
    """1" up the abutment, 1-1/2" of ledge."""
    found = tasks(shape(ROOF, let_in="1", step="1-1/2"))
    assert found["saw-abutment"].readings[0].value == length("1")
    assert found["saw-ledge"].readings[0].value == length("1-1/2")


def test_without_a_heel_there_is_none_to_saw() -> None:
    """The tail's own cut is sawn with the tail."""
    assert "saw-heel" not in tasks(shape(Roof(out="0"), tail()))


def test_square_rule_adds_the_far_side() -> None:
    """1/4" off the far side of a stick 4-1/4" wide, where it is let in."""
    own = {"rafter": {"rule": "square", "inner": "6 x 4"}}
    sticks = {"rafter": real({"all": {"second": "4-1/4"}})}
    found = tasks(shape(Roof(own=own), sticks=sticks, let_in="1"))
    assert found["reduce-second"].readings[0].value == length("1/4")
