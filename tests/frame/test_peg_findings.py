"""What cannot be of pegs in any joint: each check fires, and just does not."""

from dataclasses import replace

import pytest

from benchmate.frame.peg_findings import (
    blind_comes_out,
    blind_too_short,
    draw_too_large,
    hole_off_timber,
    holes_meet,
    past_the_end,
    past_the_shoulder,
)
from benchmate.frame.pegs import Centre
from benchmate.measure.printing import Tape
from benchmate.measure.section import read_section
from benchmate.model.directions import Face
from benchmate.model.findings import Severity
from tests.builders import frame, length, timber
from tests.frame.test_pegs import holes, pegs

TAPE = Tape()
POST = frame(timber("post")).stick("post")


@pytest.mark.parametrize(("draw", "fires"), [("1", True), ("2", True), ("63/64", False)])
def test_a_draw_as_large_as_the_hole(draw: str, fires: bool) -> None:
    """The two holes would lie side by side."""
    found = draw_too_large(pegs(), length(draw), POST, "pegs", TAPE)
    assert (found is not None) is fires
    if found:
        assert (found.code, found.severity) == ("peg-draw-too-large", Severity.STOP)
        assert (found.timber, found.feature) == ("post", "pegs")


@pytest.mark.parametrize(("spacing", "fires"), [("1", True), ("3/4", True), ("1-1/64", False)])
def test_holes_that_meet(spacing: str, fires: bool) -> None:
    """Without wood between them they are one slot."""
    found = holes_meet(pegs(spacing=spacing), POST, "pegs", TAPE)
    assert (found is not None) is fires
    if found:
        assert (found.code, found.severity) == ("peg-holes-meet", Severity.STOP)


def test_a_single_hole_meets_none() -> None:
    """It has no spacing to be too small."""
    assert holes_meet(pegs(count=1, spacing=None), POST, "pegs", TAPE) is None


@pytest.mark.parametrize(
    ("along", "deep", "face"),
    [
        ("1/2", "2", "foot"),
        ("33/64", "2", None),
        ("7' 10-1/2", "2", "head"),
        ("7' 10-31/64", "2", None),
        ("12", "1/2", "West face"),
        ("12", "33/64", None),
        ("12", "5-1/2", "East face"),
        ("12", "5-31/64", None),
        ("12", "9", "East face"),
    ],
)
def test_a_hole_that_breaks_out_of_its_timber(along: str, deep: str, face: str | None) -> None:
    """Of an end or an edge; a sixty-fourth of wood is left to be looked at, not stopped."""
    made = replace(holes(Face.FIRST), centres=(Centre(length(along), length(deep)),))
    found = hole_off_timber(made, read_section("6 x 6"), "pegs", TAPE)
    assert (found is not None) is (face is not None)
    if found:
        assert (found.code, found.severity) == ("peg-off-timber", Severity.STOP)
        assert f"break out of the {face} of Post" in found.message


def test_the_real_section_counts() -> None:
    """On the side the holes do not run along: a narrow stick loses the wood beside them."""
    made = replace(holes(Face.SECOND), centres=(Centre(length("12"), length("5-1/4")),))
    assert hole_off_timber(made, read_section("6 x 3"), "pegs", TAPE) is None
    found = hole_off_timber(made, read_section("5-3/4 x 6"), "pegs", TAPE)
    assert found is not None
    assert "North face" in found.message


@pytest.mark.parametrize(("long", "fires"), [("2-3/8", True), ("2-25/64", False)])
def test_a_hole_that_breaks_out_of_the_tenon_s_end(long: str, fires: bool) -> None:
    """1" holes 2" from the shoulder, drawn 1/8", reach 2-3/8"."""
    found = past_the_end(pegs(), length(long), POST, "pegs", TAPE)
    assert (found is not None and found.code == "peg-past-end") is fires


@pytest.mark.parametrize(("at", "fires"), [("39/64", True), ("5/8", False)])
def test_a_hole_across_the_shoulder(at: str, fires: bool) -> None:
    """Half of a 1" hole and 1/8" of draw."""
    found = past_the_shoulder(pegs(from_shoulder=at), POST, "pegs", TAPE)
    assert (found is not None and found.code == "peg-past-shoulder") is fires


def test_blind_holes_go_through_the_tenon_and_not_through_the_stick() -> None:
    """4" deep: past a cheek at 4", in a stick of more than that."""
    blind, deep, over = pegs(blind_depth="4"), length("4"), length("4-1/64")
    assert blind_too_short(blind, deep, POST, "pegs", TAPE) is None
    assert blind_too_short(blind, over, POST, "pegs", TAPE) is not None
    assert blind_comes_out(blind, over, POST, "pegs", TAPE) is None
    assert blind_comes_out(blind, deep, POST, "pegs", TAPE) is not None
    assert blind_comes_out(pegs(), deep, POST, "pegs", TAPE) is None
    assert blind_too_short(pegs(), deep, POST, "pegs", TAPE) is None
