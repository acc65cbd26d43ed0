"""A drawn end tells the truth: north up or up up, the true hand, and the waste where it is cut."""

from __future__ import annotations

from itertools import product

import pytest
from rich.cells import cell_len

from benchmate.model.directions import Face
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.drawing.end import draw_end, sides
from benchmate.tui.glyphs import ASCII, UNICODE
from tests.tui.drawing.oracle import HATCHED, UP, Vector, against, cross, grid_of, normals
from tests.tui.drawing.timbers import TIMBERS, layout, steps_with_lines

ENDS = (Face.REFERENCE_END, Face.FAR_END)
NORTH = (0, 1, 0)
ARROWS = {UNICODE.left: (-1, 0), UNICODE.right: (1, 0), UNICODE.up: (0, 1), UNICODE.down: (0, -1)}
CORNERS = {
    (True, True): (0, 0),
    (True, False): (0, -1),
    (False, True): (-1, 0),
    (False, False): (-1, -1),
}

every_end = pytest.mark.parametrize(("timber", "end"), list(product(TIMBERS, ENDS)))


def _draw(timber: str, step: str, end: Face, size: tuple[int, int] = (21, 9)) -> Drawing:
    walk = layout(timber)
    return draw_end(walk, walk.step(step), end, width=size[0], height=size[1], glyphs=UNICODE)


def _up_right(timber: str, end: Face) -> tuple[Vector, Vector]:
    out = normals(timber)[end]
    up = NORTH if out in (UP, against(UP)) else UP
    return up, cross(up, out)


def _box(roles: tuple[tuple[Role, ...], ...]) -> tuple[range, range]:
    """The rows and columns of the outline."""
    drawn = {Role.OUTLINE, Role.REFERENCE, Role.CURRENT, Role.WASTE_ARROW}
    rows = [at for at, row in enumerate(roles) if sum(role in drawn for role in row) > 1]
    columns = [at for at, role in enumerate(roles[rows[0]]) if role in drawn]
    return range(rows[0], rows[-1] + 1), range(columns[0], columns[-1] + 1)


def _depths(
    timber: str, end: Face, box: tuple[range, range], cell: tuple[int, int]
) -> tuple[int, int]:
    """The depths in from the first and second face at a cell, from where the two faces look."""
    walk = layout(timber)
    section, looks = walk.stick.section(), normals(timber)
    up, right = _up_right(timber, end)
    rows, columns = box
    found = []
    for face, wide in ((Face.FIRST, section.first.nm), (Face.SECOND, section.second.nm)):
        if looks[face] in (right, against(right)):
            part, whole = cell[1] - columns[0], len(columns) - 1
            towards = looks[face] == right
        else:
            part, whole = cell[0] - rows[0], len(rows) - 1
            towards = looks[face] == against(up)
        found.append((whole - part if towards else part) * wide // whole)
    return found[0], found[1]


@every_end
def test_the_faces_stand_where_they_look(timber: str, end: Face) -> None:
    """Seen from outside, right is up x outward normal, so no end is ever drawn mirrored."""
    up, right = _up_right(timber, end)
    looks = normals(timber)
    found = [looks[face] for face in sides(layout(timber).stick.pose, end)]
    assert found == [up, against(up), against(right), right]


@pytest.mark.parametrize(
    ("timber", "end", "row"),
    [
        ("post-sw", Face.REFERENCE_END, ["E", "W 2"]),
        ("post-se", Face.REFERENCE_END, ["E 2", "W"]),
        ("post-sw", Face.FAR_END, ["W 2", "E"]),
        ("post-se", Face.FAR_END, ["W", "E 2"]),
        ("sill", Face.REFERENCE_END, ["N", "S 2"]),
        ("sill", Face.FAR_END, ["S 2", "N"]),
    ],
)
def test_a_framer_walking_round_sees_the_faces_so(timber: str, end: Face, row: list[str]) -> None:
    """Looking up at a foot with north up, east is at the left; looking down at a head, west is."""
    step = layout(timber).steps[0].id
    labels = (Role.LABEL, Role.REFERENCE_LABEL)
    rows = _draw(timber, step, end).rows
    assert row in [[text for text, role in runs if role in labels] for runs in rows]


@every_end
def test_the_arris_mark_is_on_the_corner_of_the_reference_faces(timber: str, end: Face) -> None:
    """The one corner marked is the one the first and second face share."""
    up, right = _up_right(timber, end)
    looks = normals(timber)
    pair = (looks[Face.FIRST], looks[Face.SECOND])
    rows = _draw(timber, "end/square", end).text.splitlines()
    box = _box(grid_of(_draw(timber, "end/square", end)))
    row, column = CORNERS[up in pair, against(right) in pair]
    assert rows[box[0][row]][box[1][column]] == UNICODE.arris
    assert "".join(rows).count(UNICODE.arris) == 1


@pytest.mark.parametrize("size", [(21, 9), (40, 17), (33, 12)])
@every_end
def test_the_waste_on_the_end_grain_is_where_the_cuts_take_it(
    timber: str, end: Face, size: tuple[int, int]
) -> None:
    """A cell well inside the step's waste is hatched; one well inside the tenon is bare."""
    walk = layout(timber)
    for step in steps_with_lines(walk):
        feature = walk.feature(step.feature)
        assert feature
        if feature.id == "end":  # the end itself is where it cuts
            continue
        roles = grid_of(_draw(timber, step.id, end, size))
        box = _box(roles)
        at = walk.stick.start.nm if end is Face.REFERENCE_END else walk.stick.finish.nm
        for row, column in product(box[0][1:-1], box[1][1:-1]):
            around = [(row + a, column + b) for a, b in product((-1, 0, 1), repeat=2)]
            depths = [_depths(timber, end, box, cell) for cell in around]
            taken = [any(cut.takes(at, *place) for cut in feature.cuts) for place in depths]
            if all(taken):
                assert roles[row][column] not in (Role.BLANK, Role.OTHER_WASTE)
            elif not any(taken):
                assert roles[row][column] not in (Role.WASTE, Role.JOINT_WASTE)


@pytest.mark.parametrize("size", [(21, 9), (40, 17)])
@pytest.mark.parametrize("timber", ["post-sw", "post-se"])
@pytest.mark.parametrize("which", ["foot-tenon", "head-tenon"])
def test_the_arrow_on_the_end_grain_points_into_the_waste(
    timber: str, which: str, size: tuple[int, int]
) -> None:
    """The current line shows on its own end, and its arrow leads into what its cuts take."""
    walk = layout(timber)
    end = Face.REFERENCE_END if which == "foot-tenon" else Face.FAR_END
    at = walk.stick.start.nm if end is Face.REFERENCE_END else walk.stick.finish.nm
    feature = walk.feature(which)
    assert feature
    struck = [line for line in feature.lines if end in walk.step(f"{which}/{line.id}").faces]
    assert len(struck) >= 3
    for line in struck:
        drawing = _draw(timber, f"{which}/{line.id}", end, size)
        cuts = [cut for cut in feature.cuts if any(p.line == line.id for p in cut.planes)]
        roles, rows = grid_of(drawing), drawing.text.splitlines()
        box = _box(roles)
        (cell,) = _arrows(rows, roles)
        right, up = ARROWS[rows[cell[0]][cell[1]]]
        ahead = _edge_ward(box, cell, (right, up))
        assert any(cut.takes(at, *_depths(timber, end, box, ahead)) for cut in cuts)
        behind = (cell[0] + 2 * up, cell[1] - 2 * right)
        assert not any(cut.takes(at, *_depths(timber, end, box, behind)) for cut in cuts)


def _arrows(rows: list[str], roles: tuple[tuple[Role, ...], ...]) -> list[tuple[int, int]]:
    return [
        (row, column)
        for row, column in product(range(len(rows)), range(len(rows[0])))
        if roles[row][column] is Role.WASTE_ARROW and rows[row][column] in ARROWS
    ]


def _edge_ward(
    box: tuple[range, range], cell: tuple[int, int], way: tuple[int, int]
) -> tuple[int, int]:
    """The cell on the outline that an arrow points at."""
    (row, column), (right, up) = cell, way
    if right:
        return row, box[1][-1] if right > 0 else box[1][0]
    return box[0][0] if up > 0 else box[0][-1], column


@pytest.mark.parametrize("size", [(21, 9), (30, 5), (60, 20), (0, 0), (8, 9), (21, 3), (90, 7)])
def test_an_end_fills_exactly_the_cells_it_is_given(size: tuple[int, int]) -> None:
    """Just so many rows of just so many cells, in plain characters where these are asked for."""
    for (timber, end), glyphs in product(product(TIMBERS, ENDS), (UNICODE, ASCII)):
        walk = layout(timber)
        for step in walk.steps:
            drawing = draw_end(walk, step, end, width=size[0], height=size[1], glyphs=glyphs)
            rows = ["".join(text for text, _ in row) for row in drawing.rows]
            assert [cell_len(row) for row in rows] == [size[0]] * size[1]
            assert glyphs is UNICODE or "".join(rows).isascii()


def test_an_end_with_room_names_its_faces_in_full() -> None:
    """In a wide pane nobody has to know what an initial stands for."""
    text = _draw("post-se", "foot-tenon/shoulder", Face.REFERENCE_END, (50, 16)).text
    assert "South face 1" in text
    assert "East face 2" in text


def test_a_step_without_waste_on_the_end_leaves_it_bare() -> None:
    """A sill has no tenon, so its end grain shows its reference faces and nothing else."""
    roles = {
        role
        for row in grid_of(_draw("sill", "sw-foot-mortise/start", Face.FAR_END))
        for role in row
    }
    assert roles.isdisjoint(HATCHED)
