"""Drawings to look at as a framer would: which way is the foot, and which side goes?

`golden/<name>.txt` holds each as plain text, without the colours, rows stripped at the right.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from benchmate.layout.step import shown_readings
from benchmate.layout.walk import lay_out
from benchmate.model.directions import Face
from benchmate.tui.drawing.end import draw_end
from benchmate.tui.drawing.face import draw_face
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from tests.joinery.brace.bays import bay
from tests.tui.drawing.timbers import draw, layout

GOLDEN = Path(__file__).parent / "golden"

FACES = (
    ("foot-shoulder", "foot-tenon/shoulder", Face.FIRST),
    ("foot-far-cheek", "foot-tenon/far-cheek", Face.SECOND),
    ("foot-relief", "foot-tenon/reference-edge", Face.FIRST),
    ("head-shoulder", "head-tenon/shoulder", Face.SECOND),
    ("overall", "end/overall", Face.FIRST),
    ("chamfer-line", "inside-chamfer/line", Face.FAR_FIRST),
    ("chamfer-stop", "inside-chamfer/head-stop", Face.FAR_SECOND),
)
HANDS = tuple(
    (f"{post}-{name}-{size[0]}x{size[1]}", post, step, face, size)
    for post in ("post-sw", "post-se")
    for name, step, face in FACES
    for size in ((49, 8), (60, 12), (100, 20))
)
MORTISES = tuple(
    (f"{name}-{size[0]}x{size[1]}", timber, step, face, size)
    for name, timber, step, face in (
        ("sill-mortise-start", "sill", "se-foot-mortise/start", Face.FIRST),
        ("sill-mortise-depth", "sill", "se-foot-mortise/depth", Face.FIRST),
        ("plate-mortise-side", "plate", "sw-head-mortise/far-side", Face.FAR_FIRST),
    )
    for size in ((49, 8), (60, 12), (100, 20))
)
ENDS = tuple(
    (f"{timber}-{end.value.replace(' ', '-')}-{size[0]}x{size[1]}", timber, step, end, size)
    for timber, step, end in (
        ("post-sw", "foot-tenon/far-cheek", Face.REFERENCE_END),
        ("post-se", "foot-tenon/far-cheek", Face.REFERENCE_END),
        ("post-se", "head-tenon/near-cheek", Face.FAR_END),
        ("sill", "end/square", Face.REFERENCE_END),
    )
    for size in ((21, 9), (50, 16))
)


SLANTS = tuple(
    (f"brace-{name}-{size[0]}x{size[1]}", step, face, size)
    for name, step, face in (
        ("foot-face-line", "foot-tenon/shoulder", Face.SECOND),
        ("foot-face-line-edge", "foot-tenon/shoulder", Face.FIRST),
        ("foot-face-line-far-edge", "foot-tenon/shoulder", Face.FAR_FIRST),
        ("foot-nose", "foot-tenon/nose", Face.FAR_SECOND),
        ("foot-tenon-end", "foot-tenon/tenon-end", Face.SECOND),
        ("head-face-line", "head-tenon/shoulder", Face.SECOND),
    )
    for size in ((49, 8), (60, 12), (100, 20))
)


@pytest.mark.parametrize(("name", "step", "face", "size"), SLANTS)
def test_a_slant_looks_as_it_did_when_it_was_judged(
    name: str, step: str, face: Face, size: tuple[int, int]
) -> None:
    """Its figure stands at the edge it is set off from, and nowhere else."""
    assert _bare(_slant(step, face, size, UNICODE)) == _golden(name)


def test_a_slant_is_told_from_hatching_in_plain_characters() -> None:
    """Stars are lines, strokes and signs are waste."""
    drawn = _slant("foot-tenon/tenon-end", Face.SECOND, (60, 12), ASCII)
    assert _bare(drawn) == _golden("brace-foot-tenon-end-ascii-60x12")


def _slant(step: str, face: Face, size: tuple[int, int], glyphs: Glyphs) -> str:
    walk, (width, height) = lay_out(bay(), "brace"), size
    found = walk.step(step)
    (reading, *_) = shown_readings(found, shoulder_struck=False, swapped=False)
    figure = bay().project.tape.text(reading.value)
    return draw_face(
        walk, found, face, width=width, height=height, glyphs=glyphs, reading=reading, figure=figure
    ).text


@pytest.mark.parametrize(("name", "timber", "step", "face", "size"), HANDS + MORTISES)
def test_a_face_looks_as_it_did_when_it_was_judged(
    name: str, timber: str, step: str, face: Face, size: tuple[int, int]
) -> None:
    """Any change to a drawing is seen and judged again before it is kept."""
    assert _bare(draw(timber, step, face, size).text) == _golden(name)


@pytest.mark.parametrize(("name", "timber", "step", "end", "size"), ENDS)
def test_an_end_looks_as_it_did_when_it_was_judged(
    name: str, timber: str, step: str, end: Face, size: tuple[int, int]
) -> None:
    """As for the faces."""
    walk = layout(timber)
    drawing = draw_end(walk, walk.step(step), end, width=size[0], height=size[1], glyphs=UNICODE)
    assert _bare(drawing.text) == _golden(name)


def test_plain_characters_draw_the_same_picture() -> None:
    """A terminal without line-drawing characters loses none of the meaning."""
    drawing = draw("post-se", "foot-tenon/far-cheek", Face.SECOND, (60, 12), glyphs=ASCII)
    assert _bare(drawing.text) == _golden("post-se-foot-far-cheek-ascii-60x12")


def test_no_golden_drawing_is_left_over() -> None:
    """Every file is compared with a drawing."""
    names = {case[0] for case in (*HANDS, *MORTISES, *ENDS, *SLANTS)}
    names |= {"post-se-foot-far-cheek-ascii-60x12", "brace-foot-tenon-end-ascii-60x12"}
    others = ("key-", "pegs-", "joists-", "rolled-")
    drawn = {path.stem for path in GOLDEN.iterdir() if not path.stem.startswith(others)}
    assert drawn == names


def _bare(text: str) -> str:
    return "".join(f"{line.rstrip()}\n" for line in text.splitlines())


def _golden(name: str) -> str:
    return (GOLDEN / f"{name}.txt").read_text("utf-8")
