"""Planes and the convex cuts they bound."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from benchmate.measure.length import Length
from benchmate.model.solids import Axis, Cut, Plane, above, below

POINTS = st.tuples(*[st.integers(-50, 50)] * 3)


@given(st.sampled_from(Axis), st.integers(-50, 50), POINTS)
def test_below_and_above_share_only_their_plane(
    axis: Axis, at: int, point: tuple[int, int, int]
) -> None:
    """Law 4: every point is waste on one side, and on both only in the plane itself."""
    reading = point[axis.value.index(1)]
    assert below(axis, Length(at)).holds(*point) is (reading <= at)
    assert above(axis, Length(at)).holds(*point) is (reading >= at)


def test_a_plane_knows_the_line_that_shows_it() -> None:
    """A plane without a mark has no line."""
    assert below(Axis.FIRST, Length(2)).line is None
    assert above(Axis.FIRST, Length(2), "far-cheek").line == "far-cheek"


@given(POINTS)
def test_a_sloping_plane_is_as_exact_as_a_square_one(point: tuple[int, int, int]) -> None:
    """Normals are whole numbers, so no point is ever nearly in a plane."""
    _, u, v = point
    assert Plane((0, 2, -3), 7).holds(*point) is (2 * u - 3 * v <= 7)


@pytest.mark.parametrize(
    ("point", "taken"),
    [((-1, 0, 0), True), ((0, 0, 2), True), ((1, 0, 0), False), ((0, 0, 3), False)],
)
def test_a_cut_takes_what_all_its_planes_hold(point: tuple[int, int, int], taken: bool) -> None:
    """The wood before a shoulder and inside a cheek line, borders included."""
    cut = Cut((below(Axis.ALONG, Length(0)), below(Axis.SECOND, Length(2))))
    assert cut.takes(*point) is taken


@given(POINTS, POINTS, st.lists(st.tuples(POINTS, st.integers(-99, 99)), min_size=1, max_size=4))
def test_every_cut_is_convex(
    one: tuple[int, int, int],
    other: tuple[int, int, int],
    planes: list[tuple[tuple[int, int, int], int]],
) -> None:
    """Half-way between two points of a cut lies a point of the cut."""
    cut = Cut(tuple(Plane(normal, offset) for normal, offset in planes))
    twice = Cut(tuple(Plane(normal, 2 * offset) for normal, offset in planes))
    x, u, v = (a + b for a, b in zip(one, other, strict=True))
    if cut.takes(*one) and cut.takes(*other):
        assert twice.takes(x, u, v)
