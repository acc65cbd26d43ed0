"""How far two pieces of wood lie apart."""

from itertools import combinations
from math import ceil, isclose

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from numpy.typing import NDArray

from benchmate.checks.apart import apart
from benchmate.checks.piece import Piece, Point
from benchmate.measure.length import Length
from benchmate.model.solids import Plane

NM = 1_000_000
"""The tests' unit in nanometres, so that what is rounded is far below what is compared."""

Numbers = NDArray[np.float64]


def box(low: Point, high: Point) -> Piece:
    """A box, in millimetres."""
    (a, b, c), (d, e, f) = low, high
    return Piece((a * NM, b * NM, c * NM), (d * NM, e * NM, f * NM))


@pytest.mark.parametrize(
    ("low", "high", "nm"),
    [
        ((13, 0, 0), (20, 10, 10), 3 * NM),
        ((13, 14, 0), (20, 20, 10), 5 * NM),
        ((13, 14, 22), (20, 20, 30), 13 * NM),
        ((11, 11, 0), (20, 20, 10), 1_414_214),
        ((10, 10, 10), (20, 20, 20), 0),
        ((10, 10, 0), (20, 20, 10), 0),
        ((9, 9, 9), (20, 20, 20), 0),
        ((2, 2, 2), (3, 3, 3), 0),
    ],
)
def test_boxes_lie_apart_by_the_gaps_between_them(low: Point, high: Point, nm: int) -> None:
    """On one axis, two, three; at a corner, along an edge, overlapping, one inside the other."""
    assert apart(box((0, 0, 0), (10, 10, 10)), box(low, high)) == Length(nm)


STEEP = st.integers(-9, 9)
SLOPES = st.lists(
    st.tuples(st.tuples(STEEP, STEEP, STEEP).filter(any), st.integers(-3, 12)), max_size=3
)
PLACES = st.tuples(*[st.integers(-24, 24)] * 3)
SIDES = st.tuples(*[st.integers(2, 12)] * 3)


@st.composite
def pieces(draw: st.DrawFn) -> Piece:
    """A box somewhere, cut off by up to three planes that pass near its middle."""
    low, sides = draw(PLACES), draw(SIDES)
    high = [at + side for at, side in zip(low, sides, strict=True)]
    middle = [at + side // 2 for at, side in zip(low, sides, strict=True)]
    planes = [
        Plane(way, NM * (sum(n * m for n, m in zip(way, middle, strict=True)) + off))
        for way, off in draw(SLOPES)
    ]
    found = box(low, (high[0], high[1], high[2])).within(planes)
    assume(found is not None and found.corners())
    assert found
    return found


def in_mm(piece: Piece) -> Numbers:
    """The corners of a piece, in millimetres: one a row."""
    return np.array([[float(each) / NM for each in corner] for corner in piece.corners()])


def groups(corners: Numbers, count: int) -> Numbers:
    """Every so many corners of a solid, as if they made an edge or a face of it."""
    return np.array(list(combinations(corners, count)))


def dots(one: Numbers, other: Numbers) -> Numbers:
    """The products of vectors, along the last axis."""
    found: Numbers = np.sum(one * other, axis=-1)
    return found


def to_faces(points: Numbers, faces: Numbers) -> float:
    """The least way from a point square to a face, where its foot lies inside the three corners."""
    a, b, c = faces[:, 0], faces[:, 1], faces[:, 2]
    square = np.cross(b - a, c - a)
    broad = dots(square, square) > 1e-9
    a, b, c, square = (each[broad][None] for each in (a, b, c, square))
    off = dots(points[:, None] - a, square) / dots(square, square)
    foot = points[:, None] - square * off[..., None]
    turns = [dots(np.cross(q - p, foot - p), square) for p, q in ((a, b), (b, c), (c, a))]
    found = np.abs(off) * np.sqrt(dots(square, square))
    return float(np.min(found[np.min(turns, axis=0) >= -1e-9], initial=np.inf))


def between_edges(edges: Numbers, facing: Numbers) -> float:
    """The least way between two edges by the closed formula, each share held to its own edge."""
    a, c = edges[:, None, 0], facing[None, :, 0]
    one, other = edges[:, None, 1] - a, facing[None, :, 1] - c
    aa, bb, ab = dots(one, one), dots(other, other), dots(one, other)
    ag, bg = dots(one, a - c), dots(other, a - c)
    whole = aa * bb - ab * ab
    s = np.where(whole > 1e-9, (ab * bg - ag * bb) / np.maximum(whole, 1e-9), 0).clip(0, 1)
    t = ((ab * s + bg) / bb).clip(0, 1)
    s = ((ab * t - ag) / aa).clip(0, 1)
    gap = a + one * s[..., None] - c - other * t[..., None]
    return float(np.sqrt(np.min(dots(gap, gap))))


def by_parts(one: Numbers, other: Numbers) -> float:
    """The least distance of two solids that lie apart: a corner from a face, an edge from an edge.

    Corners that make no face or edge are tried as well: what lies inside is no nearer.
    """
    return min(
        to_faces(one, groups(other, 3)),
        to_faces(other, groups(one, 3)),
        between_edges(groups(one, 2), groups(other, 2)),
    )


def lie_apart(one: Numbers, other: Numbers) -> bool:
    """Whether a plane along a face of one, or along an edge of each, parts two solids."""
    edges = [np.diff(groups(each, 2), axis=1)[:, 0] for each in (one, other)]
    faces = [np.diff(groups(each, 3), axis=1) for each in (one, other)]
    ways = [np.cross(face[:, 0], face[:, 1]) for face in faces]
    ways.append(np.cross(edges[0][:, None], edges[1][None]).reshape(-1, 3))
    here, there = (np.concatenate(ways) @ each.T for each in (one, other))
    before = here.max(axis=1) < there.min(axis=1) - 1e-6
    behind = there.max(axis=1) < here.min(axis=1) - 1e-6
    return bool(np.any(before | behind))


@given(pieces(), pieces())
def test_the_distance_is_that_of_the_nearest_parts(one: Piece, other: Piece) -> None:
    """Against closed formulas over all faces and edges, and nothing where no plane parts them."""
    found = apart(one, other)
    here, there = in_mm(one), in_mm(other)
    assert found is not None
    if lie_apart(here, there):
        assert isclose(found.nm / NM, by_parts(here, there), rel_tol=1e-6, abs_tol=2e-6)
    else:
        assert found.nm <= 2


@given(pieces(), pieces())
def test_it_is_the_same_from_either_side(one: Piece, other: Piece) -> None:
    """Whichever of the two is named first."""
    assert apart(one, other) == apart(other, one)


@given(pieces(), st.integers(1, 10**10), STEEP)
def test_a_piece_beyond_the_box_lies_as_far_as_its_nearest_corner(
    piece: Piece, gap: int, aside: int
) -> None:
    """A wide box ahead of it: only the way along counts."""
    wide = 10**12
    reach = max(x for x, _, _ in piece.corners())
    ahead = Piece((ceil(reach) + gap, -wide, aside - wide), (wide, wide, wide))
    found = apart(piece, ahead)
    assert found
    assert abs(found.nm - (ahead.low[0] - reach)) <= 0.5


@pytest.mark.parametrize("scale", [1, 10**9 + 7])
@pytest.mark.parametrize(("gap", "nm"), [(0, 0), (1, 0), (2, 0), (3, 1), (60 * NM, 12 * NM)])
def test_sloping_faces_lie_apart_square_to_them(scale: int, gap: int, nm: int) -> None:
    """Of a slope of 3 in 4 the normal is 5 long, however large its whole numbers are."""
    block = Piece((0, 0, 0), (400 * NM, 200 * NM, 200 * NM))
    at = 600 * NM
    one = block.within((Plane((3 * scale, 4 * scale, 0), at * scale),))
    other = block.within((Plane((-3 * scale, -4 * scale, 0), -(at + gap) * scale),))
    assert one
    assert other
    assert apart(one, other) == Length(nm)


@pytest.mark.parametrize(
    ("lean", "at", "wood"), [(-1, 500, 10 * NM), (1, 580, 7_071_068), (1, 570, 0), (1, 569, 0)]
)
def test_a_brace_s_shoulder_beside_a_mortise(lean: int, at: int, wood: int) -> None:
    """At 45 degrees and leaning away, the wood is least at the face; leaning under, square to it.

    10 mm along is 7.071068 mm square to the slope, from the floor of a mortise 80 mm deep.
    """
    timber = Piece((0, 0, 0), (1000 * NM, 200 * NM, 200 * NM))
    housing = timber.within((Plane((-1, -lean, 0), -at * NM),))
    assert housing
    assert apart(housing, box((400, 0, 0), (490, 80, 200))) == Length(wood)


def test_slopes_that_meet_in_a_point_leave_nothing() -> None:
    """A corner on a face, and inside it; a millimetre on it is a millimetre away."""
    tip = box((0, 0, 0), (100, 100, 100)).within((Plane((1, 1, 1), 60 * NM),))
    assert tip
    found = [apart(tip, box((low, 0, 0), (100, 10, 10))) for low in (59, 60, 61)]
    assert found == [Length(0), Length(0), Length(NM)]


def test_two_ridges_that_cross_lie_apart_from_edge_to_edge() -> None:
    """Neither has a corner anywhere near the other."""
    block = box((0, 0, 0), (100, 100, 100))
    one = block.within((Plane((-1, 1, 0), 0), Plane((-1, -1, 0), -100 * NM)))
    other = block.within((Plane((1, 0, 1), 75 * NM), Plane((1, 0, -1), -25 * NM)))
    assert one
    assert other
    assert apart(one, other) == Length(25 * NM)


def test_a_piece_that_is_no_wood_is_no_distance_away() -> None:
    """There is nothing to measure to."""
    block = Piece((0, 0, 0), (100 * NM, 100 * NM, 100 * NM))
    sheet = block.within((Plane((1, 1, 0), 60 * NM), Plane((-1, -1, 0), -60 * NM)))
    assert sheet
    assert apart(sheet, block) is None
    assert apart(block, sheet) is None
