"""A mark lies where a framer would set it off."""

from dataclasses import replace

import pytest

from benchmate.frame.frame import Frame, Real
from benchmate.layout.walk import lay_out
from tests.builders import corners, frame, length, real, sill, tenon, timber
from tests.proof.boxes import OPEN
from tests.proof.marks import Place, Rule, Side, sides
from tests.proof.raising import ruled
from tests.proof.slips import hooked_on, misread


def read(built: Frame, name: str, sizes: Real | None = None) -> Rule:
    """The marks of one timber."""
    return ruled(built, lay_out(built, name), sizes or Real())


def place(axis: int, text: str) -> Place:
    """Where a line should lie, as a framer writes it."""
    return Place(axis, length(text).nm)


def test_sides_are_called_by_where_they_look() -> None:
    """A sill on its back, read from its east end."""
    found = sides(
        timber("sill", first_face="up", second_face="north", reference_end="east", length="9'")
    )
    assert found == {
        "east end": Side(0, far=False),
        "west end": Side(0, far=True),
        "top face": Side(1, far=False),
        "underside": Side(1, far=True),
        "North face": Side(2, far=False),
        "South face": Side(2, far=True),
    }


@pytest.mark.parametrize(
    ("line", "where"),
    [
        ("foot-tenon/shoulder", place(0, "5")),
        ("foot-tenon/near-cheek", place(1, "2")),
        ("foot-tenon/far-cheek", place(1, "4")),
        ("foot-tenon/reference-edge", place(2, "1-1/4")),
        ("head-tenon/shoulder", place(0, "8' 4")),
        ("head-tenon/far-edge", place(2, "5-1/2")),
        ("end/overall", place(0, "8' 8")),
    ],
)
def test_lines_on_a_post_lie_where_they_are_known_to(line: str, where: Place) -> None:
    """The corner post of the check frame: 5" foot tenon, 7' 11" between shoulders, 4" at its head.

    Along it they count from the squared end, though most are read from the shoulder.
    """
    assert read(corners(), "post-sw").place(*line.split("/")) == where


def test_both_hands_have_their_relief_on_their_own_outside() -> None:
    """The same figure, from another face, with its waste on another side of the building."""
    for name, word in (("post-sw", "West face"), ("post-se", "East face")):
        rule = read(corners(), name)
        assert rule.marks["foot-tenon"]["reference-edge"].readings[0].hook == word
        assert rule.marks["foot-tenon"]["reference-edge"].waste == word


def test_a_line_is_the_edge_of_its_waste() -> None:
    """Waste beyond a shoulder at the reference end is all that comes before it."""
    rule = read(corners(), "post-sw")
    assert rule.waste("foot-tenon", "shoulder") == ((OPEN[0], length("5").nm), OPEN, OPEN)
    assert rule.waste("foot-tenon", "far-cheek") == (OPEN, (length("4").nm, OPEN[1]), OPEN)


def test_a_figure_from_a_far_face_goes_by_the_real_stick() -> None:
    """What is hooked on the far face moves with it."""
    rule = read(corners(), "post-sw", real({"foot": {"first": "6-1/4"}}))
    slip = misread("foot-tenon", ("far-cheek",), hooked_on("North face"))
    wrong = replace(rule, marks=slip(rule.marks))
    assert wrong.place("foot-tenon", "far-cheek") == place(1, "2-1/4")


def test_a_depth_from_a_housing_floor_starts_at_it() -> None:
    """It starts at the face where the housing was forgotten."""
    joint = tenon(into="sill", at="4'", housing="1/2")
    rule = read(frame(timber("post"), sill(), joint), "sill")
    mortise = "post-foot-mortise"
    assert rule.place(mortise, "depth") == place(1, "5-5/8")
    lines = {line: mark for line, mark in rule.marks[mortise].items() if "housing" not in line}
    bare = replace(rule, marks={**rule.marks, mortise: lines})
    assert bare.place(mortise, "depth") == place(1, "5-1/8")


def test_readings_that_disagree_are_refused() -> None:
    """A mark that comes to two places is no mark."""
    rule = read(corners(), "post-sw")
    mark = rule.marks["head-tenon"]["shoulder"]
    wrong = replace(mark, readings=(*mark.readings[:1], rule.marks["end"]["overall"].readings[0]))
    twice = replace(rule, marks={**rule.marks, "head-tenon": {"shoulder": wrong}})
    with pytest.raises(ValueError, match="comes to"):
        twice.place("head-tenon", "shoulder")


def test_a_hook_the_timber_does_not_have_is_refused() -> None:
    """Nothing is guessed."""
    rule = read(corners(), "post-sw")
    slip = misread("foot-tenon", ("shoulder",), hooked_on("top face"))
    with pytest.raises(ValueError, match="nothing to hook on"):
        replace(rule, marks=slip(rule.marks)).place("foot-tenon", "shoulder")


def test_a_scribed_joint_has_no_marks() -> None:
    """It is left out, and a joist's end that needs no line is not."""
    joint = tenon(into="sill", at="4'", scribed=True)
    assert "post-foot-mortise" not in read(frame(timber("post"), sill(), joint), "sill").marks
