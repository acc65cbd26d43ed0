"""The key: what is marked is the timber in hand, all of it, from every side."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.tui.drawing import key
from benchmate.tui.drawing.canvas import Drawing, Role
from benchmate.tui.drawing.key import Bar, Corner, View, draw_key, draw_keys, views_for
from benchmate.tui.drawing.key_shape import reached, shape_of
from benchmate.tui.glyphs import ASCII, UNICODE
from tests.tui.drawing.key_frames import INCH, box, corner_posts, shed, slanting
from tests.tui.drawing.oracle import EAST, SOUTH, UP, WEST, Vector, against, cross, grid_of

SIZES = ((20, 6), (44, 10), (78, 20), (200, 50))

OUT: dict[View, Vector] = {
    View.PLAN: UP,
    View.FROM_SOUTH: SOUTH,
    View.FROM_EAST: EAST,
    View.FROM_NORTH: against(SOUTH),
    View.FROM_WEST: WEST,
}
"""Where whoever looks stands, seen from the frame."""

HALVES = {UNICODE.block: (0, 1), UNICODE.block_top: (0,), UNICODE.block_bottom: (1,)}

Spot = tuple[int, int]


def seen(corner: Corner, view: View) -> Spot:
    """A corner as an eye outside the frame has it: right is up x outward, whatever is up."""
    out = OUT[view]
    up = against(SOUTH) if view is View.PLAN else UP
    right = cross(up, out)
    return _dot(right, corner), -_dot(up, corner)


def _dot(one: Vector, other: Vector) -> int:
    return sum(a * b for a, b in zip(one, other, strict=True))


def overlap(spots: list[Spot], low: Spot, high: Spot) -> bool:
    """Whether the convex hull of some spots and a rectangle share more than an edge.

    They do unless a line along some pair of spots, or along an axis, keeps them apart.
    """
    corners = [(a, b) for a in (low[0], high[0]) for b in (low[1], high[1])]
    pairs = [(d - b, a - c) for a, b in spots for c, d in spots if (a, b) < (c, d)]
    for axis in (*pairs, (1, 0), (0, 1)):
        one, other = ([axis[0] * a + axis[1] * b for a, b in points] for points in (spots, corners))
        if max(one) <= min(other) or max(other) <= min(one):
            return False
    return True


def marked(drawing: Drawing) -> set[tuple[int, int]]:
    """The half rows and columns that are filled."""
    chars = [[char for text, _ in row for char in text] for row in drawing.rows]
    return {
        (2 * row + half, column)
        for row, roles in enumerate(grid_of(drawing))
        for column, role in enumerate(roles)
        if role is Role.CURRENT
        for half in HALVES[chars[row][column]]
    }


def whole_if_small(halves: set[tuple[int, int]]) -> set[tuple[int, int]]:
    """The half-cells of a mark; those of one that would be overlooked made up to whole cells."""
    cells = {(half // 2, column) for half, column in halves}
    if len(cells) > 3:
        return halves
    return {(2 * row + half, column) for row, column in cells for half in (0, 1)}


def draw(
    bars: tuple[Bar, ...], timber: str, view: View, size: tuple[int, int] = (44, 10)
) -> Drawing:
    """One view in Unicode."""
    return draw_key(bars, timber, view, width=size[0], height=size[1], glyphs=UNICODE)


@st.composite
def frames(draw: st.DrawFn) -> tuple[Bar, ...]:
    """Boxes and slanting timbers anywhere, some of them hair thin, to the nanometre."""
    place = st.integers(-(10**10), 10**10)
    length = st.one_of(st.integers(1, 10), st.integers(1, 8 * 10**9))
    bars = []
    for number in range(draw(st.integers(1, 5))):
        low, size = (draw(st.tuples(each, each, each)) for each in (place, length))
        shift = draw(st.tuples(place, place, place)) if draw(st.booleans()) else None
        corners = []
        for end in (0, 1):
            for one, other in ((0, 0), (1, 0), (1, 1), (0, 1)):
                corner = low[0] + one * size[0], low[1] + other * size[1], low[2] + end * size[2]
                moved = shift if shift and end else (0, 0, 0)
                corners.append((corner[0] + moved[0], corner[1] + moved[1], corner[2] + moved[2]))
        bars.append(Bar(id=f"t{number}", name=f"T{number}", corners=tuple(corners)))
    return tuple(bars)


@given(frames(), st.sampled_from(View), st.sampled_from(((20, 6), (31, 9))))
def test_just_the_cells_of_the_timber_in_hand_are_marked(
    bars: tuple[Bar, ...], view: View, size: tuple[int, int]
) -> None:
    """A half-cell is marked if the timber reaches into it; each corner lies under one; never none.

    However thin the timber is, and whatever lies over it. A mark of three cells is of whole ones.
    """
    plot = key._laid(bars, view, *size)
    assert plot is not None
    for bar in bars:
        found = marked(draw(bars, bar.id, view, size))
        spots = [seen(corner, view) for corner in bar.corners]
        assert found
        expected = set()
        under = set()
        for half in range(2 * size[1]):
            for column in range(size[0]):
                low = (
                    plot.left + (column - plot.first[1]) * plot.across,
                    plot.top + (half - 2 * plot.first[0]) * plot.down,
                )
                high = low[0] + plot.across, low[1] + plot.down
                if overlap(spots, low, high):
                    expected.add((half, column))
                if (half, column) in found:
                    under |= {
                        (a, b)
                        for a, b in spots
                        if low[0] <= a <= high[0] and low[1] <= b <= high[1]
                    }
        assert found == whole_if_small(expected)
        assert under == set(spots)


@given(frames(), st.sampled_from(View))
def test_nothing_of_a_timber_is_drawn_beside_its_mark(bars: tuple[Bar, ...], view: View) -> None:
    """The stroke that a timber is when it is not in hand lies under the mark it is when it is."""
    plot = key._laid(bars, view, 44, 10)
    assert plot is not None
    for bar in bars:
        cells = {cell for cell, _ in key._strokes((bar,), view, plot, UNICODE)}
        assert cells
        assert cells <= set(reached(shape_of(bar, view), plot))


def test_a_timber_that_ends_between_two_cells_keeps_to_its_own() -> None:
    """A girt against a post's face, and a thick timber beside it, stay out of the next cell."""
    frame = box("Frame", (0, 0, 0), (160, 8, 160), along=2)
    plot = key._laid((frame,), View.FROM_SOUTH, 22, 11)
    assert plot is not None
    assert plot.across == 8 * INCH
    for bar in (
        box("Girt", (8, 0, 16), (80, 8, 24), along=0),
        box("Post", (80, 0, 16), (88, 8, 64), along=2),
        box("Thick", (80, 0, 32), (160, 8, 96), along=0),
        slanting("Brace", (24, 0, 56), (88, 0, 120), 8, (0, 4, 0)),
    ):
        cells = {cell for cell, _ in key._strokes((bar,), View.FROM_SOUTH, plot, UNICODE)}
        assert cells <= set(reached(shape_of(bar, View.FROM_SOUTH), plot)), bar.name


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("view", View)
def test_the_timber_in_hand_is_never_hidden(view: View, size: tuple[int, int]) -> None:
    """Every timber of a crowded frame shows in every view, with no more than an arrow beside it."""
    bars = shed()
    for bar in bars:
        found = marked(draw(bars, bar.id, view, size))
        plot = key._laid(bars, view, *size)
        assert plot is not None
        cells = reached(shape_of(bar, view), plot)
        assert {(half // 2, column) for half, column in found} == set(cells)
        assert found


def test_a_cell_is_marked_by_its_halves() -> None:
    """A timber that reaches into the upper half of a cell alone is drawn as that half alone."""
    post = box("Post", (0, 0, 0), (12, 6, 240), along=2)
    bars = (
        post,
        box("Upper", (12, 0, 12), (240, 6, 24), along=0),
        box("Lower", (12, 0, 0), (240, 6, 12), along=0),
    )
    for timber, char in (("upper", UNICODE.block_top), ("lower", UNICODE.block_bottom)):
        text = draw(bars, timber, View.FROM_SOUTH, (22, 12)).text
        assert text.count(char) == 19
        assert UNICODE.block not in text


@pytest.mark.parametrize(
    ("view", "left", "right"),
    [
        (View.FROM_SOUTH, "sw-post", "se-post"),
        (View.FROM_EAST, "se-post", "ne-post"),
        (View.FROM_NORTH, "ne-post", "nw-post"),
        (View.FROM_WEST, "nw-post", "sw-post"),
        (View.PLAN, "sw-post", "se-post"),
        (View.PLAN, "nw-post", "ne-post"),
    ],
)
def test_left_and_right_are_as_they_are_seen_from_there(view: View, left: str, right: str) -> None:
    """An eastern post is on the right from the south and on the left from the north, and so on."""
    bars = corner_posts()
    for timber in (left, right):
        roles = grid_of(draw(bars, timber, view))
        rows = [row for row in roles if Role.CURRENT in row and Role.OTHER_TIMBER in row]
        assert rows
        for row in rows:
            in_hand, other = row.index(Role.CURRENT), row.index(Role.OTHER_TIMBER)
            assert (in_hand < other) == (timber == left)


@pytest.mark.parametrize(
    ("view", "heading"),
    [
        (View.FROM_SOUTH, "W ◂ from the South ▸ E"),
        (View.FROM_EAST, "S ◂ from the East ▸ N"),
        (View.FROM_NORTH, "E ◂ from the North ▸ W"),
        (View.FROM_WEST, "N ◂ from the West ▸ S"),
    ],
)
def test_an_elevation_says_from_where_one_looks(view: View, heading: str) -> None:
    """The side in words, and what lies at either hand; the words alone where it is narrow."""
    bars = corner_posts()
    assert draw(bars, "se-post", view).text.splitlines()[0].strip() == heading
    narrow = draw(bars, "se-post", view, (20, 6)).text.splitlines()[0].strip()
    assert narrow == heading.replace(" ◂", "").replace(" ▸", "")


@pytest.mark.parametrize("size", SIZES)
def test_north_is_up_and_marked(size: tuple[int, int]) -> None:
    """A plan has N under nothing, an arrow beside it, and the northern posts above the southern."""
    bars = corner_posts()
    heading = draw(bars, "se-post", View.PLAN, size).text.splitlines()[0]
    assert heading.split() == ["plan", "▴", "N"]
    north, south = (
        min(half for half, _ in marked(draw(bars, post, View.PLAN, size)))
        for post in ("ne-post", "se-post")
    )
    assert north < south


@pytest.mark.parametrize("view", [view for view in View if view is not View.PLAN])
def test_up_is_up(view: View) -> None:
    """In every elevation a plate is drawn above its sill."""
    bars = shed()
    plate, sill = (marked(draw(bars, timber, view)) for timber in ("south-plate", "south-sill"))
    assert max(half for half, _ in plate) < min(half for half, _ in sill)


@pytest.mark.parametrize(
    ("timber", "first", "second"),
    [
        ("sw-post", View.FROM_WEST, View.FROM_SOUTH),
        ("ne-post", View.FROM_EAST, View.FROM_NORTH),
        ("south-plate", View.FROM_SOUTH, View.FROM_NORTH),
        ("north-sill", View.FROM_NORTH, View.FROM_SOUTH),
        ("east-tie", View.FROM_EAST, View.FROM_WEST),
        ("joist-1", View.FROM_WEST, View.FROM_EAST),
        ("se-brace", View.FROM_SOUTH, View.FROM_NORTH),
        ("south-rafter-4", View.FROM_EAST, View.FROM_WEST),
    ],
)
def test_the_best_elevation_comes_first(timber: str, first: View, second: View) -> None:
    """The plan, then the outer wall that shows the timber square to its length, then its back.

    The rafters' tails reach out past the long walls, so a corner post is at its gable wall first.
    """
    found = views_for(shed(), timber)
    assert found[:3] == (View.PLAN, first, second)
    assert set(found) == set(View)
    assert len(found) == len(View)


def test_an_elevation_leaves_out_the_other_bents() -> None:
    """What lies behind or before the wall in hand does not show; what meets it there does."""
    bars = shed()
    beside = {bar.id for bar in key._beside(bars, _bar("se-post"), View.FROM_EAST)}
    assert {"ne-post", "east-tie", "east-brace-south", "south-plate", "south-rafter-5"} <= beside
    assert not {"sw-post", "middle-tie", "west-sill", "joist-6", "south-girt-west"} & beside


@pytest.mark.parametrize("timber", ["joist-2", "south-rafter-2", "middle-tie"])
def test_a_timber_seen_end_on_is_shown_in_the_wall_it_ends_at(timber: str) -> None:
    """All of the nearest wall, and nothing of the one behind; a rafter's tail hangs over its."""
    beside = {bar.id for bar in key._beside(shed(), _bar(timber), View.FROM_SOUTH)}
    assert {timber, "south-sill", "south-plate", "se-post", "south-girt-west"} <= beside
    assert not {"north-sill", "north-plate", "nw-post"} & beside


def _bar(timber: str) -> Bar:
    found = key.bar_of(shed(), timber)
    assert found is not None
    return found


def test_a_plan_shows_every_timber() -> None:
    """At every level, one over the other."""
    bars = shed()
    assert key._beside(bars, _bar("se-post"), View.PLAN) == bars


@pytest.mark.parametrize("view", View)
def test_a_timber_without_a_place_has_no_key(view: View) -> None:
    """Blank, with no view to turn to."""
    assert views_for(shed(), "loose") == ()
    assert not draw(shed(), "loose", view).text.strip()
    assert not draw((), "loose", view).text.strip()


@pytest.mark.parametrize("size", [(0, 0), (-1, 4), (4, 6), (20, 3), (20, 1)])
def test_a_room_too_small_stays_blank(size: tuple[int, int]) -> None:
    """No half of a drawing that could be misread."""
    for view in View:
        drawing = draw(shed(), "se-post", view, size)
        assert not drawing.text.strip()
        assert len(drawing.rows) == max(size[1], 0)


def test_two_views_stand_side_by_side() -> None:
    """Each is the drawing of its own room, two cells between them."""
    bars, views = shed(), (View.PLAN, View.FROM_SOUTH)
    pair = draw_keys(bars, "se-post", views, width=45, height=10, glyphs=UNICODE)
    one = draw(bars, "se-post", views[0], (21, 10)).text.splitlines()
    other = draw(bars, "se-post", views[1], (22, 10)).text.splitlines()
    assert pair.text.splitlines() == [f"{a}  {b}" for a, b in zip(one, other, strict=True)]


def test_plain_characters_mark_the_same_cells() -> None:
    """In ASCII the mark is one character that nothing else on the drawing is."""
    bars = shed()
    for bar in bars:
        for view in View:
            plain = draw_key(bars, bar.id, view, width=44, height=10, glyphs=ASCII)
            assert plain.text.isascii()
            rich, bare = grid_of(draw(bars, bar.id, view)), grid_of(plain)
            assert rich == bare
            for row, line in zip(bare, plain.text.splitlines(), strict=True):
                for role, char in zip(row, line, strict=True):
                    assert (role is Role.CURRENT) == (char == "#")


def test_going_through_the_timbers_draws_the_others_once() -> None:
    """On a plan the strokes are kept from timber to timber."""
    bars = (*shed(), box("Last", (0, 0, 0), (1, 1, 1), along=2))
    before = key._strokes.cache_info().misses
    for bar in bars:
        draw(bars, bar.id, View.PLAN)
    assert key._strokes.cache_info().misses == before + 1


def test_a_slope_is_marked_as_one_unbroken_band() -> None:
    """A brace too thin for a cell of its own steps from cell to cell without a gap."""
    bars = (
        *corner_posts(),
        slanting("Strut", (8, 0, 20), (184, 0, 100), 1, (0, 4, 0)),
    )
    found = marked(draw(bars, "strut", View.FROM_SOUTH))
    columns = sorted({column for _, column in found})
    assert columns == list(range(columns[0], columns[-1] + 1))
    for column in columns[1:]:
        here, before = (
            {half for half, at in found if at == place} for place in (column, column - 1)
        )
        assert here & (before | {half + 1 for half in before} | {half - 1 for half in before})


def test_a_bar_is_in_nanometres() -> None:
    """The frames of these tests are in the engine's own unit."""
    assert _bar("se-post").corners[0] == (184 * INCH, 0, 8 * INCH)
