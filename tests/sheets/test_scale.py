"""The broken scale along a timber, and figures kept apart."""

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from benchmate.sheets.scale import fitted, spread

FAR = st.integers(1, 5_000_000_000)


@given(st.lists(st.tuples(FAR, st.floats(0.1, 20.0), st.booleans()), min_size=1, max_size=40))
def test_every_stretch_has_its_room_and_all_of_them_fit(
    parts: list[tuple[int, float, bool]],
) -> None:
    """Places come in order, within the width, and no stretch under its least unless all are."""
    places = [0]
    for length, _, _ in parts:
        places.append(places[-1] + length)
    least = tuple(each for _, each, _ in parts)
    bare = tuple(each for _, _, each in parts)
    scale = fitted(tuple(places), least, bare, true=1e-7, left=18.0, width=170.0)
    widths = [high - low for low, high in pairwise(scale.papers)]
    assert scale.papers[0] == 18.0
    assert scale.papers[-1] <= 188.001
    assert all(width > 0 for width in widths)
    if sum(least) <= 170.0:
        assert all(width >= each - 1e-6 for width, each in zip(widths, least, strict=True))


def test_a_short_timber_is_drawn_true() -> None:
    """Where there is room for the true scale nothing is shortened and nothing broken."""
    scale = fitted((0, 100, 400), (1.0, 1.0), (True, True), true=0.1, left=0.0, width=100.0)
    assert scale.papers == (0.0, 10.0, 40.0)
    assert scale.breaks == ()
    assert [scale.at(along) for along in (-5, 50, 250, 900)] == [0.0, 5.0, 25.0, 40.0]


def test_only_a_bare_stretch_is_broken() -> None:
    """A long one that had to be shortened has a mark in its middle, unless a joint is there."""
    places, least = (0, 100, 2000), (10.0, 1.0)
    broken = fitted(places, least, (False, True), true=0.1, left=0.0, width=60.0)
    worked = fitted(places, least, (False, False), true=0.1, left=0.0, width=60.0)
    (at,) = broken.breaks
    assert abs(at - 35.0) < 0.01
    assert worked.breaks == ()


@given(st.lists(st.floats(0, 170), max_size=60), st.floats(0.5, 4))
def test_figures_never_stand_on_one_another(wished: list[float], pitch: float) -> None:
    """They keep their order, their distance where there is room, and stay on the paper."""
    found = spread(tuple(sorted(wished)), pitch, 0.0, 180.0)
    least = min(pitch, 180.0 / max(len(wished) - 1, 1)) - 1e-6
    assert len(found) == len(wished)
    assert all(high - low >= least for low, high in pairwise(found))
    assert all(-1e-6 <= each <= 180.0 + 1e-6 for each in found)


def test_figures_with_room_stand_over_their_marks() -> None:
    """Nothing is moved that need not be."""
    assert spread((10.0, 30.0, 31.0), 3.0, 0.0, 100.0) == (10.0, 29.0, 32.0)
