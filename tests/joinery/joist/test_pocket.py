"""The pocket's own side: laid out from the reference faces, sawn, chopped and pared."""

from collections.abc import Mapping

import pytest

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist.notch import ENGINEER
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.model.feature import Feature, Stage
from benchmate.model.solids import Axis
from tests.builders import length, lengths, line, pocket, read
from tests.joinery.joist.floors import POCKET, SQUARE, SQUARE_JOIST, SQUARE_SILL, Floor


def _steps(floor: Floor, **words: str) -> dict[str, Step]:
    """The sill's steps at the pocket, by what is done, in order."""
    steps = lay_out(floor.frame(pocket(**words)), "sill").steps
    return {step.id.partition("/")[2]: step for step in steps if step.feature == POCKET}


def _pocket(floor: Floor, **words: str) -> Feature:
    return floor.sides(**words)[1]


def test_the_steps_of_a_pocket_in_order() -> None:
    """Trade.md 5.1: laid out, read back, knifed and hatched before the saw; the floor last."""
    assert [(name, step.stage) for name, step in _steps(SQUARE).items()] == [
        ("section", Stage.MEASURE),
        ("start", Stage.MARK),
        ("finish", Stage.MARK),
        ("floor", Stage.MARK),
        ("back", Stage.MARK),
        ("back-check", Stage.BACK_CHECK),
        ("knife", Stage.KNIFE),
        ("saw-sides", Stage.CUT),
        ("chop", Stage.CUT),
        ("pare", Stage.PARE),
        ("try-floor", Stage.PARE),
    ]


def test_the_figures_waste_and_faces_of_a_pocket_in_a_far_face() -> None:
    """FF-joist: 2" from an inner 8" is 6" from the reference, and 1/8" to spare behind it."""
    found = {
        name: (read(step), step.readings[0].hook, step.waste_side, step.faces)
        for name, step in _steps(SQUARE).items()
        if step.line
    }
    sides = (Face.FIRST, Face.FAR_SECOND)
    assert found == {
        "start": (lengths("4'"), "squared west end", "east end", sides),
        "finish": (lengths("4' 3"), "squared west end", "west end", sides),
        "floor": (lengths("5"), "top face", "top face", (Face.FAR_SECOND,)),
        "back": (lengths("5-7/8"), "South face", "North face", (Face.FIRST,)),
    }


def test_the_figures_of_a_pocket_in_a_reference_face() -> None:
    """On the reference face it is cut as deep as it is called, on any stick (FF-joist)."""
    for actual in ("8", "9"):
        floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": actual})
        back = _steps(floor, end="north")["back"]
        assert (read(back), back.readings[0].hook) == (lengths("2-1/8"), "South face")
        assert (back.waste_side, back.faces) == ("South face", (Face.FIRST,))
        assert back.caution == ""


@pytest.mark.parametrize(("actual", "deep"), [("8", "2-1/8"), ("8-3/8", "2-1/2"), ("9", "3-1/8")])
def test_the_back_holds_and_only_its_depth_follows_the_stick(actual: str, deep: str) -> None:
    """Law 2: laid out from the reference face on any oversize stick."""
    floor = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": actual})
    back = line(_pocket(floor).lines, "back")
    assert back.at == length("5-7/8")
    assert [beside.value for beside in back.beside] == list(lengths(deep, "1/8"))
    chop = next(task for task in _pocket(floor).tasks if task.id == "chop")
    assert [(each.value, each.hook) for each in chop.readings] == [(length(deep), "North face")]


@pytest.mark.parametrize(("actual", "at"), [("8", "5-7/8"), ("8-3/8", "6-1/4")])
def test_by_mill_rule_the_depth_holds_and_the_joist_follows(actual: str, at: str) -> None:
    """The stick is as it is, and the reason does not promise joists of one length."""
    back = line(_pocket(Floor(sill_measures={"second": actual})).lines, "back")
    assert (back.at, back.beside[0].value) == lengths(at, "2-1/8")
    assert "joist's length follows" in back.why
    assert "every joist is as long" in line(_pocket(SQUARE).lines, "back").why


def test_one_figure_to_one_task() -> None:
    """Of two figures on one step, one is missed."""
    tasks = {task.id: task for task in _pocket(SQUARE).tasks}
    figures = {
        name: [(each.value, each.hook) for each in task.readings]
        for name, task in tasks.items()
        if name != "section"
    }
    assert figures == {
        "knife": [],
        "saw-sides": [(length("5"), "top face")],
        "chop": [(length("2-5/8"), "North face")],
        "pare": [(length("3"), "start")],
        "try-floor": [(length("5"), "top face")],
    }


def test_it_is_worked_from_the_top_and_the_face_the_joist_comes_from() -> None:
    """It is open at both, and the waste is inside its lines."""
    for end, entry in (("south", Face.FAR_SECOND), ("north", Face.SECOND)):
        for task in _pocket(SQUARE, end=end).tasks:
            if task.id != "section":
                assert task.faces == (Face.FIRST, entry)
                assert task.waste == "Inside the pocket's lines only."


def test_the_waste_is_between_its_lines_and_open_above() -> None:
    """Law 4: one box without a lid, and its lines bound it."""
    feature = _pocket(SQUARE)
    (cut,) = feature.cuts
    at = {name: line(feature.lines, name).at.nm for name in ("start", "finish", "floor", "back")}
    inside = (at["start"] + 1, -1, at["back"] + 10**9)
    assert cut.takes(*inside)
    assert cut.takes(at["start"], at["floor"], at["back"])
    assert cut.takes(at["finish"], at["floor"], at["back"])
    for outside in (
        (at["start"] - 1, at["floor"], at["back"]),
        (at["finish"] + 1, at["floor"], at["back"]),
        (at["start"], at["floor"] + 1, at["back"]),
        (at["start"], at["floor"], at["back"] - 1),
    ):
        assert not cut.takes(*outside)


def _cautions(floor: Floor, **words: str) -> Mapping[str, str]:
    feature = _pocket(floor, **words)
    lines = {line.id: line.caution for line in feature.lines}
    told = lines | {task.id: task.caution for task in feature.tasks}
    return {name: caution for name, caution in told.items() if caution}


def test_what_hurts_carries_its_caution() -> None:
    """The saw, the chisel, the far face, and that a beam with pockets is weaker (trade.md 2.4)."""
    measured = Floor(joist=SQUARE_JOIST, sill=SQUARE_SILL, sill_measures={"second": "8-1/2"})
    assert _cautions(measured) == {
        "floor": ENGINEER,
        "back": "Never measure this from the North face.",
        "saw-sides": SAW,
        "chop": CHISEL,
        "pare": CHISEL,
        "try-floor": CHISEL,
    }


def test_a_depth_that_follows_the_stick_waits_for_its_size() -> None:
    """In from a far face by square rule, or down from a top that is one by either."""
    stick = SQUARE.frame(pocket()).stick("sill")
    warned = unmeasured(stick, Axis.FIRST, ())
    down = {"first_face": "down"}
    for floor, end, warnings in (
        (SQUARE, "south", {"chop"}),
        (SQUARE, "north", set()),
        (Floor(), "south", set()),
        (Floor(sill=down), "south", {"saw-sides"}),
        (Floor(sill={**SQUARE_SILL, **down}), "south", {"saw-sides", "chop"}),
        (Floor(sill=down, sill_measures={"first": "8"}), "south", set()),
    ):
        found = _cautions(floor, end=end, drop="0" if floor.sill.get("first_face") is None else "8")
        assert {name for name, told in found.items() if told.startswith(warned)} == warnings


def test_the_lines_say_whether_the_stick_was_measured() -> None:
    """Where what lies beyond a line is reckoned, the reason says from what."""
    down = {"first_face": "down"}
    for floor, name, drop, said in (
        (SQUARE, "back", "0", True),
        (Floor(sill_measures={"second": "8"}), "back", "0", False),
        (Floor(sill=down), "floor", "8", True),
        (Floor(sill=down, sill_measures={"first": "8"}), "floor", "8", False),
        (Floor(), "floor", "0", False),
    ):
        why = line(_pocket(floor, drop=drop).lines, name).why
        assert ("Not measured here yet" in why) is said
        assert why == why.strip()


def test_the_pocket_says_which_end_it_follows() -> None:
    """Law 5: a width as cut is told on both side lines, with the joist's name."""
    for as_cut, told in (({}, "as drawn"), ({"width": "3-7/16"}, '3-7/16" wide')):
        feature = _pocket(Floor(as_cut=as_cut))
        for name in ("start", "finish"):
            why = line(feature.lines, name).why
            assert told in why
            assert "Joist's end" in why


def test_a_floor_under_a_far_top_says_how_deep_it_lies() -> None:
    """The line is struck from the underside; down from the top is what the framer sees."""
    floor = line(_pocket(Floor(sill={"first_face": "down"}), drop="8").lines, "floor")
    assert floor.at == length("2-1/2")
    beside = [(each.value, each.words) for each in floor.beside]
    assert beside[0] == (length("5-1/2"), "below the top here")
    assert beside[1][0] == length("5-1/2")
    assert beside[2] == (length("2-1/2"), "left to the underside")
    plain = line(_pocket(Floor()).lines, "floor").beside
    assert [each.value for each in plain] == list(lengths("5-1/2", "2-1/2"))
