"""The stored parameters of a rafter's head at a ridge."""

import pytest
from pydantic import ValidationError

from benchmate.measure.length import ZERO
from benchmate.model.directions import Direction
from benchmate.model.work import Bearing
from tests.builders import length
from tests.joinery.rafter.roofs import Roof, ridge


def test_a_plain_butt_needs_no_sizes() -> None:
    """The head bears on the ridge's side; the ridge's real face settles how long the rafter is."""
    plain = ridge()
    assert plain.let_in == ZERO
    assert plain.bearings() == (Bearing("rafter", Direction.UP, "ridge", ZERO, "top-housing"),)
    assert plain.extensions() == ()
    assert plain.timbers() == {"timber": "rafter", "into": "ridge"}


def test_a_head_that_is_let_in_bears_deeper() -> None:
    """So deep behind the face."""
    assert ridge(let_in="3/4").bearings()[0].depth == length("3/4")


def test_a_rafter_cannot_bear_on_itself() -> None:
    """It takes two timbers."""
    with pytest.raises(ValidationError, match="own timber"):
        ridge(into="rafter")


def test_what_cannot_be_is_told() -> None:
    """A ridge that runs the rafter's own way."""
    roof, along = Roof(), Roof(heading="north")
    assert ridge().faults({"rafter": roof.raking(), "ridge": roof.at_ridge()}) == ()
    (fault,) = ridge().faults({"rafter": roof.raking(), "ridge": along.at_ridge()})
    assert fault.key == "into"
