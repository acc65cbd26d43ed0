"""What is done for a hole in a tenon."""

import pytest

from benchmate.frame.chopping import FROM_BOTH
from benchmate.frame.frame import Frame
from benchmate.frame.peg_steps import FINGERS
from benchmate.frame.practice import CHISEL, DRILL, SAW
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Stage
from tests.builders import lengths, read
from tests.joinery.tenon.sill_corners import HOLE, NONE, Words, sill_corner


def tasks(frame: Frame) -> dict[str, Step]:
    """What is done besides striking lines, in order."""
    steps = (step for step in lay_out(frame, "end").steps if step.feature == HOLE)
    return {step.id.partition("/")[2]: step for step in steps if not step.line}


def test_the_corner_is_tried_before_any_wood_goes() -> None:
    """The lines first, then the corner put together, then knife, cut and pare."""
    steps = [step for step in lay_out(sill_corner(), "end").steps if step.feature == HOLE]
    assert [step.id.partition("/")[2] for step in steps] == [
        "shoulder-side",
        "end-side",
        "reference-side",
        "far-side",
        "try-corner",
        "knife",
        "cut",
        "pare-along",
        "pare-across",
    ]
    found = tasks(sill_corner())
    assert [step.stage for step in found.values()] == [Stage.FIT, *[Stage.FINISH] * 4]


def test_the_figures_are_the_layout_and_the_corner_is_the_check() -> None:
    """It says so, and what to do where the two differ."""
    step = tasks(sill_corner())["try-corner"]
    assert "figures are the layout, the corner put together is the check" in step.why
    assert "find out why; then go by the wall" in step.why
    assert step.caution == FINGERS
    assert (step.sides, step.readings) == (("top face",), ())


@pytest.mark.parametrize(
    ("sill", "stub", "title", "deep", "caution"),
    [
        (NONE, NONE, "Bore and chop the hole", "2", f"{FROM_BOTH} {DRILL} {CHISEL}"),
        (NONE, {"length": "3"}, "Bore and chop the hole", "1-1/8", f"{DRILL} {CHISEL}"),
        (NONE, {"relief_reference": "1"}, "Saw and chop the notch", "2", f"{SAW} {CHISEL}"),
    ],
)
def test_it_is_bored_or_sawn(sill: Words, stub: Words, title: str, deep: str, caution: str) -> None:
    """A hole through both cheeks is bored from both, a notch is sawn, each with its cautions."""
    step = tasks(sill_corner(sill=sill, stub=stub))["cut"]
    assert (step.short, read(step), step.caution) == (title, lengths(deep), caution)
    assert step.readings[0].hook == "near cheek, by the top face"


def test_both_cheeks_are_knifed_where_it_goes_through() -> None:
    """Squared over to the other one."""
    through, blind = tasks(sill_corner()), tasks(sill_corner(stub={"length": "3"}))
    assert through["knife"].sides == ("top face", "underside")
    assert "square them over" in through["knife"].why
    assert blind["knife"].sides == ("top face",)
    assert "square them over" not in blind["knife"].why


@pytest.mark.parametrize(
    ("sill", "stub", "along", "across"),
    [
        (NONE, NONE, ("2", "shoulder side"), ("4", "West side")),
        (NONE, {"relief_reference": "1"}, ("2", "shoulder side"), ("1-1/2", "narrow edge")),
        ({"relief_far": "2"}, NONE, ("2", "shoulder side"), ("1/2", "narrow edge")),
        ({"held_short": "3"}, NONE, ("4", "south end shoulder"), ("4", "West side")),
    ],
)
def test_it_is_pared_one_way_and_then_the_other(
    sill: Words, stub: Words, along: tuple[str, str], across: tuple[str, str]
) -> None:
    """Between its lines; where it is open, by the wood that is left."""
    found = tasks(sill_corner(sill=sill, stub=stub))
    for name, (figure, hook) in (("pare-along", along), ("pare-across", across)):
        step = found[name]
        assert read(step) == lengths(figure)
        assert step.readings[0].hook.startswith(hook)
        assert step.caution == CHISEL
