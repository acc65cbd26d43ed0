"""The marks of a hole in a tenon."""

import pytest

from benchmate.frame.frame import Frame
from benchmate.frame.peg_steps import ENGINEER
from benchmate.layout.step import Step
from benchmate.layout.walk import lay_out
from benchmate.model.feature import Beside, Stage
from tests.builders import length, lengths, read, real
from tests.joinery.tenon.plans import Plan
from tests.joinery.tenon.sill_corners import HOLE, NONE, Faces, Words, sill_corner


def marks(frame: Frame) -> dict[str, Step]:
    """The lines of the hole by their ids, in order."""
    steps = lay_out(frame, "end").steps
    return {str(step.line): step for step in steps if step.feature == HOLE and step.line}


@pytest.mark.parametrize(
    ("faces", "end", "edge"),
    [
        (Faces(), "south end", "narrow edge by the West face"),
        (Faces(reference_end="north"), "south end", "narrow edge by the West face"),
    ],
)
def test_they_are_measured_on_the_tenon_that_was_cut(faces: Faces, end: str, edge: str) -> None:
    """From its shoulder line and its narrow edge, not from the faces that were cut away there."""
    found = marks(sill_corner(faces=faces))
    assert {line: (read(step), step.readings[0].hook) for line, step in found.items()} == {
        "shoulder-side": (lengths("4"), f"{end} shoulder line"),
        "end-side": (lengths("6"), f"{end} shoulder line"),
        "reference-side": (lengths("1/2"), edge),
        "far-side": (lengths("4-1/2"), edge),
    }
    for step in found.values():
        assert step.stage is Stage.FIT
        assert step.sides == ("top face", "underside")
        assert "on the tenon's cheek" in step.readings[0].way


def test_an_edge_that_was_not_cut_back_is_the_face_itself() -> None:
    """Then there is no narrow edge to hook on."""
    found = marks(sill_corner(sill={"relief_reference": "0"}))
    assert found["reference-side"].readings[0].hook == "West face"
    assert read(found["reference-side"]) == lengths("2-1/2")


def test_the_waste_lies_inside() -> None:
    """Each line's waste lies towards the one across from it."""
    sides = {line: step.waste_side for line, step in marks(sill_corner()).items()}
    assert sides == {
        "shoulder-side": "south end",
        "end-side": "north end",
        "reference-side": "East face",
        "far-side": "West face",
    }
    turned = marks(sill_corner(Plan(1)))
    assert turned["shoulder-side"].waste_side == "east end"
    assert turned["reference-side"].waste_side == "North face"


def test_the_wood_that_is_left_is_shown_on_every_side() -> None:
    """It has to hold the tenon together, and the engineer decides."""
    found = marks(sill_corner())
    assert found["shoulder-side"].beside[1] == Beside(length("4"), "of tenon left to the shoulder")
    assert found["end-side"].beside[1] == Beside(length("1-3/4"), "of tenon left to its end")
    beside = {line: found[line].beside[0] for line in ("reference-side", "far-side")}
    assert beside == {
        "reference-side": Beside(length("1/2"), "of tenon left beside it, West side"),
        "far-side": Beside(length("1-1/2"), "of tenon left beside it, East side"),
    }
    for line in beside:
        assert ENGINEER in found[line].why
        assert found[line].beside[1].value == length("4")


def test_a_hole_that_stops_inside_has_a_depth() -> None:
    """From the cheek it is cut in from: 3" of stub and 1/8" of room, less 2" of set-back."""
    found = marks(sill_corner(stub={"length": "3"}))
    depth = found["depth"]
    assert (read(depth), depth.readings[0].hook) == (
        lengths("1-1/8"),
        "near cheek, by the top face",
    )
    assert [each.value for each in depth.beside] == list(lengths("1/8", "7/8"))
    assert all(step.sides == ("top face",) for step in found.values())
    assert "depth" not in marks(sill_corner())


def test_from_the_far_side_it_counts_from_the_far_cheek() -> None:
    """An end sill measured from its underside has its far cheek on top."""
    found = marks(
        sill_corner(faces=Faces(end=("down", "west")), sill={"set_back": "4"}, stub={"length": "3"})
    )
    assert found["depth"].readings[0].hook == "far cheek"
    assert read(found["depth"]) == lengths("1-1/8")


@pytest.mark.parametrize(
    ("sill", "stub", "where"),
    [
        (NONE, {"relief_reference": "1"}, "its West side"),
        ({"held_short": "2"}, NONE, "its end"),
        ({"held_short": "3"}, {"relief_reference": "0"}, "its end and its West side"),
        ({"relief_far": "2"}, NONE, "its East side"),
    ],
)
def test_a_notch_says_where_it_runs_out(sill: Words, stub: Words, where: str) -> None:
    """There is no line there, and nothing to look for."""
    found = marks(sill_corner(sill=sill, stub=stub))
    assert found["shoulder-side"].why.startswith(f"It runs out of the tenon at {where}. ")
    assert found["shoulder-side"].short == "Notch line, shoulder side"
    assert "runs out" not in marks(sill_corner())["shoulder-side"].why


def test_a_notch_takes_no_more_than_there_is() -> None:
    """What it takes of the tenon is counted inside the tenon."""
    found = marks(sill_corner(sill={"held_short": "3"}, stub={"relief_reference": "0"}))
    assert found["shoulder-side"].beside[0].value == length("1")
    assert found["far-side"].beside[1].value == length("4-1/2")


def test_it_says_whether_the_other_tenon_was_measured() -> None:
    """Each line follows one size of it, as drawn until it is cut."""
    drawn = marks(sill_corner())
    assert all("as drawn: not measured as cut" in step.why for step in drawn.values())
    cut = real(as_cut={"foot-tenon": {"thickness": "1-7/8", "length": "2-3/4"}})
    found = marks(sill_corner(real={"post": cut}))
    assert 'as cut: 1-7/8" thickness' in found["end-side"].why
    assert "not measured as cut" in found["far-side"].why
    assert 'as cut: 2-3/4" length' in found["depth"].why
