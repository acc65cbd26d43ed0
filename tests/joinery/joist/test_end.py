"""What is done at a joist's end: measured, cut down where it goes in, measured as cut."""

import pytest

from benchmate.frame.practice import AS_CUT, CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist.end import end_sizes
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Feature, Stage, Task
from benchmate.model.solids import Axis
from tests.builders import length, lengths, line, pocket, read
from tests.joinery.joist.floors import END, SQUARE, SQUARE_JOIST, SQUARE_SILL, Floor

REDUCED = ("reduce-first", "reduce-second")


def _tasks(floor: Floor, **words: str) -> dict[str, Task]:
    return {task.id: task for task in floor.sides(**words)[0].tasks}


def _lines(floor: Floor, **words: str) -> Feature:
    return floor.sides(**words)[0]


def _steps(floor: Floor, **words: str) -> dict[str, Step]:
    """The joist's steps at this end, by what is done, in order."""
    steps = lay_out(floor.frame(pocket(**words)), "joist").steps
    return {step.id.partition("/")[2]: step for step in steps if step.feature == END}


def test_the_steps_of_a_square_rule_end_in_order() -> None:
    """Measure the stick, strike, knife, cut both far faces down, measure the end as cut."""
    assert list(_steps(SQUARE)) == [
        "section",
        "reduction-stop",
        "reduced-first",
        "reduced-second",
        "knife-reduction",
        *REDUCED,
        AS_CUT,
    ]


def test_a_mill_rule_end_is_measured_twice_and_cut_nowhere() -> None:
    """It goes in as it is: there is nothing to strike but its length."""
    assert list(_steps(Floor())) == ["section", AS_CUT]
    assert Floor().sides()[0].cuts == ()


def test_a_joist_cut_down_at_its_end_loses_its_underside_alone() -> None:
    """4 x 6 joists cut to 4 x 4 at the ends (TFG-joist, trade.md 2.4): 2" off below."""
    floor = Floor(joist={"section": "6 x 4"})
    steps = _steps(floor, bearing="3", end_depth="4")
    assert [name for name in steps if "reduc" in name] == [
        "reduction-stop",
        "reduced-first",
        "knife-reduction",
        "reduce-first",
    ]
    assert read(steps["reduce-first"]) == lengths("2")
    assert read(steps["reduced-first"]) == lengths("4")


def test_the_figures_waste_and_faces_of_a_reduced_end() -> None:
    """Laid out from the reference faces: 5" from the top and 3" from the west side."""
    found = {
        name: (read(step), step.readings[0].hook, step.waste_side, step.faces)
        for name, step in _steps(SQUARE).items()
        if step.line
    }
    assert found == {
        "reduction-stop": (
            lengths("2-1/2"),
            "squared south end",
            "south end",
            (Face.FAR_FIRST, Face.FAR_SECOND),
        ),
        "reduced-first": (
            lengths("5"),
            "top face",
            "underside",
            (Face.SECOND, Face.FAR_SECOND, Face.REFERENCE_END),
        ),
        "reduced-second": (
            lengths("3"),
            "West face",
            "East face",
            (Face.FIRST, Face.FAR_FIRST, Face.REFERENCE_END),
        ),
    }


def test_the_far_end_is_struck_from_the_squared_end_too() -> None:
    """All figures run from one place: the joist's length less what goes in."""
    joint = pocket(end="north", into="sill")
    steps = lay_out(SQUARE.frame(joint), "joist").steps
    stop = next(step for step in steps if step.id == "north-end-bearing/reduction-stop")
    assert read(stop) == (length("6' 4") - length("2"),)
    assert stop.readings[0].hook == "squared south end"
    assert stop.waste_side == "north end"


@pytest.mark.parametrize(
    ("end", "actual", "back"),
    [("south", "8", "2"), ("south", "8-3/4", "2-3/4"), ("north", "8-3/4", "2")],
)
def test_it_is_reduced_as_far_back_as_it_goes_in(end: str, actual: str, back: str) -> None:
    """Through what the sill is over on its far face; on a reference face the bearing alone."""
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": actual})
    stop = line(_lines(floor, end=end).lines, "reduction-stop")
    assert [beside.value for beside in stop.beside] == [length(back)]


def test_each_far_face_is_one_task_with_one_figure() -> None:
    """Of two figures on one step, one is missed; the figures are actual - inner, here."""
    measures = {"first": "5-3/8", "second": "3-1/4"}
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, joist_measures=measures)
    tasks = _tasks(floor)
    found = {name: (tasks[name].faces, tasks[name].draws, tasks[name].stage) for name in REDUCED}
    assert found == {
        "reduce-first": ((Face.FAR_FIRST,), "reduced-first", Stage.CUT),
        "reduce-second": ((Face.FAR_SECOND,), "reduced-second", Stage.CUT),
    }
    figures = [[(each.value, each.hook) for each in tasks[name].readings] for name in REDUCED]
    assert figures == [[(length("3/8"), "underside")], [(length("1/4"), "East face")]]


def test_a_face_that_lies_at_its_line_has_no_step() -> None:
    """Nothing comes off a joist that is no bigger than its inner timber there."""
    measures = {"first": "5", "second": "3-1/64"}
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, joist_measures=measures)
    assert [name for name in _steps(floor) if "reduc" in name] == [
        "reduction-stop",
        "reduced-second",
        "knife-reduction",
        "reduce-second",
    ]


def test_what_comes_off_is_hatched_before_it_is_cut() -> None:
    """Trade.md 5.3: the waste is crossed on every face it comes off, and on the end grain."""
    task = _tasks(SQUARE)["knife-reduction"]
    assert (task.stage, task.draws) == (Stage.KNIFE, "reduction-stop")
    assert task.faces == (Face.FAR_FIRST, Face.FAR_SECOND, Face.REFERENCE_END)
    assert task.waste == "Towards the south end, outside the lines."
    assert _tasks(SQUARE, end="north")["knife-reduction"].faces[-1] is Face.FAR_END


def test_what_hurts_carries_its_caution() -> None:
    """Saw and chisel, far lines from the wrong face, and depths on a stick nobody measured."""
    tasks, feature = _tasks(SQUARE), _lines(SQUARE)
    warned = unmeasured(SQUARE.frame(pocket()).stick("joist"), Axis.FIRST, ())
    assert {tasks[name].caution for name in REDUCED} == {f"{warned}{SAW} {CHISEL}"}
    assert line(feature.lines, "reduced-first").caution == "Never measure this from the underside."
    assert line(feature.lines, "reduced-second").caution == "Never measure this from the East face."
    measured = Floor(joist=SQUARE_JOIST, joist_measures={"first": "5-1/2", "second": "3-1/2"})
    assert {_tasks(measured)[name].caution for name in REDUCED} == {f"{SAW} {CHISEL}"}


def test_the_framer_is_asked_for_the_section_and_for_the_end_as_cut() -> None:
    """The first before anything is struck, the second once it is cut; neither goes out of date."""
    tasks = _tasks(SQUARE)
    asked = {name: (task.asks, task.stage) for name, task in tasks.items() if task.asks}
    assert asked == {
        "section": (Asks.SECTION, Stage.MEASURE),
        AS_CUT: (Asks.AS_CUT, Stage.AS_CUT),
    }
    assert {name for name, task in tasks.items() if not task.lasting} == set(asked)


def test_the_end_is_measured_from_its_top_and_its_side() -> None:
    """From the faces its pocket is held to, so that what it lost is lost on the far sides."""
    task = _tasks(SQUARE)[AS_CUT]
    assert [(each.value, each.hook) for each in task.readings] == [
        (length("5"), "top face"),
        (length("3"), "West face"),
    ]
    turned = Floor(joist={"first_face": "west", "second_face": "up", "section": "3-1/2 x 5-1/2"})
    assert [(each.value, each.hook) for each in _tasks(turned)[AS_CUT].readings] == [
        (length("5-1/2"), "top face"),
        (length("3-1/2"), "West face"),
    ]


def test_sizes_as_cut_are_shown_once_typed_and_compared_with_what_was_laid_out() -> None:
    """Law 5: the pocket follows; the figures the end is cut to stay."""
    floor = Floor(
        joist=SQUARE_JOIST, sill=SQUARE_SILL, as_cut={"thickness": "4-15/16", "width": "2-7/8"}
    )
    task = _tasks(floor)[AS_CUT]
    assert [each.value for each in task.readings] == list(lengths("4-15/16", "2-7/8"))
    end, _ = floor.shapes()
    sizes = {size.name: size.laid_out for size in end_sizes(end)}
    assert sizes == {"thickness": length("5"), "width": length("3")}
