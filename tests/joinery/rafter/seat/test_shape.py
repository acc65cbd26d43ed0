"""Where a notch lies, against the check values of the trade notes."""

from collections.abc import Mapping
from typing import NamedTuple

import pytest

from benchmate.frame.frame import Real
from benchmate.joinery.rafter.seat.shape import ABUTMENT, HEEL, SeatShape, seat_shape
from benchmate.measure.length import NM_PER_INCH, ZERO, Length
from benchmate.model.work import Work
from tests.builders import length, real
from tests.joinery.rafter.roofs import Roof, built, seat, tail


def decimal(inches: float) -> Length:
    """A length in decimal inches, to the nanometre."""
    return Length(round(inches * NM_PER_INCH))


def shape(
    roof: Roof, *others: Work, sticks: Mapping[str, Real] | None = None, **words: object
) -> SeatShape:
    """The seat of a roof's rafter on its plate."""
    joint = seat(**words)
    return seat_shape(joint, built(roof, joint, *others, real=sticks))


class Row(NamedTuple):
    """A row of the trade notes' table 7.4: what is given, and what follows, in inches."""

    pitch: str
    deep: str
    seat: float
    plumb: float
    heel: float
    over: float
    notch: float


HEIGHTS = (
    Row("12", "6", 3.5, 8.485, 3.500, 4.985, 2.475),
    Row("8", "8", 3.5, 9.615, 2.333, 7.281, 1.941),
    Row("6", "8", 4.0, 8.944, 2.000, 6.944, 1.789),
    Row("9", "6", 3.0, 7.500, 2.250, 5.250, 1.800),
    Row("10", "7", 3.0, 9.112, 2.500, 6.612, 1.921),
)
"""Trade notes 7.4, all CALC, to a thousandth."""


@pytest.mark.parametrize("row", HEIGHTS)
def test_birdsmouth_and_height_above_plate(row: Row) -> None:
    """A top edge so high over the plate makes the seat, the heel and the notch of the table."""
    found = shape(Roof(rise=row.pitch, rafter=f"{row.deep} x 4", over=decimal(row.over)))
    assert found.over_plate == decimal(row.over)
    plumb = found.rafter.plumbed(found.rafter.real_deep)
    sizes = (found.long, found.heel_high, plumb, found.notch)
    inches = [size.nm / NM_PER_INCH for size in sizes]
    assert inches == pytest.approx([row.seat, row.heel, row.plumb, row.notch], abs=0.0015)
    assert found.left_square == found.rafter.real_deep - found.notch
    assert found.heel_high + found.left_plumb == plumb


def test_the_share_of_a_notch() -> None:
    """The 12/12, 6" row takes 2.475 of 6: 41 in 100 (trade notes 7.4, under the table)."""
    assert shape(Roof(over=decimal(4.985))).share == 41


def test_what_the_rafter_is_over_goes_to_the_underside() -> None:
    """1/2" more of depth only makes the seat longer; the height above plate holds."""
    drawn = shape(Roof())
    deeper = {"rafter": real({"wall-notch": {"first": "6-1/2"}})}
    real_one = shape(Roof(), sticks=deeper)
    assert real_one.over_plate == drawn.over_plate
    assert real_one.left_square == drawn.left_square
    longer = real_one.long - drawn.long
    assert longer.nm / NM_PER_INCH == pytest.approx(0.5 * 2**0.5, abs=1e-6)


def test_by_mill_rule_the_seat_follows_a_far_top() -> None:
    """A plate measured from its underside that is 1/4" over lifts the seat, not the roof."""
    far = Roof(plate_faces=("down", "out"))
    sticks = {"plate": real({"wall-seat": {"first": "8-1/4", "second": "6"}})}
    drawn, found = shape(far), shape(far, sticks=sticks)
    assert drawn.over_plate - found.over_plate == length("1/4")
    assert found.rafter.line == drawn.rafter.line


def test_by_square_rule_the_seat_holds() -> None:
    """The plate's inner timber counts, and the rafter goes into what is over it."""
    own = {"plate": {"rule": "square", "inner": "8 x 6"}}
    far = Roof(plate_faces=("down", "in"), own=own)
    sticks = {"plate": real({"wall-seat": {"first": "8-1/4", "second": "6-3/8"}})}
    found = shape(far, sticks=sticks)
    assert found.over_plate == length("5")
    assert (found.recess, found.recess_near) == (length("1/4"), length("3/8"))
    assert found.recessed


def test_a_rafter_that_ends_at_its_plate_has_no_heel() -> None:
    """Its seat is measured down its own plumb cut."""
    found = shape(Roof(out="0"), tail())
    assert (found.heeled, found.bound, found.tail) == (False, "", "eaves")
    assert found.left_plumb == length("5")
    assert not shape(Roof(out="0"), tail(cut="level")).tail
    assert shape(Roof()).bound == HEEL


def test_a_seat_let_in_lies_deeper() -> None:
    """1" below the top: as high above the plate, and 1" more left above the seat."""
    found = shape(Roof(), let_in="1")
    assert (found.over_plate, found.left_plumb) == (length("5"), length("6"))
    assert found.recess == length("1")


def test_a_step_seat() -> None:
    """At 12 in 12 the seat begins 1" further in, so 1" more is over it; the ledge leaves least."""
    found = shape(Roof(over="5"), let_in="1", step="1")
    assert (found.bound, found.stepped) == (ABUTMENT, True)
    assert found.left_plumb == length("7")
    assert found.left_square == found.rafter.squared(length("5")), "over the step"
    assert found.outer == length("1").nm


def test_how_much_of_a_seat_bears() -> None:
    """A seat longer than the plate is wide bears on its width alone."""
    found = shape(Roof(over="1", plate=("8", "4")))
    assert found.long > length("4")
    assert found.bearing == length("4")
    short = shape(Roof())
    assert short.bearing == short.long


def test_where_a_recess_ends() -> None:
    """Where the underside rises out of the top; None where that is past the far face."""
    found = shape(Roof(), let_in="1")
    assert found.end is not None
    assert Length(found.end).nm / NM_PER_INCH == pytest.approx(6 * 2**0.5 - 5, abs=1e-6)
    assert shape(Roof(over="1"), let_in="1").end is None


def test_only_what_goes_in_is_reduced() -> None:
    """By square rule a wide rafter is brought to its inner timber where it is let in."""
    own = {"rafter": {"rule": "square", "inner": "6 x 4"}}
    sticks = {"rafter": real({"all": {"second": "4-1/4"}})}
    assert shape(Roof(own=own), sticks=sticks, let_in="1").reduced
    assert not shape(Roof(own=own), sticks=sticks).reduced
    assert not shape(Roof(own=own), let_in="1").reduced
    assert shape(Roof(own=own), sticks=sticks).long > ZERO
