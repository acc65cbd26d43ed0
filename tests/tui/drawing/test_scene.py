"""What there is to draw on a side."""

from benchmate.frame.frame import Frame
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.store.reading import read_project
from benchmate.tui.drawing.scene import scene
from tests.store.samples import PROJECTS

HEEL = "rafter-bay-south-seat-notch/heel"


def test_a_line_that_is_struck_all_along_is_drawn_all_along() -> None:
    """A rafter's heel line bounds waste only below the seat, and runs on up to the top edge."""
    layout = lay_out(Frame(read_project(PROJECTS / "meadow-cart-house"), {}), "rafter-bay-south")
    step = layout.step(HEEL)
    drawn = scene(layout, step, Face.SECOND)
    (mark,) = drawn.current
    (rest,) = (line for line in drawn.lines if line.line == "heel")
    assert min(rest.start[1], rest.end[1]) == 0
    assert {rest.start, rest.end} & {mark.start, mark.end}


def test_a_line_that_bounds_waste_all_along_is_drawn_once() -> None:
    """The shoulder line of its tongue has nothing left to draw."""
    layout = lay_out(Frame(read_project(PROJECTS / "meadow-cart-house"), {}), "rafter-bay-south")
    drawn = scene(layout, layout.step("head-tongue/shoulder"), Face.SECOND)
    assert drawn.current
    assert [line for line in drawn.lines if line.line == "shoulder"] == []
