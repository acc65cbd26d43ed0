"""Every figure starts on the drawing where its hook says, or not at all."""

import pytest

from benchmate.layout.step import Layout, Step
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.model.feature import Line
from benchmate.model.solids import Axis
from benchmate.tui.drawing.choice import best_face
from benchmate.tui.drawing.datum import datum_across, datum_along, edge_faces
from benchmate.tui.drawing.scene import scene
from tests.joinery.rafter.roofs import Roof, built, seat
from tests.tui.drawing.timbers import TIMBERS, layout, steps_with_lines


def _line(walk: Layout, step: Step) -> Line:
    feature = walk.feature(step.feature)
    assert feature
    return next(line for line in feature.lines if line.id == step.line)


@pytest.mark.parametrize("timber", TIMBERS)
def test_a_distance_along_starts_as_far_from_its_line_as_it_says(timber: str) -> None:
    """Datum and line are the figure apart, whether it is read from the end or the shoulder."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        line = _line(walk, step)
        for reading in step.readings:
            datum = datum_along(scene(walk, step, Face.FIRST, reading))
            if line.axis is Axis.ALONG:
                assert datum is not None, reading.hook
                assert abs(line.at.nm - datum) == reading.value.nm
            else:
                assert datum is None


@pytest.mark.parametrize("timber", TIMBERS)
def test_a_depth_starts_at_the_edge_that_is_hooked(timber: str) -> None:
    """On the face shown first, edge and line are the figure apart; a mortise's depth goes in."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        face = best_face(walk, step)
        assert face
        drawn = scene(walk, step, face)
        for mark in drawn.current:
            datum = datum_across(drawn, mark)
            if mark.square:
                assert datum is None
            else:
                assert datum is not None, step.id
                assert abs(mark.start[1] - datum) == step.readings[0].value.nm


@pytest.mark.parametrize(
    ("face", "edges"),
    [
        (Face.FIRST, (Face.SECOND, Face.FAR_SECOND)),
        (Face.FAR_FIRST, (Face.SECOND, Face.FAR_SECOND)),
        (Face.SECOND, (Face.FIRST, Face.FAR_FIRST)),
        (Face.FAR_SECOND, (Face.FIRST, Face.FAR_FIRST)),
    ],
)
def test_a_face_lies_between_the_other_pair(face: Face, edges: tuple[Face, Face]) -> None:
    """The edge at depth nought is the reference face's, the other that of the face across."""
    walk = layout("post-se")
    assert edge_faces(scene(walk, walk.steps[0], face)) == edges


def test_a_step_without_a_figure_starts_nowhere() -> None:
    """Choosing the faces measures nothing."""
    walk = layout("post-se")
    assert datum_along(scene(walk, walk.step("stick/faces"), Face.FIRST)) is None


def test_a_level_line_measured_down_another_starts_at_no_edge() -> None:
    """A rafter's seat is set off down its heel line, so neither edge may say to gauge from it."""
    frame = built(Roof(), seat())
    walk = lay_out(frame, "rafter")
    drawn = scene(walk, walk.step("wall-notch/seat"), Face.SECOND)
    assert drawn.current
    assert [datum_across(drawn, mark) for mark in drawn.current] == [None] * len(drawn.current)
