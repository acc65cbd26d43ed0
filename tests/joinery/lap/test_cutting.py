"""What to do at a lap, in the order it is done: one figure to one task."""

import pytest

from benchmate.frame.practice import CHISEL, SAW
from benchmate.layout.step import Step
from benchmate.model.directions import Face
from benchmate.model.feature import Stage
from tests.builders import length, lengths, read
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, crossed, sizes_of, steps


def _done(found: dict[str, Step]) -> dict[str, tuple[object, ...]]:
    """The figures and hooks of what is cut and pared."""
    return {
        name: tuple((each.value, each.hook) for each in step.readings)
        for name, step in found.items()
        if step.stage in (Stage.CUT, Stage.PARE)
    }


def test_the_steps_of_a_half_lap_in_order() -> None:
    """Trade.md 5.1: laid out, read back, knifed and hatched; the shoulder before the cheek."""
    built = crossed()
    assert [(name, step.stage) for name, step in steps(built, "tie").items()] == [
        ("section", Stage.MEASURE),
        ("shoulder", Stage.MARK),
        ("lap", Stage.MARK),
        ("knife", Stage.KNIFE),
        ("saw-shoulder", Stage.CUT),
        ("saw-lap", Stage.CUT),
        ("pare", Stage.PARE),
        ("as-cut", Stage.AS_CUT),
    ]
    assert [(name, step.stage) for name, step in steps(built, "plate").items()] == [
        ("section", Stage.MEASURE),
        ("start", Stage.MARK),
        ("finish", Stage.MARK),
        ("floor", Stage.MARK),
        ("back-check", Stage.BACK_CHECK),
        ("knife", Stage.KNIFE),
        ("saw-sides", Stage.CUT),
        ("chop", Stage.CUT),
        ("pare-sides", Stage.PARE),
        ("try-floor", Stage.PARE),
    ]


def test_the_figures_of_a_half_lap() -> None:
    """Depths from the face that is cut, the bed from the reference face."""
    built = crossed(sizes_of(tie=("8-1/2", "6")))
    assert _done(steps(built, "tie")) == {
        "saw-shoulder": ((length("4-1/2"), "underside"),),
        "saw-lap": ((length("4"), "top face"),),
        "pare": ((length("4"), "top face"),),
    }
    assert _done(steps(built, "plate")) == {
        "saw-sides": ((length("4"), "top face"),),
        "chop": ((length("4"), "top face"),),
        "pare-sides": ((length("6"), "notch start"),),
        "try-floor": ((length("4"), "top face"),),
    }


@pytest.mark.parametrize(
    ("side", "cut", "kept"), [("up", "underside", "top side"), ("down", "top face", "underside")]
)
def test_which_half_stays_is_said_at_the_knife(side: str, cut: str, kept: str) -> None:
    """Cut from the wrong face both halves come out on one side, and nothing laps."""
    tie = steps(crossed(side=side), "tie")["knife"]
    assert tie.caution.startswith(f"Cut from the {cut}: the {kept} stays.")
    plate = steps(crossed(side=side), "plate")["knife"]
    assert not plate.caution.startswith(f"Cut from the {cut}")


def test_a_depth_that_follows_the_stick_waits_for_its_size() -> None:
    """From the far face; from a reference face it holds on any stick."""
    found = steps(crossed(), "tie")
    assert found["saw-shoulder"].caution.startswith("Not measured here yet")
    assert found["saw-lap"].caution == SAW
    assert steps(crossed(), "plate")["saw-sides"].caution == SAW
    known = steps(crossed(sizes_of(tie=("8", "6"))), "tie")
    assert known["saw-shoulder"].caution == SAW


def test_a_corner_is_cut_as_two_ends() -> None:
    """The second is mated, and measures nothing for the first."""
    found = steps(crossed(corner="north"), "plate")
    assert list(found) == [
        "section",
        "shoulder",
        "lap",
        "back-check",
        "knife",
        "saw-shoulder",
        "saw-lap",
        "pare",
    ]
    assert found["saw-lap"].faces == (Face.SECOND, Face.FAR_SECOND, Face.FAR_END)


def test_by_square_rule_the_stick_is_reduced_first() -> None:
    """So much on this stick; its lines are carried over the fresh face again."""
    sizes = sizes_of(tie=("8", "6-1/4"), plate=("8", "8"))
    found = steps(crossed(sizes, ends=False, **SQUARE), "tie")
    assert next(iter(_done(found))) == "reduce"
    assert _done(found)["reduce"] == ((length("3/4"), "South face"),)
    assert found["reduce"].faces == (Face.FAR_SECOND,)
    assert "Carry the lap's lines over" in found["reduce"].why
    assert found["reduce"].caution == CHISEL
    assert found["knife"].short == "Knife the notch and the reduction, hatch the waste"


def test_what_is_knifed_is_named() -> None:
    """The shoulder of an end, a notch, a slot alone."""
    for words, timber, what in (
        ({}, "tie", "shoulder"),
        ({}, "plate", "notch"),
        (COGGED, "tie", "slot"),
        ({"up": "6", "ends": False, "joint": {"cog": "2"}}, "tie", "notch and the slot"),
    ):
        found = steps(crossed(**words), timber)["knife"]
        assert found.short == f"Knife the {what}, hatch the waste"
        assert ("Inside the lines" in found.waste) is (what != "shoulder")


def test_a_socket_is_held_against_its_tail_before_it_is_cut() -> None:
    """Lines that lean are easily struck the wrong way."""
    caution = steps(crossed(**DOVETAIL), "plate")["knife"].caution
    assert caution.endswith("First lay Tie's tail on its lines: they are to agree with it.")
    assert "First lay" not in steps(crossed(), "plate")["knife"].caution


def test_where_nothing_comes_off_there_is_nothing_to_do() -> None:
    """But for measuring, which the other timber follows."""
    built = crossed(up="6", ends=False, joint={"share": "0"})
    assert list(steps(built, "plate")) == ["section"]
    whole = crossed(up="6", ends=False, joint={"share": "2"})
    assert list(steps(whole, "tie")) == ["section", "as-cut"]
    assert read(steps(whole, "tie")["as-cut"]) == lengths("6")
