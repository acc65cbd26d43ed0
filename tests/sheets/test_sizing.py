"""How a net lies on the paper."""

from collections.abc import Callable
from itertools import pairwise

import pytest

from benchmate.sheets.sheet import TimberSheet
from benchmate.sheets.sizing import LEFT, PITCH, RIGHT, net_of
from benchmate.sheets.unrolled import datum_hook, running

SheetOf = Callable[[str], TimberSheet]


@pytest.mark.parametrize("timber", ["post-se", "sill-south", "plate-north"])
def test_the_net_fits_and_its_faces_touch(timber: str, sheet_of: SheetOf) -> None:
    """Between the margins, four boxes one under the other, to one scale across."""
    sheet = sheet_of(timber)
    net = net_of(sheet, running(sheet, datum_hook(sheet)), 15.0)
    assert net.boxes[0].top == 15.0
    assert all(upper.bottom == lower.top for upper, lower in pairwise(net.boxes))
    assert all(box.left == LEFT and box.right <= RIGHT + 1e-6 for box in net.boxes)
    assert net.boxes[-1].bottom - 15.0 < 36.0
    for side, box in zip(net.sides, net.boxes, strict=True):
        x, y = net.spot(side, box, 0, 0)
        assert box.left <= x <= box.right
        assert y == (box.bottom if side.turned else box.top)


def test_marks_next_to_each_other_leave_room_for_their_figures(sheet_of: SheetOf) -> None:
    """Two marks with nothing between them are a figure's pitch apart."""
    sheet = sheet_of("post-se")
    marks = running(sheet, datum_hook(sheet))
    net = net_of(sheet, marks, 15.0)
    alongs = {mark.along for mark in marks}
    for low, high in pairwise(net.scale.places):
        if {low, high} <= alongs:
            assert net.scale.at(high) - net.scale.at(low) >= PITCH - 1e-6
