"""A joist's underside that slopes up to its end's depth."""

from typing import Any

import pytest

from benchmate.frame.practice import CHISEL, SAW
from benchmate.frame.reduction import unmeasured
from benchmate.joinery.joist.slope import slope_cuts, slope_knife, slope_lines, slope_tasks
from benchmate.model.directions import Face
from benchmate.model.feature import Stage
from tests.builders import length, lengths, read
from tests.floor import Floor
from tests.joinery.joist.tails import HALF, LOW, dropped, measured

SLOPING: dict[str, Any] = {"end_depth": "5", "diminished": "12"}


def test_an_end_without_a_slope_has_none_of_it() -> None:
    """Nor has one whose stick is no deeper than its end."""
    for found in (dropped(end_depth="5"), dropped(LOW.with_(real=measured(first="5")), **SLOPING)):
        end, _ = found.shapes
        assert not end.sloped
        made = (slope_cuts(end), slope_lines(end), slope_knife(end), slope_tasks(end))
        assert made == ((), (), (), ())


def test_it_starts_so_far_back_of_the_beam_and_ends_at_its_face() -> None:
    """2" in the beam and 12" of slope: 14" from the end on the underside, 2" at 5" down."""
    steps = dropped(**SLOPING).steps("joist")
    assert read(steps["slope"]) == lengths("14")
    assert steps["slope"].readings[0].way.endswith("on the underside")
    assert [each.value for each in steps["slope"].beside] == list(lengths("12", "12"))
    assert "on the reduction line" in steps["slope"].beside[0].words
    assert read(steps["reduced-first"]) == lengths("5")


def test_it_is_struck_on_both_sides_and_from_below() -> None:
    """Its waste lies below it; the far faces keep no square end line for it."""
    steps = dropped(**SLOPING).steps("joist")
    assert steps["slope"].faces == (Face.SECOND, Face.FAR_FIRST, Face.FAR_SECOND)
    assert steps["slope"].waste == "Towards the underside."
    assert "reduction-stop" not in steps


@pytest.mark.parametrize(
    ("back", "deep", "gone"),
    [
        ("1", "5-1/64", True),
        ("1", "4-63/64", False),
        ("8", "5-63/64", False),
        ("8", "6-1/64", True),
        ("14", "6-63/64", False),
    ],
)
def test_what_it_takes(back: str, deep: str, gone: bool) -> None:
    """Halfway back along the slope the joist is halfway between its two depths."""
    (cut,) = slope_cuts(dropped(**SLOPING).shapes[0])
    assert cut.takes(length(back).nm, length(deep).nm, 0) is gone


def test_it_follows_the_stick_as_measured() -> None:
    """1/4" more joist comes off below, over the same length."""
    end, _ = dropped(LOW.with_(real=measured(first="7-1/4")), **SLOPING).shapes
    (cut,) = slope_cuts(end)
    assert cut.takes(length("13-63/64").nm, length("7-1/4").nm, 0)
    assert not cut.takes(length("14-1/64").nm, length("7-1/4").nm, 0)
    rip, _ = slope_tasks(end)
    assert rip.readings[0].value == length("2-1/4")


def test_by_square_rule_the_side_is_still_reduced_square() -> None:
    """Through a far face 1/2" over, 2-1/2" goes in; the slope starts from there."""
    found = dropped(HALF, **SLOPING)
    steps = found.steps("joist")
    assert read(steps["reduction-stop"]) == lengths("2-1/2")
    assert steps["reduction-stop"].faces == (Face.FAR_SECOND,)
    assert read(steps["slope"]) == lengths("14-1/2")


def test_at_a_far_end_it_runs_the_other_way() -> None:
    """From the squared end to where it starts, and on towards its own end."""
    found = dropped(Floor(other=True, lower="1"), **SLOPING)
    end, _ = found.shapes
    (line,) = (each for each in slope_lines(end) if each.id == "slope")
    assert line.at == length("8' 2") - length("14")
    (cut,) = slope_cuts(end)
    assert cut.takes(length("8' 1").nm, length("5-1/4").nm, 0)


def test_ripping_then_cutting_the_slope() -> None:
    """One figure each, and knifed where it shows from below."""
    end, _ = dropped(**SLOPING).shapes
    (knife,) = slope_knife(end)
    assert (knife.stage, knife.draws) == (Stage.KNIFE, "slope")
    assert knife.faces == (Face.FAR_FIRST, Face.REFERENCE_END)
    rip, slope = slope_tasks(end)
    assert (rip.id, [each.value for each in rip.readings]) == ("reduce-first", [length("2")])
    assert (slope.id, [each.value for each in slope.readings]) == ("cut-slope", [length("14")])
    first = unmeasured(end.stick, end.plumb, ())
    assert (rip.caution, slope.caution) == (f"{first}{SAW}", f"{first}{SAW} {CHISEL}")


def test_the_pocket_does_not_change() -> None:
    """It is as deep as the end, sloped up to or notched."""
    sloped, notched = dropped(**SLOPING), dropped(end_depth="5")
    assert sloped.shapes[1].floor == notched.shapes[1].floor
    assert sloped.sides[1].cuts == notched.sides[1].cuts
