"""What is done at a dovetailed joist's end: one figure to one task."""

import pytest

from benchmate.frame.practice import AS_CUT, CHISEL, LEAVE_THE_LINE, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist.tailing import TAKE_THE_LINE, tail_sizes, tail_tasks
from benchmate.model.directions import Face
from benchmate.model.feature import Asks, Stage, Task
from tests.builders import length, lengths
from tests.floor import Floor, over
from tests.joinery.joist.tails import HALF, LOW, as_cut, measured, tailed


def tasks(floor: Floor = LOW, *, wedged: bool = False, **words: object) -> dict[str, Task]:
    """The tasks at a tail, in order."""
    tail, _ = tailed(floor, **words).shapes
    return {task.id: task for task in tail_tasks(tail, wedged=wedged)}


def test_shoulders_come_before_flanks() -> None:
    """A flank cut first would leave nothing to stop the saw at."""
    assert list(tasks(end_depth="3-1/2")) == [
        "section",
        "knife",
        "saw-near",
        "saw-far",
        "saw-under",
        "cut-near",
        "cut-far",
        "cut-under",
        "pare",
        AS_CUT,
    ]


@pytest.mark.parametrize(
    ("straight", "cut"), [("east", ["saw-far", "cut-far"]), ("west", ["saw-near", "cut-near"])]
)
def test_a_straight_flank_is_left_alone(straight: str, cut: list[str]) -> None:
    """Nothing comes off it by mill rule."""
    found = tasks(straight=straight)
    assert [name for name in found if name.startswith(("saw", "cut"))] == cut


def test_by_square_rule_what_is_over_goes_first_or_with_the_flank() -> None:
    """Through a far face the whole end is reduced."""
    found = tasks(HALF)
    assert {"knife-reduction", "reduce-first", "reduce-second"} <= set(found)
    assert "saw-under" not in found
    plain = tasks(over(LOW, (0, 0, 16, 8), "square"))
    assert {"saw-under", "cut-under"} <= set(plain)
    assert [each.value for each in plain["saw-far"].readings] == [length("1")]


def test_each_cut_has_one_figure_and_one_line() -> None:
    """Shoulders in to the neck from each side, the flank out to its tip."""
    floor = LOW.with_(real=measured(first="7-1/8", second="4-1/8"))
    found = {
        name: (task.draws, [each.value for each in task.readings], task.faces)
        for name, task in tasks(floor, end_depth="3-1/2").items()
        if task.stage is Stage.CUT
    }
    top, under = Face.FIRST, Face.FAR_FIRST
    east, west, end = Face.SECOND, Face.FAR_SECOND, Face.REFERENCE_END
    assert found == {
        "saw-near": ("shoulder", [length("3/4")], (east,)),
        "saw-far": ("shoulder", [length("3/4")], (west,)),
        "saw-under": ("shoulder", [length("3-5/8")], (under,)),
        "cut-near": ("near-flank", [length("3")], (top, end)),
        "cut-far": ("far-flank", [length("3")], (top, end)),
        "cut-under": ("tail-underside", [length("3-1/2")], (end, east, west)),
    }


def test_a_wedged_tail_takes_its_line() -> None:
    """Male slightly under, female over (Massie-dt, trade.md 2.4); else the line is left."""
    assert tasks(wedged=True)["cut-near"].why == TAKE_THE_LINE
    assert tasks()["cut-near"].why == LEAVE_THE_LINE
    assert "wedge" in tasks(wedged=True)["pare"].why
    assert "wedge" not in tasks()["pare"].why
    assert "gauge" in tasks()["pare"].title


def test_the_neck_is_tried_across() -> None:
    """2-1/2" at the shoulder."""
    assert [each.value for each in tasks()["pare"].readings] == [length("2-1/2")]


def test_what_hurts_carries_its_caution() -> None:
    """Saw and chisel, and depths from a far side that nobody measured."""
    found = tasks(end_depth="3-1/2")
    tail, _ = tailed().shapes
    side, plumb = (unmeasured(tail.stick, axis, ()) for axis in (tail.sides, tail.plumb))
    assert found["saw-near"].caution == SAW
    assert found["saw-far"].caution == f"{side}{SAW}"
    assert found["saw-under"].caution == f"{plumb}{SAW}"
    assert found["cut-near"].caution == f"{SAW} {CHISEL}"
    assert found["pare"].caution == CHISEL
    known = tasks(LOW.with_(real=measured(first="7", second="4")), end_depth="3-1/2")
    assert {known[name].caution for name in ("saw-near", "saw-far", "saw-under")} == {SAW}


def test_it_is_knifed_where_its_shoulder_is() -> None:
    """On the top beside the neck, down the sides that lose wood, and below."""
    knife = tasks(straight="west")["knife"]
    assert knife.faces == (Face.FIRST, Face.SECOND, Face.FAR_FIRST, Face.REFERENCE_END)
    assert "outside the flank lines" in knife.caution


def test_the_framer_is_asked_for_the_section_and_the_tail_as_cut() -> None:
    """Neither goes out of date; as-cut sizes are shown once typed."""
    asked = {name: task for name, task in tasks().items() if task.asks is not Asks.NOTHING}
    assert list(asked) == ["section", AS_CUT]
    assert not any(task.lasting for task in asked.values())
    assert [each.value for each in asked[AS_CUT].readings] == list(lengths("7", "4", "3"))
    shown = tasks(LOW.with_(real=as_cut(width="3-15/16")))[AS_CUT].readings
    assert [each.value for each in shown] == list(lengths("7", "3-15/16", "3"))


def test_the_sizes_that_can_be_typed() -> None:
    """As laid out, to compare with."""
    tail, _ = tailed(end_depth="5").shapes
    assert {size.name: size.laid_out for size in tail_sizes(tail)} == {
        "thickness": length("5"),
        "width": length("4"),
        "length": length("3"),
    }
