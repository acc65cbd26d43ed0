"""What a cut really takes from the wood."""

from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.checks.piece import Corner, Piece, Point, box_gap
from benchmate.measure.length import Length
from benchmate.model.solids import Axis, Plane, above, below

BLOCK = Piece((0, 0, 0), (12, 8, 8))
NUMBERS = st.integers(-20, 20)
POINTS = st.tuples(*[st.integers(0, end) for end in BLOCK.high])
PLANES = st.builds(Plane, st.tuples(NUMBERS, NUMBERS, NUMBERS).filter(any), st.integers(-120, 160))
CUTS = st.lists(PLANES, min_size=1, max_size=4)


def corners(piece: Piece | None) -> set[Point]:
    """The corners of a piece, all of them at whole numbers."""
    assert piece
    found = piece.corners()
    assert all(each.denominator == 1 for corner in found for each in corner)
    return {(int(x), int(u), int(v)) for x, u, v in found}


def test_a_cut_that_runs_past_the_wood_ends_with_it() -> None:
    """Two planes take the whole end of the block on one side of them."""
    end = BLOCK.within((below(Axis.ALONG, Length(3)), above(Axis.SECOND, Length(6))))
    assert end == Piece((0, 0, 6), (3, 8, 8))
    assert corners(end) == set(product((0, 3), (0, 8), (6, 8)))


@pytest.mark.parametrize("at", [12, 13])
def test_a_cut_beyond_the_wood_takes_none(at: int) -> None:
    """Not where it only touches the end either."""
    assert BLOCK.within((above(Axis.ALONG, Length(at)),)) is None


INSIDE = st.tuples(*[st.integers(1, end - 1) for end in BLOCK.high])
WAYS = st.tuples(NUMBERS, NUMBERS, NUMBERS).filter(any)


@given(INSIDE, st.lists(st.tuples(WAYS, st.integers(1, 60)), max_size=4), WAYS)
def test_all_the_wood_of_a_cut_lies_between_its_corners(
    point: Point, bounds: list[tuple[Point, int]], way: Point
) -> None:
    """Whichever way one looks; and so in its box, which parts pieces before they are looked at."""
    piece = BLOCK.within(Plane(each, int(_dot(each, point)) + room) for each, room in bounds)
    assert piece
    reach = [_dot(way, corner) for corner in piece.corners()]
    assert min(reach) <= _dot(way, point) <= max(reach)
    box = zip(piece.low, point, piece.high, strict=True)
    assert all(low <= at <= high for low, at, high in box)


@given(CUTS)
def test_corners_lie_on_three_planes_and_within_all(planes: list[Plane]) -> None:
    """Told from the cut's own planes and the sides of the block, not from the piece."""
    sides = [plane for axis in Axis for plane in _sides(axis)]
    piece = BLOCK.within(planes)
    for corner in piece.corners() if piece else ():
        on = [_over(plane, corner) for plane in (*planes, *sides)]
        assert max(on) == 0
        assert on.count(Fraction(0)) >= 3


def _sides(axis: Axis) -> tuple[Plane, Plane]:
    far = BLOCK.high[axis.value.index(1)]
    return above(axis, Length(0)), below(axis, Length(far))


def _over(plane: Plane, point: Corner) -> Fraction:
    """How far a point lies off the waste side of a plane, in the plane's own scale."""
    return _dot(plane.normal, point) - plane.offset


def _dot(way: Point, point: Point | Corner) -> Fraction:
    (a, b, c), (x, u, v) = way, point
    return Fraction(a * x + b * u + c * v)


def test_a_sloping_plane_draws_the_box_in() -> None:
    """A brace's shoulder of 45 degrees: along it reaches as far as it does across."""
    piece = BLOCK.within((Plane((1, 1, 0), 6),))
    assert piece == Piece((0, 0, 0), (6, 6, 8), (Plane((1, 1, 0), 6),))
    assert corners(piece) == set(product((0,), (0,), (0, 8))) | {
        (at, 6 - at, v) for at in (0, 6) for v in (0, 8)
    }


def test_a_sloping_plane_that_leaves_the_rest_whole_is_let_go() -> None:
    """A square cut far from a sloping end is a box, and quickly told."""
    end = Plane((3, 1, 0), 36)
    assert BLOCK.within((end, below(Axis.ALONG, Length(9)))) == Piece((0, 0, 0), (9, 8, 8))


def test_a_plane_between_two_nanometres_is_kept_to() -> None:
    """A box cannot end there, so the plane does."""
    piece = BLOCK.within((Plane((2, 0, 0), 7), Plane((0, 3, 0), 6)))
    assert piece == Piece((0, 0, 0), (4, 2, 8), (Plane((2, 0, 0), 7),))
    assert {corner[0] for corner in piece.corners()} == {0, Fraction(7, 2)}


def test_a_piece_without_thickness_is_no_wood() -> None:
    """Two slopes back to back hold a sheet of points and nothing to cut; crossed, not even that."""
    for apart in (0, -1):
        sheet = BLOCK.within((Plane((1, 1, 0), 6), Plane((-1, -1, 0), apart - 6)))
        assert sheet
        assert sheet.corners() == ()


def test_slopes_as_steep_as_places_in_nanometres_are_exact() -> None:
    """A rise and run of metres, far beyond what a fraction of the machine's own holds."""
    run, rise = 3_000_000_019, 4_000_000_007
    block = Piece((0, 0, 0), (10**10, 2 * 10**8, 2 * 10**8))
    piece = block.within((Plane((rise, -run, 0), 17),))
    assert piece
    assert max(x for x, _, _ in piece.corners()) == Fraction(17 + run * 2 * 10**8, rise)


@given(POINTS, POINTS, POINTS, POINTS)
def test_the_gap_between_boxes_is_that_of_their_nearest_points(
    low: Point, high: Point, back: Point, front: Point
) -> None:
    """Square: the least over all points of whole numbers in one and the other, axis by axis."""
    one, other = _box(low, high), _box(back, front)
    spans = [
        (range(a, b + 1), range(c, d + 1))
        for a, b, c, d in zip(one.low, one.high, other.low, other.high, strict=True)
    ]
    least = [min(abs(a - b) for a, b in product(*span)) for span in spans]
    assert box_gap(one, other) == sum(gap * gap for gap in least)


def _box(one: Point, other: Point) -> Piece:
    (a, b, c), (d, e, f) = one, other
    return Piece((min(a, d), min(b, e), min(c, f)), (max(a, d), max(b, e), max(c, f)))
