"""Peg holes and a mortise right through, to look at as a framer would.

`golden/pegs-<name>.txt` holds each as plain text, without the colours, rows stripped at the right.
"""

from __future__ import annotations

import functools
from itertools import product
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from benchmate.layout.step import Layout, shown_readings
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.tui.drawing.canvas import Role
from benchmate.tui.drawing.datum import datum_along
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.drawing.scene import scene
from benchmate.tui.glyphs import UNICODE
from tests.builders import length
from tests.joinery.tenon.girts import MORTISE, girt_through

if TYPE_CHECKING:
    from benchmate.tui.drawing.canvas import Drawing

GOLDEN = Path(__file__).parent / "golden"
SIZES = ((49, 8), (60, 12), (100, 20))

OWN, OTHERS = "west-end-tenon-pegs", f"{MORTISE}-pegs"
STEPS = (
    ("post-peg-line", "post", f"{OTHERS}/peg-line", Face.FIRST),
    ("post-peg-1", "post", f"{OTHERS}/peg-1", Face.FIRST),
    ("post-bore", "post", f"{OTHERS}/bore-pegs", Face.FIRST),
    ("post-entry", "post", f"{MORTISE}/start", Face.FAR_SECOND),
    ("post-exit", "post", f"{MORTISE}/start", Face.SECOND),
    ("girt-peg-line", "girt", f"{OWN}/peg-line", Face.SECOND),
    ("girt-peg-1", "girt", f"{OWN}/peg-1", Face.SECOND),
)
CASES = tuple(
    (f"{name}-{size[0]}x{size[1]}", timber, step, face, size)
    for (name, timber, step, face), size in product(STEPS, SIZES)
)


@functools.cache
def _layout(timber: str) -> Layout:
    return lay_out(girt_through(), timber)


@functools.cache
def _draw(timber: str, step_id: str, face: Face, size: tuple[int, int]) -> Drawing:
    """A face as the screen shows it once the reference shoulder is struck, figure and all."""
    walk = _layout(timber)
    step = walk.step(step_id)
    reading = shown_readings(step, shoulder_struck=True, swapped=False)[0]
    return draw_face(
        walk,
        step,
        face,
        width=size[0],
        height=size[1],
        glyphs=UNICODE,
        reading=reading,
        figure=girt_through().project.tape.text(reading.value),
    )


def _bare(drawing: Drawing) -> str:
    return "".join(f"{line.rstrip()}\n" for line in drawing.text.splitlines())


@pytest.mark.parametrize(("name", "timber", "step", "face", "size"), CASES)
def test_it_looks_as_it_did_when_it_was_judged(
    name: str, timber: str, step: str, face: Face, size: tuple[int, int]
) -> None:
    """Any change to a drawing is seen and judged again before it is kept."""
    assert _bare(_draw(timber, step, face, size)) == (GOLDEN / f"pegs-{name}.txt").read_text(
        "utf-8"
    )


def test_no_golden_drawing_is_left_over() -> None:
    """Every file is compared with a drawing."""
    kept = {path.stem for path in GOLDEN.glob("pegs-*.txt")}
    assert kept == {f"pegs-{case[0]}" for case in CASES}


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    ("timber", "step"), [("post", f"{OTHERS}/bore-pegs"), ("girt", f"{OWN}/bore-pegs")]
)
def test_every_hole_is_seen_however_small(timber: str, step: str, size: tuple[int, int]) -> None:
    """A hole that falls between the rows takes the cell at its middle: two holes, two patches."""
    face = _layout(timber).step(step).faces[0]
    cells = {
        (row, column)
        for row, runs in enumerate(_draw(timber, step, face, size).rows)
        for column, role in enumerate(role for text, role in runs for _ in text)
        if role is Role.WASTE
    }
    patches = 0
    while cells:
        patches += 1
        reached = {cells.pop()}
        while reached:
            row, column = reached.pop()
            near = {(row + a, column + b) for a, b in product((-1, 0, 1), repeat=2)} & cells
            cells -= near
            reached |= near
    assert patches == 2


def test_a_hole_comes_out_on_both_faces_across_its_way_and_on_no_other() -> None:
    """It goes square through both cheeks: on the faces beside them there is nothing to see."""
    for timber, feature, faces in (
        ("post", OTHERS, (Face.FIRST, Face.FAR_FIRST)),
        ("girt", OWN, (Face.SECOND, Face.FAR_SECOND)),
    ):
        walk = _layout(timber)
        step = walk.step(f"{feature}/bore-pegs")
        for face in Face:
            assert len(scene(walk, step, face).waste) == (2 if face in faces else 0), face


def test_the_peg_line_is_drawn_past_its_holes_and_no_further() -> None:
    """From end to end of the post it would leave no room for them."""
    walk = _layout("post")
    drawn = scene(walk, walk.step(f"{OTHERS}/peg-line"), Face.FIRST)
    (mark,) = drawn.current
    assert mark.start[1] == mark.end[1] == length("5-1/2").nm
    holes = [point[0] for shape in drawn.waste for point in shape.points]
    assert mark.start[0] < min(holes) < max(holes) < mark.end[0]
    assert mark.end[0] - mark.start[0] < length("8").nm


def test_a_tenon_s_distance_starts_at_its_own_shoulder() -> None:
    """At the far end too, where the shoulder line is not the reference."""
    walk = _layout("girt")
    step = walk.step(f"{OWN}/peg-line")
    drawn = scene(walk, step, Face.SECOND)
    datum = datum_along(drawn)
    assert datum == length("9' 4-1/2").nm
    assert drawn.current[0].start[0] - datum == step.readings[0].value.nm
