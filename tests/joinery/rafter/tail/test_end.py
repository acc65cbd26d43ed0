"""The lines and tasks of a tail."""

from benchmate.joinery.rafter.strike import Mark
from benchmate.joinery.rafter.tail.end import tail_cuts, tail_lines, tail_tasks
from benchmate.joinery.rafter.tail.shape import TailShape
from benchmate.measure.length import Length
from benchmate.measure.printing import Style, Tape
from benchmate.model.feature import Stage, Task
from tests.builders import length, line, set_in_words
from tests.joinery.rafter.roofs import Roof
from tests.joinery.rafter.tail.test_shape import shape

TAPE = Tape(style=Style.INCHES)
SEAT = Mark(0, "the heel line on Plate")


def tasks(found: TailShape) -> dict[str, Task]:
    """The tasks by id, in order."""
    return {task.id: task for task in tail_tasks(found, TAPE)}


def test_the_tail_line_is_plumb_from_the_top_edge() -> None:
    """Struck along the tongue, at the reading that all others start from."""
    (found,) = tail_lines(shape(), SEAT, TAPE)
    assert (found.id, found.at) == ("shoulder", Length(0))
    assert found.slant is not None
    assert "strike along the tongue" in set_in_words(found.slant.setting)
    assert "foot shoulder line" in found.why


def test_tail_length_is_unit_length_times_projection() -> None:
    """Trade notes 7.3 (NAV-65): a foot out at 9 in 12, 15" to the foot, is 15" of tail."""
    (found,) = tail_lines(shape(), SEAT, TAPE)
    assert [beside.value for beside in found.beside] == [
        length("12"),
        length("15"),
        length("7-1/2"),
    ]
    (flush,) = tail_lines(shape(Roof(rise="9", out="0")), SEAT, TAPE)
    assert [beside.value for beside in flush.beside] == [length("7-1/2")], "no projection"
    (alone,) = tail_lines(shape(), None, TAPE)
    assert len(alone.beside) == 1


def test_a_level_tail_is_struck_along_the_blade() -> None:
    """And its own figure is its length."""
    (found,) = tail_lines(shape(cut="level"), None, TAPE)
    assert found.slant is not None
    assert "strike along the blade" in set_in_words(found.slant.setting)
    assert found.beside[0].value == length("10")
    assert "shoulder line" not in found.why, "the squared foot is the datum"


def test_the_level_line_under_a_plumb_cut() -> None:
    """Measured down the tail line from the top edge, then level."""
    found = tail_lines(shape(cut="plumb and level", level="4"), SEAT, TAPE)
    level = line(found, "level")
    assert level.readings[0].value == length("4-1/2")
    assert level.readings[0].words == "from the top edge, down the tail line, then level"
    assert level.beside[0].value == length("4")


def test_what_comes_off() -> None:
    """One plane to a cut: beyond the end, and under the level one."""
    assert [len(cut.planes) for cut in tail_cuts(shape())] == [1]
    both = tail_cuts(shape(cut="plumb and level", level="4"))
    assert [cut.planes[0].line for cut in both] == ["shoulder", "level"]


def test_the_order_of_work() -> None:
    """The level cut is sawn while the tip still holds its corner."""
    found = tasks(shape(cut="plumb and level", level="4"))
    assert list(found) == ["section", "knife", "saw-level", "saw-end"]
    assert [found[each].readings[0].value for each in ("saw-level", "saw-end")] == [
        length("4"),
        length("4-1/2"),
    ]
    assert found["section"].stage is Stage.MEASURE


def test_a_cut_as_long_as_the_stick_is_deep_is_measured_first() -> None:
    """A plumb cut alone follows the stick; over a level one it holds."""
    assert "measure first" in tasks(shape())["saw-end"].caution
    both = tasks(shape(cut="plumb and level", level="4"))
    assert "measure first" not in both["saw-end"].caution
    assert "measure first" in both["saw-level"].caution
