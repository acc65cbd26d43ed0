"""Figures at slanting lines: each stands where it is set off, and on no side it says nothing of."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from benchmate.layout.walk import lay_out
from benchmate.model.directions import LONG_FACES, Face
from benchmate.tui.drawing.canvas import Role
from benchmate.tui.drawing.choice import best_face
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.drawing.scene import scene
from benchmate.tui.glyphs import UNICODE
from tests.joinery.diminished.ledges import ledge
from tests.joinery.half_dovetail.bents import bent
from tests.tui.drawing.timbers import layout

if TYPE_CHECKING:
    from benchmate.layout.step import Layout, Step
    from benchmate.tui.drawing.canvas import Drawing

FIGURE = "FIGURE"
POINTING = (Role.POINTER, Role.FIGURE, Role.DIMENSION)


def _step(walk: Layout, line: str) -> Step:
    return next(step for step in walk.steps if step.line == line)


def _draw(walk: Layout, step: Step, face: Face, size: tuple[int, int] = (90, 16)) -> Drawing:
    width, height = size
    return draw_face(walk, step, face, width=width, height=height, glyphs=UNICODE, figure=FIGURE)


def _roles(drawing: Drawing) -> set[Role]:
    return {role for row in drawing.rows for _, role in row}


@pytest.mark.parametrize("reference", [True, False])
@pytest.mark.parametrize("heading", ["west", "east"])
def test_dots_lead_to_where_a_leaning_line_is_set_off(heading: str, *, reference: bool) -> None:
    """A tail is as deep as its figure says at the shoulder, not at the tip by the pointer."""
    walk = lay_out(bent(heading=heading, reference=reference), "tie")
    step = _step(walk, "tail")
    face = best_face(walk, step)
    assert face is not None
    rows = _draw(walk, step, face).text.split("\n")
    (row,) = (row for row in rows if FIGURE in row)
    turn = -1 if row.lstrip().startswith(FIGURE) else 1
    tip, root = (max, min) if turn > 0 else (min, max)
    line = {at for each in rows for at, char in enumerate(each) if char == UNICODE.block}
    here = {at for at, char in enumerate(row) if char == UNICODE.block}
    dots = {at for at, char in enumerate(row) if char == UNICODE.hidden_across}
    assert len(dots) >= 10
    assert root(here) == root(line), "its row is that of the shoulder, where the line starts"
    assert abs(tip(line) - root(line)) <= len(here | dots) + 1, "they go all the way to the tip"


def test_no_figure_stands_on_a_side_the_line_does_not_come_out_on() -> None:
    """The sloping end of a mortise right through shows on the two faces it goes through."""
    walk = lay_out(bent(), "post")
    step = _step(walk, "tail-end")
    bare = [face for face in LONG_FACES if not scene(walk, step, face).current]
    assert len(bare) == 2
    for face in bare:
        assert not _roles(_draw(walk, step, face)) & set(POINTING)


def test_a_floor_seen_from_the_side_has_not_the_figure_of_its_top_line() -> None:
    """How far along the top of a diminished housing comes is no depth in from a face."""
    walk = lay_out(ledge(), "post")
    step = _step(walk, "housing-top")
    aslant = [
        face for face in LONG_FACES if any(mark.slants for mark in scene(walk, step, face).current)
    ]
    assert aslant
    for face in aslant:
        assert not _roles(_draw(walk, step, face)) & set(POINTING)


def test_a_line_along_the_timber_keeps_its_figure_and_has_no_dots() -> None:
    """Its depth is the same at the timber's end, so the pointer there says all."""
    walk = layout("post-se")
    drawing = _draw(walk, walk.step("foot-tenon/far-cheek"), Face.SECOND)
    assert {Role.POINTER, Role.FIGURE} <= _roles(drawing)
    assert UNICODE.hidden_across not in drawing.text
