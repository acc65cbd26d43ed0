"""The pegs of a scribed joint: no lines, no cuts, but figures from what is scribed."""

import pytest

from benchmate.layout.step import Step
from benchmate.layout.walk import features_on, lay_out
from benchmate.model.feature import Awaits, Stage
from tests.builders import length, lengths, read
from tests.joinery.tenon.girts import MORTISE, PEGS, girt_through

SIDES = {"girt": "west-end-tenon-pegs", "post": f"{MORTISE}-pegs"}


def _steps(timber: str, **pegs: object) -> dict[str, Step]:
    """The steps of the pegs on one timber by what is done, in order."""
    built = girt_through({"scribed": True}, pegs={**PEGS, **pegs})
    found = (step for step in lay_out(built, timber).steps if step.feature == SIDES[timber])
    return {step.id.partition("/")[2]: step for step in found}


@pytest.mark.parametrize("timber", ["girt", "post"])
def test_nothing_is_struck_or_cut(timber: str) -> None:
    """Where the joint comes on the stick is not known, so no place along it is told."""
    built = girt_through({"scribed": True})
    (pegs,) = (each for each in features_on(built, timber) if each.id == SIDES[timber])
    assert pegs.scribed
    assert (pegs.cuts, pegs.lines, pegs.findings) == ((), (), ())
    assert pegs.title.endswith(", scribed")


@pytest.mark.parametrize("timber", ["girt", "post"])
def test_the_ids_are_those_of_the_lines(timber: str) -> None:
    """So that ticks survive a change of mind about scribing."""
    struck = [
        step.id.partition("/")[2]
        for step in lay_out(girt_through(), timber).steps
        if step.feature == SIDES[timber] and "back-check" not in step.id
    ]
    assert list(_steps(timber)) == struck


def test_the_post_is_measured_from_the_scribed_mortise() -> None:
    """From where the shoulder bears, and along from the mortise's end at the tenon's top."""
    steps = _steps("post", blind_depth="6")
    figures = {name: (read(step), step.readings[0].hook) for name, step in steps.items()}
    edge = "mortise end at Girt's top face"
    assert figures == {
        "peg-line": (lengths("2"), "place where the shoulder bears"),
        "peg-1": (lengths("2"), edge),
        "peg-2": (lengths("5"), edge),
        "peg-depth": (lengths("6"), "South face"),
        "bore-pegs": (lengths("1"), "near side of the bit"),
    }
    assert {step.caution for name, step in steps.items() if name.startswith("peg-")} == {
        "",
        "Count from the bit's edge, not from its lead screw.",
    }


def test_the_tenon_is_measured_from_its_scribed_shoulder() -> None:
    """The draw is as it was: towards the shoulder, and the caution with it."""
    steps = _steps("girt")
    assert read(steps["peg-line"]) == (length("1-7/8"),)
    assert "towards the shoulder" in steps["peg-line"].caution
    assert steps["peg-line"].short == "Strike the peg line, drawn"
    assert steps["peg-1"].short == "Mark the peg 1 centre"
    assert steps["prick-pegs"].stage is Stage.FIT


def test_the_tenon_waits_for_the_bored_post_and_the_post_for_nobody() -> None:
    """A scribed mortise waits for no tenon as cut, so neither do its pegs."""
    built = girt_through({"scribed": True})
    found = {
        each.id: each.awaits for each in (*features_on(built, "girt"), *features_on(built, "post"))
    }
    assert found[SIDES["girt"]] == (Awaits("post", f"{SIDES['post']}/bore-pegs"),)
    assert found[SIDES["post"]] == ()
