"""Joists' ends and what they go into, to look at as a framer would.

`golden/joists-<name>.txt` holds each as plain text, without colours, rows stripped at the right.
"""

from __future__ import annotations

import functools
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from benchmate.layout.step import Layout, shown_readings
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.drawing.scene import scene
from benchmate.tui.glyphs import UNICODE
from tests.builders import length
from tests.floor import Floor
from tests.joinery.joist.joints import dovetail_joist, joist_pocket
from tests.joinery.joist_tenon.joints import soffit_tenon, tusk_tenon

if TYPE_CHECKING:
    from benchmate.frame.frame import Frame
    from benchmate.layout.outlines import Outline
    from benchmate.tui.drawing.canvas import Drawing

GOLDEN = Path(__file__).parent / "golden"
SIZE = (64, 13)
DEEP = Floor(joist="9 x 4", beam="10 x 8", lower="1")

JOINTS = {
    "soffit": Floor(lower="1").frame(soffit_tenon(above_soffit="1")),
    "tusk": DEEP.frame(tusk_tenon(set_back="3", tusk_height="1-1/2")),
    "dovetail": Floor().frame(dovetail_joist(end_depth="4", wedge="3/8", wedge_side="west")),
    "notch": Floor(joist="6 x 4").frame(joist_pocket(bearing="3", end_depth="4")),
    "slope": Floor(joist="6 x 4").frame(joist_pocket(bearing="3", end_depth="4", diminished="10")),
}

CASES = (
    ("soffit", "joist", "south-end-tenon/haunch", Face.SECOND),
    ("soffit", "beam", "joist-end-mortise/haunch-floor", Face.SECOND),
    ("tusk", "joist", "south-end-tenon/tusk-end", Face.SECOND),
    ("tusk", "joist", "south-end-tenon/saw-upper", Face.FIRST),
    ("tusk", "beam", "joist-end-mortise/lower-side", Face.SECOND),
    ("tusk", "beam", "joist-end-mortise/haunch-top", Face.SECOND),
    ("tusk", "beam", "joist-end-mortise/cut-haunch", Face.SECOND),
    ("tusk", "beam", "joist-end-mortise/tusk-floor", Face.SECOND),
    ("dovetail", "joist", "south-end-dovetail/near-flank", Face.FIRST),
    ("dovetail", "joist", "south-end-dovetail/shoulder", Face.FIRST),
    ("dovetail", "beam", "joist-end-socket/far-flank", Face.FIRST),
    ("notch", "joist", "south-end-bearing/reduced-first", Face.SECOND),
    ("slope", "joist", "south-end-bearing/slope", Face.SECOND),
)
NAMES = tuple(
    (f"{joint}-{step.partition('/')[2]}", joint, timber, step, face)
    for joint, timber, step, face in CASES
)


@functools.cache
def _layout(joint: str, timber: str) -> Layout:
    frame: Frame = JOINTS[joint]
    return lay_out(frame, timber)


def _draw(joint: str, timber: str, step_id: str, face: Face) -> Drawing:
    """A face as the screen shows it once the reference shoulder is struck, figure and all."""
    walk = _layout(joint, timber)
    step = walk.step(step_id)
    reading = shown_readings(step, shoulder_struck=True, swapped=False)[0]
    return draw_face(
        walk,
        step,
        face,
        width=SIZE[0],
        height=SIZE[1],
        glyphs=UNICODE,
        reading=reading,
        figure=JOINTS[joint].project.tape.text(reading.value),
    )


@pytest.mark.parametrize(("name", "joint", "timber", "step", "face"), NAMES)
def test_it_looks_like_the_joint(name: str, joint: str, timber: str, step: str, face: Face) -> None:
    """Each is as it was when it was last looked at."""
    expected = (GOLDEN / f"joists-{name}.txt").read_text("utf-8")
    assert _text(_draw(joint, timber, step, face)) == expected


def test_no_golden_drawing_of_a_joist_is_left_over() -> None:
    """Every file is compared with a drawing."""
    drawn = {path.stem for path in GOLDEN.glob("joists-*")}
    assert drawn == {f"joists-{case[0]}" for case in NAMES}


def _text(drawing: Drawing) -> str:
    return "".join(f"{row.rstrip()}\n" for row in drawing.text.split("\n"))


def _inches(shape: Outline) -> tuple[float, float]:
    """How far a piece of waste reaches in from the reference face, and to where."""
    deep = [point[1] / length("1").nm for point in shape.points]
    return min(deep), max(deep)


@pytest.mark.parametrize(
    ("step", "span"),
    [
        ("depth", (4, 5.6875)),
        ("bore", (4, 5.6875)),
        ("haunch-floor", (1, 4)),
        ("cut-haunch", (1, 4)),
        ("tusk-floor", (5.6875, 7.1875)),
        ("cut-tusk", (5.6875, 7.1875)),
    ],
)
def test_only_the_recess_in_hand_is_hatched(step: str, span: tuple[float, float]) -> None:
    """The mortise, the horn's recess or the tusk's: each has its own depth.

    The joist's top 1" down, a tenon 3" below that and 1-11/16" deep, a tusk 1-1/2" high.
    """
    walk = _layout("tusk", "beam")
    drawn = scene(walk, walk.step(f"joist-end-mortise/{step}"), Face.SECOND)
    assert [_inches(shape) for shape in drawn.waste] == [span]
    assert drawn.current == (), "a depth stands at no line of the face"
