"""Stretches: what must be seen is seen, to scale, and a reading falls in the cell nearest to it."""

from __future__ import annotations

import itertools

from hypothesis import given
from hypothesis import strategies as st

from benchmate.tui.drawing.stretch import Scale, Stretch, stretches

FAR = 5_000_000
readings = st.integers(0, FAR)


@given(st.integers(1, 60), st.integers(1, 10_000), st.integers(-FAR, FAR))
def test_a_number_of_cells_is_the_nearest(cells: int, nm: int, length: int) -> None:
    """No whole number of cells is nearer to the length; a half counts as one more."""
    found = Scale(cells, nm).cells_in(length)
    off = 2 * (length * cells - found * nm)
    assert -nm <= off < nm


@given(st.booleans(), st.integers(3, 80), st.integers(100, 9000), st.integers(-50, 50))
def test_a_cell_stands_for_a_reading_that_falls_in_it(
    turned: bool, count: int, nm: int, low: int
) -> None:
    """Cell to reading and back leads to the same cell, whichever way the readings run."""
    stretch = Stretch(low=low, first=7, count=count, scale=Scale(2, nm), turned=turned)
    assert [stretch.cell(stretch.at(cell)) for cell in stretch.cells] == list(stretch.cells)
    assert stretch.at(stretch.last if turned else stretch.first) == low


@given(st.booleans(), st.integers(-20, 70), st.integers(-20, 70))
def test_the_cells_between_two_readings_are_those_that_stand_for_one(
    turned: bool, low: int, high: int
) -> None:
    """A cell belongs to a span exactly if its own reading does."""
    stretch = Stretch(low=3, first=2, count=12, scale=Scale(1, 4), turned=turned)
    expected = [cell for cell in stretch.cells if low <= stretch.at(cell) <= high]
    assert list(stretch.within(low, high)) == expected


@given(st.integers(1, 43))
def test_a_line_inside_never_hides_under_an_edge(at: int) -> None:
    """A line a hair inside an arris is drawn next to the arris, not on it."""
    stretch = Stretch(low=0, first=0, count=12, scale=Scale(1, 4))
    assert stretch.line(at) in range(1, 11)
    assert (stretch.line(0), stretch.line(44)) == (0, 11)


@given(st.lists(readings, min_size=1, max_size=6), readings, st.integers(12, 150))
def test_the_line_is_always_inside_and_clear_of_a_break(
    others: list[int], line: int, columns: int
) -> None:
    """Whatever else is wished for, the last wish is granted, and never in a break's column."""
    wishes = ((line, *others), (line,))
    found = stretches((0, FAR), wishes, Scale(1, 10_000), columns)
    (part,) = (part for part in found if part.holds(line))
    assert line in (0, FAR) or part.cell(line) not in (part.first, part.last) or _at_end(part)
    assert found[0].first == 0
    assert found[-1].last <= columns - 1


def _at_end(part: Stretch) -> bool:
    return part.low == 0 or part.high == FAR


@given(st.lists(readings, min_size=1, max_size=6), st.integers(12, 150))
def test_two_stretches_run_on_without_touching(wish: list[int], columns: int) -> None:
    """A second stretch shows only what lies beyond the first, with a gap between them."""
    found = stretches((0, FAR), (tuple(wish),), Scale(1, 20_000), columns)
    for one, other in itertools.pairwise(found):
        assert one.high < other.low
        assert other.first == one.last + 2


def test_a_timber_that_fits_is_shown_whole() -> None:
    """Both true ends stand in the outermost cells, to the nanometre."""
    (part,) = stretches((-7, 1001), ((5,),), Scale(1, 100), 40)
    assert (part.low, part.high) == (-7, 1001)


def test_a_generous_wish_is_preferred_and_a_modest_one_accepted() -> None:
    """Datum and line share the sheet where they fit, in two stretches if need be."""
    near = stretches((0, FAR), ((100_000, 300_000),), Scale(1, 10_000), 40)
    far = stretches((0, FAR), ((100_000, 3_000_000),), Scale(1, 10_000), 40)
    tight = stretches((0, FAR), ((100_000, 3_000_000), (3_000_000,)), Scale(1, 10_000), 20)
    assert [len(near), len(far), len(tight)] == [1, 2, 1]
    assert tight[0].holds(3_000_000)
