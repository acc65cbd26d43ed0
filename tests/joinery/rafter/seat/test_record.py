"""The stored parameters of a seat."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, seat


def test_a_birdsmouth_needs_no_sizes() -> None:
    """It follows from where the two timbers stand; both sides are named after it."""
    plain = seat()
    assert (plain.let_in, plain.step) == (ZERO, ZERO)
    assert (plain.notch, plain.seat) == ("wall-notch", "wall-seat")
    assert plain.timbers() == {"timber": "rafter", "into": "plate"}
    assert plain.bearings() == ()
    assert plain.extensions() == ()


def test_a_step_needs_a_seat_that_is_let_in() -> None:
    """Without it there is nothing to step down into."""
    assert seat(let_in="1", step="1-1/2").step == length("1-1/2")
    with pytest.raises(ValidationError, match="not let in"):
        seat(step="1-1/2")


def test_a_rafter_cannot_bear_on_itself() -> None:
    """It takes two timbers."""
    with pytest.raises(ValidationError, match="own timber"):
        seat(into="rafter")


def test_what_cannot_be_is_told() -> None:
    """A plate that stands, or a rafter that lies."""
    roof = Roof()
    timbers = {"rafter": roof.raking(), "plate": roof.on_plate()}
    assert seat().faults(timbers) == ()
    (fault,) = seat().faults(timbers | {"plate": roof.raking("plate")})
    assert fault.key == "into"
