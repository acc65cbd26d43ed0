"""The timber on the horses: rolling order, the shared arrises, and marks that line up."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from benchmate.layout.common import crown_side
from benchmate.model.directions import LONG_FACES, Face
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.drawing.face import top_face
from benchmate.tui.drawing.roll import Roll, face_below, in_order
from benchmate.tui.drawing.rolled import draw_ends, draw_rolled
from benchmate.tui.drawing.tags import SetOff, Tag
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from tests.tui.drawing.timbers import TIMBERS, frame, layout

GOLDEN = Path(__file__).parent / "golden"

STEPS = {
    "post-sw": "foot-tenon/far-cheek",
    "post-se": "foot-tenon/far-cheek",
    "sill": "se-foot-mortise/start",
}
CASES = tuple(
    (f"rolled-{timber}-{'whole' if whole else 'joint'}-{size[0]}x{size[1]}", timber, whole, size)
    for timber in STEPS
    for whole in (True, False)
    for size in ((80, 16), (120, 30), (200, 50))
)


def rolled(timber: str, face: Face, *, whole: bool, step: str = "") -> Roll:
    """A step of a timber, its squared end's figures along every face."""
    walk = layout(timber)
    found = walk.step(step or STEPS[timber])
    tape = frame().project.tape
    reading = found.readings[0]
    tags = tuple(
        Tag(
            at=line.at.nm,
            figure=tape.text(line.at - walk.stick.start),
            current=(feature.id, line.id) == (found.feature, found.line),
        )
        for feature in walk.features
        for line in feature.lines
        if line.axis is not None and line.axis.name == "ALONG"
    )
    return Roll(
        layout=walk,
        step=found,
        face=face,
        best=face,
        whole=whole,
        reading=reading,
        figure=tape.text(reading.value),
        tags=dict.fromkeys(LONG_FACES, tags),
        crown=crown_side(walk.stick),
    )


def draw(
    timber: str, face: Face, size: tuple[int, int], *, whole: bool = True, glyphs: Glyphs = UNICODE
) -> Drawing:
    """A rolled timber on a sheet."""
    width, height = size
    roll = rolled(timber, face, whole=whole)
    return draw_rolled(roll, width=width, height=height, glyphs=glyphs)


@pytest.mark.parametrize(("name", "timber", "whole", "size"), CASES)
def test_it_looks_as_it_did_when_it_was_judged(
    name: str, timber: str, whole: bool, size: tuple[int, int]
) -> None:
    """Any change is seen and judged again before it is kept."""
    face = Face.FIRST if timber == "sill" else Face.FAR_SECOND
    assert _bare(draw(timber, face, size, whole=whole).text) == _golden(name)


def test_the_ends_look_as_they_did() -> None:
    """Side by side, each from outside."""
    roll = rolled("post-se", Face.FIRST, whole=True)
    drawn = draw_ends(roll, width=80, height=16, glyphs=UNICODE)
    assert _bare(drawn.text) == _golden("rolled-post-se-ends-80x16")


def test_plain_characters_draw_the_same() -> None:
    """A terminal of plain characters shows all of it."""
    drawn = draw("post-se", Face.FAR_SECOND, (80, 16), glyphs=ASCII)
    assert drawn.text.isascii()
    assert _bare(drawn.text) == _golden("rolled-post-se-ascii-80x16")


def test_no_golden_drawing_is_left_over() -> None:
    """Every file is compared with a drawing."""
    names = {case[0] for case in CASES} | {
        "rolled-post-se-ends-80x16",
        "rolled-post-se-ascii-80x16",
    }
    assert {path.stem for path in GOLDEN.glob("rolled-*")} == names


@pytest.mark.parametrize("timber", TIMBERS)
def test_rolling_goes_round_over_shared_arrises(timber: str) -> None:
    """Four times on, and each face lies under the one before: they share the arris between."""
    pose = layout(timber).stick.pose
    faces = [Face.FIRST]
    for _ in range(4):
        faces.append(face_below(pose, faces[-1]))
    assert faces[-1] is Face.FIRST
    assert set(faces) == set(LONG_FACES)
    for above, below in pairwise(faces):
        assert top_face(pose, below) is above
        assert in_order(pose, below)[0] is above
    # The hand settles which way round the faces come up.
    assert (faces[1] is Face.SECOND) is pose.right_handed


@pytest.mark.parametrize("timber", TIMBERS)
def test_the_edge_that_two_faces_share_is_the_same_wood(timber: str) -> None:
    """The lower edge of the upper face and the upper edge of the lower one are one arris."""
    pose = layout(timber).stick.pose
    for face in LONG_FACES:
        below = face_below(pose, face)
        out, down = pose.direction(face), pose.direction(below)
        along = pose.direction(Face.FAR_END)
        # Seen from outside with the far end at the right, up is the outward normal x right.
        assert out.cross(along) is down.opposite
        assert down.cross(along) is out


@pytest.mark.parametrize("timber", STEPS)
@pytest.mark.parametrize("size", [(80, 16), (120, 30), (200, 50)])
@pytest.mark.parametrize("face", LONG_FACES)
def test_which_face_and_which_end_is_always_in_words(
    timber: str, size: tuple[int, int], face: Face
) -> None:
    """The face in hand, both of its edges, both ends, and the arrises that join it."""
    pose = layout(timber).stick.pose
    drawn = draw(timber, face, size)
    rows = drawn.text.splitlines()
    words = pose.words(face)
    (title,) = (row for row in rows if " edge above, " in row)
    up = top_face(pose, face)
    edges = [pose.words(edge).removesuffix(" face") for edge in (up, up.opposite)]
    assert words.lower() in title.lower()
    assert f"{edges[0]} edge above, {edges[1]} edge below" in title
    ends = [pose.words(end) for end in (Face.REFERENCE_END, Face.FAR_END)]
    last = rows[-1]
    assert last.index(ends[0]) < last.index(words) < last.index(ends[1])
    shown = 4 if size[1] > 40 else 2
    assert drawn.text.count(" arris") + drawn.text.count("REFERENCE ARRIS") >= shown
    if face.is_reference or size[1] >= 30:
        assert "REFERENCE ARRIS" in drawn.text


@pytest.mark.parametrize("hand", ["post-sw", "post-se"])
def test_marks_line_up_over_the_arrises(hand: str) -> None:
    """A shoulder line stands in one column on all four faces."""
    roll = rolled(hand, Face.FIRST, whole=True, step="foot-tenon/shoulder")
    drawn = draw_rolled(roll, width=120, height=50, glyphs=UNICODE)
    columns = {column for _, column in _cells(drawn, Role.CURRENT)}
    rows = {row for row, _ in _cells(drawn, Role.CURRENT)}
    assert len(columns) == 1
    assert len(rows) >= 16


def test_a_slant_has_its_figure_on_the_edge_it_is_set_off_on() -> None:
    """Above the upper edge or below the lower one, wherever the reference edge lies."""
    roll = rolled("sill", Face.FIRST, whole=True)
    pose = roll.layout.stick.pose
    for edge in (SetOff.REFERENCE, SetOff.FAR):
        tag = Tag(at=10**9, figure="SLANT", edge=edge)
        one = replace(roll, tags={Face.FIRST: (tag,)})
        rows = draw_rolled(one, width=80, height=20, glyphs=UNICODE).text.splitlines()
        place = next(at for at, row in enumerate(rows) if "SLANT" in row)
        heavy = next(at for at, row in enumerate(rows) if UNICODE.heavy_across * 9 in row)
        light = next(at for at, row in enumerate(rows) if UNICODE.across * 9 in row)
        own, other = (heavy, light) if edge is SetOff.REFERENCE else (light, heavy)
        assert abs(place - own) < abs(place - other)
    assert top_face(pose, Face.FIRST) in (Face.SECOND, Face.FAR_SECOND)


def test_in_the_smallest_window_the_face_and_its_line_are_there() -> None:
    """At 60 x 16 eight rows are left: the figures give way before the face does."""
    drawn = draw("post-se", Face.FAR_SECOND, (60, 8))
    assert _cells(drawn, Role.CURRENT)
    assert "West face: North edge above" in drawn.text or "from outside" in drawn.text


@pytest.mark.parametrize("size", [(5, 3), (20, 6), (40, 9), (0, 0)])
def test_where_there_is_no_room_it_keeps_to_what_there_is(size: tuple[int, int]) -> None:
    """A sheet of any size comes out in its size."""
    drawn = draw("post-se", Face.FIRST, size)
    assert len(drawn.rows) == size[1]
    assert all(sum(len(text) for text, _ in row) == size[0] for row in drawn.rows)


def _cells(drawn: Drawing, wanted: Role) -> list[tuple[int, int]]:
    found = []
    for place, row in enumerate(drawn.rows):
        column = 0
        for text, role in row:
            if role is wanted:
                found += [(place, column + at) for at in range(len(text))]
            column += len(text)
    return found


def _bare(text: str) -> str:
    return "".join(f"{line.rstrip()}\n" for line in text.splitlines())


def _golden(name: str) -> str:
    return (GOLDEN / f"{name}.txt").read_text("utf-8")
