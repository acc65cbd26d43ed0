"""What is hatched as the waste of the step in hand."""

from __future__ import annotations

from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.tui.drawing.scene import scene
from tests.joinery.joggle.trusses import truss


def test_a_depth_shows_the_waste_of_its_own_cut() -> None:
    """A mortise in a notch is hatched alone, so that nobody takes the notch down as deep."""
    walk = lay_out(truss(only=("heel",)), "tie")
    whole = scene(walk, walk.step("heel-notch/abutment"), Face.FIRST)
    for step in ("heel-notch/depth", "heel-notch/bore", "heel-notch/try-depth"):
        drawn = scene(walk, walk.step(step), Face.FIRST)
        (mortise,) = drawn.waste
        assert mortise in whole.waste
        assert drawn.joint_waste == tuple(shape for shape in whole.waste if shape != mortise)
        assert {"near-side", "far-side"} <= set(mortise.lines)


def test_a_line_shows_the_waste_it_bounds() -> None:
    """The sole takes the notch away and leaves the mortise for later."""
    walk = lay_out(truss(only=("heel",)), "tie")
    drawn = scene(walk, walk.step("heel-notch/sole"), Face.FIRST)
    (notch,) = drawn.waste
    assert "sole" in notch.lines
    assert len(drawn.joint_waste) == 1
