"""Readings of one timber as another has them."""

import pytest

from benchmate.joinery.tenon.carrying import carried_reading, carried_span
from benchmate.measure.length import Length
from benchmate.model.solids import Axis
from tests.builders import length
from tests.joinery.brace.bays import bay
from tests.joinery.tenon.plans import PLANS, Plan
from tests.joinery.tenon.sill_corners import sill_corner


@pytest.mark.parametrize("plan", PLANS)
def test_what_lies_across_one_runs_along_the_other(plan: Plan) -> None:
    """2" in from the long sill's outer face lies 6" outside the end sill's shoulder, at 8"."""
    frame = sill_corner(plan)
    here, there = frame.standing("long"), frame.standing("end")
    assert carried_reading(Axis.SECOND, length("2"), here, there) == (Axis.ALONG, length("-6"))
    assert carried_reading(Axis.ALONG, length("3"), here, there) == (Axis.SECOND, length("3"))
    assert carried_reading(Axis.FIRST, length("5"), here, there) == (Axis.FIRST, length("5"))


def test_a_span_is_in_the_order_of_the_timber_that_reads_it() -> None:
    """From where to where, whichever way round the other has it."""
    frame = sill_corner()
    here, there = frame.standing("long"), frame.standing("end")
    span = (length("2"), length("4"))
    found = carried_span(Axis.SECOND, span, here, there)
    assert found == (Axis.ALONG, (length("-6"), length("-4")))


def test_timbers_that_are_not_square_are_a_misuse() -> None:
    """A brace reads a post's height neither along itself nor across."""
    frame = bay()
    with pytest.raises(ValueError, match="square to no axis"):
        carried_reading(Axis.ALONG, Length(1), frame.standing("post"), frame.standing("brace"))
