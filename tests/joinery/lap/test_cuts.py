"""The wood that comes off: all of it convex, and only where there is any."""

from itertools import product

import pytest

from benchmate.joinery.lap.cuts import bounding, cuts
from benchmate.joinery.lap.shape import Half
from tests.builders import length
from tests.joinery.lap.crossings import COGGED, DOVETAIL, SQUARE, both, sizes_of


def _takes(half: Half, *point: str) -> bool:
    x, u, v = (length(each).nm for each in point)
    return any(cut.takes(x, u, v) for cut in cuts(half))


def test_a_half_lap_takes_one_block_off_each() -> None:
    """Beyond the shoulder under the bed, and between the notch's ends over it."""
    tie, plate = both()
    assert [len(cuts(half)) for half in (tie, plate)] == [1, 1]
    assert _takes(tie, "97", "5", "3")
    assert not _takes(tie, "95", "5", "3")
    assert not _takes(tie, "97", "3", "3")
    assert _takes(plate, "50", "3", "4")
    assert not _takes(plate, "50", "5", "4")
    assert not _takes(plate, "47", "3", "4")
    assert not _takes(plate, "55", "3", "4")


@pytest.mark.parametrize("share", ["0", "2"])
def test_a_timber_that_loses_nothing_has_no_cut(share: str) -> None:
    """All of the share from the one, none from the other."""
    tie, plate = both(up="6", joint={"share": share})
    assert bool(cuts(tie)) is (share == "0")
    assert bool(cuts(plate)) is (share == "2")


def test_a_cog_is_left_between_two_cuts() -> None:
    """Open at both faces of the plate, and nothing from between its lines."""
    _, plate = both(**COGGED)
    assert len(cuts(plate)) == 2
    for across, taken in product(("1", "4", "7"), [True]):
        assert _takes(plate, "50", "1", across) is (taken and across != "4")


@pytest.mark.parametrize("back", ["0", "6"])
def test_a_cog_in_a_face_has_a_cut_on_one_side(back: str) -> None:
    """Nothing lies beyond it there."""
    joint = {"cog": "2", "cog_set_back": back}
    _, plate = both(**(COGGED | {"joint": joint}))
    (cut,) = cuts(plate)
    assert {"cog-near", "cog-far"} & {plane.line for plane in cut.planes} == {
        "cog-far" if back == "0" else "cog-near"
    }


def test_a_slot_goes_over_the_cog() -> None:
    """As deep as the tie is let down, and right across."""
    tie, _ = both(**COGGED)
    assert _takes(tie, "100", "7", "0")
    assert _takes(tie, "100", "7", "6")
    assert not _takes(tie, "100", "5", "3")
    assert not _takes(tie, "98", "7", "3")


def test_a_tail_loses_wood_beside_it_under_the_plate_s_top_only() -> None:
    """Above that the tie keeps its full width."""
    tie, _ = both(**DOVETAIL)
    assert len(cuts(tie)) == 2
    assert _takes(tie, "97", "7", "1/2")
    assert _takes(tie, "97", "7", "5-1/2")
    assert not _takes(tie, "97", "7", "3")
    assert not _takes(tie, "97", "5", "1/2")
    assert not _takes(tie, "103-7/8", "7", "1/4")
    assert not _takes(tie, "95", "7", "1/2")


def test_what_bounds_the_cuts_goes_by_line() -> None:
    """Every plane has one, for a line to be struck."""
    sizes = sizes_of(tie=("8", "6"), plate=("8", "8"))
    tie, plate = both(sizes, **SQUARE, ends=False, up="2")
    assert set(bounding(tie)) == {"start", "finish", "floor", "reduced", "ledge"}
    assert set(bounding(plate)) - set(bounding(tie)) == {"reduction-start"}
    for half in (tie, plate):
        assert all(plane.line for cut in cuts(half) for plane in cut.planes)
