"""A drawn face tells the truth: held cell by cell against the cuts, with plain vectors."""

from __future__ import annotations

from itertools import product
from typing import TYPE_CHECKING

import pytest
from rich.cells import cell_len

from benchmate.model.directions import LONG_FACES, Face
from benchmate.model.feature import Feature, Line, Stage
from benchmate.model.solids import Axis
from benchmate.tui.drawing.canvas import Role
from benchmate.tui.drawing.face import draw_face, top_face
from benchmate.tui.glyphs import ASCII, UNICODE, Glyphs
from tests.tui.drawing.oracle import (
    HATCHED,
    Place,
    Seen,
    cross,
    grid_of,
    normals,
    read_back,
    reference_on_top,
)
from tests.tui.drawing.timbers import TIMBERS, draw, layout, steps_with_lines

if TYPE_CHECKING:
    from benchmate.layout.step import Layout, Step

SIZES = ((49, 8), (60, 12), (100, 20))
ARROWS = {
    UNICODE.left: (-1, 0),
    UNICODE.right: (1, 0),
    UNICODE.up: (0, 1),
    UNICODE.down: (0, -1),
}
HAIR = 1_000_000
"""A millimetre: nearer to a line than any size in the drawings, further than any rounding."""

DRAWN = [
    pytest.param(timber, face, size, id=f"{timber}-{face.value}-{size[0]}x{size[1]}")
    for timber, face, size in product(TIMBERS, LONG_FACES, SIZES)
]
every_face = pytest.mark.parametrize(("timber", "face", "size"), DRAWN)


def _own(walk: Layout, step: Step) -> tuple[Feature, Line]:
    feature = walk.feature(step.feature)
    assert feature
    return feature, next(line for line in feature.lines if line.id == step.line)


def _seen(timber: str, step: Step, face: Face, size: tuple[int, int]) -> Seen:
    walk = layout(timber)
    drawing = draw(timber, step.id, face, size)
    return read_back(drawing, walk, face, _own(walk, step)[0], rough=step.stage is Stage.END)


def _taken(features: tuple[Feature, ...], place: Place) -> bool:
    return any(cut.takes(*place) for feature in features for cut in feature.cuts)


def _around(seen: Seen, row: int, column: int) -> list[Place]:
    """A cell's place and those a cell away on every side."""
    steps = product((-seen.per_row, 0, seen.per_row), repeat=2)
    return [seen.place(row, column, right=a, up=b) for a, b in steps]


@every_face
def test_wood_that_goes_is_hatched_and_wood_that_stays_is_not(
    timber: str, face: Face, size: tuple[int, int]
) -> None:
    """A cell well inside a cut is hatched or carries a line; one well clear of all cuts is not."""
    walk, checked = layout(timber), 0
    for step in steps_with_lines(walk):
        seen = _seen(timber, step, face, size)
        own = (_own(walk, step)[0],)
        for row, column in seen.inner():
            role, places = seen.roles[row][column], _around(seen, row, column)
            if all(_taken(own, place) for place in places):
                assert role not in (Role.BLANK, Role.OTHER_WASTE), (step.id, row, column)
                checked += 1
            elif not any(_taken(walk.features, place) for place in places):
                assert role not in (*HATCHED, Role.WASTE_ARROW), (step.id, row, column)
                checked += 1
    assert checked > 50


@every_face
def test_the_current_line_stands_in_its_true_place(
    timber: str, face: Face, size: tuple[int, int]
) -> None:
    """Every cell of the current line is within one cell of where the line is to be struck."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        seen, (feature, line) = _seen(timber, step, face, size), _own(walk, step)
        for row, column in _cells(seen, Role.CURRENT):
            if line.axis is Axis.ALONG:
                off = abs(seen.columns[column] - line.at.nm) * 2 if column in seen.columns else 0
            else:
                depth = seen.depth(row)
                gauged = line.at.nm if line.axis else seen.wide - line.at.nm
                off = abs(depth - gauged)
            assert off <= seen.per_row + HAIR, (step.id, feature.id)


@every_face
def test_the_current_line_is_never_off_the_drawing(
    timber: str, face: Face, size: tuple[int, int]
) -> None:
    """A line struck on a face shows on it and is pointed at; only a depth into it has no line."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        if face not in step.faces:
            continue
        seen = _seen(timber, step, face, size)
        if step.id.endswith("/depth"):
            assert not _cells(seen, Role.CURRENT)
            assert _cells(seen, Role.FIGURE) or size[1] < 12
        else:
            assert _cells(seen, Role.CURRENT), step.id
            assert _cells(seen, Role.POINTER), step.id


@every_face
def test_the_waste_arrow_points_at_what_is_cut_away(
    timber: str, face: Face, size: tuple[int, int]
) -> None:
    """A hair beyond the line, the arrow's way, the line's cuts take the wood; not the other way."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        seen, (feature, line) = _seen(timber, step, face, size), _own(walk, step)
        cuts = [c for c in feature.cuts if any(plane.line == line.id for plane in c.planes)]
        for row, column in _cells(seen, Role.WASTE_ARROW):
            way = ARROWS.get(seen.chars[row][column])
            if way is None or column not in seen.columns:
                continue
            there, back = (
                _beside(seen, line, (row, column), (hair * way[0], hair * way[1]))
                for hair in (HAIR, -HAIR)
            )
            assert any(cut.takes(*there) for cut in cuts), (step.id, there)
            assert not any(cut.takes(*back) for cut in cuts), (step.id, back)


def _beside(seen: Seen, line: Line, cell: tuple[int, int], move: tuple[int, int]) -> Place:
    """The true place on the line that is level with a cell, moved a little."""
    row, column = cell
    if move[0]:
        right = line.at.nm + move[0] - seen.columns[column]
        return seen.place(row, column, right=right)
    true = line.at.nm if line.axis else seen.wide - line.at.nm
    off = true - seen.depth(row)
    return seen.place(row, column, up=(-off if seen.downwards else off) + move[1])


@every_face
def test_every_struck_side_has_its_arrow(timber: str, face: Face, size: tuple[int, int]) -> None:
    """No line that bounds waste is drawn without an arrow into it."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        arrows = _cells(_seen(timber, step, face, size), Role.WASTE_ARROW)
        if face in step.faces and not step.id.endswith(("block", "/depth")):
            assert arrows, step.id
        if step.id.endswith("block"):
            assert not arrows, step.id


def _cells(seen: Seen, role: Role) -> list[tuple[int, int]]:
    return [
        (row, column)
        for row, cells in enumerate(seen.roles)
        for column, found in enumerate(cells)
        if found is role
    ]


@pytest.mark.parametrize("face", LONG_FACES)
@pytest.mark.parametrize("timber", TIMBERS)
def test_the_reference_edge_is_where_geometry_puts_it(timber: str, face: Face) -> None:
    """The heavy edge is at the top exactly where outward normal x right looks as it does."""
    drawing = draw(timber, "end/square", face, (60, 12))
    heavy = [row for row, text in enumerate(drawing.text.splitlines()) if "━━" in text]
    assert heavy == [1 if reference_on_top(timber, face) else 10]


@pytest.mark.parametrize("face", LONG_FACES)
@pytest.mark.parametrize("timber", TIMBERS)
def test_the_face_on_top_looks_up_on_the_drawing(timber: str, face: Face) -> None:
    """The upper edge belongs to the face that looks along outward normal x right."""
    sides = normals(timber)
    top = top_face(layout(timber).stick.pose, face)
    assert sides[top] == cross(sides[face], sides[Face.FAR_END])


@pytest.mark.parametrize("step", ["foot-tenon/shoulder", "head-tenon/far-cheek", "end/overall"])
@pytest.mark.parametrize("face", LONG_FACES)
def test_the_two_hands_are_drawn_as_mirror_images(face: Face, step: str) -> None:
    """The same step on the post of the other hand is the same picture upside down."""
    one, other = (grid_of(draw(post, step, face, (61, 13))) for post in ("post-sw", "post-se"))
    top = 1 if "cheek" not in step else 0
    mirrored = reversed(other[top:-1])
    assert [_edges(row) for row in one[top:-1]] == [_edges(row) for row in mirrored]


def _edges(row: tuple[Role, ...]) -> list[bool]:
    """Where a row is hatched or carries the current line; names are not mirrored."""
    return [role in (*HATCHED, Role.CURRENT) for role in row]


@pytest.mark.parametrize("glyphs", [UNICODE, ASCII])
@pytest.mark.parametrize("size", [(30, 5), (31, 6), (49, 8), (150, 40), (30, 60)])
def test_a_drawing_fills_exactly_the_cells_it_is_given(
    size: tuple[int, int], glyphs: Glyphs
) -> None:
    """Every step on every face comes out in just so many rows of just so many cells."""
    for timber, face in product(TIMBERS, (Face.FIRST, Face.FAR_SECOND)):
        for step in layout(timber).steps:
            drawing = draw(timber, step.id, face, size, glyphs=glyphs)
            rows = ["".join(text for text, _ in row) for row in drawing.rows]
            assert [cell_len(row) for row in rows] == [size[0]] * size[1]
            assert glyphs is UNICODE or "".join(rows).isascii()
            assert any(row.strip() for row in rows)


@pytest.mark.parametrize("size", [(0, 0), (1, 1), (11, 8), (60, 3), (-1, 5)])
def test_too_small_a_room_is_left_blank(size: tuple[int, int]) -> None:
    """Nothing is drawn that could not be read; the cells are still filled."""
    drawing = draw("post-se", "foot-tenon/shoulder", Face.FIRST, size)
    assert not drawing.text.strip()
    assert len(drawing.rows) == size[1]


@every_face
def test_the_ends_and_the_face_are_named(timber: str, face: Face, size: tuple[int, int]) -> None:
    """Which way the reference end lies is always written, at the left, and which face this is."""
    words = layout(timber).stick.pose.words
    for step in layout(timber).steps:
        ends = draw(timber, step.id, face, size).text.splitlines()[-1].split()
        text = " ".join(ends)
        assert text.startswith(f"{UNICODE.left} {words(Face.REFERENCE_END)}")
        assert text.endswith(f"{words(Face.FAR_END)} {UNICODE.right}")
        assert words(face) in text


def test_the_hook_is_named_on_its_edge() -> None:
    """The edge of the face that is hooked on says so; otherwise it is called the reference."""
    cheek = draw("post-se", "foot-tenon/far-cheek", Face.SECOND, (60, 12))
    shoulder = draw("post-se", "foot-tenon/shoulder", Face.SECOND, (60, 12))
    gauge = draw("post-se", "inside-chamfer/line", Face.FAR_FIRST, (100, 12))
    assert "South face = hook here" in cheek.text
    assert "South face (reference)" in shoulder.text
    assert "West face = gauge from this arris" in gauge.text


def test_the_figure_stands_by_the_pointer_whole_or_not_at_all() -> None:
    """A figure is never cut short: 5-1/2 read as 5 would spoil the stick."""
    for width in range(20, 70):
        drawing = draw("post-se", "head-tenon/far-edge", Face.FIRST, (width, 10))
        figures = [
            text.strip() for row in drawing.rows for text, role in row if role is Role.FIGURE
        ]
        assert figures in ([], ['5-1/2"'])
    assert figures


def test_the_datum_is_shown_with_a_line_far_away_from_it() -> None:
    """The shoulder at the head is drawn with the struck foot shoulder and the foot's own end."""
    drawing = draw("post-se", "head-tenon/shoulder", Face.SECOND, (60, 12))
    roles = grid_of(drawing)[5]
    assert roles[0] is Role.OUTLINE
    assert roles.index(Role.DATUM) < roles.index(Role.BREAK) < roles.index(Role.CURRENT)
    assert roles[-1] is Role.OUTLINE
    assert "7' 11\"" in drawing.text


def test_a_short_timber_is_drawn_whole() -> None:
    """Where the whole length fits nothing is broken."""
    roles = {
        role for row in grid_of(draw("short", "end/overall", Face.FIRST, (60, 12))) for role in row
    }
    assert Role.CURRENT in roles
    assert Role.BREAK not in roles


def test_a_chamfer_too_thin_for_a_row_is_hatched_on_its_arris() -> None:
    """Between its stops the arris is hatched, outside them it is drawn as it stays."""
    arris = draw("post-se", "inside-chamfer/foot-stop", Face.FAR_FIRST, (60, 12)).rows[-2]
    order = [role for _, role in arris if role in (Role.OUTLINE, Role.CURRENT, Role.WASTE)]
    assert order[-2:] == [Role.CURRENT, Role.WASTE]
    assert Role.WASTE not in order[:-1]


def test_a_task_without_a_line_hatches_all_of_its_joint() -> None:
    """Sawing the cheeks shows both cheeks' waste alike, and no line as current."""
    grid = grid_of(draw("post-se", "foot-tenon/saw-cheeks", Face.SECOND, (60, 12)))
    roles = {role for row in grid for role in row}
    assert Role.WASTE in roles
    assert roles.isdisjoint({Role.CURRENT, Role.JOINT_WASTE, Role.POINTER})


def test_an_oversize_stick_moves_only_the_far_side() -> None:
    """On 6-1/16" drawn over 97 rows the far cheek still lies 4" in from the hook: at row 64."""
    walk = layout("post-se", oversize=True)
    step = walk.step("foot-tenon/far-cheek")
    drawing = draw_face(walk, step, Face.SECOND, width=99, height=99, glyphs=UNICODE)
    rows = [Role.CURRENT in row for row in grid_of(drawing)]
    assert rows.index(True) == 64


@pytest.mark.parametrize("glyphs", [UNICODE, ASCII])
def test_nothing_hangs_on_colour(glyphs: Glyphs) -> None:
    """The current line, the three kinds of waste and the heavy edge differ in shape alone."""
    current = {glyphs.block, glyphs.block_top, glyphs.block_bottom}
    wastes = {glyphs.hatch, glyphs.light_hatch, glyphs.dot}
    lines = {glyphs.across, glyphs.upright, glyphs.crossing, glyphs.hidden_upright}
    heavy = {glyphs.heavy_across, glyphs.heavy_upright}
    kinds = (current, wastes, lines, heavy, {glyphs.break_upright}, {glyphs.arris})
    assert len(wastes) == 3
    assert len(set().union(*kinds)) == sum(map(len, kinds))


def test_a_level_line_is_drawn_in_the_half_of_its_row_that_is_nearer() -> None:
    """4" of 6" over 11 rows is two thirds down row 6: the upper half of row 7, from either end."""
    for post, row, half in (
        ("post-se", 7, UNICODE.block_top),
        ("post-sw", 3, UNICODE.block_bottom),
    ):
        line = draw(post, "foot-tenon/far-cheek", Face.SECOND, (60, 12)).text.splitlines()[row]
        assert half * 10 in line
